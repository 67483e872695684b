// What a fitter looks up beside kinds: the driver's size, the thread's torque, the sign's number.
#include "drive/trade_words.hpp"

#include "drive/figures.hpp"
#include "drive/kinds/words.hpp"
#include "model/bolting.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::drive {

namespace {

template <class T> const T* usual_of(const model::SharedList<T>& entries) {
    const auto found =
        std::find_if(entries.begin(), entries.end(), [](const T& entry) { return entry.usual; });
    return found == entries.end() ? nullptr : &*found;
}

std::string shown(const std::optional<model::Quantity>& quantity) {
    return quantity ? model::for_reader(*quantity) : "";
}

std::optional<model::Quantity> figure(std::optional<double> value,
                                      std::initializer_list<std::string_view> units) {
    if (!value)
        return std::nullopt;
    return shown_in(*value, units);
}

// The title of the declared thing of this name, or the name.
template <class T>
std::string title_of(const model::SharedList<T>& entries, const std::string& name) {
    for (const T& entry : entries) {
        if (entry.name == name && !entry.title.empty())
            return entry.title;
    }
    return name;
}

std::string sign_words(const model::Model& model, const std::string& name) {
    for (const model::Sign& sign : model.signs) {
        if (sign.name == name)
            return sign.number.empty() ? sign.title : sign.number + " " + sign.title;
    }
    return name;
}

std::string strength_words(const model::Strength& strength) {
    std::string text = shown(strength.usual);
    if (strength.large && strength.above)
        text += fmt::format("; {} above {}", shown(strength.large), shown(strength.above));
    return text;
}

// "hexagon 1.5": the drives and sizes that screws of the thread usually have.
std::vector<std::string> drives_for(const model::Model& model, const model::Thread& thread) {
    std::vector<std::string> drives;
    for (const model::Drive& drive : model.drives) {
        for (const model::DriveSize& size : drive.sizes) {
            if (std::find(size.threads.begin(), size.threads.end(), thread.name) ==
                size.threads.end())
                continue;
            drives.push_back(drive.name + " " + size.size +
                             (size.note.empty() ? "" : " (" + size.note + ")"));
        }
    }
    return drives;
}

Page headed(std::string_view what, const std::string& name, const std::string& title) {
    std::string head = fmt::format("{} {}", what, name);
    if (!title.empty() && title != name)
        head += fmt::format(" \"{}\"", title);
    return {head, {}};
}

} // namespace

ThreadFigures thread_figures(const model::Model& model, const model::Thread& thread) {
    ThreadFigures figures;
    figures.grade = usual_of(model.grades);
    figures.friction = usual_of(model.frictions);
    figures.stress_area = figure(model::stress_area(thread), {"mm2"});
    if (figures.grade == nullptr) {
        figures.breaking_torque = thread.breaks_at;
        return figures;
    }
    const model::Grade& grade = *figures.grade;
    figures.breaking_force = figure(model::breaking_force(thread, grade), {"N", "kN"});
    figures.breaking_torque = figure(model::breaking_torque(thread, grade), {"N.m"});
    if (figures.friction != nullptr) {
        const double friction = figures.friction->coefficient;
        figures.usual_preload = figure(model::usual_preload(thread, grade, friction), {"N", "kN"});
        figures.usual_torque = figure(model::usual_torque(thread, grade, friction), {"N.m"});
    }
    return figures;
}

std::string_view form_word(model::SignForm form) {
    switch (form) {
    case model::SignForm::warns:
        return "warns";
    case model::SignForm::obliges:
        return "obliges";
    case model::SignForm::forbids:
        return "forbids";
    }
    return "warns";
}

std::vector<std::string> kinds_with(const model::Model& model, const model::Hazard& hazard) {
    std::vector<std::string> kinds;
    for (const model::Kind& kind : model.kinds) {
        const bool has =
            std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const auto& use) {
                return model.hazards[use.hazard.value].name == hazard.name;
            });
        if (has)
            kinds.push_back(kind.name);
    }
    return kinds;
}

