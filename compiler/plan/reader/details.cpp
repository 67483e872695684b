// What stands below an action's sentence: an order of tightening, a time worked out, what to look
// at before something goes back.
#include "plan/reader/details.hpp"

#include "language/punctuation.hpp"
#include "model/describe.hpp"
#include "model/discharge.hpp"
#include "model/tightening_order.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::plan {

using guide::RunKind;
using guide::Words;
using language::append;
using language::fill;
using language::fill_text;
using language::own;
using language::said;
using language::text;
using language::words_of;
using model::Action;
using model::ActionSort;
using model::Item;
using model::Measure;
using model::Model;
using model::Target;
using model::Verb;

namespace {

Words value(std::string words) { return words_of(std::move(words), RunKind::value); }

const Verb& verb_of(const Model& model, const Target& target) {
    return model.kind_of(target.ref.item).verbs[target.verb];
}

double two_figures(double value) {
    if (value <= 0)
        return 0;
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(value)));
    return std::round(value * scale) / scale;
}

void tell_decay(const ReaderWords& in, const Action& action, std::vector<Words>& details) {
    if (action.sort != ActionSort::verb || action.targets.empty() ||
        !verb_of(in.model, action.targets.front()).decays)
        return;
    const auto facts = model::discharge_facts(in.model, action, action.targets.front());
    const auto seconds = model::discharge_time(facts);
    if (!seconds)
        return;
    // Two times are one too many: what the line asks for is longer, or `short-discharge` tells.
    if (action.duration)
        return;
    const auto time = model::make_quantity(model::told_time(*seconds), "s");
    details.push_back(fill(text(in.language, "Wait at least {time}: from {first} to {last}."),
                           {{"time", value(said(in.language, *time))},
                            {"first", words_of(said(in.language, *facts.voltage))},
                            {"last", words_of(said(in.language, *facts.limit))}}));
}

// Does the verb tighten what takes a torque?
bool tightens(const Model& model, const Target& target) {
    const model::Kind& kind = model.kind_of(target.ref.item);
    return model::takes_torque(model.item(target.ref.item).role) &&
           verb_of(model, target).to == kind.set_first.front();
}

void tell_passes(const ReaderWords& in, const model::Tightening& tightening,
                 std::vector<Words>& details) {
    if (tightening.passes <= 1 || !tightening.torque)
        return;
    Words words;
    int pass = 0;
    for (const double part : model::pass_parts(tightening.passes)) {
        const double torque =
            part < 1 ? two_figures(tightening.torque->value * part) : tightening.torque->value;
        const auto quantity = model::make_quantity(torque, tightening.torque->unit);
        append(words, fill(pass == 0 ? text(in.language, "Pass {number}: {torque}")
                                     : text(in.language, ", pass {number}: {torque}"),
                           {{"number", words_of(std::to_string(pass + 1))},
                            {"torque", value(said(in.language, *quantity))}}));
        ++pass;
    }
    append(words, words_of("."));
    details.push_back(std::move(words));
}

// Numbers that stand on no drawing are counted by the reader.
std::string order_sentence(const language::Language& in, bool home, bool placed) {
    if (placed)
        return home ? text(in, "In this order: {numbers}.")
                    : text(in, "Slacken in this order: {numbers}.");
    return home ? text(in, "In this order, counted round from any one: {numbers}.")
                : text(in, "Slacken in this order, counted round from any one: {numbers}.");
}

// A whole group has an order; some members of it are done as they are named.
void tell_order(const ReaderWords& in, const Action& action, std::vector<Words>& details) {
    const Model& model = in.model;
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        const bool home = tightens(model, target);
        model::Tightening tightening = *action.tightening;
        if (tightening.pattern.empty() && item.tightening)
            tightening = *item.tightening;
        if (tightening.pattern.empty() || item.count < 3 || !target.ref.members.empty() ||
            !model::takes_torque(item.role))
            continue;
        auto order = model::tightening_order(tightening.pattern,
                                             item.rare->positions ? item.rare->positions->points
                                                                  : std::vector<model::Point>{},
                                             item.count);
        // What is drawn up from the middle outwards is let go from the outside in.
        if (!home)
            std::reverse(order.begin(), order.end());
        std::string numbers;
        for (const std::uint16_t member : order)
            numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", member);
        Words words;
        if (action.targets.size() > 1)
            words = words_of(
                language::capital(in.language, said(in.language, model, target.ref.item, false)) +
                language::colon(in.language));
        append(words,
               fill(order_sentence(in.language, home, static_cast<bool>(item.rare->positions)),
                    {{"numbers", value(numbers)}}));
        details.push_back(std::move(words));
        if (home)
            tell_passes(in, tightening, details);
    }
}

