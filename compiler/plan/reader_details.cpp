// What stands below an action's sentence: an order of tightening, a time worked out, what to look
// at before something goes back.
#include "plan/reader_details.hpp"

#include "model/describe.hpp"
#include "model/stored_energy.hpp"
#include "model/tightening_order.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace matchmark::plan {

using guide::RunKind;
using guide::Words;
using model::Action;
using model::ActionSort;
using model::Item;
using model::Measure;
using model::Model;
using model::Quantity;
using model::Target;
using model::Verb;

namespace {

const Verb& verb_of(const Model& model, const Target& target) {
    return model.kind_of(target.ref.item).verbs[target.verb];
}

// Rounded so that no waiting time is shown too short.
double rounded_up(double value) {
    if (value <= 0)
        return 0;
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(value)));
    return std::ceil(value * scale - 1e-9) / scale;
}

double two_figures(double value) {
    if (value <= 0)
        return 0;
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(value)));
    return std::round(value * scale) / scale;
}

// "10 kohm", as written after `through`.
std::optional<Quantity> resistance_in(const std::string& means) {
    const auto space = means.find(' ');
    if (space == std::string::npos)
        return std::nullopt;
    char* end = nullptr;
    const double value = std::strtod(means.c_str(), &end);
    const auto quantity = model::make_quantity(value, std::string_view(means).substr(space + 1));
    return quantity && quantity->measure == Measure::resistance ? quantity : std::nullopt;
}

// The voltage at which the charge is taken as gone: the action's, the verb's, or that which a later
// verb of the kind proves.
std::optional<Quantity> end_voltage(const Model& model, const Action& action,
                                    const Target& target) {
    const model::Kind& kind = model.kind_of(target.ref.item);
    const Verb& verb = kind.verbs[target.verb];
    const auto most = [](const std::optional<model::Limit>& limit) -> std::optional<Quantity> {
        const bool voltage = limit && limit->most && limit->most->measure == Measure::voltage;
        return voltage ? limit->most : std::nullopt;
    };
    if (auto own = most(action.limit))
        return own;
    if (auto usual = most(verb.limit))
        return usual;
    for (const Verb& later : kind.verbs) {
        if (model::contains(later.from, verb.to) && most(later.limit))
            return most(later.limit);
    }
    return std::nullopt;
}

struct Decay {
    Quantity from;
    Quantity to;
    double seconds = 0;
};

std::optional<Decay> decay_of(const Model& model, const Action& action) {
    if (action.sort != ActionSort::verb || action.targets.empty() ||
        !verb_of(model, action.targets.front()).decays)
        return std::nullopt;
    const Item& item = model.item(action.targets.front().ref.item);
    const auto resistance = resistance_in(action.means);
    const auto capacitance = model::described(item, Measure::capacitance);
    const auto voltage = model::described(item, Measure::voltage);
    const auto end = end_voltage(model, action, action.targets.front());
    if (!resistance || !capacitance || !voltage || !end)
        return std::nullopt;
    return Decay{
        *voltage, *end,
        model::discharge_time(resistance->base, capacitance->base, voltage->base, end->base)};
}

void tell_decay(const Model& model, const Action& action, std::vector<Words>& details) {
    const auto decay = decay_of(model, action);
    if (!decay)
        return;
    const auto time = model::make_quantity(rounded_up(decay->seconds), "s");
    details.push_back(
        {{RunKind::words, "Wait at least "},
         {RunKind::value, model::for_reader(*time)},
         {RunKind::words, fmt::format(": from {} to {}.", model::for_reader(decay->from),
                                      model::for_reader(decay->to))}});
}

// Does the verb bring a fastener to where it binds, or from there?
bool tightens(const Model& model, const Target& target) {
    const model::Kind& kind = model.kind_of(target.ref.item);
    return model.item(target.ref.item).role == model::Role::fastener &&
           verb_of(model, target).to == kind.set_first.front();
}

void tell_passes(const model::Tightening& tightening, std::vector<Words>& details) {
    if (tightening.passes <= 1 || !tightening.torque)
        return;
    Words words;
    int pass = 0;
    for (const double part : model::pass_parts(tightening.passes)) {
        const double value =
            part < 1 ? two_figures(tightening.torque->value * part) : tightening.torque->value;
        const auto torque = model::make_quantity(value, tightening.torque->unit);
        words.push_back(
            {RunKind::words, fmt::format("{} {}: ", pass == 0 ? "Pass" : ", pass", pass + 1)});
        words.push_back({RunKind::value, model::for_reader(*torque)});
        ++pass;
    }
    words.push_back({RunKind::words, "."});
    details.push_back(std::move(words));
}

