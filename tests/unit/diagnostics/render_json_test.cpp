// Programs are told the same as people.
#include "diagnostics/render.hpp"
#include "support/places.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <string>
#include <vector>

using namespace matchmark;
using test::span_of;
using Json = nlohmann::ordered_json;

TEST_CASE("a finding as JSON has its place, its marks and its edits") {
    SourceMap sources;
    const FileId file = sources.add("höhe.mmk", "part 蓋 lid\n  in box\n");
    Diagnostic finding;
    finding.rule = "some-rule";
    finding.severity = Severity::warning;
    finding.message = "a \"quoted\" 蓋";
    finding.primary = span_of(sources, file, "lid");
    finding.label = "here";
    finding.why = "because";
    finding.help = "write";
    finding.related.push_back({span_of(sources, file, "box"), "in this"});
    finding.edits.push_back({{file, 12, 13}, "\n  torque 2 N.m\n"});
    finding.safe = false;
    finding.variants = {"eu"};
    const std::string text = render_json(sources, {finding});
    CHECK(text.ends_with("}\n"));
    const Json root = Json::parse(text);
    REQUIRE(root.at("findings").size() == 1);
    const Json& one = root["findings"][0];
    CHECK(one.at("rule") == "some-rule");
    CHECK(one.at("severity") == "warning");
    CHECK(one.at("file") == "höhe.mmk");
    CHECK(one.at("line") == 1);
    CHECK(one.at("column") == 8);
    CHECK(one.at("end_line") == 1);
    CHECK(one.at("end_column") == 11);
    CHECK(one.at("message") == "a \"quoted\" 蓋");
    CHECK(one.at("why") == "because");
    CHECK(one.at("help") == "write");
    CHECK(one.at("safe") == false);
    CHECK(one.at("variants") == Json::array({"eu"}));
    REQUIRE(one.at("related").size() == 1);
    CHECK(one["related"][0].at("line") == 2);
    CHECK(one["related"][0].at("column") == 6);
    CHECK(one["related"][0].at("label") == "in this");
    REQUIRE(one.at("edits").size() == 1);
    CHECK(one["edits"][0].at("line") == 1);
    CHECK(one["edits"][0].at("end_line") == 2);
    CHECK(one["edits"][0].at("end_column") == 1);
    CHECK(one["edits"][0].at("text") == "\n  torque 2 N.m\n");
}

TEST_CASE("no findings, no place, and bytes that are not UTF-8") {
    const SourceMap sources;
    CHECK(Json::parse(render_json(sources, {})) == Json{{"findings", Json::array()}});
    Diagnostic finding;
    finding.rule = "not-text";
    finding.message = "a\xFFz";
    const Json root = Json::parse(render_json(sources, {finding}));
    CHECK(root["findings"][0].at("file").is_null());
    CHECK(root["findings"][0].at("line").is_null());
    CHECK(root["findings"][0].at("message") == "a\xEF\xBF\xBDz");
}
