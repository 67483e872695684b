// A device of five items made by hand, for tests that need a model and no text: a lid on four
// screws over a cell.
#pragma once

#include "model/model.hpp"

#include <string>
#include <utility>

namespace matchmark::support {

using namespace matchmark::model;

inline Verb verb(const char* name, StateSet from, StateId to, double seconds = 0) {
    Verb made;
    made.name = name;
    made.from = from;
    made.to = to;
    if (seconds > 0)
        made.takes = make_quantity(seconds, "s");
    return made;
}

inline Prose prose(ProseKind kind, const char* markdown) { return {kind, markdown, {}}; }

struct SmallDevice {
    Model model;
    ItemId back, lid, cell, screws, ribbon;
    Procedure procedure;

    SmallDevice() {
        add_kinds();
        back = add_item("back", "back shell", 0);
        lid = add_item("lid", "display lid", 1);
        cell = add_item("cell", "cell", 2);
        screws = add_item("lid-screws", "lid screw", 3, 4);
        ribbon = add_item("lid-ribbon", "lid ribbon", 4);
        Item& tied = model.items.edit(screws.value);
        tied.touches = {lid, back};
        tied.told_by = std::string("the blue patch");
        tied.tightening = Tightening{make_quantity(0.2, "N.m"), {}, "star", 3, {}};
        tied.spec.push_back(model::spec_phrase({"M2 x 6", {}, {}}));
        model.items.edit(ribbon.value).touches = {lid, back};
        model.items.edit(cell.value).reach = {{{{ItemRef{lid, {}, {}}}}, {}}};
        for (const ItemId part : {lid, back})
            model.items.edit(part.value).ties = {screws, ribbon};
        model.cautions.edit().push_back({"strain",
                                         {ribbon, {}, {}},
                                         {{{lid, {}, {}}, 1, {}}},
                                         prose(ProseKind::caution, "The ribbon is short.")});
        model.device.name = "logger";
        model.device.title = "field logger";
        model.device.revision = "B";
        Guide guide;
        guide.name = "renew-cell";
        guide.title = "Replace the cell";
        model.guides.edit().push_back(guide);
        procedure.guide = GuideId{0};
    }

    Action act(ItemId item, std::uint16_t verb_index, std::vector<std::uint16_t> members = {}) {
        Action action;
        action.verb = model.kind_of(item).verbs[verb_index].name;
        action.targets.push_back({{item, std::move(members), {}}, verb_index});
        return action;
    }

    Step& step(Section section, const char* name, const char* title, std::vector<Action> actions) {
        Step made;
        made.section = section;
        made.name = name;
        made.title = title;
        made.actions = std::move(actions);
        procedure.steps.push_back(std::move(made));
        return procedure.steps.back();
    }

    // Opens the lid, takes the cell out, renews it, and puts all of it back.
    void usual_work() {
        resource(ResourceSort::tool, "driver-6", "hexalobular driver 6");
        resource(ResourceSort::spare, "cell-new", "cell, 3000 mAh");
        procedure.resources.back().quantities = {*make_quantity(1, ""),
                                                 *make_quantity(14.5, "EUR")};
        Action undo = act(screws, 0);
        undo.with = {ResourceId{0}};
        step(Section::before, "", "", {act(cell, 2)});
        step(Section::take_apart, "open", "Open the lid", {undo, act(lid, 0)});
        step(Section::take_apart, "cell-out", "Take the cell out", {act(cell, 0)});
        Action replace;
        replace.sort = ActionSort::replace;
        replace.verb = "replace";
        replace.targets.push_back({{cell, {}, {}}, 0});
        replace.with = {ResourceId{1}};
        step(Section::work, "renew", "Take the new cell", {replace});
        step(Section::put_back, "cell-out", "Take the cell out", {act(cell, 1)}).derived = true;
        Action fasten = act(screws, 1);
        fasten.with = {ResourceId{0}};
        step(Section::put_back, "open", "Close up", {act(lid, 1), fasten});
    }

    void resource(ResourceSort sort, const char* name, const char* text) {
        Resource made;
        made.sort = sort;
        made.name = name;
        made.text = text;
        procedure.resources.push_back(std::move(made));
    }

private:
    ItemId add_item(const char* name, const char* title, std::uint32_t kind,
                    std::uint16_t count = 1) {
        Item item;
        item.name = name;
        item.title = title;
        item.kind = KindId{kind};
        item.role = model.kinds[kind].role;
        item.count = count;
        item.first_slot = model.slot_count;
        item.first_member = model.member_count;
        model.slot_count += count * static_cast<std::uint32_t>(model.kinds[kind].set_count());
        model.member_count += count;
        model.items.edit().push_back(item);
        return ItemId{static_cast<std::uint32_t>(model.items.size() - 1)};
    }

    void add_kind(const char* title, Role role, std::vector<std::string> states,
                  std::vector<Verb> verbs) {
        Kind kind;
        kind.name = title;
        kind.title = title;
        kind.role = role;
        kind.set_of.assign(states.size(), 0);
        kind.set_first = {0};
        kind.present = (StateSet{1} << (states.size() - 1)) - 1;
        kind.binds = is_tie(role) ? kind.present : 0;
        kind.covers = 1;
        kind.states = std::move(states);
        kind.verbs = std::move(verbs);
        model.kinds.edit().push_back(std::move(kind));
    }

    void add_kinds() {
        model.hazards.edit().push_back({"fire", "Lithium cell", {}, {}, {}, {}, {}, {}});
        model.hazards.edit(0).messages.push_back(prose(ProseKind::danger, "A bent cell burns."));
        add_kind("shell", Role::part, {"in", "out"}, {});
        add_kind("cover", Role::part, {"shut", "open", "off"},
                 {verb("open", 1, 1, 10), verb("close", 2, 0, 10)});
        add_kind("pouch cell", Role::part, {"in", "out"},
                 {verb("remove", 1, 1, 4), verb("fit", 2, 0, 6), verb("discharge", 4, 3)});
        Kind& cell_kind = model.kinds.edit().back();
        cell_kind.states = {"in", "out", "charged", "low"};
        cell_kind.set_of = {0, 0, 1, 1};
        cell_kind.set_first = {0, 2};
        cell_kind.verbs[2].limit = Limit{{}, make_quantity(25, "%"), true};
        cell_kind.hazards.push_back({HazardId{0}, in_set(3), false, {}});
        cell_kind.waste = "old-cells";
        add_kind("screw", Role::fastener, {"tight", "out"},
                 {verb("undo", 1, 1, 8), verb("fasten", 2, 0, 8)});
        add_kind("ribbon", Role::connector, {"connected", "apart"}, {});
    }
};

} // namespace matchmark::support
