// A fastener turned with a tool of the list, though nobody says what drive it has.
#include "check/troubles.hpp"

#include "model/fitting.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

using model::ResourceId;

// The tool, when only the item's drive could say whether it fits.
const model::Resource* untold(const Walk& walk, const Event& event) {
    const model::Action& action = *walk.action(event);
    const model::Item& item = walk.model.item(event.act->item);
    model::Verb verb = walk.model.kind(item.kind).verbs[event.act->verb];
    if (!verb.by_driver || !item.bolt->drive.empty() || action.derived)
        return nullptr;
    verb.by_driver = false; // does a tool fit by the verb's own list?
    const model::Resource* named = nullptr;
    for (const ResourceId id : action.with) {
        const model::Resource& tool = walk.procedure.resources[id.value];
        if (tool.sort != model::ResourceSort::tool)
            continue;
        if (!verb.tools.empty() && model::tool_fits(walk.model, tool, item, verb))
            return nullptr;
        named = named == nullptr ? &tool : named;
    }
    return named;
}

// Each word of at least three letters, between hyphens or spaces.
std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find_first_of("- ", at), text.size());
        if (end - at >= 3)
            words.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

// How many words of the one begin a word of the drive's name or title.
std::ptrdiff_t likeness(std::string_view said, const model::Drive& drive) {
    const std::string known = drive.name + " " + drive.title;
    const auto candidates = words_of(known);
    const auto words = words_of(said);
    return std::count_if(words.begin(), words.end(), [&](std::string_view word) {
        return std::any_of(candidates.begin(), candidates.end(),
                           [&](std::string_view one) { return one.starts_with(word); });
    });
}

// The drives most like what is said, that come in that size, the shortest name first: a
// `hex-socket 5` may be a `hexagon 5`.
std::string drives_like(const model::Model& model, const std::string& said,
                        const std::string& size) {
    constexpr std::size_t most_named = 3;
    std::ptrdiff_t best = 1;
    std::vector<const model::Drive*> drives;
    for (const model::Drive& drive : model.drives) {
        const std::ptrdiff_t like = likeness(said, drive);
        if (like < best || std::none_of(drive.sizes.begin(), drive.sizes.end(),
                                        [&](const auto& known) { return known.size == size; }))
            continue;
        if (like > best)
            drives.clear();
        best = like;
        drives.push_back(&drive);
    }
    std::stable_sort(drives.begin(), drives.end(),
                     [](const auto* a, const auto* b) { return a->name.size() < b->name.size(); });
    drives.resize(std::min(drives.size(), most_named));
    std::vector<std::string> names;
    for (const model::Drive* drive : drives)
        names.push_back(fmt::format("`{} {}`", drive->name, size));
    return fmt::format("{}", fmt::join(names, ", "));
}

std::string add_the_drive(const model::Model& model, const model::Item& item) {
    for (const model::SpecPhrase& phrase : item.spec) {
        for (std::size_t i = 0; i + 1 < phrase->words.size(); ++i) {
            const std::string& said = phrase->words[i];
            const std::string& size = phrase->words[i + 1];
            const std::string like = drives_like(model, said, size);
            if (!like.empty())
                return fmt::format("`{} {}` names no drive; with a word in common: {}", said, size,
                                   like);
        }
    }
    return "add the drive and its size, such as `hexagon-head 13`";
}

void find_no_drive(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<model::ItemId> reported;
    for (const Event& event : walk.events) {
        const model::Resource* tool = event.act ? untold(walk, event) : nullptr;
        if (tool == nullptr)
            continue;
        const model::ItemId id = event.act->item;
        if (std::find(reported.begin(), reported.end(), id) != reported.end())
            continue;
        reported.push_back(id);
        Diagnostic finding;
        finding.message =
            fmt::format("no drive is declared for {}", model::with_kind(walk.model, id));
        finding.primary = walk.model.item(id).span;
        finding.label = "any tool would do";
        finding.related.push_back({walk.action(event)->head, "turned with `" + tool->name + "`"});
        finding.why = fmt::format("whether `{}` fits cannot be checked", tool->name);
        finding.help = add_the_drive(walk.model, walk.model.item(id)) +
                       "; `matchmark kinds drives` lists them";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule no_drive;
const Rule no_drive{"no-drive", "tools", Severity::advice,
                    "a fastener turned with a tool of the list, and declared without a drive",
                    find_no_drive};

} // namespace matchmark::check::rules
