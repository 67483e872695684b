// Every slip is reported where it is, in the language's words, with what mends it.
#include "unit/parse/written_tree.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace matchmark;
using namespace matchmark::test;

namespace {

struct Slipped {
    const char* above;   // the declaration above, or none
    const char* line;    // with one slip
    const char* finding; // place, message, help, edits
};

// One slip a row.
const std::vector<Slipped>& slips() {
    // clang-format off
    static const std::vector<Slipped> table = {
        {"",
         R"(device logger)",
         R"(1:14-14 expected a title in double quotes after `logger`, found end of line | )"
         R"(a line of this sort: `device kettle "Kettle"`)"},
        {"",
         R"(devise logger "Logger")",
         R"(1:1-7 expected a declaration, found `devise` | write `device` | 1:1 `devise` -> )"
         R"(`device`)"},
        {"",
         R"(part lid "display lid)",
         R"(1:10-22 the text that starts here has no closing `"` | close it | 1:22 `` -> `"`)"},
        {"",
         R"(fastener s 4 x)",
         R"(1:15-15 expected a kind after `x`, found end of line | a line of this sort: )"
         R"(`fastener lid-screws "lid screw" 4 x screw M3 x 8, hexalobular 10`)"},
        {"",
         R"(fastener s 4 x screw M2,)",
         R"(1:25-25 expected a word or a size that describes it after `,`, found end of )"
         R"(line | a line of this sort: `fastener lid-screws "lid screw" 4 x screw M3 x )"
         R"(8, hexalobular 10`)"},
        {"",
         R"(fluid oil 1.2 kind oil)",
         R"(1:15-19 expected a unit, such as mm or N.m, after `1.2`, found `kind` | a )"
         R"(line of this sort: `fluid oil "oil" 0.5 l kind oil`)"},
        {"",
         R"(fluid oil 1,2 l)",
         R"(1:12-13 expected a unit, such as mm or N.m, after `1`, found `,` | write a )"
         R"(decimal point: `1.2` | 1:12 `,` -> `.`)"},
        {"",
         R"(bond b “glue”)",
         R"(1:8-9 expected `in`, `kind` or the end of the line after `b`, found a curly quote )"
         R"(| write `"` | 1:8 `“` -> `"` | 1:13 `”` -> `"`)"},
        {"",
         R"(bond b kind glue in)",
         R"(1:20-20 expected an item after `in`, found end of line | a line of this sort: )"
         R"(`bond lid-seal "lid seal" kind seal-tape`)"},
        {"",
         R"(kind k "k" is prat)",
         R"(1:15-19 expected a role, such as part or fastener, after `is`, found `prat` | )"
         R"(write `part` | 1:15 `prat` -> `part`)"},
        {"",
         R"(step)",
         R"(1:5-5 expected a name after `step`, found end of line | a line of this sort: )"
         R"(`step open "Open the lid"`)"},
        {"",
         R"(step "Open")",
         R"(1:6-12 expected a name after `step`, found `"Open"` | a name of one word )"
         R"(stands before the title: `step open` | 1:6 `` -> `open `)"},
        {"",
         R"(use logger.mmk)",
         R"(1:5-15 expected a path in double quotes after `use`, found `logger.mmk` | )"
         R"(write `"logger.mmk"` | 1:5 `logger.mmk` -> `"logger.mmk"`)"},
        {"",
         R"(face f 74 128 mm)",
         R"(1:11-14 expected `x` after `74`, found `128` | a line of this sort: `face top )"
         R"(74 x 128 mm`)"},
        {"",
         R"(face f 74 x 128)",
         R"(1:16-16 expected a unit, such as mm or N.m, after `128`, found end of line | )"
         R"(a line of this sort: `face top 74 x 128 mm`)"},
        {"",
         R"(caution c lid)",
         R"(1:11-14 expected `on` after `c`, found `lid` | a line of this sort: `caution )"
         R"(hot-base on base`)"},
        {"",
         R"(caution c on lid when lid)",
         R"(1:26-26 expected a state after `lid`, found end of line | a line of this )"
         R"(sort: `caution hot-base on base`)"},
        {"",
         R"(undo lid)",
         R"(1:1-5 expected a declaration, found `undo` | a line in the first column starts )"
         R"(with a word such as `part` or `step`)"},
        {"",
         R"("lid")",
         R"(1:1-6 expected a declaration, found `"lid"` | a line in the first column starts )"
         R"(with a word such as `part` or `step`)"},
        {"",
         R"(tool key-1.5 "key")",
         R"(1:1-5 expected a declaration, found `tool` | a line in the first column starts )"
         R"(with a word such as `part` or `step`)"},
        {R"(device d "D")",
         R"(  mass 312)",
         R"(2:11-11 expected a unit, such as mm or N.m, after `312`, found end of line | )"
         R"(a line of this sort: `mass 312 g`)"},
        {R"(device d "D")",
         R"(  mas 312 g)",
         R"(2:3-6 expected a detail of a device, found `mas` | write `mass` | 2:3 `mas` -> )"
         R"(`mass`)"},
        {R"(device d "D")",
         R"(  sealed by lid)",
         R"(2:10-12 expected a rating, such as IP67, after `sealed`, found `by` | a line )"
         R"(of this sort: `sealed IP67 by lid-seal`)"},
        {"part p",
         R"(  covers)",
         R"(2:9-9 expected an item after `covers`, found end of line | a line of this )"
         R"(sort: `covers board, motor`)"},
        {"part p",
         R"(  covers board,)",
         R"(2:16-16 expected an item, or a member's number after `,`, found end of line | )"
         R"(a line of this sort: `covers board, motor`)"},
        {"part p",
         R"(  covers board fan)",
         R"(2:16-19 expected the end of the line after `board`, found `fan` | a line of )"
         R"(this sort: `covers board, motor`)"},
        {"part p",
         R"(  needs lid to undo)",
         R"(2:13-15 expected a state after `lid`, found `to` | a line of this sort: )"
         R"(`needs lid open to remove`)"},
        {"part p",
         R"(  needs lid open undo)",
         R"(2:18-22 expected `to` after `open`, found `undo` | a line of this sort: )"
         R"(`needs lid open to remove`)"},
        {"part p",
         R"(  keep)",
         R"(2:7-7 expected `order` or `face` after `keep`, found end of line | a line of )"
         R"(this sort: `keep order, face`)"},
        {"part p",
         R"(  4 screw M2)",
         R"(2:5-10 expected `x` after `4`, found `screw` | a line of this sort: `4 x )"
         R"(screw M3 x 8`)"},
        {"part p",
         R"(  limit length 5 mm)",
         R"(2:16-17 expected a limit, such as `at least 5 mm`, after `length`, found `5` )"
         R"(| a line of this sort: `limit length at least 5 mm`)"},
        {"part p",
         R"(  limit length at lest 5 mm)",
         R"(2:19-23 expected `least` or `most` after `at`, found `lest` | write `least` | )"
         R"(2:19 `lest` -> `least`)"},
        {"part p",
         R"(  one usw)",
         R"(2:7-10 expected `use` after `one`, found `usw` | write `use` | 2:7 `usw` -> `use`)"},
        {"part p",
         R"(  renewed lid)",
         R"(2:11-14 expected `as` after `renewed`, found `lid` | a line of this sort: )"
         R"(`renewed as lid`)"},
        {"part p",
         R"(  note this is prose)",
         R"(2:7-7 expected `:` after `note` | write `note:` | 2:7 `` -> `:`)"},
        {"part p",
         R"(  txet: what)",
         R"(2:3-7 expected prose, found `txet:` | write `text` | 2:3 `txet` -> `text`)"},
        {"fastener f",
         R"(  torque 25..28.5 N.m)",
         R"(2:12-14 expected a unit, such as mm or N.m, after `25`, found `..` | one number )"
         R"(stands here: the middle of the range, if the maker gives no other | )"
         R"(2:10 `25..28.5` -> `26.75`)"},
        {"part p",
         R"(4 x fastener f "F" k)",
         R"(2:1-2 expected a declaration, found `4` | a count stands behind the title: )"
         R"(`fastener NAME "title" 4 x KIND`)"},
        {"part p",
         R"(  foo bar)",
         R"(2:3-6 expected a detail of a part, found `foo` | a part takes `kind`, `in`, )"
         R"(`carries`, `covers`, `blocks`, `feeds`, `behind`, `under`, `needs`, `limit`, )"
         R"(`renewed as`, `lets nothing out`, `at`, `keep`, `one use`, `used again if`, )"
         R"(`used again`, `only`, `price`, `counts as`, `authorised remotely`, and prose such as )"
         R"(`note:`)"},
        {"part p",
         R"(  part q)",
         R"(2:3-7 `part` starts a declaration, and does not start in the first column | start )"
         R"(it in the first column | 2:1 `  ` -> ``)"},
        {"part p",
         R"(  at front 5, 5)",
         R"(2:12-13 expected a place, such as 5,5 with no space in it, after `front`, )"
         R"(found `5` | a line of this sort: `at top 5,5 69,5`)"},
        {"fastener f",
         R"(  torque 0,20 N.m)",
         R"(2:11-12 expected a unit, such as mm or N.m, after `0`, found `,` | write a )"
         R"(decimal point: `0.20` | 2:11 `,` -> `.`)"},
        {"fastener f",
         R"(  torque 0.20)",
         R"(2:14-14 expected a unit, such as mm or N.m, after `0.20`, found end of line | )"
         R"(a line of this sort: `torque 0.5 N.m`)"},
        {"fastener f",
         R"(  torque 0.20 N.m in)",
         R"(2:21-21 expected a pattern, such as star, after `in`, found end of line | a )"
         R"(line of this sort: `torque 0.5 N.m`)"},
        {"fastener f",
         R"(  holds a, b too c)",
         R"(2:14-17 expected `to` after `b`, found `too` | write `to` | 2:14 `too` -> `to`)"},
        {"connector c",
         R"(  preload 2 kN)",
         R"(2:3-10 `preload` is not a detail of a connector | a connector takes `kind`, `in`, )"
         R"(`joins`, `behind`, `under`, `needs`, `torque`, `safe when live`, )"
         R"(`lets nothing out`, `at`, )"
         R"(`keep`, `one use`, )"
         R"(`used again if`, `used again`, `only`, `price`, `counts as`, )"
         R"(and prose such as `note:`)"},
        {"kind k is part",
         R"(  stats a, b)",
         R"(2:3-8 expected a detail of a kind, found `stats` | write `states` | 2:3 `stats` )"
         R"(-> `states`)"},
        {"kind k is part",
         R"(  open a b)",
         R"(2:10-11 expected `->` and the state it leads to after `a`, found `b` | a line )"
         R"(of this sort: `open shut -> open by hand`)"},
        {"kind k is part",
         R"(  open a -> b bi hand)",
         R"(2:15-17 expected `by`, `takes`, `waits` or the end of the line after `b`, )"
         R"(found `bi` | write `by` | 2:15 `bi` -> `by`)"},
        {"kind k is part",
         R"(  open a -> b by hand or)",
         R"(2:25-25 expected a tool after `or`, found end of line | a line of this sort: )"
         R"(`open shut -> open by hand`)"},
        {"kind k is part",
         R"(  binds a)",
         R"(2:9-10 expected `in` after `binds`, found `a` | a line of this sort: `binds )"
         R"(in shut`)"},
        {"kind k is part",
         R"(  safe when live)",
         R"(2:3-17 `safe when live` is not a detail of a kind | a kind takes `states`, )"
         R"(`also`, `present in`, `binds in`, `covers in`, `blocks in`, `live in`, `may end )"
         R"(in`, `laid first`, `lies loose`, `parted last`, `clamped`, `lets out`, )"
         R"(`bare`, `runs out`, `rests on pressure`, `guards`, `protects`, `moves`, )"
         R"(`passes on`, )"
         R"(`one use`, )"
         R"(`used again if`, )"
         R"(`used again`, `good for`, `asks for torque`, `asks for test`, `needs`, `hazard`, )"
         R"(`waste`, `licensed`, )"
         R"(and prose such as `note:`)"},
        {"kind k is part",
         R"(  hazard h until a on reech)",
         R"(2:23-28 expected `reach` or `touch` after `on`, found `reech` | write `reach` | )"
         R"(2:23 `reech` -> `reach`)"},
        {R"(guide g "G")",
         R"(  for anyone)",
         R"(2:7-13 expected a reader: `novice`, `competent`, `trained` or `licensed` )"
         R"(after `for`, found `anyone` | `novice` is for anyone, `competent` for who has )"
         R"(done such work before, `trained` for who was taught it, `licensed "gas )"
         R"(fitter"` for a trade | 2:7 `anyone` -> `novice`)"},
        {R"(guide g "G")",
         R"(  tool t)",
         R"(2:9-9 expected its description in double quotes after `t`, found end of line )"
         R"(| a line of this sort: `tool driver-6 "hexalobular driver 6"`)"},
        {R"(guide g "G")",
         R"(  date 2026-1-2)",
         R"(2:8-16 expected a date, such as 2026-03-31, after `date`, found `2026-1-2` | )"
         R"(write year, month and day: `2026-03-31`)"},
        {R"(guide g "G")",
         R"(  goal replace)",
         R"(2:15-15 expected an item after `replace`, found end of line | a line of this )"
         R"(sort: `goal replace cell with cell-new`)"},
        {"take-apart",
         R"(  undo lid)",
         R"(2:3-7 `undo` stands in no step | write `step NAME` in the first column above it)"},
        {"put-back",
         R"(  drived)",
         R"(2:3-9 expected a detail of the put-back, found `drived` | write `derived` | 2:3 )"
         R"(`drived` -> `derived`)"},
        {"step s",
         R"(  undo)",
         R"(2:7-7 expected an item after `undo`, found end of line | a line of this sort: )"
         R"(`undo lid-screws with driver-10`)"},
        {"step s",
         R"(  undo lid with)",
         R"(2:16-16 expected a tool after `with`, found end of line | a line of this )"
         R"(sort: `undo lid-screws with driver-10`)"},
        {"step s",
         R"(  undo lid wiht driver)",
         R"(2:12-16 expected `with`, `to` or the end of the line after `lid`, found `wiht` | )"
         R"(write `with` | 2:12 `wiht` -> `with`)"},
        {"step s",
         R"(  undo 3)",
         R"(2:8-9 expected an item after `undo`, found `3` | a line of this sort: `undo )"
         R"(lid-screws with driver-10`)"},
        {"kind k is part",
         R"(  open a → b)",
         R"(2:10-11 expected `->` and the state it leads to after `a`, found an arrow sign | )"
         R"(write `->` | 2:10 `→` -> `->`)"},
        {"step s",
         R"(  undo my_lid)",
         R"(2:10-14 expected `with`, `to` or the end of the line after `my`, found `_lid` | a )"
         R"(name has letters, digits and hyphens | 2:10 `_` -> `-`)"},
        {"step s",
         R"(  undo lid with)",
         R"(2:16-16 expected a tool after `with`, found end of line | a line of this )"
         R"(sort: `undo lid-screws with driver-10`)"},
        {"step s",
         R"(  undo lid, else)",
         R"(2:17-17 expected an action after `else`, found end of line | a line of this )"
         R"(sort: `undo lid-screws with driver-10`)"},
        {"step s",
         R"(  with driver)",
         R"(2:3-7 expected a verb, found `with` | `with` belongs on the line of its action)"},
        {"step s",
         R"(  mark lid across)",
         R"(2:18-18 expected an item after `across`, found end of line | a line of this )"
         R"(sort: `undo lid-screws with driver-10`)"},
        {"step s",
         R"(  photo "a.svg")",
         R"(2:16-16 expected its caption in double quotes after `"a.svg"`, found end of )"
         R"(line | a line of this sort: `photo "img/open.jpg" "The lid from the left"`)"},
        {"step s",
         R"(  text Open it.)",
         R"(2:7-7 expected `:` after `text` | write `text:` | 2:7 `` -> `:`)"},
        {"step s",
         R"(  tighten lid to 24)",
         R"(2:20-20 expected a unit, such as mm or N.m, after `24`, found end of line | a )"
         R"(line of this sort: `undo lid-screws with driver-10`)"},
        {"test t",
         R"(  undo lid)",
         R"(2:3-7 expected a detail of a test, found `undo` | a test takes `when`, `proves`, )"
         R"(`with`, `photo`, and prose such as `note:`)"},
        {"test t",
         R"(  when lid)",
         R"(2:11-11 expected a state after `lid`, found end of line | a line of this )"
         R"(sort: `when lid open, motor-plug connected`)"},
        {R"(use "x.mmk")",
         R"(  covers lid)",
         R"(2:3-9 `use` takes no details | write it under the `part`, `fastener` or )"
         R"(`step` that it belongs to)"},
    };
    // clang-format on
    return table;
}