std::string size_words(const model::DriveSize& size) {
    std::string words = size.size;
    words += size.across ? ", " + shown(size.across) + " across" : "";
    words += size.threads.empty() ? "" : ", for " + model::list(size.threads);
    words += size.note.empty() ? "" : " (" + size.note + ")";
    return words;
}

std::string in_brief(const model::Model& /*model*/, const model::Drive& drive) {
    return drive.title;
}

std::string in_brief(const model::Model& /*model*/, const model::ThreadForm& form) {
    return form.title;
}

std::string in_brief(const model::Model& model, const model::Thread& thread) {
    std::string text = thread.pitch ? "pitch " + shown(thread.pitch) : thread.title;
    const ThreadFigures figures = thread_figures(model, thread);
    text += figures.usual_torque ? ", usually " + shown(figures.usual_torque) : "";
    return text;
}

std::string in_brief(const model::Model& /*model*/, const model::Grade& grade) {
    return grade.title + (grade.usual ? " (usual)" : "");
}

std::string in_brief(const model::Model& /*model*/, const model::Friction& friction) {
    return fmt::format("{}, {}{}", friction.title, model::number_text(friction.coefficient),
                       friction.usual ? " (usual)" : "");
}

std::string in_brief(const model::Model& /*model*/, const model::Timing& timing) {
    return timing.title + (timing.usual ? " (usual)" : "");
}

std::string in_brief(const model::Model& /*model*/, const model::ToolKind& tool) {
    return tool.title +
           (tool.tool_class ? fmt::format(", {}", model::describe(*tool.tool_class)) : "");
}

std::string in_brief(const model::Model& /*model*/, const model::Gear& gear) { return gear.title; }

std::string in_brief(const model::Model& /*model*/, const model::Sign& sign) {
    return sign.number.empty() ? sign.title : sign.number + " " + sign.title;
}

std::string in_brief(const model::Model& /*model*/, const model::Hazard& hazard) {
    return hazard.title;
}

Page describe(const model::Model& /*model*/, const model::Drive& drive) {
    Page page = headed("drive", drive.name, drive.title);
    row(page, "driven by", joined(drive.driven_by, " or "));
    for (const model::DriveSize& size : drive.sizes)
        row(page, "size", size_words(size));
    for (const model::StandIn& stand_in : drive.stand_ins) {
        const std::string with =
            stand_in.tool_size.empty() ? stand_in.tool : stand_in.tool + " " + stand_in.tool_size;
        row(page, "at a pinch", fmt::format("{} for {}", with, stand_in.size));
    }
    return page;
}

Page describe(const model::Model& model, const model::ThreadForm& form) {
    Page page = headed("form", form.name, form.title);
    row(page, "pitch line", model::number_text(form.pitch_line) + " pitches below the diameter");
    row(page, "root", model::number_text(form.root) + " pitches below the diameter");
    std::vector<std::string> threads;
    for (const model::Thread& thread : model.threads) {
        if (thread.form && thread.form->name == form.name)
            threads.push_back(thread.name);
    }
    row(page, "threads", joined(threads, ", "));
    return page;
}

Page describe(const model::Model& model, const model::Thread& thread) {
    Page page = headed("thread", thread.name, thread.title);
    row(page, "form", thread.form ? thread.form->title : "");
    row(page, "diameter", shown(thread.diameter));
    row(page, "pitch", shown(thread.pitch));
    row(page, "root", thread.root_at_least ? "at least " + shown(thread.root_at_least) : "");
    row(page, "bears on", thread.bears_on ? model::for_reader(*thread.bears_on) : "");
    const ThreadFigures figures = thread_figures(model, thread);
    row(page, "area", figures.stress_area ? shown(figures.stress_area) + ", under stress" : "");
    if (figures.grade != nullptr) {
        row(page, "breaks at", shown(figures.breaking_force));
        row(page, "", shown(figures.breaking_torque));
        row(page, "preload", shown(figures.usual_preload));
        row(page, "torque", shown(figures.usual_torque));
        const std::string friction =
            figures.friction == nullptr ? "" : ", " + figures.friction->title;
        row(page, "", "all of " + figures.grade->title + friction);
    } else {
        row(page, "breaks at", shown(figures.breaking_torque));
    }
    row(page, "drives", joined(drives_for(model, thread), ", "));
    return page;
}

