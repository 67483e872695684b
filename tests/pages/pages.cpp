// Reads pages from the project's folder and compiles examples in memory.
#include "pages/pages.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

namespace matchmark::test {

namespace {

namespace fs = std::filesystem;

constexpr const char* example = "example.mmk";

} // namespace

std::string read_page(const std::string& path) {
    std::ifstream stream(fs::path(MATCHMARK_SOURCE_DIR) / path, std::ios::binary);
    CHECK_MESSAGE(stream.good(), path, " is not there");
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<std::string> written_pages() {
    const fs::path root = MATCHMARK_SOURCE_DIR;
    std::vector<std::string> paths;
    for (const char* name : {"README.md", "DEVELOPERS.md"}) {
        if (fs::exists(root / name))
            paths.emplace_back(name);
    }
    for (const char* folder : {"docs", "grammar"}) {
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            if (entry.path().extension() == ".md") {
                paths.push_back(entry.path().lexically_relative(root).generic_string());
            }
        }
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

drive::Compilation compile_example(const std::string& text) {
    MapDisk disk;
    disk.files[example] = text;
    return drive::compile(disk, example);
}

std::string printed(const std::string& text, const std::map<std::string, std::string>& beside) {
    MapDisk disk;
    disk.files = beside;
    disk.files[example] = text;
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    drive::CheckOptions options;
    options.paths = {example};
    options.jobs = 1;
    const int code = drive::check(options, terminal);
    CHECK(code != drive::exit_failed);
    return out.str() + err.str();
}

} // namespace matchmark::test
