// A part renewed, or a function disturbed, that no test proves after it is back.
#include "check/chances.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

bool is_tie(const Walk& walk, const Obligation& entry) {
    return entry.item.known() && walk.model.item(entry.item).role != model::Role::part;
}

std::string new_test(const Walk& walk, const std::vector<Obligation>& group) {
    const auto name = [&](const Obligation& entry) {
        return entry.function.known() ? walk.model.functions[entry.function.value].name
                                      : walk.model.item(entry.item).name;
    };
    const Obligation& first = group.front();
    const std::string title = first.function.known()
                                  ? walk.model.functions[first.function.value].title
                                  : fmt::format("The {} {}", walk.model.item(first.item).title,
                                                is_tie(walk, first) ? "holds" : "works");
    std::string text =
        fmt::format("test prove-{} \"{}\"\n  proves {}", name(first), title, name(first));
    for (std::size_t i = 1; i < group.size(); ++i)
        text += ", " + name(group[i]);
    const std::string tools = with_unused_tools(walk);
    if (!tools.empty())
        text += "\n " + tools;
    return text + "\n";
}

Diagnostic too_early(const Walk& walk, const Proven& proven) {
    const model::Step& test = walk.step(walk.events[*proven.early]);
    Diagnostic finding = finding_at(walk, *proven.early,
                                    fmt::format("test `{}` comes before {} is back", test.name,
                                                name_of(walk, proven.obligation)));
    finding.label = "proves nothing here";
    std::vector<std::string> missing;
    for (const model::ItemId item : must_be_back(walk, proven.obligation, test)) {
        if (!bench::is_back(walk.bench, walk.state_at(*proven.early), item))
            missing.push_back(model::with_kind(walk.model, item));
    }
    finding.why = missing.empty() ? "what is tested must be the finished work"
                                  : fmt::format("{} {} not back yet", model::list(missing),
                                                missing.size() > 1 ? "are" : "is");
    finding.help = "move the test to where it is back";
    const auto better = better_point(walk, *proven.early);
    if (better && !walk.guide().derives_put_back)
        finding.edits = move_step(walk, *proven.early, *better);
    return finding;
}

// Is all that is missing at the early test told as never put back? Then that is the one fault.
bool lacks_what_is_left_off(const Walk& walk, const Proven& proven) {
    const auto is_left_off = [&](model::ItemId item) {
        return std::any_of(walk.left_off.begin(), walk.left_off.end(), [&](const LeftOff& left) {
            return std::find(left.items.begin(), left.items.end(), item) != left.items.end();
        });
    };
    bool any = false;
    for (const model::ItemId item : proven.obligation.must_be_back) {
        if (bench::is_back(walk.bench, walk.state_at(*proven.early), item))
            continue;
        if (!is_left_off(item))
            return false;
        any = true;
    }
    return any;
}

void report_untested(const Walk& walk, const std::vector<Obligation>& group,
                     std::optional<std::size_t> chance, std::vector<Diagnostic>& findings) {
    std::vector<std::string> words;
    for (const Obligation& entry : group)
        words.push_back(name_of(walk, entry));
    const Obligation& first = group.front();
    Diagnostic finding = finding_at(
        walk, first.cause, fmt::format("nothing tests {} after the work", model::list(words)));
    if (const auto* action = walk.action(walk.events[first.cause]))
        finding.primary = action->head;
    finding.related.clear();
    const bool renewed = !first.function.known() && !is_tie(walk, first);
    finding.label = renewed ? "renewed here" : "disturbed here";
    finding.why = "a fault would show only after all is closed";
    if (is_tie(walk, first))
        finding.related.push_back(
            {walk.model.kind_of(first.item).span, "its kind asks for a test"});
    for (const Obligation& entry : group) {
        if (!entry.function.known())
            continue;
        finding.related.push_back(
            {walk.model.functions[entry.function.value].span, "declared here"});
    }
    if (chance) {
        finding.help = "add a test";
        finding.edits = insert_test(walk, *chance, new_test(walk, group));
    }
    findings.push_back(std::move(finding));
}

// What one test at one place could prove is one finding.
void report_in_groups(const Walk& walk, const std::vector<Obligation>& unproven,
                      std::vector<Diagnostic>& findings) {
    std::vector<bool> taken(unproven.size());
    const std::vector<Chances> chances_of = chances_for(walk, unproven);
    for (std::size_t i = 0; i < unproven.size(); ++i) {
        if (taken[i])
            continue;
        std::vector<Obligation> group{unproven[i]};
        Chances chances = chances_of[i];
        for (std::size_t j = i + 1; j < unproven.size(); ++j) {
            if (taken[j])
                continue;
            Chances shared = common(chances, chances_of[j]);
            if (shared.empty())
                continue;
            chances = std::move(shared);
            group.push_back(unproven[j]);
            taken[j] = true;
        }
        report_untested(walk, group, place_for(walk, group, chances), findings);
    }
}

void find_untested(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<Obligation> unproven;
    std::vector<std::size_t> early;
    for (const Proven& proven : proofs(walk)) {
        if (proven.by)
            continue;
        if (!proven.early) {
            unproven.push_back(proven.obligation);
        } else if (displaced(walk, walk.step(walk.events[*proven.early])) ||
                   lacks_what_is_left_off(walk, proven)) {
            continue;
        } else if (std::find(early.begin(), early.end(), *proven.early) == early.end()) {
            early.push_back(*proven.early);
            findings.push_back(too_early(walk, proven));
        }
    }
    report_in_groups(walk, unproven, findings);
}

} // namespace

extern const Rule untested;
const Rule untested{"untested", "tests", Severity::error,
                    "a renewed part or a disturbed function that nothing tests once it is back",
                    find_untested};

} // namespace matchmark::check::rules
