// What must not be said: a kind by its name in C++, a path of one machine, a folder for odds and
// ends.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

// Kinds that the compiler may name, and why: a part of which no kind is said is a plain part.
const std::set<std::string> named_kinds{"plain-part"};

// The kinds that a file of the language declares.
std::vector<std::string> kinds_in(const ProjectFile& file) {
    std::vector<std::string> kinds;
    for (const std::string& line : file.lines) {
        if (line.starts_with("kind ")) {
            kinds.push_back(line.substr(5, line.find_first_of(" #", 5) - 5));
        }
    }
    return kinds;
}

// Whether a line of text holds a path from the root of somebody's machine.
bool names_a_machine(const std::string& line) {
    for (const std::string top : {"home", "root", "work", "tmp", "Users", "mnt", "workspace"}) {
        const std::string start = "/" + top + "/";
        for (std::size_t at = line.find(start); at != std::string::npos;
             at = line.find(start, at + 1)) {
            const char before = at == 0 ? ' ' : line[at - 1];
            const bool inside_a_path = std::isalnum(static_cast<unsigned char>(before)) != 0 ||
                                       before == '.' || before == '-' || before == '}';
            if (!inside_a_path) {
                return true;
            }
        }
    }
    return false;
}

} // namespace

TEST_CASE("no kind is named in C++") {
    std::set<std::string> kinds;
    for (const ProjectFile& file : files_of({"stdlib_parts"}, {".mmk"})) {
        for (const std::string& kind : kinds_in(file)) {
            kinds.insert(kind);
        }
    }
    REQUIRE(kinds.size() > 20);
    std::vector<std::string> offences;
    std::set<std::string> needed;
    for (const ProjectFile& file : files_of({"compiler", "grammar"}, {".cpp", ".hpp"})) {
        const std::vector<std::string> code = code_lines(file);
        for (const std::string& kind : kinds) {
            const std::string quoted = "\"" + kind + "\"";
            for (std::size_t i = 0; i < code.size(); ++i) {
                if (code[i].find(quoted) == std::string::npos) {
                    continue;
                }
                needed.insert(kind);
                if (!named_kinds.contains(kind)) {
                    offences.push_back(file.path + ":" + std::to_string(i + 1) + " " + quoted);
                }
            }
        }
    }
    for (const std::string& kind : named_kinds) {
        if (!needed.contains(kind)) {
            offences.push_back("the exemption of " + kind + " is no longer needed");
        }
    }
    expect_none(offences, "the knowledge of the trade stands in stdlib_parts/ alone");
}

TEST_CASE("nothing names a path of the machine on which it was written") {
    std::vector<std::string> offences;
    std::vector<ProjectFile> files =
        files_of({"compiler", "grammar", "stdlib_parts", "tests", "samples", "docs"},
                 {".cpp", ".hpp", ".cmake", ".md", ".mmk", ".txt", ".css", ".svg", ".json", "run",
                  "set-up"});
    for (const char* path : {"README.md", "DEVELOPERS.md", "CMakeLists.txt", ".ci/run"}) {
        files.push_back(read_project_file(path));
    }
    for (const ProjectFile& file : files) {
        for (std::size_t i = 0; i < file.lines.size(); ++i) {
            // The tests of this very law hold examples of what it forbids.
            const bool own = file.path == "tests/drift/words_test.cpp";
            if (!own && names_a_machine(file.lines[i])) {
                offences.push_back(file.path + ":" + std::to_string(i + 1) + " " + file.lines[i]);
            }
        }
    }
    expect_none(offences, "the project names no path of one machine");
}

TEST_CASE("there is no folder or file for odds and ends") {
    std::vector<std::string> offences;
    for (const ProjectFile& file :
         files_of({"compiler", "grammar", "tests"}, {".cpp", ".hpp", ".cmake"})) {
        for (const char* word : {"util", "common", "helper", "manager", "misc"}) {
            if (file.path.find(word) != std::string::npos) {
                offences.push_back(file.path);
            }
        }
    }
    expect_none(offences, "a file is named for what is in it");
}

TEST_CASE("the top of the project holds what it should") {
    const std::set<std::string> known{"README.md", "DEVELOPERS.md", "CMakeLists.txt", "LICENSE",
                                      "compiler",  "grammar",       "stdlib_parts",   "tests",
                                      "samples",   "docs",          "build"};
    std::vector<std::string> offences;
    for (const std::string& name : names_in(".")) {
        if (!name.starts_with('.') && !known.contains(name)) {
            offences.push_back(name);
        }
    }
    expect_none(offences, "nothing else stands at the top");
}

TEST_CASE("what is looked for would be found") {
    ProjectFile file;
    file.lines = {"kind cap-nut \"cap nut\" is fastener", "  kind x", "kind pin#", "part kind"};
    CHECK(kinds_in(file) == std::vector<std::string>{"cap-nut", "pin"});
    CHECK(names_a_machine("see /home/me/a"));
    CHECK(names_a_machine("\"/tmp/a\""));
    CHECK_FALSE(names_a_machine("take-apart/"
                                "work/put-back"));
    CHECK_FALSE(names_a_machine("build/tmp/x"));
}
