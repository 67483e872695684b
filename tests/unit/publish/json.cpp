// The model for other programs.
#include "publish/json.hpp"

#include "support/small_device.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark;
using matchmark::support::SmallDevice;

namespace {

nlohmann::json parsed(const SmallDevice& device, unsigned variant = 0) {
    return nlohmann::json::parse(
        publish::json(SourceMap{}, device.model, device.procedure, variant));
}

} // namespace

TEST_CASE("every act carries the states of its item before and after") {
    SmallDevice device;
    device.usual_work();
    const auto root = parsed(device);
    CHECK(root["format"] == "matchmark-model");
    CHECK(root["variant"].is_null());
    const auto& acts = root["acts"];
    REQUIRE(acts.size() == 8);
    CHECK(acts[0]["verb"] == "discharge");
    CHECK(acts[0]["before"][0]["states"] == nlohmann::json({"in", "charged"}));
    CHECK(acts[0]["after"][0]["states"] == nlohmann::json({"in", "low"}));
    CHECK(acts[1]["item"] == "lid-screws");
    CHECK(acts[1]["after"].size() == 4);
    CHECK(acts[1]["after"][3]["states"] == nlohmann::json::array({"out"}));
    CHECK(acts[1]["after"][3]["flags"] == nlohmann::json::array({"spent"}));
    CHECK(acts[4]["sort"] == "replace");
    CHECK(acts[4]["supplied"] == true);
    CHECK(acts[4]["after"][0]["flags"] == nlohmann::json::array({"renewed"}));
    CHECK(root["steps"][1]["first_act"] == 1);
    CHECK(root["steps"][1]["act_count"] == 2);
    CHECK(root["steps"][1]["section"] == "take-apart");
}

TEST_CASE("an act on some members leaves the others") {
    SmallDevice device;
    device.step(model::Section::take_apart, "open", "Open", {device.act(device.screws, 0, {1, 3})});
    const auto act = parsed(device)["acts"][0];
    CHECK(act["members"] == nlohmann::json({1, 3}));
    CHECK(act["after"][0]["states"] == nlohmann::json::array({"out"}));
    CHECK(act["after"][1]["states"] == nlohmann::json::array({"tight"}));
}

TEST_CASE("what binds, covers and is tied stands in the model") {
    SmallDevice device;
    device.usual_work();
    const auto root = parsed(device);
    REQUIRE(root["items"].size() == 5);
    const auto& screws = root["items"][3];
    CHECK(screws["name"] == "lid-screws");
    CHECK(screws["count"] == 4);
    CHECK(screws["touches"] == nlohmann::json({"lid", "back"}));
    CHECK(screws["tightening"]["torque"]["base"] == 0.2);
    CHECK(root["items"][2]["reach"][0]["ways"][0][0]["item"] == "lid");
    CHECK(root["kinds"][3]["binds_in"] == nlohmann::json::array({"tight"}));
    CHECK(root["kinds"][2]["hazards"][0]["until"] == nlohmann::json::array({"low"}));
    CHECK(root["kinds"][2]["states"][3]["set"] == 1);
    CHECK(root["end"]["lid"][0]["states"] == nlohmann::json::array({"shut"}));
}

TEST_CASE("a variant has its own items and acts") {
    SmallDevice device;
    device.usual_work();
    device.model.device.variants = {"eu", "us"};
    device.model.items.edit(device.cell.value).variants = 1;
    CHECK(parsed(device, 0)["acts"].size() == 8);
    const auto us = parsed(device, 1);
    CHECK(us["variant"] == "us");
    CHECK(us["acts"].size() == 4);
    CHECK(us["items"][2]["exists"] == false);
    CHECK_FALSE(us["start"].contains("cell"));
}

TEST_CASE("bytes that are no UTF-8 do not stop it") {
    SmallDevice device;
    device.model.items.edit(0).title = "\xff";
    CHECK(parsed(device)["items"][0]["title"] == "\uFFFD");
}
