// A file gets new bytes in one step: written beside it, then given its name.
#pragma once

#include "source/disk.hpp"

#include <filesystem>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <string_view>

#include <sys/stat.h>

namespace matchmark {

// The reason that goes with an error number of the system.
DiskProblem problem_of(int error);

struct NewBytes {
    std::string_view bytes;
    std::optional<struct stat> old;         // whose owner and mode it keeps; nothing: a new file
    std::optional<std::string_view> before; // what the file has to hold until the last moment
    bool settled = true;                    // waits until the disk has them
};

class Replacing {
public:
    // `target`: where links end. What earlier runs left beside it when they were killed is cleared
    // away. Several threads and programs may do this in one folder.
    std::optional<DiskProblem> replace(Disk& disk, const std::filesystem::path& target,
                                       const NewBytes& fresh);

private:
    void clear_once(const std::filesystem::path& folder);

    std::mutex mutex_;
    std::set<std::string> cleared_;
};

} // namespace matchmark
