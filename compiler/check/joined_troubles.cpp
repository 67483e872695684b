// Finds the troubles that come of what another has told already.
#include "check/joined_troubles.hpp"

#include <algorithm>

namespace matchmark::check {

namespace {

using bench::Act;

bool all_on_item(const std::vector<Act>& acts, model::ItemId item) {
    return !acts.empty() &&
           std::all_of(acts.begin(), acts.end(), [&](const Act& act) { return act.item == item; });
}

template <class Reason> const Reason* refused_for(const Trouble& trouble) {
    const auto* refused = std::get_if<bench::Refusal>(&trouble.objection);
    return refused == nullptr ? nullptr : std::get_if<Reason>(refused);
}

// Of the same act, the source not made safe of what is still live.
Trouble* danger_beside(Walk& walk, const Trouble& live, model::ItemId source) {
    const auto found =
        std::find_if(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& other) {
            const auto* met = std::get_if<bench::Exposure>(&other.objection);
            return met != nullptr && met->item == source && other.event == live.event &&
                   other.mend_at == live.mend_at && all_on_item(other.missing, source);
        });
    return found == walk.troubles.end() ? nullptr : &*found;
}

void join_live_and_danger(Walk& walk, Trouble& live) {
    const auto* reason = refused_for<bench::StillLive>(live);
    Trouble* danger = reason != nullptr && all_on_item(live.missing, reason->source)
                          ? danger_beside(walk, live, reason->source)
                          : nullptr;
    if (danger == nullptr)
        return;
    danger->missing.insert(danger->missing.begin(), live.missing.begin(), live.missing.end());
    live.is_echo = true;
}

// The way back starts from where the guide left it, and the walk had gone further.
void join_way_back(Walk& walk, Trouble& wrong) {
    const bool home = walk.step(walk.events[wrong.event]).section == model::Section::put_back;
    if (refused_for<bench::WrongState>(wrong) == nullptr || !home || !wrong.done_later.empty())
        return;
    const model::ItemId item = walk.events[wrong.event].act->item;
    if (walk.model.item(item).role != model::Role::energy || !all_on_item(wrong.missing, item))
        return;
    const auto first =
        std::find_if(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& other) {
            return !other.is_echo && other.event < wrong.event && other.way_back.empty() &&
                   all_on_item(other.missing, item) && other.done_later.empty() &&
                   other.missing.size() == wrong.missing.size() &&
                   walk.step(walk.events[other.event]).section != model::Section::put_back;
        });
    if (first == walk.troubles.end())
        return;
    first->way_back.push_back({wrong.mend_at, false, {item}, wrong.missing});
    wrong.is_echo = true;
}

} // namespace

void join_troubles(Walk& walk) {
    for (Trouble& trouble : walk.troubles)
        join_live_and_danger(walk, trouble);
    for (Trouble& trouble : walk.troubles)
        join_way_back(walk, trouble);
}

} // namespace matchmark::check
