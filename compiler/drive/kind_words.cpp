// What a fitter wants to know of a kind: how it stands, what is done to it, with what, and what to
// beware of.
#include "drive/kind_words.hpp"

#include <fmt/format.h>

namespace matchmark::drive {

namespace {

std::string joined(const std::vector<std::string>& words, std::string_view with) {
    std::string text;
    for (const std::string& word : words) {
        text += text.empty() ? std::string(word) : std::string(with) + word;
    }
    return text;
}

void row(std::string& text, std::string_view name, const std::string& value) {
    if (!value.empty()) {
        text += fmt::format("  {:<11}{}\n", name, value);
    }
}

std::string_view signal(model::ProseKind kind) {
    switch (kind) {
    case model::ProseKind::text:
        return "text";
    case model::ProseKind::note:
        return "note";
    case model::ProseKind::why:
        return "why";
    case model::ProseKind::notice:
        return "notice";
    case model::ProseKind::caution:
        return "caution";
    case model::ProseKind::warning:
        return "warning";
    case model::ProseKind::danger:
        return "danger";
    }
    return "text";
}

void append_messages(std::string& text, const std::vector<model::Prose>& messages) {
    for (const model::Prose& message : messages) {
        std::string words;
        for (const char letter : message.markdown) {
            words += letter;
            if (letter == '\n') {
                words += std::string(13, ' ');
            }
        }
        while (words.ends_with(' ') || words.ends_with('\n')) {
            words.pop_back();
        }
        row(text, signal(message.kind), words);
    }
}

std::string states_of_set(const model::Kind& kind, std::size_t set) {
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
    return line;
}

void append_hazards(std::string& text, const model::Model& model, const model::Kind& kind) {
    for (const model::HazardUse& use : kind.hazards) {
        const model::Hazard& hazard = model.hazards[use.hazard.value];
        row(text, "hazard",
            fmt::format("{} until {}, met on {}", hazard.name,
                        joined(state_names(kind, use.safe), ", "),
                        use.on_reach ? "reach" : "touch"));
        append_messages(text, hazard.messages);
    }
}

void append_rules(std::string& text, const model::Kind& kind) {
    const bool is_part = kind.role == model::Role::part;
    const bool is_energy = kind.role == model::Role::energy;
    row(text, "binds in",
        model::is_tie(kind.role) ? joined(state_names(kind, kind.binds), ", ") : "");
    row(text, "covers in", is_part ? joined(state_names(kind, kind.covers), ", ") : "");
    row(text, "blocks in", is_part ? joined(state_names(kind, kind.blocks), ", ") : "");
    row(text, "live in", is_part || is_energy ? joined(state_names(kind, kind.live), ", ") : "");
    row(text, "may end in", joined(state_names(kind, kind.may_end), ", "));
    for (const model::OwnNeed& need : kind.needs) {
        row(text, "needs",
            fmt::format("{} to {}", joined(state_names(kind, need.states), " or "), need.verb));
    }
    row(text, "one use",
        kind.one_use ? "once parted it is renewed from the spare or supply list" : "");
    row(text, "torque", kind.asks_torque ? "must be stated" : "");
    row(text, "waste", kind.waste);
    row(text, "licensed", kind.needs_license ? kind.licensed : "");
}

} // namespace

std::string_view role_word(model::Role role) {
    switch (role) {
    case model::Role::part:
        return "part";
    case model::Role::fastener:
        return "fastener";
    case model::Role::connector:
        return "connector";
    case model::Role::bond:
        return "bond";
    case model::Role::fluid:
        return "fluid";
    case model::Role::energy:
        return "energy";
    }
    return "part";
}

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

std::string describe_kind(const model::Model& model, const model::Kind& kind) {
    std::string text =
        fmt::format("{} \"{}\" is {}\n", kind.name, kind.title, role_word(kind.role));
    row(text, "states", states_of_set(kind, 0) + " (assembled first)");
    for (std::size_t set = 1; set < kind.set_count(); ++set) {
        row(text, "also", states_of_set(kind, set));
    }
    for (const model::Verb& verb : kind.verbs) {
        row(text, fmt::format("{:<10}", verb.name), verb_line(kind, verb));
    }
    append_rules(text, kind);
    append_hazards(text, model, kind);
    append_messages(text, kind.messages);
    return text;
}

std::string describe_drive(const model::Drive& drive) {
    std::string text = fmt::format("drive {} \"{}\"\n", drive.name, drive.title);
    row(text, "driven by", joined(drive.driven_by, " or "));
    return text;
}

std::string describe_thread(const model::Thread& thread) {
    std::string text = fmt::format("thread {}\n", thread.name);
    row(text, "pitch", thread.pitch ? model::to_text(*thread.pitch) : "");
    row(text, "breaks at", thread.breaks_at ? model::to_text(*thread.breaks_at) : "");
    return text;
}

std::string describe_hazard(const model::Model& model, const model::Hazard& hazard) {
    std::string text = fmt::format("hazard {} \"{}\"\n", hazard.name, hazard.title);
    append_messages(text, hazard.messages);
    std::vector<std::string> kinds;
    for (const model::Kind& kind : model.kinds) {
        for (const model::HazardUse& use : kind.hazards) {
            if (&model.hazards[use.hazard.value] == &hazard) {
                kinds.push_back(kind.name);
            }
        }
    }
    row(text, "of kinds", joined(kinds, ", "));
    return text;
}

} // namespace matchmark::drive