// The text with the edits of a finding applied, last first.
std::string mended(const Parsed& parsed, const Diagnostic& finding) {
    std::string text = parsed.text();
    std::vector<Edit> edits = finding.edits;
    std::reverse(edits.begin(), edits.end());
    for (const Edit& edit : edits) {
        text.replace(edit.span.begin, edit.span.end - edit.span.begin, edit.text);
    }
    return text;
}

std::string above(const Slipped& slipped) {
    return *slipped.above == '\0' ? "" : std::string(slipped.above) + "\n";
}

} // namespace

TEST_CASE("each slip has its words and its place") {
    for (const Slipped& slipped : slips()) {
        INFO(slipped.line);
        const Parsed parsed(above(slipped) + slipped.line + "\n");
        REQUIRE(parsed.findings.size() == 1);
        const Diagnostic& finding = parsed.findings[0];
        CHECK(written_finding(parsed, finding) == slipped.finding);
        CHECK(finding.rule == "syntax");
        CHECK(finding.severity == Severity::error);
        CHECK(parsed.file.lines.back().shape == syntax::LineShape::broken);
        CHECK(parsed.file.lines.back().term_count == 0);
    }
}

TEST_CASE("an edit mends the place that it was offered for") {
    int offered = 0;
    for (const Slipped& slipped : slips()) {
        INFO(slipped.line);
        const Parsed parsed(above(slipped) + slipped.line + "\n");
        REQUIRE(parsed.findings.size() == 1);
        const Diagnostic& finding = parsed.findings[0];
        if (finding.edits.empty()) {
            continue;
        }
        ++offered;
        const Parsed again(mended(parsed, finding));
        const bool further =
            again.findings.empty() || again.findings[0].primary.begin > finding.primary.begin;
        CHECK_MESSAGE(further, again.text());
    }
    CHECK(offered >= 20);
}

