// What follows from an order of work, and what several orders leave of it.
#include "capture/order.hpp"

#include <doctest/doctest.h>

using matchmark::capture::Before;
using matchmark::capture::Known;
using matchmark::capture::Sequence;

namespace {

// Each thing reached and out of the way in one act.
Sequence in_order(std::initializer_list<matchmark::capture::Thing> things) {
    Sequence sequence;
    for (const auto thing : things)
        sequence.push_back({thing, true, true});
    return sequence;
}

} // namespace

TEST_CASE("all that came off before a thing may have been in its way") {
    CHECK(matchmark::capture::borne_out({in_order({1, 2, 3})}) ==
          std::set<Before>{{1, 2}, {1, 3}, {2, 3}});
}

TEST_CASE("what once came out without a thing was not under it") {
    const auto pairs = matchmark::capture::borne_out({in_order({1, 2, 3}), in_order({1, 3})});
    CHECK(pairs == std::set<Before>{{1, 2}, {1, 3}});
    CHECK(matchmark::capture::not_contradicted({{2, 3}}, in_order({1, 3})).empty());
    CHECK(matchmark::capture::not_contradicted({{2, 3}}, in_order({1, 2})).size() == 1);
}

TEST_CASE("what needs no reach is under nothing, what still covers is over nothing") {
    CHECK(matchmark::capture::borne_out({{{1, true, true}, {2, false, true}}}).empty());
    CHECK(matchmark::capture::borne_out({{{1, true, false}, {2, true, true}}}).empty());
}

TEST_CASE("pairs that follow from others are left out, and come back when those go") {
    const std::set<Before> all{{1, 2}, {1, 3}, {2, 3}};
    Known known;
    known.passes_on = {1, 2, 3};
    const auto kept = matchmark::capture::reduced(all, known);
    CHECK(kept == std::vector<Before>{{1, 2}, {2, 3}});
    CHECK(matchmark::capture::closed({kept.begin(), kept.end()}, known) == all);
    const auto after = matchmark::capture::not_contradicted(all, in_order({1, 3}));
    CHECK(matchmark::capture::reduced(after, known) == std::vector<Before>{{1, 2}, {1, 3}});
}

TEST_CASE("a tie and the part that it holds need no line, and pass an order on") {
    Known known;
    known.passes_on = {1, 2, 3};
    known.enforced = {{2, 3}};
    CHECK(matchmark::capture::reduced({{1, 2}, {1, 3}, {2, 3}}, known) ==
          std::vector<Before>{{1, 2}});
}

TEST_CASE("what may go along with its carrier passes no order on") {
    Known known;
    known.passes_on = {1, 3};
    CHECK(matchmark::capture::reduced({{1, 2}, {1, 3}, {2, 3}}, known).size() == 3);
}
