// A function that moves what a guard covers, and that nothing is said to drive.
#include "check/troubles.hpp"
#include "model/driven.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

bool is_fed(const model::Model& model, ItemId id) {
    for (ItemId at = id; at.known(); at = model.item(at).carrier) {
        if (!model.item(at).fed_by.empty() || !model.item(at).feeds.empty())
            return true;
    }
    return false;
}

void find_driven_by_nothing(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Function& function : walk.model.functions) {
        const auto& path = function.through;
        const auto guarded = std::find_if(path.begin(), path.end(), [&](ItemId id) {
            return walk.model.item(id).role == model::Role::part &&
                   model::guard_of(walk.model, walk.model.item(id)).known();
        });
        if (function.is_rating || guarded == path.end() ||
            std::any_of(path.begin(), path.end(),
                        [&](ItemId id) { return is_fed(walk.model, id); }))
            continue;
        Diagnostic finding;
        finding.message = fmt::format("`{}` moves {}, and nothing is said to drive it",
                                      function.name, model::with_kind(walk.model, *guarded));
        finding.primary = function.span;
        finding.label = "by what?";
        finding.related.push_back(
            {walk.model.item(model::guard_of(walk.model, walk.model.item(*guarded))).span,
             "a guard covers what moves"});
        finding.why = "a test of it counts as done at rest, with the guard on or off";
        finding.help = "declare what drives it: an `energy` that `feeds` a part of its path, such "
                       "as a supply, or an engine as `kind moving-mechanism`";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule driven_by_nothing;
const Rule driven_by_nothing{"driven-by-nothing", "live", Severity::warning,
                             "a function that moves what a guard covers, and that nothing drives",
                             find_driven_by_nothing};

} // namespace matchmark::check::rules
