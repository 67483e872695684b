// A list whose copies are one until somebody writes to one of them.
#include "model/shared_list.hpp"

#include <doctest/doctest.h>

using matchmark::model::SharedList;

TEST_CASE("a copy is the same list until one of the two is written to") {
    SharedList<int> first = std::vector<int>{1, 2};
    SharedList<int> second = first;
    CHECK(&first.front() == &second.front());
    second.edit(0) = 7;
    CHECK(first.all() == std::vector<int>{1, 2});
    CHECK(second.all() == std::vector<int>{7, 2});
    const int* alone = &second.front();
    second.edit(1) = 8;
    CHECK(alone == &second.front());
}
