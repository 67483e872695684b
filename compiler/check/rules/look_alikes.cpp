// Two sorts of screw in one job that a bench would mix up.
//
// The least difference is the project's own rule, not a published one: lengths are told apart when
// they differ by the larger of 1 mm and a tenth.
#include "check/troubles.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

std::vector<model::ItemId> taken_off(const Walk& walk) {
    std::vector<model::ItemId> items;
    for (const Event& event : walk.events) {
        if (!event.act)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Kind& kind = walk.model.kind(item.kind);
        if (item.role != model::Role::fastener ||
            model::contains(kind.present, kind.verbs[event.act->verb].to))
            continue;
        if (std::find(items.begin(), items.end(), event.act->item) == items.end())
            items.push_back(event.act->item);
    }
    return items;
}

// Everything that is said of it but thread and length.
std::string rest_of_spec(const model::Item& item) {
    std::string rest;
    for (const auto& phrase : item.spec) {
        const bool sized =
            std::find(phrase.words.begin(), phrase.words.end(), item.thread) != phrase.words.end();
        if (!sized)
            rest += phrase.text + ",";
    }
    return rest;
}

bool alike(const model::Item& a, const model::Item& b) {
    if (a.kind != b.kind || a.thread.empty() || a.thread != b.thread ||
        rest_of_spec(a) != rest_of_spec(b))
        return false;
    if (a.length_mm <= 0 || b.length_mm <= 0)
        return false;
    const double difference = std::abs(a.length_mm - b.length_mm);
    return difference > 0 && difference < std::max(1.0, 0.1 * std::max(a.length_mm, b.length_mm));
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto items = taken_off(walk);
    for (std::size_t i = 0; i < items.size(); ++i) {
        for (std::size_t j = i + 1; j < items.size(); ++j) {
            const model::Item& a = walk.model.item(items[i]);
            const model::Item& b = walk.model.item(items[j]);
            if (!alike(a, b) || !a.told_by.empty() || !b.told_by.empty())
                continue;
            const model::Item& longer = a.length_mm > b.length_mm ? a : b;
            Diagnostic finding;
            finding.message = fmt::format("`{}` and `{}` are easily mixed up", a.name, b.name);
            finding.primary = b.span;
            finding.label = fmt::format("{} {} mm", b.thread, model::number_text(b.length_mm));
            finding.related.push_back(
                {a.span, fmt::format("{} {} mm", a.thread, model::number_text(a.length_mm))});
            finding.why =
                fmt::format("`{}` in the other's hole can reach what lies below", longer.name);
            finding.help =
                fmt::format("add `told by \"...\"` to `{}`: how they are told apart", longer.name);
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule look_alikes;
const Rule look_alikes{
    "look-alikes", "look-alikes", Severity::warning,
    "fasteners that differ too little to be told apart on the bench, and go in different holes",
    find};

} // namespace matchmark::check::rules
