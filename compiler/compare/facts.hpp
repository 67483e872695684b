// What a device says of its items, line by line, in words that can be compared.
#pragma once

#include "compare/change.hpp"
#include "compare/pairing.hpp"

#include <functional>
#include <string>
#include <vector>

namespace matchmark::compare {

struct Fact {
    std::string about;  // "number", "torque", "what it covers"
    std::string key;    // alike on both sides when the fact is
    std::string words;  // for people
    bool told = false;  // a reader of a guide meets it
    bool grave = false; // it bears on safety
};

// One name for the same item of both devices.
using ItemKey = std::function<std::string(model::ItemId)>;

// Always the same facts in the same order; words are empty where the device says nothing.
std::vector<Fact> facts_of(const model::Model& model, model::ItemId item, const ItemKey& key);

} // namespace matchmark::compare
