// The files of the project, as the tests that keep documents and code together read them.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drift {

struct ProjectFile {
    std::string path; // from the project's root
    std::string text;
    std::vector<std::string> lines;
};

// Every file below one of the folders whose name has one of the endings, sorted by path.
std::vector<ProjectFile> files_of(std::initializer_list<std::string_view> folders,
                                  std::initializer_list<std::string_view> endings);

// One file; an empty one when it cannot be read.
ProjectFile read_project_file(const std::string& path);

// Names of what stands in a folder, sorted.
std::vector<std::string> names_in(const std::string& folder);

// The lines of a C++ file with comments and the insides of raw strings left out.
std::vector<std::string> code_lines(const ProjectFile& file);

// Fails the test with all offences, one a line.
void expect_none(const std::vector<std::string>& offences, std::string_view law);

} // namespace matchmark::drift
