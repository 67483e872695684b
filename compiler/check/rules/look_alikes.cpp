// Two sorts of screw in one job that a bench would mix up.
#include "check/screws.hpp"
#include "check/troubles.hpp"

#include "model/bolting.hpp"
#include "model/look_alikes.hpp"

#include <cmath>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Nobody sees less than this in mm: the project's own rule.
constexpr double seen_mm = 0.5;

std::string size_of(const model::Item& item) {
    return fmt::format("{} {} mm", item.bolt->thread, model::number_text(item.bolt->length_mm));
}

double diameter_of(const Walk& walk, const model::Item& item) {
    const model::Thread* thread = model::thread_of(walk.model, item);
    return thread != nullptr && thread->diameter ? thread->diameter->base : 0;
}

Diagnostic mixed_up(const Walk& walk, const model::Item& a, const model::Item& b,
                    model::Likeness likeness) {
    const double difference = std::abs(a.bolt->length_mm - b.bolt->length_mm);
    const model::Item& longer = a.bolt->length_mm > b.bolt->length_mm ? a : b;
    Diagnostic finding;
    finding.message = fmt::format("`{}` and `{}` are easily mixed up", a.name, b.name);
    finding.primary = b.span;
    finding.label = size_of(b);
    finding.related.push_back({a.span, size_of(a)});
    if (likeness == model::Likeness::thread) {
        const bool thicker = diameter_of(walk, a) > diameter_of(walk, b);
        finding.why = fmt::format("{} forced into a hole for {} tears the thread",
                                  thicker ? a.bolt->thread : b.bolt->thread,
                                  thicker ? b.bolt->thread : a.bolt->thread);
    } else {
        finding.why =
            fmt::format("`{}` in the other's hole can reach what lies below", longer.name);
        if (difference <= seen_mm)
            finding.why += ", and nobody sees the difference without measuring";
    }
    finding.help = fmt::format("add `told by \"...\"` to `{}`: how they are told apart",
                               likeness == model::Likeness::thread ? b.name : longer.name);
    return finding;
}

void find_look_alikes(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto pairs = pairs_taken_off(walk, [&](const model::Item& a, const model::Item& b) {
        return model::likeness(walk.model, a, b) != model::Likeness::none && !told_apart(a, b) &&
               !harmful_swap(a, b);
    });
    for (const ScrewPair& pair : pairs) {
        const model::Item& a = walk.model.item(pair.first);
        const model::Item& b = walk.model.item(pair.second);
        findings.push_back(mixed_up(walk, a, b, model::likeness(walk.model, a, b)));
    }
}

} // namespace

extern const Rule look_alikes;
const Rule look_alikes{
    "look-alikes", "look-alikes", Severity::warning,
    "fasteners that differ too little to be told apart on the bench, and go in different holes",
    find_look_alikes};

} // namespace matchmark::check::rules
