// A screw longer than the hole is deep, or one that would be in the hole of its like.
#include "check/screws.hpp"
#include "check/troubles.hpp"

#include "model/look_alikes.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

std::string below(const Walk& walk, const model::Item& hole) {
    return hole.above.known() ? model::with_kind(walk.model, hole.above) : "what lies below";
}

Diagnostic pierces(const Walk& walk, const model::Item& screw, const model::Item& hole,
                   std::string message) {
    Diagnostic finding;
    finding.message = std::move(message);
    finding.label = fmt::format("{} mm long", model::number_text(screw.bolt->length_mm));
    finding.why = fmt::format("the hole is {} deep, and then comes {}", to_text(*hole.rare->depth),
                              below(walk, hole));
    if (hole.above.known())
        finding.related.push_back({walk.model.item(hole.above).span, "this lies below"});
    return finding;
}

void find_own(const Walk& walk, const model::Item& item, std::vector<Diagnostic>& findings) {
    if (model::passes_depth_by(item, item) <= 0)
        return;
    Diagnostic finding =
        pierces(walk, item, item, fmt::format("`{}` reaches {}", item.name, below(walk, item)));
    finding.primary = item.span;
    finding.help = "measure the screw and the hole again";
    findings.push_back(std::move(finding));
}

void find_swapped(const Walk& walk, const model::Item& a, const model::Item& b,
                  std::vector<Diagnostic>& findings) {
    const model::Item& screw = a.bolt->length_mm > b.bolt->length_mm ? a : b;
    const model::Item& hole = a.bolt->length_mm > b.bolt->length_mm ? b : a;
    Diagnostic finding = pierces(walk, screw, hole,
                                 fmt::format("`{}` in the hole of `{}` reaches {}", screw.name,
                                             hole.name, below(walk, hole)));
    finding.primary = screw.span;
    finding.related.push_back({hole.span, "the other hole"});
    finding.help =
        fmt::format("add `told by \"...\"` to `{}`: how they are told apart", screw.name);
    findings.push_back(std::move(finding));
}

void find_too_deep(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto pairs = pairs_taken_off(walk, [](const model::Item& a, const model::Item& b) {
        return !told_apart(a, b) && harmful_swap(a, b);
    });
    auto pair = pairs.begin();
    for (const model::ItemId item : screws_taken_off(walk)) {
        find_own(walk, walk.model.item(item), findings);
        for (; pair != pairs.end() && pair->first == item; ++pair)
            find_swapped(walk, walk.model.item(item), walk.model.item(pair->second), findings);
    }
}

} // namespace

extern const Rule too_deep;
const Rule too_deep{"too-deep", "look-alikes", Severity::error,
                    "a screw that reaches past the depth of its hole, or of that of its like",
                    find_too_deep};

} // namespace matchmark::check::rules
