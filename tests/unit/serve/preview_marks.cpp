// Marks placed by hand become the line that an author would write, and nothing else changes.
#include "serve/preview/marks.hpp"

#include "serve/preview/content.hpp"

#include <doctest/doctest.h>

using matchmark::MapDisk;
using matchmark::serve::MarkOrder;
using matchmark::serve::Refusal;
using matchmark::serve::Written;

namespace {

const std::string guide_text = R"(use "lamp.mmk"

guide open-lamp "Open the lamp"

take-apart

step open "Open the lid"
  undo       lid-screws   # all four
  photo "img/a.svg" "The lid"
    mark     lid 0.5,0.5   # in the middle
    mark     lid-screws 1, 3 0.1,0.1 0.9,0.9
  text: Done.
  photo "img/b.svg" "The board"
)";

const std::string device_text = R"(device lamp "Bench lamp"

face top 100 x 60 mm

fastener lid-screws "lid screw" 4 x screw M3 x 8
  holds      lid to body
  at         top 5,5 95,5
  note: Keep them apart.

part lid "lid"
  note: The lid.

part body "body")";

MarkOrder on_photo(std::uint32_t line, const std::string& item, double x, double y) {
    MarkOrder order;
    order.file = "open.mmk";
    order.photo_line = line;
    order.item = item;
    order.points = {{x, y}};
    return order;
}

MarkOrder on_face(const std::string& item, unsigned most, double x, double y) {
    MarkOrder order;
    order.file = "lamp.mmk";
    order.face = "top";
    order.item = item;
    order.most = most;
    order.points = {{x, y}};
    return order;
}

// The lines of `after` that `before` lacks.
std::string added(const std::string& before, const MarkOrder& order) {
    const auto made = with_marks(before, order);
    if (const auto* refusal = std::get_if<Refusal>(&made)) {
        return refusal->reason;
    }
    const std::string& after = std::get<Written>(made).after;
    std::size_t same = 0;
    while (same < before.size() && before[same] == after[same]) {
        ++same;
    }
    const std::size_t begin = after.rfind('\n', same == 0 ? 0 : same - 1) + 1;
    const std::size_t tail = before.size() - same;
    CHECK(after.size() > before.size());
    CHECK(after.ends_with(before.substr(before.size() - tail)));
    return after.substr(begin, after.find('\n', same) - begin);
}

} // namespace

TEST_CASE("a mark of an item that has none there is a line below the others") {
    CHECK(added(guide_text, on_photo(9, "board", 0.12345, 1)) == "    mark     board 0.123,1");
    CHECK(added(guide_text, on_photo(13, "board", 0, 0.5)) == "    mark     board 0,0.5");
}

TEST_CASE("a mark of an item that has one is added to its line, before the comment") {
    CHECK(added(guide_text, on_photo(9, "lid", 0.25, 0.75)) ==
          "    mark     lid 0.5,0.5 0.25,0.75   # in the middle");
}

TEST_CASE("marks take the place of those there, if so asked") {
    MarkOrder order = on_photo(9, "lid", 0.25, 0.75);
    order.instead = true;
    const auto made = with_marks(guide_text, order);
    REQUIRE(std::holds_alternative<Written>(made));
    CHECK(std::get<Written>(made).after.find("    mark     lid 0.25,0.75   # in") !=
          std::string::npos);
}

TEST_CASE("members that are marked by number are left alone") {
    CHECK(added(guide_text, on_photo(9, "lid-screws", 0.5, 0.1)) ==
          "    mark     lid-screws 0.5,0.1");
}

TEST_CASE("a photo that is not in that line any more is refused") {
    CHECK(std::holds_alternative<Refusal>(with_marks(guide_text, on_photo(8, "lid", 0.5, 0.5))));
    CHECK(std::holds_alternative<Refusal>(with_marks(guide_text, on_photo(999, "lid", 0.5, 0.5))));
}

TEST_CASE("places on a face are in mm, to a tenth, and no more than there are members") {
    CHECK(added(device_text, on_face("lid-screws", 4, 95.04, 54.96)) ==
          "  at         top 5,5 95,5 95,55");
    CHECK(added(device_text, on_face("lid", 1, 50, 30)) == "  at         top 50,30");
    CHECK(added(device_text, on_face("lid-screws", 2, 1, 1)) ==
          "`lid-screws` would have 3 places, and there are 2 of it");
    CHECK(added(device_text, on_face("cover", 1, 1, 1)) ==
          "`cover` is not declared there any more");
    MarkOrder other = on_face("lid-screws", 4, 1, 1);
    other.face = "back";
    CHECK(added(device_text, other) == "`lid-screws` has its places on the face top");
}

TEST_CASE("a file without a last line end gets one, and CRLF stays CRLF") {
    CHECK(added(device_text, on_face("body", 1, 1, 2)) == "part body \"body\"");
    const auto made = with_marks(device_text, on_face("body", 1, 1, 2));
    CHECK(std::get<Written>(made).after == device_text + "\n  at         top 1,2");
    std::string crlf = "part lid \"lid\"\r\n\r\npart body \"body\"\r\n";
    const auto on_crlf = with_marks(crlf, on_face("lid", 1, 1, 2));
    CHECK(std::get<Written>(on_crlf).after ==
          "part lid \"lid\"\r\n  at         top 1,2\r\n\r\npart body \"body\"\r\n");
}

TEST_CASE("nothing is written into a file that changed, and nothing is taken back from one") {
    MapDisk disk;
    disk.files["open.mmk"] = guide_text;
    MarkOrder order = on_photo(9, "board", 0.5, 0.5);
    order.print = matchmark::serve::fingerprint(guide_text + " ");
    CHECK(std::holds_alternative<Refusal>(write_marks(disk, order)));
    CHECK(disk.files["open.mmk"] == guide_text);
    order.print = matchmark::serve::fingerprint(guide_text);
    const auto made = write_marks(disk, order);
    REQUIRE(std::holds_alternative<Written>(made));
    CHECK(disk.files["open.mmk"] != guide_text);
    const Written written = std::get<Written>(made);
    disk.files["open.mmk"] += "# mine\n";
    CHECK(std::holds_alternative<Refusal>(take_back(disk, written)));
    disk.files["open.mmk"] = written.after;
    CHECK_FALSE(std::holds_alternative<Refusal>(take_back(disk, written)));
    CHECK(disk.files["open.mmk"] == guide_text);
}
