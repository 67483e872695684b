// `expand`: the guide with everything derived written out, itself a valid guide.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/new_text.hpp"
#include "drive/report.hpp"
#include "parse/parse.hpp"
#include "plan/written_out.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <map>
#include <ostream>

namespace matchmark::drive {

namespace {

using syntax::Keyword;
using syntax::LineShape;

const syntax::File& root_file(const Compilation& done) { return *done.files.back(); }

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

// What the root file holds beside its guides, as written: its device may stand in the same file.
struct Surroundings {
    std::string above;                     // comments above and between the `use` lines
    std::string others;                    // declarations, with the comments above them
    std::vector<std::string> above_guides; // comments above each guide
};

Surroundings surroundings(const Compilation& done) {
    Surroundings result;
    std::string pending; // comments and blank lines belong to the declaration below them
    bool copies = false;
    const syntax::File& file = root_file(done);
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const syntax::Line& line = file.lines[i];
        std::string_view words = done.sources.line(done.root, static_cast<std::uint32_t>(i + 1));
        if (i == 0 && words.starts_with("\xEF\xBB\xBF")) {
            words.remove_prefix(3);
        }
        const std::string written = std::string(words) + "\n";
        if (line.shape == LineShape::blank ||
            (line.shape == LineShape::comment && line.depth == 0)) {
            pending += written;
            continue;
        }
        if (line.shape == LineShape::declaration) {
            copies = line.keyword != Keyword::use && !belongs_to_guide(line.keyword);
            if (line.keyword == Keyword::use) {
                result.above += pending;
            } else if (line.keyword == Keyword::guide) {
                result.above_guides.push_back(pending);
            }
        }
        if (copies) {
            result.others += pending + written;
        }
        pending.clear();
    }
    return result;
}

// The guide alone, from its head line on.
std::string guide_text(const Compilation& done, const model::Procedure& procedure) {
    const Span declaration = done.model.guide(procedure.guide).declaration;
    const std::string text = plan::written_out(done.sources, done.model, procedure, {});
    const std::string head = "\n" + std::string(done.sources.slice(declaration));
    const std::size_t at = ("\n" + text).find(head); // nothing above a guide looks like its head
    return at == std::string::npos ? text : text.substr(at);
}

// Each picture's path as its guide wrote it, and where the file is.
std::map<std::string, std::string> pictures(const Compilation& done) {
    std::map<std::string, std::string> found;
    const auto add = [&](const std::vector<model::Photo>& photos) {
        for (const model::Photo& photo : photos) {
            found.emplace(photo.path, beside(done.sources.file(photo.span.file).path, photo.path));
        }
    };
    for (const model::Procedure& procedure : done.procedures) {
        add(done.model.guide(procedure.guide).photos);
        for (const model::Step& step : procedure.steps) {
            add(step.photos);
        }
    }
    return found;
}

// The photo lines name the pictures as seen from `output`: those of a guide that was written in
// count from its folder.
std::string with_pictures_named(const Compilation& done, std::string text,
                                const std::string& output) {
    const auto known = pictures(done);
    SourceMap sources;
    sources.add("new", text);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, 0, findings);
    for (auto line = file.lines.rbegin(); line != file.lines.rend(); ++line) {
        if (line->keyword != Keyword::photo) {
            continue;
        }
        Span where;
        syntax::Reader reader{sources, file, *line};
        const auto written = reader.take_text(&where);
        const auto picture = written ? known.find(*written) : known.end();
        if (picture != known.end() && !written->starts_with('/')) {
            text.replace(where.begin, where.end - where.begin,
                         "\"" + seen_from(output, picture->second) + "\"");
        }
    }
    return text;
}

std::string expanded(const Compilation& done, const std::string& output) {
    const Surroundings around = surroundings(done);
    std::string text = around.above;
    for (const std::string& path : uses(done, output)) {
        text += fmt::format("use \"{}\"\n", path);
    }
    text += "\n" + around.others;
    for (std::size_t i = 0; i < done.procedures.size(); ++i) {
        text += i < around.above_guides.size() ? "\n" + around.above_guides[i] : "\n";
        text += guide_text(done, done.procedures[i]);
    }
    const std::string& stands_at = output.empty() ? done.sources.file(done.root).path : output;
    return tidied_text(with_pictures_named(done, std::move(text), stands_at));
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
        return fail_with_findings(done, terminal);
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
