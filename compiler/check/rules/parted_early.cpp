// A protective earth that is parted before the other connectors of its part, or joined after them.
#include "check/mending.hpp"
#include "check/troubles.hpp"
#include "model/comes_first.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

const model::Action* action_at(const Walk& walk, std::size_t at) {
    return walk.action(walk.events[at]);
}

bool parts_tie(const Walk& walk, std::size_t at) {
    const bench::Act& act = *walk.events[at].act;
    const model::Kind& kind = walk.model.kind_of(act.item);
    return model::lets_go(kind, kind.verbs[act.verb]);
}

// The event, of those in the stretch, that last parts (or first joins) one of the connectors, in a
// line of its own; none: all stand as they should.
std::optional<std::size_t> out_of_turn(const Walk& walk, std::size_t earth, std::size_t from,
                                       std::size_t to, bool parting) {
    const auto connectors = model::parted_before(walk.model, walk.events[earth].act->item);
    std::optional<std::size_t> found;
    for (std::size_t at = from; at < to; ++at) {
        const auto& act = walk.events[at].act;
        if (act && among(connectors, act->item) && parts_tie(walk, at) == parting &&
            action_at(walk, at) != action_at(walk, earth) && (parting || !found))
            found = at;
    }
    return found;
}

// The earth's next event after it is parted, or the one before it is joined; the ends of the guide
// where there is none.
std::size_t other_turn(const Walk& walk, std::size_t earth, bool parting) {
    const auto is_turn = [&](std::size_t at) {
        return walk.events[at].act && walk.events[at].act->item == walk.events[earth].act->item;
    };
    std::size_t at = earth;
    if (parting) {
        while (++at < walk.events.size() && !is_turn(at)) {
        }
        return at;
    }
    while (at > 0 && !is_turn(at - 1))
        --at;
    return at;
}

Diagnostic told(const Walk& walk, std::size_t earth, std::size_t other, bool parting) {
    const bench::Act& act = *walk.events[earth].act;
    const std::string name = model::with_kind(walk.model, act.item);
    const std::string beside_it = model::quoted(walk.model, walk.events[other].act->item);
    Diagnostic finding =
        finding_at(walk, earth,
                   parting ? fmt::format("{} is parted before {}", name, beside_it)
                           : fmt::format("{} is joined after {}", name, beside_it));
    finding.label = parting ? "too early here" : "too late here";
    finding.why = "while the others are joined, a fault could make the part live with nothing to "
                  "carry it off";
    finding.related.push_back(
        {place_of(walk, other), parting ? "parted only here" : "joined already here"});
    const model::Action& action = *action_at(walk, earth);
    if (action.targets.size() == 1) {
        mend_with(walk, finding, parting ? other + 1 : other, {act}, {action.line});
        if (!finding.edits.empty())
            finding.edits.push_back(take_out(walk, action.line, {act}));
    }
    finding.help = parting ? "part it last" : "join it first";
    return finding;
}

void find_parted_early(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (!act || !walk.model.kind_of(act->item).parted_last || action_at(walk, at)->derived)
            continue;
        const bool parting = parts_tie(walk, at);
        const std::size_t turn = other_turn(walk, at, parting);
        const auto other = parting ? out_of_turn(walk, at, at, turn, true)
                                   : out_of_turn(walk, at, turn, at, false);
        if (other)
            findings.push_back(told(walk, at, *other, parting));
    }
}

} // namespace

extern const Rule parted_early;
const Rule parted_early{"parted-early", "live", Severity::warning,
                        "an earth that is parted before the other connectors of its part",
                        find_parted_early};

} // namespace matchmark::check::rules
