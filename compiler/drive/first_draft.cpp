// Writes the first text of a device or a guide, so that nobody starts from an empty page.
#include "drive/first_draft.hpp"

#include "bench/missing.hpp"
#include "model/spelling.hpp"
#include "plan/draft.hpp"
#include "source/embedded.hpp"
#include "source/replace_all.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace matchmark::drive {

using model::ItemId;

std::string title_of(const std::string& name) { return model::capitalised(model::spaced(name)); }

std::string device_draft(const std::string& name) {
    for (const EmbeddedText& start : templates()) {
        if (start.name == "device") {
            std::string text(start.text);
            replace_all(text, "{title}", title_of(name));
            replace_all(text, "{name}", name);
            return text;
        }
    }
    return {};
}

std::vector<ItemId> parts_by_depth(const bench::Bench& on) {
    std::vector<std::pair<std::size_t, ItemId>> found; // how many acts it takes
    const bench::State assembled = bench::assembled(on);
    const bench::Wish no_wish = [](std::uint32_t) { return model::StateSet{0}; };
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        const ItemId id{i};
        const model::Kind& kind = on.model->kind_of(id);
        const model::StateSet out = model::states_of_set(kind, 0) & ~kind.present;
        if (kind.role != model::Role::part || !on.exists(id) || out == 0) {
            continue;
        }
        if (const auto acts = bench::bring_to(on, assembled, id, out, no_wish);
            acts && !acts->empty()) {
            found.emplace_back(acts->size(), id);
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<ItemId> parts;
    for (const auto& [acts, id] : found) {
        parts.push_back(id);
    }
    return parts;
}

std::optional<std::string> guide_to(const bench::Bench& on, ItemId part, const std::string& name,
                                    const std::string& use) {
    plan::WayInLimits limits;
    limits.by_reason = true;
    const plan::WayIn way = plan::way_in(on, {{part}, false}, limits);
    if (way.acts.empty()) {
        return std::nullopt;
    }
    const model::Kind& kind = on.model->kind_of(part);
    const plan::DraftGoal goal{kind.verbs[way.acts.back().act.verb].name, {part}, "", name};
    return plan::draft(on, way, goal, use);
}

std::string guide_without_steps(const std::string& name, const std::string& use) {
    return fmt::format("use \"{}\"\n\nguide {} \"{}\"\n  for competent\n  text: Say here what the "
                       "work is for.\n",
                       use, name, title_of(name));
}

} // namespace matchmark::drive