void tell_preload(const ReaderWords& in, const Action& action, std::vector<Words>& details) {
    const Model& model = in.model;
    for (const Target& target : action.targets) {
        const auto& tightening = model.item(target.ref.item).tightening;
        if (!tightening || !tightening->preload || !tightens(model, target))
            continue;
        details.push_back(fill(text(in.language, "That gives a preload of {force}."),
                               {{"force", value(said(in.language, *tightening->preload))}}));
    }
}

// A longer screw in this hole does harm: whoever puts it back must know.
void tell_depth(const ReaderWords& in, const Action& action, std::vector<Words>& details) {
    const Model& model = in.model;
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        if (!item.rare->depth || !tightens(model, target))
            continue;
        Words words = fill(text(in.language, "No screw longer than {length} goes in here."),
                           {{"length", value(said(in.language, *item.rare->depth))}});
        if (item.above.known()) {
            append(words, fill(text(in.language, " It would reach {the item}."),
                               {{"the item", words_of(said(in.language, model, item.above))},
                                {"item", words_of(said(in.language, model, item.above, false))}}));
        }
        details.push_back(std::move(words));
    }
}

void tell_used_again(const ReaderWords& in, const Action& action, std::vector<Words>& details) {
    const Model& model = in.model;
    for (const Target& target : action.targets) {
        const Item& item = model.item(target.ref.item);
        const model::Kind& kind = model.kind(item.kind);
        const Verb& verb = verb_of(model, target);
        const bool comes_back =
            kind.set_of[verb.to] == 0 &&
            (model::contains(kind.present, verb.to) || model::is_tie(item.role));
        if (item.rare->used_again_if->empty() || item.one_use || !comes_back ||
            !model::leads_home(kind, verb))
            continue;
        const bool many = item.count > 1 && target.ref.members.size() != 1;
        const std::string reason = own(in.language, "used-again", *item.rare->used_again_if);
        details.push_back(
            fill(many ? text(in.language, "Use {the items} again only if {reason}. Otherwise renew "
                                          "them.")
                      : text(in.language, "Use {the items} again only if {reason}. Otherwise renew "
                                          "it."),
                 {{"the items", words_of(said(in.language, model, target.ref))},
                  {"items", words_of(said(in.language, model, target.ref, false))},
                  {"reason", words_of(reason)}}));
    }
}

std::string limit_words(const ReaderWords& in, const std::optional<model::Limit>& limit) {
    return limit ? ", " + said(in.language, *limit) : std::string();
}

// "voltage of the cell"
std::string measured_words(const ReaderWords& in, const std::string& what,
                           const model::ItemRef& thing) {
    return fill_text(text(in.language, "{what} of {the item}"),
                     {{"what", what},
                      {"the item", said(in.language, in.model, thing)},
                      {"item", said(in.language, in.model, thing, false)}});
}

} // namespace

std::vector<Words> details_of(const ReaderWords& words, const Action& action, bool going_back) {
    std::vector<Words> details;
    if (action.sort != ActionSort::verb)
        return details;
    if (going_back)
        tell_used_again(words, action, details);
    tell_depth(words, action, details);
    tell_order(words, action, details);
    tell_preload(words, action, details);
    tell_decay(words, action, details);
    for (Words& detail : details) {
        detail.front().text = language::capital(words.language, detail.front().text);
    }
    return details;
}

std::string record_of(const ReaderWords& words, const Action& action) {
    if (action.targets.empty())
        return {};
    const model::ItemRef& thing = action.targets.front().ref;
    const Item& item = words.model.item(thing.item);
    if (action.sort == ActionSort::measure) {
        std::optional<model::Limit> limit = action.limit;
        for (const model::WearLimit& declared : item.rare->limits) {
            if (!limit && declared.name == *action.aspect)
                limit = declared.limit;
        }
        const std::string what =
            own(words.language, "word " + *action.aspect, spaced(*action.aspect));
        return measured_words(words, what, thing) + limit_words(words, limit);
    }
    if (action.sort != ActionSort::verb)
        return {};
    const auto& usual = verb_of(words.model, action.targets.front()).limit;
    const auto limit = action.limit ? std::optional<model::Limit>(*action.limit) : usual;
    if (!limit || (!limit->least && !limit->most))
        return {};
    const Measure measure = (limit->least ? *limit->least : *limit->most).measure;
    if (measure == Measure::ratio || measure == Measure::number)
        return said(words.language, words.model, thing) + limit_words(words, limit);
    std::string what(model::describe(measure)); // "a voltage"
    what.erase(0, what.find(' ') + 1);
    return measured_words(words, text(words.language, what), thing) + limit_words(words, limit);
}

} // namespace matchmark::plan
