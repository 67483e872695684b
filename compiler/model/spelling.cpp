// Writes actions as the author would have written them.
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::model {

namespace {

std::string members_text(const std::vector<std::uint16_t>& members) {
    std::string text;
    for (const auto member : members) {
        text += text.empty() ? fmt::format(" {}", member) : fmt::format(", {}", member);
    }
    return text;
}

std::string tightening_text(const Tightening& tightening) {
    std::string text;
    if (tightening.torque)
        text += " to " + to_text(*tightening.torque);
    if (!tightening.pattern.empty())
        text += " in " + tightening.pattern;
    if (tightening.passes > 1)
        text += fmt::format(", {} passes", tightening.passes);
    return text;
}

std::string resource_names(const std::vector<Resource>& resources,
                           const std::vector<ResourceId>& ids) {
    std::string text;
    for (const ResourceId id : ids) {
        if (!text.empty())
            text += ", ";
        text += resources[id.value].name;
    }
    return text;
}

} // namespace

std::string as_source(const Model& model, const ItemRef& ref) {
    return model.item(ref.item).name + members_text(ref.members);
}

std::string as_source(const Model& model, const std::vector<Resource>& resources,
                      const Action& action) {
    std::string text = action.verb;
    const char* separator = " ";
    for (const Target& target : action.targets) {
        text += separator + as_source(model, target.ref);
        separator = ", ";
    }
    if (action.amount)
        text += " " + to_text(*action.amount);
    if (action.sort == ActionSort::do_guide)
        text += " " + model.guide(action.guide).name;
    if (action.sort == ActionSort::measure) {
        if (!action.aspect->empty())
            text += " " + *action.aspect;
        if (action.limit)
            text += " " + to_text(*action.limit);
    }
    if (!action.across->empty()) {
        separator = " across ";
        for (const ItemId id : *action.across) {
            text += separator + model.item(id).name;
            separator = ", ";
        }
    }
    if (!action.with.empty())
        text += " with " + resource_names(resources, action.with);
    text += tightening_text(*action.tightening);
    if (!action.means->empty())
        text += " through " + *action.means;
    if (action.duration)
        text += " for " + to_text(*action.duration);
    if (action.limit && action.sort != ActionSort::measure)
        text += " " + to_text(*action.limit);
    if (action.as_marked)
        text += " as marked";
    if (action.sort == ActionSort::dispose)
        text += " as " + *action.aspect;
    if (!action.otherwise->text.empty())
        text += ", else " + action.otherwise->text;
    return text;
}

std::string spaced(std::string name) {
    std::replace(name.begin(), name.end(), '-', ' ');
    return name;
}

std::string in_quotes(std::string_view text) {
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            quoted += '\\';
        quoted += c;
    }
    return quoted + "\"";
}

} // namespace matchmark::model
