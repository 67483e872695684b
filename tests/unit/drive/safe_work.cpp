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
    CHECK(at("supply     gas-new \"refrigerant\", 0.2 kg for gas") != std::string::npos);
    CHECK(at("recover    gas") < at("undo       coil-screws"));
    CHECK(at("undo       coil-screws") < at("replace    coil"));
    // Another job on the same device leaves it in.
    REQUIRE(desk.run({"draft", "chiller.mmk", "--goal", "replace panel", "-o", "panel.mmk"}) == 0);
    CHECK(desk.disk.files["panel.mmk"].find("gas") == std::string::npos);
}

TEST_CASE("energy in a part is met by work on that part, and on what ties it") {
    const std::string receiver = R"(device receiver "Air receiver"
part frame "frame"
part tank "tank"
part pipe "pipe"
fastener feet "foot bolt" 4 x screw M8 x 20, hexagon-head 13
  holds      tank to frame
connector union "union" kind pipe-union
  joins      pipe to tank
energy air "air" in tank kind stored-pressure
energy stray "air of nowhere" kind stored-pressure

guide renew "Renew the pipe"
  goal       replace pipe with pipe-new
  for        competent
  spare      pipe-new "pipe", 1 for pipe
  tool       spanner "spanner 24"
take-apart
step off "Take the pipe off"
  undo       union with spanner
  remove     pipe
work
step new "Take the new one"
  replace    pipe with pipe-new
put-back
  derived
test tight "It is tight"
  when       union tight
  proves     union, pipe
)";
    Desk desk;
    desk.disk.files["receiver.mmk"] = receiver;
    CHECK(desk.run({"check", "receiver.mmk"}) == 1);
    INFO(desk.out);
    CHECK(desk.told("`union` (pipe union) needs `air` `relieved` first"));
    CHECK(desk.told("nothing says where `stray` (stored pressure) is"));
    CHECK(desk.run({"mend", "receiver.mmk"}) == 0);
    const std::string& mended = desk.disk.files["receiver.mmk"];
    CHECK(mended.find("relieve air") < mended.find("undo       union"));
}

TEST_CASE("draft: what is hot under pressure cools before its pressure is let out") {
    Desk desk;
    desk.disk.files["rig.mmk"] = R"(device rig "Rig"
part frame "frame"
part radiator "radiator"
fastener bolts "bolt" 2 x screw M6 x 16, hexagon-head 10
  holds      radiator to frame
energy pressure "pressure" in radiator kind stored-pressure
fluid coolant "coolant" in radiator 6 l kind pressurised-coolant
)";
    REQUIRE(desk.run({"draft", "rig.mmk", "--goal", "replace radiator", "-o", "r.mmk"}) == 0);
    const std::string& guide = desk.disk.files["r.mmk"];
    INFO(guide);
    REQUIRE(guide.find("cool coolant") != std::string::npos);
    CHECK(guide.find("cool coolant") < guide.find("relieve pressure"));
    CHECK(guide.find("relieve pressure") < guide.find("drain      coolant"));
    CHECK(guide.find("drain      coolant") < guide.find("undo       bolts"));
    CHECK(guide.find("cool coolant with") == std::string::npos);
}

TEST_CASE("mend: a pack that still feeds a charge is parted before the charge lies open") {
    Desk desk;
    desk.disk.files["bike.mmk"] = R"(device bike "Bicycle"

part frame "frame"
part pack "battery pack" kind battery-pack 500 Wh 36 V
  feeds      controller through contacts
part lid "lid" kind panel
  covers     controller, cap
part controller "controller" kind circuit-board
  carries    cap
part cap "capacitor" kind capacitor 1000 uF 63 V
connector contacts "pack contacts" kind spring-contacts
  safe when live
  joins      pack to controller

guide look "Look at the controller"
  for        competent
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the lid off"
  remove     lid
  discharge  cap with resistor
  prove      cap with meter below 60 V

put-back
  derived
)";
    CHECK(desk.run({"mend", "--all", "bike.mmk"}) == 0);
    CHECK(desk.disk.files["bike.mmk"].find("  separate contacts\n"
                                           "  remove     lid\n"
                                           "  discharge  cap with resistor\n") !=
          std::string::npos);
}
