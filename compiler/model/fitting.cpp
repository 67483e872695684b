// Which tool fits which screw, and which supply renews which seal: by the words of their
// descriptions.
#include "model/fitting.hpp"

#include "model/describe.hpp"

#include <algorithm>
#include <cstdlib>

namespace matchmark::model {

namespace {

std::string description_of(const Resource& resource) { return resource.name + " " + resource.text; }

// What the page prints is what fits; the name stands for a text that is missing.
const std::string& printed(const Resource& tool) {
    return tool.text.empty() ? tool.name : tool.text;
}

const Drive* find_drive(const Model& model, std::string_view name) {
    for (const Drive& drive : model.drives) {
        if (drive.name == name)
            return &drive;
    }
    return nullptr;
}

bool is_driven_by(const Drive& drive, const std::string& tool) {
    return std::find(drive.driven_by.begin(), drive.driven_by.end(), tool) != drive.driven_by.end();
}

bool fits_drive(const Model& model, std::string_view description, const Item& item) {
    const Drive* drive = find_drive(model, item.bolt->drive);
    if (drive == nullptr)
        return true; // nothing is known of the drive, so nothing can be said against
    const bool right_size =
        item.bolt->drive_size.empty() || has_words(description, item.bolt->drive_size);
    const bool right_shape =
        std::any_of(drive->driven_by.begin(), drive->driven_by.end(),
                    [&](const std::string& tool) { return has_words(description, tool); });
    return right_size && right_shape;
}

// The line of the drive by which the tool makes do; null when there is none.
const StandIn* stands_in(const Drive& drive, std::string_view description, const Item& item) {
    const auto found =
        std::find_if(drive.stand_ins.begin(), drive.stand_ins.end(), [&](const StandIn& one) {
            return one.size == item.bolt->drive_size &&
                   (one.tool_size.empty() || has_words(description, one.tool_size)) &&
                   has_words(description, one.tool);
        });
    return found == drive.stand_ins.end() ? nullptr : &*found;
}

bool names_a_driver(const Model& model, std::string_view description) {
    return std::any_of(model.drives.begin(), model.drives.end(), [&](const Drive& drive) {
        return std::any_of(drive.driven_by.begin(), drive.driven_by.end(),
                           [&](const std::string& tool) { return has_words(description, tool); });
    });
}

// What the page prints is what the reader takes: `tool pick "slotted driver 3"` is a driver.
std::string named_as(const Model& model, const Resource& tool) {
    return names_a_driver(model, tool.text) ? tool.text : description_of(tool);
}

// By the name that verbs use, or as the library calls it: "multimeter 600 V" is a meter.
bool is_called(const Model& model, std::string_view description, const std::string& name) {
    return has_words(description, name) ||
           std::any_of(model.tool_kinds.begin(), model.tool_kinds.end(), [&](const ToolKind& kind) {
               return kind.name == name && has_words(description, kind.title);
           });
}

// A verb that names the spanner still asks for the size of the item's head.
bool fits_named(const Model& model, std::string_view description, const Item& item,
                const std::string& name) {
    if (!is_called(model, description, name))
        return false;
    const Drive* drive = find_drive(model, item.bolt->drive);
    return drive == nullptr || !is_driven_by(*drive, name) ||
           fits_drive(model, description, item) || stands_in(*drive, description, item) != nullptr;
}

} // namespace

bool tool_fits(const Model& model, const Resource& tool, const Item& item, const Verb& verb) {
    if (tool.sort != ResourceSort::tool)
        return false;
    const std::string description = named_as(model, tool);
    if (verb.by_driver && fits_drive(model, printed(tool), item))
        return true;
    if (verb.tools.empty())
        return !verb.by_driver;
    return std::any_of(verb.tools.begin(), verb.tools.end(), [&](const std::string& name) {
        return fits_named(model, description, item, name);
    });
}

const StandIn* stand_in(const Model& model, const Resource& tool, const Item& item,
                        const Verb& verb) {
    const Drive* drive = verb.by_driver ? find_drive(model, item.bolt->drive) : nullptr;
    if (drive == nullptr || tool.sort != ResourceSort::tool)
        return nullptr;
    return stands_in(*drive, description_of(tool), item);
}

std::optional<ToolClass> class_of(const Model& model, const Resource& tool) {
    if (tool.tool_class)
        return tool.tool_class;
    const std::string description = description_of(tool);
    const ToolKind* best = nullptr;
    for (const ToolKind& kind : model.tool_kinds) {
        const bool longer = best == nullptr || kind.name.size() > best->name.size();
        if (longer && has_words(description, kind.name))
            best = &kind;
    }
    return best == nullptr ? std::nullopt : best->tool_class;
}

bool reaches(const ToolKind& kind, const Quantity& torque) {
    const auto& range = kind.torques;
    return range && range->least && range->most && torque.base >= range->least->base &&
           torque.base <= range->most->base;
}

namespace {

// The number that ends there, after spaces; the place where it begins in `end`.
std::optional<double> number_before(std::string_view text, std::size_t& end) {
    const auto digit_at = [&](std::size_t at) { return text[at] >= '0' && text[at] <= '9'; };
    while (end > 0 && text[end - 1] == ' ')
        --end;
    std::size_t begin = end;
    while (begin > 0 && (digit_at(begin - 1) || (begin < end && begin > 1 &&
                                                 text[begin - 1] == '.' && digit_at(begin - 2))))
        --begin;
    if (begin == end)
        return std::nullopt;
    // Too long a number is infinite, and nothing is held against it.
    const double number =
        std::strtod(std::string(text.substr(begin, end - begin)).c_str(), nullptr);
    end = begin;
    return number;
}

struct TorqueRange {
    double least = 0; // N.m
    double most = 0;
};

// "torque wrench 8 to 180 N·m": what the description itself says; nothing when it says none.
std::optional<TorqueRange> said_range(std::string_view description) {
    std::size_t at = std::string_view::npos;
    for (const std::string_view unit : {"N·m", "N.m", "Nm"})
        at = std::min(at, description.find(unit));
    if (at == std::string_view::npos)
        return std::nullopt;
    const auto most = number_before(description, at);
    if (!most)
        return std::nullopt;
    std::string_view rest = description.substr(0, at);
    for (const std::string_view joined : {" to ", "..", "-", "–"}) {
        if (!rest.ends_with(joined))
            continue;
        std::size_t end = rest.size() - joined.size();
        if (const auto least = number_before(rest, end))
            return TorqueRange{*least, *most};
    }
    return TorqueRange{*most, *most};
}

} // namespace

bool sets_torque(const Model& model, const Resource& tool, const Quantity& torque) {
    // As far as two torques count as the same (`other-torque`).
    constexpr double tolerance = 0.05;
    const std::string description = description_of(tool);
    const auto range = said_range(description);
    if (range && (torque.base < range->least * (1 - tolerance) ||
                  torque.base > range->most * (1 + tolerance)))
        return false;
    return tool.sort == ResourceSort::tool &&
           std::any_of(model.tool_kinds.begin(), model.tool_kinds.end(), [&](const ToolKind& kind) {
               return reaches(kind, torque) && has_words(description, kind.name);
           });
}

bool measures_dead_circuits(const Model& model, const Resource& tool) {
    return tool.sort == ResourceSort::tool &&
           std::any_of(model.tool_kinds.begin(), model.tool_kinds.end(), [&](const ToolKind& kind) {
               return kind.on_dead_circuits && has_words(description_of(tool), kind.name);
           });
}

const ToolKind* torque_tool_for(const Model& model, const Quantity& torque) {
    const auto kind = std::find_if(model.tool_kinds.begin(), model.tool_kinds.end(),
                                   [&](const ToolKind& known) { return reaches(known, torque); });
    return kind == model.tool_kinds.end() ? nullptr : &*kind;
}

std::string sized_tool(const Model& model, const Item& item, const std::string& tool) {
    const Drive* drive = find_drive(model, item.bolt->drive);
    const bool sized =
        drive != nullptr && !item.bolt->drive_size.empty() && is_driven_by(*drive, tool);
    return sized ? tool + " " + item.bolt->drive_size : tool;
}

bool works_fasteners(const Model& model, const Resource& tool) {
    return names_a_driver(model, description_of(tool)) ||
           std::any_of(model.tool_kinds.begin(), model.tool_kinds.end(), [&](const ToolKind& kind) {
               return kind.torques && has_words(description_of(tool), kind.name);
           });
}

bool asks_tool(const Verb& verb) {
    return !verb.by_hand && (verb.by_driver || !verb.tools.empty());
}

bool serves(const Model& model, const Resource& resource, ItemId item) {
    if (resource.sort == ResourceSort::tool)
        return false;
    const auto& listed = resource.for_items;
    if (!listed.empty())
        return std::find(listed.begin(), listed.end(), item) != listed.end();
    const Item& thing = model.item(item);
    return has_words(resource.text, thing.title) || has_words(resource.text, thing.name) ||
           has_words(resource.text, model.kind_of(item).title);
}

namespace {

// Is it a tool that the library knows, neither a driver nor one that the verb names: a padlock?
bool is_for_something_else(const Model& model, const Resource& tool, const Verb& verb) {
    const std::string description = named_as(model, tool);
    const auto is_named = [&](const std::string& name) { return has_words(description, name); };
    return !names_a_driver(model, description) &&
           std::none_of(verb.tools.begin(), verb.tools.end(), is_named) &&
           std::any_of(model.tool_kinds.begin(), model.tool_kinds.end(),
                       [&](const ToolKind& kind) { return is_named(kind.name); });
}

} // namespace

std::vector<ResourceId> fitting_tools(const Model& model, const std::vector<Resource>& list,
                                      const Item& item, const Verb& verb) {
    std::vector<ResourceId> fitting;
    // Of a drive that is not known any driver may be the one, but no padlock.
    const bool any_driver = verb.by_driver && find_drive(model, item.bolt->drive) == nullptr;
    for (std::uint32_t i = 0; i < list.size(); ++i) {
        const bool may_be = !any_driver || !is_for_something_else(model, list[i], verb);
        if (may_be && tool_fits(model, list[i], item, verb))
            fitting.push_back(ResourceId{i});
    }
    for (std::uint32_t i = 0; i < list.size() && fitting.empty(); ++i) {
        if (stand_in(model, list[i], item, verb) != nullptr)
            fitting.push_back(ResourceId{i});
    }
    return fitting;
}

std::vector<ResourceId> serving(const Model& model, const std::vector<Resource>& list,
                                ItemId item) {
    std::vector<ResourceId> found;
    for (std::uint32_t i = 0; i < list.size(); ++i) {
        if (serves(model, list[i], item))
            found.push_back(ResourceId{i});
    }
    return found;
}

Action written_action(const Model& model, const std::vector<Resource>& list, ItemRef ref,
                      std::uint16_t verb_index, bool renew) {
    const Item& item = model.item(ref.item);
    const Kind& kind = model.kind(item.kind);
    const Verb& verb = kind.verbs[verb_index];
    Action action;
    action.verb = verb.name;
    action.derived = true;
    action.variants = item.variants;
    action.limit = verb.limit;
    const bool tightens = takes_torque(item.role) && contains(kind.binds, verb.to) &&
                          verb.to == kind.set_first.front();
    if (asks_tool(verb)) {
        const auto tools = fitting_tools(model, list, item, verb);
        const auto set = std::find_if(tools.begin(), tools.end(), [&](ResourceId id) {
            return tightens && item.tightening->torque &&
                   sets_torque(model, list[id.value], *item.tightening->torque);
        });
        if (!tools.empty())
            action.with.push_back(set == tools.end() ? tools.front() : *set);
    }
    if (renew) {
        const auto supplies = serving(model, list, ref.item);
        if (!supplies.empty())
            action.with.push_back(supplies.front());
    }
    if (tightens && item.tightening)
        action.tightening = *item.tightening;
    action.as_marked = !item.rare->keep.empty() && comes_to_its_place(kind, verb);
    action.targets.push_back({std::move(ref), verb_index});
    return action;
}

} // namespace matchmark::model
