// `check`: every finding of every file asked about.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/pictures.hpp"
#include "drive/report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <ostream>
#include <thread>

namespace matchmark::drive {

namespace {

// What is kept of one file after its compilation.
struct Checked {
    std::size_t guides = 0;
    std::size_t devices = 0;
    bool unreadable = false;
    std::vector<Reported> findings;
};

Checked check_one(Disk& disk, const Input& input, const CheckOptions& options) {
    Compilation done = compile(disk, input.path, input.given());
    report_pictures(disk, done);
    Checked result;
    for (const model::Guide& guide : done.model.guides) {
        result.guides += guide.file == done.root ? 1U : 0U;
    }
    result.devices = done.model.device.span.file == done.root ? 1U : 0U;
    result.unreadable = done.unreadable;
    result.findings = reported(done.sources, done.findings, options.json, options.strict);
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

} // namespace

int check(const CheckOptions& options, Terminal& terminal) {
    const auto files = inputs("check", options.paths, terminal);
    if (!files) {
        return exit_failed;
    }
    Report report;
    std::size_t guides = 0;
    std::size_t devices = 0;
    bool unreadable = false;
    for (Checked& checked : check_all(terminal.disk, *files, options)) {
        guides += checked.guides;
        devices += checked.devices;
        unreadable = unreadable || checked.unreadable;
        report.add(std::move(checked.findings));
    }
    if (options.json) {
        report.write_json(terminal.out);
    } else if (report.empty()) {
        std::string what = guides == 0 && devices == 0 ? counted(files->size(), "file") : "";
        what += guides != 0 ? counted(guides, "guide") : "";
        what += guides != 0 && devices != 0 ? ", " : "";
        what += devices != 0 ? counted(devices, "device") : "";
        terminal.out << what << ": nothing to report\n";
    } else {
        report.write_text(terminal.out);
    }
    if (unreadable) {
        return exit_failed;
    }
    return report.count(Severity::error) != 0 ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
