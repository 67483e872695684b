// A guide drafted for every part of every sample: it checks clean, and `tidy` leaves it as it is.
#include "plans/plans.hpp"

#include "drive/commands.hpp"
#include "drive/new_text.hpp"
#include "drive/overlay.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <sstream>

namespace matchmark::plans {

namespace {

struct DraftTally {
    std::size_t drafted = 0;
    std::size_t errors = 0;
    std::size_t warned = 0; // findings that are no errors
    std::size_t not_tidy = 0;
    std::size_t left_out = 0; // acts of a take-apart left out, one at a time
    std::size_t missed = 0;   // of these, those of which nothing is said
    std::size_t told = 0;     // no guide, and the reason told: no way in, or sold only with another
};

// Each act of the take-apart is needed: without its line (and its step, if that is then empty) the
// guide has an error.
void leave_out(Disk& disk, const std::string& path, const std::string& text, DraftTally& tally) {
    const std::size_t begin = text.find("\ntake-apart\n");
    const std::size_t end = std::min(text.find("\nwork\n"), text.find("\nput-back\n"));
    std::size_t step = std::string::npos;
    for (std::size_t at = begin; begin != std::string::npos && at < end;
         at = text.find('\n', at + 1)) {
        const std::size_t next = text.find('\n', at + 1);
        const std::string line = text.substr(at + 1, next - at - 1);
        if (line.starts_with("step ")) {
            step = at;
            continue;
        }
        if (!line.starts_with("  ") || line.starts_with("  mark "))
            continue;
        const bool alone = text.find('\n', step + 1) == at && text[next + 1] == '\n';
        const std::size_t from = alone ? step : at;
        std::string shorter = text;
        shorter.erase(from, next - from);
        drive::OverlayDisk overlay(disk);
        static_cast<void>(overlay.write(path, shorter));
        const drive::Compilation done = drive::compile(overlay, path);
        const bool refused =
            std::any_of(done.findings.begin(), done.findings.end(), [](const Diagnostic& finding) {
                return finding.severity == Severity::error;
            });
        ++tally.left_out;
        tally.missed += refused ? 0 : 1;
        if (!refused)
            fmt::print("  {}: nothing misses `{}`\n", path.substr(path.rfind('/') + 1), line);
    }
}

void draft_part(const Sample& sample, const std::string& part, DraftTally& tally) {
    const auto disk = real_disk();
    drive::OverlayDisk overlay(*disk);
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{overlay, in, out, err, false};
    const std::string path = beside(sample.path, "drafted-" + part + ".mmk");
    const int code = drive::draft_guide({sample.path, "replace " + part, "", path}, terminal);
    if (!overlay.exists(path)) {
        tally.told += err.str().empty() ? 0 : 1;
        tally.errors += err.str().empty() ? 1 : 0;
        return;
    }
    ++tally.drafted;
    const drive::Compilation done = drive::compile(overlay, path);
    const auto is_error = [](const Diagnostic& f) { return f.severity == Severity::error; };
    const bool wrong = code != drive::exit_clean || done.procedures.empty() ||
                       std::any_of(done.findings.begin(), done.findings.end(), is_error);
    tally.errors += wrong ? 1 : 0;
    tally.warned += !wrong && !done.findings.empty() ? 1 : 0;
    const std::string text(done.sources.file(done.root).text);
    const bool tidy = drive::tidied_text(text) == text;
    tally.not_tidy += tidy ? 0 : 1;
    if (!wrong)
        leave_out(*disk, path, text, tally);
    if (wrong || !tidy || !done.findings.empty()) {
        fmt::print("  {} {}:{}", sample.done.model.device.name, part, tidy ? "" : " not tidy");
        for (const Diagnostic& finding : done.findings)
            fmt::print(" [{}] {};", finding.rule, finding.message);
        fmt::print("\n");
    }
}

} // namespace

bool drafts() {
    fmt::print("\n{:<16}{:>9}{:>8}{:>10}{:>10}{:>8}{:>10}{:>8}\n", "drafts", "drafted", "errors",
               "warnings", "not tidy", "none", "left out", "missed");
    bool well = true;
    for (const Sample& sample : samples()) {
        DraftTally tally;
        for (const model::Item& item : sample.done.model.items) {
            if (item.role == model::Role::part)
                draft_part(sample, item.name, tally);
        }
        fmt::print("{:<16}{:>9}{:>8}{:>10}{:>10}{:>8}{:>10}{:>8}\n", sample.done.model.device.name,
                   tally.drafted, tally.errors, tally.warned, tally.not_tidy, tally.told,
                   tally.left_out, tally.missed);
        well = well && tally.drafted > 0 && tally.errors == 0 && tally.not_tidy == 0 &&
               tally.missed == 0;
    }
    return well;
}

} // namespace matchmark::plans
