// Takes assumed lines away, one by one and item by item, and asks for the way in again.
#include "plan/assumptions.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark::plan {

using model::Assumption;
using model::ItemId;
using model::Model;

namespace {

// Lines that are told apart by their place; true when the line was one of these.
bool drop_by_place(Model& model, Span line) {
    bool found = false;
    for (model::Item& item : model.items.edit()) {
        const auto clauses = item.reach.size();
        const auto needs = item.needs.size();
        item.reach.erase(std::remove_if(item.reach.begin(), item.reach.end(),
                                        [&](const auto& clause) { return clause.span == line; }),
                         item.reach.end());
        std::erase_if(item.needs.edit(), [&](const auto& need) { return need.span == line; });
        found = found || item.reach.size() != clauses || item.needs.size() != needs;
    }
    return found;
}

void drop_line(Model& model, const Assumption& assumed) {
    if (drop_by_place(model, assumed.line))
        return;
    model::Item& item = model.items.edit(assumed.item.value);
    if (model::is_tie(item.role)) {
        for (const ItemId part : item.touches)
            std::erase(model.items.edit(part.value).ties, assumed.item);
        item.touches.clear();
        return;
    }
    if (!item.feeds.empty()) {
        item.feeds.clear();
        item.through.clear();
        if (item.feeding) {
            model::Feeding& feeding = item.feeding.edit();
            feeding.feeds_beyond.clear();
            feeding.feeds_through.clear();
            feeding.drives.clear();
            feeding.lines_through.clear();
        }
        return;
    }
    for (model::Item& other : model.items.edit())
        std::erase(other.blocked_by.edit(), assumed.item);
}

using ActKey = std::tuple<std::uint32_t, std::uint16_t, std::vector<std::uint16_t>>;

std::vector<ActKey> acts_of(const WayIn& way) {
    std::vector<ActKey> acts;
    for (const PlannedAct& planned : way.acts)
        acts.emplace_back(planned.act.item.value, planned.act.verb, planned.act.members);
    std::sort(acts.begin(), acts.end());
    return acts;
}

bool is_reason(const WayIn& way, Span line) {
    return std::any_of(way.reasons.begin(), way.reasons.end(),
                       [&](const ActReason& reason) { return reason.because == line; });
}

class Trials {
public:
    Trials(const bench::Bench& bench, const WayInGoal& goal, const WayIn& way)
        : bench_(bench), goal_(goal), way_(way), acts_(acts_of(way)) {}

    // The least way in without the lines; nothing when it is not proved.
    [[nodiscard]] std::optional<WayIn> way_without(const std::vector<Assumption>& lines) const {
        const Model changed = without(*bench_.model, lines);
        WayIn found = way_in({&changed, bench_.variant}, goal_);
        return found.proof == Proof::least ? std::optional(std::move(found)) : std::nullopt;
    }
    [[nodiscard]] bool differs(const WayIn& other) const {
        return other.seconds < way_.seconds || acts_of(other) != acts_;
    }

private:
    const bench::Bench& bench_;
    const WayInGoal& goal_;
    const WayIn& way_;
    std::vector<ActKey> acts_;
};

double saved(const WayIn& way, const Look& look) {
    return look.seconds_without ? way.seconds - *look.seconds_without : 0;
}

} // namespace

Model without(const Model& model, const std::vector<Assumption>& lines) {
    Model changed = model;
    for (const Assumption& line : lines)
        drop_line(changed, line);
    return changed;
}

Assumed assumed_by(const bench::Bench& bench, const WayInGoal& goal, const WayIn& way) {
    const auto& lines = bench.model->assumptions;
    const Trials trials(bench, goal, way);
    const bool search = lines.size() <= most_tried && way.proof == Proof::least;
    Assumed found;
    std::vector<Look> looks;
    std::vector<std::vector<Assumption>> lines_of;
    for (const Assumption& line : lines) {
        if (!bench.exists(line.item))
            continue;
        const auto other = search ? trials.way_without({line}) : std::nullopt;
        const bool reason = is_reason(way, line.line);
        const bool relied_on = reason || (other && trials.differs(*other));
        if (relied_on) {
            found.rests_on.push_back(
                {line, reason, other ? std::optional(other->seconds) : std::nullopt});
        }
        auto look = std::find_if(looks.begin(), looks.end(),
                                 [&](const Look& one) { return one.item == line.item; });
        if (look == looks.end()) {
            looks.push_back({line.item, 0, 0, std::nullopt});
            lines_of.emplace_back();
            look = looks.end() - 1;
        }
        ++look->lines;
        look->relied_on += relied_on ? 1 : 0;
        lines_of[static_cast<std::size_t>(look - looks.begin())].push_back(line);
    }
    for (std::size_t i = 0; i < looks.size(); ++i) {
        const auto other = search ? trials.way_without(lines_of[i]) : std::nullopt;
        if (other)
            looks[i].seconds_without = other->seconds;
        const auto worth = [&](const Look& look) {
            return std::tuple(saved(way, look), look.relied_on, look.lines);
        };
        if (!found.look || worth(looks[i]) > worth(*found.look))
            found.look = looks[i];
    }
    return found;
}

} // namespace matchmark::plan
