// Reads the files of the project from the folder that the tests were built for.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace matchmark::drift {

namespace {

namespace fs = std::filesystem;

const fs::path root = MATCHMARK_SOURCE_DIR;

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        lines.push_back(line);
    }
    return lines;
}

} // namespace

ProjectFile read_project_file(const std::string& path) {
    std::ifstream stream(root / path, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return {path, text.str(), split(text.str())};
}

std::vector<ProjectFile> files_of(std::initializer_list<std::string_view> folders,
                                  std::initializer_list<std::string_view> endings) {
    std::vector<std::string> paths;
    for (const std::string_view folder : folders) {
        if (!fs::is_directory(root / folder)) {
            continue;
        }
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const std::string path = entry.path().lexically_relative(root).generic_string();
            const auto ends = [&](std::string_view ending) { return path.ends_with(ending); };
            if (entry.is_regular_file() && std::any_of(endings.begin(), endings.end(), ends)) {
                paths.push_back(path);
            }
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<ProjectFile> files;
    for (const std::string& path : paths) {
        files.push_back(read_project_file(path));
    }
    return files;
}

std::vector<std::string> names_in(const std::string& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(root / folder)) {
        names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

std::vector<std::string> code_lines(const ProjectFile& file) {
    std::vector<std::string> result;
    std::string closing; // what ends the raw string that is open
    for (std::string line : file.lines) {
        if (!closing.empty()) {
            const std::size_t end = line.find(closing);
            line = end == std::string::npos ? "" : line.substr(end);
        }
        if (closing.empty() || !line.empty()) {
            closing.clear();
            const std::size_t raw = line.find("R\"");
            const std::size_t open = raw == std::string::npos ? raw : line.find('(', raw);
            if (open != std::string::npos) {
                const std::string ending = ")" + line.substr(raw + 2, open - raw - 2) + "\"";
                if (line.find(ending, open) == std::string::npos) {
                    closing = ending;
                    line.resize(open);
                }
            }
        }
        const std::size_t comment = line.find("//");
        // Two slashes behind an odd number of quotes are text, as in "http://".
        const bool in_text =
            comment != std::string::npos &&
            std::count(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(comment), '"') % 2;
        result.push_back(in_text ? line : line.substr(0, comment));
    }
    return result;
}

void expect_none(const std::vector<std::string>& offences, std::string_view law) {
    std::string list;
    for (const std::string& offence : offences) {
        list += "\n    " + offence;
    }
    CHECK_MESSAGE(offences.empty(), law, list);
}

} // namespace matchmark::drift
