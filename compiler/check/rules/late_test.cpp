// A test that stands after the cover that hides what it proves, and could have stood before it.
#include "check/chances.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_late_test(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<std::size_t> seen;
    const auto all = proofs(walk);
    const auto open_at = last_open_before_test(walk, all);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Proven& proven = all[i];
        const auto since = open_at[i]; // the event there hid it
        if (!since || std::find(seen.begin(), seen.end(), *proven.by) != seen.end() ||
            displaced(walk, walk.step(walk.events[*proven.by])) ||
            !could_be_done(walk, *proven.by, proven.obligation, *since))
            continue;
        seen.push_back(*proven.by);
        const model::Step& test = walk.step(walk.events[*proven.by]);
        Diagnostic finding = finding_at(walk, *proven.by,
                                        fmt::format("test `{}` comes after {} is closed in",
                                                    test.name, name_of(walk, proven.obligation)));
        finding.label = "too late here";
        finding.why = "if it fails, all that was closed comes apart again";
        finding.related.push_back({place_of(walk, *since), "closed in here"});
        finding.help = "move the test before that line, or say with `when` why it has to wait";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule late_test;
const Rule late_test{"late-test", "tests", Severity::error,
                     "a test done only after what it proves is closed in", find_late_test};

} // namespace matchmark::check::rules
