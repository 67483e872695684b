// Works out how long each verb of each kind takes, by the timing in use.
#include "plan/work_time.hpp"

#include "model/fitting.hpp"

#include <algorithm>

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
    for (Timing& timing : model.timings.edit())
        timing.usual = timing.name == name;
    return true;
}

WorkTimes::WorkTimes(const Model& model) : model_(model), timing_(usual_timing(model)) {
    if (timing_ == nullptr)
        return;
    for (const model::TimedVerb& timed : timing_->verbs)
        by_verb_.push_back(&timed);
    std::stable_sort(by_verb_.begin(), by_verb_.end(),
                     [](const auto* a, const auto* b) { return a->verb < b->verb; });
}

double WorkTimes::tool_change() const {
    return timing_ == nullptr ? 0 : seconds(timing_->tool_change);
}

double WorkTimes::turn() const { return timing_ == nullptr ? 0 : seconds(timing_->turn); }

ActTime WorkTimes::act(model::KindId kind, std::size_t verb, std::size_t members) const {
    const Kind& done_to = model_.kind(kind);
    const Verb& done = done_to.verbs[verb];
    ActTime time = by_the_kind(done);
    const auto from = std::lower_bound(
        by_verb_.begin(), by_verb_.end(), done.name,
        [](const model::TimedVerb* timed, const std::string& name) { return timed->verb < name; });
    // What stands last holds.
    for (auto timed = from; timed != by_verb_.end() && (*timed)->verb == done.name; ++timed) {
        const auto& kinds = (*timed)->kinds;
        if (std::find(kinds.begin(), kinds.end(), done_to.name) != kinds.end())
            time = by_the_timing(*timing_, **timed, done_to, done);
    }
    time.members = members;
    return time;
}

std::string face_of(const model::Item& item, const Verb& verb) {
    return item.rare->positions && !verb.from_outside ? item.rare->positions->face : std::string();
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

double WorkHand::wait(model::ItemId item, double seconds) {
    if (seconds <= 0) {
        side_by_side_.clear();
        return 0;
    }
    const auto longest = [&] {
        double most = 0;
        for (const auto& [other, waited] : side_by_side_)
            most = std::max(most, waited);
        return most;
    };
    const double before = longest();
    auto found = std::find_if(side_by_side_.begin(), side_by_side_.end(),
                              [&](const auto& one) { return one.first == item; });
    if (found == side_by_side_.end())
        found = side_by_side_.insert(found, {item, 0});
    found->second += seconds;
    return longest() - before;
}

} // namespace matchmark::plan
