// The samples in memory, once as they are and once with a few words changed, and what `compare`
// says of the two.
#pragma once

#include <nlohmann/json.hpp>

#include <string>
#include <utility>
#include <vector>

namespace matchmark::test {

// In `file` of the sample, `from`, which stands there once, becomes `to`.
struct Edit {
    std::string file;
    std::string from;
    std::string to;
};

struct Told {
    int code = 0;
    std::string out;
    std::string err;

    [[nodiscard]] nlohmann::json json() const { return nlohmann::json::parse(out); }
};

// Files of the samples.
inline constexpr const char* cell = "replace-cell.mmk";
inline constexpr const char* logger = "logger.mmk";
inline constexpr const char* valve = "renew-valve.mmk";
inline constexpr const char* heater = "heater.mmk";
inline constexpr const char* cutout = "renew-cutout.mmk";
inline constexpr const char* brushes = "renew-brushes.mmk";
inline constexpr const char* blade = "renew-blade.mmk";
inline constexpr const char* seal = "renew-seal.mmk";

// All .mmk files of samples/NAME, by their names.
std::vector<std::pair<std::string, std::string>> sample_files(const std::string& sample);

// `matchmark compare old/FILE new/FILE`, the edits made in `new`.
Told compare_sample(const std::string& sample, const std::string& file,
                    const std::vector<Edit>& edits, bool json = true);

// The same of texts made in any other way; `files` are those of `new`.
Told compare_texts(const std::string& sample, const std::string& file,
                   const std::vector<std::pair<std::string, std::string>>& files, bool json = true);

// A change, and the one entry that has to name it.
struct Case {
    std::string name;
    const char* sample;
    const char* guide;
    std::vector<Edit> edits;
    const char* sort;
    const char* subject;
    const char* step; // name of the entry's first step; empty: none
    bool safety = false;
    bool matters = true;
};

std::vector<Edit> one(const char* file, const char* from, const char* to);

// Gives how many were tried.
std::size_t check_all(const std::vector<Case>& cases);

} // namespace matchmark::test
