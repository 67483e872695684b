// The samples in memory, once as they are and once with a few words changed.
#include "compare/two_states.hpp"

#include "drive/commands.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

namespace matchmark::test {

namespace fs = std::filesystem;

std::vector<std::pair<std::string, std::string>> sample_files(const std::string& sample) {
    std::vector<std::pair<std::string, std::string>> files;
    for (const auto& entry :
         fs::directory_iterator(fs::path(MATCHMARK_SOURCE_DIR) / "samples" / sample)) {
        if (entry.path().extension() != ".mmk") {
            continue;
        }
        std::ifstream stream(entry.path(), std::ios::binary);
        files.emplace_back(entry.path().filename().string(),
                           std::string(std::istreambuf_iterator<char>(stream), {}));
    }
    std::sort(files.begin(), files.end());
    REQUIRE_FALSE(files.empty());
    return files;
}

Told compare_texts(const std::string& sample, const std::string& file,
                   const std::vector<std::pair<std::string, std::string>>& files, bool json) {
    MapDisk disk;
    for (const auto& [name, text] : sample_files(sample)) {
        disk.files["old/" + name] = text;
    }
    for (const auto& [name, text] : files) {
        disk.files["new/" + name] = text;
    }
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    drive::CompareOptions options;
    options.paths = {"old/" + file, "new/" + file};
    options.json = json;
    const int code = drive::compare_states(options, terminal);
    return {code, out.str(), err.str()};
}

Told compare_sample(const std::string& sample, const std::string& file,
                    const std::vector<Edit>& edits, bool json) {
    auto files = sample_files(sample);
    for (const Edit& edit : edits) {
        const auto found = std::find_if(files.begin(), files.end(),
                                        [&](const auto& pair) { return pair.first == edit.file; });
        REQUIRE(found != files.end());
        const std::size_t at = found->second.find(edit.from);
        REQUIRE_MESSAGE(at != std::string::npos, edit.from);
        CHECK_MESSAGE(found->second.find(edit.from, at + 1) == std::string::npos, edit.from);
        found->second.replace(at, edit.from.size(), edit.to);
    }
    return compare_texts(sample, file, files, json);
}

std::vector<Edit> one(const char* file, const char* from, const char* to) {
    return {{file, from, to}};
}

std::size_t check_all(const std::vector<Case>& cases) {
    for (const Case& row : cases) {
        CAPTURE(row.name);
        const auto told = compare_sample(row.sample, row.guide, row.edits);
        REQUIRE_MESSAGE(told.code == 1, told.out << told.err);
        const nlohmann::json changes = told.json()["guides"][0]["changes"];
        CHECK_MESSAGE(changes.size() == 1, changes.dump(1));
        const nlohmann::json& first = changes[0];
        CAPTURE(first.dump(1));
        CHECK(first["sort"] == row.sort);
        CHECK(first["subject"] == row.subject);
        CHECK(first["safety"] == row.safety);
        CHECK(first["matters"] == row.matters);
        const std::string step =
            first["steps"].empty() ? "" : first["steps"][0]["name"].get<std::string>();
        CHECK(step == row.step);
    }
    return cases.size();
}

} // namespace matchmark::test
