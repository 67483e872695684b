// A drive that nobody knows is told with those that may be meant.
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;

namespace {

std::string help_for(const std::string& drive) {
    MapDisk disk;
    disk.files["box.mmk"] = R"(device box "Box"
part base "base"
part cover "cover"
fastener front "front screw" 2 x screw M6 x 20)" +
                            drive + R"(
  holds      cover to base

guide off "Take it off"
  for        competent
  tool       driver "driver"
take-apart
step off "Take it off"
  undo       front with driver
  remove     cover
put-back
  derived
)";
    for (const Diagnostic& finding : drive::compile(disk, "box.mmk").findings) {
        if (finding.rule == "no-drive")
            return finding.help;
    }
    return "";
}

} // namespace

TEST_CASE("a drive that is misnamed is told with those that share a word and have its size") {
    CHECK(help_for(", hex-socket 5") ==
          "`hex-socket 5` names no drive; with a word in common: `hexagon 5`, `bi-hexagon 5`, "
          "`hexalobular 5`; `matchmark kinds drives` lists them");
    CHECK(help_for(", slot 4") == "`slot 4` names no drive; with a word in common: `slotted 4`; "
                                  "`matchmark kinds drives` lists them");
    // No hexagon of that size is known, nor a word like that.
    const std::string plain = "add the drive and its size, such as `hexagon-head 13`; `matchmark "
                              "kinds drives` lists them";
    CHECK(help_for(", hex-socket 5.7") == plain);
    CHECK(help_for(", pan") == plain);
    CHECK(help_for("") == plain);
}
