// `import`: a first text from a table of parts or from an outline, with what is left to decide.
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/importing/device.hpp"
#include "drive/importing/outline.hpp"
#include "drive/importing/settle.hpp"
#include "drive/inputs.hpp"
#include "drive/library.hpp"
#include "drive/new_text.hpp"
#include "drive/report.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <optional>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* import_command = "import";

std::string file_name(const std::string& path) {
    const auto slash = path.rfind('/');
    return slash == std::string::npos ? path : path.substr(slash + 1);
}

// A name that the language takes: as asked for, or else the file's.
std::optional<std::string> name_for(const ImportOptions& options, Terminal& terminal) {
    const std::string file = file_name(options.path);
    const std::string name =
        options.name.empty() ? model::name_from(file.substr(0, file.rfind('.'))) : options.name;
    if (name.empty() || !reads_well("part " + name + "\n")) {
        const std::string offered = model::name_from(name);
        fail(terminal, import_command,
             fmt::format("`{}` is no name: a letter, then letters, digits and hyphens{}; say it "
                         "with --name",
                         name, offered.empty() || offered == name ? "" : ", as `" + offered + "`"));
        return std::nullopt;
    }
    return name;
}

std::optional<std::string> text_of_table(const std::string& bytes, const ImportOptions& options,
                                         const std::string& name, Terminal& terminal) {
    const Table table = read_table(bytes);
    if (!table.problem.empty()) {
        const std::string line =
            table.problem_line == 0 ? "" : fmt::format(", line {}", table.problem_line);
        fail(terminal, import_command,
             fmt::format("`{}`{}: {}", options.path, line, table.problem));
        return std::nullopt;
    }
    const PartsTable parts = read_parts(table);
    if (!parts.problem.empty()) {
        fail(terminal, import_command, fmt::format("`{}`: {}", options.path, parts.problem));
        return std::nullopt;
    }
    const auto library = compile_library(import_command, "", terminal);
    if (!library) {
        return std::nullopt;
    }
    return device_from(parts, KindWords(library->model), name, file_name(options.path));
}

std::optional<std::string> text_of_outline(const std::string& bytes, const ImportOptions& options,
                                           const std::string& name, const std::string& path,
                                           Terminal& terminal) {
    if (options.for_device.empty()) {
        fail(terminal, import_command,
             "an outline is of work on a device: name its file, --for "
             "DEVICE.mmk");
        return std::nullopt;
    }
    const auto read = sound_device(import_command, options.for_device, terminal);
    const auto* device = std::get_if<Compilation>(&read);
    if (device == nullptr) {
        return std::nullopt;
    }
    if (first_unreadable_byte(bytes) != std::string::npos) {
        fail(terminal, import_command, fmt::format("`{}` is not text in UTF-8", options.path));
        return std::nullopt;
    }
    return guide_from({bytes, name, file_name(options.path), seen_from(path, options.for_device)},
                      device->model);
}

void tell_json(const std::string& path, const std::vector<OpenPlace>& places, std::ostream& out) {
    nlohmann::ordered_json object{{"file", path}};
    object["decide"] = nlohmann::ordered_json::array();
    for (const OpenPlace& place : places) {
        object["decide"].push_back({{"line", place.line}, {"question", place.question}});
    }
    out << object.dump(2) << '\n';
}

int deliver_import(const ImportOptions& options, const std::string& path, const std::string& text,
                   Terminal& terminal) {
    const std::vector<OpenPlace> places = open_places(text);
    if (options.output.empty()) {
        terminal.out << text;
    } else {
        const auto written = terminal.disk.write(path, text);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, import_command,
                        fmt::format("`{}` cannot be written: {}", path, problem->reason));
        }
    }
    if (options.json && !options.output.empty()) {
        tell_json(path, places, terminal.out);
        return exit_clean;
    }
    // Where the text itself goes to the terminal, what is told of it goes beside it.
    std::ostream& told = options.output.empty() ? terminal.err : terminal.out;
    for (const OpenPlace& place : places) {
        told << fmt::format("{}:{}: decide: {}\n", path, place.line, place.question);
    }
    told << (options.output.empty() ? "" : path + ": ")
         << (places.empty()
                 ? std::string("nothing is left to decide\n")
                 : fmt::format("{} to decide\n", places.size() == 1
                                                     ? "1 place"
                                                     : fmt::format("{} places", places.size())));
    return exit_clean;
}

} // namespace

int import_file(const ImportOptions& options, Terminal& terminal) {
    const bool is_outline = options.path.ends_with(".md") || options.path.ends_with(".markdown");
    const bool is_table = options.path.ends_with(".csv") || options.path.ends_with(".tsv") ||
                          options.path.ends_with(".txt");
    if (!is_outline && !is_table) {
        return fail(
            terminal, import_command,
            fmt::format("`{}` is neither a table (.csv, .tsv) nor an outline (.md)", options.path));
    }
    if (is_table && !options.for_device.empty()) {
        return fail(terminal, import_command, "a table makes a device; --for goes with an outline");
    }
    const auto name = name_for(options, terminal);
    if (!name) {
        return exit_failed;
    }
    const std::string path =
        options.output.empty() ? beside(options.path, *name + ".mmk") : options.output;
    if (!options.output.empty() && terminal.disk.exists(path)) {
        return fail(terminal, import_command,
                    fmt::format("`{}` is there already; nothing is written", path));
    }
    const auto read = terminal.disk.read(options.path);
    if (const auto* problem = std::get_if<DiskProblem>(&read)) {
        return fail(terminal, import_command,
                    fmt::format("`{}` cannot be read: {}", options.path, problem->reason));
    }
    const auto& bytes = std::get<std::string>(read);
    const auto text = is_table ? text_of_table(bytes, options, *name, terminal)
                               : text_of_outline(bytes, options, *name, path, terminal);
    return text ? deliver_import(options, path, settled(terminal.disk, path, *text), terminal)
                : exit_failed;
}

} // namespace matchmark::drive
