// What the compiler calls a step that nobody has given a title: all that a reader has to expect.
#include "unit/drive/bench_files.hpp"
#include "unit/drive/winch_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using test::Desk;

namespace {

// Two supplies; the spring is let down before the case can be opened, by reaching in.
const std::string press = R"(device press "Press"

energy mains "mains" kind machine-supply 400 V
  feeds      motor
energy air "air" kind machine-air
  feeds      valve
part frame "frame"
part hood "hood" kind panel
part cover "cover" kind panel
  behind     hood
  covers     motor, valve
part valve "valve"
part motor "motor"
)";

std::string opening(const std::string& steps) {
    return R"(use "press.mmk"

guide see-motor "See to the motor"
  goal       remove motor
  for        trained
  tool       padlock "padlock with tag"
  tool       meter "voltage tester"
  tool       gauge "pressure gauge"

take-apart

)" + steps +
           R"(
put-back
  derived
)";
}

const std::string isolate = R"(  shut-down  mains
  isolate    mains
  lock-off   mains with padlock
  discharge  mains
  turn-off   air
  lock-off   air with padlock
  vent       air
  prove      air with gauge
)";

const std::string take_out = R"(  remove     hood
  remove     cover
  prove      mains with meter
  remove     motor
)";

std::string expanded(const std::string& guide) {
    Desk desk;
    desk.disk.files["press.mmk"] = press;
    desk.disk.files["see.mmk"] = guide;
    CHECK(desk.run({"check", "see.mmk"}) == 0);
    CHECK(desk.run({"expand", "see.mmk"}) == 0);
    return desk.out;
}

} // namespace

TEST_CASE("a step that brings two supplies back is called after both, by what is done last") {
    const std::string text = expanded(opening("step lock \"Isolate it\"\n" + isolate +
                                              "\nstep out \"Take the motor out\"\n" + take_out));
    INFO(text);
    CHECK(text.find("step lock \"Turn on the air and start up the mains\"\n") != std::string::npos);
    CHECK(text.find("step out \"Fit the motor\"\n") != std::string::npos);
}

TEST_CASE("a step that closes up and brings a supply back says so") {
    const std::string text =
        expanded(opening("step out \"Take the motor out\"\n" + isolate + take_out));
    INFO(text);
    CHECK(text.find("step out \"Fit the motor, turn on the air and start up the mains\"\n") !=
          std::string::npos);
}

TEST_CASE("a reader in another language is told of both supplies too") {
    Desk desk;
    desk.disk.files["press.mmk"] = press;
    desk.disk.files["see.mmk"] =
        opening("step lock \"Isolate it\"\n" + isolate + "\nstep out \"Out\"\n" + take_out);
    struct Said {
        std::string tag;
        std::string title;
    };
    for (const Said& said :
         std::vector<Said>{{"de", "The air anstellen und the mains starten"},
                           {"fr", "Ouvrir the air et mettre en marche the mains"},
                           {"es", "Abra the air y ponga en marcha the mains"}}) {
        CHECK(desk.run({"publish", "see.mmk", "--to", "markdown", "--language", said.tag, "-o",
                        "out"}) == 0);
        INFO(desk.err);
        bool there = false;
        for (const auto& [name, bytes] : desk.disk.files) {
            there = there || bytes.find(said.title) != std::string::npos;
        }
        INFO(said.title);
        CHECK(there);
    }
}

TEST_CASE("a step that keeps the title of the one it takes back is called after what it does") {
    Desk desk;
    desk.disk.files["winch.mmk"] = test::winch;
    std::string guide = test::renewing(R"(  fit        cover
  plug-in    mains

test haul "It hauls"
  proves     haul
)");
    const std::string title = "\"Put the motor in\"";
    guide.replace(guide.find(title), title.size(), "\"Take the motor out\"");
    desk.disk.files["renew.mmk"] = guide;
    CHECK(desk.run({"publish", "renew.mmk", "--to", "markdown", "-o", "out"}) == 0);
    INFO(desk.err);
    CHECK(desk.disk.files["out/renew-motor.md"].find(
              "Fit the cover and plug in the mains cord\n") != std::string::npos);
}

TEST_CASE("a step that a mend writes has plain words for its title") {
    Desk desk;
    desk.disk.files["winch.mmk"] = test::winch;
    desk.disk.files["renew.mmk"] = test::renewing(R"(  fit        cover

test turn "The motor turns by hand"
  when       mains unplugged
  proves     motor

test haul "It hauls"
  proves     haul
)");
    CHECK(desk.run({"mend", "--all", "renew.mmk"}) == 0);
    const std::string& mended = desk.disk.files["renew.mmk"];
    INFO(mended);
    CHECK(mended.find("\nstep then \"Plug in the mains cord\"\n") != std::string::npos);
}
