// Pages: what belongs together is not parted where it fits on one page; nothing is lost.
#include "publish/paper/flow.hpp"
#include "publish/paper/print.hpp"

#include <doctest/doctest.h>

using namespace matchmark::publish;

namespace {

Box box(double height, unsigned outer = 0, unsigned inner = 0, bool with_next = false) {
    Box made;
    made.height = height;
    made.outer = outer;
    made.inner = inner;
    made.with_next = with_next;
    return made;
}

// The page of each box, in their order.
std::vector<std::size_t> pages(const std::vector<Box>& boxes, double room = 100) {
    std::vector<std::size_t> numbers;
    const auto made = pages_of(boxes, room);
    std::size_t next = 0;
    for (std::size_t page = 0; page < made.size(); ++page) {
        for (const Placed& placed : made[page]) {
            if (placed.repeated) {
                continue;
            }
            CHECK(placed.box == &boxes[next++]); // none lost, none twice
            CHECK(placed.y + placed.box->height * placed.scale <= room + 1e-9);
            numbers.push_back(page);
        }
    }
    CHECK(next == boxes.size());
    return numbers;
}

using Numbers = std::vector<std::size_t>;

} // namespace

TEST_CASE("a step that fits on one page goes to the next as a whole") {
    CHECK(pages({box(60), box(30, 1), box(20, 1)}) == Numbers{0, 1, 1});
    CHECK(pages({box(40), box(30, 1), box(20, 1)}) == Numbers{0, 0, 0});
    CHECK(pages({box(60, 1), box(40, 1), box(30, 2)}) == Numbers{0, 0, 1});
}

TEST_CASE("a step higher than a page begins where it stands and is parted between its panels") {
    CHECK(pages({box(20), box(30, 1), box(40, 1, 2), box(20, 1, 2), box(30, 1)}) ==
          Numbers{0, 0, 1, 1, 1});
}

TEST_CASE("a heading goes with what follows it") {
    CHECK(pages({box(80), box(10, 0, 0, true), box(15)}) == Numbers{0, 1, 1});
    CHECK(pages({box(60), box(10, 0, 0, true), box(20, 1), box(20, 1)}) == Numbers{0, 1, 1, 1});
    CHECK(pages({box(60), box(10, 0, 0, true), box(80, 1), box(80, 1)}) == Numbers{0, 1, 1, 2});
}

TEST_CASE("what is higher than a page is made smaller, not cut") {
    const std::vector<Box> boxes{box(10), box(400), box(10)};
    const auto made = pages_of(boxes, 100);
    REQUIRE(made.size() == 3);
    CHECK(made[1][0].scale == doctest::Approx(0.25));
    CHECK(pages(boxes) == Numbers{0, 1, 2});
}

TEST_CASE("the head of a table stands again on each page") {
    std::vector<Box> boxes{box(10, 0, 0, true), box(50), box(50), box(50)};
    for (std::size_t i = 1; i < boxes.size(); ++i) {
        boxes[i].header = 0;
    }
    const auto made = pages_of(boxes, 100);
    REQUIRE(made.size() == 3);
    CHECK(made[1][0].repeated);
    CHECK(made[1][0].box == boxes.data());
    CHECK(made[1][1].y == 10);
}

TEST_CASE("a gap is left between boxes, not at the head of a page") {
    std::vector<Box> boxes{box(50), box(50), box(50)};
    for (Box& one : boxes) {
        one.gap = 10;
    }
    const auto made = pages_of(boxes, 110);
    REQUIRE(made.size() == 2);
    CHECK(made[0][1].y == 60);
    CHECK(made[1][0].y == 0);
}

TEST_CASE("the date of creation is an argument, else the guide's date, else the first of 1970") {
    CHECK(date_of_creation("2026-01-31", "2025-05-05") == "2026-01-31T00:00:00Z");
    CHECK(date_of_creation("2026-01-31T12:30:00Z", "") == "2026-01-31T12:30:00Z");
    CHECK(date_of_creation("", "2025-05-05") == "2025-05-05T00:00:00Z");
    CHECK(date_of_creation("yesterday", "May 2025") == "1970-01-01T00:00:00Z");
    CHECK(date_of_creation("2026-13-01", "2026-02-40") == "1970-01-01T00:00:00Z");
}

TEST_CASE("addresses that may stand in a PDF") {
    CHECK(harmless_address("https://example.org/a?b=1") == "https://example.org/a?b=1");
    CHECK(harmless_address("HTTP://example.org") == "HTTP://example.org");
    CHECK(harmless_address("mailto:a@example.org") == "mailto:a@example.org");
    CHECK(harmless_address("https://x/a b'(\\)\n") == "https://x/a%20b%27%28%5C%29%0A");
    for (const char* bad : {"javascript:alert(1)", " https://x", "ftp://x", "data:text/html,x",
                            "file:///x", "#a", "https://", ""}) {
        CAPTURE(bad);
        CHECK(harmless_address(bad).empty());
    }
}
