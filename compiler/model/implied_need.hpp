// A need that no line of the device states, because it follows from kinds.
#pragma once

#include "model/model.hpp"

#include <algorithm>
#include <bit>
#include <string>

namespace matchmark::model {

// The item has to be in the state before the verb; its declaration says so.
inline Need need_of(const Model& model, ItemId id, StateId state, const std::string& verb,
                    NeedOf of) {
    Need need;
    need.condition.item.item = id;
    need.condition.item.span = need.condition.span = model.item(id).span;
    need.condition.state = state;
    need.verb = verb;
    need.span = model.item(id).declaration;
    need.of = of;
    return need;
}

// Likewise, and any of the states will do: one at least.
inline Need need_of_any(const Model& model, ItemId id, StateSet states, const std::string& verb,
                        NeedOf of) {
    const auto first = static_cast<StateId>(std::countr_zero(states));
    Need need = need_of(model, id, first, verb, of);
    need.or_in = states & ~in_set(first);
    return need;
}

// Is something asked of `first` for the verb already? Then nothing need follow.
inline bool asks_itself(const Item& item, const std::string& verb, ItemId first) {
    return std::any_of(item.needs.begin(), item.needs.end(), [&](const Need& need) {
        return need.verb == verb && need.condition.item.item == first;
    });
}

} // namespace matchmark::model
