// `compare`: what changed in the procedure between two states of a guide, a device or a folder.
#include "compare/compare.hpp"
#include "check/rule.hpp"
#include "compare/report.hpp"
#include "diagnostics/mend.hpp"
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/report.hpp"
#include "plan/reader/guide.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* compare_command = "compare";

// One of the two states. A guide's file stands in the second place where both are the same.
struct State {
    std::string name; // as it is told
    Compilation done;
    std::vector<guide::Document> documents; // of its procedures, in their order
    bool readable = true;
};

bool is_rule(const std::string& name) {
    const auto rules = check::all_rules();
    return std::any_of(rules.begin(), rules.end(),
                       [&](const check::Rule* rule) { return name == rule->name; });
}

// A guide that can be read and has findings of the check can be compared; one whose lines or names
// make no sense cannot.
bool can_be_compared(const Compilation& done) {
    return !done.unreadable &&
           std::all_of(done.findings.begin(), done.findings.end(), [](const Diagnostic& finding) {
               return finding.severity != Severity::error || is_rule(finding.rule);
           });
}

State state_of(std::string name, Compilation done) {
    State state;
    state.name = std::move(name);
    state.done = std::move(done);
    state.readable = can_be_compared(state.done);
    if (state.readable) {
        for (const model::Procedure& procedure : state.done.procedures) {
            state.documents.push_back(
                plan::reader_guide(state.done.sources, state.done.model, procedure));
        }
    }
    return state;
}

bool has_device(const State& state) {
    return state.done.model.device.span.known() &&
           state.done.model.device.span.file == state.done.root;
}

std::string guide_name(const State& state, std::size_t index) {
    return state.done.model.guide(state.done.procedures[index].guide).name;
}

compare::Side side(const State& state, std::size_t index) {
    return {state.done.model, state.done.procedures[index], state.documents[index]};
}

compare::Difference one_sided(const State& state, std::size_t index, bool old) {
    compare::Difference result;
    result.name = guide_name(state, index);
    result.title = state.documents[index].title;
    compare::Change change;
    change.sort = old ? compare::Sort::guide_dropped : compare::Sort::guide_added;
    change.safety = old;
    change.subject = result.name;
    change.what =
        fmt::format("{} “{}”", old ? "there is no more guide" : "a new guide", result.title);
    result.changes.push_back(std::move(change));
    return result;
}

void compare_guides(const State& before, const State& after, compare::Report& report) {
    std::vector<bool> done(before.documents.size(), false);
    const bool renamed = before.documents.size() == 1 && after.documents.size() == 1;
    for (std::size_t now = 0; now < after.documents.size(); ++now) {
        std::size_t old = 0;
        while (old < before.documents.size() &&
               (done[old] || (!renamed && guide_name(before, old) != guide_name(after, now)))) {
            ++old;
        }
        if (old == before.documents.size()) {
            report.differences.push_back(one_sided(after, now, false));
            continue;
        }
        done[old] = true;
        report.differences.push_back(compare::compare_guides(side(before, old), side(after, now)));
    }
    for (std::size_t old = 0; old < before.documents.size(); ++old) {
        if (!done[old]) {
            report.differences.push_back(one_sided(before, old, true));
        }
    }
}

// Nothing when neither state holds anything that can be compared.
bool compare_states(const State& before, const State& after, compare::Report& report) {
    for (const State* state : {&before, &after}) {
        const auto errors = std::count_if(
            state->done.findings.begin(), state->done.findings.end(),
            [](const Diagnostic& finding) { return finding.severity == Severity::error; });
        if (errors != 0) {
            report.remarks.push_back(fmt::format("`{}` has {} {} of its own; it is compared as it "
                                                 "stands",
                                                 state->name, errors,
                                                 errors == 1 ? "error" : "errors"));
        }
    }
    if (!before.documents.empty() || !after.documents.empty()) {
        compare_guides(before, after, report);
        return true;
    }
    if (!has_device(before) || !has_device(after)) {
        return false;
    }
    report.differences.push_back(compare::compare_devices(before.done.model, after.done.model));
    return true;
}

