// Which safety messages and notes stand at which step of a guide.
#include "plan/reader/messages.hpp"

#include "bench/exposure.hpp"
#include "language/punctuation.hpp"
#include "language/spoken.hpp"
#include "model/prose_place.hpp"

#include <algorithm>

namespace matchmark::plan {

using guide::Signal;
using language::capital;
using language::own;
using language::own_prose;
using language::said;
using language::said_list;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Prose;
using model::ProseKind;

namespace {

// A message up to this long is read as fast as the reference to it would be.
constexpr std::size_t short_message = 160;

bool higher(const guide::Message& left, const guide::Message& right) {
    return left.signal > right.signal;
}

} // namespace

std::optional<Signal> signal_of(ProseKind kind) {
    switch (kind) {
    case ProseKind::notice:
        return Signal::notice;
    case ProseKind::caution:
        return Signal::caution;
    case ProseKind::warning:
        return Signal::warning;
    case ProseKind::danger:
        return Signal::danger;
    case ProseKind::text:
    case ProseKind::note:
    case ProseKind::why:
        break;
    }
    return std::nullopt;
}

guide::PassageKind passage_of(ProseKind kind) {
    switch (kind) {
    case ProseKind::note:
        return guide::PassageKind::note;
    case ProseKind::why:
        return guide::PassageKind::why;
    default:
        return guide::PassageKind::text;
    }
}

bool ReaderMessages::works_on(ItemId item) const { return among(worked_, item); }

void ReaderMessages::begin(const ReaderWalk& walk, const model::Step& step, unsigned number) {
    step_ = &step;
    number_ = number;
    if (hidden_when_whole_.empty()) {
        const ReaderWalk whole = start_walk(model_, variants_);
        for (std::uint32_t i = 0; i < model_.items.size(); ++i)
            hidden_when_whole_.push_back(!any_reaches(whole, ItemId{i}));
    }
    worked_.clear();
    for (const model::Action& action : step.actions) {
        for (const model::Target& target : action.targets) {
            if (!works_on(target.ref.item)) {
                worked_.push_back(target.ref.item);
            }
        }
    }
    held_before_.clear();
    for (const model::ItemCaution& caution : model_.cautions) {
        held_before_.push_back(any_holds(walk, caution.when));
    }
    held_ = held_before_;
    unsafe_before_.clear();
    reached_before_.assign(model_.items.size(), false);
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const auto& hazards = model_.kind_of(ItemId{i}).hazards;
        for (std::size_t use = 0; use < hazards.size(); ++use) {
            if (any_unsafe(walk, ItemId{i}, hazards[use].safe))
                unsafe_before_.insert({i, use});
            reached_before_[i] = any_reaches(walk, ItemId{i});
            for (const auto* list : {&model_.items[i].feeds, &model_.items[i].feeding->bare_ends}) {
                for (const ItemId met : *list)
                    reached_before_[met.value] = any_reaches(walk, met);
            }
        }
    }
}

void ReaderMessages::after_action(const ReaderWalk& walk) {
    for (std::size_t i = 0; i < model_.cautions.size(); ++i) {
        held_[i] = held_[i] || any_holds(walk, model_.cautions[i].when);
    }
}

void ReaderMessages::tell(guide::Step& told, const Source& source, const Prose& prose,
                          const std::string& context, const std::string& subject,
                          model::VariantMask variants, bool every_step, const std::string& sign) {
    const std::string markdown = own_prose(language_, context, prose.markdown);
    const auto before = told_.find(source);
    const bool again = before != told_.end() && before->second.section == step_->section;
    const auto signal = signal_of(prose.kind);
    if (again && (!every_step || !signal)) {
        return;
    }
    if (!signal) {
        told_[source] = {step_->section, number_};
        // Read before it is needed.
        told.passages.push_back({passage_of(prose.kind), markdown, 0, true});
        return;
    }
    guide::Message message{
        *signal, subject, markdown, 0, model::variant_names(model_, variants & variants_), sign};
    if ((variants & variants_) == variants_) {
        message.variants.clear();
    }
    const auto known = std::find_if(gathered_.begin(), gathered_.end(),
                                    [&](const guide::GatheredMessage& gathered) {
                                        return gathered.message.signal == message.signal &&
                                               gathered.message.subject == message.subject &&
                                               gathered.message.markdown == message.markdown;
                                    });
    if (known == gathered_.end()) {
        gathered_.push_back({message, {number_}});
    } else if (known->steps.back() != number_) {
        known->steps.push_back(number_);
    }
    if (again && prose.markdown.size() > short_message) {
        message.full_in_step = before->second.step;
    } else {
        told_[source] = {step_->section, number_};
    }
    told.messages.push_back(std::move(message));
}

void ReaderMessages::tell_kind(guide::Step& told, ItemId id, bool safety_alone) {
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    for (std::size_t i = 0; i < kind.messages.size(); ++i) {
        if (safety_alone && !signal_of(kind.messages[i].kind))
            continue;
        tell(told, {'k', item.kind.value, i}, kind.messages[i], "kind " + kind.name,
             capital(language_, own(language_, "kind " + kind.name, kind.title)), item.variants,
             false);
    }
}

// What the items worked on say themselves, and what their kinds say; and of what is glued on, what
// its kind warns of: it is bent where it is pried off.
void ReaderMessages::tell_items(guide::Step& told) {
    for (const ItemId id : worked_) {
        const Item& item = model_.item(id);
        const std::string subject = capital(language_, said(language_, model_, id, false));
        for (std::size_t i = 0; i < item.messages.size(); ++i) {
            tell(told, {'i', id.value, i}, item.messages[i], "item " + item.name, subject,
                 item.variants, true);
        }
        tell_kind(told, id, false);
        for (std::size_t i = 0; item.role == model::Role::bond && i + 1 < item.touches.size(); ++i)
            tell_kind(told, item.touches[i], true);
    }
}

