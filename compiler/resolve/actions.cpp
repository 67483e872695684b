// Reads actions: the kind's verbs, and the compiler's own (replace, mark, measure, dispose, scrap,
// leave-off, do).
#include "resolve/actions.hpp"

#include "diagnostics/nearest.hpp"
#include "model/describe.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::resolve {

using model::Action;
using model::ActionSort;
using model::Measure;
using syntax::Reader;
using syntax::TermKind;

namespace {

ActionSort sort_of(std::string_view verb) {
    if (verb == "replace")
        return ActionSort::replace;
    if (verb == "mark")
        return ActionSort::mark;
    if (verb == "measure")
        return ActionSort::measure;
    if (verb == "dispose")
        return ActionSort::dispose;
    if (verb == "scrap")
        return ActionSort::scrap;
    if (verb == "leave-off")
        return ActionSort::leave_off;
    if (verb == "do")
        return ActionSort::do_guide;
    return ActionSort::verb;
}

std::vector<std::string> verb_names(const model::Kind& kind) {
    std::vector<std::string> names;
    for (const auto& verb : kind.verbs)
        names.push_back(verb.name);
    return names;
}

void report_verb(Context& context, Span where, const std::string& verb, model::ItemId item) {
    const model::Kind& kind = context.model.kind_of(item);
    const auto names = verb_names(kind);
    Diagnostic& finding =
        report(context, "unknown-verb", where,
               fmt::format("there is no `{}` for {}", verb, model::with_kind(context.model, item)));
    std::vector<std::string> quoted;
    for (const auto& name : names)
        quoted.push_back("`" + name + "`");
    finding.why = fmt::format("its verbs are {}", model::list(quoted));
    finding.related.push_back({context.model.item(item).span, "declared here"});
    const std::string near = nearest(verb, names);
    if (near.empty()) {
        const auto first =
            std::find_if(kind.verbs.begin(), kind.verbs.end(), [](const model::Verb& known) {
                return model::contains(known.from, model::StateId{0});
            });
        const auto back =
            std::find_if(kind.verbs.begin(), kind.verbs.end(),
                         [](const model::Verb& known) { return known.to == model::StateId{0}; });
        finding.help = "write one of them";
        if (first != kind.verbs.end())
            finding.help += fmt::format(": as it was assembled, `{}`", first->name);
        if (first != kind.verbs.end() && back != kind.verbs.end())
            finding.help += fmt::format(", and `{}` to bring it back", back->name);
        return;
    }
    finding.help = fmt::format("write `{}`", near);
    finding.edits.push_back({where, near});
}

// `with`, `to`, `in`, `for`, `through`, `as`, `across`: false when none of them stands here.
bool read_option(ActionPlace& place, Reader& reader, Action& action) {
    Context& context = place.context;
    if (reader.take_word("with")) {
        const auto found = read_resources(place, reader);
        action.with.append(found);
    } else if (reader.take_word("to")) {
        action.tightening.edit().torque = read_quantity(context, reader, Measure::torque);
    } else if (reader.take_word("for")) {
        action.duration = read_quantity(context, reader, Measure::time);
    } else if (reader.take_word("through")) {
        std::string& means = action.means.edit();
        means.clear(); // single spaces, however wide the line is laid out
        while (!reader.at_end() && !reader.next_is(TermKind::word) &&
               !reader.next_is(TermKind::comma)) {
            means += means.empty() ? "" : " ";
            means += text_of(context, reader.here());
            reader.skip();
        }
    } else if (reader.take_word("as")) {
        const std::string_view word = reader.next_text();
        if (word == "marked") {
            action.as_marked = true;
        } else {
            action.aspect = std::string(word);
        }
        reader.skip();
    } else if (reader.take_word("across")) {
        action.across = read_items(context, reader);
    } else {
        return false;
    }
    return true;
}

std::optional<model::GuideId> known_guide(Context& context, Reader& reader) {
    const auto name = reader.take_name();
    if (!name)
        return std::nullopt;
    const auto guide = context.guides.find(context.sources.slice(*name));
    if (!guide) {
        report_unknown(context, "unknown-guide", *name, "guide",
                       known_names(context, context.guides));
        return std::nullopt;
    }
    return model::GuideId{guide->index};
}

// The rest of the line after `else`: kept as written; its spares count as used.
void read_otherwise(ActionPlace& place, Reader& reader, Action& action) {
    model::Otherwise& otherwise = action.otherwise.edit();
    const Span start = reader.here();
    Span end = start;
    if (reader.next_text() == "do" && reader.next_text(1) != "nothing") {
        reader.skip();
        known_guide(place.context, reader);
        end = reader.last();
    }
    while (!reader.at_end()) {
        if (reader.take_word("with")) {
            const auto found = read_resources(place, reader);
            otherwise.with.append(found);
            end = reader.last();
            continue;
        }
        end = reader.here();
        reader.skip();
    }
    otherwise.text = text_of(place.context, {start.file, start.begin, end.end});
}

// `fasten nut 4 N.m`: no amount, but a torque without its `to`.
void read_amount(Context& context, Reader& reader, Action& action) {
    const Span start = reader.here();
    action.amount = read_quantity(context, reader);
    if (!action.amount || action.amount->measure != Measure::torque)
        return;
    Diagnostic& finding = report(context, "mixed-units", start, "a torque stands behind `to`");
    finding.label = "taken for an amount";
    finding.help = fmt::format("write `to {}`", to_text(*action.amount));
    finding.edits.push_back({{start.file, start.begin, start.begin}, "to "});
    action.amount = {};
}

void read_options(ActionPlace& place, Reader& reader, Action& action) {
    Context& context = place.context;
    while (!reader.at_end()) {
        if (reader.take_word("else")) {
            read_otherwise(place, reader, action);
        } else if (read_option(place, reader, action)) {
            continue;
        } else if (auto limit = read_limit(context, reader)) {
            action.limit = *limit;
        } else if (reader.next_is_word("in") ||
                   (reader.next_is(TermKind::number) && !reader.next_is(TermKind::unit, 1))) {
            const std::uint32_t before = reader.index;
            read_tightening_rest(context, reader, action.tightening.edit());
            if (reader.index == before)
                reader.skip();
        } else if (reader.next_is(TermKind::number)) {
            read_amount(context, reader, action);
        } else if (reader.next_is(TermKind::comma) && reader.next_is(TermKind::number, 1)) {
            const std::uint32_t before = reader.index;
            read_tightening_rest(context, reader, action.tightening.edit());
            if (reader.index == before)
                reader.skip();
        } else {
            reader.skip();
        }
    }
}

// Gives each target its kind's verb of this name; false when none has it.
bool find_verbs(Context& context, Action& action, Span where) {
    std::vector<model::Target> known;
    for (auto& target : action.targets) {
        const model::Kind& kind = context.model.kind_of(target.ref.item);
        const model::Verb* verb = model::find_verb(kind, action.verb);
        if (verb == nullptr) {
            report_verb(context, where, action.verb, target.ref.item);
            continue;
        }
        target.verb = static_cast<std::uint16_t>(verb - kind.verbs.data());
        known.push_back(std::move(target));
    }
    action.targets = std::move(known);
    return !action.targets.empty();
}

bool read_do(Context& context, Reader& reader, Action& action) {
    const auto guide = known_guide(context, reader);
    if (guide)
        action.guide = *guide;
    return guide.has_value();
}

void read_measured(ActionPlace& place, Reader& reader, Action& action) {
    // `measure end-float ...` names no item: what is measured is then declared on some item as a
    // limit of that name.
    const auto& items = place.context.items;
    const bool names_item =
        items.find(reader.next_text()).has_value() || place.alias(reader.next_text());
    if (names_item || reader.next_is(TermKind::name, 1)) {
        if (auto ref = read_ref(place.context, reader, &place.alias))
            action.targets.push_back({*ref, 0});
    }
    if (const auto name = reader.take_name())
        action.aspect = std::string(reader.text(*name));
    if (!action.targets.empty())
        return;
    const model::Model& model = place.context.model;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        for (const auto& limit : model.items[i].rare->limits) {
            if (limit.name != *action.aspect)
                continue;
            model::ItemRef ref;
            ref.item = model::ItemId{i};
            ref.span = reader.last();
            action.targets.push_back({ref, 0});
            return;
        }
    }
    report_unknown(place.context, "unknown-item", reader.last(), "item, or limit of an item,",
                   known_names(place.context, items));
}

