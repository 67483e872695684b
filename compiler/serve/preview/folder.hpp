// The folder that the preview serves, as a disk of its own: nothing outside it is read or written.
#pragma once

#include "source/disk.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>

namespace matchmark::serve {

// What tells one state of a file from another without reading it.
struct Stamp {
    bool exists = false;
    std::int64_t size = 0;
    std::int64_t seconds = 0; // of the last change
    std::int64_t nanoseconds = 0;
    std::uint64_t number = 0; // the file system's own; a file that is replaced has another
    friend bool operator==(const Stamp&, const Stamp&) = default;
};

// Paths are those below the folder: "lamp/lamp.mmk". A path that leads outside, by `..` or by a
// link, is treated as one that is not there, or as a problem where a reason is given.
class FolderDisk final : public Disk {
public:
    // `root`: a folder that is there.
    FolderDisk(Disk& below, const std::string& root);

    DiskResult<std::string> read(const std::string& path) override;
    DiskResult<std::monostate> write(const std::string& path, std::string_view bytes) override;
    DiskResult<std::vector<std::string>> list(const std::string& folder,
                                              std::string_view ending) override;
    bool is_folder(const std::string& path) override;
    bool exists(const std::string& path) override;
    // Whatever the guide: the folder that is served is the project.
    bool lets_in(const std::string& path, const std::string& root) override;

    [[nodiscard]] const std::string& root() const { return root_; }
    // Where the path leads in the end, links followed; nothing when that is outside, or nothing.
    [[nodiscard]] std::optional<std::string> real_path(const std::string& path) const;
    [[nodiscard]] Stamp stamp(const std::string& path) const;

    // From now on, every file asked for is noted with its stamp.
    void begin_noting() { noted_.clear(); }
    [[nodiscard]] const std::map<std::string, Stamp>& noted() const { return noted_; }

private:
    void note(const std::string& path) { noted_.try_emplace(path, stamp(path)); }

    Disk& below_;
    std::string root_; // without links
    std::map<std::string, Stamp> noted_;
};

} // namespace matchmark::serve
