// Kinds, drives, threads and hazards, as the parts library and authors' files declare them.
#include "model/role_words.hpp"
#include "resolve/actions.hpp"
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include <algorithm>
#include <array>
#include <fmt/core.h>

namespace matchmark::resolve {

using model::Kind;
using model::Role;
using model::StateId;
using model::StateSet;
using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Reader;

namespace {

constexpr std::size_t most_states = 60; // a StateSet has 64 bits

void add_states(Context& context, Kind& kind, Reader& reader) {
    const auto set = static_cast<std::uint8_t>(kind.set_first.size());
    bool first = true;
    for (const Span name : read_name_list(reader)) {
        const std::string text = text_of(context, name);
        if (model::find_state(kind, text)) {
            report(context, "duplicate-name", name,
                   fmt::format("kind `{}` has the state `{}` twice", kind.name, text))
                .help = "give one of them another name";
            continue;
        }
        if (kind.states.size() >= most_states) {
            report(context, "bad-kind", name,
                   fmt::format("kind `{}` has more than {} states", kind.name, most_states))
                .help = "leave out the states between which no verb of a guide has to choose";
            return;
        }
        if (first)
            kind.set_first.push_back(static_cast<StateId>(kind.states.size()));
        first = false;
        kind.states.push_back(text);
        kind.set_of.push_back(set);
    }
}

StateSet read_states(Context& context, const Kind& kind, Reader& reader) {
    StateSet states = 0;
    for (const Span name : read_name_list(reader)) {
        if (const auto state = model::find_state(kind, context.sources.slice(name))) {
            states |= model::in_set(*state);
        } else {
            report_unknown(context, "unknown-state", name,
                           fmt::format("state of kind `{}` called", kind.name), kind.states);
        }
    }
    return states;
}

void default_sets(Kind& kind) {
    StateSet all = 0;
    std::size_t count = 0;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (kind.set_of[i] != 0)
            continue;
        all |= model::in_set(static_cast<StateId>(i));
        ++count;
    }
    const StateSet first = model::in_set(kind.set_first.front());
    const StateSet all_but_last =
        count > 1 ? all & ~model::in_set(static_cast<StateId>(count - 1)) : all;
    kind.present = all_but_last;
    kind.covers = kind.blocks = kind.live = first;
    kind.binds = kind.role == Role::connector ? all_but_last : first;
}

void read_verb_options(Context& context, model::Verb& verb, Reader& reader) {
    while (!reader.at_end()) {
        if (reader.take_word("by")) {
            verb.by_hand = false;
            do {
                const std::string tool(reader.next_text());
                reader.skip();
                verb.by_hand = verb.by_hand || tool == "hand";
                verb.by_driver = verb.by_driver || tool == "driver";
                if (tool != "hand" && tool != "driver")
                    verb.tools.push_back(tool);
            } while (reader.take_word("or"));
        } else if (reader.take_word("takes")) {
            verb.takes = read_quantity(context, reader, model::Measure::time);
        } else if (reader.take_word("waits")) {
            verb.waits = read_quantity(context, reader, model::Measure::time);
        } else if (reader.take_word("decays")) {
            verb.decays = true;
        } else if (reader.take_word("safe")) {
            verb.safe_when_live = true;
        } else if (reader.take_word("from")) {
            verb.from_outside = true;
        } else if (auto limit = read_limit(context, reader)) {
            verb.limit = *limit;
        } else {
            reader.skip(); // `when`, `live`, `outside`
        }
    }
}

void read_verb(Context& context, Kind& kind, const Line& line, Reader& reader) {
    model::Verb verb;
    verb.name = text_of(context, line.head);
    verb.span = line.head;
    verb.from = read_states(context, kind, reader);
    reader.take(syntax::TermKind::arrow);
    const auto to = reader.take_name();
    if (!to)
        return;
    const auto state = model::find_state(kind, context.sources.slice(*to));
    if (!state) {
        report_unknown(context, "unknown-state", *to,
                       fmt::format("state of kind `{}` called", kind.name), kind.states);
        return;
    }
    verb.to = *state;
    if (is_own_verb(verb.name)) {
        Diagnostic& finding = report(context, "bad-kind", line.head,
                                     fmt::format("`{}` is done to items of every kind", verb.name));
        finding.why = "an action that begins with it would not mean this verb";
        finding.help = "give the verb another name";
    }
    if (const model::Verb* same = model::find_verb(kind, verb.name)) {
        report_duplicate(context, line.head, same->span);
        return;
    }
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (!model::contains(verb.from, static_cast<StateId>(i)) ||
            kind.set_of[i] == kind.set_of[*state])
            continue;
        report(context, "bad-kind", line.head,
               fmt::format("`{}` leads from `{}` to `{}`, which belong to different sets of states",
                           verb.name, kind.states[i], kind.states[*state]))
            .help = "let it lead to a state of the same line, `states` or `also`";
        return;
    }
    read_verb_options(context, verb, reader);
    if (verb.from != 0)
        kind.verbs.push_back(std::move(verb));
}

