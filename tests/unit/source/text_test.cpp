// Places in a text are told as people count them.
#include "source/text.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;

TEST_CASE("a place counts lines and columns from 1, and characters, not bytes") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\n  Höhe 蓋 x\n");
    CHECK(sources.place(file, 0).line == 1);
    CHECK(sources.place(file, 0).column == 1);
    CHECK(sources.place(file, 5).column == 6);
    CHECK(sources.place(file, 8).line == 1); // the line end itself
    CHECK(sources.place(file, 8).column == 9);
    CHECK(sources.place(file, 9).line == 2);
    CHECK(sources.place(file, 9).column == 1);
    const auto x = static_cast<std::uint32_t>(sources.file(file).text.find('x'));
    CHECK(sources.place(file, x).line == 2);
    CHECK(sources.place(file, x).column == 10);
}

TEST_CASE("a place past the end is the end") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "ab\ncd");
    CHECK(sources.place(file, 5).line == 2);
    CHECK(sources.place(file, 5).column == 3);
    CHECK(sources.place(file, 900).line == 2);
    CHECK(sources.place(file, 900).column == 3);
    CHECK(sources.place(7, 0).line == 1); // no such file: no crash
}

TEST_CASE("after a last line end there is an empty line to point at") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "ab\n");
    CHECK(sources.place(file, 3).line == 2);
    CHECK(sources.place(file, 3).column == 1);
    CHECK(sources.line(file, 2).empty());
}

TEST_CASE("an empty file has one empty line") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "");
    CHECK(sources.place(file, 0).line == 1);
    CHECK(sources.line(file, 1).empty());
    CHECK(sources.line_start(file, 1) == 0);
    CHECK(sources.line_start(file, 2) == 0);
}

TEST_CASE("a byte order mark is not counted") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "\xEF\xBB\xBFpart\nlid");
    CHECK(sources.place(file, 3).column == 1);
    CHECK(sources.place(file, 4).column == 2);
    CHECK(sources.place(file, 8).line == 2);
    CHECK(sources.place(file, 9).column == 2);
}

TEST_CASE("a line is without its end, whichever kind of end it has") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "one\r\ntwo\nthree");
    CHECK(sources.line(file, 1) == "one");
    CHECK(sources.line(file, 2) == "two");
    CHECK(sources.line(file, 3) == "three");
    CHECK(sources.line(file, 4).empty());
    CHECK(sources.line(file, 0).empty());
    CHECK(sources.line_start(file, 2) == 5);
    CHECK(sources.line_start(file, 3) == 9);
    CHECK(sources.line_start(file, 4) == 14);
}

TEST_CASE("a slice is the bytes of a span, cut at the end of the file") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid");
    CHECK(sources.slice({file, 5, 8}) == "lid");
    CHECK(sources.slice({file, 5, 80}) == "lid");
    CHECK(sources.slice({file, 50, 80}).empty());
    CHECK(sources.slice({file, 6, 2}).empty());
    CHECK(sources.slice({}).empty());
}

TEST_CASE("files keep their ids and texts as more are added") {
    SourceMap sources;
    const FileId first = sources.add("a.mmk", "first");
    const std::string_view seen = sources.slice({first, 0, 5});
    for (int i = 0; i < 1000; ++i) {
        sources.add("b.mmk", "more", i % 2 == 0);
    }
    CHECK(seen == "first");
    CHECK(sources.size() == 1001);
    CHECK(sources.file(first).path == "a.mmk");
    CHECK_FALSE(sources.file(first).built_in);
    CHECK(sources.file(1).built_in);
}

TEST_CASE("text that is UTF-8 is readable") {
    CHECK(first_unreadable_byte("") == std::string_view::npos);
    CHECK(first_unreadable_byte("plain\r\n\ttext") == std::string_view::npos);
    CHECK(first_unreadable_byte("Höhe 蓋 \xF0\x9F\x94\xA7") == std::string_view::npos);
    CHECK(first_unreadable_byte("\xEF\xBF\xBF\xF4\x8F\xBF\xBF") == std::string_view::npos);
}

TEST_CASE("the first byte that is not UTF-8 is found") {
    CHECK(first_unreadable_byte("ab\xFF") == 2);
    CHECK(first_unreadable_byte("ab\x80") == 2);           // continues nothing
    CHECK(first_unreadable_byte("a\xC3") == 1);            // cut short
    CHECK(first_unreadable_byte("a\xE8\x93") == 1);        // cut short
    CHECK(first_unreadable_byte("\xC0\xAF") == 0);         // longer than it need be
    CHECK(first_unreadable_byte("\xE0\x80\xAF") == 0);     // longer than it need be
    CHECK(first_unreadable_byte("\xED\xA0\x80") == 0);     // half of a surrogate pair
    CHECK(first_unreadable_byte("\xF4\x90\x80\x80") == 0); // past U+10FFFF
    CHECK(first_unreadable_byte("\xE8\x93x") == 0);
    CHECK(first_unreadable_byte(std::string_view("ab\0c", 4)) == 2);
}
