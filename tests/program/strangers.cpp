// A guide of somebody else's reaches no file outside its project; `tests/faults/run` tries more
// ways.
#include "program/workshop.hpp"
#include "unit/drive/bench_files.hpp"

using matchmark::test::Ran;
using matchmark::test::Workshop;

TEST_CASE("a file outside the project's folder is not read: outside-project") {
    Workshop shop;
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("mine/open.mmk",
             std::string("use \"../../lamp.mmk\"\n") + matchmark::test::good_guide);
    const Ran ran = shop.run({"check", "mine/open.mmk"});
    CHECK(ran.code == 1);
    CHECK(ran.told("outside-project"));
    CHECK(ran.told("mine/open.mmk:1:5"));
    CHECK(ran.told("--root"));
    CHECK(!shop.run({"check", "mine/open.mmk", "--root", "/"}).told("outside-project"));
}
