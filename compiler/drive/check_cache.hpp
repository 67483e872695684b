// What earlier checks found, kept in a folder: the same bytes of the same files have the same
// findings.
//
// An entry is named after the digest of the program, the options that matter, the file's path and
// its bytes. It lists everything that its check asked of the disk (used files, pictures, whether a
// file is there), with the digest of each answer. It counts only while every answer is the same,
// so that no list of what a check may read has to be kept up to date by hand.
#pragma once

#include "drive/check_junit.hpp"
#include "drive/inputs.hpp"
#include "drive/report.hpp"

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace matchmark::drive {

// What is kept of one file after its compilation.
struct Checked {
    std::size_t guides = 0;
    std::size_t devices = 0;
    bool unreadable = false;
    std::vector<Reported> findings;
    JunitSuite suite;              // for JUnit alone
    std::set<std::string> depends; // for a dependency file alone
};

struct CheckCache {
    std::string folder;
    std::string about; // whatever else decides the result: the program, the options
};

// The digest of the running program, with all that is embedded in it. Nothing where the system
// does not show a program its own bytes: without them an old program's findings could pass for
// those of a new one.
std::optional<std::string> program_digest(Disk& disk);

using CheckFile = std::function<Checked(Disk& disk, const Input& input)>;

// What `check_file` finds in the file, from the cache when it is there. `check_file` must depend on
// nothing but the input, the disk that it is given, and `cache.about`. A broken or foreign entry is
// replaced. `problem`: set when the entry cannot be written; the result is right all the same.
// Several threads and programs may use one folder at the same time.
Checked cached(Disk& disk, const CheckCache& cache, const Input& input, const CheckFile& check_file,
               std::string& problem);

} // namespace matchmark::drive