// What is missing on the guide's list is told once, with each place that names it.
bool told_already(ActionPlace& place, Span name) {
    Context& context = place.context;
    const Span guide = place.guide.span;
    const auto [known, is_new] = context.unlisted.try_emplace(
        {guide.file, guide.begin, text_of(context, name)}, context.findings.size());
    if (is_new)
        return false;
    Diagnostic& told = context.findings[known->second];
    told.related.push_back({name, "named here too"});
    if (!told.edits.empty())
        told.edits.push_back({name, told.edits.front().text});
    return true;
}

void report_unlisted(ActionPlace& place, Span name) {
    std::vector<std::string> names;
    for (const auto& entry : place.guide.resources)
        names.push_back(entry.name);
    report_unknown(place.context, "unlisted-tool", name, "tool, spare or supply on the list called",
                   names);
    Diagnostic& finding = place.context.findings.back();
    if (finding.edits.empty())
        finding.help =
            fmt::format("list it in the guide's head: `tool {0} \"...\"`, or `spare {0}`",
                        place.context.sources.slice(name));
}

} // namespace

bool is_own_verb(std::string_view verb) { return sort_of(verb) != ActionSort::verb; }

std::vector<model::ResourceId> read_resources(ActionPlace& place, Reader& reader) {
    std::vector<model::ResourceId> found;
    const auto& resources = place.guide.resources;
    while (reader.next_is(TermKind::name)) {
        const Span name = *reader.take_name();
        const std::string_view text = place.context.sources.slice(name);
        const auto known = std::find_if(resources.begin(), resources.end(),
                                        [&](const auto& entry) { return entry.name == text; });
        if (known != resources.end()) {
            found.push_back({static_cast<std::uint32_t>(known - resources.begin())});
        } else if (!told_already(place, name)) {
            report_unlisted(place, name);
        }
        // Two names after the comma: a goal's next verb, and its item.
        if (!reader.next_is(TermKind::comma) || !reader.next_is(TermKind::name, 1) ||
            reader.next_is(TermKind::name, 2))
            break;
        reader.take_comma();
    }
    return found;
}

std::optional<Action> read_action(ActionPlace& place, Reader& reader, Span verb, Span line) {
    Context& context = place.context;
    Action action;
    action.verb = text_of(context, verb);
    action.sort = sort_of(action.verb);
    action.head = verb;
    action.line = line;
    if (action.sort == ActionSort::do_guide) {
        if (!read_do(context, reader, action))
            return std::nullopt;
        return action;
    }
    if (action.sort == ActionSort::measure) {
        read_measured(place, reader, action);
    } else {
        for (auto& ref : read_refs(context, reader, &place.alias))
            action.targets.push_back({ref, 0});
    }
    read_options(place, reader, action);
    if (action.targets.empty())
        return std::nullopt;
    if (action.sort == ActionSort::verb && !find_verbs(context, action, verb))
        return std::nullopt;
    model::VariantMask mask = 0;
    for (const auto& target : action.targets)
        mask |= context.model.item(target.ref.item).variants;
    action.variants = mask;
    return action;
}

} // namespace matchmark::resolve
