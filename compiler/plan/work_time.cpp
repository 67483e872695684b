// Works out how long each verb of each kind takes, by the timing in use.
#include "plan/work_time.hpp"

#include "model/fitting.hpp"

#include <algorithm>
#include <unordered_map>

namespace matchmark::plan {

using model::contains;
using model::Kind;
using model::Model;
using model::Timing;
using model::Verb;

namespace {

double seconds(const std::optional<model::Quantity>& quantity) {
    return quantity ? quantity->base : 0;
}

// Does the thing leave its place, or come back to it? A plug stays on its cable, and what is left
// of glue is not laid down.
bool laid_down_or_taken_up(const Kind& kind, const Verb& verb) {
    if (kind.role != model::Role::part && kind.role != model::Role::fastener)
        return false;
    if (kind.set_of[verb.to] != 0)
        return false;
    const bool there_after = contains(kind.present, verb.to);
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto state = static_cast<model::StateId>(i);
        if (contains(verb.from, state) && contains(kind.present, state) != there_after)
            return true;
    }
    return false;
}

ActTime by_the_kind(const Verb& verb) {
    ActTime time;
    time.verb = seconds(verb.takes);
    time.waits = seconds(verb.waits);
    time.by_kind = true;
    return time;
}

ActTime by_the_timing(const Timing& timing, const model::TimedVerb& timed, const Kind& kind,
                      const Verb& verb) {
    ActTime time;
    time.identify = seconds(timing.identify);
    time.handle = seconds(timing.handle);
    time.position = model::asks_tool(verb) ? seconds(timing.position) : 0;
    time.verb = seconds(timed.takes);
    time.set_aside = laid_down_or_taken_up(kind, verb) ? seconds(timing.set_aside) : 0;
    time.waits = seconds(verb.waits);
    return time;
}

} // namespace

const Timing* usual_timing(const Model& model) {
    const auto found = std::find_if(model.timings.rbegin(), model.timings.rend(),
                                    [](const Timing& timing) { return timing.usual; });
    return found == model.timings.rend() ? nullptr : &*found;
}

bool use_timing(Model& model, const std::string& name) {
    const auto known = [&](const Timing& timing) { return timing.name == name; };
    if (std::none_of(model.timings.begin(), model.timings.end(), known))
        return false;
    for (Timing& timing : model.timings)
        timing.usual = timing.name == name;
    return true;
}

WorkTimes::WorkTimes(const Model& model) {
    std::unordered_multimap<std::string, std::size_t> kinds;
    by_kind_.resize(model.kinds.size());
    for (std::size_t k = 0; k < model.kinds.size(); ++k) {
        kinds.emplace(model.kinds[k].name, k);
        for (const Verb& verb : model.kinds[k].verbs)
            by_kind_[k].push_back(by_the_kind(verb));
    }
    const Timing* timing = usual_timing(model);
    if (timing == nullptr)
        return;
    tool_change_ = seconds(timing->tool_change);
    turn_ = seconds(timing->turn);
    for (const model::TimedVerb& timed : timing->verbs) {
        for (const std::string& name : timed.kinds) {
            const auto [first, last] = kinds.equal_range(name);
            for (auto found = first; found != last; ++found) {
                const Kind& kind = model.kinds[found->second];
                for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
                    if (kind.verbs[v].name == timed.verb)
                        by_kind_[found->second][v] =
                            by_the_timing(*timing, timed, kind, kind.verbs[v]);
                }
            }
        }
    }
}

ActTime WorkTimes::act(model::KindId kind, std::size_t verb, std::size_t members) const {
    ActTime time = by_kind_[kind.value][verb];
    time.members = members;
    return time;
}

std::string face_of(const model::Item& item, const Verb& verb) {
    return item.positions && !verb.from_outside ? item.positions->face : std::string();
}

void WorkHand::take(const WorkTimes& times, const std::string& tool, const std::string& face,
                    ActTime& time) {
    if (!tool.empty() && tool != tool_) {
        time.tool_change = times.tool_change();
        tool_ = tool;
    }
    if (face.empty() || face == face_)
        return;
    time.turn = face_.empty() ? 0 : times.turn();
    face_ = face;
}

} // namespace matchmark::plan
