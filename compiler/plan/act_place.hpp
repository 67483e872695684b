// A place among the actions of steps that are put in order.
#pragma once

#include "model/model.hpp"

#include <cstddef>
#include <vector>

namespace matchmark::plan {

struct ActPlace {
    std::size_t step = 0;
    std::size_t action = 0;
};

// Both places as they are counted before the move; a place in the same step, once the action is
// taken out of it.
inline void move_action(std::vector<model::Step>& steps, ActPlace from, ActPlace to) {
    const auto at = [](std::vector<model::Action>& actions, std::size_t index) {
        return actions.begin() + static_cast<std::ptrdiff_t>(index);
    };
    auto& out_of = steps[from.step].actions.edit();
    model::Action moved = std::move(out_of[from.action]);
    out_of.erase(at(out_of, from.action));
    auto& into = steps[to.step].actions.edit();
    into.insert(at(into, to.action), std::move(moved));
}

} // namespace matchmark::plan
