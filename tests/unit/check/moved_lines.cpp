// A line that a mend moves: what else stands in it stays where it is.
#include "diagnostics/mend.hpp"
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;

namespace {

const std::string mower = R"(device mower "Mower"
part tank "tank"
part pump "pump"
part hose "hose"
connector tank-end "hose at the tank" kind hose-barb
  joins      hose to tank
  lets nothing out
connector pump-end "hose at the pump" kind hose-barb
  joins      hose to pump
  lets nothing out
fastener tank-clip "clip at the tank" kind spring-clamp
  holds      hose to tank
fastener pump-clip "clip at the pump" kind spring-clamp
  holds      hose to pump
)";

std::string mended(const std::string& guide) {
    MapDisk disk;
    disk.files["mower.mmk"] = mower + guide;
    for (int round = 0; round < 4; ++round) {
        const drive::Compilation done = drive::compile(disk, "mower.mmk");
        const Mended result = mend(done.sources, done.findings, true);
        const auto text = result.texts.find(done.root);
        if (text == result.texts.end())
            return done.findings.empty() ? disk.files["mower.mmk"] : "not mended";
        disk.files["mower.mmk"] = text->second;
    }
    return "no end";
}

bool holds_in_order(const std::string& text, const std::vector<std::string>& lines) {
    std::size_t at = 0;
    for (const std::string& line : lines) {
        at = text.find(line, at);
        if (at == std::string::npos)
            return false;
        at += line.size();
    }
    return true;
}

} // namespace

TEST_CASE("of a line with two things, the one that comes too late is moved and the other stays") {
    const std::string text = mended(R"(guide hose-off "Take the hose off"
  for        competent
  tool       pliers "pliers"
take-apart
step off "Take it off"
  pull-off   tank-end
  squeeze    pump-clip, tank-clip with pliers # the pump's is stiff
  pull-off   pump-end
  remove     hose
put-back
  derived
)");
    CHECK(holds_in_order(text, {"squeeze tank-clip with pliers", "pull-off   tank-end",
                                "squeeze    pump-clip with pliers # the pump's is stiff",
                                "pull-off   pump-end"}));
}

TEST_CASE("a hose that goes on after its clamp is tight is moved up, and the clamp stays tight") {
    const std::string text = mended(R"(guide hose-off "Take the hose off"
  for        competent
  tool       pliers "pliers"
take-apart
step off "Take it off"
  squeeze    tank-clip, pump-clip with pliers
  pull-off   tank-end, pump-end
  remove     hose
put-back
step hose-on "Put it on"
  fit        hose
  release    tank-clip with pliers
  push-on    tank-end
  push-on    pump-end
  release    pump-clip with pliers
)");
    CHECK(holds_in_order(text, {"fit        hose", "push-on    tank-end",
                                "release    tank-clip with pliers", "push-on    pump-end"}));
    CHECK(text.find("squeeze") == text.rfind("squeeze"));
}
