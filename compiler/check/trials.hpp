// Which parts and functions the work obliges the guide to prove, and which test proves them.
#pragma once

#include "bench/proof.hpp"
#include "check/walk.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::check {

// Something that the work renewed or disturbed, and that a test has to prove.
struct Obligation {
    model::ItemId item;         // a part renewed, or
    model::FunctionId function; // a function on whose path something was parted or renewed
    std::size_t cause = 0;      // the event that made it so
    std::vector<model::ItemId> must_be_back;
    std::vector<model::ItemId> may_be_hidden; // those of them that are when the device is whole
};

struct Proven {
    Obligation obligation;
    std::optional<std::size_t> by;    // event of the last test that proves it, in time
    std::optional<std::size_t> early; // event of a test that says so but comes too early
};

std::vector<Proven> proofs(const Walk& walk);

// The points (events; the count: the end) where a test could prove it, in order: all is back, and
// nothing hides it if that can be had.
std::vector<std::size_t> chances_for(const Walk& walk, const Obligation& obligation);

// The event that hid what the test proves although the test could have been done before it; nothing
// when it is in time.
std::optional<std::size_t> hidden_since(const Walk& walk, std::size_t test,
                                        const Obligation& obligation);

std::string name_of(const Walk& walk, const Obligation& obligation);

} // namespace matchmark::check
