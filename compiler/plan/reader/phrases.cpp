// Parts of an action's sentence: its items, its tools, how it is tightened.
#include "plan/reader/phrases.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace matchmark::plan {

using guide::RunKind;
using guide::Words;
using language::append;
using language::capital;
using language::fill;
using language::fill_text;
using language::joined_by;
using language::Language;
using language::own;
using language::Place;
using language::said;
using language::said_bare;
using language::said_list;
using language::text;
using language::verb_pattern;
using language::with_article;
using language::words_of;
using model::Action;
using model::ActionSort;
using model::Item;
using model::Model;
using model::Resource;
using model::ResourceId;
using model::ResourceSort;
using model::Target;
using model::Tightening;

namespace {

// Does the verb bring the item back to how it stands when assembled? Then it must be told from what
// it resembles.
bool comes_home(const Model& model, const Action& action, const Target& target) {
    const model::Kind& kind = model.kind_of(target.ref.item);
    return action.sort == ActionSort::verb && kind.verbs[target.verb].to == kind.set_first.front();
}

// How an item stands in a sentence.
enum class Form : unsigned char { with_article, bare };

// What an item is told by, and for which variants it is.
std::vector<std::string> remarks(const ReaderWords& in, const Action& action,
                                 const Target& target) {
    const Item& item = in.model.item(target.ref.item);
    std::vector<std::string> remarks;
    if (!item.told_by->empty() && comes_home(in.model, action, target)) {
        const std::string what = own(in.language, "item " + item.name + " told by", *item.told_by);
        remarks.push_back(fill_text(text(in.language, "told by {what}"), {{"what", what}}));
    }
    if (action.targets.size() > 1 && (item.variants & action.variants) != action.variants) {
        const auto names = model::variant_names(in.model, item.variants);
        if (!names.empty()) {
            remarks.push_back(fill_text(text(in.language, "{variants} only"),
                                        {{"variants", said_list(in.language, names)}}));
        }
    }
    return remarks;
}

Words said_item(const ReaderWords& in, const Action& action, const Target& target, Form form) {
    Words words = words_of(said(in.language, in.model, target.ref, form == Form::with_article));
    if (const auto number = in.numbers.find(target.ref.item); number != in.numbers.end()) {
        append(words, words_of(std::to_string(number->second), RunKind::item_number));
    }
    const auto told = remarks(in, action, target);
    if (!told.empty()) {
        append(words, words_of(" (" + said_list(in.language, told) + ")"));
    }
    return words;
}

// The items in a list; with its torque behind each when they differ.
Words said_items(const ReaderWords& in, const Action& action, bool each_torque, Form form) {
    Words words;
    for (std::size_t i = 0; i < action.targets.size(); ++i) {
        const Words item = said_item(in, action, action.targets[i], form);
        if (i > 0) {
            const bool last = i + 1 == action.targets.size();
            append(words,
                   words_of(last ? joined_by(in.language, "and", language::plain(item)) : ", "));
        }
        append(words, item);
        const auto tightening = tightening_of(in.model, action, action.targets[i]);
        if (each_torque && tightening && tightening->torque) {
            append(words, fill(text(in.language, " to {torque}{manner}"),
                               {{"torque", value(torque_text(in.language, *tightening))},
                                {"manner", words_of(manner(in.language, *tightening))}}));
        }
    }
    return words;
}

std::vector<const Resource*> named(const ReaderWords& in, const std::vector<ResourceId>& ids,
                                   bool tools) {
    std::vector<const Resource*> found;
    for (const ResourceId id : ids) {
        const Resource& resource = in.resources[id.value];
        if ((resource.sort == ResourceSort::tool) == tools) {
            found.push_back(&resource);
        }
    }
    return found;
}

} // namespace

Words value(std::string text) { return words_of(std::move(text), RunKind::value); }

std::optional<Tightening> tightening_of(const Model& model, const Action& action,
                                        const Target& target) {
    if (action.sort == ActionSort::verb && action.tightening->torque) {
        return action.tightening;
    }
    if (!comes_home(model, action, target))
        return std::nullopt;
    return model.item(target.ref.item).tightening;
}

std::string manner(const Language& language, const Tightening& tightening) {
    std::string said;
    if (!tightening.pattern.empty()) {
        said += ", " + text(language, "in a " + spaced(tightening.pattern) + " pattern");
    }
    if (tightening.passes > 1) {
        said += ", " + fill_text(text(language, "in {count} passes"),
                                 {{"count", std::to_string(tightening.passes)}});
    }
    return said;
}

std::string torque_text(const Language& language, const Tightening& tightening) {
    return tightening.torque ? said(language, *tightening.torque) : std::string();
}

bool same(const std::optional<Tightening>& left, const std::optional<Tightening>& right) {
    if (!left || !right) {
        return !left && !right;
    }
    return tightening_words(language::english(), *left) ==
           tightening_words(language::english(), *right);
}

std::vector<Place> item_places(const ReaderWords& in, const Action& action, bool each_torque) {
    return {{"the items", said_items(in, action, each_torque, Form::with_article)},
            {"items", said_items(in, action, each_torque, Form::bare)}};
}

std::vector<const Resource*> tools_of(const ReaderWords& in, const Action& action) {
    auto tools = named(in, action.with, true);
    if (!tools.empty() || action.sort != ActionSort::verb) {
        return tools;
    }
    for (const Target& target : action.targets) {
        const Item& item = in.model.item(target.ref.item);
        const model::Verb& verb = in.model.kind(item.kind).verbs[target.verb];
        if (!model::asks_tool(verb)) {
            continue;
        }
        const auto fitting = model::fitting_tools(in.model, in.resources, item, verb);
        if (!fitting.empty()) {
            const Resource& tool = in.resources[fitting.front().value];
            const bool listed = std::any_of(tools.begin(), tools.end(), [&](const Resource* other) {
                return resource_words(in, *other) == resource_words(in, tool);
            });
            if (!listed) {
                tools.push_back(&tool);
            }
        }
    }
    return tools;
}

std::vector<std::string> words_for(const ReaderWords& in,
                                   const std::vector<const Resource*>& resources, bool article) {
    std::vector<std::string> words;
    std::transform(resources.begin(), resources.end(), std::back_inserter(words),
                   [&](const Resource* one) { return resource_words(in, *one, article); });
    return words;
}

// "Seat the lid gasket, using the lid gasket" says the same twice.
bool says_it_again(const ReaderWords& in, const Action& action,
                   const std::vector<const Resource*>& supplies) {
    return action.targets.size() == 1 && supplies.size() == 1 &&
           in.model.item(action.targets.front().ref.item).title == supplies.front()->text;
}

Words said_with(const ReaderWords& in, const Action& action) {
    const auto list = [&](const std::vector<const Resource*>& resources, bool article) {
        return words_of(said_list(in.language, words_for(in, resources, article)));
    };
    Words words;
    if (const auto tools = tools_of(in, action); !tools.empty()) {
        append(words, fill(text(in.language, " with {the tools}"),
                           {{"the tools", list(tools, true)}, {"tools", list(tools, false)}}));
    }
    const auto supplies = named(in, action.with, false);
    if (says_it_again(in, action, supplies)) {
        append(words, words_of(several(in.model, action) ? text(in.language, ", using new ones")
                                                         : text(in.language, ", using a new one")));
    } else if (!supplies.empty()) {
        append(words,
               fill(text(in.language, ", using {the supplies}"),
                    {{"the supplies", list(supplies, true)}, {"supplies", list(supplies, false)}}));
    }
    return words;
}

} // namespace matchmark::plan
