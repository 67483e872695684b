// What a line less would save, and a second job on the open device, as `plan` tells them.
#include "support/in_text.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::has;
using test::Desk;

namespace {

constexpr const char* two_way_blower = R"(device blower "Blower"

part body "body"
part left "left panel"
  covers     fan-plug
fastener left-screws "left screw" 2 x screw M3 x 8, hexalobular 10
  holds      left to body
part fan "fan"
  behind     left
connector fan-plug "fan plug" kind flip-lock-ribbon
  joins      fan to body
part board "board" kind circuit-board
  behind     fan
)";

} // namespace

TEST_CASE(
    "what each relation less would save is told with its line, and what saves nothing counted") {
    Desk desk;
    desk.disk.files["blower.mmk"] = two_way_blower;
    REQUIRE(desk.run({"plan", "blower.mmk", "--what-if", "--reach", "board"}) == 0);
    CHECK(has(desk.out, "with `board` not behind `fan`: 5 actions and"));
    CHECK(has(desk.out, "less to take out `board`  [blower.mmk:13]"));
    // The panel has to come off for the fan, whether it covers the plug or not.
    CHECK_FALSE(has(desk.out, "covering"));
    CHECK(has(desk.out, "2 relations would change nothing."));
}

TEST_CASE("a second job takes what the first has left to do") {
    Desk desk;
    desk.disk.files["blower.mmk"] = two_way_blower;
    REQUIRE(desk.run({"plan", "blower.mmk", "--reach", "fan", "--then", "board"}) == 0);
    CHECK(has(desk.out, "Then, the device being open, the board: 1 act,"));
    CHECK(has(desk.out, "alone 6 acts,"));
}

TEST_CASE("what-if takes its parts from --reach alone") {
    Desk desk;
    desk.disk.files["blower.mmk"] = two_way_blower;
    CHECK(desk.run({"plan", "blower.mmk", "--what-if", "--then", "fan"}) == 2);
}
