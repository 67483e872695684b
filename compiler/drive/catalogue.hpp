// Everything that the parts library declares, entry by entry, for the commands that browse it.
#pragma once

#include "drive/kinds/words.hpp"
#include "model/model.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drive {

// One sort of declaration.
struct Shelf {
    std::string_view word;     // as the language declares it: "fastener", "tool-kind"
    std::string_view plural;   // "fasteners"
    std::string_view json_key; // the list that holds it in JSON
    bool of_kinds = false;     // a role that kinds have
};

std::span<const Shelf> shelves();

struct Entry {
    const Shelf* shelf = nullptr;
    std::string name;
    std::string title; // the name itself where the library gives none
    std::string about; // one line beside the name in a list; the title where nothing more is known
    Page page;
    std::string json; // an object
    Span span;        // where the library declares it
};

// In the order of the shelves, then as declared.
std::vector<Entry> catalogue(const model::Model& model);

// The entry of that name; else the shelf; else those whose name or title has the word in it.
// Letters large or small are the same. `whole`: the word is a name.
struct Found {
    std::vector<const Entry*> entries;
    bool whole = false;
};
Found find(const std::vector<Entry>& entries, const std::string& word);

} // namespace matchmark::drive
