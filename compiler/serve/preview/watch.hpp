// Tells when something changes in a folder, at once and without asking again and again.
#pragma once

#include <map>
#include <string>

namespace matchmark::serve {

constexpr std::size_t most_watched = 4000; // folders; the kernel's store is not ours alone

// Watches a folder and those below it by inotify(7). Hidden folders, and folders that are links,
// are left out, as are files whose names begin with a dot or end with `~`: editors keep their
// copies there.
class Watch {
public:
    explicit Watch(const std::string& root);
    Watch(const Watch&) = delete;
    Watch& operator=(const Watch&) = delete;
    ~Watch();

    // To be polled; readable when something may have changed. Less than 0: nothing can be watched.
    [[nodiscard]] int file() const { return file_; }
    // Takes what has come in; was there a change that matters?
    bool take();
    // Some folders are not watched, for there are too many.
    [[nodiscard]] bool is_partial() const { return partial_; }

private:
    void add(const std::string& folder);
    void add_below(const std::string& folder);

    int file_ = -1;
    bool partial_ = false;
    std::map<int, std::string> folders_; // by the kernel's number
};

} // namespace matchmark::serve
