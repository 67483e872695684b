// `kinds`: the parts library, so that nobody has to open its files to know what can be written.
#include "drive/catalogue.hpp"
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/kinds/pages.hpp"
#include "drive/library.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* kinds_command = "kinds";

void write_kinds_json(const Found& found, std::ostream& out) {
    nlohmann::ordered_json object;
    for (const Shelf& shelf : shelves())
        object[std::string(shelf.json_key)] = nlohmann::ordered_json::array();
    for (const Entry* entry : found.entries) {
        object[std::string(entry->shelf->json_key)].push_back(
            nlohmann::ordered_json::parse(entry->json));
    }
    out << object.dump(2) << '\n';
}

// A line for each, by shelf.
void write_list(const Found& found, std::ostream& out) {
    const Shelf* shelf = nullptr;
    for (const Entry* entry : found.entries) {
        if (entry->shelf != shelf) {
            shelf = entry->shelf;
            out << shelf->word << '\n';
        }
        out << fmt::format("  {:<24} {}\n", entry->name, entry->about);
    }
    out << "\nmatchmark kinds NAME shows one of these in full\n";
}

void write_pages(const Found& found, std::ostream& out) {
    const char* between = "";
    for (const Entry* entry : found.entries) {
        out << between << to_text(entry->page);
        between = "\n";
    }
}

std::vector<std::string> all_names(const std::vector<Entry>& entries) {
    std::vector<std::string> names;
    for (const Shelf& shelf : shelves())
        names.emplace_back(shelf.plural);
    for (const Entry& entry : entries)
        names.push_back(entry.name);
    return names;
}

} // namespace

int kinds(const KindsOptions& options, Terminal& terminal) {
    const auto done = compile_library(kinds_command, options.in, terminal);
    if (!done)
        return exit_failed;
    const std::vector<Entry> entries = catalogue(done->model);
    if (options.markdown) {
        if (!options.word.empty() || options.json)
            return fail(terminal, kinds_command,
                        "--markdown writes the whole library, as one page");
        terminal.out << parts_page(done->sources, done->model, entries);
        return exit_clean;
    }
    Found found;
    if (options.word.empty()) {
        for (const Entry& entry : entries)
            found.entries.push_back(&entry);
    } else {
        found = find(entries, options.word);
    }
    if (found.entries.empty()) {
        return fail(terminal, kinds_command,
                    fmt::format("nothing in the library is called `{}`, and no title has it{}",
                                options.word, did_you_mean(options.word, all_names(entries))));
    }
    if (options.json) {
        write_kinds_json(found, terminal.out);
    } else if (found.whole) {
        write_pages(found, terminal.out);
    } else {
        write_list(found, terminal.out);
    }
    return exit_clean;
}

} // namespace matchmark::drive
