// `capture`: a device and a guide from what was noted at the bench.
#include "drive/capturing.hpp"
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/inputs.hpp"
#include "drive/library.hpp"
#include "drive/report.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>
#include <sstream>

namespace matchmark::drive {

namespace {

constexpr const char* capture_command = "capture";

using Json = nlohmann::ordered_json;

// Notes of one job. More than a day's work, or a line that nobody spoke, is some other file; and
// what is assumed of the order grows faster than the lines do.
constexpr std::size_t most_lines = 200;
constexpr std::size_t longest_line = 1000; // bytes

// Why the text is too much for notes; empty when it is not.
std::string too_much(const std::string& text) {
    std::istringstream in(text);
    std::size_t number = 0;
    for (std::string line; std::getline(in, line);) {
        ++number;
        if (line.size() > longest_line)
            return fmt::format("line {} has {} bytes, and notes have {} in a line at most", number,
                               line.size(), longest_line);
        if (number > most_lines)
            return fmt::format("there are more than {} lines; keep each job in a file of its own",
                               most_lines);
    }
    return {};
}

// Nothing when one of them cannot be read.
std::optional<std::vector<NotesText>> read_all(const CaptureOptions& options, Terminal& terminal) {
    if (options.notes.empty()) {
        fail(terminal, capture_command, "name a file of notes, or - for standard input");
        return std::nullopt;
    }
    for (const std::string& path : options.notes) {
        if (terminal.disk.is_folder(path)) {
            fail(terminal, capture_command,
                 fmt::format("`{}` is a folder; name the files of notes", path));
            return std::nullopt;
        }
    }
    const auto files = inputs(capture_command, options.notes, terminal);
    if (!files)
        return std::nullopt;
    std::vector<NotesText> notes;
    for (const Input& file : *files) {
        std::string text = file.text.value_or("");
        if (!file.text) {
            auto read = terminal.disk.read(file.path);
            if (const auto* problem = std::get_if<DiskProblem>(&read)) {
                fail(terminal, capture_command,
                     fmt::format("`{}` cannot be read: {}", file.path, problem->reason));
                return std::nullopt;
            }
            text = std::move(std::get<std::string>(read));
        }
        if (first_unreadable_byte(text) != std::string::npos) {
            fail(terminal, capture_command, fmt::format("`{}` is not text in UTF-8", file.path));
            return std::nullopt;
        }
        if (const std::string reason = too_much(text); !reason.empty()) {
            fail(terminal, capture_command, fmt::format("`{}`: {}", file.path, reason));
            return std::nullopt;
        }
        notes.push_back({file.path, std::move(text)});
    }
    return notes;
}

// The device to be refined, or the library.
std::optional<Compilation> base_of(const CaptureOptions& options, Terminal& terminal, int& code) {
    code = exit_failed;
    if (options.device.empty())
        return compile_library(capture_command, "", terminal);
    if (!terminal.disk.exists(options.device) || terminal.disk.is_folder(options.device)) {
        fail(terminal, capture_command,
             fmt::format("there is no device's file `{}`", options.device));
        return std::nullopt;
    }
    auto read = sound_device(capture_command, options.device, terminal);
    if (const int* failed = std::get_if<int>(&read)) {
        code = *failed;
        return std::nullopt;
    }
    return std::get<Compilation>(std::move(read));
}

// What the comments of a guide ask.
std::vector<std::string> open_in(const std::string& guide) {
    constexpr std::string_view mark = "decide: ";
    std::vector<std::string> open;
    std::istringstream in(guide);
    for (std::string line; std::getline(in, line);) {
        const std::size_t comment = line.find_first_not_of(' ');
        if (comment == std::string::npos || line[comment] != '#')
            continue;
        if (const std::size_t at = line.find(mark); at != std::string::npos)
            open.push_back(line.substr(at + mark.size()));
    }
    return open;
}

std::size_t to_decide(const Captured& all) {
    std::size_t count = 0;
    for (const capture::Piece& piece : all.description.pieces)
        count += piece.decide.size();
    for (const CapturedGuide& guide : all.guides)
        count += open_in(guide.text).size();
    return count;
}

void write_captured_text(const Captured& all, std::ostream& out) {
    const auto& description = all.description;
    std::size_t ties = 0;
    for (const capture::Piece& piece : description.pieces)
        ties += piece.tie_assumed ? 1 : 0;
    out << fmt::format("{}: {}, {} assumed, {} to decide\n", all.device_path,
                       model::counted(description.pieces.size(), "item"),
                       model::counted(description.assumed.size() + ties, "line"), to_decide(all));
    for (const CapturedGuide& guide : all.guides) {
        out << guide.path << '\n';
        for (const std::string& act : guide.added)
            out << fmt::format("  not noted, and added: {}\n", act);
    }
}

Json to_json(const Captured& all, const Report& report) {
    const auto& pieces = all.description.pieces;
    Json root;
    root["device"] = all.refused ? Json(nullptr) : Json(all.device_path);
    root["guides"] = Json::array();
    for (const CapturedGuide& guide : all.guides)
        root["guides"].push_back({{"path", guide.path}, {"added", guide.added}});
    root["assumed"] = Json::array();
    for (const auto& [over, under] : all.description.assumed)
        root["assumed"].push_back({{"item", pieces[under].name}, {"under", pieces[over].name}});
    for (const capture::Piece& piece : pieces) {
        if (piece.tie_assumed && piece.base)
            root["assumed"].push_back({{"item", piece.name}, {"to", pieces[*piece.base].name}});
        if (!piece.tie_assumed || piece.role != model::Role::energy)
            continue;
        Json fed = Json::array();
        for (const capture::Thing part : piece.ties)
            fed.push_back(pieces[part].name);
        root["assumed"].push_back({{"item", piece.name}, {"feeds", fed}});
    }
    root["decide"] = Json::array();
    for (const capture::Piece& piece : pieces) {
        for (const std::string& open : piece.decide)
            root["decide"].push_back({{"item", piece.name}, {"what", open}});
    }
    for (const CapturedGuide& guide : all.guides) {
        for (const std::string& open : open_in(guide.text))
            root["decide"].push_back({{"guide", guide.path}, {"what", open}});
    }
    root["findings"] = Json::parse(report.json_array());
    return root;
}

std::string why_refused(const Captured& all) {
    const auto& findings = all.device.findings;
    const auto error = std::find_if(findings.begin(), findings.end(), [](const Diagnostic& one) {
        return one.severity == Severity::error;
    });
    if (error == findings.end())
        return "the notes and the device contradict each other; nothing is written";
    return fmt::format("the notes make no device: {}; nothing is written", error->message);
}

// All files or none; nothing that is there already is lost unless that was asked for.
bool write_captured_files(const CaptureOptions& options, const Captured& all, Terminal& terminal) {
    std::vector<std::pair<std::string, const std::string*>> files;
    files.emplace_back(all.device_path, &all.device_text);
    for (const CapturedGuide& guide : all.guides)
        files.emplace_back(guide.path, &guide.text);
    for (const auto& [path, text] : files) {
        const bool refined = !options.device.empty() && text == &all.device_text;
        if (!refined && !options.force && terminal.disk.exists(path)) {
            fail(terminal, capture_command,
                 fmt::format("`{}` is there already; nothing is written. --force overwrites it, "
                             "--device refines a device",
                             path));
            return false;
        }
    }
    for (const auto& [path, text] : files) {
        const auto written = terminal.disk.write(path, *text);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            fail(terminal, capture_command,
                 fmt::format("`{}` cannot be written: {}", path, problem->reason));
            return false;
        }
    }
    return true;
}

} // namespace

