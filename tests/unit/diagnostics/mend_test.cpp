// The edits of a finding are applied all together or not at all.
#include "diagnostics/mend.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;

namespace {

Diagnostic finding(Span span, std::vector<Edit> edits) {
    Diagnostic result;
    result.primary = span;
    result.edits = std::move(edits);
    return result;
}

} // namespace

TEST_CASE("replacing, inserting and deleting, in several files") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one two three");
    const FileId b = sources.add("b.mmk", "four");
    const FileId c = sources.add("c.mmk", "same");
    const Mended mended = mend(sources,
                               {finding({a, 0, 1}, {{{a, 4, 7}, "2"}, {{b, 4, 4}, " five"}}),
                                finding({a, 8, 9}, {{{a, 7, 13}, ""}}),
                                finding({c, 0, 0}, {{{c, 0, 4}, "same"}}), finding({a, 0, 1}, {})},
                               false);
    CHECK(mended.applied == 3);
    CHECK(mended.left == 1);
    REQUIRE(mended.texts.size() == 2); // a text that stays the same did not change
    CHECK(mended.texts.at(a) == "one 2");
    CHECK(mended.texts.at(b) == "four five");
}

TEST_CASE(
    "insertions at one point keep the findings' order, and go before what is replaced there") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one two");
    const Mended mended =
        mend(sources,
             {finding({a, 0, 1}, {{{a, 4, 7}, "TWO"}}), finding({a, 1, 1}, {{{a, 4, 4}, "x "}}),
              finding({a, 2, 2}, {{{a, 4, 4}, "y "}, {{a, 7, 7}, "!"}})},
             false);
    CHECK(mended.texts.at(a) == "one x y TWO!");
    CHECK(mended.applied == 3);
}

TEST_CASE("lines for the step above stand before a section that begins at the same place") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "step s\n  remove lid\nwork\n");
    const Span end{a, 20, 20};
    const Mended mended = mend(sources,
                               {finding({a, 0, 4}, {{end, "\nput-back\n  derived\n"}}),
                                finding({a, 9, 15}, {{end, "  measure lid\n"}}),
                                finding({a, 10, 15}, {{end, "  test-"}}),
                                finding({a, 11, 15}, {{end, "    mark lid\n"}})},
                               false);
    CHECK(mended.texts.at(a) == "step s\n  remove lid\n    mark lid\n  measure lid\n\n"
                                "put-back\n  derived\n  test-work\n");
}

TEST_CASE("a line is not added to the end of a step that another finding takes away") {
    SourceMap sources;
    const std::string text = "step s\n  remove lid\nstep t\n  fit lid\n";
    const FileId a = sources.add("a.mmk", text);
    const Diagnostic away = finding({a, 0, 4}, {{{a, 0, 20}, ""}});
    const Diagnostic added = finding({a, 9, 15}, {{{a, 20, 20}, "  measure lid\n"}});
    CHECK(mend(sources, {away, added}, false).texts.at(a) == "step t\n  fit lid\n");
    CHECK(mend(sources, {away, added}, false).left == 1);
    // One line of the step gone, the rest of it stays.
    const Diagnostic line = finding({a, 0, 4}, {{{a, 7, 20}, ""}});
    CHECK(mend(sources, {line, added}, false).texts.at(a) ==
          "step s\n  measure lid\nstep t\n  fit lid\n");
    // What begins anew may stand there.
    const Diagnostic anew = finding({a, 9, 15}, {{{a, 20, 20}, "step u\n  prop lid\n"}});
    CHECK(mend(sources, {away, anew}, false).texts.at(a) ==
          "step u\n  prop lid\nstep t\n  fit lid\n");
}

TEST_CASE("a finding whose edits overlap an earlier one's is left whole") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one two three");
    const Mended mended =
        mend(sources,
             {finding({a, 5, 5}, {{{a, 0, 3}, "1"}, {{a, 5, 9}, "x"}}), // later in place
              finding({a, 0, 0}, {{{a, 4, 7}, "2"}}), finding({a, 9, 9}, {{{a, 6, 6}, "inside"}})},
             false);
    CHECK(mended.texts.at(a) == "one 2 three");
    CHECK(mended.applied == 1);
    CHECK(mended.left == 2);
}

TEST_CASE("edits of one finding that overlap each other are left") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one two");
    const Mended mended =
        mend(sources, {finding({a, 0, 0}, {{{a, 0, 3}, "1"}, {{a, 2, 5}, "x"}})}, true);
    CHECK(mended.texts.empty());
    CHECK(mended.left == 1);
}

TEST_CASE("an edit that two findings ask for is made once") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one\n");
    const Mended mended = mend(
        sources,
        {finding({a, 0, 1}, {{{a, 4, 4}, "two\n"}}), finding({a, 1, 2}, {{{a, 4, 4}, "two\n"}})},
        false);
    CHECK(mended.texts.at(a) == "one\ntwo\n");
    CHECK(mended.applied == 2);
}

TEST_CASE("what is not safe waits to be asked for; the parts library is never edited") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one");
    const FileId built_in = sources.add("stdlib_parts/x.mmk", "kind", true);
    Diagnostic unsafe = finding({a, 0, 0}, {{{a, 0, 3}, "1"}});
    unsafe.safe = false;
    const Diagnostic library = finding({a, 0, 0}, {{{built_in, 0, 4}, "x"}, {{a, 3, 3}, "y"}});
    CHECK(mend(sources, {unsafe, library}, false).applied == 0);
    const Mended all = mend(sources, {unsafe, library}, true);
    CHECK(all.applied == 1);
    CHECK(all.left == 1);
    CHECK(all.texts.size() == 1);
    CHECK(all.texts.at(a) == "1");
}

TEST_CASE("edits that point past their file are left") {
    SourceMap sources;
    const FileId a = sources.add("a.mmk", "one");
    const Mended mended =
        mend(sources,
             {finding({a, 0, 0}, {{{a, 0, 30}, "1"}}), finding({a, 0, 0}, {{{a, 3, 1}, "1"}}),
              finding({a, 0, 0}, {{{9, 0, 0}, "1"}}), finding({}, {{{}, "1"}})},
             true);
    CHECK(mended.texts.empty());
    CHECK(mended.left == 4);
}
