// An evening at the bench: start a device and a guide, break it, mend it, publish it.
#include "program/workshop.hpp"
#include "unit/drive/bench_files.hpp"

using matchmark::test::Ran;
using matchmark::test::Workshop;

TEST_CASE("from nothing to a page") {
    Workshop shop;
    REQUIRE(shop.run({"new", "device", "kettle"}).code == 0);
    REQUIRE(shop.run({"new", "guide", "open-kettle", "--for", "kettle.mmk"}).code == 0);
    const Ran checked = shop.run({"check", "."});
    CHECK(checked.code == 0);
    CHECK(checked.out == "1 guide, 1 device: nothing to report\n");
    CHECK(shop.run({"publish", ".", "-o", "site"}).code == 0);
    CHECK(shop.has("site/open-kettle.html"));
    CHECK(shop.has("site/index.html"));
    CHECK(shop.run({"new", "device", "kettle"}).code == 2);
}

TEST_CASE("a guide that leaves out a step is refused, mended, and then accepted") {
    Workshop shop;
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("shut.mmk", matchmark::test::bad_guide);
    CHECK(shop.run({"check", "shut.mmk"}).code == 1);
    const Ran dry = shop.run({"mend", "--dry-run", "shut.mmk"});
    CHECK(dry.told("fasten"));
    CHECK(shop.text("shut.mmk") == matchmark::test::bad_guide);
    CHECK(shop.run({"mend", "shut.mmk"}).code == 0);
    CHECK(shop.run({"check", "--strict", "shut.mmk"}).code == 0);
    CHECK(shop.names() == std::vector<std::string>{"lamp.mmk", "shut.mmk"});
}

// The step behind `derived` fills what it has closed in.
TEST_CASE("mending brings nothing back in the guide's head") {
    const std::string device = R"(device box "Box"
energy mains "mains supply" kind mains-cord 230 V
  feeds      board
energy tap "cold water tap" kind water-supply
  feeds      valve
part body "body"
part lid "lid" kind panel
  covers     board, plug, valve
fastener lid-screws "lid screw" 2 x screw M4 x 16, hexalobular 20, pan
  holds      lid to body
  torque     1.5 N.m
part board "board" kind circuit-board
part valve "valve" kind valve
connector plug "heater plug" kind locking-tab-plug
  joins      board to heater
part heater "heater"
fluid suds "water" in body 4 l kind waste-water
function heating "It gets warm"
  through    board, plug, heater
)";
    const std::string guide = R"(use "box.mmk"
guide g "Renew the heater"
  goal       replace heater with heater-new
  for        competent
  spare      heater-new "heater", 1, 24.00 EUR for heater
  tool       driver-20 "hexalobular driver 20"
  tool       bucket "bucket"
  tool       torque-driver "torque driver 1.5 N·m"
take-apart
step safe "Cut the supplies off"
  unplug     mains
  turn-off   tap
  drain      tap
step empty "Empty"
  drain      suds with bucket
step heater "Draw the heater"
  disconnect plug
  remove     heater
work
step renew "Take the new heater"
  replace    heater with heater-new
put-back
  derived
step water "Pour water"
  fill       suds
test warm "It gets warm"
  proves     heater, heating
)";
    Workshop shop;
    shop.put("box.mmk", device);
    shop.put("renew.mmk", guide);
    CHECK(shop.run({"check", "renew.mmk"}).code == 1);
    const Ran mended = shop.run({"mend", "renew.mmk"});
    CHECK(mended.code == 1);
    CHECK(mended.told("2 findings mended in 1 file; left: 1 error"));
    CHECK(shop.text("renew.mmk").find("before     ") == std::string::npos);
    CHECK(shop.text("renew.mmk").find("  unplug mains\n  fill       suds") != std::string::npos);
}

TEST_CASE("what is written twice is the same to the byte") {
    Workshop shop;
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("open.mmk", matchmark::test::good_guide);
    for (const char* form : {"html", "json"}) {
        CAPTURE(form);
        const std::string file = std::string("open-lamp.") + form;
        REQUIRE(shop.run({"publish", "open.mmk", "--to", form, "-o", "one"}).code == 0);
        REQUIRE(shop.run({"publish", "open.mmk", "--to", form, "-o", "two"}).code == 0);
        CHECK(shop.text("one/" + file).size() > 100);
        CHECK(shop.text("one/" + file) == shop.text("two/" + file));
    }
}

TEST_CASE("a file's mode is kept when it is rewritten") {
    Workshop shop;
    shop.put("a.mmk", "device   a   \"A\"\n");
    std::filesystem::permissions(shop.at("a.mmk"), std::filesystem::perms(0640));
    CHECK(shop.run({"tidy", "a.mmk"}).code == 0);
    CHECK(shop.text("a.mmk") == "device a \"A\"\n");
    CHECK(std::filesystem::status(shop.at("a.mmk")).permissions() == std::filesystem::perms(0640));
}

TEST_CASE("exit codes of wrong use") {
    Workshop shop;
    CHECK(shop.run({}).code == 2);
    CHECK(shop.run({"chekc"}).code == 2);
    CHECK(shop.run({"check", "--nope"}).code == 2);
    CHECK(shop.run({"publish", "--to"}).code == 2);
    CHECK(shop.run({"--help"}).code == 0);
    CHECK(shop.run({"--version"}).code == 0);
    CHECK(shop.run({"tidy", "-"}, "device   a   \"A\"\n").out == "device a \"A\"\n");
}
