// Writes the parts library out for people who browse it in pages instead of in a terminal.
#include "drive/kinds/pages.hpp"

#include "drive/first_draft.hpp"
#include "drive/trade_words.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <utility>

namespace matchmark::drive {

namespace {

// Text in a cell of a table: what Markdown would take for its own is left to be read.
std::string cell(std::string_view text) {
    std::string result;
    for (const char c : text) {
        if (c == '\n') {
            result += ' ';
            continue;
        }
        if (std::string_view("|*_<>[]`").find(c) != std::string_view::npos)
            result += '\\';
        result += c;
    }
    return result;
}

// "stdlib_parts/fasteners_nuts.mmk" -> "Fasteners: nuts"
std::string subject(const std::string& path) {
    std::string stem = path.substr(path.rfind('/') + 1);
    stem = stem.substr(0, stem.find('.'));
    const auto between = stem.find('_');
    std::string words = between == std::string::npos
                            ? stem
                            : stem.substr(0, between) + ": " + stem.substr(between + 1);
    std::replace(words.begin(), words.end(), '_', ' ');
    return title_of(words);
}

// The comment that a file of the library starts with; its example stands in a line of its own.
std::string head_of(const std::string& text) {
    constexpr std::string_view example = "Example: ";
    std::string prose;
    std::string shown;
    for (std::size_t at = 0; at < text.size() && text[at] == '#';) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line = text.substr(std::min(at + 2, end), end - std::min(at + 2, end));
        if (line.starts_with(example)) {
            shown = "`" + line.substr(example.size()) + "`";
        } else if (shown.empty()) {
            prose += (prose.empty() ? "" : " ") + cell(line);
        }
        at = end + 1;
    }
    return prose + (shown.empty() ? "" : "\n\n" + shown) + "\n";
}

std::string cells(const std::vector<std::string>& words) {
    std::string line = "|";
    for (const std::string& word : words)
        line += " " + word + (word.empty() ? "|" : " |");
    return line + "\n";
}

std::string code(const std::string& name) { return "`" + name + "`"; }

std::string shown(const std::optional<model::Quantity>& quantity) {
    return quantity ? model::for_reader(*quantity) : "";
}

// Threads are looked up by their numbers: a column for each.
std::string thread_table(const model::Model& model, const std::vector<const Entry*>& entries) {
    std::string table = cells({"thread", "diameter", "pitch", "stress area", "usual preload",
                               "usual torque", "breaks at", "drives"}) +
                        "| --- | --- | --- | --- | --- | --- | --- | --- |\n";
    for (const Entry* entry : entries) {
        for (const model::Thread& thread : model.threads) {
            if (thread.name != entry->name)
                continue;
            const ThreadFigures figures = thread_figures(model, thread);
            std::string drives;
            for (const Row& row : entry->page.rows)
                drives += row.name == "drives" ? cell(row.value) : "";
            table += cells({code(entry->name), shown(thread.diameter), shown(thread.pitch),
                            shown(figures.stress_area), shown(figures.usual_preload),
                            shown(figures.usual_torque), shown(figures.breaking_torque), drives});
        }
    }
    return table;
}

std::string table_of(const Shelf& shelf, const std::vector<const Entry*>& entries) {
    std::string table = cells({std::string(shelf.word), "is", "of it"}) + "| --- | --- | --- |\n";
    for (const Entry* entry : entries) {
        std::string about;
        const std::string* last = nullptr;
        for (const Row& row : entry->page.rows) {
            const bool same = last != nullptr && *last == row.name;
            about += about.empty() ? "" : same ? "; " : "<br>";
            about += same || row.name.empty() ? "" : "*" + cell(row.name) + "* ";
            about += cell(row.value);
            last = &row.name;
        }
        table += cells({code(entry->name), cell(entry->title), about});
    }
    return table;
}

} // namespace

std::string parts_page(const SourceMap& sources, const model::Model& model,
                       const std::vector<Entry>& entries) {
    std::string page = fmt::format(
        "# The parts library\n\n"
        "What the library declares, {} entries, by the files in which they stand. This page is\n"
        "written by `matchmark kinds --markdown`; do not edit it. `matchmark kinds NAME` shows "
        "one\n"
        "entry in the terminal. Torques, preloads and areas are worked out from the thread, for\n"
        "the usual grade and friction, as [computing.md](computing.md) shows. The maker's figure\n"
        "comes before any of them.\n",
        entries.size());
    std::map<std::pair<FileId, const Shelf*>, std::vector<const Entry*>> tables;
    std::map<FileId, std::string> files;
    for (const Entry& entry : entries) {
        tables[{entry.span.file, entry.shelf}].push_back(&entry);
        files[entry.span.file] = sources.file(entry.span.file).path;
    }
    for (const auto& [file, path] : files) {
        page += fmt::format("\n## {}\n\n{}", subject(path), head_of(sources.file(file).text));
        for (const Shelf& shelf : shelves()) {
            const auto found = tables.find({file, &shelf});
            if (found == tables.end())
                continue;
            page += "\n" + (shelf.word == "thread" ? thread_table(model, found->second)
                                                   : table_of(shelf, found->second));
        }
    }
    return page;
}

} // namespace matchmark::drive
