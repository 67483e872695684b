// What a fitter wants to know of a kind: how it stands, what is done to it, with what, and what to
// beware of.
#include "drive/kinds/words.hpp"

#include "language/texts.hpp"
#include "model/role_words.hpp"

#include <fmt/core.h>

namespace matchmark::drive {

std::string joined(const std::vector<std::string>& words, std::string_view with) {
    std::string text;
    for (const std::string& word : words) {
        text += text.empty() ? std::string(word) : std::string(with) + word;
    }
    return text;
}

void row(Page& page, std::string_view name, const std::string& value) {
    if (!value.empty())
        page.rows.push_back({std::string(name), value});
}

std::string to_text(const Page& page) {
    std::string text = page.head + "\n";
    for (const Row& row : page.rows) {
        text += fmt::format("  {:<10} ", row.name);
        for (const char c : row.value) {
            text += c;
            text += c == '\n' ? std::string(13, ' ') : "";
        }
        text += '\n';
    }
    return text;
}

void append_messages(Page& page, const std::vector<model::Prose>& messages) {
    for (const model::Prose& message : messages) {
        std::string words = message.markdown;
        while (words.ends_with(' ') || words.ends_with('\n'))
            words.pop_back();
        row(page, language::prose_word(message.kind), words);
    }
}

namespace {

std::string names_of_set(const model::Kind& kind, std::size_t set) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (kind.set_of[i] == set) {
            names.push_back(kind.states[i]);
        }
    }
    return joined(names, ", ");
}

std::string verb_line(const model::Kind& kind, const model::Verb& verb) {
    std::string line =
        fmt::format("{} -> {}", joined(state_names(kind, verb.from), ", "), kind.states[verb.to]);
    const std::string tools = tool_words(verb);
    line += tools.empty() ? "" : " " + tools;
    line += verb.limit ? " " + model::to_text(*verb.limit) : "";
    line += verb.safe_when_live ? ", safe when live" : "";
    line += verb.from_outside ? ", from outside" : "";
    line += verb.takes ? ", takes " + model::to_text(*verb.takes) : "";
    line += verb.waits ? ", waits " + model::to_text(*verb.waits) : "";
    line += verb.decays ? ", as long as the charge takes to fall" : "";
    return line;
}

void append_hazards(Page& page, const model::Model& model, const model::Kind& kind) {
    for (const model::HazardUse& use : kind.hazards) {
        const model::Hazard& hazard = model.hazards[use.hazard.value];
        row(page, "hazard",
            fmt::format("{} until {}, met on {}", hazard.name,
                        joined(state_names(kind, use.safe), ", "),
                        use.on_reach ? "reach" : "touch"));
        append_messages(page, hazard.messages);
    }
}

void append_rules(Page& page, const model::Kind& kind) {
    const bool is_part = kind.role == model::Role::part;
    const bool is_energy = kind.role == model::Role::energy;
    row(page, "binds in",
        model::is_tie(kind.role) ? joined(state_names(kind, kind.binds), ", ") : "");
    row(page, "covers in", is_part ? joined(state_names(kind, kind.covers), ", ") : "");
    row(page, "blocks in", is_part ? joined(state_names(kind, kind.blocks), ", ") : "");
    row(page, "live in", is_part || is_energy ? joined(state_names(kind, kind.live), ", ") : "");
    row(page, "may end in", joined(state_names(kind, kind.may_end), ", "));
    row(page, "clamped",
        kind.clamped ? "not parted or joined while a fastener of the same parts binds" : "");
    row(page, "lies loose",
        kind.lies_loose ? "it may be taken off when what it lies between is apart" : "");
    row(page, "parted last",
        kind.parted_last ? "and joined first, of the connectors of a part" : "");
    row(page, "lets out", kind.lets_out ? "parted, it lets out what runs out" : "");
    row(page, "bare", kind.bare ? "its live ends can be touched while it is made" : "");
    row(page, "runs out",
        kind.runs_out ? "emptied before a joint of its vessel is parted; a supply is shut before "
                        "what it fills is emptied"
                      : "");
    row(page, "rests on pressure",
        kind.rests_on_pressure ? "set down before the pressure under it is let off" : "");
    row(page, "guards", kind.guards ? "what it covers moves under the power of its function" : "");
    row(page, "protects", kind.protects ? "without it a fault does harm: it is not left off" : "");
    row(page, "moves", kind.moves ? "under the power of its function" : "");
    row(page, "passes on", kind.passes_on ? "what feeds it feeds what it feeds" : "");
    for (const model::OwnNeed& need : kind.needs) {
        row(page, "needs",
            fmt::format("{} to {}", joined(state_names(kind, need.states), " or "), need.verb));
    }
    row(page, "one use",
        kind.one_use ? "once parted it is renewed from the spare or supply list" : "");
    row(page, "used again", kind.used_again_if.empty() ? "" : "if " + kind.used_again_if);
    row(page, "good for", kind.good_for > 0 ? fmt::format("{} times", kind.good_for) : "");
    row(page, "torque", kind.asks_torque ? "must be stated" : "");
    row(page, "test", kind.asks_test ? "must be tested once it is made again" : "");
    row(page, "waste", kind.waste);
    row(page, "licensed", kind.needs_license ? kind.licensed : "");
}

} // namespace

std::vector<std::string> state_names(const model::Kind& kind, model::StateSet set) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (model::contains(set, static_cast<model::StateId>(i))) {
            names.push_back(kind.states[i]);
        }
    }
    return names;
}

std::string tool_words(const model::Verb& verb) {
    std::vector<std::string> tools;
    const bool asks = !verb.tools.empty() || verb.by_driver;
    if (verb.by_hand) {
        tools.emplace_back("hand");
    }
    if (verb.by_driver) {
        tools.emplace_back("driver");
    }
    for (const std::string& tool : verb.tools) {
        if (tool != "hand" && tool != "driver") {
            tools.push_back(tool);
        }
    }
    return !asks && !verb.by_hand ? "" : "by " + joined(tools, " or ");
}

Page describe_kind(const model::Model& model, const model::Kind& kind) {
    Page page{fmt::format("{} \"{}\" is {}", kind.name, kind.title, model::role_word(kind.role)),
              {}};
    row(page, "states", names_of_set(kind, 0) + " (assembled first)");
    for (std::size_t set = 1; set < kind.set_count(); ++set) {
        row(page, "also", names_of_set(kind, set));
    }
    for (const model::Verb& verb : kind.verbs) {
        row(page, verb.name, verb_line(kind, verb));
    }
    append_rules(page, kind);
    append_hazards(page, model, kind);
    append_messages(page, kind.messages);
    return page;
}

} // namespace matchmark::drive