Page describe(const model::Model& /*model*/, const model::Grade& grade) {
    Page page = headed("grade", grade.name, grade.title);
    row(page, "tensile", strength_words(grade.tensile));
    row(page, "yield", strength_words(grade.yield));
    row(page, "shear",
        grade.shear > 0 ? model::number_text(grade.shear) + " of its tensile strength" : "");
    row(page, "usual", grade.usual ? "taken when an item names none" : "");
    return page;
}

Page describe(const model::Model& /*model*/, const model::Friction& friction) {
    Page page = headed("friction", friction.name, friction.title);
    row(page, "value", model::number_text(friction.coefficient));
    row(page, "usual", friction.usual ? "taken when an item names none" : "");
    return page;
}

Page describe(const model::Model& /*model*/, const model::Timing& timing) {
    Page page = headed("timing", timing.name, timing.title);
    row(page, "tool-change", shown(timing.tool_change));
    row(page, "identify", shown(timing.identify));
    row(page, "handle", shown(timing.handle));
    row(page, "position", shown(timing.position));
    row(page, "set-aside", shown(timing.set_aside));
    row(page, "turn", shown(timing.turn));
    for (const model::TimedVerb& timed : timing.verbs)
        row(page, "act",
            fmt::format("{} {}: {}", timed.verb, joined(timed.kinds, ", "), shown(timed.takes)));
    row(page, "usual", timing.usual ? "taken unless another is named" : "");
    return page;
}

Page describe(const model::Model& model, const model::ToolKind& tool) {
    Page page = headed("tool-kind", tool.name, tool.title);
    row(page, "class", tool.tool_class ? std::string(model::describe(*tool.tool_class)) : "");
    row(page, "sets torque", tool.torques ? model::for_reader(*tool.torques) : "");
    std::vector<std::string> drives;
    for (const model::Drive& drive : model.drives) {
        if (std::find(drive.driven_by.begin(), drive.driven_by.end(), tool.name) !=
            drive.driven_by.end())
            drives.push_back(drive.name);
    }
    row(page, "drives", joined(drives, ", "));
    std::vector<std::string> kinds;
    for (const model::Kind& kind : model.kinds) {
        const bool used = std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const auto& verb) {
            return std::find(verb.tools.begin(), verb.tools.end(), tool.name) != verb.tools.end();
        });
        if (used)
            kinds.push_back(kind.name);
    }
    row(page, "for kinds", joined(kinds, ", "));
    return page;
}

Page describe(const model::Model& model, const model::Gear& gear) {
    Page page = headed("gear", gear.name, gear.title);
    row(page, "sign", gear.sign.empty() ? "" : sign_words(model, gear.sign));
    std::vector<std::string> hazards;
    for (const model::Hazard& hazard : model.hazards) {
        if (std::find(hazard.wear.begin(), hazard.wear.end(), gear.name) != hazard.wear.end())
            hazards.push_back(hazard.name);
    }
    row(page, "against", joined(hazards, ", "));
    return page;
}

Page describe(const model::Model& /*model*/, const model::RatingPart& part) {
    return headed("rating", part.code, part.title);
}

Page describe(const model::Model& /*model*/, const model::Sign& sign) {
    Page page = headed("sign", sign.name, sign.title);
    row(page, "number", sign.number.empty() ? "" : sign.number + " in ISO 7010");
    row(page, "form", std::string(form_word(sign.form)));
    return page;
}

Page describe(const model::Model& model, const model::Hazard& hazard) {
    Page page = headed("hazard", hazard.name, hazard.title);
    row(page, "sign", hazard.sign.empty() ? "" : sign_words(model, hazard.sign));
    std::vector<std::string> wear;
    for (const std::string& gear : hazard.wear)
        wear.push_back(title_of(model.gear, gear));
    row(page, "wear", joined(wear, ", "));
    row(page, "order", joined(hazard.order, ", "));
    row(page, "lit by", joined(hazard.lit_by, ", "));
    append_messages(page, hazard.messages);
    row(page, "of kinds", joined(kinds_with(model, hazard), ", "));
    return page;
}

} // namespace matchmark::drive
