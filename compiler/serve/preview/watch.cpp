// A file counts as changed when its writer closes it or it takes another's place: half a file is
// no news.
#include "serve/preview/watch.hpp"

#include <algorithm>
#include <array>
#include <cstring>
#include <filesystem>
#include <string_view>
#include <system_error>

#include <sys/inotify.h>
#include <unistd.h>

namespace matchmark::serve {

namespace {

constexpr std::uint32_t watched = IN_CLOSE_WRITE | IN_MOVED_TO | IN_MOVED_FROM | IN_DELETE |
                                  IN_CREATE | IN_ATTRIB | IN_ONLYDIR | IN_DONT_FOLLOW;

bool is_passing(std::string_view name) { return name.starts_with('.') || name.ends_with('~'); }

} // namespace

Watch::Watch(const std::string& root) : file_(::inotify_init1(IN_NONBLOCK | IN_CLOEXEC)) {
    if (file_ >= 0) {
        add(root);
        add_below(root);
    }
}

Watch::~Watch() {
    if (file_ >= 0) {
        static_cast<void>(::close(file_));
    }
}

void Watch::add(const std::string& folder) {
    if (folders_.size() >= most_watched) {
        partial_ = true;
        return;
    }
    const int number = ::inotify_add_watch(file_, folder.c_str(), watched);
    if (number >= 0) {
        folders_[number] = folder;
    } else {
        partial_ = true;
    }
}

void Watch::add_below(const std::string& folder) {
    namespace fs = std::filesystem;
    std::error_code error;
    fs::recursive_directory_iterator entry(folder, error);
    while (!error && entry != fs::recursive_directory_iterator() && !partial_) {
        std::error_code unknown;
        if (!entry->is_symlink(unknown) && entry->is_directory(unknown)) {
            if (entry->path().filename().string().starts_with('.')) {
                entry.disable_recursion_pending();
            } else {
                add(entry->path().string());
            }
        }
        entry.increment(error);
    }
}

bool Watch::take() {
    bool changed = false;
    alignas(inotify_event) std::array<char, 16384> buffer{};
    for (;;) {
        const ssize_t got = ::read(file_, buffer.data(), buffer.size());
        if (got <= 0) {
            return changed;
        }
        for (std::size_t at = 0; at < static_cast<std::size_t>(got);) {
            inotify_event event{};
            std::memcpy(&event, buffer.data() + at, sizeof event);
            // The name is padded with NUL.
            const char* start = buffer.data() + at + sizeof event;
            const std::string name(start, ::strnlen(start, event.len));
            at += sizeof event + event.len;
            const auto folder = folders_.find(event.wd);
            if ((event.mask & IN_IGNORED) != 0) {
                folders_.erase(event.wd);
            } else if ((event.mask & IN_Q_OVERFLOW) != 0) {
                changed = true;
            } else if (!is_passing(name)) {
                changed = true;
                if ((event.mask & IN_ISDIR) != 0 && folder != folders_.end() &&
                    (event.mask & (IN_CREATE | IN_MOVED_TO)) != 0) {
                    const std::string below = folder->second + "/" + name;
                    add(below);
                    add_below(below);
                }
            }
        }
    }
}

} // namespace matchmark::serve
