// Actions and conditions in plain words: "Undo the 4 lid screws with the hexalobular driver 6."
#include "plan/reader_words.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace matchmark::plan {

using guide::RunKind;
using guide::Words;
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

void say(Words& words, std::string text, RunKind kind = RunKind::words) {
    if (text.empty()) {
        return;
    }
    if (kind == RunKind::words && !words.empty() && words.back().kind == RunKind::words) {
        words.back().text += text;
    } else {
        words.push_back({kind, std::move(text)});
    }
}

void value(Words& words, std::string text) { say(words, std::move(text), RunKind::value); }

// Does the verb bring the item back to how it stands when assembled? Then it must be told from what
// it resembles.
bool comes_home(const Model& model, const Action& action, const Target& target) {
    const model::Kind& kind = model.kind_of(target.ref.item);
    return action.sort == ActionSort::verb && kind.verbs[target.verb].to == kind.set_first.front();
}

// The torque of a target: the action's own, or what the item declares when this verb brings it
// home.
std::optional<Tightening> tightening_of(const Model& model, const Action& action,
                                        const Target& target) {
    if (action.sort == ActionSort::verb && action.tightening.torque) {
        return action.tightening;
    }
    return comes_home(model, action, target) ? model.item(target.ref.item).tightening
                                             : std::nullopt;
}

std::string manner(const Tightening& tightening) {
    std::string text;
    if (!tightening.pattern.empty()) {
        text += ", in a " + spaced(tightening.pattern) + " pattern";
    }
    if (tightening.passes > 1) {
        text += ", in " + std::to_string(tightening.passes) + " passes";
    }
    return text;
}

std::string torque_text(const Tightening& tightening) {
    return tightening.torque ? model::for_reader(*tightening.torque) : std::string();
}

bool same(const std::optional<Tightening>& left, const std::optional<Tightening>& right) {
    if (!left || !right) {
        return !left && !right;
    }
    return tightening_words(*left) == tightening_words(*right);
}

void say_item(const ReaderWords& in, Words& words, const Action& action, const Target& target) {
    const Item& item = in.model.item(target.ref.item);
    say(words, model::for_reader(in.model, target.ref));
    if (const auto number = in.numbers.find(target.ref.item); number != in.numbers.end()) {
        say(words, std::to_string(number->second), RunKind::item_number);
    }
    std::vector<std::string> remarks;
    if (!item.told_by.empty() && comes_home(in.model, action, target)) {
        remarks.push_back("told by " + item.told_by);
    }
    if (action.targets.size() > 1 && (item.variants & action.variants) != action.variants) {
        const auto names = model::variant_names(in.model, item.variants);
        if (!names.empty()) {
            remarks.push_back(model::list(names) + " only");
        }
    }
    if (!remarks.empty()) {
        say(words, " (" + model::list(remarks, "and") + ")");
    }
}

// The items in a list; with its torque behind each when they differ.
void say_items(const ReaderWords& in, Words& words, const Action& action, bool each_torque) {
    for (std::size_t i = 0; i < action.targets.size(); ++i) {
        if (i > 0) {
            say(words, i + 1 == action.targets.size() ? " and " : ", ");
        }
        say_item(in, words, action, action.targets[i]);
        const auto tightening = tightening_of(in.model, action, action.targets[i]);
        if (each_torque && tightening && tightening->torque) {
            say(words, " to ");
            value(words, torque_text(*tightening));
            say(words, manner(*tightening));
        }
    }
}

std::vector<std::string> named(const ReaderWords& in, const std::vector<ResourceId>& ids,
                               bool tools) {
    std::vector<std::string> found;
    for (const ResourceId id : ids) {
        const Resource& resource = in.resources[id.value];
        if ((resource.sort == ResourceSort::tool) == tools) {
            found.push_back(resource_words(resource));
        }
    }
    return found;
}

// The tools named, or the one that would be taken where the verb asks for one.
std::vector<std::string> tools_of(const ReaderWords& in, const Action& action) {
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
            const std::string tool = resource_words(in.resources[fitting.front().value]);
            if (std::find(tools.begin(), tools.end(), tool) == tools.end()) {
                tools.push_back(tool);
            }
        }
    }
    return tools;
}

