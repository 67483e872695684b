// What becomes of a table and of an outline: a text that reads, with its open places marked.
#include "drive/importing/outline.hpp"
#include "drive/importing/settle.hpp"
#include "drive/importing/words.hpp"

#include "drive/compilation.hpp"
#include "drive/importing/device.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

using namespace matchmark::drive;
using matchmark::MapDisk;

namespace {

matchmark::model::Model library() {
    MapDisk disk;
    const std::string empty;
    return compile(disk, "library", &empty).model;
}

matchmark::model::Model lamp() {
    MapDisk disk;
    disk.files["lamp.mmk"] = matchmark::test::device_text;
    return compile(disk, "lamp.mmk").model;
}

std::string imported(const std::string& table) {
    MapDisk disk;
    const PartsTable parts = read_parts(read_table(table));
    REQUIRE(parts.problem.empty());
    return settled(disk, "kettle.mmk",
                   device_from(parts, KindWords(library()), "kettle", "parts.csv"));
}

bool has_error(const std::string& text) {
    MapDisk disk;
    return any_error(compile(disk, "kettle.mmk", &text).findings);
}

bool holds(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("a good table leaves nothing to decide but the size of its face") {
    const std::string text =
        imported("Name;Title;Type;Qty;Size;Torque (Nm);Holds;To;Covers;Face;At\n"
                 "body;;;;;;;;;;\n"
                 "lid;;;;;;;;board;;\n"
                 "board;main board;circuit board;;;;;;;;\n"
                 "lid-screws;lid screw;screw;4;M3x8 mm;0,5;lid;body;;top;5,5 95,5 5,55 95,55\n");
    CHECK_FALSE(has_error(text));
    CHECK(holds(text, "device kettle \"Kettle\""));
    CHECK(holds(text, "fastener lid-screws \"lid screw\" 4 x screw M3 x 8\n"));
    CHECK(holds(text, "holds      lid to body"));
    CHECK(holds(text, "torque     0.5 N.m"));
    CHECK(holds(text, "at         top 5,5 95,5 5,55 95,55"));
    CHECK(holds(text, "covers     board"));
    CHECK(holds(text, "kind circuit-board"));
    const auto open = open_places(text);
    REQUIRE(open.size() == 1);
    CHECK(holds(open[0].question, "the size of the face top"));
}

TEST_CASE("what the table does not say, or says otherwise, is asked for") {
    const std::string text =
        imported("name,kind,count,size,drive,torque,holds,to,in,covers\n"
                 "cover,frobnicator,,,,,,,,\n"
                 "cover-screws,pan head screw,some,M3x?,odd 7,tight,cover,,,fan\n"
                 "clip,,,,,,nothing,cover,,\n"
                 "fan,,,,,,,,cage,\n");
    CHECK_FALSE(has_error(text));
    for (const char* question :
         {"it is said to cover \"fan\", but only a part does",
          "its kind: the table says \"frobnicator\"", "how many there are: the table says \"some\"",
          "its size: the table says \"M3x?\"", "its drive: the table says \"odd 7\"",
          "the torque: the table says \"tight\"", "to what it holds \"cover\"",
          "is a guess by its words", "nothing in the table is called so", "in \"cage\""}) {
        CAPTURE(question);
        CHECK(holds(text, question));
    }
}

TEST_CASE("whatever the cells hold, the text has no errors") {
    std::mt19937 random(11);
    const std::vector<std::string> cells{
        "lid", "body",        "a\"b\\c", "=1+1",       "# no",        "in",
        "x",   "with, to",    "4",       "-3",         "99999999999", "M3 x 8",
        "PH2", "0.5 Nm",      "1e400",   "screw",      "text: y",     "\u2028\u202e",
        "蓋",  "lid to body", "",        "kind screw", "5,5 9,9",     "top 1,1"};
    for (int round = 0; round < 60; ++round) {
        std::string table = "name;title;kind;count;size;drive;torque;holds;to;covers;in;at;note\n";
        for (int row = 0; row < 5; ++row) {
            for (int column = 0; column < 13; ++column) {
                std::string cell = cells[random() % cells.size()];
                for (std::size_t at = cell.find('"'); at != std::string::npos;
                     at = cell.find('"', at + 2)) {
                    cell.insert(at, "\"");
                }
                table += "\"" + cell + "\"" + (column == 12 ? "\n" : ";");
            }
        }
        const std::string text = imported(table);
        CAPTURE(table);
        CAPTURE(text);
        CHECK_FALSE(has_error(text));
    }
}

TEST_CASE("an action is told by its verb and its item") {
    const auto device = lamp();
    CHECK(told_action("Undo the four lid screws.", device).source == "undo lid-screws");
    CHECK(told_action("Undo the four lid screws.", device).sure);
    CHECK_FALSE(told_action("Undo the four lid screws.", device).says_more);
    CHECK(told_action("Remove the lid and the board", device).source == "remove lid, board");
    CHECK(told_action("Remove the lid by sliding it left", device).says_more);
    CHECK(told_action("Unscrew the lid screws", device).source == "undo lid-screws");
    CHECK_FALSE(told_action("Unscrew the lid screws", device).sure);
    CHECK(told_action("Make a cup of tea", device).source.empty());
    CHECK(told_action("", device).source.empty());
}

TEST_CASE("an outline becomes steps, actions, text and questions") {
    const std::string guide = guide_from({"# Open the lamp\n\nTakes a minute.\n\n## Tools\n\n"
                                          "- hexalobular driver 10\n\n## 1. Open the lid\n\n"
                                          "- Undo the lid screws\n- Unscrew the lid screws\n"
                                          "- Warning: The edge is sharp.\n- Look inside\n"
                                          "- Remove the lid\n\nMind the gap.\n",
                                          "open-lamp", "open.md", "lamp.mmk"},
                                         lamp());
    MapDisk disk;
    disk.files["lamp.mmk"] = matchmark::test::device_text;
    const std::string text = settled(disk, "open-lamp.mmk", guide);
    CHECK(holds(text, "guide open-lamp \"Open the lamp\""));
    CHECK(holds(text, "tool       hexalobular-driver-10 \"hexalobular driver 10\""));
    CHECK(holds(text, "step open-the-lid \"Open the lid\"\n  warning: The edge is sharp.\n"
                      "  undo       lid-screws\n"));
    CHECK(holds(text, "\"Unscrew the lid screws\": is `undo lid-screws` meant?"));
    CHECK(holds(text, "\"Look inside\": an action, or text alone?"));
    CHECK(holds(text, "text: Look inside\n  remove     lid\n  text: Mind the gap.")); // its order
    CHECK(holds(text, "put-back\n  derived"));
    CHECK_FALSE(any_error(compile(disk, "open-lamp.mmk", &text).findings));
}

TEST_CASE("torques, sizes and drives are read as people write them") {
    CHECK(torque_phrase("0,5 Nm") == "0.5 N.m");
    CHECK(torque_phrase("12 lbf.in") == "12 lbf.in");
    CHECK(torque_phrase("5") == "");
    CHECK(torque_phrase("hand tight") == "");
    CHECK(size_phrase("M3x8") == "M3 x 8");
    CHECK(size_phrase("M3 \u00D7 8 mm") == "M3 x 8");
    CHECK(size_phrase("3,5x16mm") == "3.5 x 16");
    const auto known = library();
    const auto& drive = known.drives.front();
    REQUIRE_FALSE(drive.sizes.empty());
    const std::string size = drive.sizes.front().size;
    CHECK(drive_phrase(known, drive.title + " " + size) == drive.name + " " + size);
    CHECK(drive_phrase(known, "no such thing 9").empty());
}
