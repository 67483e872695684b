// A place of the source is in the step whose lines it stands among, errors or not.
#include "serve/preview/findings.hpp"

#include "parse/parse.hpp"

#include <doctest/doctest.h>

using matchmark::serve::step_at;

TEST_CASE("findings find their step") {
    const std::string text = "guide a \"A\"\n  for novice\n\ntake-apart\n\nstep open \"Open\"\n"
                             "  undo lid\n  ?? broken\n\nput-back\n\nstep open \"Close\"\n"
                             "  fit lid\n";
    matchmark::SourceMap sources;
    const auto id = sources.add("a.mmk", text);
    std::vector<matchmark::Diagnostic> findings;
    const matchmark::syntax::Files files{std::make_shared<const matchmark::syntax::File>(
        matchmark::syntax::parse(sources, id, findings))};
    const auto at = [&](const char* words) {
        const auto begin = static_cast<std::uint32_t>(text.find(words));
        return step_at(sources, files, {id, begin, begin + 1});
    };
    CHECK_FALSE(at("for novice"));
    CHECK_FALSE(at("put-back"));
    REQUIRE(at("?? broken"));
    CHECK(at("?? broken")->name == "open");
    CHECK(at("?? broken")->guide == "a");
    CHECK(at("?? broken")->section == matchmark::model::Section::take_apart);
    REQUIRE(at("fit lid"));
    CHECK(at("fit lid")->section == matchmark::model::Section::put_back);
    CHECK_FALSE(step_at(sources, files, {}));
}

TEST_CASE("a finding stands under its step's heading, the rest on top") {
    using matchmark::serve::FindingOnPage;
    const std::string page = "<section class=\"step\" aria-labelledby=\"step-1\">\n<header><h3 "
                             "id=\"step-1\">Open</h3></header>\n<p>rest</p></section>\n";
    FindingOnPage beside{matchmark::Severity::error, "brief", "<p>whole</p>\n", {}};
    beside.step = {"a", matchmark::model::Section::take_apart, "open"};
    const FindingOnPage top{matchmark::Severity::warning, "other", "<p>other</p>\n", {}};
    const std::string made = matchmark::serve::with_findings(
        page, {beside, top}, {{matchmark::model::Section::take_apart, "open", "step-1"}}, "a",
        true);
    CHECK(made.find("1 error, 1 warning") != std::string::npos);
    CHECK(made.find("as it was before these errors") != std::string::npos);
    CHECK(made.find("<p>whole</p>") > made.find("</header>"));
    CHECK(made.find("<p>whole</p>") < made.find("<p>rest</p>"));
    CHECK(made.find("<p>other</p>") < made.find("class=\"step\""));
    CHECK(made.find("href=\"#finding-1\"") < made.find("<p>other</p>"));
    // In another guide of the same file it is no step of this page.
    const std::string elsewhere = matchmark::serve::with_findings(
        page, {beside}, {{matchmark::model::Section::take_apart, "open", "step-1"}}, "b", false);
    CHECK(elsewhere.find("<p>whole</p>") < elsewhere.find("class=\"step\""));
}
