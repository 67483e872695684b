// Reads the comments that allow a finding.
#include "check/allowances.hpp"

#include "check/rule.hpp"
#include "diagnostics/nearest.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check {

namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r'))
        text.remove_suffix(1);
    return text;
}

Diagnostic about(const Allowance& allowance, const char* rule, Severity severity,
                 std::string message) {
    Diagnostic finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.message = std::move(message);
    finding.primary = allowance.span;
    return finding;
}

} // namespace

std::vector<Allowance> allowances_of(const SourceMap& sources, const syntax::File& file) {
    constexpr std::string_view opening = "allow ";
    std::vector<Allowance> all;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const syntax::Line& line = file.lines[i];
        if (line.shape != syntax::LineShape::comment)
            continue;
        std::string_view text = sources.slice(line.whole);
        text.remove_prefix(1);
        text = trimmed(text);
        if (text.substr(0, opening.size()) != opening)
            continue;
        text = trimmed(text.substr(opening.size()));
        const std::size_t colon = text.find(':');
        const std::string_view rule = trimmed(text.substr(0, colon));
        if (rule.find(' ') != std::string_view::npos)
            continue; // prose that happens to start so
        Allowance allowance;
        allowance.rule = rule;
        allowance.has_reason =
            colon != std::string_view::npos && !trimmed(text.substr(colon + 1)).empty();
        allowance.span = line.whole;
        std::size_t below = i + 1;
        while (below < file.lines.size() && file.lines[below].shape == syntax::LineShape::comment)
            ++below;
        allowance.line = static_cast<std::uint32_t>(below + 1);
        all.push_back(std::move(allowance));
    }
    return all;
}

void apply_allowances(const SourceMap& sources, const std::vector<Allowance>& allowances,
                      std::vector<Diagnostic>& findings) {
    std::vector<bool> used(allowances.size());
    std::erase_if(findings, [&](const Diagnostic& finding) {
        bool allowed = false;
        for (std::size_t i = 0; i < allowances.size(); ++i) {
            const Allowance& one = allowances[i];
            if (!one.has_reason || one.rule != finding.rule ||
                one.span.file != finding.primary.file ||
                one.line != sources.place(one.span.file, finding.primary.begin).line)
                continue;
            used[i] = true;
            allowed = true;
        }
        return allowed;
    });
    std::vector<std::string> names;
    for (const Rule* rule : all_rules())
        names.emplace_back(rule->name);
    for (std::size_t i = 0; i < allowances.size(); ++i) {
        const Allowance& allowance = allowances[i];
        if (std::find(names.begin(), names.end(), allowance.rule) == names.end()) {
            findings.push_back(
                about(allowance, "unused-allowance", Severity::warning,
                      fmt::format("there is no rule `{}` to allow", allowance.rule)));
            const std::string near = nearest(allowance.rule, names);
            if (!near.empty())
                findings.back().help = fmt::format("write `{}`", near);
        } else if (!allowance.has_reason) {
            findings.push_back(about(allowance, "unused-allowance", Severity::error,
                                     fmt::format("`{}` is allowed for no reason", allowance.rule)));
            findings.back().help =
                fmt::format("write `# allow {}: ` and the reason", allowance.rule);
        } else if (!used[i]) {
            findings.push_back(
                about(allowance, "unused-allowance", Severity::warning,
                      fmt::format("nothing here needs `{}` allowed", allowance.rule)));
            findings.back().help = "remove the comment";
        }
    }
}

} // namespace matchmark::check
