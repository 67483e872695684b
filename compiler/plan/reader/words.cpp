// Actions and conditions in plain words: "Undo the 4 lid screws with the hexalobular driver 6."
#include "plan/reader/words.hpp"

#include "language/punctuation.hpp"
#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "plan/reader/phrases.hpp"

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

Words said_limit(const Language& language, const model::Limit& limit) {
    Words words = words_of(limit.least && limit.most ? ", " : " ");
    append(words, value(said(language, limit)));
    return words;
}

// Through what it is done: a resistor's value, or its words.
Words said_means(const ReaderWords& in, const Action& action) {
    const auto tools = tools_of(in, action);
    const bool in_tool = std::any_of(tools.begin(), tools.end(), [&](const Resource* tool) {
        return model::has_words(resource_words({in.model, in.resources, {}}, *tool), *action.means);
    });
    if (action.means->empty() || in_tool) {
        return {};
    }
    return fill(text(in.language, " through {means}"),
                {{"means", value(own(in.language, "means", *action.means))}});
}

// All that an action says beside its verb and its items.
Words said_how(const ReaderWords& in, const Action& action,
               const std::optional<Tightening>& tightening, bool one_torque) {
    Words how = said_with(in, action);
    if (one_torque && tightening && tightening->torque) {
        append(how, fill(text(in.language, " to {torque}{manner}"),
                         {{"torque", value(torque_text(in.language, *tightening))},
                          {"manner", words_of(manner(in.language, *tightening))}}));
    } else if (one_torque) {
        append(how, words_of(manner(in.language, tightening ? *tightening : *action.tightening)));
    }
    append(how, said_means(in, action));
    if (action.duration) {
        append(how, fill(text(in.language, " for {time}"),
                         {{"time", value(said(in.language, *action.duration))}}));
    }
    const Target& target = action.targets.front();
    const auto& usual = in.model.kind_of(target.ref.item).verbs[target.verb].limit;
    if (action.limit || usual) {
        append(how, said_limit(in.language, action.limit ? *action.limit : *usual));
    }
    if (action.as_marked) {
        append(how, words_of(text(in.language, ", to the match marks")));
    }
    return how;
}

Words said_verb(const ReaderWords& in, const Action& action) {
    if (action.targets.empty()) {
        return {};
    }
    const auto first = tightening_of(in.model, action, action.targets.front());
    const bool one_torque =
        std::all_of(action.targets.begin(), action.targets.end(), [&](const Target& target) {
            return same(first, tightening_of(in.model, action, target));
        });
    auto places = item_places(in, action, !one_torque);
    places.emplace_back("how", said_how(in, action, first, one_torque));
    return fill(verb_pattern(in.language, action.verb), places);
}

// What is to be done otherwise stands as it was written; names in it become what they name.
std::string in_words(const ReaderWords& in, const std::string& written) {
    std::string text;
    std::string word;
    const auto finish = [&] {
        std::string told = word;
        for (std::uint32_t i = 0; i < in.model.items.size(); ++i) {
            if (in.model.items[i].name == word) {
                told = said(in.language, in.model, model::ItemId{i});
            }
        }
        for (const Resource& resource : in.resources) {
            if (resource.name == word) {
                told = resource_words(in, resource, true);
            }
        }
        text += told;
        word.clear();
    };
    for (const char c : own(in.language, "otherwise", written)) {
        if (c == ' ' || c == ',') {
            finish();
            text += c;
        } else {
            word += c;
        }
    }
    finish();
    return text;
}

// The action's own limit, or the one that the item declares for what is measured.
std::optional<model::Limit> measured_limit(const ReaderWords& in, const Action& action) {
    std::optional<model::Limit> limit = action.limit;
    if (!limit && !action.targets.empty()) {
        for (const auto& declared : in.model.item(action.targets.front().ref.item).rare->limits) {
            if (declared.name == *action.aspect) {
                limit = declared.limit;
            }
        }
    }
    return limit;
}

Words said_measure(const ReaderWords& in, const Action& action) {
    auto places = item_places(in, action);
    const std::string aspect = own(in.language, "word " + *action.aspect, spaced(*action.aspect));
    places.emplace_back("what", words_of(aspect));
    places.emplace_back("how", said_with(in, action));
    Words words = fill(text(in.language, "Measure the {what} of {the items}{how}"), places);
    if (const auto limit = measured_limit(in, action)) {
        append(words, words_of(language::colon(in.language)));
        append(words, value(said(in.language, *limit)));
    }
    if (!action.otherwise->text.empty()) {
        append(words, fill(text(in.language, ". Otherwise {action}"),
                           {{"action", words_of(in_words(in, action.otherwise->text))}}));
    }
    return words;
}