void read_hazard_use(Context& context, Kind& kind, Reader& reader) {
    const auto name = reader.take_name();
    if (!name)
        return;
    const auto hazard = context.hazards.find(context.sources.slice(*name));
    if (!hazard) {
        report_unknown(context, "unknown-hazard", *name, "hazard",
                       known_names(context, context.hazards));
        return;
    }
    reader.take_word("until");
    model::HazardUse use;
    use.hazard = model::HazardId{hazard->index};
    use.span = *name;
    use.safe = read_states(context, kind, reader);
    if (reader.take_word("on"))
        use.on_reach = reader.next_text() == "reach";
    kind.hazards.push_back(use);
}

// What a line of a single word says.
bool Kind::*flag_of(Keyword keyword) {
    switch (keyword) {
    case Keyword::laid_first:
        return &Kind::laid_first;
    case Keyword::lies_loose:
        return &Kind::lies_loose;
    case Keyword::parted_last:
        return &Kind::parted_last;
    case Keyword::clamped:
        return &Kind::clamped;
    case Keyword::lets_out:
        return &Kind::lets_out;
    case Keyword::bare:
        return &Kind::bare;
    case Keyword::runs_out:
        return &Kind::runs_out;
    case Keyword::rests_on_pressure:
        return &Kind::rests_on_pressure;
    case Keyword::guards:
        return &Kind::guards;
    case Keyword::protects:
        return &Kind::protects;
    case Keyword::moves:
        return &Kind::moves;
    case Keyword::passes_on:
        return &Kind::passes_on;
    case Keyword::one_use:
        return &Kind::one_use;
    case Keyword::asks_for_torque:
        return &Kind::asks_torque;
    case Keyword::asks_for_test:
        return &Kind::asks_test;
    default:
        return nullptr;
    }
}

void read_kind_detail(Context& context, Kind& kind, const Line& line, Reader& reader) {
    if (bool Kind::*const flag = flag_of(line.keyword)) {
        kind.*flag = true;
        return;
    }
    switch (line.keyword) {
    case Keyword::present_in:
        kind.present = read_states(context, kind, reader);
        break;
    case Keyword::binds_in:
        kind.binds = read_states(context, kind, reader);
        break;
    case Keyword::covers_in:
        kind.covers = read_states(context, kind, reader);
        break;
    case Keyword::blocks_in:
        kind.blocks = read_states(context, kind, reader);
        break;
    case Keyword::live_in:
        kind.live = read_states(context, kind, reader);
        break;
    case Keyword::may_end_in:
        kind.may_end |= read_states(context, kind, reader);
        break;
    case Keyword::used_again_if:
        kind.used_again_if = reader.take_text().value_or("");
        break;
    case Keyword::good_for:
        kind.good_for = static_cast<int>(read_number(reader));
        break;
    case Keyword::hazard_until:
        read_hazard_use(context, kind, reader);
        break;
    case Keyword::waste:
        if (const auto name = reader.take_name())
            kind.waste = reader.text(*name);
        break;
    case Keyword::licensed:
        kind.needs_license = true;
        if (auto trade = reader.take_text())
            kind.licensed = *trade;
        break;
    case Keyword::verb:
        read_verb(context, kind, line, reader);
        break;
    default:
        break;
    }
}

void read_own_need(Context& context, Kind& kind, Reader& reader) {
    model::OwnNeed need;
    need.span = reader.here();
    need.states = read_states(context, kind, reader);
    reader.take_word("to");
    const auto verb = reader.take_name();
    if (!verb)
        return;
    need.verb = text_of(context, *verb);
    if (model::find_verb(kind, need.verb) == nullptr) {
        std::vector<std::string> verbs;
        for (const auto& known : kind.verbs)
            verbs.push_back(known.name);
        report_unknown(context, "unknown-verb", *verb,
                       fmt::format("verb of kind `{}` called", kind.name), verbs);
        return;
    }
    kind.needs.push_back(need);
}

// Every state must be left again towards the assembled one, or be one in which work may end.
void check_ways_back(Context& context, const Kind& kind) {
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto start = static_cast<StateId>(i);
        StateSet seen = model::in_set(start);
        StateSet before = 0;
        while (seen != before) {
            before = seen;
            for (const auto& verb : kind.verbs) {
                if ((verb.from & seen) != 0)
                    seen |= model::in_set(verb.to);
            }
        }
        const StateSet home = model::in_set(kind.set_first[kind.set_of[i]]) | kind.may_end;
        const bool entered = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                         [&](const auto& verb) { return verb.to == start; });
        if ((seen & home) == 0) {
            Diagnostic& finding = report(
                context, "bad-kind", kind.span,
                fmt::format("kind `{}`: no verb leads back from `{}`", kind.name, kind.states[i]));
            finding.why = "what was taken apart could never be put back";
            finding.help = fmt::format("add a verb from `{}`, or `may end in {}`", kind.states[i],
                                       kind.states[i]);
        } else if (!entered && start != kind.set_first[kind.set_of[i]]) {
            report(context, "bad-kind", kind.span,
                   fmt::format("kind `{}`: no verb leads to `{}`", kind.name, kind.states[i]))
                .help = fmt::format("add a verb, `VERB {} -> {}`, or leave the state out",
                                    kind.states[kind.set_first[kind.set_of[i]]], kind.states[i]);
        }
    }
}

