// A slip of the fingers is recognised; another name is not offered in its place.
#include "diagnostics/nearest.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;

TEST_CASE("slips are recognised") {
    const std::vector<std::string> names{"lid", "lid-screws", "cell-plug", "Höhe"};
    CHECK(nearest("lid-screw", names) == "lid-screws");
    CHECK(nearest("lid-sxrews", names) == "lid-screws");
    CHECK(nearest("lid-srcews", names) == "lid-screws");
    CHECK(nearest("lidscrew", names) == "lid-screws");
    CHECK(nearest("ldi", names) == "lid");   // a swap is one slip: a third of three letters
    CHECK(nearest("Hohe", names) == "Höhe"); // one letter, though two bytes
    CHECK(nearest("lid", names) == "lid");
}

TEST_CASE("another name is not a slip") {
    const std::vector<std::string> names{"lid", "lid-screws", "x"};
    CHECK(nearest("board", names).empty());
    CHECK(nearest("box", names).empty());
    CHECK(nearest("y", names).empty());
    CHECK(nearest("", names).empty());
    CHECK(nearest("lid", {}).empty());
    CHECK(nearest(std::string(100'000, 'a'), {std::string(100'000, 'b')}).empty());
}

TEST_CASE("the nearest wins, the earliest on a tie") {
    CHECK(nearest("plate-b", {"plate-cd", "plate-c", "plate-d"}) == "plate-c");
    CHECK(nearest("plate-b", {"plate-d", "plate-c"}) == "plate-d");
}
