// Files, functions and lines stay short enough to be read.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

constexpr std::size_t longest_file = 500;    // lines
constexpr std::size_t advised_file = 400;    // lines
constexpr std::size_t longest_function = 60; // lines, its head and its closing brace among them
constexpr std::size_t longest_line = 100;    // characters

std::size_t characters_in(const std::string& line) {
    return static_cast<std::size_t>(std::count_if(line.begin(), line.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

std::size_t indent_of(const std::string& line) {
    return std::min(line.find_first_not_of(' '), line.size());
}

struct Body {
    std::size_t line = 0; // the first, from 1
    std::size_t length = 0;
};

// Functions at the outermost level and those of a class: what ends in a brace that is alone on its
// line, in the first or fifth column, from the nearest line above that is indented no more. (The
// layout tool indents nothing for a namespace, and closes classes with "};".)
std::vector<Body> functions_in(const std::vector<std::string>& lines) {
    std::vector<Body> found;
    for (std::size_t end = 0; end < lines.size(); ++end) {
        if (lines[end] != "}" && lines[end] != "    }") {
            continue;
        }
        const std::size_t depth = indent_of(lines[end]);
        std::size_t begin = end;
        while (begin > 0) {
            --begin;
            const std::string& line = lines[begin];
            const bool label = line.ends_with(':') || line.starts_with('#');
            if (!line.empty() && indent_of(line) <= depth && !label) {
                break;
            }
        }
        found.push_back({begin + 1, end - begin + 1});
    }
    return found;
}

} // namespace

TEST_CASE("files are short") {
    std::vector<std::string> offences;
    std::string advised;
    for (const ProjectFile& file : files_of({"compiler", "grammar", "tests"}, {".cpp", ".hpp"})) {
        const std::string told = file.path + " has " + std::to_string(file.lines.size()) + " lines";
        if (file.lines.size() > longest_file) {
            offences.push_back(told);
        } else if (file.lines.size() > advised_file) {
            advised += "\n    " + told;
        }
    }
    if (!advised.empty()) {
        MESSAGE("400 lines are advised:", advised);
    }
    expect_none(offences, "a file has 500 lines at most");
}

TEST_CASE("functions are short") {
    std::vector<std::string> offences;
    std::size_t seen = 0;
    for (const ProjectFile& file : files_of({"compiler", "grammar"}, {".cpp", ".hpp"})) {
        for (const Body& body : functions_in(code_lines(file))) {
            ++seen;
            if (body.length > longest_function) {
                offences.push_back(file.path + ":" + std::to_string(body.line) + " has " +
                                   std::to_string(body.length) + " lines");
            }
        }
    }
    CHECK(seen > 100);
    expect_none(offences, "a function has 60 lines at most");
}

TEST_CASE("lines are short") {
    std::vector<std::string> offences;
    for (const ProjectFile& file : files_of({"compiler", "grammar", "tests"}, {".cpp", ".hpp"})) {
        const std::vector<std::string> code = code_lines(file);
        for (std::size_t i = 0; i < file.lines.size(); ++i) {
            // A line inside a raw string is as long as what it shows.
            const bool shown = code[i].empty() && !file.lines[i].starts_with("//");
            if (!shown && characters_in(file.lines[i]) > longest_line) {
                offences.push_back(file.path + ":" + std::to_string(i + 1));
            }
        }
    }
    expect_none(offences, "a line has 100 columns at most");
}

TEST_CASE("a file opens with a sentence, and there are no macros") {
    std::vector<std::string> offences;
    for (const ProjectFile& file : files_of({"compiler", "grammar", "tests"}, {".cpp", ".hpp"})) {
        if (file.lines.empty() || !file.lines[0].starts_with("// ")) {
            offences.push_back(file.path + " opens with no sentence");
        }
        for (const std::string& line : code_lines(file)) {
            if (line.starts_with("#define") && line.find("DOCTEST_") == std::string::npos) {
                offences.push_back(file.path + ": " + line);
            }
        }
    }
    expect_none(offences, "a file opens with a sentence and defines no macro");
}

TEST_CASE("the length of a function is found by its closing brace") {
    const auto functions = functions_in({"int a() {", "    return 1;", "}", "", "int b(int x,",
                                         "      int y) {", "", "    return x;", "}", "class C {",
                                         "    int d() {", "        return 1;", "    }", "};"});
    REQUIRE(functions.size() == 3);
    CHECK(functions[0].line == 1);
    CHECK(functions[0].length == 3);
    CHECK(functions[1].line == 5);
    CHECK(functions[1].length == 5);
    CHECK(functions[2].line == 11);
    CHECK(functions[2].length == 3);
    CHECK(characters_in("Höhe") == 4);
}

TEST_CASE("comments and raw strings are told from code") {
    ProjectFile file;
    file.lines = {"int a; // b", "call(\"http://x\");", "f(R\"(one", "int x;", ")\", 2);", "g();"};
    const std::vector<std::string> code = code_lines(file);
    REQUIRE(code.size() == 6);
    CHECK(code[0] == "int a; ");
    CHECK(code[1] == "call(\"http://x\");");
    CHECK(code[2] == "f(R\"");
    CHECK(code[3].empty());
    CHECK(code[4] == ")\", 2);");
    CHECK(code[5] == "g();");
}
