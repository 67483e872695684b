// `plan`: the least that has to be done to reach a part of a device, in what order, with what.
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/inputs.hpp"
#include "model/describe.hpp"
#include "plan/way_in.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* command = "plan";

using Json = nlohmann::ordered_json;
using plan::Proof;
using plan::WayIn;

// "8 s", "2 min 5 s", "1 h 10 min"
std::string duration(double seconds) {
    const auto whole = static_cast<long long>(std::llround(seconds));
    if (whole < 60)
        return fmt::format("{} s", whole);
    if (whole < 3600)
        return whole % 60 == 0 ? fmt::format("{} min", whole / 60)
                               : fmt::format("{} min {} s", whole / 60, whole % 60);
    return fmt::format("{} h {} min", whole / 3600, whole % 3600 / 60);
}

std::string act_words(const model::Model& model, const bench::Act& act) {
    const model::Verb& verb = model.kind_of(act.item).verbs[act.verb];
    std::string words = verb.name;
    std::replace(words.begin(), words.end(), '-', ' ');
    model::ItemRef ref;
    ref.item = act.item;
    ref.members = act.members;
    return words + " " + model::for_reader(model, ref);
}

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
                           planned.seconds > 0 ? duration(planned.seconds) : "-",
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
                       duration(way.at_least_seconds), duration(way.seconds));
}

void write_text(const model::Model& model, const plan::WayInGoal& goal, const WayIn& way,
                const PlanOptions& options, std::ostream& out) {
    const std::string what = asked(model, options, goal);
    if (way.acts.empty()) {
        out << what << " there is nothing to be done.\n";
        return;
    }
    out << what << ":\n\n";
    write_acts(model, way, options, out);
    out << fmt::format(
        "\n{}, {}{}, {}\n", model::counted(way.acts.size(), "act"), duration(way.seconds),
        way.waiting > 0 ? " and " + duration(way.waiting) + " of waiting" : "",
        way.tool_changes == 0 ? "by hand" : model::counted(way.tool_changes, "tool") + " taken up");
    for (const model::ItemId item : renewed(model, way))
        out << fmt::format("To be renewed: {}\n", model::for_reader(model, item));
    out << proof_words(way) << '\n';
    if (way.tool_changes_at_least == way.tool_changes) {
        out << "Fewest changes of tool for these acts: proved.\n";
    } else {
        out << fmt::format("Changes of tool: at least {} for these acts; not proved fewest.\n",
                           way.tool_changes_at_least);
    }
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
    entry["members"] = planned.act.members;
    entry["from"] = kind.states[planned.from];
    entry["to"] = kind.states[kind.verbs[planned.act.verb].to];
    entry["tool"] = planned.tool.empty() ? Json(nullptr) : Json(planned.tool);
    entry["seconds"] = planned.seconds;
    entry["waiting_seconds"] = planned.waiting;
    entry["why"] = plan::why(model, way, i);
    return entry;
}

void write_json(const model::Model& model, const plan::WayInGoal& goal, const WayIn& way,
                const PlanOptions& options, std::ostream& out) {
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
    root["waiting_seconds"] = way.waiting;
    root["at_least_seconds"] = way.at_least_seconds;
    root["tool_changes"] = way.tool_changes;
    root["tool_changes_at_least"] = way.tool_changes_at_least;
    root["orders"] = way.orders.empty() ? Json(nullptr) : Json(way.orders);
    root["renewed"] = Json::array();
    for (const auto item : renewed(model, way))
        root["renewed"].push_back(model.item(item).name);
    root["why_not"] = plan::why_not(model, way);
    out << root.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
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

// What several jobs in one opening save: the work that they share is done once.
void tell_shared(const bench::Bench& on, const plan::WayInGoal& goal, const WayIn& together,
                 std::ostream& out) {
    double apart = 0;
    std::string each;
    for (const model::ItemId item : goal.items) {
        const WayIn alone = plan::way_in(on, {{item}, goal.expose});
        if (alone.proof != Proof::least) {
            return;
        }
        apart += alone.seconds;
        each += fmt::format("{}{} {}", each.empty() ? "" : ", ", model::for_reader(*on.model, item),
                            duration(alone.seconds));
    }
    out << fmt::format("One at a time: {}, {} in all; in one opening {} less.\n", each,
                       duration(apart), duration(apart - together.seconds));
}

} // namespace

int plan_way_in(const PlanOptions& options, Terminal& terminal) {
    if (options.reach.empty()) {
        return fail(terminal, command, "say what is to be reached: --reach PART");
    }
    const auto read = device_goal(command, options.path, options.reach, options.expose,
                                  options.variant, terminal);
    if (const int* failed = std::get_if<int>(&read)) {
        return *failed;
    }
    const auto& device = std::get<DeviceGoal>(read);
    const model::Model& model = device.done.model;
    plan::WayInLimits limits;
    if (options.time_limit > 0) {
        limits.seconds = options.time_limit;
    }
    limits.count_orders = options.orders;
    const WayIn way = plan::way_in({&model, device.variant}, device.goal, limits);
    const bool found = way.proof == Proof::least || way.proof == Proof::bounded;
    if (options.json) {
        write_json(model, device.goal, way, options, terminal.out);
    } else if (found) {
        write_text(model, device.goal, way, options, terminal.out);
        if (device.goal.items.size() > 1 && way.proof == Proof::least) {
            tell_shared({&model, device.variant}, device.goal, way, terminal.out);
        }
    } else {
        tell_no_way(model, device.goal, way, options, terminal.out);
    }
    return found ? exit_clean : exit_findings;
}

} // namespace matchmark::drive
