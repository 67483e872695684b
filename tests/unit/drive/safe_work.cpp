// What is offered where safety is at stake: a trial that can be closed, every licence that a job
// takes.
#include "unit/drive/bench_files.hpp"
#include "unit/drive/winch_files.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;
using test::Desk;

namespace {

// The motor is tried on the bench, and the winch closed dead.
const std::string tried_open = R"(
step power-on "Power for the trial"
  plug-in    mains

test haul "It hauls"
test-line  proves     haul

step power-off "Isolate it again"
  unplug     mains

step close "Close the winch"
  fit        cover

step power "Restore the supply"
  plug-in    mains
)";

const std::string boiler = R"(device boiler "Wall boiler"

energy circuit "circuit of the boiler" kind household-circuit
  feeds      fan
energy gas "gas supply" kind gas-supply
  feeds      valve
part frame "frame"
part cover "cover" kind panel
  covers     fan, valve
part valve "gas valve"
part fan "fan" kind fan
  behind     valve
connector union "gas union" kind gas-union
  joins      valve to frame
)";

Desk with_test_line(const std::string& line) {
    std::string back = tried_open;
    back.replace(back.find("test-line"), std::string("test-line").size(), line);
    Desk desk;
    desk.disk.files["winch.mmk"] = test::winch;
    desk.disk.files["renew.mmk"] = test::renewing(back);
    return desk;
}

} // namespace

TEST_CASE("live-test: a test that its own `when` keeps open is offered closed") {
    Desk desk = with_test_line("  when       cover out\n");
    CHECK(desk.run({"check", "renew.mmk"}) == 1);
    CHECK(desk.told("[live-test]"));
    CHECK(desk.told("try it closed, without `cover out`"));
    CHECK(desk.told("`mains plugged`"));
    CHECK(desk.run({"mend", "renew.mmk"}) == 1); // it may be meant: not without --all
    CHECK(desk.run({"mend", "--all", "renew.mmk"}) == 0);
    CHECK(desk.run({"check", "renew.mmk"}) == 0);
    const std::string& mended = desk.disk.files["renew.mmk"];
    CHECK(mended.find("cover out") == std::string::npos);
    CHECK(mended.find("test haul") > mended.find("step power \"Restore"));
}

TEST_CASE("live-test: what the `when` says beside the cover is kept") {
    Desk desk = with_test_line("  when       cover out, motor-plug connected\n");
    CHECK(desk.run({"mend", "--all", "renew.mmk"}) == 0);
    CHECK(desk.disk.files["renew.mmk"].find("  when       motor-plug connected\n") !=
          std::string::npos);
}

TEST_CASE("draft: a job of two trades is for a reader who holds both licences") {
    Desk desk;
    desk.disk.files["boiler.mmk"] = boiler;
    CHECK(desk.run({"draft", "boiler.mmk", "--goal", "replace fan", "-o", "fan.mmk"}) == 0);
    std::string& guide = desk.disk.files["fan.mmk"];
    const std::string both = "licensed \"gas fitter and electrician\"";
    const std::size_t at = guide.find(both);
    REQUIRE(at != std::string::npos);
    CHECK(desk.run({"check", "fan.mmk"}) == 0);
    guide.replace(at, both.size(), "licensed \"gas fitter\"");
    CHECK(desk.run({"check", "fan.mmk"}) == 1);
    CHECK(desk.told("only by a licensed electrician"));
}

TEST_CASE("draft: what stands in a part is let out before anything that holds the part is undone") {
    Desk desk;
    desk.disk.files["chiller.mmk"] = R"(device chiller "Chiller"
part frame "frame"
part panel "panel"
  covers     coil
part coil "cooling coil" in frame
fastener coil-screws "coil screw" 4 x screw M5 x 12, hexalobular 25
  holds      coil to frame
fluid gas "refrigerant" in coil 0.2 kg kind refrigerant
)";
    REQUIRE(desk.run({"draft", "chiller.mmk", "--goal", "replace coil", "-o", "coil.mmk"}) == 0);
    const std::string& guide = desk.disk.files["coil.mmk"];
    INFO(guide);
    const auto at = [&](const char* line) { return guide.find(line); };
    CHECK(at("licensed \"refrigeration technician\"") != std::string::npos);
    CHECK(at("remove     panel") < at("recover    gas"));
    CHECK(at("recover    gas") < at("undo       coil-screws"));
    CHECK(at("undo       coil-screws") < at("replace    coil"));
    // Another job on the same device leaves it in.
    REQUIRE(desk.run({"draft", "chiller.mmk", "--goal", "replace panel", "-o", "panel.mmk"}) == 0);
    CHECK(desk.disk.files["panel.mmk"].find("gas") == std::string::npos);
}
