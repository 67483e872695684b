// What somebody writes who has written no guide before: line one says what is wrong, the help gives
// the line to type.
#include "unit/parse/written_tree.hpp"

#include "parse/examples.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>
#include <vector>

using namespace matchmark;
using namespace matchmark::syntax;
using namespace matchmark::test;

namespace {

struct FirstSlip {
    const char* above;
    const char* line;
    const char* message; // what it begins with
    const char* help;
    const char* mended; // the line with the edit made; empty where there is none
};

// clang-format off
constexpr auto first_slips = std::to_array<FirstSlip>({
    {"", R"(part lid lid)", "expected `in`", R"(write `"lid"`)", R"(part lid "lid")"},
    {"", R"(part top lid "lid")", "expected `in`", "a name is one word: `top-lid`",
     R"(part top-lid "lid")"},
    {"", R"(part "Display lid")", "expected a name",
     "a name of one word stands before the title: `part display-lid`",
     R"(part display-lid "Display lid")"},
    {"", R"(fastener s "screw" screw M3 x 8)", "expected `in`",
     "say how many there are: `4 x screw`; of one alone: `kind screw`",
     R"(fastener s "screw" kind screw M3 x 8)"},
    {"", R"(fastener s "screw" four screw M3)", "expected `in`",
     "write the count in figures: `4 x`", R"(fastener s "screw" 4 x screw M3)"},
    {"", R"(fastener s "screw" 4 screws M3)", "expected `in`",
     "write the count, `x` and the kind: `4 x screw M3 x 8`", ""},
    {"", "use kettle.mmk", "expected a path", R"(write `"kettle.mmk"`)",
     R"(use "kettle.mmk")"},
    {"", R"(step 1 "Open")", "expected a name", "a name starts with a letter: `step-1`",
     R"(step step-1 "Open")"},
    {"", "1. Open the lid", "expected a declaration",
     R"(write `step open-the-lid "Open the lid"`; the steps are numbered on the page)",
     R"(step open-the-lid "Open the lid")"},
    {"", "take apart", "expected a declaration", "write `take-apart`", "take-apart"},
    {"", "Put back", "expected a declaration", "write `put-back`", "put-back"},
    {"", "put-back:", "`put-back` takes no colon", "leave the colon out", "put-back"},
    {"", "disassembly", "expected a declaration", "write `take-apart`", "take-apart"},
    {"", "How to open the kettle.", "this is a sentence, and a declaration stands here",
     "indent it under its guide, part or step, behind `text:`; a note to yourself stands "
     "behind `#`", ""},
    {"energy mains kind mains-cord", "  through motor-plug", "`through` is not a detail",
     "here it goes on in the line of another: `feeds board, motor through motor-plug`", ""},
    {"part lid", "  torque: 0.5 N.m", "expected prose",
     "prose starts with `text:`, `note:`, `why:`, `danger:`, `warning:`, `caution:` or "
     "`notice:`", ""},
    {"fastener s kind screw", "  torque: 0.5 N.m", "`torque` takes no colon",
     "leave the colon out", "  torque 0.5 N.m"},
    {"fastener s kind screw", "  torque = 0.5 N.m", "expected a number",
     "leave the `=` out", "  torque 0.5 N.m"},
    {"fastener s kind screw", "  torque 0.5", "expected a unit",
     "a line of this sort: `torque 0.5 N.m`", ""},
    {"fastener s kind screw", "  holds lid", "expected `to`",
     "a line of this sort: `holds lid to base`", ""},
    {"part lid", "  covers board and fan", "expected the end of the line",
     "write a comma between them", "  covers board, fan"},
    {"part lid", "  Made of aluminium, do not bend.",
     "this is a sentence, and a detail of a part stands here",
     "write `text:` before it; a safety message stands behind `caution:`, `warning:` or "
     "`danger:`", "  text: Made of aluminium, do not bend."},
    {R"(guide g "G")", "  for anyone", "expected a reader",
     "`novice` is for anyone, `competent` for who has done such work before, `trained` for "
     "who was taught it, `licensed \"gas fitter\"` for a trade", "  for novice"},
    {R"(guide g "G")", "  for", "expected a reader",
     "`novice` is for anyone, `competent` for who has done such work before, `trained` for "
     "who was taught it, `licensed \"gas fitter\"` for a trade", ""},
    {R"(guide g "G")", "  date 3.11.2026", "expected a date",
     "write year, month and day: `2026-11-03`", "  date 2026-11-03"},
    {R"(guide g "G")", "  date 03/11/2026", "expected a date",
     "write year, month and day: `2026-03-31`", ""},
    {R"(guide g "G")", "  tool d hexalobular driver 6, basic", "expected its description",
     R"(write `"hexalobular driver 6"`)", R"(  tool d "hexalobular driver 6", basic)"},
    {"step s", "  Pull the lid straight up.",
     "this is a sentence, and an action stands here: a verb and a name",
     "write `text:` before it; a safety message stands behind `caution:`, `warning:` or "
     "`danger:`", "  text: Pull the lid straight up."},
    {"step s", "  remove the lid", "expected `with`",
     "an action is a verb and a name; leave `the` out", "  remove lid"},
    {"step s", "  take off lid", "expected `with`",
     "a verb of two words has a hyphen: `take-off`", "  take-off lid"},
    {R"(part b "B")", "  under lid-screws 1-2", "expected",
     "members stand one by one, with commas: `1, 2`", "  under lid-screws 1, 2"},
    {R"(part b "B")", "  behind cover, lid-screws 1 to 3", "expected", "members stand one by one, "
     "with commas: `1, 2, 3`", "  behind cover, lid-screws 1, 2, 3"},
    {R"(connector c "C" kind plug)", "  joins board and body", "expected `to`", "write `to`",
     "  joins board to body"},
    {R"(fastener f "F" 2 x screw M3)", "  holds lid on base", "expected `to`", "write `to`",
     "  holds lid to base"},
    {"step s", "  undo lid-screws 1-4 with driver", "expected", "members stand one by one, with "
     "commas: `1, 2, 3, 4`", "  undo lid-screws 1, 2, 3, 4 with driver"},
    {"step s", "  undo lid-screws 2 to 4", "expected", "members stand one by one, with commas: "
     "`2, 3, 4`", "  undo lid-screws 2, 3, 4"},
    {"step s", "  undo lid-screws 1..2", "expected", "members stand one by one, with commas: "
     "`1, 2`", "  undo lid-screws 1, 2"},
    {"step s", "  undo lid-screws 1, 3 and 4 with driver", "expected", "members stand one by one, "
     "with commas: `3, 4`", "  undo lid-screws 1, 3, 4 with driver"},
    {"step s", "  fasten lid-screws 1 and 2 with driver to 1 N.m", "expected", "members stand one "
     "by one, with commas: `1, 2`", "  fasten lid-screws 1, 2 with driver to 1 N.m"},
    {"step s", "  undo lid-screws 1 2", "expected", "members stand one by one, with commas: "
     "`1, 2`", "  undo lid-screws 1, 2"},
    {"step s", "  undo lid-screws 4 to 2", "expected", "a line of this sort: `undo lid-screws with "
     "driver-10`", ""},
    {"step s", "  undo 4 lid-screws with driver", "expected",
     "a name stands for all of its group; leave `4` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws with driver"},
    {"step s", "  undo all the lid-screws", "expected",
     "a name stands for all of its group; leave `all the` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  undo both lid-screws", "expected",
     "a name stands for all of its group; leave `both` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  undo two of the lid-screws", "expected",
     "a name stands for all of its group; leave `two of the` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  undo lid-screws x4 with driver", "expected",
     "a name stands for all of its group; leave `x4` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws with driver"},
    {"step s", "  undo lid-screws x 4", "expected",
     "a name stands for all of its group; leave `x 4` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  undo lid-screws (4)", "expected",
     "a name stands for all of its group; leave `(4)` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  wait 5 minutes", "expected", "a line of this sort: `undo lid-screws with "
     "driver-10`", ""},
    {"step s", "  undo lid-screws using driver", "expected", "a tool stands behind `with`",
     "  undo lid-screws with driver"},
    {"step s", "  undo lid-screws with driver and key", "expected",
     "write a comma between them", "  undo lid-screws with driver, key"},
    {"step s", "  fasten lid-screw 4 Nm", "expected", "a torque stands behind `to`",
     "  fasten lid-screw to 4 Nm"},
    {"step s", "  remove lid; remove tray", "expected", "each action has a line of its own",
     "  remove lid\n  remove tray"},
    {"step s", R"(  tool key "hexagon key 4")", "expected",
     "`tool` stands in the guide's head, above `take-apart`; take the line there", ""},
    {"", "step open Take the lid off # first", "expected the end",
     R"(write `"Take the lid off"`)", R"(step open "Take the lid off" # first)"},
    {R"(guide g "G")", R"(  spare belt 1 "drive belt")", "expected its description",
     "a line of this sort: `spare cell-new \"cell, 3000 mAh\", 1 for cell`", ""},
    {"step s", "  undo 4 x lid-screws", "expected",
     "a name stands for all of its group; leave `4 x` out, or say which: `lid-screws 1, 2`",
     "  undo lid-screws"},
    {"step s", "  undo lid-screws and remove lid", "expected", "each action has a line of its own",
     "  undo lid-screws\n  remove lid"},
    {"step s", "  remove lid then remove tray", "expected", "each action has a line of its own",
     "  remove lid\n  remove tray"},
    {"step s", "  undo lid screws with driver", "expected", "a name is one word: `lid-screws`",
     "  undo lid-screws with driver"},
    {"step s", "  disconnect cell plug", "expected", "a name is one word: `cell-plug`",
     "  disconnect cell-plug"},
    {"step s", "  undo lid-screws driver", "expected",
     "a tool stands behind `with`: `with driver`", "  undo lid-screws with driver"},
    {"step s", "  fasten lid-screw at 2 N.m", "expected", "a torque stands behind `to`",
     "  fasten lid-screw to 2 N.m"},
    {"step s", "  undo lid-screws #1, #3 with driver", "`#` begins a comment",
     "members stand by number alone: `1, 3 with driver`; a comment has a space behind its `#`",
     "  undo lid-screws 1, 3 with driver"},
    {"", R"(part lid "lid" covers board)", "expected",
     "`covers` stands on an indented line of its own below",
     "part lid \"lid\"\n  covers board"},
    {"", R"(part lid "lid" type panel)", "expected", "write `kind`",
     R"(part lid "lid" kind panel)"},
    {"", R"(fastener f "F" 2 x screw M3, torque 0.5 N.m)", "`torque 0.5 N.m` is taken",
     "write `torque 0.5 N.m` on an indented line of its own below",
     "fastener f \"F\" 2 x screw M3\n  torque 0.5 N.m"},
    {"", R"(fastener f "F" 2 x screw M3, 0.5 N.m)", "`0.5 N.m` is taken",
     "write `torque 0.5 N.m` on an indented line of its own below",
     "fastener f \"F\" 2 x screw M3\n  torque 0.5 N.m"},
    {"", R"(fastener f "F" 2 x screw M2,5 x 8)", "a comma between two digits",
     "write a decimal point; in a list, write a space behind the comma",
     R"(fastener f "F" 2 x screw M2.5 x 8)"},
    {R"(part lid "lid")", "  kind panel, covers board", "`covers board` is taken",
     "write `covers board` on an indented line of its own below",
     "  kind panel\n  covers board"},
    {R"(guide g "G")", R"(  spare c "cell, 3,7 V", 1, 14,50 EUR for cell)",
     "a comma between two digits",
     "write a decimal point; in a list, write a space behind the comma",
     R"(  spare c "cell, 3,7 V", 1, 14.50 EUR for cell)"},
    {"step s", "  - remove lid", "a dash stands before the action",
     "leave it out; actions are done in the order in which they stand", "  remove lid"},
    {"step s", "  2. remove lid", "a number stands before the action",
     "leave it out; actions are done in the order in which they stand", "  remove lid"},
    {"step s", "  remove lid // mind it", "expected `with`", "a comment starts with `#`",
     "  remove lid # mind it"},
    {"step s", "  remove lid;", "expected `with`", "leave the `;` out", "  remove lid"},
    {"step s", "  photo open.jpg", "expected a path", R"(write `"open.jpg"`)",
     R"(  photo "open.jpg")"},
    {"step s", R"(  photo "open.jpg")", "expected its caption",
     R"(a line of this sort: `photo "img/open.jpg" "The lid from the left"`)", ""},
    {"test t", "  when on", "expected an item and its state",
     "a line of this sort: `when lid open, motor-plug connected`", ""},
});
// clang-format on

std::string lines_above(const char* declaration) {
    return *declaration == '\0' ? "" : std::string(declaration) + "\n";
}

constexpr auto last_body = static_cast<int>(Body::message);

} // namespace

