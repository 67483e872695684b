// A screw whose drive is of another size than its thread usually has. What holds nothing (a bleed
// screw, a drain plug) and the nuts of pipes and terminals have heads of their own sizes.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::DriveSize;

// The sizes that the item's drive usually has for its thread.
std::vector<const DriveSize*> usual_sizes(const Walk& walk, const model::Item& item) {
    std::vector<const DriveSize*> sizes;
    for (const model::Drive& drive : walk.model.drives) {
        if (drive.name != item.bolt->drive)
            continue;
        for (const DriveSize& size : drive.sizes) {
            if (std::find(size.threads.begin(), size.threads.end(), item.bolt->thread) !=
                size.threads.end())
                sizes.push_back(&size);
        }
    }
    return sizes;
}

std::string words(const std::vector<const DriveSize*>& sizes) {
    std::vector<std::string> all;
    for (const DriveSize* size : sizes) {
        std::string one =
            size->note.empty() ? size->size : fmt::format("{} ({})", size->size, size->note);
        if (std::find(all.begin(), all.end(), one) == all.end())
            all.push_back(std::move(one));
    }
    return model::list(all, "or");
}

// What the description says of the drive.
Span drive_span(const model::Item& item) {
    for (const model::SpecPhrase& phrase : item.spec) {
        if (std::find(phrase->words.begin(), phrase->words.end(), item.bolt->drive) !=
            phrase->words.end())
            return phrase.span;
    }
    return item.span;
}

bool is_driven(const Walk& walk, const Event& event) {
    return event.act && walk.model.kind_of(event.act->item).verbs[event.act->verb].by_driver;
}

void find_unusual_driver(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<bool> seen(walk.model.items.size());
    for (const Event& event : walk.events) {
        if (!is_driven(walk, event) || seen[event.act->item.value])
            continue;
        seen[event.act->item.value] = true;
        const model::Item& item = walk.model.item(event.act->item);
        if (item.bolt->drive_size.empty() || item.bolt->thread.empty() ||
            item.role != model::Role::fastener || item.touches.empty())
            continue;
        const auto sizes = usual_sizes(walk, item);
        const bool usual = std::any_of(sizes.begin(), sizes.end(), [&](const DriveSize* size) {
            return size->size == item.bolt->drive_size;
        });
        if (sizes.empty() || usual)
            continue;
        Diagnostic finding;
        finding.message =
            fmt::format("{} {} is unusual for {}", item.bolt->drive, item.bolt->drive_size,
                        model::with_kind(walk.model, event.act->item));
        finding.primary = drive_span(item);
        finding.label = "another size than usual";
        finding.why =
            fmt::format("{} usually has {} {}", item.bolt->thread, item.bolt->drive, words(sizes));
        finding.help = "try a driver on the screw, and correct the size if it is wrong";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unusual_driver;
const Rule unusual_driver{"unusual-driver", "tools", Severity::advice,
                          "a drive of another size than its thread usually has",
                          find_unusual_driver};

} // namespace matchmark::check::rules
