// An old part whose kind says how it is disposed of, and a guide that does not.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The line that disposes of it later; nothing when there is none.
const model::Action* disposed_after(const Walk& walk, std::size_t at, model::ItemId item) {
    for (std::size_t later = at + 1; later < walk.events.size(); ++later) {
        const model::Action* action = walk.action(walk.events[later]);
        if (action == nullptr || action->sort != model::ActionSort::dispose)
            continue;
        for (const auto& target : action->targets) {
            if (target.ref.item == item)
                return action;
        }
    }
    return nullptr;
}

// The items that the event takes out of service: replaced, scrapped, or parted though good for one
// use.
std::vector<model::ItemId> taken_out_of_service(const Walk& walk, const Event& event) {
    std::vector<model::ItemId> items;
    if (event.act) {
        const model::Item& item = walk.model.item(event.act->item);
        const model::Kind& kind = walk.model.kind(item.kind);
        const model::Verb& verb = kind.verbs[event.act->verb];
        const bool parts = item.role != model::Role::part && item.one_use &&
                           kind.set_of[verb.to] == 0 &&
                           bench::in_first_state(walk.bench, walk.before(event), event.act->item);
        if (parts)
            items.push_back(event.act->item);
    } else if (const model::Action* action = walk.action(event)) {
        const bool ends =
            action->sort == model::ActionSort::replace || action->sort == model::ActionSort::scrap;
        for (const auto& target : action->targets) {
            if (ends)
                items.push_back(target.ref.item);
        }
    }
    return items;
}

// As another class than its kind's; one that says more (`damaged-battery-waste`) is as good.
Diagnostic disposed_otherwise(const Walk& walk, const model::Action& line, model::ItemId id) {
    const model::Item& item = walk.model.item(id);
    const model::Kind& kind = walk.model.kind(item.kind);
    Diagnostic finding;
    finding.message =
        fmt::format("the old {} disposed of as `{}`", item_is(walk, id), *line.aspect);
    finding.primary = line.line;
    finding.label = "another class";
    finding.why = fmt::format("it is {}", kind.waste);
    finding.related.push_back({item.span, "declared here"});
    const std::size_t as = walk.sources.slice(line.line).rfind(" as " + *line.aspect);
    if (as != std::string_view::npos) {
        const auto begin = static_cast<std::uint32_t>(line.line.begin + as + 4);
        const auto end = static_cast<std::uint32_t>(begin + line.aspect->size());
        finding.help = fmt::format("write `{}`", kind.waste);
        finding.edits = {{{line.line.file, begin, end}, kind.waste}};
    }
    return finding;
}

void find_not_disposed(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        for (const model::ItemId id : taken_out_of_service(walk, walk.events[at])) {
            const model::Kind& kind = walk.model.kind_of(id);
            if (kind.waste.empty() || !walk.bench.exists(id))
                continue;
            const model::Item& item = walk.model.item(id);
            if (const model::Action* line = disposed_after(walk, at, id)) {
                if (!model::has_words(*line->aspect, kind.waste))
                    findings.push_back(disposed_otherwise(walk, *line, id));
                continue;
            }
            Diagnostic finding =
                finding_at(walk, at, fmt::format("the old {} not disposed of", item_is(walk, id)));
            finding.label = "taken out of service here";
            finding.why = fmt::format("it is {}", kind.waste);
            finding.related.push_back({item.span, "declared here"});
            finding.help = "add this line after it";
            finding.edits =
                insert_at(walk, at + 1, {fmt::format("dispose {} as {}", item.name, kind.waste)});
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule not_disposed;
const Rule not_disposed{
    "not-disposed", "hazard", Severity::error,
    "an old part, of a kind with a waste class, that is not disposed of as that",
    find_not_disposed};

} // namespace matchmark::check::rules
