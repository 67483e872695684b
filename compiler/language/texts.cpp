// Every text of a guide and its device that a reader may meet, with where it is found again.
#include "language/texts.hpp"

#include "language/gathering.hpp"
#include "language/spoken.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::language {

using model::Action;
using model::ActionSort;
using model::ItemId;
using model::Model;
using model::Procedure;

const char* prose_word(model::ProseKind kind) {
    switch (kind) {
    case model::ProseKind::text:
        return "text";
    case model::ProseKind::note:
        return "note";
    case model::ProseKind::why:
        return "why";
    case model::ProseKind::notice:
        return "notice";
    case model::ProseKind::caution:
        return "caution";
    case model::ProseKind::warning:
        return "warning";
    case model::ProseKind::danger:
        return "danger";
    }
    return "text";
}

namespace {

// The names of the sources that stand in what is to be done otherwise.
std::vector<std::string> names_in(const Model& model, const std::vector<model::Resource>& resources,
                                  const std::string& written) {
    std::vector<std::string> names;
    std::string word;
    for (const char c : written + " ") {
        if (c != ' ' && c != ',') {
            word += c;
            continue;
        }
        const auto is_named = [&](const auto& thing) { return thing.name == word; };
        if (std::any_of(model.items.begin(), model.items.end(), is_named) ||
            std::any_of(resources.begin(), resources.end(), is_named)) {
            names.push_back(word);
        }
        word.clear();
    }
    return names;
}

void gather_action(Gathering& to, const Model& model, const Procedure& procedure,
                   const Action& action, const std::string& step) {
    if (action.sort == ActionSort::verb) {
        to.add_verb(action.verb, action.head);
    }
    if (action.sort == ActionSort::dispose) {
        to.add({"waste " + *action.aspect, spaced(*action.aspect), "", "a class of waste",
                action.line});
    }
    if (action.sort == ActionSort::measure) {
        to.add({"word " + *action.aspect, spaced(*action.aspect), "", "what is measured",
                action.line});
    }
    if (!action.means->empty() && action.means->find_first_of("0123456789") != 0) {
        to.add({"means " + step, *action.means, "", "through what it is done", action.line});
    }
    if (!action.otherwise->text.empty()) {
        to.add({"otherwise " + step, action.otherwise->text, "",
                "what to do otherwise; the names in it are replaced by what they name", action.line,
                names_in(model, procedure.resources, action.otherwise->text)});
    }
}

void gather_photos(Gathering& to, const std::vector<model::Photo>& photos,
                   const std::string& where) {
    for (const model::Photo& photo : photos) {
        to.add(
            {"picture " + where, photo.alternative_text, "", "what a picture shows", photo.span});
    }
}

void gather_step(Gathering& to, const Model& model, const Procedure& procedure,
                 const model::Step& step) {
    const std::string where = "step " + step.name;
    to.add(
        {where, step.title, "", step.is_test ? "title of a test" : "title of a step", step.head});
    if (step.title.empty() && !step.name.empty()) {
        to.add({where, spaced(step.name), "", "name of a step, as its title", step.head});
    }
    to.add_prose(step.prose, where, "of a step");
    gather_photos(to, step.photos, where);
    for (const Action& action : step.actions) {
        gather_action(to, model, procedure, action, where);
    }
    for (const model::Condition& condition : step.when) {
        const std::string& state = model.kind_of(condition.item.item).states[condition.state];
        to.add({"state " + state, spaced(state), "", "a state, after the item's name",
                condition.span});
    }
}

void gather_guide(Gathering& to, const Model& model, const Procedure& procedure) {
    const model::Guide& guide = model.guide(procedure.guide);
    const std::string where = "guide " + guide.name;
    to.add({where, guide.title.empty() ? spaced(guide.name) : guide.title, "", "title of the guide",
            guide.span});
    to.add_prose(guide.prose, where, "of the whole guide");
    gather_photos(to, guide.photos, where);
    if (!guide.trade.empty()) {
        to.add({"trade " + guide.trade, guide.trade, "", "a licensed trade", guide.span});
    }
    for (const model::Resource& resource : procedure.resources) {
        const bool tool = resource.sort == model::ResourceSort::tool;
        to.add({where + " " + resource.name,
                resource.text.empty() ? spaced(resource.name) : resource.text, "",
                tool ? "a tool; an article in brackets before it stands in sentences alone, after "
                       "“with”"
                     : "a spare or a supply",
                resource.span});
    }
    for (const Action& goal : guide.goals) {
        gather_action(to, model, procedure, goal, where);
    }
}

void gather_item(Gathering& to, const Model& model, ItemId id) {
    const model::Item& item = model.item(id);
    const ItemKey key = item_key(model, id);
    to.add({key.context, key.one, key.many,
            "an item; the article in brackets stands in sentences alone, as their object",
            item.span});
    to.add(
        {key.context + " told by", *item.told_by, "", "by what it is told from others", item.span});
    if (!item.rare->used_again_if->empty()) {
        to.add({"used-again", *item.rare->used_again_if, "",
                "on what condition it is used again: “only if ...”", item.span});
    }
    for (const std::string& aspect : item.rare->keep) {
        to.add({"word " + aspect, aspect, "", "what is kept as it was, and marked", item.span});
    }
    for (const model::WearLimit& limit : item.rare->limits) {
        to.add({"word " + limit.name, spaced(limit.name), "", "what is measured", limit.span});
    }
    if (item.role == model::Role::fastener) {
        for (const model::SpecPhrase& phrase : item.spec) {
            to.add_description(phrase->text, phrase.span);
        }
    }
    to.add_prose(item.messages, key.context, "of an item");
}

void gather_device(Gathering& to, const Model& model, model::VariantMask variants) {
    const model::Device& device = model.device;
    to.add({"device " + device.name, device.title.empty() ? device.name : device.title, "",
            "name of the equipment: a trade name stays as it is", device.span});
    to.add_prose(device.messages, "device " + device.name, "of the equipment");
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if ((model.items[i].variants & variants) != 0) {
            gather_item(to, model, ItemId{i});
        }
    }
    for (const model::ItemCaution& caution : model.cautions) {
        to.add_prose({caution.message}, "caution " + caution.name, "of an item");
    }
    for (const model::Function& function : model.functions) {
        if (!function.is_rating) {
            to.add({"function " + function.name,
                    function.title.empty() ? function.name : function.title, "",
                    "what the equipment does, and a test proves", function.span});
        }
    }
    for (const model::Face& face : model.device.faces) {
        to.add({"face " + face.name, spaced(face.name), "", "a side of the equipment", face.span});
    }
}

} // namespace

