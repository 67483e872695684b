// `new`: a device or a guide to start from.
#include "drive/commands.hpp"
#include "drive/device_goal.hpp"
#include "drive/first_draft.hpp"
#include "drive/inputs.hpp"
#include "drive/mended_draft.hpp"
#include "drive/new_text.hpp"
#include "drive/overlay.hpp"
#include "drive/report.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <optional>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* new_command = "new";
constexpr std::size_t most_tries =
    12; // drafts of a guide that are checked before one without steps is taken

// A name is a letter of any script, then letters, digits and hyphens; what is not ASCII is left to
// the parser.
bool is_name(const std::string& word) {
    const auto is_letter = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
               static_cast<unsigned char>(c) >= 0x80;
    };
    bool good = !word.empty() && is_letter(word[0]);
    for (const char c : word) {
        good = good && (is_letter(c) || (c >= '0' && c <= '9') || c == '-');
    }
    return good;
}

// Nothing at all to say about it, were it at `path`.
bool checks_clean(Disk& disk, const std::string& path, const std::string& text) {
    OverlayDisk overlay(disk);
    static_cast<void>(overlay.write(path, text));
    return compile(overlay, path).findings.empty();
}

std::optional<std::string> device_text(const NewOptions& options, const std::string& path,
                                       Terminal& terminal) {
    std::string text = tidied_text(device_draft(options.name));
    if (!checks_clean(terminal.disk, path, text)) {
        fail(terminal, new_command,
             fmt::format("`{}` is already the name of something else; choose another name",
                         options.name));
        return std::nullopt;
    }
    return text;
}

std::optional<std::string> new_guide_text(const NewOptions& options, const std::string& path,
                                          Terminal& terminal) {
    if (options.for_device.empty()) {
        fail(terminal, new_command, "a guide is for a device: name its file, --for DEVICE.mmk");
        return std::nullopt;
    }
    const auto files = inputs(new_command, {options.for_device}, terminal);
    if (!files) {
        return std::nullopt;
    }
    if (files->size() != 1 || files->front().path == "-") {
        fail(terminal, new_command, "--for asks for one file");
        return std::nullopt;
    }
    const auto read = sound_device(new_command, files->front().path, terminal);
    const auto* device = std::get_if<Compilation>(&read);
    if (device == nullptr) {
        return std::nullopt;
    }
    const std::string use = seen_from(path, files->front().path);
    const bench::Bench on{&device->model, 0};
    std::vector<model::ItemId> parts = parts_by_depth(on);
    parts.resize(std::min(parts.size(), most_tries));
    for (const model::ItemId part : parts) {
        const auto draft = guide_to(on, part, options.name, use);
        if (!draft) {
            continue;
        }
        MendedDraft mended = mended_draft(terminal.disk, path, tidied_text(*draft));
        if (mended.done.findings.empty()) {
            return std::move(mended.text);
        }
    }
    return tidied_text(guide_without_steps(options.name, use));
}

} // namespace

int start_new(const NewOptions& options, Terminal& terminal) {
    if (options.sort != "device" && options.sort != "guide") {
        return fail(terminal, new_command,
                    fmt::format("`{}` cannot be started; say `new device NAME` or `new guide NAME "
                                "--for DEVICE.mmk`{}",
                                options.sort, did_you_mean(options.sort, {"device", "guide"})));
    }
    if (options.name.empty()) {
        return fail(terminal, new_command,
                    fmt::format("name the {0}: `matchmark new {0} NAME`", options.sort));
    }
    if (!is_name(options.name)) {
        const std::string offered = model::name_from(options.name);
        return fail(terminal, new_command,
                    fmt::format("`{}` is no name: a letter, then letters, digits and hyphens{}",
                                options.name, offered.empty() ? "" : "; write `" + offered + "`"));
    }
    const std::string path = options.output.empty() ? options.name + ".mmk" : options.output;
    if (terminal.disk.exists(path)) {
        return fail(terminal, new_command,
                    fmt::format("`{}` is there already; nothing is written", path));
    }
    const auto text = options.sort == "device" ? device_text(options, path, terminal)
                                               : new_guide_text(options, path, terminal);
    if (!text) {
        return exit_failed;
    }
    const auto written = terminal.disk.write(path, *text);
    if (const auto* problem = std::get_if<DiskProblem>(&written)) {
        return fail(terminal, new_command,
                    fmt::format("`{}` cannot be written: {}", path, problem->reason));
    }
    terminal.out << path << '\n';
    return exit_clean;
}

} // namespace matchmark::drive
