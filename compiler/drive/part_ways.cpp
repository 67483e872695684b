// Parts are planned side by side; each result stands in its own place.
#include "drive/part_ways.hpp"

#include "plan/unavoidable.hpp"
#include "plan/way_in/tasks.hpp"
#include "plan/way_in/way_in.hpp"
#include "plan/work_time.hpp"

#include <algorithm>
#include <atomic>
#include <thread>

namespace matchmark::drive {

namespace {

using appraise::PartWay;
using guide::WayFound;

WayFound found(plan::Proof proof) {
    switch (proof) {
    case plan::Proof::least:
        return WayFound::least;
    case plan::Proof::bounded:
        return WayFound::bounded;
    case plan::Proof::impossible:
        return WayFound::none;
    case plan::Proof::unknown:
        break;
    }
    return WayFound::unknown;
}

std::size_t members_of(const model::Model& model, const bench::Act& act) {
    return act.members.empty() ? model.item(act.item).count : act.members.size();
}

// The time of the acts in this order, with the changes of tool and the turnings between them.
void add_time_apart(const model::Model& model, const plan::WorkTimes& times,
                    const std::vector<plan::PlannedAct>& acts, PartWay& way) {
    plan::WorkHand hand;
    for (const plan::PlannedAct& planned : acts) {
        const model::Item& item = model.item(planned.act.item);
        const model::Verb& verb = model.kind(item.kind).verbs[planned.act.verb];
        plan::ActTime time = times.act(item.kind, planned.act.verb, members_of(model, planned.act));
        hand.take(times, planned.tool, plan::face_of(item, verb), time);
        way.seconds_apart += time.labour();
        way.waiting_apart += hand.wait(planned.act.item, time.waits);
    }
}

// The reverse of each act in the reverse order, with the tool in hand where it will do. What has no
// way back takes no time: a new one is fitted by other acts.
void add_time_back(const model::Model& model, const plan::WorkTimes& times,
                   const std::vector<plan::PlannedAct>& acts, PartWay& way) {
    plan::WorkHand hand;
    std::string in_hand;
    for (auto planned = acts.rbegin(); planned != acts.rend(); ++planned) {
        const auto back = bench::reversed(model, planned->act, planned->from);
        if (!back)
            continue;
        const model::Item& item = model.item(back->item);
        const model::Verb& verb = model.kind(item.kind).verbs[back->verb];
        const std::vector<std::string> tools = plan::tools_for(model, item, verb);
        std::string tool;
        if (!tools.empty()) {
            const bool held = std::find(tools.begin(), tools.end(), in_hand) != tools.end();
            tool = held ? in_hand : tools.front();
            in_hand = tool;
        }
        plan::ActTime time = times.act(item.kind, back->verb, members_of(model, *back));
        hand.take(times, tool, plan::face_of(item, verb), time);
        way.seconds_back += time.labour();
        way.waiting_back += hand.wait(back->item, time.waits);
    }
}

PartWay part_way(const bench::Bench& bench, const plan::WorkTimes& times, const WantedPart& part,
                 std::optional<double> seconds) {
    plan::WayInLimits limits;
    limits.seconds = seconds;
    const plan::WayIn planned = plan::way_in(bench, {{part.item}, false}, limits);
    PartWay way;
    way.part = part.item;
    way.shown = part.shown;
    way.found = found(planned.proof);
    way.at_least_seconds = planned.at_least_seconds;
    if (way.found == WayFound::none)
        way.why_not = plan::why_not(*bench.model, planned);
    for (const plan::PlannedAct& act : planned.acts)
        way.acts.push_back({act.act, act.from, act.tool});
    add_time_apart(*bench.model, times, planned.acts, way);
    add_time_back(*bench.model, times, planned.acts, way);
    return way;
}

// Of what each way moves, what no way does without.
void add_always_moved(const bench::Bench& bench, std::vector<PartWay>& ways) {
    std::vector<plan::WayInGoal> goals;
    std::vector<std::vector<model::ItemId>> moved(ways.size());
    for (std::size_t i = 0; i < ways.size(); ++i) {
        goals.push_back({{ways[i].part}, false});
        for (const appraise::OrderedAct& act : ways[i].acts) {
            if (act.act.item != ways[i].part)
                moved[i].push_back(act.act.item);
        }
    }
    auto always = plan::unavoidable(bench, goals, moved);
    for (std::size_t i = 0; i < ways.size(); ++i)
        ways[i].always_moved = std::move(always[i]);
}

} // namespace

std::vector<PartWay> part_ways(const bench::Bench& bench, const std::vector<WantedPart>& parts,
                               std::optional<double> seconds, unsigned threads) {
    std::vector<PartWay> ways(parts.size());
    const plan::WorkTimes times(*bench.model);
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < parts.size(); i = next++)
            ways[i] = part_way(bench, times, parts[i], seconds);
    };
    const std::size_t wanted =
        threads != 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::thread> others;
    for (std::size_t i = 1; i < std::min(wanted, parts.size()); ++i)
        others.emplace_back(work);
    work();
    for (std::thread& thread : others)
        thread.join();
    if (!ways.empty())
        add_always_moved(bench, ways);
    return ways;
}

} // namespace matchmark::drive
