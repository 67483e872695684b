// Writes the device and its guide in the language.
#include "hazards/scene.hpp"

#include "model/role_words.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::hazards {

namespace {

using model::Kind;
using model::Role;
using model::Verb;

constexpr std::string_view thing = "subject";

// What the kind's verbs ask of the item's description: a drive, a charge.
std::string description(const Kind& kind) {
    const auto any = [&](auto holds) {
        return std::any_of(kind.verbs.begin(), kind.verbs.end(), holds);
    };
    if (any([](const Verb& verb) { return verb.decays; }))
        return " 470 uF 400 V";
    if (any([](const Verb& verb) { return verb.by_driver; }))
        return " M6 x 20, hexagon 5";
    return "";
}

std::string device_text(const Kind& kind, const Way& safe) {
    std::string text = "device rig \"Test rig\"\n"
                       "part frame \"frame\"\n"
                       "part cover \"cover\"\n"
                       "  covers casing\n"
                       "fastener cover-screws \"cover screw\" 2 x screw M4 x 10, hexagon 3\n"
                       "  holds cover to frame\n"
                       "part casing \"casing\" in frame\n";
    const std::string made_of =
        fmt::format("{} {} \"subject\"", model::role_word(kind.role), thing);
    switch (kind.role) {
    case Role::part:
        text += fmt::format("{} in frame kind {}{}\n", made_of, kind.name, description(kind));
        text += fmt::format("  behind cover\n");
        break;
    case Role::energy:
        text +=
            fmt::format("{} kind {}{}\n  feeds casing\n", made_of, kind.name, description(kind));
        break;
    case Role::fluid:
        // Makers write it so: what holds the fluid comes off when it is safe.
        for (const model::HazardUse& use : kind.hazards) {
            for (const model::StateId state : safe.end) {
                if (model::contains(use.safe, state))
                    text += fmt::format("  needs {} {} to remove\n", thing, kind.states[state]);
            }
        }
        text += fmt::format("{} in casing 1 l kind {}\n", made_of, kind.name);
        break;
    case Role::fastener:
    case Role::connector:
    case Role::bond:
        text +=
            fmt::format("{} kind {}{}\n  {} casing to frame\n  behind cover\n", made_of, kind.name,
                        description(kind), kind.role == Role::connector ? "joins" : "holds");
        break;
    }
    if (kind.asks_torque)
        text += "  torque 5 N.m\n";
    return text;
}

// Where a part is off its place, a tie binds no more, a fluid is drained. Energies stay.
bool is_off(const Kind& kind, const Standing& standing) {
    if (model::is_tie(kind.role))
        return !model::contains(kind.binds, standing.front());
    return kind.role == Role::energy || !model::contains(kind.present, standing.front());
}

bool is_all_safe(const Kind& kind, const Standing& standing) {
    return std::all_of(kind.hazards.begin(), kind.hazards.end(),
                       [&](const model::HazardUse& use) { return is_safe(use, standing); });
}

bool is_safety_verb(const Kind& kind, const Verb& verb) {
    return std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const model::HazardUse& use) {
        return leads_to_safety(kind, use, verb);
    });
}

// What is safe until it is worked with (a vehicle before it is jacked up) first gets dangerous.
Way into_danger(const Kind& kind) {
    const Standing start = assembled(kind);
    if (kind.hazards.empty() || !is_all_safe(kind, start))
        return {true, {}, start};
    return shortest_way(
        kind, start, [&](const Verb& verb) { return is_safety_verb(kind, verb); },
        [&](const Standing& standing) { return !is_all_safe(kind, standing); });
}

Way into_safety(const Kind& kind, const Way& danger) {
    const bool was_safe = !danger.strides.empty();
    return shortest_way(
        kind, danger.end,
        [&](const Verb& verb) {
            // Not the way that it came.
            return is_safety_verb(kind, verb) &&
                   !(was_safe && verb.to == danger.strides.back().from &&
                     kind.role == Role::energy);
        },
        [&](const Standing& standing) { return is_all_safe(kind, standing); });
}

