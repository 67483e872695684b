// Gathers the findings of many files, shows each once, and ends with a tally.
#pragma once

#include "drive/compilation.hpp"

#include <iosfwd>
#include <set>
#include <string>
#include <vector>

namespace matchmark::drive {

struct Terminal;

// A finding, ready to be shown after its compilation is gone.
struct Reported {
    std::string key; // equal for the same finding met by way of two guides
    Severity severity = Severity::error;
    std::string line; // as `one_line` has it
    std::string text; // framed
    std::string json; // one object
};

// "hinge.mmk:42:10: error: `lid-screws` come off and are never put back [not-put-back]"
std::string one_line(const SourceMap& sources, const Diagnostic& finding);

// `strict`: warnings are shown and count as errors.
std::vector<Reported> reported(const SourceMap& sources, std::vector<Diagnostic> findings,
                               bool json, bool strict = false);

// Shows the findings of a file with errors, on `terminal.err`, for a command that wants one
// without. Gives exit_failed when a file could not be read, or else exit_findings.
int fail_with_findings(const Compilation& done, Terminal& terminal);

class Report {
public:
    // Keeps those that are not there yet.
    void add(std::vector<Reported> findings);

    [[nodiscard]] bool empty() const { return kept_.empty(); }
    [[nodiscard]] std::size_t count(Severity severity) const;
    // "3 errors, 1 warning, 2 pieces of advice"
    [[nodiscard]] std::string tally() const;
    // Of each finding, one line.
    [[nodiscard]] std::vector<std::string> lines() const;
    // The first 20 framed, then how many more there are, then the tally; nothing at all when there
    // is none.
    void write_text(std::ostream& out) const;
    // {"findings": [...]}
    void write_json(std::ostream& out) const;
    // "[...]"
    [[nodiscard]] std::string json_array() const;

private:
    std::vector<Reported> kept_;
    std::set<std::string> keys_;
};

} // namespace matchmark::drive
