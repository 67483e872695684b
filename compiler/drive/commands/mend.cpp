// `mend`: applies the edits that findings carry, again and again until nothing changes.
#include "diagnostics/mend.hpp"

#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/overlay.hpp"
#include "drive/report.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <ostream>
#include <utility>

namespace matchmark::drive {

namespace {

constexpr int most_rounds = 20; // each round mends what the one before it uncovered

struct Mending {
    OverlayDisk disk;
    std::map<std::string, std::string> before; // by folded path: what the first mend was made from
    std::vector<std::string> mended;           // "hinge.mmk:42:10: message [rule]"
    std::set<std::string> mended_keys;
    Report left;
    bool unreadable = false;
};

// A finding whatever its place: an edit above it moves it.
std::string identity(const SourceMap& sources, const Diagnostic& finding) {
    const FileId file = finding.primary.file;
    const std::string path = file < sources.size() ? sources.file(file).path : std::string();
    return finding.rule + "\n" + path + "\n" + finding.message;
}

std::size_t errors_among(const std::vector<Diagnostic>& findings) {
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(), [](const Diagnostic& finding) {
            return finding.severity == Severity::error;
        }));
}

struct Candidate {
    std::string identity;
    std::string line;
};

// Mends one file and what it uses, in the overlay. `standard_input`, if given, is the root's text
// and is changed.
void mend_one(Mending& mending, const Input& input, bool all, std::string* standard_input) {
    std::vector<Candidate> candidates;
    const auto changed_before = mending.disk.changed();
    const std::string text_before = standard_input == nullptr ? std::string() : *standard_input;
    const auto mended_before = mending.mended;
    std::size_t errors_before = 0;
    for (int round = 0;; ++round) {
        Compilation done = compile(mending.disk, input.path, standard_input);
        if (round == 0)
            errors_before = errors_among(done.findings);
        const Mended mended = round < most_rounds && !done.unreadable
                                  ? matchmark::mend(done.sources, done.findings, all)
                                  : Mended{};
        if (mended.texts.empty()) {
            std::set<std::string> remaining;
            for (const Diagnostic& finding : done.findings) {
                remaining.insert(identity(done.sources, finding));
            }
            for (const Candidate& candidate : candidates) {
                if (!remaining.contains(candidate.identity) &&
                    mending.mended_keys.insert(candidate.identity).second) {
                    mending.mended.push_back(candidate.line);
                }
            }
            // Edits that only chase each other, or make more of what they mend, leave the author's
            // text alone.
            if (round > 0 && (mending.mended.size() == mended_before.size() ||
                              errors_among(done.findings) > errors_before)) {
                mending.mended = mended_before;
                mending.disk.restore(changed_before);
                if (standard_input != nullptr) {
                    *standard_input = text_before;
                }
                done = compile(mending.disk, input.path, standard_input);
            }
            mending.unreadable = mending.unreadable || done.unreadable;
            mending.left.add(reported(done.sources, done.findings, true));
            return;
        }
        for (const Diagnostic& finding : done.findings) {
            if (!finding.edits.empty() && (finding.safe || all)) {
                candidates.push_back(
                    {identity(done.sources, finding), one_line(done.sources, finding)});
            }
        }
        for (const auto& [file, text] : mended.texts) {
            if (file == done.root && standard_input != nullptr) {
                *standard_input = text;
            } else {
                const SourceFile& mended_file = done.sources.file(file);
                mending.before.try_emplace(beside("", mended_file.path), mended_file.text);
                static_cast<void>(mending.disk.write(done.sources.file(file).path, text));
            }
        }
    }
}

// Nothing is written before every text is known; a file that cannot be written is told and the rest
// are written.
bool write_mended(const Mending& mending, Terminal& terminal) {
    bool written = true;
    for (const auto& [path, text] : mending.disk.changed()) {
        const auto result = terminal.disk.replace(path, mending.before.at(path), text);
        if (const auto* problem = std::get_if<DiskProblem>(&result)) {
            fail(terminal, "mend",
                 fmt::format("`{}` cannot be written: {}", path, problem->reason));
            written = false;
        }
    }
    return written;
}

std::string diff_of(const OverlayDisk& changed, Disk& disk) {
    std::string diff;
    for (const auto& [path, text] : changed.changed()) {
        const auto before = disk.read(path);
        if (const auto* old = std::get_if<std::string>(&before)) {
            diff += unified_diff(path, *old, text);
        }
    }
    return diff;
}

void write_mend_json(const Mending& mending, bool dry_run, std::ostream& out,
                     const std::string& diff) {
    nlohmann::ordered_json object;
    object["mended"] = mending.mended;
    object["files"] = nlohmann::ordered_json::array();
    for (const auto& [path, text] : mending.disk.changed()) {
        object["files"].push_back(path);
    }
    object["written"] = !dry_run;
    if (dry_run) {
        object["diff"] = diff;
    }
    object["findings"] = nlohmann::ordered_json::parse(mending.left.json_array());
    out << object.dump(2) << '\n';
}

std::string summary(const Mending& mending, bool dry_run) {
    const std::size_t count = mending.mended.size();
    const std::size_t files = mending.disk.changed().size();
    std::string text = count == 0
                           ? std::string("nothing mended")
                           : fmt::format("{} {} {}", count, count == 1 ? "finding" : "findings",
                                         dry_run ? "would be mended" : "mended");
    if (count != 0 && files != 0) {
        text += fmt::format(" in {} {}", files, files == 1 ? "file" : "files");
    }
    return text + (mending.left.empty() ? "; nothing is left\n"
                                        : "; left: " + mending.left.tally() + "\n");
}

} // namespace

int mend(const MendOptions& options, Terminal& terminal) {
    const auto files = inputs("mend", options.paths, terminal);
    if (!files) {
        return exit_failed;
    }
    Mending mending{OverlayDisk(terminal.disk), {}, {}, {}, {}, false};
    std::string diff;
    bool filters =
        false; // standard input to standard output: what is told goes to the error stream
    for (const Input& input : *files) {
        std::string text = input.text.value_or("");
        mend_one(mending, input, options.all, input.text ? &text : nullptr);
        if (input.text && options.dry_run) {
            diff += unified_diff(input.path, *input.text, text);
        } else if (input.text && !options.json) {
            filters = true;
            terminal.out << text;
        }
    }
    diff += options.dry_run ? diff_of(mending.disk, terminal.disk) : "";
    const bool written = options.dry_run || write_mended(mending, terminal);
    if (options.json) {
        write_mend_json(mending, options.dry_run, terminal.out, diff);
    } else {
        std::ostream& told = filters ? terminal.err : terminal.out;
        told << diff;
        for (const std::string& line : mending.mended) {
            told << (options.dry_run ? "would mend " : "mended ") << line << '\n';
        }
        for (const std::string& line : mending.left.lines()) {
            told << "left " << line << '\n';
        }
        told << summary(mending, options.dry_run);
    }
    if (mending.unreadable || !written) {
        return exit_failed;
    }
    return mending.left.count(Severity::error) != 0 ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
