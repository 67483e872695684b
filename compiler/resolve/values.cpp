// Reads quantities, limits, references and conditions from the words of a line.
#include "resolve/values.hpp"

#include "diagnostics/nearest.hpp"
#include "model/describe.hpp"
#include "model/tightening_order.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <fmt/core.h>
#include <utility>

namespace matchmark::resolve {

using model::Measure;
using model::Quantity;
using syntax::Reader;
using syntax::TermKind;

namespace {

double number_in(std::string_view text) {
    if (!text.empty() && text.front() == '+')
        text.remove_prefix(1);
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

Span join(Span first, Span last) { return {first.file, first.begin, last.end}; }

// `Nm` is `N.m` without its point, and no other unit; of anything else all units are candidates.
std::vector<std::string> units_like(std::string_view unit) {
    for (const std::string& spelling : model::unit_spellings()) {
        std::string bare = spelling;
        std::erase(bare, '.');
        if (bare == unit)
            return {spelling};
    }
    return model::unit_spellings();
}

// How a quantity of this sort is written.
std::string example_of(Measure measure) {
    using M = Measure;
    static constexpr auto examples = std::to_array<std::pair<Measure, const char*>>({
        {M::number, "4"},
        {M::length, "40 mm"},
        {M::volume, "1.2 l"},
        {M::mass, "312 g"},
        {M::time, "30 s"},
        {M::temperature, "65 degC"},
        {M::force, "18 kN"},
        {M::torque, "0.5 N.m"},
        {M::pressure, "2 bar"},
        {M::energy, "5 J"},
        {M::voltage, "60 V"},
        {M::current, "2 A"},
        {M::charge, "3000 mAh"},
        {M::resistance, "10 kohm"},
        {M::capacitance, "470 uF"},
        {M::ratio, "25 %"},
        {M::money, "14.50 EUR"},
    });
    const auto* const found =
        std::find_if(examples.begin(), examples.end(),
                     [&](const auto& example) { return example.first == measure; });
    return found == examples.end() ? std::string(describe(measure))
                                   : fmt::format("in `{}`", found->second);
}

std::optional<Quantity> read_simple(Context& context, Reader& reader, Span& where) {
    if (!reader.next_is(TermKind::number))
        return std::nullopt;
    where = reader.here();
    const double value = number_in(reader.next_text());
    reader.take_number();
    std::string_view unit;
    if (reader.next_is(TermKind::unit)) {
        where = join(where, reader.here());
        unit = reader.next_text();
    }
    const Span unit_span = reader.here();
    auto quantity = model::make_quantity(value, unit);
    if (!unit.empty())
        reader.skip();
    if (!quantity) {
        const std::vector<std::string> like = units_like(unit);
        report_unknown(context, "unknown-unit", unit_span, "unit", like);
        context.findings.back().safe = like.size() == 1; // `Nm`; others may be of another sort
    }
    return quantity;
}

void report_mixed(Context& context, Span where, const Quantity& left, const Quantity& right) {
    Diagnostic& finding =
        report(context, "mixed-units", where,
               fmt::format("{} and {} cannot be added: one is {}, the other {}", to_text(left),
                           to_text(right), describe(left.measure), describe(right.measure)));
    finding.why = "a sum is of one sort of thing";
    finding.help = fmt::format("write both as {}", describe(left.measure));
}

} // namespace

double read_number(Reader& reader) {
    const double value = number_in(reader.next_text());
    reader.take_number();
    return value;
}

std::optional<Quantity> read_quantity(Context& context, Reader& reader) {
    Span where;
    auto sum = read_simple(context, reader, where);
    while (reader.next_is(TermKind::plus) || reader.next_is(TermKind::minus)) {
        const bool subtract = reader.next_is(TermKind::minus);
        reader.skip();
        Span next_where;
        const auto next = read_simple(context, reader, next_where);
        if (!sum || !next)
            continue;
        where = join(where, next_where);
        const auto total = model::add(*sum, *next, subtract);
        if (!total) {
            report_mixed(context, where, *sum, *next);
            return std::nullopt;
        }
        sum = total;
    }
    return sum;
}

std::optional<Quantity> read_quantity(Context& context, Reader& reader, Measure measure) {
    const Span where = reader.here();
    auto quantity = read_quantity(context, reader);
    if (!quantity || quantity->measure == measure)
        return quantity;
    Diagnostic& finding = report(context, "mixed-units", join(where, reader.last()),
                                 fmt::format("{} is {}, and {} stands here", to_text(*quantity),
                                             describe(quantity->measure), describe(measure)));
    finding.label = fmt::format("expected {}", describe(measure));
    finding.help = fmt::format("write {} here, as {}", describe(measure), example_of(measure));
    return std::nullopt;
}

std::optional<model::Limit> read_limit(Context& context, Reader& reader) {
    model::Limit limit;
    if (reader.next_is_word("at")) {
        reader.skip();
        const bool least = reader.next_is_word("least");
        reader.skip();
        (least ? limit.least : limit.most) = read_quantity(context, reader);
        return limit;
    }
    if (reader.next_is_word("below") || reader.next_is_word("above")) {
        const bool below = reader.next_is_word("below");
        reader.skip();
        limit.strict = true;
        (below ? limit.most : limit.least) = read_quantity(context, reader);
        return limit;
    }
    if (!reader.next_is(TermKind::number) || !reader.next_is(TermKind::range, 1)) {
        return std::nullopt;
    }
    const double from = read_number(reader);
    reader.skip();
    limit.most = read_quantity(context, reader);
    if (limit.most)
        limit.least = model::make_quantity(from, limit.most->unit);
    return limit;
}

namespace {

std::optional<std::uint16_t> read_member(Context& context, Reader& reader,
                                         const model::ItemRef& ref) {
    const Span where = reader.here();
    const double number = read_number(reader);
    const model::Item& item = context.model.item(ref.item);
    if (number >= 1 && number <= item.count)
        return static_cast<std::uint16_t>(number);
    Diagnostic& finding =
        report(context, "wrong-count", where,
               fmt::format("`{}` has {}, and no number {}", item.name,
                           model::counted(item.count, "member"), model::number_text(number)));
    finding.related.push_back({item.span, "declared here"});
    finding.help = item.count == 1 ? std::string("leave the number out")
                                   : fmt::format("members are counted from 1 to {}", item.count);
    return std::nullopt;
}

std::optional<model::ItemId> item_named(Context& context, Span name, const Alias* alias) {
    const std::string text = text_of(context, name);
    if (const auto found = context.items.find(text))
        return model::ItemId{found->index};
    if (alias != nullptr) {
        if (const auto found = (*alias)(text))
            return found;
    }
    report_unknown(context, "unknown-item", name, "item", known_names(context, context.items));
    return std::nullopt;
}

// `5,5`, written without a space: a place on a face or a photo, not members 5 and 5.
bool place_ahead(const Reader& reader) {
    return reader.next_is(TermKind::number) && reader.next_is(TermKind::comma, 1) &&
           reader.next_is(TermKind::number, 2) && reader.peek(0)->end() == reader.peek(1)->begin &&
           reader.peek(1)->end() == reader.peek(2)->begin;
}

// A number that is neither an amount, nor the start of a range or a place, nor a count of passes.
bool member_ahead(const Reader& reader, std::uint32_t ahead) {
    return reader.next_is(TermKind::number, ahead) && !reader.next_is(TermKind::unit, ahead + 1) &&
           !reader.next_is(TermKind::range, ahead + 1) && !reader.next_is_word("x", ahead + 1) &&
           !reader.next_is_word("passes", ahead + 1) && !reader.next_is_word("pass", ahead + 1);
}

} // namespace

std::optional<model::ItemRef> read_ref(Context& context, Reader& reader, const Alias* alias,
                                       Numbers numbers) {
    const auto name = reader.take_name();
    if (!name)
        return std::nullopt;
    const auto id = item_named(context, *name, alias);
    model::ItemRef ref;
    ref.span = *name;
    if (id)
        ref.item = *id;
    for (bool first = true;; first = false) {
        const bool comma = !first && reader.next_is(TermKind::comma);
        if ((!first && !comma) || !member_ahead(reader, comma ? 1 : 0))
            break;
        if (first && numbers == Numbers::members_or_place && place_ahead(reader))
            break;
        reader.take_comma();
        ref.span.end = reader.here().end;
        if (!id) {
            reader.skip();
        } else if (const auto member = read_member(context, reader, ref)) {
            ref.members.push_back(*member);
        }
    }
    if (!id)
        return std::nullopt;
    return ref;
}

std::vector<model::ItemRef> read_refs(Context& context, Reader& reader, const Alias* alias) {
    std::vector<model::ItemRef> refs;
    while (reader.next_is(TermKind::name)) {
        if (auto ref = read_ref(context, reader, alias))
            refs.push_back(std::move(*ref));
        if (!reader.next_is(TermKind::comma) || !reader.next_is(TermKind::name, 1))
            break;
        reader.take_comma();
    }
    return refs;
}

std::vector<model::ItemId> read_items(Context& context, Reader& reader) {
    std::vector<model::ItemId> items;
    for (const auto& ref : read_refs(context, reader))
        items.push_back(ref.item);
    return items;
}

std::optional<model::StateId> state_called(Context& context, model::ItemId item, Span name) {
    const model::Kind& kind = context.model.kind_of(item);
    auto found = model::find_state(kind, context.sources.slice(name));
    if (!found)
        report_unknown(context, "unknown-state", name,
                       fmt::format("state of {} called", model::with_kind(context.model, item)),
                       kind.states);
    return found;
}

std::optional<model::Condition> read_condition(Context& context, Reader& reader) {
    auto ref = read_ref(context, reader);
    const auto name = reader.take_name();
    const auto state = ref && name ? state_called(context, ref->item, *name) : std::nullopt;
    if (!state)
        return std::nullopt;
    return model::Condition{*ref, *state, join(ref->span, *name)};
}

std::vector<model::Condition> read_conditions(Context& context, Reader& reader) {
    std::vector<model::Condition> conditions;
    do {
        if (auto condition = read_condition(context, reader))
            conditions.push_back(*condition);
    } while (reader.take_comma());
    return conditions;
}

std::vector<Span> read_name_list(Reader& reader) {
    std::vector<Span> names;
    do {
        if (const auto name = reader.take_name())
            names.push_back(*name);
    } while (reader.take_comma());
    return names;
}

std::vector<model::Point> read_points(Reader& reader) {
    std::vector<model::Point> points;
    while (reader.next_is(TermKind::number)) {
        model::Point point;
        point.x = read_number(reader);
        reader.take_comma();
        point.y = read_number(reader);
        points.push_back(point);
    }
    return points;
}

model::VariantMask read_variants(Context& context, Reader& reader) {
    model::VariantMask mask = 0;
    for (const Span name : read_name_list(reader)) {
        if (const auto found = context.variants.find(context.sources.slice(name))) {
            mask |= model::VariantMask{1} << found->index;
        } else {
            report_unknown(context, "unknown-variant", name, "variant",
                           known_names(context, context.variants));
        }
    }
    return mask == 0 ? model::all_variants : mask;
}

void read_tightening_rest(Context& context, Reader& reader, model::Tightening& tightening) {
    if (reader.take_word("in")) {
        if (const auto name = reader.take_name()) {
            tightening.pattern = reader.text(*name);
            if (!model::is_pattern(tightening.pattern))
                report_unknown(context, "unknown-pattern", *name, "pattern",
                               model::pattern_names());
        }
    }
    const std::uint32_t ahead = reader.next_is(TermKind::comma) ? 1 : 0;
    const bool passes =
        reader.next_is(TermKind::number, ahead) &&
        (reader.next_is_word("passes", ahead + 1) || reader.next_is_word("pass", ahead + 1));
    if (!passes)
        return;
    reader.take_comma();
    tightening.passes = static_cast<int>(read_number(reader));
    reader.skip();
}

} // namespace matchmark::resolve
