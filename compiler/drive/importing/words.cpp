// Guesses are made by words alone and from the library's own: no knowledge of the trade stands
// here.
#include "drive/importing/words.hpp"

#include "drive/importing/device.hpp"
#include "drive/kinds/words.hpp"
#include "model/describe.hpp"
#include "model/role_words.hpp"
#include "model/spelling.hpp"
#include "source/each_word.hpp"
#include "source/text.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <sstream>

namespace matchmark::drive {

namespace {

template <class Visit> void each_word(std::string_view text, Visit visit) {
    matchmark::each_word(text, " \t\r\n\v\f", visit);
}

// Each word without a plural's s, so that "lid screws" has the word "screw".
std::string singular_words(const std::string& text) {
    const std::string small = model::spaced(in_small_letters(text));
    std::string result;
    each_word(small, [&](std::string_view word) {
        while (!word.empty() && std::string_view(".,;:()").find(word.back()) != std::string::npos) {
            word.remove_suffix(1);
        }
        if (word.size() > 3 && word.ends_with('s') && !word.ends_with("ss")) {
            word.remove_suffix(1);
        }
        result += word;
        result += ' ';
    });
    return result;
}

std::size_t count_words(std::string_view text) {
    std::size_t count = 0;
    each_word(text, [&](std::string_view) { ++count; });
    return count;
}

std::string first_word(const std::string& phrase) {
    const std::vector<std::string_view> words = model::words_in(phrase);
    return words.empty() ? std::string() : std::string(words.front());
}

const model::Kind* first_for_a_driver(const model::Model& library) {
    for (const model::Kind& kind : library.kinds) {
        const bool driven = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                        [](const model::Verb& verb) { return verb.by_driver; });
        if (kind.role == model::Role::fastener && driven) {
            return &kind;
        }
    }
    return nullptr;
}

constexpr std::array library_roles{model::Role::part, model::Role::fastener, model::Role::connector,
                                   model::Role::bond, model::Role::fluid,    model::Role::energy};

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
}

} // namespace

std::string in_small_letters(std::string text) {
    for (char& c : text) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return text;
}

bool is_role_word(const std::string& cell) {
    const std::string small = singular_words(cell);
    return std::any_of(library_roles.begin(), library_roles.end(), [&](model::Role role) {
        return small == std::string(model::role_word(role)) + " ";
    });
}

KindWords::KindWords(const model::Model& library) : library_(library) {
    for (const model::Kind& kind : library.kinds) {
        for (const std::string& called : {kind.title, kind.name}) {
            const std::string words = singular_words(called);
            by_first_word_[first_word(words)].push_back(phrases_.size());
            phrases_.push_back({&kind, words, count_words(words)});
        }
    }
}

const model::Kind* KindWords::named(const std::string& words) const {
    const auto found = std::find_if(phrases_.begin(), phrases_.end(),
                                    [&](const Phrase& phrase) { return phrase.words == words; });
    return found == phrases_.end() ? nullptr : found->kind;
}

const model::Kind* KindWords::in(const std::string& words) const {
    const Phrase* best = nullptr; // of those with as many words, the library's first
    for (const std::string_view word : model::words_in(words)) {
        const auto begun = by_first_word_.find(word);
        if (begun == by_first_word_.end()) {
            continue;
        }
        for (const std::size_t at : begun->second) {
            const Phrase* phrase = &phrases_[at];
            const bool more = best == nullptr || phrase->count > best->count ||
                              (phrase->count == best->count && phrase < best);
            if (more && model::has_words(words, phrase->words)) {
                best = phrase;
            }
        }
    }
    return best == nullptr ? nullptr : best->kind;
}

KindGuess KindWords::guess(const PartRow& part) const {
    const std::string cell = singular_words(part.kind);
    if (const model::Kind* kind = part.kind.empty() ? nullptr : named(cell)) {
        return {kind, true};
    }
    // What the kind's own cell says counts more than the rest of the row.
    const model::Kind* kind = in(cell);
    if (kind == nullptr) {
        kind = in(singular_words(part.kind + " " + part.title + " " + part.name));
    }
    const bool tightened = !part.torque.empty() || !part.drive.empty() || !part.holds.empty();
    if (kind == nullptr && tightened) {
        kind = first_for_a_driver(library_);
    }
    // "part" says that it is none of the others.
    if (kind != nullptr && kind->role != model::Role::part &&
        cell == std::string(model::role_word(model::Role::part)) + " ") {
        kind = nullptr;
    }
    return {kind, false};
}