int capture_notes(const CaptureOptions& options, Terminal& terminal) {
    const auto notes = read_all(options, terminal);
    if (!notes)
        return exit_failed;
    int code = exit_failed;
    auto base = base_of(options, terminal, code);
    if (!base)
        return code;
    const Captured all = captured(terminal.disk, std::move(*base), *notes, options.folder);
    Report report;
    report.add(reported(all.base.sources, all.findings, options.json));
    // A device that was never written is nothing to point at.
    for (const Compilation& unclean : all.unclean) {
        if (all.refused && options.device.empty())
            continue;
        report.add(reported(unclean.sources, unclean.findings, options.json));
    }
    if (all.guides.empty() && !all.refused) {
        report.write_text(terminal.err);
        return fail(terminal, capture_command,
                    "the notes say nothing that is done; nothing is written");
    }
    if (!all.refused && !write_captured_files(options, all, terminal))
        return exit_failed;
    if (options.json) {
        terminal.out << to_json(all, report).dump(2, ' ', false, Json::error_handler_t::replace)
                     << '\n';
    } else {
        if (!all.refused)
            write_captured_text(all, terminal.out);
        report.write_text(terminal.err);
        if (all.refused)
            fail(terminal, capture_command, why_refused(all));
    }
    return all.refused || report.count(Severity::error) > 0 ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