void Gathering::add(Text text) {
    if (text.one.empty() || !keys_.insert({text.context, text.one}).second) {
        return;
    }
    text.built_in = !text.span.known() || sources_.file(text.span.file).built_in;
    texts_.push_back(std::move(text));
}

void Gathering::add_prose(const std::vector<model::Prose>& prose, const std::string& where,
                          const std::string& of) {
    for (const model::Prose& one : prose) {
        const std::string word = prose_word(one.kind);
        const bool safety = one.kind >= model::ProseKind::notice;
        Text text{where + " " + word, one.markdown, "",
                  fmt::format("{} {}, Markdown", safety ? word + ", a safety message" : word, of),
                  one.span};
        text.is_safety = safety;
        add(std::move(text));
    }
}

void Gathering::add_verb(const std::string& verb, const Span& span) {
    add({"verb " + verb, verb_key(verb), "",
         "what is done: keep {the items}, or {items} without article, and {how}", span});
}

// Sizes, threads, codes and units are read alike in all languages.
void Gathering::add_description(const std::string& phrase, const Span& span) {
    const auto& units = model::unit_spellings();
    std::string word;
    bool has_word = false;
    for (const char c : phrase + " ") {
        const bool letter = (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) >= 0x80U);
        if (letter) {
            word += c;
            continue;
        }
        const bool unit = std::find(units.begin(), units.end(), word) != units.end();
        has_word = has_word || (word.size() >= 3 && !unit);
        word.clear();
    }
    if (has_word) {
        add({"description " + phrase, phrase, "", "a phrase that describes a fastener", span});
    }
}

std::vector<Text> texts_of(const SourceMap& sources, const Model& model,
                           const Procedure& procedure) {
    Gathering to(sources);
    gather_guide(to, model, procedure);
    for (const model::Step& step : procedure.steps) {
        gather_step(to, model, procedure, step);
    }
    gather_device(to, model, model.guide(procedure.guide).variants);
    for (const model::Item& item : model.items) {
        for (const model::Verb& verb : model.kind(item.kind).verbs) {
            to.add_verb(verb.name, verb.span);
        }
        to.add_kind(model, model.kind(item.kind));
    }
    for (const model::Function& function : model.functions) {
        if (function.is_rating) {
            to.add_rating(model, function.name);
        }
    }
    return to.take();
}

Message message_of(const SourceMap& sources, const Text& text) {
    Message message;
    message.context = text.context;
    message.one = text.one;
    message.many = text.many;
    message.forms.resize(text.many.empty() ? 1 : 2);
    message.explained.push_back(text.about);
    if (!text.names.empty()) {
        message.explained.push_back(
            fmt::format("names, not to be translated: {}", fmt::join(text.names, ", ")));
    }
    if (text.span.known()) {
        message.references.push_back({sources.file(text.span.file).path,
                                      sources.place(text.span.file, text.span.begin).line});
    }
    return message;
}

} // namespace matchmark::language