std::vector<std::string> with_article(std::vector<std::string> things) {
    for (std::string& thing : things) {
        thing.insert(0, "the ");
    }
    return things;
}

void say_with(const ReaderWords& in, Words& words, const Action& action) {
    if (const auto tools = tools_of(in, action); !tools.empty()) {
        say(words, " with " + model::list(with_article(tools)));
    }
    if (const auto supplies = named(in, action.with, false); !supplies.empty()) {
        say(words, ", using " + model::list(with_article(supplies)));
    }
}

void say_limit(Words& words, const model::Limit& limit) {
    say(words, limit.least && limit.most ? ", " : " ");
    value(words, model::for_reader(limit));
}

void say_verb(const ReaderWords& in, Words& words, const Action& action) {
    if (action.targets.empty()) {
        return;
    }
    const auto first = tightening_of(in.model, action, action.targets.front());
    const bool one_torque =
        std::all_of(action.targets.begin(), action.targets.end(), [&](const Target& target) {
            return same(first, tightening_of(in.model, action, target));
        });
    say(words, capital(spaced(action.verb)) + " ");
    say_items(in, words, action, !one_torque);
    say_with(in, words, action);
    if (one_torque && first && first->torque) {
        say(words, " to ");
        value(words, torque_text(*first));
        say(words, manner(*first));
    } else if (one_torque) {
        say(words, manner(first ? *first : action.tightening));
    }
    const auto tools = tools_of(in, action);
    const bool in_tool = std::any_of(tools.begin(), tools.end(), [&](const std::string& tool) {
        return model::has_words(tool, action.means);
    });
    if (!action.means.empty() && !in_tool) {
        say(words, " through ");
        value(words, action.means);
    }
    if (action.duration) {
        say(words, " for ");
        value(words, model::for_reader(*action.duration));
    }
    const Target& target = action.targets.front();
    const auto& usual = in.model.kind_of(target.ref.item).verbs[target.verb].limit;
    if (action.limit || usual) {
        say_limit(words, action.limit ? *action.limit : *usual);
    }
    if (action.as_marked) {
        say(words, ", to the match marks");
    }
}

