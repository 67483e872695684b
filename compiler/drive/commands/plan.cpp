// `plan`: the least that has to be done to reach a part of a device, in what order, with what.
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/inputs.hpp"
#include "drive/jobs_report.hpp"
#include "drive/plan_assumptions.hpp"
#include "drive/plan_times.hpp"
#include "drive/timing_choice.hpp"
#include "guide/appraisal.hpp"
#include "model/describe.hpp"
#include "plan/way_in/way_in.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* plan_command = "plan";

using Json = nlohmann::ordered_json;
using plan::Proof;
using plan::WayIn;

// What is good for one use and is parted here: a new one is asked for.
std::vector<model::ItemId> renewed(const model::Model& model, const WayIn& way) {
    std::vector<model::ItemId> items;
    for (const auto& planned : way.acts) {
        const model::Item& item = model.item(planned.act.item);
        const model::Kind& kind = model.kind(item.kind);
        const bool parts = kind.set_of[kind.verbs[planned.act.verb].to] == 0;
        if (item.one_use && parts &&
            std::find(items.begin(), items.end(), planned.act.item) == items.end())
            items.push_back(planned.act.item);
    }
    return items;
}

std::vector<std::string> each_once(const std::vector<std::string>& names) {
    std::vector<std::string> once;
    for (const std::string& name : names) {
        if (std::find(once.begin(), once.end(), name) == once.end())
            once.push_back(name);
    }
    return once;
}

std::string asked(const model::Model& model, const PlanOptions& options,
                  const plan::WayInGoal& goal) {
    std::vector<std::string> names;
    for (const auto item : goal.items)
        names.push_back(model::for_reader(model, item));
    return fmt::format("{} {}", options.expose ? "To reach" : "To take out", model::list(names));
}

void write_acts(const model::Model& model, const WayIn& way, const PlanOptions& options,
                std::ostream& out) {
    std::size_t width = 0;
    for (const auto& planned : way.acts)
        width = std::max(width, act_words(model, planned.act).size());
    std::string in_hand;
    for (std::size_t i = 0; i < way.acts.size(); ++i) {
        const auto& planned = way.acts[i];
        std::string tool = planned.tool;
        const bool taken_up = !tool.empty() && tool != in_hand;
        if (!tool.empty())
            in_hand = tool;
        out << fmt::format("{:>4}  {:<{}}  {:>9}{}\n", i + 1, act_words(model, planned.act), width,
                           planned.seconds > 0 ? guide::time_words(planned.seconds) : "-",
                           taken_up ? "  " + tool : std::string());
        if (!options.why)
            continue;
        for (const std::string& line : plan::why(model, way, i))
            out << "        " << line << '\n';
    }
}

std::string proof_words(const WayIn& way) {
    if (way.proof == Proof::least) {
        return fmt::format("Least time: proved. Any way in has to do one act of each of {} sets of "
                           "acts, {} of which leave a choice; no acts that do take less.",
                           way.proofs, way.with_choice);
    }
    return fmt::format("Least time: not proved. No way in takes less than {}; this one takes {}.",
                       guide::time_words(way.at_least_seconds), guide::time_words(way.seconds));
}

void write_plan_text(const model::Model& model, const plan::WayInGoal& goal, const WayIn& way,
                     const PlanOptions& options, std::ostream& out) {
    const std::string what = asked(model, options, goal);
    if (way.acts.empty()) {
        out << what << " there is nothing to be done.\n";
        return;
    }
    out << what << ":\n\n";
    if (options.times) {
        write_times(model, way, out);
    } else {
        write_acts(model, way, options, out);
    }
    out << fmt::format(
        "\n{}, {}{}, {}\n", model::counted(way.acts.size(), "act"), guide::time_words(way.seconds),
        way.waiting > 0 ? " and " + guide::time_words(way.waiting) + " of waiting" : "",
        way.tool_changes == 0 ? "by hand" : model::counted(way.tool_changes, "tool") + " taken up");
    write_labour(model, way, out);
    for (const model::ItemId item : renewed(model, way))
        out << fmt::format("To be renewed: {}\n", model::for_reader(model, item));
    out << proof_words(way) << '\n';
    if (way.tool_changes_at_least == way.tool_changes) {
        out << "Fewest changes of tool for these acts: proved.\n";
    } else {
        out << fmt::format("Changes of tool: at least {} for these acts; not proved fewest.\n",
                           way.tool_changes_at_least);
    }
    write_turnings(way, out);
    if (options.orders) {
        out << (way.orders.empty()
                    ? std::string("Orders: too many to be counted.")
                    : fmt::format("Orders in which these acts can be done: {}.", way.orders))
            << '\n';
    }
}