TEST_CASE("who has written no guide before is told the line to type") {
    for (const FirstSlip& slipped : first_slips) {
        CAPTURE(slipped.line);
        const Parsed parsed(lines_above(slipped.above) + slipped.line + "\n");
        REQUIRE(parsed.findings.size() == 1);
        const Diagnostic& finding = parsed.findings[0];
        CHECK_MESSAGE(finding.message.starts_with(slipped.message), finding.message);
        CHECK(finding.help == slipped.help);
        std::string text = parsed.text();
        for (auto edit = finding.edits.rbegin(); edit != finding.edits.rend(); ++edit) {
            text.replace(edit->span.begin, edit->span.end - edit->span.begin, edit->text);
        }
        const std::string line = text.substr(lines_above(slipped.above).size());
        CHECK((finding.edits.empty() ? "" : line.substr(0, line.size() - 1)) == slipped.mended);
    }
}

TEST_CASE("the line that a help shows is a line of the language, for every keyword") {
    std::size_t shown = 0;
    for (int at = 0; at <= last_body; ++at) {
        const auto body = static_cast<Body>(at);
        for (const Row& row : rows(body)) {
            CAPTURE(row.spelling);
            const std::string line(example_line(body, row.keyword));
            REQUIRE_FALSE(line.empty());
            CHECK(line.starts_with(row.spelling));
            const std::uint32_t begin = static_cast<std::uint32_t>(row.spelling.size());
            std::vector<Term> terms;
            Span comment;
            Matching matching{terms, comment, 0, line.data(), nullptr};
            std::uint32_t rest = begin;
            while (rest < line.size() && line[rest] == ' ') {
                ++rest;
            }
            const Slip slip = row.rest(matching, rest, static_cast<std::uint32_t>(line.size()));
            CHECK_MESSAGE(slip.expected == nullptr, slip.expected);
            ++shown;
        }
    }
    CHECK(shown > 150);
}

TEST_CASE("a line cut off or with a strange word in it always has a help") {
    for (int at = 0; at <= last_body; ++at) {
        const auto body = static_cast<Body>(at);
        for (const Row& row : rows(body)) {
            const std::string line(example_line(body, row.keyword));
            for (const char* strange : {"", " and", " =", " \"x\"", " 7", " lid"}) {
                for (std::size_t end = line.find(' '); end < line.size();
                     end = line.find(' ', end + 1)) {
                    const std::string slipped = line.substr(0, end) + strange;
                    const Parsed parsed(slipped + "\n");
                    for (const Diagnostic& finding : parsed.findings) {
                        CHECK_MESSAGE(!finding.help.empty(), slipped, ": ", finding.message);
                    }
                }
            }
        }
    }
}
