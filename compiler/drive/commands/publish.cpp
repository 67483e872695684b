// `publish`: what a reader holds, written only when nothing is wrong with the guide.
#include "draw/drawings.hpp"
#include "drive/commands.hpp"
#include "drive/depfile.hpp"
#include "drive/forms.hpp"
#include "drive/inputs.hpp"
#include "drive/pictures.hpp"
#include "drive/progress.hpp"
#include "drive/report.hpp"
#include "drive/translation.hpp"
#include "plan/reader/guide.hpp"
#include "publish/html.hpp"
#include "publish/index_page.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdlib>
#include <map>
#include <ostream>
#include <set>

namespace matchmark::drive {

namespace {

constexpr const char* publish_command = "publish";

struct MadePage {
    std::string file; // its name in the output folder
    std::string bytes;
    std::string source; // the file whose guide it is
};

struct Pages {
    std::vector<MadePage> pages;
    std::vector<publish::IndexEntry> entries;
    Report report;
    bool wrong = false; // some guide has errors
    bool unreadable = false;
    std::vector<std::string> variants; // of all devices met, for "did you mean"
    language::Language language;       // of the pages
    std::set<std::string> depends;     // every file that was read
};

using Chosen = std::vector<const Form*>;

bool is_chosen(const Chosen& chosen, std::string_view name) {
    return std::any_of(chosen.begin(), chosen.end(),
                       [&](const Form* form) { return form->name == name; });
}

// SOURCE_DATE_EPOCH (reproducible-builds.org), seconds since 1970, as a date and time in UTC; empty
// when it is not set or is no number.
std::string date_of_sources() {
    const char* set = std::getenv("SOURCE_DATE_EPOCH");
    const std::string_view text = set == nullptr ? "" : set;
    long long seconds = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), seconds);
    constexpr long long end_of_year_9999 = 253402300799;
    if (text.empty() || read.ec != std::errc{} || read.ptr != text.data() + text.size() ||
        seconds < 0 || seconds > end_of_year_9999) {
        return {};
    }
    const std::chrono::sys_seconds time{std::chrono::seconds(seconds)};
    const auto days = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date(days);
    const std::chrono::hh_mm_ss clock(time - days);
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                       clock.hours().count(), clock.minutes().count(), clock.seconds().count());
}

// What each form makes, in their order.
std::vector<std::vector<Output>> made(const Job& job, const Chosen& chosen) {
    std::vector<std::vector<Output>> outputs;
    for (const auto* form : chosen)
        outputs.push_back(form->make(job));
    return outputs;
}

// `input.below`: the folder of the page in the output folder, as the guide's in the folder that was
// named.
void add_guide(Pages& into, Disk& disk, const Input& input, const Chosen& chosen,
               const PublishOptions& options, const Compilation& done,
               const model::Procedure& procedure, const Translation& translation) {
    const std::string name = input.below + done.model.guide(procedure.guide).name;
    guide::Document document =
        plan::reader_guide(done.sources, done.model, procedure, translation.language);
    document.source_version = options.source_version;
    draw::PageDrawings drawings;
    const bool english = language::is_english(document.language);
    if (std::any_of(chosen.begin(), chosen.end(),
                    [](const Form* form) { return form->shows_figures; })) {
        drawings = draw::page_drawings(
            done.model,
            english ? procedure
                    : as_told(procedure, done.model.guide(procedure.guide).variants, document),
            translation.language);
        document.figures = std::move(drawings.figures);
    }
    guide::Document marked;
    if (!english) {
        marked = plan::reader_guide(done.sources, done.model, procedure, translation.marked);
        marked.source_version = document.source_version;
        marked.figures = document.figures;
    }
    const guide::Assets assets = read_pictures(disk, document, done.sources.file(done.root).path);
    const std::string set_date = date_of_sources();
    const Job job{done,   procedure,       document, english ? document : marked,
                  assets, drawings.scenes, options,  set_date.empty() ? document.date : set_date};
    into.language = document.language;
    const auto first = static_cast<std::ptrdiff_t>(into.pages.size());
    for (std::vector<Output>& outputs : made(job, chosen)) {
        for (Output& output : outputs) {
            MadePage page{name + output.ending, std::move(output.bytes),
                          done.sources.file(done.root).path};
            // Two forms may show the same pictures.
            const bool is_there = std::any_of(
                into.pages.begin() + first, into.pages.end(), [&](const MadePage& other) {
                    return other.file == page.file && other.bytes == page.bytes;
                });
            if (!is_there) {
                into.pages.push_back(std::move(page));
            }
        }
    }
    into.entries.push_back({document.device, document.title, name + ".html", document.time,
                            publish::search_words(document)});
    const std::vector<std::string>& variants = done.model.device.variants;
    into.variants.insert(into.variants.end(), variants.begin(), variants.end());
}

