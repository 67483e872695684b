// What kinds, hazards, gear and signs say to a reader, whoever declares them.
#include "language/gathering.hpp"
#include "language/spoken.hpp"

#include <algorithm>

namespace matchmark::language {

void Gathering::add_kind(const model::Model& model, const model::Kind& kind) {
    const std::string where = "kind " + kind.name;
    const bool ties = model::is_tie(kind.role);
    if (ties || !kind.messages.empty()) {
        add({where, kind.title.empty() ? kind.name : kind.title, "",
             "a kind of part, as the subject of a message or in a table", kind.span});
    }
    if (!kind.used_again_if.empty()) {
        add({"used-again", kind.used_again_if, "",
             "on what condition it is used again: “only if ...”", kind.span});
    }
    if (!kind.waste.empty()) {
        add({"waste " + kind.waste, spaced(kind.waste), "", "a class of waste", kind.span});
    }
    add_prose(kind.messages, where, "of a kind of part");
    for (const model::HazardUse& use : kind.hazards) {
        add_hazard(model, model.hazards[use.hazard.value]);
    }
}

void Gathering::add_hazard(const model::Model& model, const model::Hazard& hazard) {
    const std::string where = "hazard " + hazard.name;
    add({where, hazard.title, "", "a hazard, as the subject of a message", hazard.span});
    add_prose(hazard.messages, where, "of a hazard");
    for (const model::Sign& sign : model.signs) {
        const bool of_gear =
            std::any_of(model.gear.begin(), model.gear.end(), [&](const model::Gear& gear) {
                return gear.sign == sign.name && std::find(hazard.wear.begin(), hazard.wear.end(),
                                                           gear.name) != hazard.wear.end();
            });
        if (sign.name == hazard.sign || of_gear) {
            add({"sign " + sign.name, sign.title, "", "the words of a sign", sign.span});
        }
    }
    for (const model::Gear& gear : model.gear) {
        if (std::find(hazard.wear.begin(), hazard.wear.end(), gear.name) != hazard.wear.end()) {
            add({"gear " + gear.name, gear.title, "", "protective gear", gear.span});
        }
    }
}

void Gathering::add_rating(const model::Model& model, const std::string& code) {
    for (const model::RatingPart& part : model.rating_parts) {
        bool applies = part.code.size() <= code.size();
        for (std::size_t i = 0; applies && i < part.code.size(); ++i) {
            applies = part.code[i] == 'X' || part.code[i] == code[i];
        }
        if (applies) {
            add({"rating " + part.code, part.title, "", "what a part of a rating's code means",
                 part.span});
        }
    }
}

std::vector<Text> library_texts(const SourceMap& sources, const model::Model& model) {
    Gathering to(sources);
    to.add({"step before", "before", "", "what is done before the device is opened", {}});
    for (const model::Kind& kind : model.kinds) {
        for (const model::Verb& verb : kind.verbs) {
            to.add_verb(verb.name, verb.span);
        }
    }
    for (const model::Kind& kind : model.kinds) {
        for (const std::string& state : kind.states) {
            to.add(
                {"state " + state, spaced(state), "", "a state, after the item's name", kind.span});
        }
    }
    for (const model::Hazard& hazard : model.hazards) {
        to.add_hazard(model, hazard);
    }
    for (const model::RatingPart& part : model.rating_parts) {
        to.add_rating(model, part.code);
    }
    for (const model::Kind& kind : model.kinds) {
        to.add_kind(model, kind);
    }
    std::vector<Text> texts = to.take();
    std::erase_if(texts, [](const Text& text) { return !text.built_in; });
    return texts;
}

} // namespace matchmark::language
