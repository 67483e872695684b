// A rule is a file and a page of the same name, and the page says what the rule is.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

const std::string folder = "compiler/check/rules/";

// The names of the files of the rules with one ending, the ending left out.
std::set<std::string> rules_with(const std::string& ending) {
    std::set<std::string> names;
    for (const std::string& name : names_in(folder)) {
        if (name.ends_with(ending)) {
            names.insert(name.substr(0, name.size() - ending.size()));
        }
    }
    return names;
}

std::string hyphenated(std::string name) {
    std::replace(name.begin(), name.end(), '_', '-');
    return name;
}

} // namespace

TEST_CASE("every rule has a page, and every page a rule") {
    const std::set<std::string> rules = rules_with(".cpp");
    const std::set<std::string> pages = rules_with(".md");
    CHECK_FALSE(rules.empty());
    std::vector<std::string> offences;
    for (const std::string& rule : rules) {
        if (!pages.contains(rule)) {
            offences.push_back(folder + rule + ".cpp has no page");
        }
    }
    for (const std::string& page : pages) {
        if (!rules.contains(page)) {
            offences.push_back(folder + page + ".md has no rule");
        }
    }
    expect_none(offences, "a rule is a .cpp and a .md of the same name");
}

TEST_CASE("a page has a title, and a rule is called by the name of its file") {
    std::vector<std::string> offences;
    for (const ProjectFile& page : files_of({folder}, {".md"})) {
        if (page.lines.empty() || !page.lines[0].starts_with("# ") || page.lines[0].size() < 4) {
            offences.push_back(page.path + " has no title in its first line");
        }
    }
    for (const std::string& rule : rules_with(".cpp")) {
        const ProjectFile file = read_project_file(folder + rule + ".cpp");
        if (file.text.find("\"" + hyphenated(rule) + "\"") == std::string::npos) {
            offences.push_back(file.path + " does not name \"" + hyphenated(rule) + "\"");
        }
    }
    expect_none(offences, "rules and pages are called as their files are");
}
