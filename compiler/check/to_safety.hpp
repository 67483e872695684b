// What has to be done before an act that would meet a danger.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// The acts, in order, that make safe what the event's act meets in this state; empty when nothing
// on the bench does. A supply that the guide's own way back has put on again is cut first: to make
// the item safe under it would leave it on over what lies open. On the way home a plug that is
// parted to make safe what a cell charged is joined again, when no later line does so.
std::vector<bench::Act> acts_to_safety(const Walk& walk, const bench::State& state,
                                       std::size_t event, const bench::Exposure& met);

// The guide's line, from the event on, that makes the item safe: too late; empty when none does.
std::vector<Span> made_safe_later(const Walk& walk, std::size_t event, model::ItemId item,
                                  model::StateSet safe);

// Is one of the acts, done in turn, refused or near a danger that is not made safe?
bool meets_danger(const Walk& walk, bench::State state, const std::vector<bench::Act>& acts);

} // namespace matchmark::check