// A tool for every stride and for its way back, where the verb asks for one.
std::vector<std::string> tools(const Kind& kind, const std::vector<Stride>& strides) {
    std::vector<std::string> found{"hexagon key 3"};
    const auto add = [&](const Verb* verb) {
        if (verb == nullptr)
            return;
        std::string tool;
        if (verb->by_driver)
            tool = "hexagon key 5";
        else if (!verb->by_hand && !verb->tools.empty())
            tool = verb->tools.front();
        std::replace(tool.begin(), tool.end(), '-', ' ');
        if (!tool.empty() && std::find(found.begin(), found.end(), tool) == found.end())
            found.push_back(tool);
    };
    for (const Stride& stride : strides) {
        add(stride.verb);
        add(model::inverse(kind, *stride.verb, stride.from));
    }
    return found;
}

std::string head_text(const Kind& kind, const std::vector<Stride>& strides) {
    std::string text = "guide service \"Take it apart and put it back\"\n";
    std::size_t number = 0;
    for (const std::string& tool : tools(kind, strides))
        text += fmt::format("  tool tool-{} \"{}\"\n", ++number, tool);
    if (kind.one_use)
        text += fmt::format("  spare {}-new \"new {}\", {} for {}\n", thing, thing,
                            kind.role == Role::fluid ? "1 l" : "1", thing);
    return text;
}

std::string line_of(const Verb& verb) {
    return fmt::format("  {} {}{}\n", verb.name, thing, verb.decays ? " through 10 kohm" : "");
}

} // namespace

Scene scene_of(const Kind& kind) {
    Scene scene;
    const Way danger = into_danger(kind);
    const Way safe = danger.found ? into_safety(kind, danger) : Way{};
    const Way off = shortest_way(
        kind, safe.found ? safe.end : assembled(kind), [](const Verb&) { return true; },
        [&](const Standing& standing) { return is_off(kind, standing); });
    if (!safe.found || !off.found)
        return scene;
    scene.made = true;
    std::vector<Stride> strides = danger.strides;
    for (const Way* way : {&safe, &off})
        strides.insert(strides.end(), way->strides.begin(), way->strides.end());
    for (const Stride& stride : danger.strides)
        scene.into_danger += line_of(*stride.verb);
    const bool inside = kind.role != Role::fluid;
    for (const Stride& stride : safe.strides) {
        if (!scene.opens_before && inside && !stride.verb->from_outside)
            scene.opens_before = scene.way.size();
        scene.way.push_back(stride.verb);
        scene.making_safe.push_back(line_of(*stride.verb));
    }
    scene.device = device_text(kind, safe);
    scene.head = head_text(kind, strides);
    if (kind.needs_license)
        scene.for_reader = fmt::format("  for licensed \"{}\"\n", kind.licensed);
    scene.opening = "step open \"Take the cover off\"\n  undo cover-screws\n  remove cover\n";
    scene.rest = "step out \"Take it out\"\n";
    for (const Stride& stride : off.strides)
        scene.rest += line_of(*stride.verb);
    if (kind.role != Role::part)
        scene.rest += "  remove casing\n";
    if (kind.one_use && !kind.waste.empty())
        scene.rest += fmt::format("  dispose {} as {}\n", thing, kind.waste);
    scene.rest += "put-back\n  derived\n";
    if (kind.asks_test)
        scene.rest += fmt::format("test holds \"It holds\"\n  proves {}\n", thing);
    return scene;
}

std::string text_of(const Scene& scene, std::optional<std::size_t> omitted) {
    const std::size_t opens_before = scene.opens_before.value_or(scene.making_safe.size());
    std::string outside;
    std::string inside;
    (opens_before == 0 ? inside : outside) += scene.into_danger;
    for (std::size_t i = 0; i < scene.making_safe.size(); ++i) {
        if (i != omitted)
            (i < opens_before ? outside : inside) += scene.making_safe[i];
    }
    std::string text = scene.device + scene.head + scene.for_reader + "take-apart\n";
    if (!outside.empty())
        text += "step safe \"Make it safe\"\n" + outside;
    text += scene.opening;
    if (!inside.empty())
        text += "step inside \"Make it safe inside\"\n" + inside;
    return text + scene.rest;
}

std::string text_for_anyone(const Scene& scene) {
    Scene other = scene;
    other.for_reader = "  for competent\n";
    return text_of(other);
}

} // namespace matchmark::hazards
