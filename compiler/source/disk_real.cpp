// The machine's own file system: a file is read whole or not at all, and replaced whole or not at
// all.
#include "source/disk.hpp"
#include "source/open_file.hpp"
#include "source/project.hpp"
#include "source/replacing.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace matchmark {

namespace {

constexpr std::int64_t largest_file = 256LL * 1024 * 1024; // bytes; offsets are 32 bits wide

// Why what `status` describes cannot be used as a file.
std::optional<DiskProblem> not_a_plain_file(const struct stat& status) {
    if (S_ISDIR(status.st_mode)) {
        return DiskProblem{"it is a folder"};
    }
    if (!S_ISREG(status.st_mode)) {
        return DiskProblem{"it is a device or a pipe, not a file"};
    }
    return std::nullopt;
}

std::optional<DiskProblem> unusable_name(const std::string& path) {
    if (path.empty()) {
        return DiskProblem{"its name is empty"};
    }
    if (path.find('\0') != std::string::npos) {
        return DiskProblem{"its name contains a NUL"};
    }
    return std::nullopt;
}

bool same_state(const struct stat& a, const struct stat& b) {
    return a.st_size == b.st_size && a.st_mtim.tv_sec == b.st_mtim.tv_sec &&
           a.st_mtim.tv_nsec == b.st_mtim.tv_nsec;
}

// Reads until the end of the file; a little more room than `expected` shows that it grew.
DiskResult<std::string> read_to_end(int file, std::size_t expected) {
    std::string text(expected + 1, '\0');
    std::size_t filled = 0;
    while (filled < text.size()) {
        const ssize_t got = ::read(file, text.data() + filled, text.size() - filled);
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return problem_of(errno);
        }
        if (got == 0) {
            break;
        }
        filled += static_cast<std::size_t>(got);
    }
    text.resize(filled);
    return text;
}

class RealDisk final : public Disk {
public:
    DiskResult<std::string> read(const std::string& path) override {
        if (auto problem = unusable_name(path)) {
            return *problem;
        }
        // Without O_NONBLOCK, opening a pipe would wait for somebody to write to it.
        const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
        struct stat before {};
        if (file.number() < 0 || ::fstat(file.number(), &before) != 0) {
            return problem_of(errno);
        }
        if (auto problem = not_a_plain_file(before)) {
            return *problem;
        }
        if (before.st_size > largest_file) {
            return DiskProblem{"it is larger than 256 MB"};
        }
        const auto expected = static_cast<std::size_t>(before.st_size);
        DiskResult<std::string> text = read_to_end(file.number(), expected);
        struct stat after {};
        if (::fstat(file.number(), &after) != 0) {
            return problem_of(errno);
        }
        const std::string* read = std::get_if<std::string>(&text);
        if (read != nullptr && (read->size() != expected || !same_state(before, after))) {
            return DiskProblem{"it changed while it was read"};
        }
        return text;
    }

    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override {
        return put(path, {bytes, std::nullopt, std::nullopt, true});
    }

    DiskResult<std::monostate> write_soon(const std::string& path,
                                          std::string_view bytes) override {
        return put(path, {bytes, std::nullopt, std::nullopt, false});
    }

    DiskResult<std::monostate> replace(const std::string& path, std::string_view before,
                                       std::string_view bytes) override {
        return put(path, {bytes, std::nullopt, before, true});
    }

    bool lets_in(const std::string& path, const std::string& root) override {
        return unusable_name(path) || leads_into(projects_.folder_of(root), path);
    }

    void take_as_project(const std::string& folder) override { projects_.take(folder); }

    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override {
        namespace fs = std::filesystem;
        std::error_code error;
        std::vector<std::string> found;
        fs::recursive_directory_iterator entry(folder, error);
        while (!error && entry != fs::recursive_directory_iterator()) {
            const std::string name = entry->path().filename().string();
            std::error_code unknown; // a link that leads nowhere is no file
            if (!entry->is_symlink(unknown) && entry->is_directory(unknown)) {
                if (name.starts_with('.')) {
                    entry.disable_recursion_pending();
                }
            } else if (name.ends_with(ending) && entry->is_regular_file(unknown)) {
                found.push_back(entry->path().lexically_relative(folder).string());
            }
            entry.increment(error);
        }
        if (error) {
            return error.value() == ENOENT ? DiskProblem{"no such folder"}
                                           : problem_of(error.value());
        }
        std::sort(found.begin(), found.end());
        return found;
    }

    bool is_folder(const std::string& path) override {
        std::error_code unknown;
        return std::filesystem::is_directory(path, unknown);
    }

    bool exists(const std::string& path) override {
        std::error_code unknown;
        return std::filesystem::exists(path, unknown);
    }

private:
    DiskResult<std::monostate> put(const std::string& path, NewBytes fresh) {
        if (auto problem = unusable_name(path)) {
            return *problem;
        }
        std::error_code error;
        std::filesystem::path target = path;
        struct stat status {};
        if (::stat(path.c_str(), &status) == 0) {
            if (auto problem = not_a_plain_file(status)) {
                return *problem;
            }
            if (::access(path.c_str(), W_OK) != 0) {
                return problem_of(errno);
            }
            fresh.old = status;
            target = std::filesystem::canonical(target, error); // a link stays a link
        } else if (target.has_parent_path()) {
            std::filesystem::create_directories(target.parent_path(), error);
        }
        if (error) {
            return problem_of(error.value());
        }
        if (auto problem = replacing_.replace(*this, target, fresh)) {
            return *problem;
        }
        return std::monostate{};
    }

    Projects projects_;
    Replacing replacing_;
};

} // namespace

std::unique_ptr<Disk> real_disk() { return std::make_unique<RealDisk>(); }

} // namespace matchmark
