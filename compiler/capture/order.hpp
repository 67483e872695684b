// What may have been in the way of what, from the order in which things came off: precedence alone.
//
// Over several jobs: what was still in its place when a thing was first worked on, in any job, was
// never in its way. What had gone from the way in every job may have been. Of such pairs only
// those are kept from which the others follow.
#pragma once

#include <cstddef>
#include <cstdint>
#include <set>
#include <utility>
#include <vector>

namespace matchmark::capture {

using Thing = std::uint32_t;
// (over, under): the first is to be out of the way before the second is worked on.
using Before = std::pair<Thing, Thing>;

// One act of a job.
struct Step {
    Thing thing = 0;
    bool reaches = false; // it asks that the thing can be reached
    bool clears = false;  // after it, the thing is in nobody's way
};
using Sequence = std::vector<Step>;

// Every pair that all sequences bear out. Things of no sequence are in no pair.
std::set<Before> borne_out(const std::vector<Sequence>& sequences);

// The pairs of `pairs` that a sequence does not contradict: what is `under` was worked on, and the
// other one was still in its place.
std::set<Before> not_contradicted(const std::set<Before>& pairs, const Sequence& sequence);

struct Known {
    std::set<Before> enforced; // pairs that hold without being written: a tie and the part it holds
    std::set<Thing> passes_on; // to get it out of the way, it has to be reached where it stands
};

// The least of the pairs from which, with `enforced`, all others follow by way of things that pass
// the order on. In order.
std::vector<Before> reduced(const std::set<Before>& pairs, const Known& known);

// `pairs`, with all that follows from them and from `enforced`.
std::set<Before> closed(const std::set<Before>& pairs, const Known& known);

} // namespace matchmark::capture
