// Looks up what a discharge is worked out from.
#include "check/discharge.hpp"

#include "model/stored_energy.hpp"

#include <cstdlib>

namespace matchmark::check {

using model::Measure;
using model::Quantity;

namespace {

// "10 kohm", as the line has it.
std::optional<Quantity> resistance(const std::string& means) {
    const char* begin = means.c_str();
    char* end = nullptr;
    const double value = std::strtod(begin, &end);
    if (end == begin)
        return std::nullopt;
    const std::string rest(end);
    const std::size_t unit = rest.find_first_not_of(' ');
    if (unit == std::string::npos)
        return std::nullopt;
    auto quantity = model::make_quantity(value, rest.substr(unit));
    if (!quantity || quantity->measure != Measure::resistance)
        return std::nullopt;
    return quantity;
}

std::optional<Quantity> voltage_of(const std::optional<model::Limit>& limit) {
    if (!limit || !limit->most || limit->most->measure != Measure::voltage)
        return std::nullopt;
    return limit->most;
}

std::optional<Quantity> limit_of(const model::Kind& kind, const model::Verb& verb,
                                 const model::Action& action) {
    if (auto own = voltage_of(action.limit))
        return own;
    if (auto usual = voltage_of(verb.limit))
        return usual;
    for (const model::Verb& next : kind.verbs) {
        auto proved = model::contains(next.from, verb.to) ? voltage_of(next.limit) : std::nullopt;
        if (proved)
            return proved;
    }
    return std::nullopt;
}

} // namespace

std::vector<Discharge> discharges(const Walk& walk) {
    std::vector<Discharge> all;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act)
            continue;
        const model::Kind& kind = walk.model.kind_of(event.act->item);
        const model::Verb& verb = kind.verbs[event.act->verb];
        const model::Action& action = *walk.action(event);
        if (!verb.decays || action.derived)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        all.push_back({at, event.act->item, resistance(*action.means),
                       model::described(item, Measure::capacitance),
                       model::described(item, Measure::voltage), limit_of(kind, verb, action)});
    }
    return all;
}

std::vector<std::string> missing(const Discharge& discharge) {
    std::vector<std::string> words;
    if (!discharge.through)
        words.emplace_back("the resistance");
    if (!discharge.capacitance)
        words.emplace_back("its capacitance");
    if (!discharge.voltage)
        words.emplace_back("its voltage");
    if (!discharge.limit)
        words.emplace_back("the voltage to reach");
    return words;
}

std::optional<double> time_for(const Discharge& discharge) {
    if (!missing(discharge).empty())
        return std::nullopt;
    return model::discharge_time(discharge.through->base, discharge.capacitance->base,
                                 discharge.voltage->base, discharge.limit->base);
}

} // namespace matchmark::check
