// What a person reads at the end of a check, or a program in its stead.
#include "drive/report.hpp"

#include "diagnostics/render.hpp"
#include "diagnostics/severity.hpp"
#include "drive/commands.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr std::size_t most_shown = 20;

std::string key_of(const SourceMap& sources, const Diagnostic& finding) {
    const Span at = finding.primary;
    const std::string path =
        at.file < sources.size() ? beside("", sources.file(at.file).path) : std::string();
    return fmt::format("{}\n{}\n{}\n{}\n{}", finding.rule, path, at.begin, at.end, finding.message);
}

std::string json_of(const SourceMap& sources, const Diagnostic& finding) {
    const auto whole = nlohmann::ordered_json::parse(render_json(sources, {finding}));
    return whole["findings"][0].dump();
}

void append_count(std::string& tally, std::size_t count, const char* one, const char* many) {
    if (count == 0) {
        return;
    }
    tally += tally.empty() ? "" : ", ";
    tally += fmt::format("{} {}", count, count == 1 ? one : many);
}

} // namespace

std::string one_line(const SourceMap& sources, const Diagnostic& finding) {
    std::string where;
    if (finding.primary.file < sources.size()) {
        const Place place = sources.place(finding.primary.file, finding.primary.begin);
        where = fmt::format("{}:{}:{}: ", sources.file(finding.primary.file).path, place.line,
                            place.column);
    }
    return fmt::format("{}{}: {} [{}]", where, severity_word(finding.severity), finding.message,
                       finding.rule);
}

std::vector<Reported> reported(const SourceMap& sources, std::vector<Diagnostic> findings,
                               bool json, bool strict) {
    std::vector<Reported> result;
    for (Diagnostic& finding : findings) {
        if (strict && finding.severity == Severity::warning) {
            finding.severity = Severity::error;
        }
        result.push_back({key_of(sources, finding), finding.severity, one_line(sources, finding),
                          json ? "" : render_text(sources, finding),
                          json ? json_of(sources, finding) : ""});
    }
    return result;
}

int fail_with_findings(const Compilation& done, Terminal& terminal) {
    Report report;
    report.add(reported(done.sources, done.findings, false));
    report.write_text(terminal.err);
    return done.unreadable ? exit_failed : exit_findings;
}

void Report::add(std::vector<Reported> findings) {
    for (Reported& finding : findings) {
        if (keys_.insert(finding.key).second) {
            kept_.push_back(std::move(finding));
        }
    }
}

std::size_t Report::count(Severity severity) const {
    return static_cast<std::size_t>(
        std::count_if(kept_.begin(), kept_.end(),
                      [&](const Reported& finding) { return finding.severity == severity; }));
}

std::string Report::tally() const {
    std::string tally;
    append_count(tally, count(Severity::error), "error", "errors");
    append_count(tally, count(Severity::warning), "warning", "warnings");
    append_count(tally, count(Severity::advice), "piece of advice", "pieces of advice");
    return tally;
}

std::vector<std::string> Report::lines() const {
    std::vector<std::string> lines;
    for (const Reported& finding : kept_) {
        lines.push_back(finding.line);
    }
    return lines;
}

void Report::write_text(std::ostream& out) const {
    if (kept_.empty()) {
        return;
    }
    // Errors first among those shown: twenty pieces of advice must not hide the one thing that is
    // wrong.
    std::vector<bool> shown(kept_.size(), kept_.size() <= most_shown);
    std::size_t left = kept_.size() <= most_shown ? 0 : most_shown;
    for (const Severity severity : {Severity::error, Severity::warning, Severity::advice}) {
        for (std::size_t i = 0; i < kept_.size() && left > 0; ++i) {
            if (kept_[i].severity == severity) {
                shown[i] = true;
                --left;
            }
        }
    }
    for (std::size_t i = 0; i < kept_.size(); ++i) {
        if (shown[i]) {
            out << kept_[i].text << '\n';
        }
    }
    if (kept_.size() > most_shown) {
        out << "and " << kept_.size() - most_shown << " more (--json lists all)\n";
    }
    out << tally() << '\n';
}

std::string Report::json_array() const {
    std::string array = "[";
    for (const Reported& finding : kept_) {
        array += array.size() == 1 ? "" : ",";
        array += finding.json;
    }
    return array + "]";
}

void Report::write_json(std::ostream& out) const {
    const auto whole = nlohmann::ordered_json::parse("{\"findings\":" + json_array() + "}");
    out << whole.dump(2) << '\n';
}

} // namespace matchmark::drive