Words said_replace(const ReaderWords& in, const Action& action) {
    Words words =
        fill(several(in.model, action) ? text(in.language, "Replace {the items} with the new ones")
                                       : text(in.language, "Replace {the items} with the new one"),
             item_places(in, action));
    std::vector<std::string> spares;
    for (const ResourceId id : action.with) {
        const bool says_more =
            in.resources[id.value].text != in.model.item(action.targets.front().ref.item).title;
        if (says_more || action.targets.size() > 1) {
            spares.push_back(resource_words(in, in.resources[id.value]));
        }
    }
    if (!spares.empty()) {
        append(words, words_of(language::colon(in.language) + said_list(in.language, spares)));
    }
    return words;
}

// What of the items is to be kept as it was: "order and face".
std::vector<std::string> kept_aspects(const ReaderWords& in, const Action& action) {
    std::vector<std::string> kept;
    for (const Target& target : action.targets) {
        for (const std::string& aspect : in.model.item(target.ref.item).rare->keep) {
            const std::string said = own(in.language, "word " + aspect, aspect);
            if (std::find(kept.begin(), kept.end(), said) == kept.end()) {
                kept.push_back(said);
            }
        }
    }
    return kept;
}

Words said_mark(const ReaderWords& in, const Action& action) {
    const auto kept = kept_aspects(in, action);
    auto places = item_places(in, action);
    places.emplace_back("what", words_of(said_list(in.language, kept)));
    Words words = fill(!kept.empty() && action.across.empty()
                           ? text(in.language, "Mark the {what} of {the items}")
                           : text(in.language, "Mark {the items}"),
                       places);
    std::vector<std::string> across;
    std::transform(action.across.begin(), action.across.end(), std::back_inserter(across),
                   [&](model::ItemId item) { return said(in.language, in.model, item); });
    if (!across.empty()) {
        append(words, fill(text(in.language, " across {the parts}"),
                           {{"the parts", words_of(said_list(in.language, across))}}));
    }
    append(words, said_with(in, action));
    append(words, words_of(several(in.model, action)
                               ? text(in.language, ", so that they go back as they were")
                               : text(in.language, ", so that it goes back as it was")));
    return words;
}

Words said_given_up(const ReaderWords& in, const Action& action) {
    const bool many = several(in.model, action);
    const auto& language = in.language;
    if (action.sort == ActionSort::scrap) {
        return fill(many ? text(language, "Scrap {the items}: they do not go back")
                         : text(language, "Scrap {the items}: it does not go back"),
                    item_places(in, action));
    }
    return fill(many ? text(language, "Leave off {the items}: they do not go back")
                     : text(language, "Leave off {the items}: it does not go back"),
                item_places(in, action));
}

// "the old cell", "the used coolant": without a count, since the new ones are as many.
Words said_dispose(const ReaderWords& in, const Action& action) {
    std::vector<std::string> names;
    for (const Target& target : action.targets) {
        const bool flows = in.model.item(target.ref.item).role == model::Role::fluid;
        names.push_back(fill_text(flows ? text(in.language, "the used {item}")
                                        : text(in.language, "the old {item}"),
                                  {{"item", said_bare(in.language, in.model, target.ref.item)}}));
    }
    return fill(
        text(in.language, "Dispose of {the old items} as {waste}"),
        {{"the old items", words_of(said_list(in.language, names))},
         {"waste", value(own(in.language, "waste " + *action.aspect, spaced(*action.aspect)))}});
}

// What of the list is set to the torque that a target is tightened to, if none of the tools is.
const Resource* torque_tool(const ReaderWords& in, const std::vector<const Resource*>& tools,
                            const std::optional<Tightening>& tightening) {
    if (!tightening || !tightening->torque)
        return nullptr;
    const auto sets = [&](const Resource& tool) {
        return model::sets_torque(in.model, tool, *tightening->torque);
    };
    if (std::any_of(tools.begin(), tools.end(), [&](const Resource* tool) { return sets(*tool); }))
        return nullptr;
    const auto found = std::find_if(in.resources.begin(), in.resources.end(), sets);
    return found == in.resources.end() ? nullptr : &*found;
}

Words said_guide(const ReaderWords& in, const Action& action) {
    const model::Guide& guide = in.model.guide(action.guide);
    return fill(text(in.language, "Do the guide “{title}”"),
                {{"title", words_of(own(in.language, "guide " + guide.name, guide.title))}});
}

} // namespace

