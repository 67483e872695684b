// An author's words stay where they were written: above, between or below the actions of a step.
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using test::bench;
using test::Desk;

namespace {

constexpr const char* three_places = R"(use "lamp.mmk"

guide open-lamp "Open the lamp"
  for        competent
  tool       driver-10 "hexalobular torque driver 10"

take-apart

step open "Open the lid"
  text: First words.
  note: Second words.
  undo       lid-screws with driver-10
  why: Third words.
  remove     lid
  text: Fourth words.

put-back
  derived
step open "Close the lid"
  text: Fifth words.
)";

Desk with_three_places() {
    Desk desk = bench();
    desk.disk.files["open.mmk"] = three_places;
    return desk;
}

// Whether each of the words stands somewhere after the one before it.
bool in_order(const std::string& text, const std::vector<std::string>& words) {
    std::size_t at = 0;
    for (const std::string& one : words) {
        at = text.find(one, at);
        if (at == std::string::npos) {
            MESSAGE("not in its place: ", one);
            return false;
        }
        at += one.size();
    }
    return true;
}

const std::string& written(const Desk& desk, const std::string& path) {
    const auto found = desk.disk.files.find(path);
    REQUIRE(found != desk.disk.files.end());
    return found->second;
}

} // namespace

TEST_CASE("words stand on the page, in Markdown and DITA where their author wrote them") {
    const std::vector<std::string> order = {"First words.", "Second words.", "Undo",
                                            "Third words.", "Remove",        "Fourth words.",
                                            "Fifth words.", "Fit",           "Fasten"};
    Desk desk = with_three_places();
    REQUIRE(desk.run({"publish", "open.mmk", "--to", "html,markdown,dita,how-to"}) == 0);
    for (const char* path :
         {"open-lamp.html", "open-lamp.md", "open-lamp.dita", "open-lamp.how-to.jsonld"}) {
        CAPTURE(path);
        CHECK(in_order(written(desk, path), order));
    }
}

TEST_CASE("a guide written out keeps the words at their places, and so means the same") {
    const std::vector<std::string> order = {"text: First words.",
                                            "note: Second words.",
                                            "undo ",
                                            "why: Third words.",
                                            "remove ",
                                            "text: Fourth words.",
                                            "text: Fifth words.",
                                            "fit ",
                                            "fasten "};
    Desk desk = with_three_places();
    REQUIRE(desk.run({"expand", "open.mmk"}) == 0);
    CHECK(in_order(desk.out, order));
    desk.disk.files["again.mmk"] = desk.out;
    REQUIRE(desk.run({"expand", "again.mmk"}) == 0);
    CHECK(in_order(desk.out, order));
    CHECK(desk.run({"compare", "open.mmk", "again.mmk"}) == 0);
}

TEST_CASE("words moved across an action are a change; the same order is none") {
    Desk desk = with_three_places();
    std::string moved = three_places;
    const std::string line = "  note: Second words.\n";
    moved.erase(moved.find(line), line.size());
    moved.insert(moved.find("  why: Third words."), line);
    desk.disk.files["moved.mmk"] = moved;
    CHECK(desk.run({"compare", "open.mmk", "moved.mmk"}) == 1);
    CHECK(desk.told("where the step says it"));
}
