// `check`: every finding of every file asked about.
#include "drive/check_cache.hpp"
#include "drive/check_junit.hpp"
#include "drive/check_sarif.hpp"
#include "drive/commands.hpp"
#include "drive/depfile.hpp"
#include "drive/inputs.hpp"
#include "drive/pictures.hpp"
#include "drive/report.hpp"
#include "drive/touched.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <istream>
#include <iterator>
#include <map>
#include <mutex>
#include <ostream>
#include <set>
#include <thread>

namespace matchmark::drive {

namespace {

void keep_for_sarif(const Compilation& done, Checked& result) {
    for (std::size_t i = 0; i < result.findings.size(); ++i) {
        Diagnostic finding = done.findings[i];
        finding.severity = result.findings[i].severity;
        result.findings[i].json = sarif_result(done.sources, finding);
    }
}

Checked check_one(Disk& disk, const Input& input, const CheckOptions& options, Memory* memory) {
    Compilation done = compile(disk, input.path, input.given(), memory, Lines::let_go);
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
    for (Reported& finding : result.findings) {
        finding.line.clear();
        if (options.as != CheckForm::text) {
            finding.text.clear(); // framed for JUnit's suite at most, which has its own
        }
    }
    return result;
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

int write_check_depfile(const CheckOptions& options, const std::set<std::string>& files,
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
    std::string cache_problem;

    // In the order of the inputs.
    void add(Checked checked, CheckForm as) {
        ++files;
        guides += checked.guides;
        devices += checked.devices;
        unreadable = unreadable || checked.unreadable;
        drop_unshown(checked.findings);
        report.add(std::move(checked.findings));
        if (as == CheckForm::junit) {
            suites.push_back(std::move(checked.suite));
        }
        depends.merge(checked.depends);
    }

private:
    // The report frames twenty findings at most, the gravest first: of each severity no more than
    // the first twenty can be among them. The framed text is most of what a finding weighs.
    static constexpr std::size_t most_framed = 20;

    void drop_unshown(std::vector<Reported>& findings) {
        for (Reported& finding : findings) {
            std::set<std::string>& framed = framed_[static_cast<std::size_t>(finding.severity)];
            if (framed.size() < most_framed) {
                framed.insert(finding.key);
            } else if (!framed.contains(finding.key)) {
                finding.text = std::string();
            }
        }
    }

    std::array<std::set<std::string>, 3> framed_; // keys of findings, by severity
};

// What decides the findings of a file beside the files themselves.
std::string about_check(const std::string& program, const CheckOptions& options) {
    return fmt::format("{} {} {} {}", program, static_cast<unsigned>(options.as), options.strict,
                       !options.depfile.empty());
}

std::optional<CheckCache> cache_to_use(const CheckOptions& options, Terminal& terminal) {
    if (options.cache.empty()) {
        return std::nullopt;
    }
    const auto program = program_digest(terminal.disk);
    if (!program) {
        terminal.err << "matchmark check: the program cannot read itself here, so the cache is not "
                        "used\n";
        return std::nullopt;
    }
    return CheckCache{options.cache, about_check(*program, options)};
}

// Takes results as they come, and adds them up in the order of the inputs, whichever thread was
// first. No more is kept than has to wait for one before it.
class ResultRow {
public:
    ResultRow(Total& total, CheckForm as) : total_(total), as_(as) {}

    void put(std::size_t place, Checked checked, std::string problem) {
        const std::scoped_lock lock(mutex_);
        waiting_.emplace(place, std::move(checked));
        if (!problem.empty()) {
            total_.cache_problem = std::move(problem);
        }
        while (!waiting_.empty() && waiting_.begin()->first == due_) {
            total_.add(std::move(waiting_.extract(waiting_.begin()).mapped()), as_);
            ++due_;
        }
    }

private:
    Total& total_;
    CheckForm as_;
    std::mutex mutex_;
    std::map<std::size_t, Checked> waiting_;
    std::size_t due_ = 0;
};

Total check_all(Disk& disk, const std::vector<Input>& files, const CheckOptions& options,
                const std::optional<CheckCache>& cache) {
    Total total;
    ResultRow row(total, options.as);
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        Memory memory; // guides of one device stand together, as a rule
        const auto check_file = [&](Disk& from, const Input& input) {
            return check_one(from, input, options, files.size() > 1 ? &memory : nullptr);
        };
        for (std::size_t i = next++; i < files.size(); i = next++) {
            std::string problem;
            Checked checked = cache ? cached(disk, *cache, files[i], check_file, problem)
                                    : check_file(disk, files[i]);
            row.put(i, std::move(checked), std::move(problem));
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
    return total;
}

void write_findings_text(const Total& total, bool touched, std::ostream& out) {
    if (!total.report.empty()) {
        total.report.write_text(out);
        return;
    }
    if (total.files == 0) {
        out << "no file is touched: nothing to check\n";
        return;
    }
    const bool neither = total.guides == 0 && total.devices == 0;
    std::string what = neither ? counted(total.files, "file") + " without a guide or a device" : "";
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
    if (!options.cache.empty() && terminal.disk.exists(options.cache) &&
        !terminal.disk.is_folder(options.cache)) {
        return fail(terminal, "check",
                    fmt::format("`{}` is a file; --cache takes a folder", options.cache));
    }
    const auto cache = cache_to_use(options, terminal);
    const Total total = check_all(terminal.disk, *files, options, cache);
    if (!total.cache_problem.empty()) {
        terminal.err << fmt::format("matchmark check: the cache `{}` cannot be written: {}\n",
                                    options.cache, total.cache_problem);
    }
    switch (options.as) {
    case CheckForm::text:
        write_findings_text(total, !options.touched.empty(), terminal.out);
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
        if (const int wrong = write_check_depfile(options, total.depends, terminal)) {
            return wrong;
        }
    }
    if (total.unreadable) {
        return exit_failed;
    }
    return total.report.count(Severity::error) != 0 ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
