// Threads, and what screws are made of and turn on. What follows from these numbers by formula
// stands in bolting.hpp.
#pragma once

#include "model/quantity.hpp"
#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::model {

// How deep a thread is cut, in pitches: by how much its pitch diameter and its root diameter are
// less than its nominal diameter.
struct ThreadForm {
    std::string name;
    std::string title;
    double pitch_line = 0;
    double root = 0;
    Span span;
};

struct Thread {
    std::string name;
    std::string title;
    std::optional<ThreadForm> form;
    std::optional<Quantity> diameter; // nominal
    std::optional<Quantity> pitch;
    std::optional<Quantity> root_at_least; // smallest root diameter within tolerance
    std::optional<Limit> bears_on;     // from the hole to the edge of a usual head's bearing face
    std::optional<Quantity> breaks_at; // stands instead of the formula
    Span span;
};

// A strength that thicker screws have otherwise.
struct Strength {
    std::optional<Quantity> usual;
    std::optional<Quantity> large;
    std::optional<Quantity> above; // `large` holds for diameters above this
};

// What a screw is made of: a property class of steel, a grade of stainless steel.
struct Grade {
    std::string name;
    std::string title;
    Strength tensile;
    Strength yield;
    double shear = 0;   // torsional strength as a part of the tensile strength; 0: not known
    bool usual = false; // taken when an item names none
    Span span;
};

// How a screw's thread and head turn.
struct Friction {
    std::string name;
    std::string title;
    double coefficient = 0;
    bool usual = false;
    Span span;
};

} // namespace matchmark::model
