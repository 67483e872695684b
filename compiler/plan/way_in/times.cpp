// Goes along with the work, in and back, and adds up what each act takes.
#include "plan/way_in/times.hpp"

#include "plan/way_in/tasks.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::Item;
using model::Kind;
using model::Model;
using model::Verb;

namespace {

std::size_t members_of(const Item& item, const bench::Act& act) {
    return act.members.empty() ? item.count : act.members.size();
}

// The tool in hand, if it does it; else the one that was used on the way in; else the first.
std::string tool_back(const Model& model, const PlannedAct& planned, const Verb& back,
                      const std::string& in_hand) {
    const auto fitting = tools_for(model, model.item(planned.act.item), back);
    const auto fits = [&](const std::string& tool) {
        return std::find(fitting.begin(), fitting.end(), tool) != fitting.end();
    };
    if (fitting.empty())
        return {};
    if (fits(in_hand))
        return in_hand;
    return fits(planned.tool) ? planned.tool : fitting.front();
}

// An estimate: the acts reversed, each by its inverse verb; what may stay as it is, or has no way
// back, stays.
void tell_way_back(const Model& model, const WorkTimes& times, WayIn& way) {
    WorkHand hand;
    std::string tool;
    for (auto planned = way.acts.rbegin(); planned != way.acts.rend(); ++planned) {
        const Item& item = model.item(planned->act.item);
        const Kind& kind = model.kind(item.kind);
        const Verb& verb = kind.verbs[planned->act.verb];
        const Verb* back = model::inverse(kind, verb, planned->from);
        if (back == nullptr || model::contains(kind.may_end, verb.to))
            continue;
        ActTime time = times.act(item.kind, static_cast<std::size_t>(back - kind.verbs.data()),
                                 members_of(item, planned->act));
        const std::string taken = tool_back(model, *planned, *back, tool);
        tool = taken.empty() ? tool : taken;
        hand.take(times, taken, face_of(item, *back), time);
        way.back_seconds += time.labour();
        way.back_waiting += hand.wait(planned->act.item, time.waits);
    }
}

} // namespace

void tell_times(const Model& model, WayIn& way) {
    const WorkTimes times(model);
    WorkHand hand;
    way.seconds = way.labour_seconds = way.waiting = 0;
    way.back_seconds = way.back_waiting = 0;
    for (PlannedAct& planned : way.acts) {
        const Item& item = model.item(planned.act.item);
        const Verb& verb = model.kind(item.kind).verbs[planned.act.verb];
        planned.face = face_of(item, verb);
        planned.time = times.act(item.kind, planned.act.verb, members_of(item, planned.act));
        hand.take(times, planned.tool, planned.face, planned.time);
        planned.seconds = planned.time.alone();
        planned.waiting = planned.time.waits;
        way.seconds += planned.seconds;
        way.labour_seconds += planned.time.labour();
        way.waiting += hand.wait(planned.act.item, planned.waiting);
    }
    tell_way_back(model, times, way);
}

} // namespace matchmark::plan