// A whole group has an order; some members of it are done as they are named.
void tell_order(const Model& model, const Action& action, std::vector<Words>& details) {
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        const bool home = tightens(model, target);
        model::Tightening tightening = action.tightening;
        if (tightening.pattern.empty() && item.tightening)
            tightening = *item.tightening;
        if (tightening.pattern.empty() || item.count < 3 || !target.ref.members.empty() ||
            item.role != model::Role::fastener)
            continue;
        auto order = model::tightening_order(
            tightening.pattern,
            item.positions ? item.positions->points : std::vector<model::Point>{}, item.count);
        // What is drawn up from the middle outwards is let go from the outside in.
        if (!home)
            std::reverse(order.begin(), order.end());
        std::string numbers;
        for (const std::uint16_t member : order)
            numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", member);
        details.push_back({{RunKind::words, home ? "In this order: " : "Slacken in this order: "},
                           {RunKind::value, numbers},
                           {RunKind::words, "."}});
        if (home)
            tell_passes(tightening, details);
    }
}

void tell_preload(const Model& model, const Action& action, std::vector<Words>& details) {
    for (const Target& target : action.targets) {
        const auto& tightening = model.item(target.ref.item).tightening;
        if (!tightening || !tightening->preload || !tightens(model, target))
            continue;
        details.push_back({{RunKind::words, "That gives a preload of "},
                           {RunKind::value, model::for_reader(*tightening->preload)},
                           {RunKind::words, "."}});
    }
}

// A longer screw in this hole does harm: whoever puts it back must know.
void tell_depth(const Model& model, const Action& action, std::vector<Words>& details) {
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        if (!item.depth || !tightens(model, target))
            continue;
        const std::string met =
            item.above.known() ? " It would reach " + model::for_reader(model, item.above) + "."
                               : std::string();
        details.push_back({{RunKind::words, "No screw longer than "},
                           {RunKind::value, model::for_reader(*item.depth)},
                           {RunKind::words, " goes in here." + met}});
    }
}

void tell_used_again(const Model& model, const Action& action, std::vector<Words>& details) {
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        const model::Kind& kind = model.kind(item.kind);
        const Verb& verb = verb_of(model, target);
        const bool comes_back =
            kind.set_of[verb.to] == 0 &&
            (model::contains(kind.present, verb.to) || model::is_tie(item.role));
        if (item.used_again_if.empty() || item.one_use || !comes_back ||
            !model::leads_home(kind, verb))
            continue;
        const bool several = item.count > 1 && target.ref.members.size() != 1;
        details.push_back(
            {{RunKind::words, fmt::format("Use {} again only if {}. Otherwise renew {}.",
                                          model::for_reader(model, target.ref), item.used_again_if,
                                          several ? "them" : "it")}});
    }
}

std::string limit_words(const std::optional<model::Limit>& limit) {
    return limit ? ", " + model::for_reader(*limit) : std::string();
}

} // namespace

std::optional<double> decay_time(const Model& model, const Action& action) {
    const auto decay = decay_of(model, action);
    return decay ? std::optional(decay->seconds) : std::nullopt;
}

std::vector<Words> details_of(const ReaderWords& words, const Action& action, bool going_back) {
    std::vector<Words> details;
    if (action.sort != ActionSort::verb)
        return details;
    if (going_back)
        tell_used_again(words.model, action, details);
    tell_depth(words.model, action, details);
    tell_order(words.model, action, details);
    tell_preload(words.model, action, details);
    tell_decay(words.model, action, details);
    return details;
}

std::string record_of(const ReaderWords& words, const Action& action) {
    if (action.targets.empty())
        return {};
    const Item& item = words.model.item(action.targets.front().ref.item);
    const std::string thing = model::for_reader(words.model, action.targets.front().ref);
    if (action.sort == ActionSort::measure) {
        std::optional<model::Limit> limit = action.limit;
        for (const model::WearLimit& declared : item.limits) {
            if (!limit && declared.name == action.aspect)
                limit = declared.limit;
        }
        return spaced(action.aspect) + " of " + thing + limit_words(limit);
    }
    if (action.sort != ActionSort::verb)
        return {};
    const auto& usual = verb_of(words.model, action.targets.front()).limit;
    const auto limit = action.limit ? action.limit : usual;
    if (!limit || (!limit->least && !limit->most))
        return {};
    const Measure measure = (limit->least ? *limit->least : *limit->most).measure;
    if (measure == Measure::ratio || measure == Measure::number)
        return thing + limit_words(limit);
    std::string what(model::describe(measure)); // "a voltage"
    what.erase(0, what.find(' ') + 1);
    return what + " of " + thing + limit_words(limit);
}

} // namespace matchmark::plan
