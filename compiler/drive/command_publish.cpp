// `publish`: the pages that a reader holds, written only when nothing is wrong with the guide.
#include "drive/commands.hpp"
#include "drive/index_page.hpp"
#include "drive/inputs.hpp"
#include "drive/pictures.hpp"
#include "drive/report.hpp"
#include "plan/reader_guide.hpp"
#include "publish/html.hpp"
#include "publish/json.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* command = "publish";

struct Page {
    std::string file; // its name in the output folder
    std::string bytes;
    std::string source; // the file whose guide it is
};

struct Pages {
    std::vector<Page> pages;
    std::vector<IndexEntry> entries;
    Report report;
    bool wrong = false; // some guide has errors
    bool unreadable = false;
    bool known_variant = false;
    std::vector<std::string> variants; // of all devices met, for "did you mean"
};

// `below`: the folder of the page in the output folder, as the guide's in the folder that was
// named.
void add_html(Pages& into, Disk& disk, const std::string& below, const Compilation& done,
              const model::Procedure& procedure) {
    const model::Guide& guide = done.model.guide(procedure.guide);
    const guide::Document document = plan::reader_guide(done.sources, done.model, procedure);
    const std::string file = below + guide.name + ".html";
    into.pages.push_back({file, publish::html(document, read_pictures(disk, document)),
                          done.sources.file(done.root).path});
    into.entries.push_back({document.device, document.title, file, document.time});
}

// One file for each variant that the guide is for: the states differ between them.
void add_json(Pages& into, const std::string& wanted, const std::string& below,
              const Compilation& done, const model::Procedure& procedure) {
    const model::Guide& guide = done.model.guide(procedure.guide);
    const std::vector<std::string>& variants = done.model.device.variants;
    into.variants.insert(into.variants.end(), variants.begin(), variants.end());
    for (unsigned variant = 0; variant < model::variant_count(done.model); ++variant) {
        const std::string name = variant < variants.size() ? variants[variant] : "";
        const bool is_for = ((guide.variants >> variant) & 1U) != 0;
        if (!is_for || (!wanted.empty() && name != wanted)) {
            continue;
        }
        into.known_variant = true;
        const std::string file = below + guide.name + (name.empty() ? "" : "." + name) + ".json";
        into.pages.push_back({file, publish::json(done.sources, done.model, procedure, variant),
                              done.sources.file(done.root).path});
    }
}

void add_file(Pages& into, const Input& input, const PublishOptions& options, Disk& disk) {
    Compilation done = compile(disk, input.path, input.given());
    report_missing_pictures(disk, done);
    std::vector<Diagnostic> told = done.findings;
    std::erase_if(told, [](const Diagnostic& f) { return f.severity == Severity::advice; });
    into.report.add(reported(done.sources, std::move(told), false));
    into.unreadable = into.unreadable || done.unreadable;
    if (any_error(done.findings)) {
        into.wrong = true;
        return;
    }
    for (const model::Procedure& procedure : done.procedures) {
        if (options.form == "json") {
            add_json(into, options.variant, input.below, done, procedure);
        } else {
            add_html(into, disk, input.below, done, procedure);
        }
    }
}

// Two guides of one name would write over each other.
bool names_are_unique(const Pages& pages, Terminal& terminal) {
    std::map<std::string, std::string> sources;
    for (const Page& page : pages.pages) {
        const auto [place, is_new] = sources.emplace(page.file, page.source);
        if (!is_new) {
            fail(terminal, command,
                 fmt::format("`{}` would be written twice: for `{}` and for `{}`; give one of the "
                             "guides another name",
                             page.file, place->second, page.source));
            return false;
        }
    }
    return true;
}

int write_all(const Pages& pages, const std::string& folder, Terminal& terminal) {
    for (const Page& page : pages.pages) {
        const std::string path =
            folder == "." ? page.file : folder + (folder.ends_with('/') ? "" : "/") + page.file;
        const auto written = terminal.disk.write(path, page.bytes);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, command,
                        fmt::format("`{}` cannot be written: {}", path, problem->reason));
        }
        terminal.out << path << '\n';
    }
    return exit_clean;
}

// What can be known to be wrong before anything is read.
int check_options(const PublishOptions& options, Terminal& terminal) {
    const std::vector<std::string> forms = {"html", "json"};
    if (std::find(forms.begin(), forms.end(), options.form) == forms.end()) {
        const std::string near = did_you_mean(options.form, forms);
        return fail(terminal, command,
                    fmt::format("there is no form `{}`{}", options.form,
                                near.empty() ? "; html and json are known" : near));
    }
    if (!options.variant.empty() && options.form != "json") {
        return fail(terminal, command, "--variant goes with --to json; a page shows all variants");
    }
    if (options.folder.empty()) {
        return fail(terminal, command, "-o names a folder; it is empty");
    }
    if (terminal.disk.exists(options.folder) && !terminal.disk.is_folder(options.folder)) {
        return fail(
            terminal, command,
            fmt::format("`{}` is a file; -o names the folder for the pages", options.folder));
    }
    return exit_clean;
}

} // namespace

int publish(const PublishOptions& options, Terminal& terminal) {
    if (const int wrong = check_options(options, terminal)) {
        return wrong;
    }
    const auto files = inputs(command, options.paths, terminal);
    if (!files) {
        return exit_failed;
    }
    Pages pages;
    for (const Input& input : *files) {
        add_file(pages, input, options, terminal.disk);
    }
    pages.report.write_text(terminal.err);
    if (!names_are_unique(pages, terminal)) {
        return exit_failed;
    }
    if (pages.pages.empty() && !pages.wrong) {
        if (!options.variant.empty() && !pages.known_variant) {
            return fail(terminal, command,
                        fmt::format("no guide is for a variant `{}`{}", options.variant,
                                    did_you_mean(options.variant, pages.variants)));
        }
        return fail(terminal, command, "no guide is declared there; a device alone makes no page");
    }
    // With a guide missing, the old list, which still leads to its old page, is the better one.
    const bool folder =
        std::any_of(options.paths.begin(), options.paths.end(),
                    [&](const auto& path) { return terminal.disk.is_folder(path); });
    const bool taken = std::any_of(pages.pages.begin(), pages.pages.end(),
                                   [](const Page& page) { return page.file == "index.html"; });
    if (folder && options.form == "html" && !pages.wrong && !taken) {
        pages.pages.push_back({"index.html", index_page(pages.entries), ""});
    }
    if (const int wrong = write_all(pages, options.folder, terminal)) {
        return wrong;
    }
    return pages.unreadable ? exit_failed : pages.wrong ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
