// A spare that the list describes as one for the other side.
#include "check/troubles.hpp"

#include <array>
#include <fmt/core.h>
#include <utility>

namespace matchmark::check::rules {

namespace {

using model::ItemId;
using model::Resource;

// Where two of a sort that look alike and do not go in each other's place stand.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> sides{
    {{"left", "right"}, {"front", "rear"}, {"upper", "lower"}, {"inner", "outer"}}};

// The word of the pair that the title has, if it has one alone.
std::string_view side_in(std::string_view title,
                         const std::pair<std::string_view, std::string_view>& pair) {
    const auto said = [&](std::string_view side) { // a thread has a hand, and no side
        return model::has_words(title, side) &&
               !model::has_words(title, std::string(side) + " hand");
    };
    const bool first = said(pair.first);
    if (first == said(pair.second))
        return {};
    return first ? pair.first : pair.second;
}

struct Sides {
    std::string_view of_spare;
    std::string_view of_item;
};

// Nothing when the spare may be the right one for one of the items that it is for.
std::optional<Sides> other_than(const Walk& walk, const Resource& spare,
                                const std::pair<std::string_view, std::string_view>& pair) {
    const std::string_view said = side_in(spare.text, pair);
    std::optional<Sides> found;
    for (const ItemId item : spare.for_items) {
        const std::string_view own = side_in(walk.model.item(item).title, pair);
        if (said.empty() || own.empty() || own == said)
            return std::nullopt;
        found = Sides{said, own};
    }
    return found;
}

void find_other_side(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Resource& resource : walk.procedure.resources) {
        if (resource.sort == model::ResourceSort::tool)
            continue;
        for (const auto& pair : sides) {
            const auto other = other_than(walk, resource, pair);
            if (!other)
                continue;
            const ItemId item = resource.for_items.front();
            Diagnostic finding;
            finding.primary = resource.span;
            finding.message =
                fmt::format("`{}` is described as {}, and {} is {}", resource.name, other->of_spare,
                            model::quoted(walk.model, item), other->of_item);
            finding.label = "for another place";
            finding.why = "whoever buys by the list gets one that does not fit";
            finding.related.push_back({walk.model.item(item).span, "declared here"});
            finding.help = "correct the description, or what it is for";
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule other_side;
const Rule other_side{"other-side", "goal", Severity::warning,
                      "a spare that the list describes as one for the other side", find_other_side};

} // namespace matchmark::check::rules