bool several(const Model& model, const Action& action) {
    return action.targets.size() > 1 ||
           (!action.targets.empty() && model.item(action.targets.front().ref.item).count > 1 &&
            action.targets.front().ref.members.size() != 1);
}

std::vector<std::string> tools_used(const ReaderWords& in, const Action& action) {
    auto tools = tools_of(in, action);
    if (action.sort == ActionSort::verb) {
        for (const Target& target : action.targets) {
            const auto* more = torque_tool(in, tools, tightening_of(in.model, action, target));
            if (more != nullptr)
                tools.push_back(more);
        }
    }
    return words_for(in, tools, false);
}

std::string resource_words(const ReaderWords& in, const Resource& resource, bool article) {
    const std::string english = resource.text.empty() ? spaced(resource.name) : resource.text;
    if (is_english(in.language)) {
        return article ? "the " + english : english;
    }
    return with_article(own(in.language, "guide", english), article);
}

std::string condition_words(const ReaderWords& in, const model::Condition& condition) {
    const std::string& state = in.model.kind_of(condition.item.item).states[condition.state];
    return fill_text(text(in.language, "{the item} {state}"),
                     {{"the item", said(in.language, in.model, condition.item)},
                      {"item", said(in.language, in.model, condition.item, false)},
                      {"state", state_words(in.language, state)}});
}

std::string proof_words(const ReaderWords& in, const model::Proof& proof) {
    if (proof.item.known()) {
        // Listed by itself: only English has an article there.
        return said(in.language, in.model, proof.item, is_english(in.language));
    }
    const model::Function& function = in.model.functions[proof.function.value];
    if (function.is_rating) {
        return function.title.empty() ? function.name : function.title; // "IP67" in all languages
    }
    return function.title.empty() ? function.name
                                  : own(in.language, "function " + function.name, function.title);
}

std::string title_words(const ReaderWords& in, const Action& action) {
    std::vector<std::string> items;
    std::vector<std::string> bare;
    for (const Target& target : action.targets) {
        items.push_back(said(in.language, in.model, target.ref));
        bare.push_back(said(in.language, in.model, target.ref, false));
    }
    return capital(in.language, fill_text(verb_pattern(in.language, action.verb),
                                          {{"the items", said_list(in.language, items)},
                                           {"items", said_list(in.language, bare)},
                                           {"how", ""}}));
}

std::string title_words(const ReaderWords& in, const std::vector<Target>& deeds,
                        const std::vector<std::size_t>& named) {
    std::vector<std::string> said_so;
    for (const std::size_t i : named) {
        const Target& deed = deeds[i];
        const std::string& verb = in.model.kind_of(deed.ref.item).verbs[deed.verb].name;
        said_so.push_back(fill_text(language::verb_pattern_within(in.language, verb),
                                    {{"the items", said(in.language, in.model, deed.ref)},
                                     {"items", said(in.language, in.model, deed.ref, false)},
                                     {"how", ""}}));
    }
    return capital(in.language, said_list(in.language, said_so));
}

std::string tightening_words(const Language& language, const Tightening& tightening) {
    std::string words = torque_text(language, tightening);
    if (!tightening.pattern.empty()) {
        words +=
            (words.empty() ? "" : ", ") + text(language, spaced(tightening.pattern) + " pattern");
    }
    if (tightening.passes > 1) {
        words +=
            (words.empty() ? "" : ", ") + fill_text(text(language, "{count} passes"),
                                                    {{"count", std::to_string(tightening.passes)}});
    }
    return words;
}

Words sentence(const ReaderWords& in, const Action& action) {
    Words words;
    switch (action.sort) {
    case ActionSort::verb:
        words = said_verb(in, action);
        break;
    case ActionSort::replace:
        words = said_replace(in, action);
        break;
    case ActionSort::mark:
        words = said_mark(in, action);
        break;
    case ActionSort::measure:
        words = said_measure(in, action);
        break;
    case ActionSort::dispose:
        words = said_dispose(in, action);
        break;
    case ActionSort::scrap:
    case ActionSort::leave_off:
        words = said_given_up(in, action);
        break;
    case ActionSort::do_guide:
        words = said_guide(in, action);
        break;
    }
    if (!words.empty()) {
        words.front().text = capital(in.language, words.front().text);
    }
    append(words, words_of("."));
    return words;
}

} // namespace matchmark::plan
