// Runs every rule over every guide in each of its variants, and merges what they find.
#include "check/check.hpp"

#include "check/assumptions.hpp"
#include "check/rule.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark::check {

namespace {

bool same_finding(const Diagnostic& a, const Diagnostic& b) {
    return std::tie(a.rule, a.message) == std::tie(b.rule, b.message) && a.primary == b.primary;
}

// In another variant the same lines are missing, though perhaps other things close over them.
bool same_mend(const Diagnostic& a, const Diagnostic& b) {
    return !a.edits.empty() && std::equal(a.edits.begin(), a.edits.end(), b.edits.begin(),
                                          b.edits.end(), [](const Edit& x, const Edit& y) {
                                              return !x.text.empty() && x.text == y.text;
                                          });
}

// Findings of one variant; the names of the variants are added once it is known which have it.
std::vector<Diagnostic> find_in(const SourceMap& sources, const model::Model& model,
                                const model::Procedure& procedure, unsigned variant) {
    const Walk record = walk(sources, model, procedure, variant);
    std::vector<Diagnostic> found;
    for (const Rule* rule : all_rules()) {
        if (rule->find == nullptr)
            continue;
        const std::size_t first = found.size();
        rule->find(record, found);
        for (std::size_t i = first; i < found.size(); ++i) {
            found[i].rule = rule->name;
            found[i].severity = rule->severity;
        }
    }
    return found;
}

// The one that can be mended in every variant is the one that stands first.
void take_earlier(Diagnostic& known, Diagnostic finding) {
    if (known.edits.empty() || known.edits.front().span.begin <= finding.edits.front().span.begin)
        return;
    finding.variants = known.variants;
    known = std::move(finding);
}

void merge(std::vector<Diagnostic>& all, std::vector<Diagnostic> found,
           const std::string& variant) {
    const std::size_t others = all.size();
    for (Diagnostic& finding : found) {
        const auto last = all.begin() + static_cast<std::ptrdiff_t>(others);
        const auto known = std::find_if(all.begin(), last, [&](const Diagnostic& other) {
            return same_finding(other, finding) || same_mend(other, finding);
        });
        if (known == last) {
            finding.variants = {variant};
            all.push_back(std::move(finding));
            continue;
        }
        if (!same_finding(*known, finding))
            take_earlier(*known, std::move(finding));
        auto& variants = known->variants;
        if (std::find(variants.begin(), variants.end(), variant) == variants.end())
            variants.push_back(variant);
    }
}

} // namespace

void check(const SourceMap& sources, FileId root, const std::vector<Allowance>& allowances,
           const model::Model& model, const std::vector<model::Procedure>& procedures,
           std::vector<Diagnostic>& findings) {
    std::vector<Diagnostic> all;
    for (const model::Procedure& procedure : procedures) {
        const model::VariantMask mask = model.guide(procedure.guide).variants;
        std::vector<Diagnostic> of_guide;
        std::size_t walked = 0;
        for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
            if (((mask >> variant) & 1U) == 0)
                continue;
            ++walked;
            const bool named = variant < model.device.variants.size();
            merge(of_guide, find_in(sources, model, procedure, variant),
                  named ? model.device.variants[variant] : std::string());
        }
        for (Diagnostic& finding : of_guide) {
            if (finding.variants.size() == walked)
                finding.variants.clear();
            all.push_back(std::move(finding));
        }
    }
    find_assumed(model, root, all);
    apply_allowances(sources, allowances, all);
    findings.insert(findings.end(), std::make_move_iterator(all.begin()),
                    std::make_move_iterator(all.end()));
}

} // namespace matchmark::check