std::string size_phrase(const std::string& cell) {
    std::string text = cell;
    replace_all(text, "\u00D7", "x");
    std::string spaced;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool before = !spaced.empty() && (is_digit(spaced.back()) || spaced.back() == ' ');
        const std::size_t next = text.find_first_not_of(' ', i + 1);
        const bool after = next != std::string::npos && is_digit(text[next]);
        if ((c == 'x' || c == 'X' || c == '*') && before && after) {
            spaced += " x ";
        } else if (c == ',' && i > 0 && is_digit(text[i - 1]) && i + 1 < text.size() &&
                   is_digit(text[i + 1])) {
            spaced += '.';
        } else {
            spaced += c;
        }
    }
    std::istringstream in(spaced);
    std::string phrase;
    bool after_times = false;
    for (std::string word; in >> word;) {
        if (after_times && word.size() > 2 && word.ends_with("mm") && is_digit(word[0])) {
            word.resize(word.size() - 2);
        }
        if (after_times && word == "mm") {
            continue;
        }
        after_times = after_times || word == "x";
        phrase += (phrase.empty() ? "" : " ") + word;
    }
    return phrase;
}

namespace {

bool names_drive(const std::string& cell, const model::Drive& drive) {
    return model::has_words(cell, model::spaced(drive.name)) || model::has_words(cell, drive.title);
}

// A tool that is called as a part of a drive is, a socket, is meant only where the cell begins with
// it: "hexagon socket 4" is none.
bool names_tool(const model::Model& library, const std::string& cell, const std::string& tool) {
    const std::string words = model::spaced(tool);
    const bool in_a_title =
        std::any_of(library.drives.begin(), library.drives.end(), [&](const model::Drive& drive) {
            return model::has_words(drive.title, words);
        });
    return model::has_words(cell, words) &&
           (!in_a_title || in_small_letters(cell).starts_with(words));
}

} // namespace

std::string drive_phrase(const model::Model& library, const std::string& cell) {
    std::istringstream in(cell);
    std::vector<std::string> words;
    for (std::string word; in >> word;) {
        words.push_back(in_small_letters(word));
    }
    std::vector<std::string> found;
    std::string without_size;
    const bool by_drive =
        std::any_of(library.drives.begin(), library.drives.end(),
                    [&](const model::Drive& drive) { return names_drive(cell, drive); });
    for (const model::Drive& drive : library.drives) {
        const bool named = names_drive(cell, drive) ||
                           (!by_drive && std::any_of(drive.driven_by.begin(), drive.driven_by.end(),
                                                     [&](const std::string& tool) {
                                                         return names_tool(library, cell, tool);
                                                     }));
        for (const model::DriveSize& size : drive.sizes) {
            const bool has_size =
                std::find(words.begin(), words.end(), in_small_letters(size.size)) != words.end();
            // "PH2" says which drive; a bare number does not.
            const std::string phrase = drive.name + " " + size.size;
            const bool known = std::find(found.begin(), found.end(), phrase) != found.end();
            if (has_size && !known && (named || !is_digit(size.size[0]))) {
                found.push_back(phrase);
            }
        }
        without_size = named && without_size.size() < drive.name.size() ? drive.name : without_size;
    }
    if (found.size() == 1) {
        return found.front();
    }
    const bool sized = std::any_of(cell.begin(), cell.end(), is_digit);
    return found.empty() && !sized ? without_size : "";
}

std::string torque_phrase(const std::string& cell) {
    const auto end = cell.find_last_of("0123456789");
    double value = 0;
    if (end == std::string::npos || !read_number(cell.substr(0, end + 1), value)) {
        return {};
    }
    std::string unit = cell.substr(end + 1);
    replace_all(unit, " ", "");
    replace_all(unit, "\u00B7", ".");
    if (unit == "Nm" || unit == "nm" || unit == "NM") {
        unit = "N.m";
    } else if (unit == "Ncm") {
        unit = "N.cm";
    }
    const auto quantity = model::make_quantity(value, unit);
    return quantity && quantity->measure == model::Measure::torque ? model::to_text(*quantity) : "";
}

TableNames::TableNames(const PartsTable& table) {
    for (const PartRow& part : table.parts) {
        const std::string name =
            reads_well("part " + part.name + "\n") ? part.name : part.name + "-part";
        for (const std::string& called : {part.name, model::name_from(part.title),
                                          model::name_from(model::plural(part.title))}) {
            names_.emplace(called, name);
        }
    }
    for (const PartRow& part : table.parts) { // its own name goes before another's title
        const bool good = reads_well("part " + part.name + "\n");
        names_[part.name] = good ? part.name : part.name + "-part";
    }
}

std::string TableNames::of(const PartRow& part) const { return names_.at(part.name); }

TableNames::Named TableNames::in(const std::string& cell) const {
    std::string text = cell;
    replace_all(text, " and ", ",");
    std::replace_if(
        text.begin(), text.end(), [](char c) { return c == ';' || c == '/' || c == '&'; }, ',');
    Named named;
    std::istringstream in(text);
    for (std::string word; std::getline(in, word, ',');) {
        const std::string name = model::name_from(word);
        if (name.empty()) {
            continue;
        }
        const auto found = names_.find(name);
        if (found == names_.end()) {
            named.unknown = named.unknown.empty() ? word : named.unknown;
        } else {
            named.list += (named.list.empty() ? "" : ", ") + found->second;
        }
    }
    return named;
}

} // namespace matchmark::drive
