// Actions in plain words.
#include "plan/reader/words.hpp"

#include "support/small_device.hpp"

#include <algorithm>
#include <doctest/doctest.h>

using namespace matchmark;
using namespace matchmark::plan;
using namespace matchmark::support;

namespace {

std::string said(const SmallDevice& device, const Action& action) {
    const ReaderWords words{device.model, device.procedure.resources, {}};
    return guide::plain(sentence(words, action));
}

} // namespace

TEST_CASE("an action names its items, tool, torque, pattern and passes") {
    SmallDevice device;
    device.usual_work();
    Action fasten = device.act(device.screws, 1);
    fasten.with = {ResourceId{0}};
    CHECK(said(device, fasten) ==
          "Fasten the 4 lid screws (told by the blue patch) with the "
          "hexalobular driver 6 to 0.2 N·m, in a star pattern, in 3 passes.");
    fasten.tightening =
        Tightening{make_quantity(24, "N.m"), {}, "", 1, {}}; // its own word goes first
    CHECK(said(device, fasten) == "Fasten the 4 lid screws (told by the blue patch) with the "
                                  "hexalobular driver 6 to 24 N·m.");
    CHECK(said(device, device.act(device.screws, 0, {1, 3})) == "Undo the lid screws 1 and 3.");
    CHECK(said(device, device.act(device.lid, 0)) == "Open the display lid.");
}

TEST_CASE("a verb's usual limit is said unless the action states its own") {
    SmallDevice device;
    Action discharge = device.act(device.cell, 2);
    CHECK(said(device, discharge) == "Discharge the cell below 25 %.");
    discharge.limit = Limit{{}, make_quantity(10, "%"), true};
    discharge.duration = make_quantity(15, "s");
    discharge.means = std::string("10 kohm");
    CHECK(said(device, discharge) == "Discharge the cell through 10 kohm for 15 s below 10 %.");
}

TEST_CASE("what the compiler does itself has words of its own") {
    SmallDevice device;
    device.usual_work();
    Action action;
    action.targets.push_back({{device.cell, {}, {}}, 0});
    action.sort = ActionSort::replace;
    action.with = {ResourceId{1}};
    CHECK(said(device, action) == "Replace the cell with the new one: cell, 3000 mAh.");
    action.with.clear();
    action.sort = ActionSort::dispose;
    action.aspect = std::string("old-cells");
    CHECK(said(device, action) == "Dispose of the old cell as old cells.");
    device.model.items.edit(device.cell.value).role = Role::fluid; // it has no old and new
    CHECK(said(device, action) == "Dispose of the used cell as old cells.");
    device.model.items.edit(device.cell.value).role = Role::part;
    action.sort = ActionSort::scrap;
    CHECK(said(device, action) == "Scrap the cell: it does not go back.");
    action.sort = ActionSort::measure;
    action.aspect = std::string("rest-voltage");
    action.limit = Limit{make_quantity(3, "V"), {}, false};
    action.otherwise.edit().text = "replace cell with cell-new";
    CHECK(said(device, action) == "Measure the rest voltage of the cell: at least 3 V. Otherwise "
                                  "replace the cell with the cell, 3000 mAh.");
    action.sort = ActionSort::mark;
    action.across = std::vector<model::ItemId>{device.lid, device.back};
    CHECK(said(device, action) ==
          "Mark the cell across the display lid and the back shell, so that "
          "it goes back as it was.");
    action.across = {};
    device.model.items.edit(device.cell.value).rare.edit().keep = {"face"};
    CHECK(said(device, action) == "Mark the face of the cell, so that it goes back as it was.");
}

TEST_CASE("items in a list have torques of their own when they differ") {
    SmallDevice device;
    Action both = device.act(device.screws, 1);
    both.targets.push_back(both.targets.front());
    CHECK(said(device, both).ends_with("to 0.2 N·m, in a star pattern, in 3 passes."));
    device.model.items.edit().push_back(device.model.items[device.screws.value]);
    device.model.items.edit().back().title = "long screw";
    device.model.items.edit().back().tightening =
        Tightening{make_quantity(0.5, "N.m"), {}, "", 1, {}};
    both.targets.back().ref.item = ItemId{5};
    CHECK(said(device, both) ==
          "Fasten the 4 lid screws (told by the blue patch) to 0.2 N·m, in a star pattern, in 3 "
          "passes and the 4 long screws (told by the blue patch) to 0.5 N·m.");
}

TEST_CASE("values and item numbers are runs of their own") {
    SmallDevice device;
    const ReaderWords words{device.model, device.procedure.resources, {{device.screws, 7}}};
    const guide::Words said = sentence(words, device.act(device.screws, 1));
    const guide::Run number{guide::RunKind::item_number, "7"};
    const guide::Run torque{guide::RunKind::value, "0.2 N·m"};
    CHECK(std::find(said.begin(), said.end(), number) != said.end());
    CHECK(std::find(said.begin(), said.end(), torque) != said.end());
}
