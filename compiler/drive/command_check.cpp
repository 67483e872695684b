// `check`: every finding of every file asked about.
#include "drive/check_junit.hpp"
#include "drive/check_sarif.hpp"
#include "drive/commands.hpp"
#include "drive/depfile.hpp"
#include "drive/inputs.hpp"
#include "drive/pictures.hpp"
#include "drive/report.hpp"
#include "drive/touched.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <istream>
#include <iterator>
#include <ostream>
#include <set>
#include <thread>

namespace matchmark::drive {

namespace {

// What is kept of one file after its compilation.
struct Checked {
    std::size_t guides = 0;
    std::size_t devices = 0;
    bool unreadable = false;
    std::vector<Reported> findings;
    JunitSuite suite;              // for JUnit alone
    std::set<std::string> depends; // for a dependency file alone
};

void keep_for_sarif(const Compilation& done, Checked& result) {
    for (std::size_t i = 0; i < result.findings.size(); ++i) {
        Diagnostic finding = done.findings[i];
        finding.severity = result.findings[i].severity;
        result.findings[i].json = sarif_result(done.sources, finding);
    }
}

Checked check_one(Disk& disk, const Input& input, const CheckOptions& options) {
    Compilation done = compile(disk, input.path, input.given());
    report_pictures(disk, done);
    Checked result;
    for (const model::Guide& guide : done.model.guides) {
        result.guides += guide.file == done.root ? 1U : 0U;
    }
    result.devices = done.model.device.span.file == done.root ? 1U : 0U;
    result.unreadable = done.unreadable;
    result.findings =
        reported(done.sources, done.findings, options.as == CheckForm::json, options.strict);
    if (options.as == CheckForm::sarif) {
        keep_for_sarif(done, result);
    } else if (options.as == CheckForm::junit) {
        result.suite = junit_suite(done, result.findings);
    }
    if (!options.depfile.empty()) {
        result.depends = files_read(done);
    }
    return result;
}

// Side by side; the results stand in the order of the inputs, whichever thread was first.
std::vector<Checked> check_all(Disk& disk, const std::vector<Input>& files,
                               const CheckOptions& options) {
    std::vector<Checked> results(files.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < files.size(); i = next++) {
            results[i] = check_one(disk, files[i], options);
        }
    };
    const std::size_t wanted =
        options.jobs != 0 ? options.jobs : std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::thread> threads;
    for (std::size_t i = 1; i < std::min(wanted, files.size()); ++i) {
        threads.emplace_back(work);
    }
    work();
    for (std::thread& thread : threads) {
        thread.join();
    }
    return results;
}

std::string counted(std::size_t count, const char* word) {
    return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

// The files to check: all that were named, or of those the ones that a change touches.
std::optional<std::vector<Input>> files_to_check(const CheckOptions& options, Terminal& terminal) {
    if (options.touched.empty()) {
        return inputs("check", options.paths, terminal);
    }
    std::vector<std::string> touched;
    for (const std::string& name : options.touched) {
        if (name != "-") {
            touched.push_back(name);
            continue;
        }
        const std::string text{std::istreambuf_iterator<char>(terminal.in), {}};
        for (std::string& listed : listed_names(text)) {
            touched.push_back(std::move(listed));
        }
    }
    const std::vector<std::string> here = {"."};
    const auto files = inputs("check", options.paths.empty() ? here : options.paths, terminal);
    return files ? std::optional(touched_by(terminal.disk, *files, touched)) : std::nullopt;
}

int write_depfile(const CheckOptions& options, const std::set<std::string>& files,
                  Terminal& terminal) {
    // As compilers do it: `a.ok.d` says what `a.ok` depends on.
    const std::string target = options.depfile.ends_with(".d")
                                   ? options.depfile.substr(0, options.depfile.size() - 2)
                                   : options.depfile;
    const std::string text = depfile_text({target}, files);
    if (text.empty()) {
        return fail(terminal, "check", "a name with a line end cannot stand in a dependency file");
    }
    const auto written = terminal.disk.write(options.depfile, text);
    if (const auto* problem = std::get_if<DiskProblem>(&written)) {
        return fail(terminal, "check",
                    fmt::format("`{}` cannot be written: {}", options.depfile, problem->reason));
    }
    return exit_clean;
}

// What was checked, all together.
struct Total {
    Report report;
    std::size_t files = 0;
    std::size_t guides = 0;
    std::size_t devices = 0;
    bool unreadable = false;
    std::vector<JunitSuite> suites;
    std::set<std::string> depends;

    void add(Checked checked) {
        ++files;
        guides += checked.guides;
        devices += checked.devices;
        unreadable = unreadable || checked.unreadable;
        report.add(std::move(checked.findings));
        suites.push_back(std::move(checked.suite));
        depends.merge(checked.depends);
    }
};

void write_text(const Total& total, bool touched, std::ostream& out) {
    if (!total.report.empty()) {
        total.report.write_text(out);
        return;
    }
    if (total.files == 0) {
        out << "no file is touched: nothing to check\n";
        return;
    }
    const bool neither = total.guides == 0 && total.devices == 0;
    std::string what = neither ? counted(total.files, "file") : "";
    what += total.guides != 0 ? counted(total.guides, "guide") : "";
    what += total.guides != 0 && total.devices != 0 ? ", " : "";
    what += total.devices != 0 ? counted(total.devices, "device") : "";
    out << what << (touched ? " touched" : "") << ": nothing to report\n";
}

} // namespace

int check(const CheckOptions& options, Terminal& terminal) {
    const auto files = files_to_check(options, terminal);
    if (!files) {
        return exit_failed;
    }
    Total total;
    for (Checked& checked : check_all(terminal.disk, *files, options)) {
        total.add(std::move(checked));
    }
    switch (options.as) {
    case CheckForm::text:
        write_text(total, !options.touched.empty(), terminal.out);
        break;
    case CheckForm::json:
        total.report.write_json(terminal.out);
        break;
    case CheckForm::sarif:
        terminal.out << sarif_log(total.report.json_array(), !total.unreadable);
        break;
    case CheckForm::junit:
        terminal.out << junit_text(total.suites);
        break;
    }
    if (!options.depfile.empty()) {
        if (const int wrong = write_depfile(options, total.depends, terminal)) {
            return wrong;
        }
    }
    if (total.unreadable) {
        return exit_failed;
    }
    return total.report.count(Severity::error) != 0 ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
