// What ties, covers, carries, blocks and feeds what.
#include "model/bolting.hpp"
#include "model/covered_with.hpp"
#include "model/passing_on.hpp"
#include "model/role_words.hpp"
#include "model/run_out.hpp"
#include "model/sources.hpp"
#include "resolve/stages.hpp"
#include "resolve/values.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::resolve {

using model::Item;
using model::ItemId;
using model::Role;
using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::Reader;

namespace {

constexpr unsigned role_bit(Role role) { return 1U << static_cast<unsigned>(role); }
constexpr unsigned any_role = 0xff;

// The roles that may have the detail.
unsigned roles_with(Keyword keyword) {
    switch (keyword) {
    case Keyword::covers:
    case Keyword::carries:
    case Keyword::blocks:
    case Keyword::renewed_as:
        return role_bit(Role::part);
    case Keyword::holds:
        return role_bit(Role::fastener) | role_bit(Role::bond);
    case Keyword::joins:
        return role_bit(Role::connector) | role_bit(Role::bond);
    case Keyword::feeds:
        return role_bit(Role::part) | role_bit(Role::energy);
    case Keyword::torque:
        return role_bit(Role::fastener) | role_bit(Role::connector);
    case Keyword::preload:
    case Keyword::depth:
    case Keyword::told_by:
        return role_bit(Role::fastener);
    case Keyword::safe_when_live:
        return role_bit(Role::connector);
    case Keyword::lets_nothing_out:
        return role_bit(Role::connector) | role_bit(Role::part) | role_bit(Role::fastener);
    default:
        return any_role;
    }
}

std::string roles_text(unsigned roles) {
    std::string text;
    for (std::size_t i = 0; i < model::role_words.size(); ++i) {
        if (((roles >> i) & 1U) == 0)
            continue;
        if (!text.empty())
            text += " or ";
        text += a_role(static_cast<model::Role>(i));
    }
    return text;
}

std::vector<std::vector<model::ItemRef>> read_ways(Context& context, Reader& reader) {
    std::vector<std::vector<model::ItemRef>> ways;
    do {
        ways.push_back(read_refs(context, reader));
    } while (reader.take_word("or"));
    return ways;
}

void read_covers(Context& context, ItemId id, Reader& reader, Span line) {
    for (const auto& covered : read_refs(context, reader)) {
        model::ItemRef cover;
        cover.item = id;
        cover.span = context.model.item(id).span;
        context.model.items.edit(covered.item.value).reach.push_back({{{cover}}, line});
    }
}

void read_tie(Context& context, ItemId id, Reader& reader) {
    auto parts = read_items(context, reader);
    reader.take_word("to");
    const auto base = read_items(context, reader);
    parts.insert(parts.end(), base.begin(), base.end());
    for (const ItemId part : parts) {
        auto& ties = context.model.items.edit(part.value).ties;
        auto& touches = context.model.items.edit(id.value).touches;
        if (std::find(touches.begin(), touches.end(), part) != touches.end())
            continue;
        touches.push_back(part);
        ties.push_back(id);
    }
}

// One line of several: what it names, behind the connectors of the line.
void read_feeds(Context& context, Item& item, Reader& reader) {
    const auto fed = read_items(context, reader);
    std::vector<ItemId> through;
    if (reader.take_word("through"))
        through = read_items(context, reader);
    for (const ItemId part : fed)
        item.feeding.edit().feeds_through.push_back({part, through});
}

void read_need(Context& context, Item& item, Reader& reader, Span line) {
    const auto condition = read_condition(context, reader);
    model::StateSet or_in = 0;
    while (reader.take_word("or")) {
        const auto other = reader.take_name();
        const auto state =
            condition && other ? state_called(context, condition->item.item, *other) : std::nullopt;
        or_in |= state ? model::in_set(*state) : 0;
    }
    reader.take_word("to");
    const auto verb = reader.take_name();
    if (!condition || !verb)
        return;
    const model::Kind& kind = context.model.kind(item.kind);
    const std::string name = text_of(context, *verb);
    if (model::find_verb(kind, name) == nullptr) {
        std::vector<std::string> verbs;
        for (const auto& known : kind.verbs)
            verbs.push_back(known.name);
        report_unknown(context, "unknown-verb", *verb,
                       fmt::format("verb of kind `{}` called", kind.name), verbs);
        return;
    }
    item.needs.push_back({*condition, name, line});
    item.needs.edit().back().alone = reader.take_word("alone");
    item.needs.edit().back().or_in = or_in;
}

// A place that the map would draw beside its face.
void report_off_face(Context& context, const model::Positions& positions) {
    const auto declared = context.faces.find(positions.face);
    if (!declared)
        return;
    const model::Face& face = context.model.device.faces[declared->index];
    for (const model::Point& point : positions.points) {
        if (point.x <= face.width_mm && point.y <= face.height_mm)
            continue;
        Diagnostic& finding =
            report(context, "off-face", positions.span,
                   fmt::format("{},{} lies off `{}`, which is {} x {} mm", point.x, point.y,
                               face.name, face.width_mm, face.height_mm));
        finding.severity = Severity::warning;
        finding.related.push_back({face.span, "its size"});
        finding.help = "places count in millimetres from the top left corner of the face";
        return;
    }
}

void read_positions(Context& context, Item& item, Reader& reader, Span line) {
    const auto face = reader.take_name();
    if (!face)
        return;
    model::Positions positions;
    positions.face = text_of(context, *face);
    positions.span = line;
    if (!context.faces.find(positions.face)) {
        report_unknown(context, "unknown-face", *face, "face", known_names(context, context.faces));
    }
    positions.points = read_points(reader);
    report_off_face(context, positions);
    item.rare.edit().positions = std::move(positions);
}

void read_limit_detail(Context& context, Item& item, Reader& reader, Span line) {
    const auto name = reader.take_name();
    if (!name)
        return;
    model::WearLimit limit;
    limit.name = text_of(context, *name);
    limit.span = line;
    if (const auto value = read_limit(context, reader))
        limit.limit = *value;
    if (reader.take_word("when"))
        limit.when = read_conditions(context, reader);
    item.rare.edit().limits.push_back(std::move(limit));
}

void read_torque(Context& context, Item& item, Reader& reader, Span line) {
    model::Tightening tightening;
    if (item.tightening->torque && item.tightening->span.known()) {
        Diagnostic& finding = report(context, "duplicate-name", line,
                                     fmt::format("a torque is told of `{}` twice", item.name));
        finding.related.push_back({item.tightening->span, "first told here"});
        finding.help = "leave one of them out";
    }
    tightening.torque = read_quantity(context, reader, model::Measure::torque);
    tightening.span = line;
    read_tightening_rest(context, reader, tightening);
    item.tightening = std::move(tightening);
}

// Published torques differ by a tenth, so two figures are all that there is to say.
double two_figures(double value) {
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(value)));
    return std::round(value * scale) / scale;
}

