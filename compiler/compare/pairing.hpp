// What in the new state is what in the old one: items, tools, steps, and each single deed.
#pragma once

#include "compare/compare.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::compare {

// Two numbered rows, of which each thing of one is at most one thing of the other.
struct Pairs {
    std::vector<std::optional<std::size_t>> after_of;  // by old number
    std::vector<std::optional<std::size_t>> before_of; // by new number

    void tie(std::size_t before, std::size_t after);
};

// Ties what has no partner yet and the same key, the first with the first. An empty key ties
// nothing.
void tie_equal(Pairs& pairs, const std::vector<std::string>& before,
               const std::vector<std::string>& after);

// One thing done on one item, or a test.
struct Deed {
    std::size_t step = 0;
    const model::Action* action = nullptr; // null: a test
    const model::Target* target = nullptr; // null: an action of no item
    bool derived = false;
    std::optional<std::size_t> origin; // the deed that it takes back
};

// One state of the guide, taken apart.
struct Half {
    const Side& side;
    std::vector<Deed> deeds;
    std::vector<const guide::Step*> told; // by step; null: for none of the guide's variants

    explicit Half(const Side& given);
    [[nodiscard]] const model::Step& step(std::size_t index) const {
        return side.procedure.steps[index];
    }
    [[nodiscard]] const model::Step& step_of(const Deed& deed) const { return step(deed.step); }
    // The sentence that the reader has of it.
    [[nodiscard]] std::string sentence(const Deed& deed) const;
    [[nodiscard]] StepPlace place(std::size_t index, bool in_old) const;
};

struct Pairing {
    Half before;
    Half after;
    Pairs items;
    Pairs resources;
    Pairs steps;
    Pairs deeds;
    std::vector<bool> moved; // by old deed: it stands in another order among those that stayed

    // A step's place in the new state if it is there still.
    [[nodiscard]] StepPlace place_of_old(std::size_t step) const;
    [[nodiscard]] std::string item_key(model::ItemId item, bool old) const;
};

Pairs pair_items(const model::Model& before, const model::Model& after);
// One name for the same item on both sides.
std::string item_key(const Pairs& items, model::ItemId item, bool old);
Pairing pair_up(const Side& before, const Side& after);

// The name that stands in the source of what the deed is about: an item's, a test's.
std::string subject_of(const Half& half, const Deed& deed);

} // namespace matchmark::compare