void add_file(Pages& into, Disk& disk, const Input& input, const Chosen& chosen,
              const PublishOptions& options) {
    Compilation done = compile(disk, input.path, input.given());
    report_pictures(disk, done);
    into.depends.merge(files_read(done));
    std::vector<Diagnostic> told = done.findings;
    std::erase_if(told, [](const Diagnostic& f) { return f.severity == Severity::advice; });
    into.report.add(reported(done.sources, std::move(told), false));
    into.unreadable = into.unreadable || done.unreadable;
    if (any_error(done.findings)) {
        into.wrong = true;
        return;
    }
    for (const model::Procedure& procedure : done.procedures) {
        const Translation translation =
            translated(disk, done, procedure, options.language, options.catalogues,
                       options.paths.size() == 1 && !disk.is_folder(options.paths.front()) &&
                           done.procedures.size() == 1);
        into.report.add(reported(done.sources, translation.findings, false, options.strict));
        const bool wrong =
            any_error(translation.findings) || (options.strict && !translation.findings.empty());
        into.wrong = into.wrong || wrong;
        into.unreadable = into.unreadable || translation.unreadable;
        if (!wrong) {
            add_guide(into, disk, input, chosen, options, done, procedure, translation);
        }
    }
    into.depends.merge(files_read(done)); // the catalogues too
}

// Two guides of one name would write over each other.
bool names_are_unique(const Pages& pages, Terminal& terminal) {
    std::map<std::string, std::string> sources;
    for (const MadePage& page : pages.pages) {
        const auto [place, is_new] = sources.emplace(page.file, page.source);
        if (!is_new) {
            fail(terminal, publish_command,
                 fmt::format("`{}` would be written twice: for `{}` and for `{}`; give one of the "
                             "guides another name",
                             page.file, place->second, page.source));
            return false;
        }
    }
    return true;
}

std::string path_of(const MadePage& page, const std::string& folder) {
    return folder == "." ? page.file : folder + (folder.ends_with('/') ? "" : "/") + page.file;
}

int write_publish_depfile(const Pages& pages, const PublishOptions& options, Terminal& terminal) {
    if (options.depfile.empty()) {
        return exit_clean;
    }
    std::vector<std::string> targets;
    for (const MadePage& page : pages.pages) {
        targets.push_back(path_of(page, options.folder));
    }
    const std::string text = depfile_text(targets, pages.depends);
    if (text.empty()) {
        return fail(terminal, publish_command,
                    "a name with a line end cannot stand in a dependency file");
    }
    const auto written = terminal.disk.write(options.depfile, text);
    if (const auto* problem = std::get_if<DiskProblem>(&written)) {
        return fail(terminal, publish_command,
                    fmt::format("`{}` cannot be written: {}", options.depfile, problem->reason));
    }
    return exit_clean;
}

int write_forms(const Pages& pages, const std::string& folder, Terminal& terminal) {
    for (const MadePage& page : pages.pages) {
        const std::string path = path_of(page, folder);
        const auto written = terminal.disk.write(path, page.bytes);
        if (const auto* problem = std::get_if<DiskProblem>(&written)) {
            return fail(terminal, publish_command,
                        fmt::format("`{}` cannot be written: {}", path, problem->reason));
        }
        terminal.out << path << '\n';
    }
    return exit_clean;
}

// The forms that are named, each once, in the order of the table; nothing when one is not known.
Chosen chosen_forms(const std::string& named, Terminal& terminal) {
    std::vector<std::string> known;
    for (const Form& form : forms()) {
        known.emplace_back(form.name);
    }
    std::vector<std::string> wanted;
    for (std::size_t at = 0; at <= named.size();) {
        const std::size_t end = std::min(named.find(',', at), named.size());
        wanted.push_back(named.substr(at, end - at));
        at = end + 1;
    }
    for (const std::string& name : wanted) {
        if (std::find(known.begin(), known.end(), name) == known.end()) {
            const std::string near = did_you_mean(name, known);
            fail(terminal, publish_command,
                 fmt::format("there is no form `{}`{}", name,
                             near.empty() ? "; " + form_names() + " are known" : near));
            return {};
        }
    }
    Chosen chosen;
    for (const Form& form : forms()) {
        if (std::find(wanted.begin(), wanted.end(), form.name) != wanted.end()) {
            chosen.push_back(&form);
        }
    }
    return chosen;
}

