// `catalog`: every sentence of a guide and its device in a gettext PO file, to be translated.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/report.hpp"
#include "drive/translation.hpp"
#include "language/loading.hpp"
#include "language/texts.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>
#include <set>

namespace matchmark::drive {

namespace {

constexpr const char* catalog_command = "catalog";

using Key = std::pair<std::string, std::string>;

std::set<Key> keys_of(const language::Catalogue& catalogue) {
    std::set<Key> keys;
    for (const language::Message& message : catalogue.messages) {
        keys.insert({message.context, message.one});
    }
    return keys;
}

// What the program can say in that language already; of a template, what it can say in all of them.
std::set<Key> known_to_program(const std::string& tag) {
    if (!tag.empty()) {
        return keys_of(language::built_in(tag));
    }
    std::set<Key> all = keys_of(language::built_in("de"));
    for (const char* other : {"fr", "es"}) {
        const std::set<Key> keys = keys_of(language::built_in(other));
        std::erase_if(all, [&](const Key& key) { return !keys.contains(key); });
    }
    return all;
}

void add_text(language::Catalogue& into, std::set<Key>& there, const SourceMap& sources,
              const language::Text& text) {
    if (there.insert({text.context, text.one}).second) {
        into.messages.push_back(language::message_of(sources, text));
    }
}

// The compiler's own sentences, as the German catalogue lists them.
void add_own_sentences(language::Catalogue& into) {
    for (language::Message message : language::built_in("de").messages) {
        if (message.context.empty()) {
            std::fill(message.forms.begin(), message.forms.end(), std::string());
            message.comments.clear();
            into.messages.push_back(std::move(message));
        }
    }
}

language::Catalogue found_in(const Compilation& done, const CatalogOptions& options) {
    language::Catalogue found;
    std::set<Key> there;
    const std::set<Key> known =
        options.whole ? std::set<Key>() : known_to_program(options.language);
    for (const model::Procedure& procedure : done.procedures) {
        for (const language::Text& text : texts_met(done, procedure)) {
            if (!known.contains({text.context, text.one})) {
                add_text(found, there, done.sources, text);
            }
        }
    }
    if (options.library) {
        for (const language::Text& text : language::library_texts(done.sources, done.model)) {
            add_text(found, there, done.sources, text);
        }
    }
    if (options.whole) {
        add_own_sentences(found);
    }
    const std::string project = done.procedures.empty()
                                    ? "parts library"
                                    : done.model.guide(done.procedures.front().guide).name;
    found.language = options.language;
    found.header = language::po_header(project, options.language);
    return found;
}

void tell(const SourceMap& sources, std::vector<Diagnostic> findings, Terminal& terminal) {
    Report report;
    report.add(reported(sources, std::move(findings), false));
    report.write_text(terminal.err);
}

int write_out(const std::string& bytes, const std::string& path, Terminal& terminal) {
    if (bytes.empty()) {
        return fail(terminal, catalog_command, "no file in memory can be made to write it through");
    }
    if (path.empty()) {
        terminal.out << bytes;
        return exit_clean;
    }
    const auto written = terminal.disk.write(path, bytes);
    if (const auto* problem = std::get_if<DiskProblem>(&written)) {
        return fail(terminal, catalog_command,
                    fmt::format("`{}` cannot be written: {}", path, problem->reason));
    }
    terminal.out << path << '\n';
    return exit_clean;
}

// The older catalogue's translations in the new one; an exit code when it cannot be read.
int take_over(language::Catalogue& found, Compilation& done, const CatalogOptions& options,
              Terminal& terminal) {
    auto read = terminal.disk.read(options.update);
    if (const auto* problem = std::get_if<DiskProblem>(&read)) {
        return fail(terminal, catalog_command,
                    fmt::format("`{}` cannot be read: {}", options.update, problem->reason));
    }
    std::vector<Diagnostic> findings;
    const FileId file = done.sources.add(options.update, std::move(std::get<std::string>(read)));
    const language::Catalogue old = language::read_po(done.sources, file, findings);
    if (any_error(findings)) {
        tell(done.sources, std::move(findings), terminal);
        return exit_findings;
    }
    found = language::merged(old, found);
    return exit_clean;
}

} // namespace

int catalog(const CatalogOptions& options, Terminal& terminal) {
    if (!options.language.empty() && language::find_traits(options.language) == nullptr) {
        return fail(terminal, catalog_command,
                    fmt::format("no rules of plurals and numbers are known for `{}`; {} are known",
                                options.language, language_tags()));
    }
    if (options.path.empty() && !options.library) {
        return fail(terminal, catalog_command, "a guide is to be named, or --library");
    }
    const std::string nothing;
    Compilation done;
    if (options.path.empty()) {
        done = compile(terminal.disk, "-", &nothing);
    } else {
        const auto files = inputs(catalog_command, {options.path}, terminal);
        if (!files) {
            return exit_failed;
        }
        if (files->size() != 1 || terminal.disk.is_folder(options.path)) {
            return fail(terminal, catalog_command,
                        fmt::format("`{}` is a folder; name one file of a guide", options.path));
        }
        done = compile(terminal.disk, files->front().path, files->front().given());
        if (any_error(done.findings)) {
            tell(done.sources, done.findings, terminal);
            return done.unreadable ? exit_failed : exit_findings;
        }
        if (done.procedures.empty()) {
            return fail(terminal, catalog_command,
                        fmt::format("`{}` declares no guide", options.path));
        }
    }
    language::Catalogue found = found_in(done, options);
    if (!options.update.empty()) {
        if (const int wrong = take_over(found, done, options, terminal)) {
            return wrong;
        }
    }
    return write_out(language::write_po(found),
                     options.output.empty() ? options.update : options.output, terminal);
}

} // namespace matchmark::drive
