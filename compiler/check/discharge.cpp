// Finds the discharges of a walk.
#include "check/discharge.hpp"

namespace matchmark::check {

std::vector<Discharge> discharges(const Walk& walk) {
    std::vector<Discharge> all;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act)
            continue;
        const model::Verb& verb = walk.model.kind_of(event.act->item).verbs[event.act->verb];
        const model::Action& action = *walk.action(event);
        if (!verb.decays || action.derived)
            continue;
        all.push_back({at, event.act->item,
                       model::discharge_facts(walk.model, action, action.targets[event.target])});
    }
    return all;
}

std::vector<std::string> missing(const model::DischargeFacts& facts) {
    std::vector<std::string> words;
    if (!facts.through)
        words.emplace_back("the resistance");
    if (!facts.capacitance)
        words.emplace_back("its capacitance");
    if (!facts.voltage)
        words.emplace_back("its voltage");
    if (!facts.limit)
        words.emplace_back("the voltage to reach");
    return words;
}

} // namespace matchmark::check
