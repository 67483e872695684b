// `tidy`: the one canonical layout, comments kept.
#include "tidy/tidy.hpp"
#include "drive/commands.hpp"
#include "drive/gather.hpp"
#include "drive/inputs.hpp"
#include "drive/report.hpp"
#include "parse/parse.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <ostream>

namespace matchmark::drive {

namespace {

enum class Outcome : unsigned char { as_it_was, changed, has_errors, unreadable };

struct Tidied {
    Outcome outcome = Outcome::as_it_was;
    std::string text; // the file's bytes if it has errors
    std::vector<Reported> findings;
};

// A file with syntax errors is left as it is: what its author meant is not known.
Tidied tidied(const std::string& path, std::string bytes, bool json) {
    Tidied result;
    result.text = bytes;
    SourceMap sources;
    std::vector<Diagnostic> findings;
    if (!add_source(sources, path, std::move(bytes), findings)) {
        result.outcome = Outcome::unreadable;
    } else {
        const syntax::File file = syntax::parse(sources, 0, findings);
        if (any_error(findings)) {
            result.outcome = Outcome::has_errors;
        } else {
            std::string text = matchmark::tidy(sources, file);
            if (text != result.text) {
                result.outcome = Outcome::changed;
                result.text = std::move(text);
            }
        }
    }
    sort_findings(findings);
    result.findings = reported(sources, std::move(findings), json);
    return result;
}

struct Tally {
    std::vector<std::pair<std::string, Outcome>> files;
    Report report;
    bool failed = false;

    [[nodiscard]] std::size_t count(Outcome outcome) const {
        std::size_t count = 0;
        for (const auto& file : files) {
            count += file.second == outcome ? 1U : 0U;
        }
        return count;
    }
};

void tidy_one(const Input& input, const TidyOptions& options, Terminal& terminal, Tally& tally) {
    std::string bytes = input.text.value_or("");
    if (!input.text) {
        auto read = terminal.disk.read(input.path);
        if (const auto* problem = std::get_if<DiskProblem>(&read)) {
            fail(terminal, "tidy",
                 fmt::format("`{}` cannot be read: {}", input.path, problem->reason));
            tally.files.emplace_back(input.path, Outcome::unreadable);
            tally.failed = true;
            return;
        }
        bytes = std::get<std::string>(std::move(read));
    }
    Tidied result = tidied(input.path, bytes, options.json);
    tally.failed = tally.failed || result.outcome == Outcome::unreadable;
    tally.files.emplace_back(input.path, result.outcome);
    tally.report.add(std::move(result.findings));
    if (options.check) {
        return;
    }
    if (input.text && !options.json) {
        terminal.out << result.text;
    } else if (!input.text && result.outcome == Outcome::changed) {
        const auto written = terminal.disk.replace(input.path, bytes, result.text);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            fail(terminal, "tidy",
                 fmt::format("`{}` cannot be written: {}", input.path, problem->reason));
            tally.failed = true;
        }
    }
}

void write_tidy_json(const Tally& tally, const TidyOptions& options, std::ostream& out) {
    nlohmann::ordered_json object;
    object["files"] = nlohmann::ordered_json::array();
    for (const auto& [path, outcome] : tally.files) {
        nlohmann::ordered_json entry;
        entry["file"] = path;
        entry["changed"] = outcome == Outcome::changed;
        object["files"].push_back(std::move(entry));
    }
    object["written"] = !options.check;
    object["findings"] = nlohmann::ordered_json::parse(tally.report.json_array());
    out << object.dump(2) << '\n';
}

void write_tidy_text(const Tally& tally, const TidyOptions& options, std::ostream& out) {
    for (const auto& [path, outcome] : tally.files) {
        if (outcome == Outcome::changed) {
            out << (options.check ? "would change " : "tidied ") << path << '\n';
        }
    }
    tally.report.write_text(out);
    const std::size_t changed = tally.count(Outcome::changed);
    const std::size_t as_it_was = tally.count(Outcome::as_it_was);
    const std::size_t errors = tally.count(Outcome::has_errors) + tally.count(Outcome::unreadable);
    out << fmt::format("{} {} {}, {} as before", changed, changed == 1 ? "file" : "files",
                       options.check ? "would change" : "tidied", as_it_was);
    out << (errors == 0 ? std::string() : fmt::format(", {} left alone for errors", errors))
        << '\n';
}

} // namespace

int tidy(const TidyOptions& options, Terminal& terminal) {
    const auto files = inputs("tidy", options.paths, terminal);
    if (!files) {
        return exit_failed;
    }
    Tally tally;
    bool filters =
        false; // standard input to standard output: what is told goes to the error stream
    for (const Input& input : *files) {
        filters = filters || (input.text && !options.check && !options.json);
        tidy_one(input, options, terminal, tally);
    }
    if (options.json) {
        write_tidy_json(tally, options, terminal.out);
    } else if (filters) {
        tally.report.write_text(terminal.err);
    } else {
        write_tidy_text(tally, options, terminal.out);
    }
    if (tally.failed) {
        return exit_failed;
    }
    const bool wrong = tally.report.count(Severity::error) != 0 ||
                       (options.check && tally.count(Outcome::changed) != 0);
    return wrong ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
