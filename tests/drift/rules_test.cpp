// A rule is a file and a page of the same name, and the page says what the rule is.
#include "drift/project.hpp"

#include "check/rule.hpp"
#include "drive/compilation.hpp"
#include "drive/reading_findings.hpp"
#include "support/case_reader.hpp"

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

namespace {

using matchmark::check::all_rules;

std::set<std::string> rules_declared() {
    std::set<std::string> names;
    for (const auto* rule : all_rules()) {
        names.insert(rule->name);
    }
    return names;
}

// The rules that the first example of a page raises.
std::set<std::string> rules_raised_by(const ProjectFile& page) {
    const std::string fence = "```mmk fails\n";
    const std::size_t begin = page.text.find(fence);
    if (begin == std::string::npos) {
        return {};
    }
    const std::size_t start = begin + fence.size();
    matchmark::MapDisk disk;
    disk.files["example.mmk"] = page.text.substr(start, page.text.find("```", start) - start);
    std::set<std::string> names;
    for (const auto& finding : matchmark::drive::compile(disk, "example.mmk").findings) {
        names.insert(finding.rule);
    }
    return names;
}

std::string listed(const std::set<std::string>& names) {
    std::string text;
    for (const std::string& name : names) {
        text += " " + name;
    }
    return text;
}

} // namespace

TEST_CASE("rules declared = pages = rules that their pages raise = rules that some case expects") {
    const std::set<std::string> declared = rules_declared();
    std::set<std::string> paged;
    std::set<std::string> raised;
    for (const ProjectFile& page : files_of({folder}, {".md"})) {
        const std::string file = page.path.substr(folder.size());
        const std::string rule = hyphenated(file.substr(0, file.size() - 3));
        paged.insert(rule);
        const std::set<std::string> found = rules_raised_by(page);
        CHECK_MESSAGE(found == std::set<std::string>{rule}, page.path, " raises", listed(found));
        raised.insert(found.begin(), found.end());
    }
    std::set<std::string> expected;
    for (const ProjectFile& cases : files_of({"tests/cases/check"}, {".mmk"})) {
        for (const std::string& rule : matchmark::test::rules_expected(cases.text)) {
            expected.insert(rule);
        }
    }
    REQUIRE(declared.size() > 20);
    CHECK(listed(paged) == listed(declared));
    CHECK(listed(raised) == listed(declared));
    std::vector<std::string> offences;
    for (const std::string& rule : declared) {
        if (!expected.contains(rule)) {
            offences.push_back(rule);
        }
    }
    expect_none(offences, "every rule is expected by some case of tests/cases/check/");
}

TEST_CASE("the findings of reading are those of their page, and each is met in some test") {
    const ProjectFile page = read_project_file("docs/reading-findings.md");
    const std::vector<ProjectFile> tests =
        files_of({"tests/cases", "tests/unit", "tests/program"}, {".mmk", ".cpp"});
    std::vector<std::string> offences;
    for (const auto& finding : matchmark::drive::reading_findings()) {
        const std::string name(finding.name);
        if (page.text.find("| `" + name + "` |") == std::string::npos) {
            offences.push_back(name + " is not in " + page.path);
        }
        const bool met = std::any_of(tests.begin(), tests.end(), [&](const ProjectFile& file) {
            return file.text.find("[" + name + "]") != std::string::npos ||
                   file.text.find("\"" + name + "\"") != std::string::npos;
        });
        if (!met) {
            offences.push_back(name + " is met in no test");
        }
    }
    for (const std::string& line : page.lines) {
        if (!line.starts_with("| `")) {
            continue;
        }
        const std::string name = line.substr(3, line.find('`', 3) - 3);
        const auto findings = matchmark::drive::reading_findings();
        const bool known = std::any_of(findings.begin(), findings.end(),
                                       [&](const auto& finding) { return finding.name == name; });
        if (!known) {
            offences.push_back(name + " is no finding of reading");
        }
    }
    expect_none(offences, "docs/reading-findings.md is the table of drive/reading_findings.cpp");
}
