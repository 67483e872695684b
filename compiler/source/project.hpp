// How far a guide may reach: the folder of its project, and whether a path leads out of it.
#pragma once

#include <filesystem>
#include <map>
#include <mutex>
#include <string>

namespace matchmark {

// Whether `path`, links followed, is `folder` or lies below it. `folder`: absolute, without links.
// A path that cannot be followed to its end counts as inside: reading it says why.
bool leads_into(const std::filesystem::path& folder, const std::filesystem::path& path);

// Where projects end. Several threads may ask one at the same time.
class Projects {
public:
    Projects();

    // One folder for all files from now on.
    void take(const std::string& folder);
    // The nearest folder above the file (or folder) that holds `.git`; else the current folder when
    // the file is in it; else the file's own. The top of the disk and the home folder are none.
    // Absolute, without links.
    std::filesystem::path folder_of(const std::string& file);

private:
    [[nodiscard]] std::filesystem::path found_above(const std::filesystem::path& folder) const;

    std::mutex mutex_;
    std::filesystem::path taken_;   // empty: none
    std::filesystem::path current_; // empty when that is the top or the home folder
    std::filesystem::path home_;
    std::map<std::string, std::filesystem::path> known_; // by the folder as it was named
};

} // namespace matchmark
