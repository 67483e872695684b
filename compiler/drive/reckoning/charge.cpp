// Capacitors and cells, by the formulas of model/stored_energy.hpp.
#include "drive/figures.hpp"
#include "drive/reckoning.hpp"
#include "model/describe.hpp"
#include "model/stored_energy.hpp"

#include <fmt/core.h>

namespace matchmark::drive {

namespace {

using model::Measure;

constexpr const char* textbook = "textbook physics";

// In words, as they were given.
std::string told(const std::vector<model::Quantity>& given) {
    std::vector<std::string> words;
    for (const model::Quantity& quantity : given)
        words.push_back(model::for_reader(quantity));
    return model::list(words);
}

// What is left out, or given and not asked for; empty when all is there.
std::string wrong_measures(const std::vector<model::Quantity>& given,
                           const std::vector<Measure>& asked) {
    for (const Measure measure : asked) {
        const model::Quantity* found = of_measure(given, measure);
        if (found == nullptr)
            return fmt::format("{} is missing", model::describe(measure));
        if (found->base <= 0)
            return fmt::format("{} of 0 leaves nothing to work out", model::describe(measure));
    }
    for (const model::Quantity& quantity : given) {
        bool wanted = false;
        for (const Measure measure : asked)
            wanted = wanted || quantity.measure == measure;
        if (!wanted)
            return fmt::format("`{}` is {}, which is not asked for", model::to_text(quantity),
                               model::describe(quantity.measure));
    }
    return {};
}

std::optional<double> energy_of(const std::vector<model::Quantity>& given) {
    model::Item item;
    item.spec.push_back(model::spec_phrase({{}, {}, given}));
    return model::stored_energy(item);
}

} // namespace

Reckoned reckon_discharge(const ReckonOptions& options) {
    auto read = read_all_given(options.words);
    if (auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    const auto given = std::get<std::vector<model::Quantity>>(read);
    if (const std::string wrong =
            wrong_measures(given, {Measure::capacitance, Measure::voltage, Measure::resistance});
        !wrong.empty())
        return wrong;
    if (options.to.empty())
        return "say down to which voltage: --to \"60 V\"";
    auto limit = read_given(options.to, Measure::voltage, "--to");
    if (auto* wrong = std::get_if<std::string>(&limit))
        return *wrong;
    const model::Quantity to = std::get<model::Quantity>(limit);
    const double voltage = of_measure(given, Measure::voltage)->base;
    const double resistance = of_measure(given, Measure::resistance)->base;
    const double capacitance = of_measure(given, Measure::capacitance)->base;
    if (to.base <= 0)
        return "a charge falls to 0 V in no time that could be told: give a voltage above 0";
    if (to.base >= voltage)
        return fmt::format("it starts at {} and is at {} from the beginning",
                           model::for_reader(*of_measure(given, Measure::voltage)),
                           model::for_reader(to));
    Reckoning done;
    done.about = fmt::format("{}, down to {}", told(given), model::for_reader(to));
    done.caution = "Prove it dead with a meter all the same: the maker's instructions come first.";
    done.figures.push_back(
        figure("time",
               shown_in(model::discharge_time(resistance, capacitance, voltage, to.base),
                        {"s", "min", "h"}),
               "t = R C ln(V0/V)", textbook));
    done.figures.push_back(
        figure("energy", shown_in(*energy_of(given), {"J", "kJ"}), "E = C V0^2 / 2", textbook));
    done.figures.push_back(figure("current at first",
                                  shown_in(1e3 * voltage / resistance, {"mA", "A"}), "I = V0 / R",
                                  "Ohm's law"));
    done.figures.push_back(figure("power at first",
                                  shown_in(1e3 * voltage * voltage / resistance, {"mW", "W", "kW"}),
                                  "P = V0^2 / R, in the resistor", "Joule's law"));
    return done;
}

Reckoned reckon_energy(const ReckonOptions& options) {
    auto read = read_all_given(options.words);
    if (auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    const auto given = std::get<std::vector<model::Quantity>>(read);
    const bool has_capacitance = of_measure(given, Measure::capacitance) != nullptr;
    if (!has_capacitance && of_measure(given, Measure::charge) == nullptr)
        return "give a charge or a capacitance, and a voltage: \"3000 mAh\" \"3.85 V\"";
    if (const std::string wrong = wrong_measures(
            given, {has_capacitance ? Measure::capacitance : Measure::charge, Measure::voltage});
        !wrong.empty())
        return wrong;
    Reckoning done;
    done.about = told(given);
    const double joules = *energy_of(given);
    const std::string formula = has_capacitance ? "E = C V^2 / 2" : "E = Q V";
    if (!has_capacitance)
        done.figures.push_back(
            figure("energy", shown_in(joules / 3600, {"Wh", "kWh"}), formula, textbook));
    done.figures.push_back(figure(has_capacitance ? "energy" : "in joules",
                                  shown_in(joules, {"J", "kJ"}),
                                  has_capacitance ? formula : "1 Wh = 3600 J",
                                  has_capacitance ? textbook : "SI Brochure, table 8"));
    return done;
}

} // namespace matchmark::drive