TEST_CASE("every slip of a file is reported in one run, and causes no other") {
    std::string text;
    std::size_t expected = 0;
    for (const Slipped& slipped : slips()) {
        text += above(slipped) + slipped.line + "\n";
        ++expected;
    }
    const Parsed parsed(text);
    CHECK(parsed.findings.size() == expected);
}

TEST_CASE("details below a broken declaration are still read as its own") {
    const Parsed parsed("fastener s 4 x\n  torque 0.20 N.m\n  torque 0.20\n"
                        "fastenr t 2 x screw\n  holds a to b\n  holds a b\n"
                        "qqqq z\n  whatever stands here\n  text: prose\n    more\npart p\n");
    CHECK(written(parsed) == "broken 0 fastener\n"
                             "detail 1 torque: number 0.20, unit N.m\n"
                             "broken 1 torque\n"
                             "broken 0 fastener\n"
                             "detail 1 holds: name a, word to, name b\n"
                             "broken 1 holds\n"
                             "broken 0\n"
                             "broken 1\n"
                             "detail 1 text {prose}\n"
                             "prose 2 {more}\n"
                             "declaration 0 part: name p\n");
    CHECK(parsed.findings.size() == 5);
}

TEST_CASE("indentation that belongs to nothing is reported once, with the mend") {
    const Parsed first("  covers lid\n");
    REQUIRE(first.findings.size() == 1);
    CHECK(written_finding(first, first.findings[0]) ==
          "1:3-9 this line is indented, and no declaration stands above it | "
          "start it in the first column | 1:1 `  ` -> ``");

    const Parsed deeper("part a\n  covers b\n    blocks c\n    behind d\n  in e\n");
    REQUIRE(deeper.findings.size() == 1);
    CHECK(written_finding(deeper, deeper.findings[0]) ==
          "3:5-11 this line is indented deeper than the details above it, and `covers` takes none "
          "of its own | indent it as the lines above | 3:1 `    ` -> `  `");

    const Parsed when("part a\n  limit length at least 5 mm\n    when a out\n");
    REQUIRE(when.findings.size() == 1);
    CHECK(when.findings[0].help == "write it on the line above");
    CHECK(mended(when, when.findings[0]) == "part a\n  limit length at least 5 mm when a out\n");
}

