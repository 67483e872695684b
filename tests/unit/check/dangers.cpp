// What was left out of making safe is named by the danger, whatever the finding.
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;

namespace {

const std::string works = R"(hazard works-shock "Shock of the works"
  danger: The shock can kill. Lock it off and try it.
kind works-supply "works supply" is energy
  states     on, off, locked, tried
  turn-off   on -> off by hand from outside
  hang-lock  off -> locked by hand from outside
  try-out    locked -> tried by hand from outside
  untry      tried -> locked by hand from outside
  unlock     locked -> off by hand from outside
  turn-on    off -> on by hand from outside
  live in    on
  hazard     works-shock until tried on reach
device box "Box"
part base "base"
part case "case"
  covers     board
part board "board"
energy supply "supply" kind works-supply
  feeds      board
  needs      case in to turn-on
)";

std::string messages(const std::string& lines) {
    MapDisk disk;
    disk.files["box.mmk"] = works + R"(guide open-box "Open the box"
  for        trained
before
step dead "Make it dead"
)" + lines + R"(
take-apart
step open "Open it"
  remove     case
  remove     board
put-back
  derived
)";
    std::string all;
    for (const Diagnostic& finding : drive::compile(disk, "box.mmk").findings)
        all += finding.message + "\n";
    return all;
}

bool names_the_danger(const std::string& text) {
    return text.find("Shock of the works") != std::string::npos;
}

} // namespace

TEST_CASE("a guide that makes safe in order is clean") {
    CHECK(messages("  turn-off supply\n  hang-lock supply\n  try-out supply\n").empty());
}

TEST_CASE("each action left out is reported by the danger's name") {
    CHECK(names_the_danger(messages("  hang-lock supply\n  try-out supply\n")));
    CHECK(names_the_danger(messages("  turn-off supply\n  try-out supply\n")));
    CHECK(names_the_danger(messages("  turn-off supply\n  hang-lock supply\n")));
    CHECK(names_the_danger(messages("  turn-off supply\n")));
}

TEST_CASE("a line too many is no danger") {
    const std::string found =
        messages("  turn-off supply\n  turn-off supply\n  hang-lock supply\n  try-out supply\n");
    CHECK_FALSE(found.empty());
    CHECK_FALSE(names_the_danger(found));
}
