// A charge or a pressure proved gone with a meter that does not measure as far.
#include "check/troubles.hpp"
#include "model/stated_numbers.hpp"
#include "model/stored_energy.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Measure;
using model::Quantity;

struct Reading {
    Quantity may_be;       // what the meter may meet
    bool is_limit = false; // the bound itself; else what the device says of the item
};

// What is read off a scale, and not what is set.
bool is_read(Measure measure) {
    return measure == Measure::voltage || measure == Measure::pressure ||
           measure == Measure::current;
}

std::optional<Reading> reading_of(const Walk& walk, const Event& event) {
    const model::Item& item = walk.model.item(event.act->item);
    const model::Verb& verb = walk.model.kind(item.kind).verbs[event.act->verb];
    const auto& own = walk.action(event)->limit;
    const std::optional<model::Limit> limit = own ? std::optional(*own) : verb.limit;
    if (!limit || !limit->most || !is_read(limit->most->measure))
        return std::nullopt;
    const auto stated = model::described(item, limit->most->measure);
    if (stated && stated->base > limit->most->base)
        return Reading{*stated, false};
    return Reading{*limit->most, true};
}

Diagnostic measures_less(const Walk& walk, std::size_t at, const Reading& reading,
                         const model::Resource& meter, const Quantity& range) {
    const model::ItemId item = walk.events[at].act->item;
    const std::string most = model::to_text(reading.may_be);
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("`{}` measures up to {}, and {} {}", meter.name,
                               model::to_text(range), model::with_kind(walk.model, item),
                               reading.is_limit ? fmt::format("is proved against {}", most)
                                                : fmt::format("may stand at {}", most)));
    finding.label = "tells nothing";
    finding.why = reading.is_limit
                      ? "what is above its range may still be there"
                      : "if the charge or pressure is not gone, the meter is what breaks";
    finding.related.push_back({meter.span, "the meter"});
    finding.related.push_back({walk.model.item(item).span, "declared here"});
    finding.help = fmt::format("list one that measures at least {}", most);
    return finding;
}

void find_beyond_the_meter(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const auto reading = event.act ? reading_of(walk, event) : std::nullopt;
        if (!reading)
            continue;
        for (const model::ResourceId id : walk.action(event)->with) {
            const model::Resource& meter = walk.procedure.resources[id.value];
            const auto range = model::measures_up_to(meter, reading->may_be.measure);
            if (range && range->base < reading->may_be.base)
                findings.push_back(measures_less(walk, at, *reading, meter, *range));
        }
    }
}

} // namespace

extern const Rule beyond_the_meter;
const Rule beyond_the_meter{"beyond-the-meter", "tools", Severity::error,
                            "a charge or a pressure proved gone with a meter that does not measure "
                            "as far",
                            find_beyond_the_meter};

} // namespace matchmark::check::rules