// What is to be done otherwise stands as it was written; names in it become what they name.
std::string in_words(const ReaderWords& in, const std::string& written) {
    std::string text;
    std::string word;
    const auto finish = [&] {
        std::string said = word;
        for (std::uint32_t i = 0; i < in.model.items.size(); ++i) {
            if (in.model.items[i].name == word) {
                said = model::for_reader(in.model, model::ItemId{i});
            }
        }
        for (const Resource& resource : in.resources) {
            if (resource.name == word) {
                said = "the " + resource_words(resource);
            }
        }
        text += said;
        word.clear();
    };
    for (const char c : written) {
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

void say_measure(const ReaderWords& in, Words& words, const Action& action) {
    say(words, "Measure the " + spaced(action.aspect) + " of ");
    say_items(in, words, action, false);
    say_with(in, words, action);
    std::optional<model::Limit> limit = action.limit;
    if (!limit && !action.targets.empty()) {
        for (const auto& declared : in.model.item(action.targets.front().ref.item).limits) {
            if (declared.name == action.aspect) {
                limit = declared.limit;
            }
        }
    }
    if (limit) {
        say(words, ": ");
        value(words, model::for_reader(*limit));
    }
    if (!action.otherwise.empty()) {
        say(words, ". Otherwise " + in_words(in, action.otherwise));
    }
}

bool several(const Model& model, const Action& action) {
    return action.targets.size() > 1 ||
           (!action.targets.empty() && model.item(action.targets.front().ref.item).count > 1 &&
            action.targets.front().ref.members.size() != 1);
}

void say_replace(const ReaderWords& in, Words& words, const Action& action) {
    say(words, "Replace ");
    say_items(in, words, action, false);
    say(words, several(in.model, action) ? " with the new ones" : " with the new one");
    std::vector<std::string> spares;
    for (const ResourceId id : action.with) {
        spares.push_back(resource_words(in.resources[id.value]));
    }
    if (!spares.empty()) {
        say(words, ": " + model::list(spares));
    }
}

void say_mark(const ReaderWords& in, Words& words, const Action& action) {
    std::vector<std::string> kept;
    for (const Target& target : action.targets) {
        for (const std::string& aspect : in.model.item(target.ref.item).keep) {
            if (std::find(kept.begin(), kept.end(), aspect) == kept.end()) {
                kept.push_back(aspect);
            }
        }
    }
    say(words, "Mark ");
    if (!kept.empty() && action.across.empty()) {
        say(words, "the " + model::list(kept) + " of ");
    }
    say_items(in, words, action, false);
    std::vector<std::string> across;
    std::transform(action.across.begin(), action.across.end(), std::back_inserter(across),
                   [&](model::ItemId item) { return model::for_reader(in.model, item); });
    if (!across.empty()) {
        say(words, " across " + model::list(across));
    }
    say_with(in, words, action);
    say(words, several(in.model, action) ? ", so that they go back as they were"
                                         : ", so that it goes back as it was");
}

void say_given_up(const ReaderWords& in, Words& words, const Action& action, const char* verb) {
    say(words, verb);
    say_items(in, words, action, false);
    say(words, several(in.model, action) ? ": they do not go back" : ": it does not go back");
}

// "the old cell": without a count, since the new ones are as many.
std::vector<std::string> old_ones(const Model& model, const Action& action) {
    std::vector<std::string> names;
    for (const Target& target : action.targets) {
        std::string words = model::for_reader(model, target.ref.item, false);
        if (model.item(target.ref.item).count > 1) {
            words.erase(0, words.find(' ') + 1);
        }
        names.push_back("the old " + words);
    }
    return names;
}

} // namespace

std::vector<std::string> tools_used(const ReaderWords& in, const Action& action) {
    return tools_of(in, action);
}

std::string spaced(std::string text) {
    std::replace(text.begin(), text.end(), '-', ' ');
    return text;
}

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

std::string resource_words(const Resource& resource) {
    return resource.text.empty() ? spaced(resource.name) : resource.text;
}

std::string condition_words(const Model& model, const model::Condition& condition) {
    const auto& states = model.kind_of(condition.item.item).states;
    return model::for_reader(model, condition.item) + " " + spaced(states[condition.state]);
}

std::string proof_words(const Model& model, const model::Proof& proof) {
    if (proof.item.known()) {
        return model::for_reader(model, proof.item);
    }
    const model::Function& function = model.functions[proof.function.value];
    return function.title.empty() ? function.name : function.title;
}

std::string title_words(const Model& model, const Action& action) {
    std::vector<std::string> items;
    std::transform(action.targets.begin(), action.targets.end(), std::back_inserter(items),
                   [&](const Target& target) { return model::for_reader(model, target.ref); });
    return capital(spaced(action.verb)) + " " + model::list(items);
}

std::string tightening_words(const Tightening& tightening) {
    std::string text = torque_text(tightening);
    if (!tightening.pattern.empty()) {
        text += (text.empty() ? "" : ", ") + spaced(tightening.pattern) + " pattern";
    }
    if (tightening.passes > 1) {
        text += (text.empty() ? "" : ", ") + std::to_string(tightening.passes) + " passes";
    }
    return text;
}

Words sentence(const ReaderWords& in, const Action& action) {
    Words words;
    switch (action.sort) {
    case ActionSort::verb:
        say_verb(in, words, action);
        break;
    case ActionSort::replace:
        say_replace(in, words, action);
        break;
    case ActionSort::mark:
        say_mark(in, words, action);
        break;
    case ActionSort::measure:
        say_measure(in, words, action);
        break;
    case ActionSort::dispose:
        say(words, "Dispose of " + model::list(old_ones(in.model, action)) + " as ");
        value(words, spaced(action.aspect));
        break;
    case ActionSort::scrap:
        say_given_up(in, words, action, "Scrap ");
        break;
    case ActionSort::leave_off:
        say_given_up(in, words, action, "Leave off ");
        break;
    case ActionSort::do_guide:
        say(words, "Do the guide “" + in.model.guide(action.guide).title + "”");
        break;
    }
    say(words, ".");
    return words;
}

} // namespace matchmark::plan
