// The way in as `plan` tells it and `draft` writes it: the cheaper of two ways, a danger made safe
// first, one way in for members named apart, and what stands against a way that does not exist.
#include "support/in_text.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::has;
using test::Desk;

namespace {

// The fan is reached from either side; the left side has fewer screws, the right one a quick catch.
constexpr const char* blower = R"(device blower "Blower"

part body "body"
part left "left panel"
fastener left-screws "left screw" 2 x screw M3 x 8, hexalobular 10
  holds      left to body
part right "right panel"
fastener right-catch "catch" kind latch
  holds      right to body
part fan "fan"
  behind     left or right
fastener fan-screws "fan screw" 2 x screw M3 x 8, hexalobular 10
  holds      fan to body
  behind     left or right
part board "board" kind circuit-board
  under      left-screws 2
energy mains "mains" kind mains-cord
  feeds      fan
)";

constexpr const char* ring = R"(device ring "Ring"

part body "body"
part left "left half"
  blocks     right
part right "right half"
  blocks     left
)";

} // namespace

TEST_CASE("the way in is the cheaper of two, and the mains is unplugged before it opens anything") {
    Desk desk;
    desk.disk.files["blower.mmk"] = blower;
    REQUIRE(desk.run({"plan", "blower.mmk", "--reach", "fan", "--why"}) == 0);
    CHECK(has(desk.out, "remove the right panel"));
    CHECK_FALSE(has(desk.out, "left panel"));
    CHECK(desk.out.find("unplug the mains") < desk.out.find("unlatch the catch"));
    CHECK(has(desk.out, "the 2 fan screws hold the fan"));
    CHECK(has(desk.out, "Least time: proved."));
}

TEST_CASE("a plug inside the case is parted after the mains is unplugged, unless it may be live") {
    const std::string mill = R"(device mill "Mill"

part body "body"
energy mains "mains" kind mains-cord
  feeds      motor through motor-plug
part burr "burr"
part motor "motor" kind motor
  behind     burr
connector motor-plug "motor plug" kind locking-tab-plug
  joins      motor to body
)";
    Desk desk;
    desk.disk.files["mill.mmk"] = mill;
    REQUIRE(desk.run({"plan", "mill.mmk", "--reach", "body"}) == 0);
    REQUIRE(has(desk.out, "unplug the mains"));
    CHECK(desk.out.find("unplug the mains") < desk.out.find("disconnect the motor plug"));
    CHECK(has(desk.out, "Least time: proved."));

    desk.disk.files["mill.mmk"] = mill + "  safe when live\n";
    REQUIRE(desk.run({"plan", "mill.mmk", "--reach", "body"}) == 0);
    CHECK(has(desk.out, "disconnect the motor plug"));
    CHECK_FALSE(has(desk.out, "unplug the mains"));
}

TEST_CASE(
    "a hose is parted before the pins on which its cylinder hangs, where that costs nothing") {
    const std::string splitter = R"(device splitter "Splitter"

part beam "beam"
part cylinder "cylinder"
fastener pin "top pin" 1 x clevis-pin 25 x 90
  holds      cylinder to beam
part hose "hose"
connector union "hose union" kind face-seal-joint 27
  joins      hose to cylinder
part guard "guard"
)";
    Desk desk;
    desk.disk.files["splitter.mmk"] = splitter;
    REQUIRE(desk.run({"plan", "splitter.mmk", "--reach", "cylinder"}) == 0);
    REQUIRE(has(desk.out, "draw the top pin"));
    CHECK(desk.out.find("undo the hose union") < desk.out.find("draw the top pin"));

    // With a spanner for the pin's guard, too, hose first would take the spanner up twice.
    desk.disk.files["splitter.mmk"] = splitter + R"(  covers     union
fastener nut "guard nut" 1 x nut M8, hexagon-head 13
  holds      guard to beam
fastener bolts "cylinder bolt" 2 x bolt M8 x 20, hexagon-head 13
  holds      cylinder to beam
)";
    REQUIRE(desk.run({"plan", "splitter.mmk", "--reach", "cylinder"}) == 0);
    CHECK(desk.out.find("undo the 2 cylinder bolts") < desk.out.find("undo the hose union"));
    CHECK(desk.out.find("undo the hose union") < desk.out.find("draw the top pin"));
}

TEST_CASE("within reach asks for less than out") {
    Desk desk;
    desk.disk.files["blower.mmk"] = blower;
    REQUIRE(desk.run({"plan", "blower.mmk", "--reach", "fan", "--expose"}) == 0);
    CHECK(has(desk.out, "right panel"));
    CHECK_FALSE(has(desk.out, "fan screws"));
}

TEST_CASE("of a group, only the members that a line names are undone") {
    Desk desk;
    desk.disk.files["blower.mmk"] = blower;
    REQUIRE(desk.run({"plan", "blower.mmk", "--reach", "board"}) == 0);
    CHECK(has(desk.out, "undo the left screw 2"));
    CHECK(has(desk.out, "2 acts, 13 s")); // 8 + 1.4 and 2.4 + 1.4
}

TEST_CASE("parts that block each other have no way out, and the ring is told") {
    Desk desk;
    desk.disk.files["ring.mmk"] = ring;
    CHECK(desk.run({"plan", "ring.mmk", "--reach", "left"}) == 1);
    CHECK(has(desk.out, "there is no way"));
    CHECK(has(desk.out, "the right half blocks the left half"));
    CHECK(has(desk.out, "and so round again"));
}

TEST_CASE("a name that is not there is told with one that is near") {
    Desk desk;
    desk.disk.files["blower.mmk"] = blower;
    CHECK(desk.run({"plan", "blower.mmk", "--reach", "fann"}) == 2);
    CHECK(has(desk.err, "did you mean `fan`?"));
    CHECK(desk.run({"draft", "blower.mmk", "--goal", "polish fan"}) == 2);
}

TEST_CASE("a draft renews the part, tries it and checks clean") {
    Desk desk;
    desk.disk.files["blower.mmk"] = blower;
    REQUIRE(desk.run({"draft", "blower.mmk", "--goal", "replace fan", "-o", "fan.mmk"}) == 0);
    const std::string text = desk.disk.files["fan.mmk"];
    CHECK(has(text, "before     unplug mains"));
    CHECK(has(text, "replace    fan with fan-new"));
    CHECK(has(text, "test try-fan"));
    CHECK(desk.run({"check", "fan.mmk", "--strict"}) == 0);
    CHECK(desk.run({"tidy", "--check", "fan.mmk"}) == 0);
}
