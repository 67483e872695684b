// A danger that is nowhere: no work can meet it, so nothing asks that it be made safe.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// Some line of the device says where it is, what it goes to, or what waits for it.
bool is_placed(const Walk& walk, ItemId id) {
    const model::Item& item = walk.model.item(id);
    if (item.carrier.known() || !item.feeds.empty() || !item.reach.empty())
        return true;
    return std::any_of(walk.model.items.begin(), walk.model.items.end(),
                       [&](const model::Item& other) {
                           return std::any_of(other.needs.begin(), other.needs.end(),
                                              [&](const model::Need& need) {
                                                  return need.condition.item.item == id;
                                              });
                       });
}

bool is_worked_on(const Walk& walk, ItemId id) {
    return std::any_of(walk.events.begin(), walk.events.end(),
                       [&](const Event& event) { return event.act && event.act->item == id; });
}

bool opens_something(const Walk& walk) {
    return std::any_of(walk.events.begin(), walk.events.end(), [&](const Event& event) {
        return event.act &&
               !walk.model.kind_of(event.act->item).verbs[event.act->verb].from_outside;
    });
}

void find_unplaced_danger(const Walk& walk, std::vector<Diagnostic>& findings) {
    if (walk.dangers.items.empty() || !opens_something(walk))
        return;
    for (const ItemId id : walk.dangers.items) {
        const model::Item& item = walk.model.item(id);
        if (item.role != model::Role::energy || is_placed(walk, id) || is_worked_on(walk, id))
            continue;
        const model::Kind& kind = walk.model.kind(item.kind);
        Diagnostic finding;
        finding.message = fmt::format("{}: nothing says where {} is",
                                      walk.model.hazards[kind.hazards.front().hazard.value].title,
                                      model::with_kind(walk.model, id));
        finding.primary = item.span;
        finding.label = "never met";
        finding.why = "no work can be held back for it";
        finding.help =
            fmt::format("say what `{}` is `in`, what it `feeds`, or which work `needs` it "
                        "to be safe",
                        item.name);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unplaced_danger;
const Rule unplaced_danger{"unplaced-danger", "hazard", Severity::warning,
                           "an energy with a hazard that is in nothing, feeds nothing, and is "
                           "left alone by a guide that opens the device",
                           find_unplaced_danger};

} // namespace matchmark::check::rules
