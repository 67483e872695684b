// What a reader must know before the first step: signs, what to wear, what is stored in the
// equipment, and what the work voids.
#include "plan/reader/safety.hpp"

#include "model/stored_energy.hpp"
#include "plan/reader/words.hpp"

#include <algorithm>
#include <optional>

namespace matchmark::plan {

using guide::Document;
using guide::RunKind;
using language::capital;
using language::fill;
using language::fill_text;
using language::own;
using language::said;
using language::said_list;
using language::text;
using language::words_of;
using model::Model;
using model::Procedure;
using model::VariantMask;

namespace {

void add_sign(const ReaderWords& in, const std::string& name, Document& document) {
    const bool known = std::any_of(document.signs.begin(), document.signs.end(),
                                   [&](const guide::Sign& sign) { return sign.name == name; });
    if (name.empty() || known)
        return;
    for (const model::Sign& sign : in.model.signs) {
        if (sign.name == name)
            document.signs.push_back({sign.name, own(in.language, "sign " + sign.name, sign.title),
                                      sign.form, sign.outline});
    }
}

void tell_gear(const ReaderWords& in, const std::vector<std::uint32_t>& hazards,
               Document& document) {
    const Model& model = in.model;
    for (const model::Gear& gear : model.gear) {
        std::vector<std::string> against;
        for (const std::uint32_t index : hazards) {
            const model::Hazard& hazard = model.hazards[index];
            if (std::find(hazard.wear.begin(), hazard.wear.end(), gear.name) != hazard.wear.end())
                against.push_back(own(in.language, "hazard " + hazard.name, hazard.title));
        }
        if (against.empty())
            continue;
        guide::Provision worn;
        worn.words = capital(in.language, own(in.language, "gear " + gear.name, gear.title));
        worn.purpose = fill_text(text(in.language, "against: {hazards}"),
                                 {{"hazards", said_list(in.language, against)}});
        worn.sign = gear.sign;
        document.protection.push_back(std::move(worn));
        add_sign(in, gear.sign, document);
    }
}

void tell_energies(const ReaderWords& in, VariantMask covered, Document& document) {
    const Model& model = in.model;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const model::Item& item = model.items[i];
        const auto energy = model::stored_energy_shown(item);
        if (!energy || (item.variants & covered) == 0)
            continue;
        const model::ItemId id{i};
        guide::Words words =
            fill(item.count > 1
                     ? text(in.language, "{the items} each hold {energy} when charged in full.")
                     : text(in.language, "{the items} holds {energy} when charged in full."),
                 {{"the items", words_of(said(in.language, model, id))},
                  {"items", words_of(said(in.language, model, id, false))},
                  {"energy", words_of(said(in.language, *energy), RunKind::value)}});
        words.front().text = capital(in.language, words.front().text);
        document.energies.push_back(std::move(words));
    }
}

// "dust-tight; holds out water ...": what the parts of its code mean.
std::string meaning(const ReaderWords& in, const std::string& code) {
    std::string words;
    for (const model::RatingPart& part : in.model.rating_parts) {
        bool applies = part.code.size() <= code.size();
        for (std::size_t i = 0; applies && i < part.code.size(); ++i)
            applies = part.code[i] == 'X' || part.code[i] == code[i];
        if (applies)
            words +=
                (words.empty() ? "" : "; ") + own(in.language, "rating " + part.code, part.title);
    }
    return words;
}

bool parts(const Model& model, const model::Action& action,
           const std::vector<model::ItemId>& ties) {
    if (action.sort != model::ActionSort::verb)
        return false;
    return std::any_of(
        action.targets.begin(), action.targets.end(), [&](const model::Target& target) {
            const model::Kind& kind = model.kind_of(target.ref.item);
            return std::find(ties.begin(), ties.end(), target.ref.item) != ties.end() &&
                   !model::contains(kind.binds, kind.verbs[target.verb].to);
        });
}

// The numbers that the document gives to the procedure's steps, in order; 0 where it leaves one
// out.
std::vector<unsigned> numbers_of(const Procedure& procedure, VariantMask covered) {
    std::vector<unsigned> numbers;
    unsigned number = 0;
    for (const model::Step& step : procedure.steps)
        numbers.push_back((step.variants & covered) == 0 ? 0 : ++number);
    return numbers;
}

void tell_ratings(const ReaderWords& in, const Procedure& procedure, VariantMask covered,
                  Document& document) {
    const Model& model = in.model;
    const std::vector<unsigned> numbers = numbers_of(procedure, covered);
    for (std::uint32_t index = 0; index < model.functions.size(); ++index) {
        const model::Function& function = model.functions[index];
        if (!function.is_rating)
            continue;
        unsigned parted = 0;
        unsigned proved = 0;
        for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
            const model::Step& step = procedure.steps[i];
            const bool opens =
                std::any_of(step.actions.begin(), step.actions.end(), [&](const auto& action) {
                    return parts(model, action, function.through);
                });
            const bool proves =
                std::any_of(step.proves.begin(), step.proves.end(), [&](const model::Proof& proof) {
                    return proof.function.known() && proof.function.value == index;
                });
            parted = parted == 0 && opens ? numbers[i] : parted;
            proved = proves ? numbers[i] : proved;
        }
        if (parted == 0)
            continue;
        const std::string means = meaning(in, function.name);
        document.ratings.push_back(fill(
            proved != 0 ? text(in.language, "{rating}{meaning}: from step {parted} on it does not "
                                            "hold, until the seals are back and step {proved} has "
                                            "proved it.")
                        : text(in.language, "{rating}{meaning}: from step {parted} on it does not "
                                            "hold. The equipment goes back without it."),
            {{"rating", words_of(function.name, RunKind::value)},
             {"meaning", words_of(means.empty() ? "" : " (" + means + ")")},
             {"parted", words_of(std::to_string(parted))},
             {"proved", words_of(std::to_string(proved))}}));
    }
}

} // namespace

void tell_safety(const ReaderWords& in, const Procedure& procedure, VariantMask covered,
                 const std::vector<std::uint32_t>& hazards, Document& document) {
    for (const std::uint32_t index : hazards)
        add_sign(in, in.model.hazards[index].sign, document);
    tell_gear(in, hazards, document);
    tell_energies(in, covered, document);
    tell_ratings(in, procedure, covered, document);
}

} // namespace matchmark::plan
