// Lines by which the parts library and authors' files say what the trade knows.
#include "unit/parse/written_tree.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;
using namespace matchmark::test;

namespace {

// The line is refused, and named as what it should have been.
void check_refused(const std::string& text, const std::string& words) {
    const Parsed parsed(text);
    INFO(text);
    REQUIRE(parsed.findings.size() == 1);
    CHECK(parsed.findings.front().message.find(words) != std::string::npos);
}

} // namespace

TEST_CASE("declarations of the trade") {
    check_shapes(
        "",
        {{R"(form metric "ISO metric")", R"(declaration 0 form: name metric, text "ISO metric")"},
         {"grade class-8.8", "declaration 0 grade: name class-8.8"},
         {R"(friction oiled "oiled")", R"(declaration 0 friction: name oiled, text "oiled")"},
         {"tool-kind opening-pick", "declaration 0 tool-kind: name opening-pick"},
         {"gear ear-muffs", "declaration 0 gear: name ear-muffs"},
         {R"(rating IP6X "dust-tight")", R"(declaration 0 rating: name IP6X, text "dust-tight")"},
         {R"(sign noise "Noise")", R"(declaration 0 sign: name noise, text "Noise")"}});
}

TEST_CASE("details of threads, grades and frictions") {
    check_shapes("form f\n", {{"  pitch line 0.649519", "detail 1 pitch line: number 0.649519"},
                              {"  root 1.226869", "detail 1 root: number 1.226869"}});
    check_shapes(
        "thread M6\n",
        {{"  form metric", "detail 1 form: name metric"},
         {"  diameter 6 mm", "detail 1 diameter: number 6, unit mm"},
         {"  root at least 4.6 mm", "detail 1 root at least: number 4.6, unit mm"},
         {"  bears on 6.6..10 mm", "detail 1 bears on: number 6.6, range .., number 10, unit mm"}});
    check_shapes("grade g\n",
                 {{"  tensile 800 MPa", "detail 1 tensile: number 800, unit MPa"},
                  {"  yield 660 MPa above 16 mm",
                   "detail 1 yield: number 660, unit MPa, word above, number 16, unit mm"},
                  {"  shear 0.84", "detail 1 shear: number 0.84"},
                  {"  usual", "detail 1 usual"}});
    check_shapes("friction f\n", {{"  coefficient 0.12", "detail 1 coefficient: number 0.12"},
                                  {"  usual", "detail 1 usual"}});
}

TEST_CASE("details of drives and tools") {
    check_shapes(
        "drive d\n",
        {{"  size 6", "detail 1 size: number 6"},
         {"  size 6 across 1.75 mm for M2, M2.5 \"ISO 14579\"",
          "detail 1 size: number 6, word across, number 1.75, unit mm, word for, name M2, comma, "
          "name M2.5, text \"ISO 14579\""},
         {"  size PH00 for M1.6", "detail 1 size: name PH00, word for, name M1.6"},
         {"  at a pinch slotted-driver 1.8 for 6",
          "detail 1 at a pinch: name slotted-driver, number 1.8, word for, number 6"},
         {"  at a pinch coin for 8", "detail 1 at a pinch: name coin, word for, number 8"}});
    check_shapes("tool-kind t\n", {{"  class special", "detail 1 class: word special"}});
    check_shapes("guide g \"G\"\n",
                 {{"  tool puller \"gear puller\", special",
                   "detail 1 tool: name puller, text \"gear puller\", comma, word special"}});
}

TEST_CASE("details of signs, gear and hazards") {
    check_shapes("sign s \"S\"\n",
                 {{"  number W012", "detail 1 number: name W012"},
                  {"  warns", "detail 1 warns"},
                  {"  obliges", "detail 1 obliges"},
                  {"  forbids", "detail 1 forbids"},
                  {"  outline \"M0 0 L9 9 Z\"", "detail 1 outline: text \"M0 0 L9 9 Z\""}});
    check_shapes("gear g\n", {{"  sign wear-gloves", "detail 1 sign: name wear-gloves"}});
    check_shapes("hazard h \"H\"\n",
                 {{"  sign electricity", "detail 1 sign: name electricity"},
                  {"  wear gloves, face-shield", "detail 1 wear: name gloves, comma, "
                                                 "name face-shield"},
                  {"  order isolate, discharge, prove",
                   "detail 1 order: name isolate, comma, name discharge, comma, name prove"},
                  {"  lit by fire, mains", "detail 1 lit by: name fire, comma, name mains"}});
}

TEST_CASE("what kinds and items say of wear, waiting and depth") {
    check_shapes(
        "kind k is bond\n",
        {{"  cure laid -> set by hand takes 5 s waits 24 h",
          "detail 1 verb cure: name laid, arrow ->, name set, word by, name hand, "
          "word takes, number 5, unit s, word waits, number 24, unit h"},
         {"  drain a -> b decays", "detail 1 verb drain: name a, arrow ->, name b, word decays"},
         {"  good for 30 times", "detail 1 good for: number 30, word times"},
         {"  used again if \"it grips\"", "detail 1 used again if: text \"it grips\""}});
    check_shapes(
        "fastener f\n",
        {{"  preload 18 kN in star, 2 passes",
          "detail 1 preload: number 18, unit kN, word in, name star, comma, number 2, "
          "word passes"},
         {"  depth 6 mm", "detail 1 depth: number 6, unit mm"},
         {"  depth 6 mm above cell", "detail 1 depth: number 6, unit mm, word above, name cell"}});
}

TEST_CASE("a line of the trade that is not whole says what it lacks") {
    check_refused("tool-kind t\n  class rare\n", "`basic`");
    check_refused("thread M6\n  bears on 6.6 mm\n", "expected");
    check_refused("drive d\n  at a pinch coin\n", "expected");
    check_refused("kind k is bond\n  good for ever\n", "expected a count");
    check_refused("fastener f\n  depth above cell\n", "expected");
}