// A caution stands where its item is worked on, and where the work brings its condition about: the
// lid that opens puts the strain on the ribbon, whoever works on the ribbon later.
void ReaderMessages::tell_cautions(guide::Step& told) {
    for (std::uint32_t i = 0; i < model_.cautions.size(); ++i) {
        const model::ItemCaution& caution = model_.cautions[i];
        const ItemId item = caution.item.item;
        const bool comes_about = !caution.when.empty() && held_[i] && !held_before_[i];
        if (held_[i] && (works_on(item) || comes_about)) {
            const std::string subject = capital(language_, said(language_, model_, item, false));
            tell(told, {'c', i, 0}, caution.message, "caution " + caution.name, subject,
                 model_.item(item).variants, true);
        }
    }
}

// Does the step bring it to safety from this hazard?
bool ReaderMessages::makes_safe(ItemId id, const model::HazardUse& use) const {
    const auto leads_there = [&](const model::Target& target) {
        if (target.ref.item != id)
            return false;
        const model::Verb& verb = model_.kind_of(id).verbs[target.verb];
        return model::contains(use.safe, verb.to) && (verb.from & use.safe) == 0;
    };
    return std::any_of(
        step_->actions.begin(), step_->actions.end(), [&](const model::Action& action) {
            return action.sort == model::ActionSort::verb &&
                   std::any_of(action.targets.begin(), action.targets.end(), leads_there);
        });
}

bool ReaderMessages::meets(const ReaderWalk& walk, ItemId id, const model::HazardUse& use) const {
    const Item& item = model_.item(id);
    // To lock a supply off, or to hand it back, nobody touches what it feeds.
    if (!use.on_reach && bench::is_met_by_what_it_feeds(item))
        return makes_safe(id, use);
    if (works_on(id) || (item.carrier.known() && works_on(item.carrier))) {
        return true;
    }
    for (const ItemId worked : worked_) {
        const auto& touches = model_.item(worked).touches;
        if (among(touches, id) || (item.carrier.known() && among(touches, item.carrier))) {
            return true;
        }
    }
    if (!use.on_reach) {
        return false;
    }
    // A test done open, under power: whoever does it has the danger under the hand.
    const auto within_reach = [&](ItemId part) {
        return step_->is_test && hidden_when_whole_[part.value] && any_reaches(walk, part);
    };
    if (item.feeds.empty() ? within_reach(id)
                           : std::any_of(item.feeds.begin(), item.feeds.end(), within_reach)) {
        return true;
    }
    const auto laid_open = [&](ItemId part) {
        return any_reaches(walk, part) && (works_on(part) || !reached_before_[part.value]);
    };
    const auto& ends = item.feeding->bare_ends;
    return laid_open(id) || std::any_of(item.feeds.begin(), item.feeds.end(), laid_open) ||
           std::any_of(ends.begin(), ends.end(), laid_open);
}

// Items that share a hazard share its message.
void ReaderMessages::tell_hazards(const ReaderWalk& walk, guide::Step& told) {
    std::map<std::uint32_t, std::vector<ItemId>> met;
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId id{i};
        const auto& hazards = model_.kind_of(id).hazards;
        for (std::size_t use = 0; use < hazards.size(); ++use) {
            const bool unsafe =
                unsafe_before_.contains({i, use}) || any_unsafe(walk, id, hazards[use].safe);
            const bool here = (model_.item(id).variants & variants_) != 0;
            auto& items = met[hazards[use].hazard.value];
            if (here && unsafe && meets(walk, id, hazards[use]) && !among(items, id)) {
                items.push_back(id);
            }
        }
    }
    for (const auto& [index, items] : met) {
        if (items.empty())
            continue;
        const model::Hazard& hazard = model_.hazards[index];
        hazards_.insert(index);
        std::vector<std::string> names;
        model::VariantMask variants = 0;
        for (const ItemId item : items) {
            names.push_back(said(language_, model_, item, false));
            variants |= model_.item(item).variants;
        }
        const bool worked_on =
            std::any_of(items.begin(), items.end(), [&](ItemId item) { return works_on(item); });
        const std::string context = "hazard " + hazard.name;
        const std::string subject = own(language_, context, hazard.title) +
                                    language::colon(language_) + said_list(language_, names);
        for (std::size_t i = 0; i < hazard.messages.size(); ++i) {
            tell(told, {'h', index, i}, hazard.messages[i], context, subject, variants,
                 worked_on || step_->is_test, hazard.sign);
        }
    }
}

void ReaderMessages::finish(const ReaderWalk& walk, guide::Step& told) {
    for (std::uint32_t i = 0; i < step_->prose.size(); ++i) {
        const Prose& prose = step_->prose[i];
        if (signal_of(prose.kind)) {
            tell(told, {'a', number_, i}, prose, "step " + step_->name, {}, model::all_variants,
                 true);
        } else {
            told.passages.push_back({passage_of(prose.kind),
                                     own_prose(language_, "step " + step_->name, prose.markdown),
                                     model::actions_above(*step_, prose)});
        }
    }
    tell_hazards(walk, told);
    tell_cautions(told);
    tell_items(told);
    std::stable_sort(told.messages.begin(), told.messages.end(), higher);
}

std::vector<std::uint32_t> ReaderMessages::hazards() const {
    return {hazards_.begin(), hazards_.end()};
}

std::vector<guide::GatheredMessage> ReaderMessages::gathered() const {
    auto all = gathered_;
    std::stable_sort(all.begin(), all.end(), [](const auto& left, const auto& right) {
        return higher(left.message, right.message);
    });
    return all;
}

} // namespace matchmark::plan
