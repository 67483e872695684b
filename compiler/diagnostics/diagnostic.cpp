// The order in which findings are told, and the removal of what would be told twice.
#include "diagnostics/diagnostic.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace matchmark {

namespace {

auto order_of(const Diagnostic& finding) {
    return std::tie(finding.primary.file, finding.primary.begin, finding.primary.end, finding.rule);
}

bool same(const Diagnostic& a, const Diagnostic& b) {
    return order_of(a) == order_of(b) && a.severity == b.severity && a.message == b.message &&
           a.label == b.label && a.why == b.why && a.help == b.help && a.safe == b.safe &&
           a.variants == b.variants && a.related == b.related && a.edits == b.edits;
}

} // namespace

void sort_findings(std::vector<Diagnostic>& findings) {
    std::stable_sort(
        findings.begin(), findings.end(),
        [](const Diagnostic& a, const Diagnostic& b) { return order_of(a) < order_of(b); });
    std::vector<Diagnostic> kept;
    kept.reserve(findings.size());
    for (Diagnostic& finding : findings) {
        // Repeats have the same place and rule, so they stand together, though not always next
        // door.
        const auto repeated = std::find_if(kept.rbegin(), kept.rend(), [&](const Diagnostic& k) {
            return order_of(k) != order_of(finding) || same(k, finding);
        });
        if (repeated == kept.rend() || order_of(*repeated) != order_of(finding)) {
            kept.push_back(std::move(finding));
        }
    }
    findings = std::move(kept);
}

bool any_error(const std::vector<Diagnostic>& findings) {
    return std::any_of(findings.begin(), findings.end(), [](const Diagnostic& finding) {
        return finding.severity == Severity::error;
    });
}

} // namespace matchmark
