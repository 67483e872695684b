// A test of what a source feeds is done with its supply on: where it is put, what moves it there,
// and what the page says before one that is done open.
#include "unit/drive/bench_files.hpp"
#include "unit/drive/winch_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using test::Desk;
using test::renewing;
using test::winch;

TEST_CASE("a draft cuts the supply off before it waits for what runs out") {
    Desk desk;
    desk.disk.files["winch.mmk"] =
        winch + std::string("part wheel \"wheel\"\n  behind     motor\n"
                            "energy run \"running wheel\" kind fan-after-run\n"
                            "  feeds      wheel, motor\n");
    CHECK(desk.run({"draft", "winch.mmk", "--goal", "replace motor"}) == 0);
    const std::string draft = desk.out;
    const auto cut = draft.find("  before     unplug mains\n");
    const auto waited = draft.find("  before     spin-down run\n");
    REQUIRE(cut != std::string::npos);
    REQUIRE(waited != std::string::npos);
    CHECK(cut < waited);
}

TEST_CASE(
    "a plan and its draft cut and lock before anything is opened, and prove behind the cover") {
    Desk desk;
    desk.disk.files["winch.mmk"] = R"(device winch "Winch"

energy heat "heat" kind heat
  behind     cover
energy circuit "circuit" kind household-circuit
  feeds      motor
part frame "frame"
part knob "knob"
  blocks     cover
part cover "cover"
  covers     motor
part motor "motor"
)";
    const std::vector<std::string> wanted{"switch off the circuit", "lock off the circuit",
                                          "cool the heat",          "remove the cover",
                                          "prove the circuit",      "remove the motor"};
    CHECK(desk.run({"plan", "winch.mmk", "--reach", "motor"}) == 0);
    std::size_t at = 0;
    for (const std::string& act : wanted) {
        const auto found = desk.out.find(act);
        REQUIRE(found != std::string::npos);
        CHECK(found >= at);
        at = found;
    }
    CHECK(desk.run({"draft", "winch.mmk", "--goal", "remove motor"}) == 0);
    CHECK(desk.out.find("  before     switch-off circuit\n"
                        "  before     lock-off circuit with padlock\n"
                        "  before     cool heat\n"
                        "  tool ") != std::string::npos);
    CHECK(desk.out.find("  prove      circuit with voltage-tester\n"
                        "  remove     motor\n") != std::string::npos);
}

TEST_CASE("a drafted new spring is loaded before it goes in, and its way back eases it") {
    Desk desk;
    desk.disk.files["winch.mmk"] = "device winch \"Winch\"\n"
                                   "part frame \"frame\"\n"
                                   "part spring \"spring\" kind compression-spring\n";
    CHECK(desk.run({"draft", "winch.mmk", "--goal", "replace spring", "-o", "a.mmk"}) == 0);
    CHECK(desk.run({"check", "a.mmk"}) == 0);
    CHECK(desk.run({"expand", "a.mmk"}) == 0);
    const std::string guide = desk.out;
    const auto let_down = guide.find("  let-down   spring");
    const auto loaded = guide.find("  load       spring");
    REQUIRE(let_down != std::string::npos);
    REQUIRE(loaded != std::string::npos);
    CHECK(let_down < guide.find("  replace    spring"));
    CHECK(guide.find("  replace    spring") < loaded);
    CHECK(loaded < guide.find("  fit        spring"));
    CHECK(guide.find("  fit        spring") < guide.find("  ease       spring"));
    CHECK(guide.find("let-down", loaded) == std::string::npos);
}

TEST_CASE("a drafted joint of gas is tested") {
    Desk desk;
    desk.disk.files["winch.mmk"] = "device winch \"Heater\"\n"
                                   "part frame \"frame\"\n"
                                   "part valve \"valve\"\n"
                                   "connector union \"gas union\" kind gas-union\n"
                                   "  joins      valve to frame\n";
    CHECK(desk.run({"draft", "winch.mmk", "--goal", "remove valve", "-o", "a.mmk"}) == 0);
    CHECK(desk.disk.files["a.mmk"].find("  proves     union\n") != std::string::npos);
    CHECK(desk.run({"check", "a.mmk"}) == 0);
}

TEST_CASE("a draft keeps the quotes of a title") {
    Desk desk;
    std::string quoted = winch;
    quoted.replace(quoted.find("\"motor\""), 7, "\"\\\"big\\\" motor \\\\ left\"");
    desk.disk.files["winch.mmk"] = quoted;
    CHECK(desk.run({"draft", "winch.mmk", "--goal", "replace motor", "-o", "renew.mmk"}) == 0);
    CHECK(desk.run({"check", "renew.mmk"}) == 0);
}

TEST_CASE("a plug put in before the cover is moved down, in one finding") {
    Desk desk;
    desk.disk.files["winch.mmk"] = winch;
    desk.disk.files["a.mmk"] = renewing("\nstep power \"Power\"\n  plug-in    mains\n"
                                        "\nstep close \"Close it\"\n  fit        cover\n"
                                        "\ntest haul \"It hauls\"\n  proves     haul\n");
    CHECK(desk.run({"check", "a.mmk"}) == 1);
    CHECK(desk.out.find("live again from here") != std::string::npos);
    CHECK(desk.out.find("not-put-back") == std::string::npos);
    desk.run({"mend", "a.mmk"});
    const std::string mended = desk.disk.files["a.mmk"];
    CHECK(mended.find("unplug     mains") == mended.rfind("unplug     mains")); // the head's alone
    CHECK(mended.find("fit        cover") < mended.find("  plug-in    mains"));
    CHECK(mended.find("  plug-in    mains") < mended.find("test haul"));
}

