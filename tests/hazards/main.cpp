// For every hazard of the parts library and every kind that has it: a guide that makes it safe is
// clean; without any one of the actions that do so it is refused, and the refusal names the hazard.
// Work for licensed persons is refused to others; every page defers to the maker, the rules and the
// trade. `--texts` shows the guides that do not do as they should.
#include "drive/commands.hpp"
#include "drive/compilation.hpp"
#include "hazards/scene.hpp"
#include "plan/reader/guide.hpp"
#include "source/disk.hpp"

#include <algorithm>
#include <cstdlib>
#include <fmt/core.h>
#include <sstream>

using namespace matchmark;
using namespace matchmark::hazards;

namespace {

struct Figures {
    bool shows_texts = false; // the guides that do not do as they should
    int uses = 0;
    int actions = 0;
    int refused = 0;
    int named = 0;
    int licensed = 0;
    int licensed_refused = 0;
    int pages = 0;
    std::vector<std::string> complaints;
};

drive::Compilation compile_text(const std::string& text) {
    MapDisk disk;
    return drive::compile(disk, "scene.mmk", &text);
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return text;
}

bool names(const Diagnostic& finding, const std::string& title) {
    std::string text = finding.message + "\n" + finding.label + "\n" + finding.why;
    for (const Mark& mark : finding.related)
        text += "\n" + mark.label;
    return finding.severity == Severity::error &&
           lower(text).find(lower(title)) != std::string::npos;
}

std::string findings_of(const drive::Compilation& done) {
    std::string text;
    for (const Diagnostic& finding : done.findings)
        text += fmt::format(" [{}] {};", finding.rule, finding.message);
    return text;
}

void complain(Figures& figures, const std::string& what, const std::string& text) {
    figures.complaints.push_back(figures.shows_texts ? what + "\n" + text : what);
}

// The forms that people read as text; the rest carry the same document.
constexpr std::string_view forms_read = "html,markdown,dita";

std::string single_spaced(std::string_view text) {
    std::string result;
    for (const char c : text) {
        const bool space = c == ' ' || c == '\n';
        if (!space)
            result += c;
        else if (!result.empty() && result.back() != ' ')
            result += ' ';
    }
    return result;
}

// Every page says what goes before the guide.
void check_pages(const drive::Compilation& done, const std::string& text, const std::string& kind,
                 Figures& figures) {
    MapDisk disk;
    disk.files["scene.mmk"] = text;
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    drive::PublishOptions options;
    options.paths = {"scene.mmk"};
    options.forms = forms_read;
    options.folder = "pages";
    if (drive::publish(options, terminal) != drive::exit_clean) {
        figures.complaints.push_back(fmt::format("{}: not published: {}", kind, err.str()));
        return;
    }
    const guide::Document document =
        plan::reader_guide(done.sources, done.model, done.procedures.front());
    for (const char* who : {"maker", "rules", "licensed"}) {
        if (document.deferral.find(who) == std::string::npos)
            figures.complaints.push_back(
                fmt::format("{}: the guide does not defer to: {}", kind, who));
    }
    for (const auto& [path, bytes] : disk.files) {
        if (path == "scene.mmk")
            continue;
        ++figures.pages;
        if (single_spaced(bytes).find(document.deferral) == std::string::npos)
            figures.complaints.push_back(fmt::format("{}: {} defers to nobody", kind, path));
    }
}

// Does the hazard ask for the action: is it done while the hazard is not yet made safe?
bool asks_for(const model::Kind& kind, const model::HazardUse& use, const model::Verb& verb) {
    return leads_to_safety(kind, use, verb) && (verb.from & ~use.safe) != 0;
}

// Leaves each action out that makes safe from this hazard, but those that one before it asks for: a
// supply that is not locked off is not proved dead either.
void omit_each(const model::Kind& kind, std::size_t number, const std::string& title,
               const Scene& scene, Figures& figures) {
    int actions = 0;
    int refused = 0;
    int named = 0;
    for (std::size_t i = 0; i < scene.way.size(); ++i) {
        const auto first = std::find_if(
            kind.hazards.begin(), kind.hazards.end(),
            [&](const model::HazardUse& use) { return asks_for(kind, use, *scene.way[i]); });
        if (first - kind.hazards.begin() != static_cast<std::ptrdiff_t>(number))
            continue;
        ++actions;
        const std::string text = text_of(scene, i);
        const drive::Compilation done = compile_text(text);
        const bool is_refused = any_error(done.findings);
        const bool is_named =
            std::any_of(done.findings.begin(), done.findings.end(),
                        [&](const Diagnostic& finding) { return names(finding, title); });
        refused += is_refused ? 1 : 0;
        named += is_named ? 1 : 0;
        if (!is_refused || !is_named)
            complain(figures,
                     fmt::format("{} without `{}` is {}:{}", kind.name, scene.way[i]->name,
                                 is_refused ? "refused, the hazard not named" : "not refused",
                                 findings_of(done)),
                     text);
    }
    if (actions == 0)
        complain(figures, fmt::format("{}: {} asks for no action", kind.name, title), "");
    fmt::print("{:<24} {:<34} {:>7} {:>8} {:>6}\n", title, kind.name, actions, refused, named);
    ++figures.uses;
    figures.actions += actions;
    figures.refused += refused;
    figures.named += named;
}

void try_kind(const model::Model& library, const model::Kind& kind, Figures& figures) {
    const Scene scene = scene_of(kind);
    if (!scene.made) {
        figures.complaints.push_back(
            fmt::format("{}: its verbs lead to no safe state off its place", kind.name));
        return;
    }
    const std::string text = text_of(scene);
    const drive::Compilation whole = compile_text(text);
    if (!whole.findings.empty())
        complain(figures,
                 fmt::format("{}: the safe guide is not clean:{}", kind.name, findings_of(whole)),
                 text);
    else
        check_pages(whole, text, kind.name, figures);
    for (std::size_t i = 0; i < kind.hazards.size(); ++i)
        omit_each(kind, i, library.hazards[kind.hazards[i].hazard.value].title, scene, figures);
    if (!kind.needs_license)
        return;
    ++figures.licensed;
    const drive::Compilation unlicensed = compile_text(text_for_anyone(scene));
    const bool refused =
        std::any_of(unlicensed.findings.begin(), unlicensed.findings.end(), [](const auto& found) {
            return found.rule == "unlicensed-work" && found.severity == Severity::error;
        });
    figures.licensed_refused += refused ? 1 : 0;
    if (!refused)
        complain(figures,
                 fmt::format("{}: anyone may work on it:{}", kind.name, findings_of(unlicensed)),
                 text_for_anyone(scene));
}

bool is_used(const model::Model& library, std::size_t hazard) {
    return std::any_of(library.kinds.begin(), library.kinds.end(), [&](const model::Kind& kind) {
        return std::any_of(kind.hazards.begin(), kind.hazards.end(),
                           [&](const auto& use) { return use.hazard.value == hazard; });
    });
}

} // namespace

