// `draw`: one drawing of a device or a guide, with what it says in words beside it.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/report.hpp"

#include "draw/drawings.hpp"
#include "model/describe.hpp"

#include <fmt/chrono.h>
#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <ctime>
#include <ostream>
#include <string_view>

namespace matchmark::drive {

namespace {

constexpr const char* draw_command = "draw";

struct Wanted {
    draw::What what = draw::What::access;
    bool svg = false;
    bool pdf = false;
};

struct DrawnFile {
    std::string name;
    std::string bytes;
};

// What SOURCE_DATE_EPOCH says, as reproducible-builds.org defines it; otherwise the guide's date.
std::string created(const model::Guide* guide) {
    if (const char* set = std::getenv("SOURCE_DATE_EPOCH")) {
        const std::string_view text = set;
        std::time_t seconds = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), seconds);
        if (read.ec == std::errc() && read.ptr == text.data() + text.size()) {
            return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(seconds));
        }
    }
    return guide == nullptr ? "" : guide->date;
}

std::vector<DrawnFile> files_of(const std::vector<draw::Scene>& scenes, const std::string& name,
                                const Wanted& wanted, const model::Guide* guide) {
    std::vector<DrawnFile> files;
    for (std::size_t i = 0; i < scenes.size() && wanted.svg; ++i) {
        const std::string part = scenes.size() == 1 ? "" : fmt::format("-{}", i + 1);
        files.push_back({name + part + ".svg", draw::paint_svg(scenes[i])});
    }
    if (wanted.pdf) {
        const std::string author = guide == nullptr ? "" : guide->author;
        files.push_back({name + ".pdf",
                         draw::paint_pdf(scenes, {scenes.front().title, author, created(guide)})});
    }
    files.push_back({name + ".md", draw::in_markdown(scenes)});
    return files;
}

// The forms named; nothing when one is not known.
bool read_forms(const std::string& named, Wanted& wanted, Terminal& terminal) {
    for (std::size_t at = 0; at <= named.size();) {
        const std::size_t end = std::min(named.find(',', at), named.size());
        const std::string form = named.substr(at, end - at);
        at = end + 1;
        if (form != "svg" && form != "pdf") {
            const std::string near = did_you_mean(form, {"svg", "pdf"});
            fail(terminal, draw_command,
                 fmt::format("there is no form `{}`{}", form,
                             near.empty() ? "; svg and pdf are known" : near));
            return false;
        }
        (form == "svg" ? wanted.svg : wanted.pdf) = true;
    }
    return true;
}

bool read_options(const DrawOptions& options, Wanted& wanted, Terminal& terminal) {
    const auto what = draw::what_named(options.what);
    if (!what) {
        const std::string near = did_you_mean(options.what, draw::what_names());
        fail(terminal, draw_command,
             fmt::format("there is no drawing `{}`{}", options.what,
                         near.empty() ? "; " + model::list(draw::what_names()) + " are known"
                                      : near));
        return false;
    }
    wanted.what = *what;
    if (!options.way_to.empty() && *what == draw::What::order) {
        fail(terminal, draw_command, "--way-to goes with access, held and wiring");
        return false;
    }
    if (options.folder.empty() ||
        (terminal.disk.exists(options.folder) && !terminal.disk.is_folder(options.folder))) {
        fail(
            terminal, draw_command,
            fmt::format("`{}` is no folder; -o names the folder for the drawings", options.folder));
        return false;
    }
    return read_forms(options.forms, wanted, terminal);
}

// The part that --way-to names; false when the device has none of that name.
bool find_part(const model::Model& model, const std::string& name, draw::Viewing& viewing,
               Terminal& terminal) {
    if (name.empty()) {
        return true;
    }
    std::vector<std::string> names;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == name) {
            viewing.way_to = model::ItemId{i};
            return true;
        }
        names.push_back(model.items[i].name);
    }
    fail(terminal, draw_command,
         fmt::format("the device has no `{}`{}", name, did_you_mean(name, names)));
    return false;
}

std::vector<DrawnFile> drawn(const Compilation& done, const Wanted& wanted,
                             const draw::Viewing& viewing, const std::string& what) {
    std::vector<DrawnFile> files;
    const auto add = [&](const model::Procedure* procedure, const std::string& name) {
        const model::Guide* guide =
            procedure == nullptr ? nullptr : &done.model.guide(procedure->guide);
        const auto scenes = draw::drawing(wanted.what, done.model, procedure, viewing);
        if (!scenes.empty()) {
            for (DrawnFile& file : files_of(scenes, name + "-" + what, wanted, guide)) {
                files.push_back(std::move(file));
            }
        }
    };
    for (const model::Procedure& procedure : done.procedures) {
        add(&procedure, done.model.guide(procedure.guide).name);
    }
    if (done.procedures.empty()) {
        add(nullptr, done.model.device.name);
    }
    return files;
}

int write_drawings(const std::vector<DrawnFile>& files, const std::string& folder,
                   Terminal& terminal) {
    for (const DrawnFile& file : files) {
        const std::string path =
            folder == "." ? file.name : folder + (folder.ends_with('/') ? "" : "/") + file.name;
        if (file.bytes.empty()) {
            return fail(terminal, draw_command, fmt::format("`{}` cannot be drawn", path));
        }
        const auto written = terminal.disk.write(path, file.bytes);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, draw_command,
                        fmt::format("`{}` cannot be written: {}", path, problem->reason));
        }
        terminal.out << path << '\n';
    }
    return exit_clean;
}

} // namespace

int draw_device(const DrawOptions& options, Terminal& terminal) {
    Wanted wanted;
    if (!read_options(options, wanted, terminal)) {
        return exit_failed;
    }
    const auto files = inputs(draw_command, {options.path}, terminal);
    if (!files) {
        return exit_failed;
    }
    if (files->size() != 1 || terminal.disk.is_folder(options.path)) {
        return fail(
            terminal, draw_command,
            fmt::format("`{}` is a folder; name one file of a device or a guide", options.path));
    }
    const Compilation done = compile(terminal.disk, files->front().path, files->front().given());
    if (any_error(done.findings)) {
        return fail_with_findings(done, terminal);
    }
    draw::Viewing viewing;
    if (!done.model.device.span.known()) {
        return fail(terminal, draw_command, fmt::format("`{}` declares no device", options.path));
    }
    if (!find_part(done.model, options.way_to, viewing, terminal)) {
        return exit_failed;
    }
    const auto made = drawn(done, wanted, viewing, options.what);
    if (made.empty()) {
        return fail(terminal, draw_command,
                    wanted.what == draw::What::order
                        ? "no guide is declared there; a device alone has no order of steps"
                        : "nothing is wired, fed or piped there");
    }
    return write_drawings(made, options.folder, terminal);
}

} // namespace matchmark::drive
