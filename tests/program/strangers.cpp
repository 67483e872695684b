// A guide of somebody else's reaches no file outside its project; `tests/faults/run` tries more
// ways.
#include "program/workshop.hpp"

using matchmark::test::Ran;
using matchmark::test::Workshop;

TEST_CASE("a file outside the project's folder is not read: outside-project") {
    Workshop shop;
    shop.put("mine/open.mmk", "use \"../../lamp.mmk\"\n\nguide open \"Open it\"\n");
    const Ran ran = shop.run({"check", "mine/open.mmk"});
    CHECK(ran.code == 1);
    CHECK(ran.told("outside-project"));
    CHECK(ran.told("mine/open.mmk:1:5"));
    CHECK(ran.told("--root"));
    CHECK(!shop.run({"check", "mine/open.mmk", "--root", "/"}).told("outside-project"));
}