int main(int argument_count, char** arguments) {
    const drive::Compilation library = compile_text("device none \"Nothing\"\n");
    if (any_error(library.findings)) {
        fmt::print("the parts library:{}\n", findings_of(library));
        return EXIT_FAILURE;
    }
    Figures figures;
    figures.shows_texts = argument_count > 1 && std::string_view(arguments[1]) == "--texts";
    fmt::print("{:<24} {:<34} {:>7} {:>8} {:>6}\n", "hazard", "kind", "actions", "refused",
               "named");
    for (const model::Kind& kind : library.model.kinds) {
        if (!kind.hazards.empty() || kind.needs_license)
            try_kind(library.model, kind, figures);
    }
    for (std::size_t i = 0; i < library.model.hazards.size(); ++i) {
        if (!is_used(library.model, i))
            figures.complaints.push_back(
                fmt::format("no kind has the hazard {}", library.model.hazards[i].name));
    }
    fmt::print(
        "\n{} hazards, {} uses, {} actions left out, {} refused, {} named; {} of {} licensed "
        "kinds refused to others; {} pages defer\n",
        library.model.hazards.size(), figures.uses, figures.actions, figures.refused, figures.named,
        figures.licensed_refused, figures.licensed, figures.pages);
    for (const std::string& complaint : figures.complaints)
        fmt::print("  {}\n", complaint);
    const bool well = figures.complaints.empty() && figures.uses > 0 && figures.licensed > 0;
    return well ? EXIT_SUCCESS : EXIT_FAILURE;
}