void read_preload(Context& context, Item& item, Reader& reader, Span line) {
    model::Tightening tightening;
    tightening.preload = read_quantity(context, reader, model::Measure::force);
    tightening.span = line;
    read_tightening_rest(context, reader, tightening);
    const model::Thread* thread = model::thread_of(context.model, item);
    const model::Friction* friction = model::friction_of(context.model, item);
    const auto torque =
        tightening.preload && thread != nullptr && friction != nullptr
            ? model::torque_for(*thread, tightening.preload->base, friction->coefficient)
            : std::nullopt;
    if (torque && *torque > 0) {
        tightening.torque = model::make_quantity(two_figures(*torque), "N.m");
    } else if (tightening.preload) {
        Diagnostic& finding =
            report(context, "bad-preload", line,
                   fmt::format("no torque can be worked out for `{}`", item.name));
        finding.why = "that takes a thread whose diameter, pitch and bearing face are known";
        finding.help = "name its thread, or state the torque";
    }
    item.tightening = std::move(tightening);
}

void read_links(Context& context, ItemId id, const Line& line, Reader& reader) {
    Item& item = context.model.items.edit(id.value);
    switch (line.keyword) {
    case Keyword::covers:
        read_covers(context, id, reader, line.whole);
        break;
    case Keyword::behind:
    case Keyword::under:
        item.reach.push_back({read_ways(context, reader), line.whole});
        break;
    case Keyword::carries:
        break; // read with the carriers
    case Keyword::blocks:
        for (const ItemId blocked : read_items(context, reader)) {
            context.model.items.edit(blocked.value).blocked_by.push_back(id);
        }
        break;
    case Keyword::holds:
    case Keyword::joins:
        read_tie(context, id, reader);
        break;
    case Keyword::feeds:
        read_feeds(context, item, reader);
        break;
    case Keyword::renewed_as:
        if (const auto whole = read_ref(context, reader))
            item.renewed_as = whole->item;
        break;
    default:
        break;
    }
}

void read_facts(Context& context, Item& item, const Line& line, Reader& reader) {
    switch (line.keyword) {
    case Keyword::needs:
        read_need(context, item, reader, line.whole);
        break;
    case Keyword::torque:
        read_torque(context, item, reader, line.whole);
        break;
    case Keyword::at:
        read_positions(context, item, reader, line.whole);
        break;
    case Keyword::keep:
        for (const Span word : read_name_list(reader))
            item.rare.edit().keep.push_back(text_of(context, word));
        break;
    case Keyword::limit:
        read_limit_detail(context, item, reader, line.whole);
        break;
    case Keyword::one_use:
        item.one_use = true;
        break;
    case Keyword::used_again:
        item.one_use = false;
        item.rare.edit().used_again_if = {};
        break;
    case Keyword::used_again_if:
        item.one_use = false;
        item.rare.edit().used_again_if = reader.take_text();
        break;
    case Keyword::preload:
        read_preload(context, item, reader, line.whole);
        break;
    case Keyword::depth:
        item.rare.edit().depth = read_quantity(context, reader, model::Measure::length);
        if (reader.take_word("above")) {
            if (const auto below = read_ref(context, reader))
                item.above = below->item;
        }
        break;
    case Keyword::told_by:
        item.told_by = reader.take_text();
        break;
    case Keyword::safe_when_live:
        item.safe_when_live = true;
        break;
    case Keyword::lets_nothing_out:
        item.lets_nothing_out = true;
        break;
    default:
        break;
    }
}