// Where in the hazard's order a verb stands; nothing when it is not in it.
std::optional<std::size_t> place_in(const model::Hazard& hazard, const std::string& verb) {
    const auto found = std::find(hazard.order.begin(), hazard.order.end(), verb);
    if (found == hazard.order.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - hazard.order.begin());
}

// A verb that makes safe must not be open before those that stand before it in the hazard's order.
void check_order(Context& context, const Kind& kind, const model::HazardUse& use) {
    const model::Hazard& hazard = context.model.hazards[use.hazard.value];
    for (const model::Verb& later : kind.verbs) {
        const auto later_place = place_in(hazard, later.name);
        for (const model::Verb& earlier : kind.verbs) {
            const auto earlier_place = place_in(hazard, earlier.name);
            if (!later_place || !earlier_place || *earlier_place >= *later_place ||
                !model::contains(earlier.from, later.to) ||
                kind.set_of[earlier.to] != kind.set_of[later.to])
                continue;
            Diagnostic& finding = report(context, "bad-kind", later.span,
                                         fmt::format("kind `{}`: `{}` comes before `{}`", kind.name,
                                                     later.name, earlier.name));
            finding.why = fmt::format("against {}, `{}` comes first", hazard.title, earlier.name);
            finding.related.push_back({hazard.span, "the order stands here"});
            finding.help = fmt::format("let `{}` start from the state to which `{}` leads",
                                       later.name, earlier.name);
        }
    }
}

void resolve_kind(Context& context, const Declaration& declaration, Kind& kind) {
    const auto& lines = declaration.file->lines;
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        const bool is_first = line.keyword == Keyword::states;
        if (is_first && kind.set_first.empty())
            add_states(context, kind, reader);
    });
    if (kind.set_first.empty()) {
        Diagnostic& finding = report(context, "bad-kind", kind.span,
                                     fmt::format("kind `{}` has no states", kind.name));
        finding.help = "add `states` with the assembled one first";
        kind.states = {"in"};
        kind.set_of = {0};
        kind.set_first = {0};
        default_sets(kind);
        return;
    }
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::also)
            add_states(context, kind, reader);
    });
    default_sets(kind);
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        read_kind_detail(context, kind, line, reader);
    });
    each_detail(context, declaration, [&](const Line& line, Reader& reader) {
        if (line.keyword == Keyword::needs)
            read_own_need(context, kind, reader);
    });
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        if (syntax::is_prose(lines[i].keyword)) {
            kind.messages.push_back(read_prose(context, declaration, i));
        } else {
            ++i;
        }
    }
    // A verb whose line could not be read is not known to be missing.
    const auto first = lines.begin() + static_cast<std::ptrdiff_t>(declaration.head);
    const auto last = lines.begin() + static_cast<std::ptrdiff_t>(declaration.end);
    const bool whole =
        std::none_of(first, last, [](const Line& line) { return line.shape == LineShape::broken; });
    if (!whole)
        return;
    check_ways_back(context, kind);
    for (const model::HazardUse& use : kind.hazards)
        check_order(context, kind, use);
}

// So that the model is whole when no parts library is at hand.
void add_fallback_kind(Context& context) {
    if (context.kinds.find("plain-part"))
        return;
    Kind kind;
    kind.name = kind.title = "plain-part";
    kind.states = {"in", "out"};
    kind.set_of = {0, 0};
    kind.set_first = {0};
    default_sets(kind);
    model::Verb remove;
    remove.name = "remove";
    remove.from = model::in_set(0);
    remove.to = 1;
    model::Verb fit = remove;
    fit.name = "fit";
    fit.from = model::in_set(1);
    fit.to = 0;
    kind.verbs = {remove, fit};
    context.kinds.add(kind.name, {static_cast<std::uint32_t>(context.model.kinds.size()), {}});
    context.model.kinds.edit().push_back(std::move(kind));
}

} // namespace

void resolve_kinds(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (declaration.line().keyword != Keyword::kind)
            continue;
        Reader head{context.sources, *declaration.file, declaration.line()};
        Kind* kind = declared(context.kinds, context.model.kinds, context, head);
        if (kind == nullptr)
            continue;
        kind->title = title_or_name(head, kind->name);
        head.take_word("is");
        kind->role = model::role_named(head.next_text()).value_or(Role::part);
        resolve_kind(context, declaration, *kind);
    }
    add_fallback_kind(context);
}

} // namespace matchmark::resolve
