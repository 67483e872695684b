// Finds the hazard that a refused act was to end.
#include "check/dangers.hpp"

#include <algorithm>

namespace matchmark::check {

namespace {

std::string opening(const model::Model& model, const model::HazardUse& use) {
    return model.hazards[use.hazard.value].title + ": ";
}

// States are declared from the assembled one outwards, and safety lies outwards.
bool leads_to_safety(const model::Kind& kind, const model::HazardUse& use, const model::Verb& verb,
                     model::StateId found) {
    if (kind.set_of[verb.to] != kind.set_of[found] || verb.to <= found)
        return false;
    for (std::size_t state = verb.to; state < kind.states.size(); ++state) {
        if (model::contains(use.safe, static_cast<model::StateId>(state)) &&
            kind.set_of[state] == kind.set_of[verb.to])
            return true;
    }
    return false;
}

} // namespace

std::string danger_on_the_way(const model::Model& model, model::ItemId item,
                              const model::Verb& verb, model::StateId found) {
    const model::Kind& kind = model.kind_of(item);
    for (const model::HazardUse& use : kind.hazards) {
        if (!model::contains(use.safe, found) && leads_to_safety(kind, use, verb, found))
            return opening(model, use);
    }
    return {};
}

std::string danger_ended_in(const model::Model& model, model::ItemId item, model::StateSet states) {
    for (const model::HazardUse& use : model.kind_of(item).hazards) {
        if ((use.safe & states) != 0)
            return opening(model, use);
    }
    return {};
}

std::string danger_of(const model::Model& model, model::ItemId item) {
    const auto& hazards = model.kind_of(item).hazards;
    return hazards.empty() ? std::string() : opening(model, hazards.front());
}

} // namespace matchmark::check
