// The way back, written out: what is renewed by stages is renewed as it is laid, and a rating is
// tried on the closed device.
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using test::Desk;

namespace {

constexpr const char* reader = R"(device reader "Sealed reader"
  sealed     IP68 by frame-glue, port-ring

part shell "shell"
part display "display" kind hinged-cover
  covers     port, port-ring
part port "port"
bond frame-glue "frame glue" kind heat-softened-glue
  joins      display to shell
bond port-ring "port ring" kind loose-seal
  joins      port to shell
fastener frame-screws "frame screw" 2 x captive-screw M2 x 4, hexalobular 6
  holds      display to shell

guide open-reader "Open the reader"
  for        trained
  supply     glue-new "frame glue, cut to shape", 1 for frame-glue
  tool       mat "heat mat"
  tool       pick "opening pick"
  tool       driver-6 "hexalobular driver 6"

take-apart

step open "Open the display"
  undo       frame-screws
  soften     frame-glue
  separate   frame-glue
  open       display

put-back
  derived
test leak "It holds 5 kPa for 30 s"
  proves     IP68
)";

} // namespace

TEST_CASE("new glue comes with the stage that lays it and is set on the part, and a rating is "
          "tried on the closed device") {
    Desk desk;
    desk.disk.files["reader.mmk"] = reader;
    CHECK(desk.run({"check", "reader.mmk"}) == 0);
    REQUIRE(desk.run({"expand", "reader.mmk"}) == 0);
    const std::string text = desk.out;
    INFO(text);
    CHECK(text.find("stick      frame-glue with glue-new\n  shut       display\n  cure       "
                    "frame-glue\n") != std::string::npos);
    const auto fastened = text.find("fasten     frame-screws");
    REQUIRE(fastened != std::string::npos);
    CHECK(text.find("test leak") > fastened);
}

TEST_CASE("of several tools that fit, the one that took it off puts it back") {
    Desk desk;
    desk.disk.files["lamp.mmk"] = R"(device lamp "Bench lamp"

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M4 x 8, hexalobular 20
  holds      cover to base
  torque     1.5 N.m

guide look-inside "Take the cover off"
  for        competent
  tool       key "hexalobular key 20"
  tool       driver "hexalobular driver 20"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver
  remove     cover

put-back
  derived
)";
    REQUIRE(desk.run({"expand", "lamp.mmk"}) == 0);
    CHECK(desk.out.find("fasten     cover-screws with driver to 1.5 N.m") != std::string::npos);
}

TEST_CASE("a line that repeats the torque keeps the pattern that the device asks for") {
    Desk desk;
    desk.disk.files["hub.mmk"] = R"(device hub "Hub"

part hub "hub"
part wheel "wheel"
fastener bolts "wheel bolt" 4 x bolt M10 x 25, hexagon-head 16, class 8.8
  holds      wheel to hub
  torque     40 N.m in star
  at         front 0,30 30,0 0,-30 -30,0
face front 100 x 100 mm

guide look "Take the wheel off"
  for        competent
  tool       spanner "spanner 16"
  tool       wrench "torque wrench 20 to 100 N·m"

take-apart

step off "Take it off"
  undo       bolts with spanner
  remove     wheel

put-back

step refit "Put it on"
  fit        wheel
  fasten     bolts to 40 N.m with spanner, wrench
)";
    REQUIRE(desk.run({"expand", "hub.mmk"}) == 0);
    INFO(desk.out);
    CHECK(desk.out.find("to 40 N.m in star") != std::string::npos);
}

namespace {

constexpr const char* power_pack = R"(device power-pack "Power pack"

energy supply "supply" kind motor-supply 400 V
  feeds      motor
part motor "motor" kind motor
  feeds      pump
part pump "pump" kind pump
  feeds      store
part store "store"
connector union "store union" kind face-seal-joint
  joins      store to pump
energy charge "charge" in store kind hydraulic-accumulator 180 bar
  feeds      pump
part cap "end cap"
fastener gland "end nut" 1 x ring-nut M60 x 2
  holds      cap to pump
  torque     90 N.m
fastener cap-screws "cap screw" 2 x screw M5 x 12, hexalobular 25, pan
  holds      cap to pump
  torque     5 N.m

guide renew-store "Renew the store"
  goal       replace store with store-new, remove cap
  for        trained
  spare      store-new "store", 1 for store
  tool       padlock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       s27 "spanner 27"
  tool       pin "pin spanner"
  tool       d25 "hexalobular driver 25"
  tool       set "torque driver 3 to 8 N·m with hexalobular 25 bit"
  tool       wrench "torque wrench 40 to 200 N·m"

take-apart

step safe "Lock it off"
  shut-down  supply
  lock-off   supply with padlock
  prove      supply

step empty "Let the charge out"
  relieve    charge
  prove      charge with gauge

step off "Take the store and the cap off"
  undo       union with s27
  undo       gland with pin
  undo       cap-screws with d25
  remove     store, cap

work

step renew "Take the new one"
  replace    store with store-new

put-back
  derived

test holds "It holds"
  proves     store
)";

} // namespace

TEST_CASE("what a pump builds up comes after the supply that runs it") {
    Desk desk;
    desk.disk.files["pack.mmk"] = power_pack;
    REQUIRE(desk.run({"expand", "pack.mmk"}) == 0);
    INFO(desk.out);
    const auto started = desk.out.find("start-up   supply");
    REQUIRE(started != std::string::npos);
    CHECK(desk.out.find("pressurise charge") > started);
}

TEST_CASE(
    "what is tightened to a torque is so by what can be set to it, and never by a bare hand") {
    Desk desk;
    desk.disk.files["pack.mmk"] = power_pack;
    REQUIRE(desk.run({"expand", "pack.mmk"}) == 0);
    INFO(desk.out);
    CHECK(desk.out.find("fasten     cap-screws with set to 5 N.m") != std::string::npos);
    CHECK(desk.out.find("fasten     gland with pin to 90 N.m") != std::string::npos);
}
