// Something parted and made again more often than it is good for.
#include "check/troubles.hpp"

#include <fmt/core.h>
#include <map>

namespace matchmark::check::rules {

namespace {

bool renews(const model::Action* action) {
    return action != nullptr && action->sort == model::ActionSort::replace;
}

// Does the act make it again what it was when assembled?
bool made_again(const Walk& walk, const Event& event) {
    const model::Kind& kind = walk.model.kind_of(event.act->item);
    return kind.verbs[event.act->verb].to == kind.set_first.front();
}

void find_worn_out(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::map<model::ItemId, int> times;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (renews(walk.action(event))) {
            for (const model::Target& target : walk.action(event)->targets)
                times[target.ref.item] = 0;
        }
        if (!event.act || !made_again(walk, event))
            continue;
        const model::ItemId item = event.act->item;
        const int good_for = walk.model.kind_of(item).good_for;
        int& count = times[item];
        count = event.act->supplied ? 0 : count + 1;
        if (good_for <= 0 || count != good_for + 1)
            continue;
        const auto words = [](int number) {
            return model::counted(static_cast<std::size_t>(number), "time");
        };
        Diagnostic finding = finding_at(
            walk, at,
            fmt::format("{} parted and made again {}", item_is(walk, item), words(count)));
        finding.label = "once too often";
        finding.why = fmt::format("it is good for {}", words(good_for));
        finding.related.push_back({walk.model.item(item).span, "declared here"});
        finding.help = "leave it parted between the two steps, or renew it";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule worn_out;
const Rule worn_out{"worn-out", "one use", Severity::warning,
                    "parted and made again more often than its kind is good for", find_worn_out};

} // namespace matchmark::check::rules