Json act_json(const model::Model& model, const WayIn& way, std::size_t i) {
    const auto& planned = way.acts[i];
    const model::Kind& kind = model.kind_of(planned.act.item);
    Json entry;
    entry["item"] = model.item(planned.act.item).name;
    entry["verb"] = kind.verbs[planned.act.verb].name;
    entry["members"] = planned.act.members.all();
    entry["from"] = kind.states[planned.from];
    entry["to"] = kind.states[kind.verbs[planned.act.verb].to];
    entry["tool"] = planned.tool.empty() ? Json(nullptr) : Json(planned.tool);
    entry["seconds"] = planned.seconds;
    entry["waiting_seconds"] = planned.waiting;
    entry["face"] = planned.face.empty() ? Json(nullptr) : Json(planned.face);
    entry["time"] = Json::parse(time_as_json(planned.time));
    entry["why"] = plan::why(model, way, i);
    return entry;
}

Json way_json(const model::Model& model, const plan::WayInGoal& goal, const WayIn& way,
              const PlanOptions& options) {
    static constexpr const char* proofs[] = {"least", "bounded", "impossible", "unknown"};
    Json root;
    root["device"] = model.device.name;
    root["goal"] = options.expose ? "reach" : "out";
    root["items"] = Json::array();
    for (const auto item : goal.items)
        root["items"].push_back(model.item(item).name);
    root["proof"] = proofs[static_cast<std::size_t>(way.proof)];
    root["acts"] = Json::array();
    for (std::size_t i = 0; i < way.acts.size(); ++i)
        root["acts"].push_back(act_json(model, way, i));
    root["seconds"] = way.seconds;
    root["labour_seconds"] = way.labour_seconds;
    root["waiting_seconds"] = way.waiting;
    root["back_seconds"] = way.back_seconds;
    root["back_waiting_seconds"] = way.back_waiting;
    root["timing"] = timing_name(model);
    root["at_least_seconds"] = way.at_least_seconds;
    root["tool_changes"] = way.tool_changes;
    root["tool_changes_at_least"] = way.tool_changes_at_least;
    root["turnings"] = way.turnings;
    root["turnings_at_least"] = way.turnings_at_least;
    root["orders"] = way.orders.empty() ? Json(nullptr) : Json(way.orders);
    root["renewed"] = Json::array();
    for (const auto item : renewed(model, way))
        root["renewed"].push_back(model.item(item).name);
    root["why_not"] = plan::why_not(model, way);
    return root;
}

void tell_no_way(const model::Model& model, const plan::WayInGoal& goal, const WayIn& way,
                 const PlanOptions& options, std::ostream& out) {
    out << asked(model, options, goal);
    if (way.proof == Proof::unknown) {
        out << ": no way was found in the time given, and none was ruled out.\n";
        return;
    }
    out << " there is no way.\n";
    for (const std::string& line : plan::why_not(model, way)) {
        out << "  " << line << '\n';
    }
    if (way.obstacles.empty()) {
        out << "  Each act can be done at some time, but in no order all that are needed: one asks "
               "for a state that another has to leave first.\n";
    }
}

} // namespace

