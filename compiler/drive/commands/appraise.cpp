// `appraise`: how deep each part of a device sits, what most parts wait for, and the index of
// repair of phones and tablets.
#include "appraise/appraise.hpp"
#include "draw/charts_appraisal.hpp"
#include "drive/appraisal_report.hpp"
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/inputs.hpp"
#include "drive/part_ways.hpp"
#include "model/describe.hpp"
#include "plan/what_if.hpp"
#include "publish/appraisal_page.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* appraise_command = "appraise";
constexpr std::size_t most_changes = 10;

// The parts asked for, or all; those of the index go along unseen.
std::vector<WantedPart> wanted_parts(const bench::Bench& bench,
                                     const std::vector<model::ItemId>& asked) {
    const model::Model& model = *bench.model;
    std::vector<WantedPart> wanted;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const model::ItemId id{i};
        const model::Item& item = model.items[i];
        if (!bench.exists(id))
            continue;
        const bool named = std::find(asked.begin(), asked.end(), id) != asked.end();
        const bool shown = named || (asked.empty() && item.role == model::Role::part);
        if (shown || !item.rare->counts_as->empty())
            wanted.push_back({id, shown});
    }
    return wanted;
}

// Over the parts of the index where there are some, or else over those asked for: over all parts of
// a large device it would take longer than all the rest.
std::vector<guide::DesignChange> design_changes(const bench::Bench& bench, const SourceMap& sources,
                                                const std::vector<WantedPart>& wanted,
                                                const std::vector<model::ItemId>& asked,
                                                unsigned threads) {
    const model::Model& model = *bench.model;
    std::vector<model::ItemId> parts;
    for (const WantedPart& part : wanted) {
        if (!model.item(part.item).rare->counts_as->empty())
            parts.push_back(part.item);
    }
    if (parts.empty())
        parts = asked;
    if (parts.empty())
        return {};
    const plan::WhatIf answer = plan::what_if(bench, parts, false, threads);
    std::vector<guide::DesignChange> changes;
    for (const plan::Change& change : answer.changes) {
        const bool helps = change.seconds_saved > 0 || change.opened > 0;
        if (!helps || changes.size() == most_changes)
            continue;
        guide::DesignChange told;
        told.words = plan::in_words(model, sources, change.relation);
        told.seconds_saved = change.seconds_saved;
        told.acts_saved = static_cast<int>(change.acts_saved);
        for (const plan::PartThen& part : change.parts) {
            const std::string title = model::for_reader(model, part.part, false);
            if (part.opened)
                told.opened.push_back(title);
            else if (part.seconds_saved > 0)
                told.parts.push_back(title);
        }
        changes.push_back(std::move(told));
    }
    return changes;
}

int write_appraisal_page(const guide::Appraisal& appraisal, const std::string& folder,
                         Terminal& terminal) {
    const std::string name = appraisal.device + "-appraisal.html";
    const std::string path =
        folder == "." ? name : folder + (folder.ends_with('/') ? "" : "/") + name;
    const auto written = terminal.disk.write(
        path, publish::appraisal_page(appraisal, draw::appraisal_figures(appraisal)));
    if (const auto* problem = std::get_if<DiskProblem>(&written))
        return fail(terminal, appraise_command,
                    fmt::format("`{}` cannot be written: {}", path, problem->reason));
    terminal.out << path << '\n';
    return exit_clean;
}

bool any_stuck(const guide::Appraisal& appraisal) {
    return std::any_of(appraisal.parts.begin(), appraisal.parts.end(), [](const auto& part) {
        return part.way == guide::WayFound::none || part.way == guide::WayFound::unknown;
    });
}

} // namespace

int appraise_device(const AppraiseOptions& options, Terminal& terminal) {
    if (options.html && options.json)
        return fail(terminal, appraise_command,
                    "--html writes a page and --json tells it here; choose one");
    if (options.folder.empty() ||
        (terminal.disk.exists(options.folder) && !terminal.disk.is_folder(options.folder)))
        return fail(
            terminal, appraise_command,
            fmt::format("`{}` is no folder; -o names the folder for the page", options.folder));
    const auto read = device_goal(appraise_command, options.path, options.parts, false,
                                  options.variant, terminal);
    if (const int* failed = std::get_if<int>(&read))
        return *failed;
    const auto& device = std::get<DeviceGoal>(read);
    const bench::Bench bench{&device.done.model, device.variant};
    const std::vector<WantedPart> wanted = wanted_parts(bench, device.goal.items);
    std::optional<double> seconds;
    if (options.time_limit > 0)
        seconds = options.time_limit;
    guide::Appraisal appraisal =
        appraise::appraise(bench, part_ways(bench, wanted, seconds, options.jobs));
    appraisal.changes =
        design_changes(bench, device.done.sources, wanted, device.goal.items, options.jobs);
    if (options.html)
        return write_appraisal_page(appraisal, options.folder, terminal);
    if (options.json)
        write_appraisal_json(appraisal, terminal.out);
    else
        write_appraisal(appraisal, terminal.out);
    return !options.parts.empty() && any_stuck(appraisal) ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
