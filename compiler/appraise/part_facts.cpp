// What is undone, with which tools, and what has to be renewed on the way to one part.
#include "appraise/part_facts.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/spelling.hpp"

#include <algorithm>

namespace matchmark::appraise {

using guide::Counted;
using guide::WayFound;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using model::Role;

namespace {

std::string act_words(const Model& model, const bench::Act& act) {
    return model::spaced(model.kind_of(act.item).verbs[act.verb].name) + " " +
           model::for_reader(model, model::ItemRef{act.item, act.members, {}});
}

std::string end_words(StepEnd end) {
    switch (end) {
    case StepEnd::part_off:
        return "a part is off";
    case StepEnd::bond:
        return "a bond is worked on";
    case StepEnd::supply:
        return "a supply is cut off";
    case StepEnd::drained:
        return "a fluid is drained";
    case StepEnd::tool_changed:
        return "another tool is taken";
    case StepEnd::at_last:
        break;
    }
    return "the goal is reached";
}

// "screw M2 x 6, hexalobular 6, countersunk"
std::string description(const Model& model, const Item& item) {
    const Kind& kind = model.kind(item.kind);
    std::string words = kind.title.empty() ? kind.name : kind.title;
    for (std::size_t i = 0; i < item.spec.size(); ++i)
        words += (i == 0 ? " " : ", ") + item.spec[i]->text;
    return words;
}

// Does the act take the tie, or the one-use part, out of its assembled state for good?
bool parts(const Model& model, const OrderedAct& act) {
    const Kind& kind = model.kind_of(act.act.item);
    const model::Verb& verb = kind.verbs[act.act.verb];
    return kind.set_of[verb.to] == 0 && model::contains(kind.binds, act.from) &&
           !model::contains(kind.binds, verb.to);
}

void add(std::vector<Counted>& list, const std::string& words, unsigned count) {
    const auto known = std::find_if(list.begin(), list.end(),
                                    [&](const Counted& one) { return one.words == words; });
    if (known == list.end())
        list.push_back({words, count});
    else
        known->count += count;
}

void count_ties(const Model& model, const std::vector<OrderedAct>& acts,
                guide::PartAppraisal& row) {
    for (const OrderedAct& act : acts) {
        const Item& item = model.item(act.act.item);
        if (!model::is_tie(item.role) || !parts(model, act))
            continue;
        const auto members = static_cast<unsigned>(act.act.members.size());
        const unsigned count = members == 0 ? item.count : members;
        auto& list = item.role == Role::fastener
                         ? row.fasteners
                         : (item.role == Role::connector ? row.plugs : row.bonds);
        add(list, description(model, item), count);
    }
}

// "hexalobular driver 5" is a `hexalobular-driver`; an `opening-pick` is what a verb calls a pick.
bool names_the_same(const Model& model, const std::string& tool, const std::string& supplied) {
    const auto& kinds = model.tool_kinds;
    const bool is_kind = std::any_of(kinds.begin(), kinds.end(), [&](const auto& kind) {
        return model::has_words(tool, kind.name) && model::has_words(kind.name, tool);
    });
    return model::has_words(tool, supplied) || (is_kind && model::has_words(supplied, tool));
}

std::optional<model::ToolClass> class_of(const Model& model, const std::string& tool) {
    model::Resource resource;
    resource.sort = model::ResourceSort::tool;
    resource.text = tool;
    return model::class_of(model, resource);
}

std::string source_words(const Model& model, const std::string& tool) {
    const auto source = source_of(model, tool);
    if (source == ToolSource::supplied_with_spare)
        return "comes with the spare part";
    if (source == ToolSource::supplied_with_product)
        return "comes with the product";
    const auto known = class_of(model, tool);
    return known ? std::string(model::describe(*known)) : std::string();
}

// Good for one use, and no longer as assembled.
std::vector<ItemId> spent(const Model& model, const std::vector<OrderedAct>& acts) {
    std::vector<ItemId> items;
    for (const OrderedAct& act : acts) {
        const Kind& kind = model.kind_of(act.act.item);
        const bool leaves = kind.set_of[act.from] == 0 && act.from == kind.set_first.front();
        if (model.item(act.act.item).one_use && leaves &&
            std::find(items.begin(), items.end(), act.act.item) == items.end())
            items.push_back(act.act.item);
    }
    return items;
}

} // namespace

std::optional<ToolSource> source_of(const Model& model, const std::string& tool) {
    if (tool.empty())
        return ToolSource::none;
    const auto known = class_of(model, tool);
    // A basic tool is at hand; that one more comes with the product takes nothing away.
    if (known == model::ToolClass::none)
        return ToolSource::none;
    if (known == model::ToolClass::basic)
        return ToolSource::basic;
    for (const model::SuppliedTool& supplied : model.device.product.tools) {
        const bool same = names_the_same(model, tool, supplied.tool) &&
                          (supplied.size.empty() || model::has_words(tool, supplied.size));
        if (same && supplied.with == model::supplied_with_words().front())
            return ToolSource::supplied_with_spare;
        if (same)
            return ToolSource::supplied_with_product;
    }
    if (!known)
        return std::nullopt;
    // The index has no score for a special tool, and so the lowest.
    return *known == model::ToolClass::supplied ? ToolSource::supplied_with_product
                                                : ToolSource::available;
}

Fastening fastening_of(const Item& tie, ItemId part) {
    if (!tie.one_use)
        return Fastening::reusable;
    const auto& with = tie.rare->comes_with;
    return std::find(with.begin(), with.end(), part) != with.end() ? Fastening::resupplied
                                                                   : Fastening::removable;
}

guide::PartAppraisal part_row(const Model& model, const PartWay& way, const FewestSteps& counted) {
    const Item& item = model.item(way.part);
    guide::PartAppraisal row;
    row.name = item.name;
    row.title = model::for_reader(model, way.part, false);
    row.counts_as = *item.rare->counts_as;
    row.way = way.found;
    row.why_not = way.why_not;
    row.fewest_steps = counted.proved;
    row.acts = static_cast<unsigned>(way.acts.size());
    row.seconds_apart = way.seconds_apart;
    row.seconds_back = way.seconds_back;
    row.waiting_apart = way.waiting_apart;
    row.waiting_back = way.waiting_back;
    row.at_least_seconds = way.at_least_seconds;
    for (const Step& step : counted.steps) {
        guide::CountedStep words;
        for (const std::size_t act : step.acts)
            words.acts.push_back(act_words(model, counted.order[act].act));
        words.ends_with = end_words(step.end);
        row.steps.push_back(std::move(words));
    }
    count_ties(model, way.acts, row);
    for (const OrderedAct& act : counted.order) {
        const bool known =
            act.tool.empty() || std::any_of(row.tools.begin(), row.tools.end(),
                                            [&](auto& one) { return one.words == act.tool; });
        if (!known)
            row.tools.push_back({act.tool, source_words(model, act.tool)});
    }
    for (const ItemId renewed : spent(model, way.acts))
        row.renewed.push_back(model::for_reader(model, renewed, false));
    return row;
}

PartFacts part_facts(const Model& model, const PartWay& way, const FewestSteps& counted) {
    PartFacts facts;
    facts.title = model::for_reader(model, way.part, false);
    facts.reached = way.found != WayFound::none;
    facts.known = way.found != WayFound::unknown;
    facts.steps = static_cast<unsigned>(counted.steps.size());
    facts.authorised_remotely = model.item(way.part).rare->authorised_remotely;
    for (const OrderedAct& act : way.acts) {
        const Item& item = model.item(act.act.item);
        if (!model::is_tie(item.role) || !parts(model, act))
            continue;
        const Fastening fastening = fastening_of(item, way.part);
        if (facts.worst_fastener.empty() || fastening > facts.fastening) {
            facts.fastening = fastening;
            facts.worst_fastener = model::for_reader(model, act.act.item, false);
        }
    }
    for (const OrderedAct& act : way.acts) {
        const auto source = source_of(model, act.tool);
        if (!source) {
            facts.undeclared_tool = act.tool;
        } else if (!act.tool.empty() && (facts.worst_tool.empty() || *source > facts.tool)) {
            facts.tool = *source;
            facts.worst_tool = act.tool;
        }
    }
    return facts;
}

} // namespace matchmark::appraise