// What can be known to be wrong before anything is read.
int check_options(const PublishOptions& options, const Chosen& chosen, Terminal& terminal) {
    if (!options.variant.empty() && !is_chosen(chosen, "json")) {
        return fail(terminal, publish_command,
                    "--variant goes with --to json; a page shows all variants");
    }
    if (language::find_traits(options.language) == nullptr) {
        return fail(terminal, publish_command,
                    fmt::format("no rules of plurals and numbers are known for `{}`; {} are known",
                                options.language, language_tags()));
    }
    if (options.paper != "a4" && options.paper != "letter") {
        return fail(
            terminal, publish_command,
            fmt::format("there is no paper `{}`{}", options.paper, "; a4 and letter are known"));
    }
    if (options.folder.empty()) {
        return fail(terminal, publish_command, "-o names a folder; it is empty");
    }
    if (terminal.disk.exists(options.folder) && !terminal.disk.is_folder(options.folder)) {
        return fail(
            terminal, publish_command,
            fmt::format("`{}` is a file; -o names the folder for the pages", options.folder));
    }
    return exit_clean;
}

// Each page gets a way to the list, and to the other guides for its device.
void link_pages(Pages& pages) {
    std::map<std::string, std::vector<const publish::IndexEntry*>> by_device;
    std::map<std::string, const publish::IndexEntry*> by_file;
    for (const publish::IndexEntry& entry : pages.entries) {
        by_device[entry.device].push_back(&entry);
        by_file[entry.file] = &entry;
    }
    for (MadePage& page : pages.pages) {
        const auto found = by_file.find(page.file);
        if (found == by_file.end()) {
            continue;
        }
        std::vector<publish::PageLink> others;
        for (const publish::IndexEntry* other : by_device[found->second->device]) {
            if (other != found->second) {
                others.push_back({other->title, publish::reference(page.file, other->file)});
            }
        }
        page.bytes =
            publish::with_links(std::move(page.bytes), publish::reference(page.file, "index.html"),
                                others, pages.language);
    }
}

// Of a folder, a page that leads to the others. With a guide missing, the old list, which still
// leads to its old page, is the better one.
void add_index(Pages& pages, const PublishOptions& options, const Chosen& chosen, Disk& disk) {
    const bool folder = std::any_of(options.paths.begin(), options.paths.end(),
                                    [&](const auto& path) { return disk.is_folder(path); });
    const bool taken = std::any_of(pages.pages.begin(), pages.pages.end(),
                                   [](const MadePage& page) { return page.file == "index.html"; });
    if (!folder || !is_chosen(chosen, "html") || taken) {
        return;
    }
    link_pages(pages);
    if (!pages.wrong) {
        pages.pages.push_back(
            {"index.html", publish::index_page(pages.entries, pages.language), ""});
    }
}

int tell_of_nothing(const Pages& pages, const PublishOptions& options, Terminal& terminal) {
    if (!pages.entries.empty()) {
        return fail(terminal, publish_command,
                    fmt::format("no guide is for a variant `{}`{}", options.variant,
                                did_you_mean(options.variant, pages.variants)));
    }
    return fail(terminal, publish_command,
                "no guide is declared there; a device alone makes no page");
}

} // namespace

int publish(const PublishOptions& options, Terminal& terminal) {
    const Chosen chosen = chosen_forms(options.forms, terminal);
    if (chosen.empty()) {
        return exit_failed;
    }
    if (const int wrong = check_options(options, chosen, terminal)) {
        return wrong;
    }
    const auto files = inputs(publish_command, options.paths, terminal);
    if (!files) {
        return exit_failed;
    }
    Pages pages;
    Progress progress(terminal, files->size());
    for (const Input& input : *files) {
        progress.at(input.path);
        add_file(pages, terminal.disk, input, chosen, options);
    }
    progress.clear();
    pages.report.write_text(terminal.err);
    if (!names_are_unique(pages, terminal)) {
        return exit_failed;
    }
    if (pages.pages.empty() && !pages.wrong) {
        return tell_of_nothing(pages, options, terminal);
    }
    add_index(pages, options, chosen, terminal.disk);
    if (const int wrong = write_forms(pages, options.folder, terminal)) {
        return wrong;
    }
    if (const int wrong = write_publish_depfile(pages, options, terminal)) {
        return wrong;
    }
    return pages.unreadable ? exit_failed : pages.wrong ? exit_findings : exit_clean;
}

} // namespace matchmark::drive
