// Files of one folder may be read as one by the compiler of C++: a function that two of them define
// for themselves could be called in the place of the other.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

// The layout tool indents nothing for a namespace, so a function's head begins in the first column.
std::set<std::string> own_functions(const std::vector<std::string>& code) {
    static const std::regex head(R"(^(?:template <.*> )?[\w:<>,&*\[\] ]*[ &*](\w+)\(.*)");
    static const std::regex of_a_class(R"(^[^(]*::\w+\(.*)");
    std::set<std::string> names;
    bool inside = false;
    for (const std::string& line : code) {
        if (line == "namespace {")
            inside = true;
        else if (line.starts_with("} ") && line.find_first_not_of("} ") == std::string::npos)
            inside = false; // its comment is left out
        std::smatch found;
        if (inside && !line.starts_with(' ') && !std::regex_match(line, of_a_class) &&
            std::regex_match(line, found, head))
            names.insert(found[1]);
    }
    return names;
}

} // namespace

TEST_CASE("functions that a file keeps to itself have names of their own in its folder") {
    std::map<std::string, std::string> defined_in; // folder and name to file
    std::vector<std::string> offences;
    for (const ProjectFile& file : files_of({"compiler", "tests"}, {".cpp"})) {
        const std::string folder = file.path.substr(0, file.path.rfind('/') + 1);
        if (folder == "tests/fuzz/")
            continue; // each is a program
        for (const std::string& name : own_functions(code_lines(file))) {
            const auto [place, is_new] = defined_in.emplace(folder + name, file.path);
            if (!is_new)
                offences.push_back(file.path + " and " + place->second + " both define " + name);
        }
    }
    CHECK(defined_in.size() > 1000);
    expect_none(offences, "two files of a folder define no function of one name for themselves");
}

TEST_CASE("a file's own functions are told from the rest") {
    const auto names =
        own_functions({"int before(int x) {", "namespace {", "struct Tally {",
                       "    int inside(int x) {", "};", "", "std::vector<int> listed(const T& x) {",
                       "    call(3);", "}", "template <class T> bool same(T a, T b) {", "",
                       "void Writer::write(int x) {", "} ", "int after(int x) {"});
    CHECK(names == std::set<std::string>{"listed", "same"});
}
