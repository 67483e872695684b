// Fasteners that a bench would mix up, and what it does when they change places.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// In what two fasteners of one kind, with the same said of them, differ too little to be told
// apart.
enum class Likeness : unsigned char {
    none,
    length, // of one thread
    thread, // of threads next to each other
};

// Of one form, with no thread between their diameters.
bool are_neighbours(const Model& model, const Thread& one, const Thread& other);

// By how many mm the screw reaches past the depth declared of the hole; 0 when it does not, or when
// one of the two is not known.
double passes_depth_by(const Item& screw, const Item& hole);

// Of one kind and thread, with the same said of both: each turns into the other's hole.
bool goes_into(const Item& screw, const Item& hole);

// The least difference is the project's own rule, not a published one: lengths are told apart when
// they differ by the larger of 1 mm and a tenth.
Likeness likeness(const Model& model, const Item& one, const Item& other);

} // namespace matchmark::model