void tell_findings(const State& state, std::ostream& out) {
    Report report;
    std::vector<Diagnostic> errors = state.done.findings;
    std::erase_if(errors,
                  [](const Diagnostic& finding) { return finding.severity != Severity::error; });
    report.add(reported(state.done.sources, std::move(errors), false));
    report.write_text(out);
}

// --- as git calls it ---

// Seven words: the path, then file, hash and mode of the old and of the new state; nine when the
// file was renamed; one when it is not merged yet (git-config, GIT_EXTERNAL_DIFF).
struct GitWords {
    std::string path;
    std::string new_path;
    std::string old_file;
    std::string new_file;
};

std::string read_or_nothing(Disk& disk, const std::string& path) {
    if (path == "/dev/null") {
        return {};
    }
    auto read = disk.read(path);
    const auto* text = std::get_if<std::string>(&read);
    return text == nullptr ? std::string() : *text;
}

// The bytes are those that git hands over, and `use` counts from where the file stands in the
// work tree.
int compare_for_git(const CompareOptions& options, Terminal& terminal) {
    const auto& words = options.paths;
    if (words.size() == 1) {
        terminal.out << words[0] << ": not merged yet\n";
        return exit_clean;
    }
    if (words.size() != 7 && words.size() != 9) {
        return fail(terminal, compare_command,
                    fmt::format("--git takes the 7 or 9 words that git gives a diff driver, not {}",
                                words.size()));
    }
    const GitWords git{words[0], words.size() == 9 ? words[7] : words[0], words[1], words[4]};
    const std::string before = read_or_nothing(terminal.disk, git.old_file);
    const std::string after = read_or_nothing(terminal.disk, git.new_file);
    terminal.out << git.new_path << '\n';
    if (before.empty() || after.empty()) {
        terminal.out << (before.empty() ? "  a new file\n" : "  the file is gone\n");
        return exit_clean;
    }
    const State old = state_of("the old state", compile(terminal.disk, git.path, &before));
    const State now = state_of("the new state", compile(terminal.disk, git.new_path, &after));
    compare::Report report{git.path, git.new_path, {}, {}};
    if (old.readable && now.readable && compare_states(old, now, report)) {
        terminal.out << compare::to_text(report);
        return exit_clean;
    }
    if (!old.readable || !now.readable) {
        terminal.out << (now.readable ? "the old state" : "the new state")
                     << " cannot be read as a guide; line by line:\n";
    }
    terminal.out << unified_diff(git.new_path, before, after);
    return exit_clean; // git stops at any other code
}

// --- two paths ---

// What is compared with what.
struct Pair {
    Input before;
    Input after;
};

std::string shown_name(const Input& input) {
    return input.path == "-" ? "standard input" : input.path;
}

// A file of one folder alone, by the titles of the guides in it; by its name when it has none.
void tell_of_file(const Input& input, const std::string& name, bool added, compare::Report& report,
                  Terminal& terminal) {
    const State state = state_of(name, compile(terminal.disk, input.path, input.given()));
    for (std::size_t i = 0; i < state.documents.size(); ++i) {
        compare::Difference difference = one_sided(state, i, !added);
        difference.changes.front().what += fmt::format(", file `{}`", name);
        report.differences.push_back(std::move(difference));
    }
    if (!state.documents.empty())
        return;
    compare::Difference difference;
    difference.name = name;
    compare::Change change;
    change.sort = added ? compare::Sort::guide_added : compare::Sort::guide_dropped;
    change.safety = !added;
    change.subject = name;
    change.what = fmt::format("file `{}` is {}", name, added ? "new" : "there no more");
    difference.changes.push_back(std::move(change));
    report.differences.push_back(std::move(difference));
}

