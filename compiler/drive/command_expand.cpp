// `expand`: the guide with everything derived written out, itself a valid guide.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/new_text.hpp"
#include "drive/report.hpp"
#include "plan/written_out.hpp"
#include "syntax/reader.hpp"

#include <fmt/format.h>

#include <ostream>

namespace matchmark::drive {

namespace {

using syntax::Keyword;
using syntax::LineShape;

const syntax::File& root_file(const Compilation& done) { return done.files.back(); }

// The paths of the root's `use` lines, for a file that is to stand at `output`.
std::vector<std::string> uses(const Compilation& done, const std::string& output) {
    std::vector<std::string> paths;
    const syntax::File& file = root_file(done);
    const std::string& root = done.sources.file(done.root).path;
    for (const syntax::Line& line : file.lines) {
        if (line.keyword != Keyword::use) {
            continue;
        }
        syntax::Reader reader{done.sources, file, line};
        if (const auto written = reader.take_text()) {
            const bool moved = !output.empty() && !written->starts_with('/');
            paths.push_back(moved ? seen_from(output, beside(root, *written)) : *written);
        }
    }
    return paths;
}

bool belongs_to_guide(Keyword keyword) {
    return keyword == Keyword::guide || keyword == Keyword::before_section ||
           keyword == Keyword::take_apart || keyword == Keyword::work ||
           keyword == Keyword::put_back || keyword == Keyword::step || keyword == Keyword::test;
}

// What the root file declares beside its guides, as written: its device may stand in the same file.
std::string other_declarations(const Compilation& done) {
    std::string text;
    std::string pending; // comments and blank lines belong to the declaration below them
    bool copies = false;
    const syntax::File& file = root_file(done);
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const syntax::Line& line = file.lines[i];
        const auto number = static_cast<std::uint32_t>(i + 1);
        const std::string written = std::string(done.sources.line(done.root, number)) + "\n";
        const bool loose =
            line.shape == LineShape::blank || (line.shape == LineShape::comment && line.depth == 0);
        if (loose) {
            pending += written;
            continue;
        }
        if (line.shape == LineShape::declaration) {
            copies = line.keyword != Keyword::use && !belongs_to_guide(line.keyword);
        }
        if (copies) {
            text += pending + written;
        }
        pending.clear();
    }
    return text;
}

std::string expanded(const Compilation& done, const std::string& output) {
    std::string text;
    for (const std::string& path : uses(done, output)) {
        text += fmt::format("use \"{}\"\n", path);
    }
    text += "\n" + other_declarations(done);
    for (const model::Procedure& procedure : done.procedures) {
        text += "\n" + plan::written_out(done.sources, done.model, procedure, {});
    }
    return tidied_text(text);
}

} // namespace

int expand(const ExpandOptions& options, Terminal& terminal) {
    const auto files = inputs("expand", {options.path}, terminal);
    if (!files) {
        return exit_failed;
    }
    if (files->size() != 1 || terminal.disk.is_folder(options.path)) {
        return fail(terminal, "expand",
                    fmt::format("`{}` is a folder; name one file of a guide", options.path));
    }
    const Input& input = files->front();
    const Compilation done = compile(terminal.disk, input.path, input.given());
    if (any_error(done.findings)) {
        Report report;
        report.add(reported(done.sources, done.findings, false));
        report.write_text(terminal.err);
        return done.unreadable ? exit_failed : exit_findings;
    }
    if (done.procedures.empty()) {
        return fail(terminal, "expand", fmt::format("`{}` declares no guide", options.path));
    }
    const std::string text = expanded(done, options.output);
    if (options.output.empty()) {
        terminal.out << text;
        return exit_clean;
    }
    const auto written = terminal.disk.write(options.output, text);
    if (const auto* problem = std::get_if<DiskProblem>(&written)) {
        return fail(terminal, "expand",
                    fmt::format("`{}` cannot be written: {}", options.output, problem->reason));
    }
    terminal.out << options.output << '\n';
    return exit_clean;
}

} // namespace matchmark::drive
