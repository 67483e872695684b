// Looks up what a discharge is worked out from.
#include "model/discharge.hpp"

#include "model/stored_energy.hpp"

#include <cmath>
#include <cstdlib>

namespace matchmark::model {

namespace {

// "10 kohm", as the line has it.
std::optional<Quantity> resistance_in(const std::string& means) {
    const char* begin = means.c_str();
    char* end = nullptr;
    const double value = std::strtod(begin, &end);
    if (end == begin)
        return std::nullopt;
    const std::string rest(end);
    const std::size_t unit = rest.find_first_not_of(' ');
    if (unit == std::string::npos)
        return std::nullopt;
    auto quantity = make_quantity(value, rest.substr(unit));
    if (!quantity || quantity->measure != Measure::resistance || quantity->base <= 0)
        return std::nullopt;
    return quantity;
}

std::optional<Quantity> voltage_of(const std::optional<Limit>& limit) {
    if (!limit || !limit->most || limit->most->measure != Measure::voltage)
        return std::nullopt;
    return limit->most;
}

std::optional<Quantity> limit_of(const Kind& kind, const Verb& verb, const Action& action) {
    if (auto own = voltage_of(action.limit))
        return own;
    if (auto usual = voltage_of(verb.limit))
        return usual;
    for (const Verb& next : kind.verbs) {
        auto proved = contains(next.from, verb.to) ? voltage_of(next.limit) : std::nullopt;
        if (proved)
            return proved;
    }
    return std::nullopt;
}

} // namespace

DischargeFacts discharge_facts(const Model& model, const Action& action, const Target& target) {
    const Item& item = model.item(target.ref.item);
    const Kind& kind = model.kind(item.kind);
    return {resistance_in(*action.means), described(item, Measure::capacitance),
            described(item, Measure::voltage), limit_of(kind, kind.verbs[target.verb], action)};
}

std::optional<double> discharge_time(const DischargeFacts& facts) {
    if (!facts.through || !facts.capacitance || !facts.voltage || !facts.limit)
        return std::nullopt;
    return discharge_time(facts.through->base, facts.capacitance->base, facts.voltage->base,
                          facts.limit->base);
}

double told_time(double seconds) {
    constexpr double noise = 1e-9; // of a product that is a round number but for its last bit
    if (seconds <= 0)
        return 0;
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(seconds)));
    return std::ceil(seconds * scale - noise) / scale;
}

} // namespace matchmark::model
