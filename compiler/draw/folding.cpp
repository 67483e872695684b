// Which items stand in one box: members of a group, and what a part carries.
#include "draw/folding.hpp"

#include "language/words.hpp"

#include <algorithm>

namespace matchmark::draw {

using language::fill_text;
using language::own;
using language::said;
using language::text;
using model::Item;
using model::Role;

namespace {

bool is_part(const Model& model, ItemId id) { return model.item(id).role == Role::part; }

bool has_relations(const Item& item) {
    return !item.ties.empty() || !item.reach.empty() || !item.blocked_by.empty() ||
           !item.needs.empty();
}

} // namespace

Folding fold(const Model& model, const std::vector<ItemId>& shown) {
    Folding folding;
    folding.box_of.assign(model.items.size(), Folding::no_box);
    const auto parts = std::count_if(model.items.begin(), model.items.end(),
                                     [](const Item& item) { return item.role == Role::part; });
    const auto stands_alone = [&](ItemId id) {
        const Item& item = model.item(id);
        const bool carried = item.carrier.known() && is_part(model, item.carrier);
        const bool asked = std::find(shown.begin(), shown.end(), id) != shown.end();
        const bool few = static_cast<std::size_t>(parts) <= many_parts;
        return !carried || asked || (few && has_relations(item));
    };
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (is_part(model, ItemId{i}) && stands_alone(ItemId{i})) {
            open_box(folding, ItemId{i});
        }
    }
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (!is_part(model, ItemId{i}) || folding.box_of[i] != Folding::no_box) {
            continue;
        }
        ItemId outer = model.items[i].carrier;
        while (folding.box_of[outer.value] == Folding::no_box) {
            outer = model.item(outer).carrier;
        }
        const std::size_t box = folding.box_of[outer.value];
        // Found by walking outwards, so nothing is asked twice of those that lie deeper.
        folding.inside[box].push_back(ItemId{i});
    }
    for (std::size_t box = 0; box < folding.inside.size(); ++box) {
        for (const ItemId id : folding.inside[box]) {
            folding.box_of[id.value] = box;
        }
    }
    return folding;
}

std::size_t open_box(Folding& folding, ItemId item) {
    std::size_t& box = folding.box_of[item.value];
    if (box == Folding::no_box) {
        box = folding.inside.size();
        folding.inside.push_back({item});
    }
    return box;
}

std::vector<std::size_t> boxes_held(const Model& model, const Folding& folding, ItemId tie) {
    const Item& item = model.item(tie);
    std::vector<ItemId> held = item.touches;
    if (item.role != Role::connector && held.size() > 1) {
        held.pop_back();
    }
    std::vector<std::size_t> boxes;
    for (const ItemId part : held) {
        const std::size_t box = folding.box_of[part.value];
        if (box != Folding::no_box && std::find(boxes.begin(), boxes.end(), box) == boxes.end()) {
            boxes.push_back(box);
        }
    }
    return boxes;
}

std::string device_title(const Language& in, const Model& model) {
    const model::Device& device = model.device;
    return own(in, "device " + device.name, device.title.empty() ? device.name : device.title);
}

std::string item_title(const Language& in, const Model& model, ItemId item) {
    return language::capital(in, said(in, model, item, false));
}

std::string tie_line(const Language& in, const Model& model, ItemId tie) {
    const Item& item = model.item(tie);
    std::string line = said(in, model, tie, false);
    if (!item.spec.empty() && item.role == Role::fastener) {
        line += ", " + language::description_words(in, item.spec.front()->text);
    }
    return line;
}

Box part_box(const Language& in, const Model& model, const Folding& folding, std::size_t box) {
    const std::vector<ItemId>& items = folding.inside[box];
    Box made;
    made.title = item_title(in, model, items.front());
    const Role role = model.item(items.front()).role;
    if (model::is_tie(role)) {
        made.title = language::capital(in, tie_line(in, model, items.front()));
        made.form = BoxForm::tie;
    } else {
        made.form = role == Role::energy ? BoxForm::source : BoxForm::part;
    }
    if (items.size() > 1 && items.size() <= 4) {
        std::vector<std::string> names;
        for (std::size_t i = 1; i < items.size(); ++i) {
            names.push_back(said(in, model, items[i], false));
        }
        made.lines.push_back(
            fill_text(text(in, "with {parts}"), {{"parts", language::said_list(in, names)}}));
    } else if (items.size() > 4) {
        made.lines.push_back(fill_text(text(in, "with {count} parts inside"),
                                       {{"count", std::to_string(items.size() - 1)}}));
    }
    return made;
}

std::vector<std::string> shortened(const Language& in, std::vector<std::string> lines,
                                   std::size_t most) {
    if (lines.size() > most) {
        const std::size_t left = lines.size() - (most - 1);
        lines.resize(most - 1);
        lines.push_back(fill_text(text(in, "and {count} more"), {{"count", std::to_string(left)}}));
    }
    return lines;
}

} // namespace matchmark::draw