// `assumed` is the last word of a line.
void note_assumed(Context& context, ItemId id, const syntax::File& file, const Line& line) {
    if (line.term_count == 0)
        return;
    const syntax::Term& last = file.terms[line.first_term + line.term_count - 1];
    if (last.kind == syntax::TermKind::word &&
        context.sources.slice(file.span_of(last)) == "assumed")
        context.model.assumptions.edit().push_back({id, line.whole});
}

void read_relations(Context& context, ItemId id, const Declaration& declaration) {
    const auto& lines = declaration.file->lines;
    for (std::size_t i = declaration.head + 1; i < declaration.end;) {
        const Line& line = lines[i];
        if (syntax::is_prose(line.keyword)) {
            context.model.items.edit(id.value).messages.push_back(
                read_prose(context, declaration, i));
            continue;
        }
        ++i;
        if (line.shape != LineShape::detail)
            continue;
        Item& item = context.model.items.edit(id.value);
        const unsigned roles = roles_with(line.keyword);
        if ((roles & role_bit(item.role)) == 0) {
            report(context, "wrong-role", line.head,
                   fmt::format("`{}` is said of {}, and `{}` is {}", syntax::spelling(line.keyword),
                               roles_text(roles), item.name, roles_text(role_bit(item.role))))
                .help = fmt::format("leave the line out, or declare `{}` as what it is", item.name);
            continue;
        }
        Reader reader{context.sources, *declaration.file, line};
        read_links(context, id, line, reader);
        read_facts(context, item, line, reader);
        read_item_for_sale(context, item, line, reader);
        note_assumed(context, id, *declaration.file, line);
    }
}

std::optional<ItemId> declared_item(const Context& context, const Declaration& declaration) {
    Reader reader{context.sources, *declaration.file, declaration.line()};
    if (!syntax::declares_item(declaration.line().keyword))
        return std::nullopt;
    const auto name = reader.take_name();
    if (!name)
        return std::nullopt;
    const auto named = context.items.find(context.sources.slice(*name));
    if (!named || named->span != *name)
        return std::nullopt;
    return ItemId{named->index};
}

void read_carries(Context& context, ItemId id, const Declaration& declaration) {
    for (std::size_t i = declaration.head + 1; i < declaration.end; ++i) {
        const Line& line = declaration.file->lines[i];
        if (line.keyword != Keyword::carries || line.shape != LineShape::detail)
            continue;
        Reader reader{context.sources, *declaration.file, line};
        for (const auto& ref : read_refs(context, reader)) {
            bool ring = false;
            for (ItemId at = id; at.known(); at = context.model.item(at).carrier)
                ring = ring || at == ref.item;
            if (ring) {
                report(context, "carrier-ring", ref.span,
                       fmt::format("`{}` cannot carry `{}`, which it is in",
                                   context.model.item(id).name, context.model.item(ref.item).name))
                    .help =
                    "leave it out of this line, or take away what puts the one in the other";
            } else if (const ItemId known = context.model.item(ref.item).carrier;
                       known.known() && known != id) {
                report(context, "duplicate-name", ref.span,
                       fmt::format("`{}` is already in `{}`", context.model.item(ref.item).name,
                                   context.model.item(known).name))
                    .help = "leave it out of one of the two";
            } else {
                context.model.items.edit(ref.item.value).carrier = id;
            }
        }
    }
}

void settle_carried(model::Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        Item& item = model.items.edit(i);
        if (!item.carrier.known())
            continue;
        model.items.edit(item.carrier.value).carried.push_back(ItemId{i});
        for (ItemId at = item.carrier; at.known(); at = model.item(at).carrier) {
            item.variants &= model.item(at).variants;
        }
    }
}

} // namespace

void resolve_relations(Context& context, const std::vector<Declaration>& all) {
    for (const Declaration& declaration : all) {
        if (const auto id = declared_item(context, declaration))
            read_carries(context, *id, declaration);
    }
    settle_carried(context.model);
    for (const Declaration& declaration : all) {
        if (const auto id = declared_item(context, declaration))
            read_relations(context, *id, declaration);
    }
    model::settle_feeds_lines(context.model);
    model::settle_sources(context.model); // a source may stand below what it feeds
    model::settle_passing_on(context.model);
    model::settle_run_out(context.model);
    model::settle_covered_with(context.model);
}

} // namespace matchmark::resolve