TEST_CASE("a detail in the first column is told from a misspelt declaration") {
    const Parsed detail("part a\ncovers b\n  blocks c\n");
    REQUIRE(detail.findings.size() == 1);
    CHECK(written_finding(detail, detail.findings[0]) ==
          "2:1-7 `covers` is a detail of a part, and starts in the first column | indent it | "
          "2:1 `` -> `  `");
    CHECK(written_line(detail, 2) == "detail 1 blocks: name c");

    const Parsed action("step s\n  open lid\nundo lid\n  remove lid\n");
    REQUIRE(action.findings.size() == 1);
    CHECK(action.findings[0].help == "indent it, if it is an action of the step above");
    CHECK_FALSE(action.findings[0].safe);
    CHECK(written_line(action, 3) == "detail 1 verb remove: name lid");
}

TEST_CASE("prose that is misplaced or misspelt takes its deeper lines with it") {
    const Parsed parsed("text: One.\n  two\npart a\n  txet: Three.\n    four: five\n  covers b\n");
    CHECK(parsed.findings.size() == 2);
    CHECK(written(parsed) == "broken 0 text\nbroken 1\ndeclaration 0 part: name a\nbroken 1\n"
                             "broken 2\ndetail 1 covers: name b\n");
}

TEST_CASE("what is found is printable, whatever it is") {
    const Parsed space("part\xC2\xA0lid\n");
    REQUIRE(space.findings.size() == 1);
    CHECK(first_unreadable_byte(space.findings[0].message) == std::string::npos);
    const Parsed bytes("part a\n  covers \xFF\n");
    REQUIRE(bytes.findings.size() == 1);
    CHECK(bytes.findings[0].message == "expected an item after `covers`, found byte 0xff");
    const Parsed lengthy("use " + std::string(200, 'a') + "\n");
    REQUIRE(lengthy.findings.size() == 1);
    CHECK(lengthy.findings[0].message ==
          "expected a path in double quotes after `use`, found `" + std::string(40, 'a') + "...`");
}
