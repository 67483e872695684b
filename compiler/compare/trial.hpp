// Tries on the bench whether the deeds of a guide could also be done in another order.
#pragma once

#include "compare/pairing.hpp"

namespace matchmark::compare {

struct Obstacle {
    std::string words;   // "the lid is still held by the 4 lid screws"
    bool danger = false; // it can be done, and meets a hazard unprepared
};

struct Trial {
    // The first thing against an order that does not stand against the other one.
    std::optional<Obstacle> against_old;
    std::optional<Obstacle> against_new;
    bool same_result = true;
};

// The new guide's deeds as they stand, against the same with these (by new number) put back to
// where they stood before. `opening_alone`: what the compiler derives is left out.
Trial try_orders(const Pairing& pairing, const std::vector<std::size_t>& moved, bool opening_alone);

} // namespace matchmark::compare
