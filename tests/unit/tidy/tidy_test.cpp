// The canonical layout: nothing is lost, nothing is said otherwise, and tidying twice is tidying
// once.
#include "tidy/tidy.hpp"

#include "unit/parse/written_tree.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace matchmark;
using namespace matchmark::test;

namespace {

std::string tidied(const std::string& text) {
    const Parsed parsed(text);
    INFO(text);
    CHECK(parsed.findings.empty());
    return tidy(parsed.sources, parsed.file);
}

// Every word of the tree in order: keywords, terms, comments and prose; what joins a head needs no
// keyword of its own.
std::vector<std::string> words(const Parsed& parsed) {
    std::vector<std::string> found;
    for (const syntax::Line& line : parsed.file.lines) {
        const bool number =
            line.keyword == syntax::Keyword::count || line.keyword == syntax::Keyword::quantity;
        if (line.head.known() && !number) {
            found.emplace_back(parsed.sources.slice(line.head));
            found.back().erase(std::remove(found.back().begin(), found.back().end(), ' '),
                               found.back().end());
        }
        for (std::uint32_t at = 0; at < line.term_count; ++at) {
            found.emplace_back(
                parsed.sources.slice(parsed.file.span_of(parsed.file.terms[line.first_term + at])));
        }
        for (const Span span : {line.prose, line.comment}) {
            if (span.known()) {
                found.emplace_back(parsed.sources.slice(span));
            }
        }
    }
    return found;
}

std::size_t comments(const Parsed& parsed) {
    return static_cast<std::size_t>(
        std::count_if(parsed.file.lines.begin(), parsed.file.lines.end(),
                      [](const syntax::Line& line) { return line.comment.known(); }));
}

void check_keeps(const std::string& text) {
    const Parsed before(text);
    REQUIRE(before.findings.empty());
    const std::string once = tidy(before.sources, before.file);
    const Parsed after(once);
    INFO(text);
    REQUIRE(after.findings.empty());
    CHECK(words(after) == words(before));
    CHECK(comments(after) == comments(before));
    CHECK(tidy(after.sources, after.file) == once);
}

const std::string untidy = "\n\n# a device\n"
                           "device d \"D\"\n"
                           "      revision B # why\n"
                           "  mass 312g\n"
                           "  sealed IP67 by a,b\n"
                           "face f 74x128 mm,corner 8 mm\n"
                           "part lid\n"
                           "\n"
                           "    # about the kind\n"
                           "  kind cover\n"
                           "fastener s   \"screw\"\n"
                           "  4 x screw M2 x 6,hexalobular 6\n"
                           "  torque 0.15 N.m+0.5 lbf.in in star,3 passes\n"
                           "  at f 5,5   69,5\n"
                           "  told by \"a # b\"\n"
                           "\n\n\n"
                           "# about the kind\n"
                           "kind k is part\n"
                           "  states a,b\n"
                           "  open a->b by hand\n"
                           "guide g \"G\"\n"
                           "put-back\n"
                           "  derived\n"
                           "step o\n"
                           "   undo s 1,3 with t\n"
                           "   text:   One.\n"
                           "       - two\n"
                           "           three\n"
                           "\n\n"
                           "       four\n"
                           "   photo \"a\"   \"b\"\n"
                           "       mark s 0.1,0.2 0.3,0.4\n"
                           "\n";

} // namespace

TEST_CASE("the canonical layout") {
    CHECK(tidied(untidy) == "# a device\n"
                            "device d \"D\"\n"
                            "  revision   B                              # why\n"
                            "  mass       312 g\n"
                            "  sealed     IP67 by a, b\n"
                            "face f 74 x 128 mm, corner 8 mm\n"
                            "part lid\n"
                            "\n"
                            "  # about the kind\n"
                            "  kind       cover\n"
                            "fastener s \"screw\" 4 x screw M2 x 6, hexalobular 6\n"
                            "  torque     0.15 N.m + 0.5 lbf.in in star, 3 passes\n"
                            "  at         f 5,5 69,5\n"
                            "  told by    \"a # b\"\n"
                            "\n"
                            "# about the kind\n"
                            "kind k is part\n"
                            "  states     a, b\n"
                            "  open       a -> b by hand\n"
                            "\n"
                            "guide g \"G\"\n"
                            "\n"
                            "put-back\n"
                            "  derived\n"
                            "\n"
                            "step o\n"
                            "  undo       s 1, 3 with t\n"
                            "  text: One.\n"
                            "    - two\n"
                            "        three\n"
                            "\n"
                            "    four\n"
                            "  photo \"a\" \"b\"\n"
                            "    mark     s 0.1,0.2 0.3,0.4\n");
    check_keeps(untidy);
}

