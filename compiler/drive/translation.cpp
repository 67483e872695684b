// A guide's translation: its catalogues found, read and judged.
#include "drive/translation.hpp"

#include "draw/drawings.hpp"
#include "language/loading.hpp"
#include "language/spoken.hpp"
#include "model/describe.hpp"
#include "plan/reader/guide.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::drive {

namespace {

Diagnostic unreadable(const std::string& path, const std::string& reason) {
    Diagnostic finding;
    finding.rule = "broken-catalogue";
    finding.message = fmt::format("`{}` cannot be read: {}", path, reason);
    finding.help = "see that it is a file, and that you may read it";
    return finding;
}

Diagnostic other_language(FileId file, const std::string& found, const std::string& tag) {
    Diagnostic finding;
    finding.rule = "broken-catalogue";
    finding.primary = {file, 0, 0};
    finding.message = fmt::format("the catalogue is for `{}`, not for `{}`", found, tag);
    finding.label = "its header says so";
    finding.help =
        fmt::format("name the catalogue for `{}`, or correct `Language` in its header", tag);
    return finding;
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// Does the text say this item's words, in the singular or the plural?
bool names(const std::string& text, const std::string& key) {
    std::string words = language::with_article(key, false);
    const std::size_t count = words.find("{count} ");
    words.erase(count == std::string::npos ? 0 : count, count == std::string::npos ? 0 : 8);
    std::transform(words.begin(), words.end(), words.begin(), lower);
    return text.find(words) != std::string::npos;
}

} // namespace

model::Procedure as_told(const model::Procedure& procedure, model::VariantMask covered,
                         const guide::Document& document) {
    model::Procedure told = procedure;
    std::vector<std::string> titles;
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps) {
            titles.push_back(step.title);
        }
    }
    std::size_t next = 0;
    for (model::Step& step : told.steps) {
        if ((step.variants & covered) != 0 && next < titles.size()) {
            step.title = titles[next++];
        }
    }
    return told;
}

// What is made of the guide asks for it: so nothing is translated in vain, and nothing left out. A
// drawing asks for the whole device before it leaves out what is not near: of that, what its words
// name counts.
std::vector<language::Text> texts_met(const Compilation& done, const model::Procedure& procedure) {
    const model::VariantMask covered = done.model.guide(procedure.guide).variants;
    language::Language page;
    page.tag = "qaa";
    page.asked = std::make_shared<language::Asked>();
    const auto document = plan::reader_guide(done.sources, done.model, procedure, page);
    draw::fastener_map(done.model, procedure, draw::Paper::a4, page);
    language::Language drawn;
    drawn.tag = "qaa";
    drawn.asked = std::make_shared<language::Asked>();
    draw::page_drawings(done.model, as_told(procedure, covered, document), drawn);
    std::string named;
    for (const guide::Figure& figure : draw::page_drawings(done.model, procedure).figures) {
        named += figure.title + figure.alternative_text;
    }
    std::transform(named.begin(), named.end(), named.begin(), lower);
    auto texts = language::texts_of(done.sources, done.model, procedure);
    std::erase_if(texts, [&](const language::Text& text) {
        const std::pair<std::string, std::string> key{language::sort_of(text.context), text.one};
        if (page.asked->contains(key)) {
            return false;
        }
        // Steps are called there as on the page.
        return key.first == "step" || !drawn.asked->contains(key) ||
               (!names(named, text.one) && (text.many.empty() || !names(named, text.many)));
    });
    return texts;
}

std::string catalogue_beside(const std::string& guide, const std::string& tag) {
    const std::size_t end = guide.ends_with(".mmk") ? guide.size() - 4 : guide.size();
    return guide.substr(0, end) + "." + tag + ".po";
}

std::string language_tags() {
    std::vector<std::string> tags;
    for (const language::Traits& traits : language::known_languages()) {
        if (traits.tag != "qaa") {
            tags.emplace_back(traits.tag);
        }
    }
    return model::list(tags);
}

Translation translated(Disk& disk, Compilation& done, const model::Procedure& procedure,
                       const std::string& tag, const std::vector<std::string>& named, bool alone) {
    Translation result;
    if (tag == "en") {
        return result;
    }
    std::vector<std::string> paths = named;
    if (const std::string beside = catalogue_beside(done.sources.file(done.root).path, tag);
        paths.empty() && disk.exists(beside)) {
        paths.push_back(beside);
        alone = done.procedures.size() == 1;
    }
    std::vector<language::OwnCatalogue> own;
    for (const std::string& path : paths) {
        if (named.empty() && !disk.lets_in(path, done.sources.file(done.root).path)) {
            result.findings.push_back(unreadable(
                path, "it is a link that leads out of the project's folder; name the file itself "
                      "with `--catalog`, or widen the project with `--root FOLDER`"));
            continue;
        }
        auto read = disk.read(path);
        if (const auto* problem = std::get_if<DiskProblem>(&read)) {
            result.findings.push_back(unreadable(path, problem->reason));
            result.unreadable = true;
            continue;
        }
        const FileId file = done.sources.add(path, std::move(std::get<std::string>(read)));
        own.push_back({file, language::read_po(done.sources, file, result.findings)});
        const std::string& found = own.back().catalogue.language;
        if (!found.empty() && found != tag) {
            result.findings.push_back(other_language(file, found, tag));
        }
    }
    if (any_error(result.findings)) {
        return result;
    }
    const auto texts = texts_met(done, procedure);
    auto judged = language::judged(texts, language::built_in(tag), own, alone);
    result.findings.insert(result.findings.end(), judged.begin(), judged.end());
    std::vector<const language::Catalogue*> catalogues;
    for (const language::OwnCatalogue& one : own) {
        catalogues.push_back(&one.catalogue);
    }
    result.language = language::language_of(tag, catalogues);
    result.marked = result.language;
    result.marked.marks_english = true;
    return result;
}

} // namespace matchmark::drive
