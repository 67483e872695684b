// Which parts and functions the work obliges the guide to prove, and which test proves them.
#pragma once

#include "bench/proof.hpp"
#include "bench/trial_power.hpp"
#include "check/walk.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::check {

// Something that the work renewed or disturbed, and that a test has to prove.
struct Obligation {
    model::ItemId item;         // a part renewed, a tie whose kind asks for a test, or
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

// Points of a walk (events; the count: the end), `to` not among them.
struct Stretch {
    std::size_t from = 0;
    std::size_t to = 0;
};
using Chances = std::vector<Stretch>; // in order

// Where one test for all of these belongs: at the last of `chances` or, when these are fed by a
// source, at the last point where it is on and no danger lies within reach. `chances`: where all of
// them can be proved, supply or not.
std::optional<std::size_t> place_for(const Walk& walk, const std::vector<Obligation>& group,
                                     const Chances& chances);

// Could the test (an event) have been done at this point, where nothing hides what it proves?
bool could_be_done(const Walk& walk, std::size_t test, const Obligation& obligation,
                   std::size_t at);

// What has to be back for the test to prove it: of a part the plugs, too.
std::vector<model::ItemId> must_be_back(const Walk& walk, const Obligation& obligation,
                                        const model::Step& test);

std::string name_of(const Walk& walk, const Obligation& obligation);

// The parts that the guide renews: what a test proves that names nothing.
std::vector<model::ItemId> renewed_items(const Walk& walk);

// The sources that have to be back when the test (an event) is done.
std::vector<model::ItemId> sources_of_test(const Walk& walk, std::size_t test);

// Those of them that are cut off where the test stands; not one that the walk itself cut, or parted
// a connector of: the line that is missing for these is reported.
std::vector<model::ItemId> cut_sources(const Walk& walk, std::size_t test);

// Is the item one of these, or a connector on the way of one?
bool done_under(const Walk& walk, std::size_t test, model::ItemId item);

// The first danger that lies within reach while the test is done in this state, its sources on.
std::optional<bench::Exposure> open_under_power(const Walk& walk, const bench::State& state,
                                                const model::Step& test);

// Runs the device for the test, and gives the items that may stand otherwise now. Not when it is
// tried open and that is not meant: as if mended, it is done elsewhere.
std::vector<model::ItemId> run_test(const Walk& walk, bench::State& state, const model::Step& test);

// Is it told already that the test's own `when` does not hold?
bool told_not_ready(const Walk& walk, std::size_t test);

// What the test (an event) is to prove and is not back where it stands: then it proves nothing. Not
// an item of which its `when` says how it stands, nor one that the walk itself moved.
std::vector<model::ItemId> not_back_at(const Walk& walk, std::size_t test);

// "motor out, mains unplugged": how these, and the connectors on the way of a source, stand at the
// test where they are not as assembled.
std::string how_they_stand(const Walk& walk, std::size_t test,
                           const std::vector<model::ItemId>& items);

// The first point after the test at which it could be done with its sources back and no danger
// within reach; nothing when there is none.
std::optional<std::size_t> better_point(const Walk& walk, std::size_t test);
// The same, if the test said no more than this.
std::optional<std::size_t> better_point(const Walk& walk, std::size_t test,
                                        const model::Step& said);

} // namespace matchmark::check
