// Lengths of time, in the one way in which all pages and reports write them.
#include "language/spoken.hpp"

#include <doctest/doctest.h>

using matchmark::language::english;
using matchmark::language::said_time;

TEST_CASE("a time is said in its two largest units") {
    CHECK(said_time(english(), 0) == "0 s");
    CHECK(said_time(english(), 59.4) == "59 s");
    CHECK(said_time(english(), 59.6) == "1 min");
    CHECK(said_time(english(), 71) == "1 min 11 s");
    CHECK(said_time(english(), 3599) == "59 min 59 s");
    CHECK(said_time(english(), 3599.7) == "1 h");
    CHECK(said_time(english(), 7500) == "2 h 5 min");
    CHECK(said_time(english(), 86400) == "24 h");
}
