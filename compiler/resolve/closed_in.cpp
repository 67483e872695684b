// A part that closes over the very screw or plug that holds it can never come off.
#include "resolve/stages.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::resolve {

namespace {

using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;

// Parted only by hand or tool on the thing itself, and holding as long as nobody does that.
bool has_to_be_reached(const Kind& kind) {
    const bool holds = model::contains(kind.binds, kind.set_first.front());
    return holds && std::all_of(kind.verbs.begin(), kind.verbs.end(), [&](const auto& verb) {
               return !model::lets_go(kind, verb) || model::asks_reach(kind, verb);
           });
}

// There is no state in which it is in its place and lets one in, as an opened lid does.
bool covers_while_there(const Model& model, ItemId part) {
    const Kind& kind = model.kind_of(part);
    const Item& item = model.item(part);
    const model::StateSet open = kind.present & ~kind.covers & model::states_of_set(kind, 0);
    return item.role == model::Role::part && item.count == 1 && !item.carrier.known() &&
           item.carried.empty() && open == 0;
}

// The line, if there is one, by which the part is in every way to the tie.
const model::ReachClause* closed_by(const Item& tie, ItemId part) {
    for (const model::ReachClause& clause : tie.reach) {
        const bool always = std::all_of(clause.ways.begin(), clause.ways.end(), [&](auto& way) {
            return std::any_of(way.begin(), way.end(),
                               [&](const model::ItemRef& ref) { return ref.item == part; });
        });
        if (always && !clause.ways.empty())
            return &clause;
    }
    return nullptr;
}

} // namespace

void check_closed_in(Context& context) {
    const Model& model = context.model;
    for (const Item& tie : model.items) {
        if (!model::is_tie(tie.role) || tie.reach.empty() ||
            !has_to_be_reached(model.kind(tie.kind)))
            continue;
        for (const ItemId part : tie.touches) {
            const model::ReachClause* clause =
                covers_while_there(model, part) ? closed_by(tie, part) : nullptr;
            if (clause == nullptr || (tie.variants & model.item(part).variants) == 0)
                continue;
            const std::string& name = model.item(part).name;
            Diagnostic& finding =
                report(context, "closed-in", tie.span,
                       fmt::format("`{}` holds `{}`, which covers it: it can never come off",
                                   tie.name, name));
            finding.severity = Severity::warning;
            finding.label = "can only be reached when that is off";
            finding.related.push_back({clause->span, "covers it"});
            finding.help =
                fmt::format("leave `{}` out of what `{}` covers if a hand or a tool gets at it; if "
                            "`{}` is opened "
                            "or lifted first, say so by its kind, as `kind hinged-cover` does",
                            tie.name, name, name);
        }
    }
}

} // namespace matchmark::resolve
