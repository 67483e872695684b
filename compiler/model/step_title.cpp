// What a step is called that nobody has given a title: after what it does.
#include "model/step_title.hpp"

#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <algorithm>

namespace matchmark::model {

namespace {

bool is_energy(const Model& model, const Target& deed) {
    return model.item(deed.ref.item).role == Role::energy;
}

// Does it leave the item as a supply that is on?
bool brings_back(const Model& model, const Target& deed) {
    const Kind& kind = model.kind_of(deed.ref.item);
    const Verb& verb = kind.verbs[deed.verb];
    return is_energy(model, deed) && verb.from_outside && contains(kind.live, verb.to);
}

bool is_last(const std::vector<Target>& deeds, std::size_t deed) {
    return std::none_of(
        deeds.begin() + static_cast<std::ptrdiff_t>(deed) + 1, deeds.end(),
        [&](const Target& later) { return later.ref.item == deeds[deed].ref.item; });
}

} // namespace

std::vector<Target> deeds_of(const std::vector<Action>& actions) {
    std::vector<Target> deeds;
    for (const Action& action : actions) {
        if (action.sort == ActionSort::verb) {
            deeds.insert(deeds.end(), action.targets.begin(), action.targets.end());
        }
    }
    return deeds;
}

std::vector<std::size_t> named_beside(const Model& model, const std::vector<Target>& deeds,
                                      std::size_t main) {
    const bool of_energies = is_energy(model, deeds[main]);
    std::vector<std::size_t> named;
    for (std::size_t i = 0; i < deeds.size(); ++i) {
        const bool told = of_energies ? is_energy(model, deeds[i]) : brings_back(model, deeds[i]);
        if ((!of_energies && i == main) || (told && is_last(deeds, i))) {
            named.push_back(i);
        }
    }
    return named;
}

std::vector<std::size_t> named_deeds(const Model& model, const std::vector<Target>& deeds) {
    if (deeds.empty()) {
        return {};
    }
    const auto part = std::find_if(deeds.begin(), deeds.end(), [&](const Target& deed) {
        return model.item(deed.ref.item).role == Role::part;
    });
    const auto main = part == deeds.end() ? deeds.begin() : part;
    return named_beside(model, deeds, static_cast<std::size_t>(main - deeds.begin()));
}

std::string step_title(const Model& model, const std::vector<Target>& deeds) {
    std::vector<std::string> said;
    for (const std::size_t i : named_deeds(model, deeds)) {
        const Target& deed = deeds[i];
        said.push_back(spaced(model.kind_of(deed.ref.item).verbs[deed.verb].name) + " " +
                       for_reader(model, deed.ref));
    }
    return capitalised(list(said));
}

} // namespace matchmark::model
