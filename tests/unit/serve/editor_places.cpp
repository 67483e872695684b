// Columns as an editor counts them, and files as it names them.
#include "serve/editor/places.hpp"
#include "serve/editor/typed.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using serve::Encoding;
using serve::LineTable;
using serve::Position;

namespace {

// A letter of two bytes, one of three, and a sign of four bytes that takes two units of UTF-16.
const std::string text = "a\xC3\xA9\xE8\x93\x8B\xF0\x9F\x94\xA7z\nsecond\r\nthird\rfourth";

} // namespace

TEST_CASE("a column is counted in units of UTF-16, or in bytes") {
    const LineTable utf16(text, Encoding::utf16);
    const LineTable utf8(text, Encoding::utf8);
    CHECK(utf16.position(10) == Position{0, 5});
    CHECK(utf8.position(10) == Position{0, 10});
    CHECK(utf16.offset({0, 5}) == 10);
    CHECK(utf16.offset({0, 4}) == 6); // between the two halves of one sign: before it
    CHECK(utf8.offset({0, 7}) == 6);
}

TEST_CASE("lines end in a line feed, a carriage return, or both") {
    const LineTable table(text, Encoding::utf16);
    CHECK(table.offset({1, 0}) == 12);
    CHECK(table.offset({1, 99}) == 18); // before the line end
    CHECK(table.offset({2, 0}) == 20);
    CHECK(table.offset({3, 2}) == 28);
    CHECK(table.offset({9, 0}) == text.size());
    for (std::uint32_t line = 0; line < 4; ++line)
        CHECK(table.position(table.offset({line, 0})) == Position{line, 0});
}

TEST_CASE("a path and its URI") {
    CHECK(serve::path_of("file:///a/b%20c/%C3%A9.mmk") == "/a/b c/\xC3\xA9.mmk");
    CHECK(serve::path_of("file://host/a.mmk") == "/a.mmk");
    CHECK(serve::path_of("untitled:new") == "untitled:new");
    CHECK(serve::path_of("file:///a%2") == "/a%2");
    CHECK(serve::uri_of("/a/b c/\xC3\xA9.mmk") == "file:///a/b%20c/%C3%A9.mmk");
}

TEST_CASE("a line that is half written is cut into words") {
    const std::string line = "step x\n  undo lid-screws, ho";
    const auto typed = serve::typed_line(line, static_cast<std::uint32_t>(line.size()));
    CHECK(typed.indented);
    CHECK(typed.words == std::vector<std::string>{"undo", "lid-screws", ","});
    CHECK(typed.partial == "ho");
    CHECK(serve::without_line(line, typed) == "step x\n");
    CHECK(serve::typed_line("use \"a", 6).in_text);
    CHECK(serve::typed_line("  text: abc", 11).in_comment);
    CHECK(serve::typed_line("  undo a # b", 12).in_comment);
}