TEST_CASE("a drafted test of a function waits for the supply, and for the cover") {
    Desk desk;
    desk.disk.files["winch.mmk"] = winch;
    REQUIRE(desk.run({"draft", "winch.mmk", "--goal", "replace motor", "-o", "renew.mmk"}) == 0);
    CHECK(desk.run({"check", "renew.mmk"}) == 0);
    REQUIRE(desk.run({"expand", "renew.mmk"}) == 0);
    const auto test = desk.out.find("test try-haul");
    REQUIRE(test != std::string::npos);
    CHECK(desk.out.find("  plug-in    mains") < test);
    CHECK(desk.out.find("  fit        cover") < test);
}

TEST_CASE("a test in front of the plug is moved behind it") {
    Desk desk;
    desk.disk.files["winch.mmk"] = winch;
    desk.disk.files["renew.mmk"] = renewing(R"(
test haul "It hauls"
  proves     haul

step close "Close the winch"
  fit        cover
  plug-in    mains
)");
    CHECK(desk.run({"check", "renew.mmk"}) == 1);
    REQUIRE(desk.run({"mend", "renew.mmk", "--all"}) == 0);
    CHECK(desk.run({"check", "renew.mmk"}) == 0);
    const std::string& text = desk.disk.files["renew.mmk"];
    CHECK(text.find("test haul") > text.find("  plug-in    mains"));
    CHECK(text.find("test haul", text.find("test haul") + 1) == std::string::npos);
}

TEST_CASE("a test over the open device says that it is dead, or is told to") {
    Desk desk;
    desk.disk.files["winch.mmk"] = winch;
    std::string derived = renewing("");
    derived.erase(derived.find("\nstep motor-in"));
    desk.disk.files["renew.mmk"] = derived + R"(  derived
test coil "The meter reads 20 to 30 ohm"
  when       cover out
  proves     haul
)";
    CHECK(desk.run({"check", "renew.mmk"}) == 1);
    REQUIRE(desk.run({"mend", "renew.mmk", "--all"}) == 0);
    CHECK(desk.disk.files["renew.mmk"].find("  when       mains unplugged\n") != std::string::npos);
    CHECK(desk.run({"check", "renew.mmk"}) == 0);
}

TEST_CASE("a trial that is meant to be done open has the hazard's message before it") {
    Desk desk;
    desk.disk.files["winch.mmk"] = winch;
    desk.disk.files["renew.mmk"] = renewing(R"(  plug-in    mains

test haul "It hauls"
  when       mains plugged, cover out
  proves     haul

step isolate "Isolate it again"
  unplug     mains

step close "Close the winch"
  fit        cover
  plug-in    mains
)");
    REQUIRE(desk.run({"publish", "renew.mmk", "--to", "markdown"}) == 0);
    const std::string& page = desk.disk.files["renew-motor.md"];
    const auto test = page.find("TEST: It hauls");
    REQUIRE(test != std::string::npos);
    const auto danger = page.find("Mains voltage kills.", test);
    REQUIRE(danger != std::string::npos);
    CHECK(danger < page.find("What it proves", test));
}

TEST_CASE("an earth is measured before the supply is on") {
    Desk desk;
    desk.disk.files["fan.mmk"] = R"(device fan "Fan"
energy mains "mains" kind mains-cord
  feeds      board
part case "case"
part cover "cover"
  covers     board
connector earth "earth lead" kind earth-terminal M4, hexalobular 20
  joins      cover to case
part board "board" in case
function works "It works"
  through    board
)";
    CHECK(desk.run({"draft", "fan.mmk", "--goal", "replace board", "-o", "out.mmk"}) == 0);
    CHECK(desk.run({"expand", "out.mmk"}) == 0);
    const auto earth = desk.out.find("test try-earth");
    const auto on = desk.out.find("plug-in    mains");
    REQUIRE(earth != std::string::npos);
    REQUIRE(on != std::string::npos);
    CHECK(earth < on);
}

TEST_CASE("of what is not proved dead the step tells in which it is proved, and no other") {
    Desk desk;
    desk.disk.files["fan.mmk"] = R"(device fan "Fan"

energy supply "supply" kind mains-isolator 230 V
  feeds      block
part body "body"
part cover "cover"
  covers     block
part block "terminal block" in body

guide lift-block "Take the block out"
  for        competent
  tool       lock "padlock"
  tool       tester "voltage tester"

take-apart

step off "Lock it off"
  lock-off   supply with lock

step open "Open it"
  remove     cover
  prove      supply with tester

step out "Take the block out"
  remove     block

put-back
  derived
)";
    REQUIRE(desk.run({"publish", "fan.mmk", "--to", "markdown", "-o", "out"}) == 0);
    const std::string page = desk.disk.files.at("out/lift-block.md");
    INFO(page);
    const std::string unproved = "The wrong switch may be off";
    const auto gathered = page.find(unproved);
    REQUIRE(gathered != std::string::npos);
    const auto in_step = page.find(unproved, gathered + 1);
    REQUIRE(in_step != std::string::npos);
    CHECK(page.find(unproved, in_step + 1) == std::string::npos);
    CHECK(page.find("Open it") < in_step);
    CHECK(in_step < page.find("- [ ] Prove the supply"));
}