TEST_CASE("what says what an item is joins its head, where it fits") {
    CHECK(tidied("fluid c\n  in r\n  1.2 l\n  kind k\n  only eu\n") ==
          "fluid c in r 1.2 l kind k\n  only       eu\n");
    CHECK(tidied("part a\n  kind k # why\n") ==
          "part a\n  kind       k                              # why\n");
    CHECK(tidied("part a # why\n  kind k\n") ==
          "part a                                      # why\n  kind       k\n");
    CHECK(tidied("part a\n  covers b\n  kind k\n") == "part a\n  covers     b\n  kind       k\n");
    CHECK(tidied("part a kind k\n  in b\n") == "part a kind k\n  in         b\n");
    const std::string name(68, 'a');
    CHECK(tidied("part " + name + "\n  kind k\n") == "part " + name + " kind k\n");
    CHECK(tidied("part " + name + "\n  kind kk\n") == "part " + name + "\n  kind       kk\n");
}

TEST_CASE("trailing comments stand in one column, or two spaces off") {
    const std::string name(31, 'a');
    CHECK(tidied("part p\n  in a# c\n  covers " + name.substr(2) + " # c\n  blocks " + name +
                 " # c\n") == "part p\n  in         a" + std::string(30, ' ') + "# c\n" +
                                  "  covers     " + name.substr(2) + "  # c\n" + "  blocks     " +
                                  name + "  # c\n");
    CHECK(tidied("part 蓋 # c\n") == "part 蓋" + std::string(38, ' ') + "# c\n");
}

TEST_CASE("prose keeps its words, its nesting and its number signs") {
    const std::string text = "caution c on lid\n"
                             "  # One\n"
                             "    code   with  spaces\n"
                             "\n"
                             "  two\n";
    CHECK(tidied(text) == text);
    CHECK(tidied("step s\n  text:\n  note: # x  y\n") == "step s\n  text:\n  note: # x  y\n");
    CHECK(tidied("step s\n\ttext: a\n\t\tb\n\t\t    c\n") ==
          "step s\n  text: a\n    b\n        c\n");
}

TEST_CASE("line ends become LF, and a byte order mark goes") {
    CHECK(tidied("\xEF\xBB\xBFpart a\r\n  in b\r\n") == "part a in b\n");
    CHECK(tidied("part a") == "part a\n");
    CHECK(tidied("\n \n").empty());
    CHECK(tidied("").empty());
}

TEST_CASE("a file with a syntax error is left alone") {
    const std::string text = "part   a\n   covers\n\n\n\n";
    const Parsed parsed(text);
    CHECK(tidy(parsed.sources, parsed.file) == text);
}

TEST_CASE("comments stay comments when what stands around them moves") {
    for (const char* text :
         {"step s\n  text: a\n # c\n    b\n", "caution c on d\n  a\n# c\n  b\n",
          "step s\n  photo \"a\" \"b\"\n # c\n    mark d 0.1,0.2\n", "part a\n  # last\n",
          "part a\n  in b\n# last", "# only", "part a\n  # one\n\n  # two\n\npart b\n"}) {
        check_keeps(text);
    }
}

TEST_CASE("the documents' examples keep their words, and are stable when tidied") {
    for (const char* path : {"docs/language.md", "grammar/README.md"}) {
        for (const std::string& example : examples_of(path)) {
            check_keeps(example);
        }
    }
}
