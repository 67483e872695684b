// Which tool fits, which makes do, and of which class it is.
#include "model/fitting.hpp"

#include <doctest/doctest.h>

using namespace matchmark::model;

namespace {

struct Workshop {
    Model model;
    Item screw;
    Verb undo;

    Workshop() {
        Drive star;
        star.name = "star";
        star.driven_by = {"star-driver"};
        star.stand_ins = {{"slotted-driver", "1.8", "6", {}}, {"coin", "", "8", {}}};
        model.drives.edit().push_back(star);
        model.tool_kinds.edit() = {{"driver", "driver", ToolClass::available, {}, false, {}},
                                   {"star-driver", "star driver", ToolClass::basic, {}, false, {}}};
        screw.bolt.edit().drive = "star";
        screw.bolt.edit().drive_size = "6";
        undo.by_driver = true;
        undo.by_hand = false;
    }
};

Resource tool(const char* name, const char* text) {
    Resource made;
    made.name = name;
    made.text = text;
    return made;
}

} // namespace

TEST_CASE("a driver fits by the words of its drive and its size") {
    const Workshop shop;
    CHECK(tool_fits(shop.model, tool("a", "star driver 6"), shop.screw, shop.undo));
    CHECK_FALSE(tool_fits(shop.model, tool("a", "star driver 8"), shop.screw, shop.undo));
    CHECK_FALSE(tool_fits(shop.model, tool("a", "slotted driver 1.8"), shop.screw, shop.undo));
}

TEST_CASE("a tool makes do only for the size that the drive says") {
    Workshop shop;
    const Resource blade = tool("blade", "slotted driver 1.8");
    REQUIRE(stand_in(shop.model, blade, shop.screw, shop.undo) != nullptr);
    CHECK(stand_in(shop.model, blade, shop.screw, shop.undo)->tool == "slotted-driver");
    CHECK(stand_in(shop.model, tool("b", "slotted driver 3"), shop.screw, shop.undo) == nullptr);
    CHECK(stand_in(shop.model, tool("c", "coin"), shop.screw, shop.undo) == nullptr);
    shop.screw.bolt.edit().drive_size = "8";
    CHECK(stand_in(shop.model, tool("c", "coin"), shop.screw, shop.undo) != nullptr);
    CHECK(stand_in(shop.model, blade, shop.screw, shop.undo) == nullptr);
    shop.undo.by_driver = false;
    CHECK(stand_in(shop.model, tool("c", "coin"), shop.screw, shop.undo) == nullptr);
}

TEST_CASE("what makes do is taken only when nothing on the list fits") {
    const Workshop shop;
    const Resource blade = tool("blade", "slotted driver 1.8");
    const Resource right = tool("right", "star driver 6");
    const auto both = fitting_tools(shop.model, {blade, right}, shop.screw, shop.undo);
    REQUIRE(both.size() == 1);
    CHECK(both.front().value == 1);
    const auto alone = fitting_tools(shop.model, {blade}, shop.screw, shop.undo);
    REQUIRE(alone.size() == 1);
    CHECK(alone.front().value == 0);
}

TEST_CASE("a tool is of the class that the guide gives, or else of its longest name's") {
    const Workshop shop;
    Resource driver = tool("d", "star driver 6");
    CHECK(class_of(shop.model, driver) == ToolClass::basic);
    CHECK(class_of(shop.model, tool("e", "nut driver 8")) == ToolClass::available);
    CHECK_FALSE(class_of(shop.model, tool("f", "opening pick")).has_value());
    driver.tool_class = ToolClass::supplied;
    CHECK(class_of(shop.model, driver) == ToolClass::supplied);
}

TEST_CASE("a tool sets the torques of each tool-kind that its description names") {
    Workshop shop;
    const auto newton_metres = [](double value) { return *make_quantity(value, "N.m"); };
    shop.model.tool_kinds.edit() = {
        {"preset-driver",
         "preset driver",
         {},
         Limit{newton_metres(0.1), newton_metres(6)},
         false,
         {}},
        {"long-wrench", "long wrench", {}, Limit{newton_metres(2), newton_metres(200)}, false, {}}};
    const Resource driver = tool("d", "preset driver with bits");
    CHECK(sets_torque(shop.model, driver, newton_metres(6)));
    CHECK_FALSE(sets_torque(shop.model, driver, newton_metres(6.1)));
    CHECK_FALSE(sets_torque(shop.model, tool("s", "star driver 6"), newton_metres(1)));
    for (const char* said :
         {"preset driver 1 to 3 N·m", "preset driver, 1..3 N.m", "preset driver 1-3 Nm"}) {
        CAPTURE(said);
        CHECK_FALSE(sets_torque(shop.model, tool("r", said), newton_metres(0.9)));
        CHECK(sets_torque(shop.model, tool("r", said), newton_metres(1)));
        CHECK(sets_torque(shop.model, tool("r", said), newton_metres(3)));
        CHECK_FALSE(sets_torque(shop.model, tool("r", said), newton_metres(3.3)));
    }
    const Resource fixed = tool("f", "preset driver 1.4 N·m");
    CHECK(sets_torque(shop.model, fixed, newton_metres(1.4)));
    CHECK_FALSE(sets_torque(shop.model, fixed, newton_metres(1)));
    const std::string endless = "preset driver 1 to " + std::string(400, '9') + " N·m";
    CHECK(sets_torque(shop.model, tool("e", endless.c_str()), newton_metres(2)));
    // In another unit it is not read, and nothing held against it.
    CHECK(sets_torque(shop.model, tool("c", "preset driver 20 cN·m"), newton_metres(1)));
    CHECK(torque_tool_for(shop.model, newton_metres(4))->name == "preset-driver");
    CHECK(torque_tool_for(shop.model, newton_metres(7))->name == "long-wrench");
    CHECK(torque_tool_for(shop.model, newton_metres(201)) == nullptr);
}
