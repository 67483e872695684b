// What must not be said: a kind by its name in C++, a path of one machine, a folder for odds and
// ends.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

// Names of the library that are the compiler's own words too, and why.
const std::map<std::string, std::string> own_words{
    {"plain-part", "a part of which no kind is said is one"},
    {"gear", "the word that declares what is worn"},
    {"knife", "an English plural"},
    {"pliers", "an English plural"},
    {"filter", "an element of SVG"},
    {"handle", "a word of the language: a task of a timing"},
    {"unplug", "a word that opens a bench note"},
    {"socket", "where a note says that something is plugged in"},
    {"mains", "an English plural"},
    {"battery", "a priority part of Regulation (EU) 2023/1669"},
};

// What a file of the language declares that is knowledge of the trade.
std::vector<std::string> declared_in(const ProjectFile& file) {
    std::vector<std::string> names;
    for (const std::string& line : file.lines) {
        for (const std::string sort : {"kind ", "drive ", "form ", "thread ", "grade ", "friction ",
                                       "tool-kind ", "gear ", "rating ", "sign ", "hazard "}) {
            if (line.starts_with(sort)) {
                names.push_back(
                    line.substr(sort.size(), line.find_first_of(" #", sort.size()) - sort.size()));
            }
        }
    }
    return names;
}

// The texts in quotes of a line of C++ that has no quote inside them.
std::vector<std::string> literals_in(const std::string& line) {
    std::vector<std::string> literals;
    for (std::size_t open = line.find('"'); open != std::string::npos;) {
        const std::size_t close = line.find('"', open + 1);
        if (close == std::string::npos) {
            break;
        }
        literals.push_back(line.substr(open + 1, close - open - 1));
        open = line.find('"', close + 1);
    }
    return literals;
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

TEST_CASE("nothing of the parts library is named in C++") {
    std::set<std::string> names;
    for (const ProjectFile& file : files_of({"stdlib_parts"}, {".mmk"})) {
        for (const std::string& name : declared_in(file)) {
            names.insert(name);
        }
    }
    REQUIRE(names.size() > 100);
    std::vector<std::string> offences;
    std::set<std::string> needed;
    for (const ProjectFile& file : files_of({"compiler", "grammar"}, {".cpp", ".hpp"})) {
        const std::vector<std::string> code = code_lines(file);
        for (std::size_t i = 0; i < code.size(); ++i) {
            for (const std::string& literal : literals_in(code[i])) {
                if (own_words.contains(literal)) {
                    needed.insert(literal);
                } else if (names.contains(literal)) {
                    offences.push_back(file.path + ":" + std::to_string(i + 1) + " \"" + literal +
                                       "\"");
                }
            }
        }
    }
    for (const auto& [word, reason] : own_words) {
        if (!needed.contains(word)) {
            offences.push_back("the exemption of " + word + " is no longer needed: " + reason);
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
    file.lines = {"kind cap-nut \"cap nut\" is fastener", "  kind x", "kind pin#", "part kind",
                  "thread M2"};
    CHECK(declared_in(file) == std::vector<std::string>{"cap-nut", "pin", "M2"});
    CHECK(literals_in("f(\"a b\", \"c\")") == std::vector<std::string>{"a b", "c"});
    CHECK(names_a_machine("see /home/me/a"));
    CHECK(names_a_machine("\"/tmp/a\""));
    CHECK_FALSE(names_a_machine("take-apart/"
                                "work/put-back"));
    CHECK_FALSE(names_a_machine("build/tmp/x"));
}
