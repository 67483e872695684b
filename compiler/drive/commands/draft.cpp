// `draft`: a guide for one job, from the device alone.
#include "plan/draft.hpp"
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/inputs.hpp"
#include "drive/mended_draft.hpp"
#include "drive/new_text.hpp"
#include "drive/report.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>
#include <sstream>

namespace matchmark::drive {

namespace {

constexpr const char* draft_command = "draft";

// "replace cell, board"
struct GoalWords {
    std::string verb;
    std::vector<std::string> names;
};

GoalWords goal_words(const std::string& text) {
    GoalWords words;
    std::string spaced = text;
    std::replace(spaced.begin(), spaced.end(), ',', ' ');
    std::istringstream in(spaced);
    in >> words.verb;
    for (std::string name; in >> name;) {
        words.names.push_back(name);
    }
    return words;
}

// Sold only with its assembly, or without such a verb: told, and not drafted.
bool can_be_done(const model::Model& model, const plan::DraftGoal& goal, Terminal& terminal) {
    for (const model::ItemId id : goal.items) {
        const model::Item& item = model.item(id);
        if (goal.verb == "replace" && item.renewed_as.known()) {
            const std::string& whole = model.item(item.renewed_as).name;
            fail(terminal, draft_command,
                 fmt::format("`{}` is sold only with `{}`: draft --goal \"replace {}\"", item.name,
                             whole, whole));
            return false;
        }
        if (goal.verb == "replace" && item.role != model::Role::part) {
            fail(terminal, draft_command,
                 fmt::format("`{}` is no part; a part is replaced, the rest is renewed on the way. "
                             "For a guide to it alone: draft --goal \"{} {}\"",
                             item.name, model.kind_of(id).verbs.front().name, item.name));
            return false;
        }
        if (goal.verb != "replace" && model::find_verb(model.kind_of(id), goal.verb) == nullptr) {
            std::vector<std::string> verbs{"replace"};
            for (const model::Verb& verb : model.kind_of(id).verbs) {
                verbs.push_back(verb.name);
            }
            fail(terminal, draft_command,
                 fmt::format("nobody can {} {}{}", goal.verb, model::with_kind(model, id),
                             did_you_mean(goal.verb, verbs)));
            return false;
        }
    }
    return true;
}

std::vector<std::string> acts_of(const model::Model& model, const plan::WayIn& way) {
    std::vector<std::string> acts;
    for (const auto& planned : way.acts) {
        acts.push_back(fmt::format("{} {}", planned.act.item.value, planned.act.verb));
    }
    std::sort(acts.begin(), acts.end());
    return model.items.empty() ? std::vector<std::string>{} : acts;
}

// Is the work the same in every variant that has the parts?
bool same_in_all(const DeviceGoal& device, const plan::WayIn& way) {
    const model::Model& model = device.done.model;
    for (unsigned v = 0; v < model::variant_count(model); ++v) {
        const bench::Bench on{&model, v};
        const bool has_all = std::all_of(device.goal.items.begin(), device.goal.items.end(),
                                         [&](model::ItemId item) { return on.exists(item); });
        if (v == device.variant) {
            continue;
        }
        if (!has_all || acts_of(model, plan::way_in(on, device.goal, {})) != acts_of(model, way)) {
            return false;
        }
    }
    return true;
}

// What is renewed is emptied as early as can be; where that cannot be, the way without it is
// drafted, and the draft's own check tells what still stands in the part.
plan::WayIn way_for(DeviceGoal& device, const plan::DraftGoal& goal) {
    plan::WayInLimits limits;
    limits.by_reason = true;
    const bench::Bench on{&device.done.model, device.variant};
    plan::WayIn way;
    if (goal.verb == "replace") {
        for (const auto when : {plan::Emptying::before_untied, plan::Emptying::before_out}) {
            device.goal.emptying = when;
            way = plan::way_in(on, device.goal, limits);
            if (way.proof != plan::Proof::impossible) {
                return way;
            }
        }
    }
    device.goal.emptying = plan::Emptying::none;
    return plan::way_in(on, device.goal, limits);
}

int deliver_draft(const DraftOptions& options, const MendedDraft& guide, Terminal& terminal) {
    if (options.output.empty()) {
        terminal.out << guide.text;
    } else {
        const auto written = terminal.disk.write(options.output, guide.text);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, draft_command,
                        fmt::format("`{}` cannot be written: {}", options.output, problem->reason));
        }
        terminal.out << options.output << '\n';
    }
    Report report;
    report.add(reported(guide.done.sources, guide.done.findings, false));
    report.write_text(terminal.err);
    return any_error(guide.done.findings) ? exit_findings : exit_clean;
}

} // namespace

int draft_guide(const DraftOptions& options, Terminal& terminal) {
    const GoalWords words = goal_words(options.goal);
    if (words.names.empty()) {
        return fail(terminal, draft_command, "say what the guide is for: --goal \"replace PART\"");
    }
    const auto read =
        device_goal(draft_command, options.path, words.names, false, options.variant, terminal);
    if (const int* failed = std::get_if<int>(&read)) {
        return *failed;
    }
    auto device = std::get<DeviceGoal>(read);
    const model::Model& model = device.done.model;
    plan::DraftGoal goal{words.verb, device.goal.items};
    if (!can_be_done(model, goal, terminal)) {
        return exit_failed;
    }
    const plan::WayIn way = way_for(device, goal);
    if (way.proof == plan::Proof::impossible || way.proof == plan::Proof::unknown) {
        fail(terminal, draft_command, "there is no way in; `matchmark plan --reach` says why");
        return exit_findings;
    }
    if (!model.device.variants.empty() && !same_in_all(device, way)) {
        goal.only = model.device.variants[device.variant];
    }
    const std::string name = plan::draft_name(model, goal) + ".mmk";
    const std::string path = options.output.empty() ? beside(options.path, name) : options.output;
    const std::string text = tidied_text(
        plan::draft({&model, device.variant}, way, goal, seen_from(path, options.path)));
    return deliver_draft(options, mended_draft(terminal.disk, path, text), terminal);
}

} // namespace matchmark::drive
