// Turns findings into what the protocol calls diagnostics and code actions.
#include "serve/editor/findings.hpp"

#include "diagnostics/mend.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::serve {

namespace {

ShownSeverity severity_of(Severity severity) {
    switch (severity) {
    case Severity::error:
        return ShownSeverity::error;
    case Severity::warning:
        return ShownSeverity::warning;
    case Severity::advice:
        return ShownSeverity::information;
    }
    return ShownSeverity::error;
}

bool can_be_shown(const SourceMap& sources, Span span) {
    return span.known() && span.file < sources.size() && !sources.file(span.file).built_in;
}

std::string words_of(const Diagnostic& finding) {
    std::string words = finding.message;
    if (!finding.variants.empty())
        words += fmt::format("\nin: {}", fmt::join(finding.variants, ", "));
    if (!finding.why.empty())
        words += "\nwhy: " + finding.why;
    if (!finding.help.empty())
        words += "\nhelp: " + finding.help;
    return words;
}

bool overlap(const Range& a, const Range& b) { return a.start <= b.end && b.start <= a.end; }

std::string title_of(const Diagnostic& finding) {
    const std::string mend = finding.help.empty() ? "mend it" : finding.help;
    std::string title = fmt::format("{} [{}]", mend, finding.rule);
    if (!finding.safe)
        title += " - look at it afterwards";
    return title;
}

} // namespace

ShownFinding shown(Tables& tables, const Diagnostic& finding, const std::string& rules_at) {
    const SourceMap& sources = tables.sources();
    ShownFinding result;
    result.severity = severity_of(finding.severity);
    result.code = finding.rule;
    result.message = words_of(finding);
    result.unnecessary = finding.rule.starts_with("unused-");
    if (!rules_at.empty())
        result.href = rules_at + finding.rule;
    if (can_be_shown(sources, finding.primary)) {
        result.range = tables.of(finding.primary.file).range(finding.primary);
    }
    for (const Mark& mark : finding.related) {
        if (!can_be_shown(sources, mark.span))
            continue;
        result.related.push_back({tables.location(mark.span), mark.label});
    }
    return result;
}

std::map<std::string, std::vector<ShownFinding>> findings_by_file(const Workspace& workspace,
                                                                  const Analysis& analysis,
                                                                  const std::string& rules_at) {
    std::map<std::string, std::vector<ShownFinding>> by_file;
    for (const std::string& file : analysis.files)
        by_file[file];
    const SourceMap& sources = analysis.done.sources;
    Tables tables(workspace, sources);
    for (const Diagnostic& finding : analysis.done.findings) {
        const bool placed = can_be_shown(sources, finding.primary);
        const std::string path =
            placed ? beside("", sources.file(finding.primary.file).path) : analysis.path;
        by_file[path].push_back(shown(tables, finding, rules_at));
    }
    return by_file;
}

void Publisher::set(const Workspace& workspace, const Analysis& analysis) {
    drop(analysis.path);
    auto& mine = by_root_[analysis.path];
    mine = findings_by_file(workspace, analysis, rules_at);
    for (const auto& entry : mine)
        changed_.insert(entry.first);
}

void Publisher::drop(const std::string& root) {
    const auto old = by_root_.find(root);
    if (old == by_root_.end())
        return;
    for (const auto& entry : old->second)
        changed_.insert(entry.first);
    by_root_.erase(old);
}

std::vector<ShownFinding> Publisher::of_file(const std::string& path) const {
    std::vector<ShownFinding> findings;
    for (const auto& entry : by_root_) {
        const auto mine = entry.second.find(path);
        if (mine == entry.second.end())
            continue;
        for (const ShownFinding& finding : mine->second) {
            const bool known =
                std::any_of(findings.begin(), findings.end(), [&](const ShownFinding& other) {
                    return other.range == finding.range && other.code == finding.code &&
                           other.message == finding.message;
                });
            if (!known)
                findings.push_back(finding);
        }
    }
    std::stable_sort(findings.begin(), findings.end(),
                     [](const auto& a, const auto& b) { return a.range.start < b.range.start; });
    return findings;
}

std::vector<std::string> Publisher::messages(const Workspace& workspace,
                                             const std::set<std::string>& always) {
    std::vector<std::string> messages;
    changed_.insert(always.begin(), always.end());
    for (const std::string& path : changed_) {
        const auto findings = of_file(path);
        const OpenFile* open = workspace.find(path);
        const std::string uri = workspace.uri(path);
        const std::string words = findings.empty() ? "" : publish(uri, std::nullopt, findings);
        std::string& told = told_[path];
        if (told == words && !always.contains(path))
            continue;
        told = words;
        messages.push_back(publish(uri, open != nullptr ? open->version : std::nullopt, findings));
    }
    changed_.clear();
    return messages;
}

namespace {

// Empty when there is none, or one lies where nobody can write.
WorkspaceEdit mend_of(Tables& tables, const Diagnostic& finding) {
    WorkspaceEdit edit;
    for (const Edit& one : finding.edits) {
        if (!can_be_shown(tables.sources(), one.span))
            return {};
        const Location at = tables.location(one.span);
        edit[at.uri].push_back({at.range, one.text});
    }
    return edit;
}

} // namespace

TextEdit change_between(const LineTable& table, std::string_view before, std::string_view after) {
    const std::size_t shorter = std::min(before.size(), after.size());
    std::size_t head = 0;
    while (head < shorter && before[head] == after[head])
        ++head;
    head = head == 0 ? 0 : before.rfind('\n', head - 1) + 1;
    std::size_t tail = 0;
    while (tail < shorter - head &&
           before[before.size() - 1 - tail] == after[after.size() - 1 - tail])
        ++tail;
    while (tail > 0 && tail < before.size() && before[before.size() - tail - 1] != '\n')
        --tail;
    const auto begin = static_cast<std::uint32_t>(head);
    const auto end = static_cast<std::uint32_t>(before.size() - tail);
    return {table.range(begin, end), std::string(after.substr(head, after.size() - tail - head))};
}

std::vector<CodeAction> mends_in(Workspace& workspace, const std::string& path, Range range,
                                 const std::string& rules_at) {
    std::vector<CodeAction> actions;
    const Analysis& analysis = workspace.analysis(path);
    const SourceMap& sources = analysis.done.sources;
    Tables tables(workspace, sources);
    for (const Diagnostic& finding : analysis.done.findings) {
        const bool here = can_be_shown(sources, finding.primary) &&
                          beside("", sources.file(finding.primary.file).path) == path;
        if (!here || finding.edits.empty())
            continue;
        CodeAction action;
        action.mends.push_back(shown(tables, finding, rules_at));
        if (!overlap(action.mends.front().range, range))
            continue;
        action.title = title_of(finding);
        action.kind = "quickfix";
        action.preferred = finding.safe;
        action.edit = mend_of(tables, finding);
        if (!action.edit.empty())
            actions.push_back(std::move(action));
    }
    const Mended mended = matchmark::mend(sources, analysis.done.findings, false);
    if (mended.texts.empty())
        return actions;
    CodeAction all;
    all.title =
        fmt::format("mend all that is safe to mend: {}",
                    mended.applied == 1 ? "1 finding" : fmt::format("{} findings", mended.applied));
    all.kind = "source.fixAll";
    for (const auto& [file, text] : mended.texts) {
        const SourceFile& source = sources.file(file);
        all.edit[workspace.uri(source.path)].push_back(
            change_between(tables.of(file), source.text, text));
    }
    actions.push_back(std::move(all));
    return actions;
}

} // namespace matchmark::serve
