// A spare on the list that the guide never fits.
#include "check/troubles.hpp"
#include "check/wear_limits.hpp"

#include "model/fitting.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The item that the spare is for, if that is one.
std::optional<model::ItemId> item_for(const Walk& walk, const model::Resource& spare) {
    std::optional<model::ItemId> found;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        if (!walk.bench.exists(model::ItemId{i}) ||
            !model::serves(walk.model, spare, model::ItemId{i})) {
            continue;
        }
        if (found)
            return std::nullopt;
        found = model::ItemId{i};
    }
    return found;
}

// What goes back used is reported there.
bool spare_reported_as_used(const Walk& walk, model::ItemId item) {
    for (const Trouble& trouble : walk.troubles) {
        const auto* refusal = std::get_if<bench::Refusal>(&trouble.objection);
        if (refusal == nullptr || !std::holds_alternative<bench::UsedTwice>(*refusal))
            continue;
        if (walk.events[trouble.event].act->item == item)
            return true;
    }
    return false;
}

void mend_unused_spare(const Walk& walk, const model::Resource& spare, model::ItemId item,
                       Diagnostic& finding) {
    const std::string line =
        fmt::format("replace {} with {}", walk.model.item(item).name, spare.name);
    finding.help = fmt::format("write `{}` while it is out, or take the spare off the list", line);
    for (std::size_t at = walk.events.size() + 1; at-- > 0;) {
        if (bench::present(walk.bench, walk.state_at(at), item))
            continue;
        finding.edits = insert_at(walk, at, {line});
        if (!finding.edits.empty())
            return;
    }
}

void find_unused_spare(const Walk& walk, std::vector<Diagnostic>& findings) {
    // A spare that is fitted only when the book's limit says so is missed with the measurement.
    if (!unmeasured(walk).empty())
        return;
    const auto used = used_resources(walk);
    const std::size_t own = walk.guide().resources.size();
    for (std::uint32_t i = 0; i < own; ++i) {
        const model::Resource& spare = walk.procedure.resources[i];
        if (spare.sort != model::ResourceSort::spare || used.count(i) != 0)
            continue;
        const auto item = item_for(walk, spare);
        if (item && spare_reported_as_used(walk, *item))
            continue;
        Diagnostic finding;
        finding.message = fmt::format("spare `{}` is on the list and never fitted", spare.name);
        finding.primary = spare.span;
        finding.label = "bought for nothing";
        finding.why = "the old one would go back in, or the reader need not buy it";
        finding.help = "fit it with `replace`, or take it off the list";
        if (item)
            mend_unused_spare(walk, spare, *item, finding);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unused_spare;
const Rule unused_spare{"unused-spare", "tools", Severity::error,
                        "a spare on the list that no step fits", find_unused_spare};

} // namespace matchmark::check::rules
