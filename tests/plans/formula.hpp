// What is so at some moment of the work, as text in SMT-LIB.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

namespace matchmark::plans {

// Members that move together, or one member of a group that some line names apart.
struct Thing {
    model::ItemId item;
    std::vector<std::uint16_t> members; // from 1
};

// One verb from one state on one thing.
struct Deed {
    std::size_t thing = 0;
    std::size_t verb = 0;
    model::StateId from = 0;
    model::StateId to = 0;
    unsigned set = 0;
};

// Just before a deed, just after it, or when all is done.
struct Moment {
    std::size_t deed = 0;
    bool after = false;
    bool end = false;
};

class Formula {
public:
    explicit Formula(const bench::Bench& bench);

    const bench::Bench& bench;
    const model::Model& model;
    std::vector<Thing> things;
    std::vector<Deed> deeds;
    std::vector<std::vector<std::size_t>> things_of; // by item
    std::string text;                                // declarations and definitions so far

    // Each is an expression of sort Bool.
    std::string state(std::size_t thing, unsigned set, model::StateId state, Moment at);
    std::string any_in(const model::ItemRef& ref, model::StateSet states, Moment at);
    std::string all_in(const model::ItemRef& ref, model::StateSet states, Moment at);
    std::string present(model::ItemId item, Moment at);
    std::string binds(model::ItemId tie, Moment at);
    std::string on(model::ItemId source, Moment at);
    // It is on, and comes through.
    std::string live(model::ItemId source, Moment at);
    // Every connector on the way from the source to the part binds.
    std::string joined(model::ItemId source, model::ItemId part, Moment at);
    std::string safe(model::ItemId item, model::StateSet states, Moment at);
    // The chain from `part` up to `top` (not itself) is all in place.
    std::string goes_with(model::ItemId part, model::ItemId top, Moment at);
    // The innermost of the chain that is off is `piece` (unknown: the device).
    std::string place_is(model::ItemId item, model::ItemId piece, Moment at);
    // `with`: what comes out together with that part is not in the way; unknown: nothing does.
    // `alone`: asked where the item itself lies.
    std::string reach(model::ItemId item, bool at_seat, model::ItemId with, Moment at);
    std::string reachable(model::ItemId item, Moment at);

    [[nodiscard]] std::vector<model::ItemId> chain(model::ItemId item) const;
    // What the item stands on, or in, when it is at its seat; unknown: the device.
    [[nodiscard]] model::ItemId stands_on(model::ItemId item) const;

private:
    std::string in_the_way(const model::ItemRef& ref, model::ItemId item, bool at_seat, Moment at);
    std::string member_in(std::size_t thing, model::StateSet states, Moment at);
    std::string define(const std::string& expression);
    void apart(std::size_t one, std::size_t other);
    std::map<std::tuple<std::size_t, unsigned, unsigned, std::size_t, bool>, std::string> known_;
    std::set<std::pair<std::size_t, std::size_t>> apart_;
    std::size_t defined_ = 0;
};

// Does a way from the one state to the other, both of the first set, take in the verb's own way?
bool passes_over(const model::Verb& named, model::StateId from, model::StateId to);

// "(and a b)"; the constants drop out.
std::string all_of(const std::vector<std::string>& parts);
std::string any_of(const std::vector<std::string>& parts);
std::string no(const std::string& expression);

// Does a verb from outside lead from a live state to one that is not?
bool cut_outside(const model::Kind& kind);

} // namespace matchmark::plans
