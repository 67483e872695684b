// Less on the list than the guide uses: the fitter finds out half way.
#include "check/troubles.hpp"

#include "model/fitting.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace matchmark::check::rules {

namespace {

using model::Measure;
using model::Quantity;

struct Need {
    std::map<model::ItemId, double> pieces; // for each item
    std::map<Measure, double> amounts;      // in base units
    std::vector<model::ItemId> items;
};

double members_spent(const Walk& walk, const Event& event) {
    const model::Item& item = walk.model.item(event.act->item);
    const bench::State& before = walk.before(event);
    double count = 0;
    for (std::uint16_t member = 0; member < item.count; ++member) {
        const auto& named = event.act->members;
        const bool meant =
            named.empty() || std::find(named.begin(), named.end(), member + 1) != named.end();
        const bool spent = (before.flags[item.first_member + member] & bench::spent) != 0;
        count += meant && spent ? 1 : 0;
    }
    return count;
}

// Pieces that the action renews of the target. Paste and tape come by the tube and the reel: what
// is laid first counts once for the item.
double pieces_for(const Walk& walk, const Event& event, const model::Target& target) {
    const model::Item& item = walk.model.item(target.ref.item);
    const model::Kind& kind = walk.model.kind(item.kind);
    double count = 0;
    if (event.act) {
        if (!item.one_use || !model::leads_home(kind, kind.verbs[event.act->verb]))
            return 0;
        count = members_spent(walk, event);
    } else if (walk.action(event)->sort == model::ActionSort::replace) {
        count = static_cast<double>(target.ref.members.empty() ? item.count
                                                               : target.ref.members.size());
    }
    return kind.laid_first && !kind.lies_loose && count > 0 ? 1 : count; // paste, from one tube
}

void add_need(const Walk& walk, const Event& event, const model::Target& target, Need& need) {
    const model::Action& action = *walk.action(event);
    const model::Item& item = walk.model.item(target.ref.item);
    need.items.push_back(target.ref.item);
    if (item.role != model::Role::fluid) {
        need.pieces[target.ref.item] += pieces_for(walk, event, target);
        return;
    }
    const model::Kind& kind = walk.model.kind(item.kind);
    const auto& amount = action.amount ? action.amount : item.amount;
    if (!event.act || !amount || !model::leads_home(kind, kind.verbs[event.act->verb]))
        return;
    need.amounts[amount->measure] += amount->base;
}

// What each resource of the guide is used for, by its index.
std::map<std::uint32_t, Need> needs_of(const Walk& walk) {
    std::map<std::uint32_t, Need> needs;
    for (const Event& event : walk.events) {
        const model::Action* action = walk.action(event);
        if (action == nullptr)
            continue;
        for (std::size_t t = 0; t < action->targets.size(); ++t) {
            const model::Target& target = action->targets[t];
            if ((event.act && t != event.target) || !walk.bench.exists(target.ref.item))
                continue;
            for (const auto id : action->with) {
                if (model::serves(walk.model, walk.procedure.resources[id.value], target.ref.item))
                    add_need(walk, event, target, needs[id.value]);
            }
        }
    }
    return needs;
}

// Is the one of it that is listed a kit: does it renew items of which none can stand for another?
bool is_kit(const Walk& walk, const Quantity& listed, const Need& need) {
    const auto description = [&](model::ItemId id) {
        const model::Item& item = walk.model.item(id);
        std::string words;
        for (const model::SpecPhrase& phrase : item.spec)
            words += phrase->text + ",";
        return std::pair(item.kind, words);
    };
    std::set<std::pair<model::KindId, std::string>> all;
    for (const auto& [item, pieces] : need.pieces)
        all.insert(description(item));
    return listed.value == 1 && all.size() == need.pieces.size();
}

double pieces_needed(const Walk& walk, const Quantity& listed, const Need& need) {
    const bool kit = is_kit(walk, listed, need);
    double needed = 0;
    for (const auto& [item, pieces] : need.pieces)
        needed = kit ? std::max(needed, pieces) : needed + pieces;
    return needed;
}

// "0.4 l", in the unit of what is listed; without the last binary noise.
std::string lacking(const Quantity& listed, double needed) {
    const double part = listed.base > 0 ? listed.value / listed.base : 1;
    const double rounded = std::round((needed - listed.base) * part * 1e6) / 1e6;
    return to_text(Quantity{rounded, listed.unit, listed.measure, 0});
}

void report_short_supply(const model::Resource& resource, const Quantity& listed, double needed,
                         const Walk& walk, const Need& need, std::vector<Diagnostic>& findings) {
    if (listed.base >= needed * (1 - 1e-9))
        return;
    const std::string more = lacking(listed, needed);
    Diagnostic finding;
    finding.message = fmt::format("`{}` is {} short", resource.name, more);
    finding.primary = resource.span;
    finding.label = fmt::format("{} more is used", more);
    if (listed.measure == Measure::number)
        finding.label = fmt::format("{} more {} used", more, more == "1" ? "is" : "are");
    finding.why = "the fitter finds out half way, with the device in pieces";
    std::vector<model::ItemId> told;
    for (const model::ItemId item : need.items) {
        if (std::find(told.begin(), told.end(), item) != told.end())
            continue;
        told.push_back(item);
        finding.related.push_back({walk.model.item(item).span, "used on this"});
    }
    finding.help = fmt::format("list {} more", more);
    findings.push_back(std::move(finding));
}

void find_short_supply(const Walk& walk, std::vector<Diagnostic>& findings) {
    const std::size_t own = walk.guide().resources.size();
    for (const auto& [index, need] : needs_of(walk)) {
        const model::Resource& resource = walk.procedure.resources[index];
        if (index >= own || resource.sort == model::ResourceSort::tool)
            continue;
        for (const Quantity& listed : resource.quantities) {
            if (listed.measure == Measure::number) {
                report_short_supply(resource, listed, pieces_needed(walk, listed, need), walk, need,
                                    findings);
            } else if (const auto amount = need.amounts.find(listed.measure);
                       amount != need.amounts.end()) {
                report_short_supply(resource, listed, amount->second, walk, need, findings);
            }
        }
    }
}

} // namespace

extern const Rule short_supply;
const Rule short_supply{"short-supply", "tools", Severity::warning,
                        "a supply or spare of which the guide uses more than is listed",
                        find_short_supply};

} // namespace matchmark::check::rules