// Of two folders, the files of the same name; the others are told of.
std::vector<Pair> folder_pairs(const CompareOptions& options, const std::vector<Input>& olds,
                               const std::vector<Input>& news, compare::Report& report,
                               Terminal& terminal) {
    const auto below = [](const Input& input, const std::string& folder) {
        return input.path.substr(std::min(input.path.size(), folder.size()));
    };
    const auto trimmed = [](const std::string& folder) {
        return folder == "." ? std::string() : folder.ends_with('/') ? folder : folder + "/";
    };
    const std::string old_folder = trimmed(options.paths[0]);
    const std::string new_folder = trimmed(options.paths[1]);
    std::map<std::string, std::pair<const Input*, const Input*>> both;
    for (const Input& input : olds) {
        both[below(input, old_folder)].first = &input;
    }
    for (const Input& input : news) {
        both[below(input, new_folder)].second = &input;
    }
    std::vector<Pair> pairs;
    for (const auto& [name, inputs_of] : both) {
        if (inputs_of.first != nullptr && inputs_of.second != nullptr) {
            pairs.push_back({*inputs_of.first, *inputs_of.second});
            continue;
        }
        const bool added = inputs_of.first == nullptr;
        tell_of_file(added ? *inputs_of.second : *inputs_of.first, name, added, report, terminal);
    }
    return pairs;
}

int write(const CompareOptions& options, const compare::Report& report, Terminal& terminal) {
    const std::string text = options.json   ? compare::to_json(report)
                             : options.html ? compare::to_html(report)
                                            : compare::to_text(report);
    if (options.output.empty()) {
        terminal.out << text;
    } else {
        const auto written = terminal.disk.write(options.output, text);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, compare_command,
                        fmt::format("`{}` cannot be written: {}", options.output, problem->reason));
        }
        terminal.out << options.output << '\n';
    }
    return report.changed() ? exit_findings : exit_clean;
}

// Adds what changed between the two; an exit code when that cannot be said.
int add_pair(const Pair& pair, bool in_folder, compare::Report& report, Terminal& terminal) {
    const State before = state_of(shown_name(pair.before),
                                  compile(terminal.disk, pair.before.path, pair.before.given()));
    const State after = state_of(shown_name(pair.after),
                                 compile(terminal.disk, pair.after.path, pair.after.given()));
    for (const State* state : {&before, &after}) {
        if (!state->readable) {
            tell_findings(*state, terminal.err);
            return fail(terminal, compare_command,
                        fmt::format("`{}` cannot be read as a guide; mend it first", state->name));
        }
    }
    if (!compare_states(before, after, report) && !in_folder) {
        return fail(terminal, compare_command,
                    fmt::format("`{}` declares neither a guide nor a device; compare a guide that "
                                "uses it",
                                after.name));
    }
    return exit_clean;
}

} // namespace

int compare_states(const CompareOptions& options, Terminal& terminal) {
    if (options.git) {
        return compare_for_git(options, terminal);
    }
    if (options.paths.size() != 2) {
        return fail(terminal, compare_command, "name two files, OLD and NEW, or two folders");
    }
    if (options.json && options.html) {
        return fail(terminal, compare_command, "--json and --html are two forms; name one");
    }
    const bool folders = terminal.disk.is_folder(options.paths[0]);
    if (folders != terminal.disk.is_folder(options.paths[1])) {
        return fail(terminal, compare_command, "OLD and NEW are both files or both folders");
    }
    const auto olds = inputs(compare_command, {options.paths[0]}, terminal);
    const auto news = olds ? inputs(compare_command, {options.paths[1]}, terminal) : std::nullopt;
    if (!news) {
        return exit_failed;
    }
    compare::Report report{options.paths[0], options.paths[1], {}, {}};
    const std::vector<Pair> pairs = folders ? folder_pairs(options, *olds, *news, report, terminal)
                                            : std::vector<Pair>{{olds->front(), news->front()}};
    for (const Pair& pair : pairs) {
        if (const int wrong = add_pair(pair, folders, report, terminal)) {
            return wrong;
        }
    }
    return write(options, report, terminal);
}

} // namespace matchmark::drive
