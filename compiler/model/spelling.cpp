// Writes actions as the author would have written them.
#include "model/spelling.hpp"

#include <fmt/core.h>
#include <utf8proc.h>

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

enum class Letter { none, first, later }; // later: what a name may have and not begin with

// Of the code points that the grammar takes into names, those that Unicode calls letters, accents
// and digits, and no letter that is a sign ("ℓ", "ᵗʰ" behind a number).
Letter letter_of(utf8proc_int32_t code) {
    if (code < 0x80) {
        const bool digit = code >= '0' && code <= '9';
        const bool alpha = (code >= 'a' && code <= 'z') || (code >= 'A' && code <= 'Z');
        return alpha ? Letter::first : digit ? Letter::later : Letter::none;
    }
    if ((code >= 0x2000 && code <= 0x2E7F) || (code >= 0xFE00 && code <= 0xFF20) || code >= 0xE0000)
        return Letter::none;
    switch (utf8proc_category(code)) {
    case UTF8PROC_CATEGORY_LU:
    case UTF8PROC_CATEGORY_LL:
    case UTF8PROC_CATEGORY_LT:
    case UTF8PROC_CATEGORY_LO:
        return Letter::first;
    case UTF8PROC_CATEGORY_LM:
    case UTF8PROC_CATEGORY_MN:
    case UTF8PROC_CATEGORY_MC:
    case UTF8PROC_CATEGORY_ND:
        return Letter::later;
    default:
        return Letter::none;
    }
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
    if (!action.across.empty()) {
        separator = " across ";
        for (const ItemId id : action.across) {
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

std::string capitalised(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

std::string name_from(std::string_view words, std::string_view before) {
    std::string name;
    bool starts_well = false;
    while (!words.empty()) {
        utf8proc_int32_t code = -1;
        const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(words.data());
        const auto read =
            utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(words.size()), &code);
        const std::size_t length = read > 0 ? static_cast<std::size_t>(read) : 1;
        const Letter letter = read > 0 ? letter_of(code) : Letter::none;
        if (letter == Letter::none) {
            if (!name.empty() && !name.ends_with('-'))
                name += '-';
        } else {
            starts_well = starts_well || (name.empty() && letter == Letter::first);
            const bool upper = code >= 'A' && code <= 'Z';
            name += upper ? std::string(1, static_cast<char>(code - 'A' + 'a'))
                          : std::string(words.substr(0, length));
        }
        words.remove_prefix(length);
    }
    if (name.ends_with('-'))
        name.pop_back();
    return name.empty() || starts_well ? name : std::string(before) + "-" + name;
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
