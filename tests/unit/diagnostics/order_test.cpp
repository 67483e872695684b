// Findings come in order of place, each told once.
#include "diagnostics/diagnostic.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;

namespace {

Diagnostic ordered_finding(Span span, const std::string& rule, const std::string& message = "m") {
    Diagnostic result;
    result.rule = rule;
    result.message = message;
    result.primary = span;
    return result;
}

} // namespace

TEST_CASE("findings are sorted by file, place and rule, and stay in order otherwise") {
    std::vector<Diagnostic> findings{
        ordered_finding({1, 0, 1}, "a", "1"), ordered_finding({0, 9, 9}, "b", "2"),
        ordered_finding({0, 2, 4}, "z", "3"), ordered_finding({0, 2, 4}, "c", "5"),
        ordered_finding({0, 2, 4}, "c", "4"), ordered_finding({}, "a", "last"),
    };
    sort_findings(findings);
    std::string order;
    for (const Diagnostic& each : findings) {
        order += each.message + " ";
    }
    CHECK(order == "5 4 3 2 1 last ");
}

TEST_CASE("an exact repeat is told once, even when another stands between") {
    std::vector<Diagnostic> findings{
        ordered_finding({0, 2, 4}, "c", "one"),
        ordered_finding({0, 2, 4}, "c", "two"),
        ordered_finding({0, 2, 4}, "c", "one"),
        ordered_finding({0, 5, 6}, "c", "one"),
    };
    sort_findings(findings);
    REQUIRE(findings.size() == 3);
    CHECK(findings[0].message == "one");
    CHECK(findings[1].message == "two");
    CHECK(findings[2].primary.begin == 5);
}

TEST_CASE("findings that differ in anything are all told") {
    const Diagnostic base = ordered_finding({0, 2, 4}, "c");
    std::vector<Diagnostic> findings(10, base);
    findings[1].severity = Severity::warning;
    findings[2].label = "x";
    findings[3].why = "x";
    findings[4].help = "x";
    findings[5].related.push_back({{0, 1, 2}, "x"});
    findings[6].edits.push_back({{0, 1, 2}, "x"});
    findings[7].safe = false;
    findings[8].variants = {"eu"};
    findings[9].message = "x";
    sort_findings(findings);
    CHECK(findings.size() == 10);
}

TEST_CASE("errors are told from the rest") {
    std::vector<Diagnostic> findings{ordered_finding({}, "a")};
    CHECK(any_error(findings));
    findings[0].severity = Severity::warning;
    CHECK_FALSE(any_error(findings));
    CHECK_FALSE(any_error({}));
}