namespace {

// The parts that a published index asks about, or else all.
std::vector<model::ItemId> parts_of_note(const bench::Bench& on) {
    std::vector<model::ItemId> all;
    std::vector<model::ItemId> counted;
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        const model::Item& item = on.model->items[i];
        if (item.role != model::Role::part || !on.exists(model::ItemId{i}))
            continue;
        all.emplace_back(model::ItemId{i});
        if (!item.rare->counts_as->empty())
            counted.emplace_back(model::ItemId{i});
    }
    return counted.empty() ? all : counted;
}

int tell_what_if(const DeviceGoal& device, const PlanOptions& options, Terminal& terminal) {
    const bench::Bench on{&device.done.model, device.variant};
    const auto parts = device.goal.items.empty() ? parts_of_note(on) : device.goal.items;
    const plan::WhatIf found = plan::what_if(on, parts, options.expose);
    constexpr std::size_t most_told = 20;
    if (options.json) {
        terminal.out << what_if_json(device.done, found, options.expose)
                            .dump(2, ' ', false, Json::error_handler_t::replace)
                     << '\n';
    } else {
        write_what_if(device.done, found, options.expose, most_told, terminal.out);
    }
    return exit_clean;
}

// The jobs asked for together, and those that follow.
struct Jobs {
    std::vector<plan::Job> together;
    std::vector<plan::Job> then;
};

Jobs jobs_of(const bench::Bench& on, const plan::WayInGoal& goal,
             const std::vector<model::ItemId>& then, const WayIn& way) {
    Jobs jobs;
    if (goal.items.size() > 1)
        jobs.together = plan::jobs_in_turn(on, goal.items, goal.expose);
    jobs.then = plan::jobs_in_turn(on, then, goal.expose, way.acts);
    return jobs;
}

} // namespace

int plan_way_in(const PlanOptions& options, Terminal& terminal) {
    if (options.reach.empty() && !options.what_if) {
        return fail(terminal, plan_command, "say what is to be reached: --reach PART");
    }
    if (options.what_if && !options.then.empty()) {
        return fail(terminal, plan_command, "--what-if takes its parts from --reach, not --then");
    }
    const std::vector<std::string> reach = each_once(options.reach);
    std::vector<std::string> names = reach;
    const std::vector<std::string> after = each_once(options.then);
    names.insert(names.end(), after.begin(), after.end());
    auto read =
        device_goal(plan_command, options.path, names, options.expose, options.variant, terminal);
    if (const int* failed = std::get_if<int>(&read)) {
        return *failed;
    }
    auto& device = std::get<DeviceGoal>(read);
    if (const auto wrong = choose_timing(device.done.model, options.timing)) {
        return fail(terminal, plan_command, *wrong);
    }
    if (options.what_if) {
        return tell_what_if(device, options, terminal);
    }
    const model::Model& model = device.done.model;
    const bench::Bench on{&model, device.variant};
    plan::WayInLimits limits;
    if (options.time_limit > 0) {
        limits.seconds = options.time_limit;
    }
    limits.count_orders = options.orders;
    const auto first = static_cast<std::ptrdiff_t>(reach.size());
    const std::vector<model::ItemId> then(device.goal.items.begin() + first,
                                          device.goal.items.end());
    device.goal.items.resize(reach.size());
    const WayIn way = plan::way_in(on, device.goal, limits);
    const bool found = way.proof == Proof::least || way.proof == Proof::bounded;
    const Jobs jobs = found ? jobs_of(on, device.goal, then, way) : Jobs{};
    if (options.json) {
        Json root = way_json(model, device.goal, way, options);
        root["jobs"] = jobs_json(model, jobs.together);
        root["then"] = jobs_json(model, jobs.then);
        root["assumed"] = assumed_json(device.done, on, device.goal, way);
        terminal.out << root.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
    } else if (found) {
        write_plan_text(model, device.goal, way, options, terminal.out);
        if (!jobs.together.empty()) {
            write_jobs(model, jobs.together, way, terminal.out);
        }
        write_then(model, jobs.then, terminal.out);
        write_assumed(device.done, on, device.goal, way, terminal.out);
    } else {
        tell_no_way(model, device.goal, way, options, terminal.out);
    }
    return found ? exit_clean : exit_findings;
}

} // namespace matchmark::drive
