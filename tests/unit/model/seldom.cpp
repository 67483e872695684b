// A value that few of its owners have.
#include "model/seldom.hpp"

#include <doctest/doctest.h>
#include <string>
#include <utility>

using matchmark::model::Seldom;

TEST_CASE("what was never set reads as the default, and is not set by reading") {
    const Seldom<std::string> none;
    CHECK(none->empty());
    CHECK(*none == "");
    CHECK_FALSE(none);
    CHECK_FALSE(std::optional<std::string>(none).has_value());
}

TEST_CASE("a copy has a value of its own") {
    Seldom<std::string> first = std::string("M3");
    Seldom<std::string> second = first;
    second.edit() += " x 8";
    CHECK(*first == "M3");
    CHECK(*second == "M3 x 8");
    first = second;
    second = {};
    CHECK(*first == "M3 x 8");
    CHECK_FALSE(second);
    const Seldom<std::string>& same = first;
    first = same;
    CHECK(*first == "M3 x 8");
    const Seldom<std::string> moved = std::move(first);
    CHECK(*moved == "M3 x 8");
}

TEST_CASE("nothing given is nothing set") {
    CHECK_FALSE(Seldom<int>(std::optional<int>()));
    CHECK(*Seldom<int>(std::optional<int>(0)) == 0);
    CHECK(Seldom<int>(std::optional<int>(0)));
}

using matchmark::model::SeldomList;

TEST_CASE("a list that is empty reads as one, and a copy has entries of its own") {
    SeldomList<int> none;
    CHECK(none.empty());
    CHECK(none.begin() == none.end());
    none.append({});
    CHECK(none == SeldomList<int>(std::vector<int>()));
    SeldomList<int> first = {1, 2};
    SeldomList<int> second = first;
    second.push_back(3);
    second.append({4, 5});
    CHECK(first.all() == std::vector<int>{1, 2});
    CHECK(second.all() == std::vector<int>{1, 2, 3, 4, 5});
    CHECK(second != first);
    second.clear();
    CHECK(second == none);
}
