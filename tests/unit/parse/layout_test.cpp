// Lines, indentation and prose: what belongs to what, whatever the file's line ends are.
#include "unit/parse/written_tree.hpp"

#include "syntax/reader.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace matchmark;
using namespace matchmark::test;

TEST_CASE("an empty file has no lines") {
    CHECK(Parsed("").file.lines.empty());
    CHECK(Parsed("\xEF\xBB\xBF").file.lines.empty());
    CHECK(written(Parsed("\n")) == "blank\n");
}

TEST_CASE("line ends and a byte order mark make no difference") {
    const std::string plain = "part lid # a lid\n  note: One.\n    Two.\n\n  covers fan\n";
    std::string carriage = "\xEF\xBB\xBF";
    for (const char byte : plain) {
        carriage += byte == '\n' ? "\r\n" : std::string(1, byte);
    }
    const Parsed with(carriage);
    CHECK(with.findings.empty());
    CHECK(written(with) == written(Parsed(plain)));
    CHECK(written(with) == "declaration 0 part: name lid # a lid\n"
                           "detail 1 note {One.}\n"
                           "prose 2 {Two.}\n"
                           "blank\n"
                           "detail 1 covers: name fan\n");
    const Parsed cut("part lid\n  covers fan");
    CHECK(written(cut) == "declaration 0 part: name lid\ndetail 1 covers: name fan\n");
}

TEST_CASE("prose goes on over deeper lines, blank lines and comments among them") {
    const Parsed parsed("step s\n"
                        "  text: First.\n"
                        "    - one # not a comment\n"
                        "      - deeper\n"
                        "\n"
                        "  # a comment\n"
                        "    covers: no keyword here\n"
                        "  undo lid\n");
    CHECK(parsed.findings.empty());
    CHECK(written(parsed) == "declaration 0 step: name s\n"
                             "detail 1 text {First.}\n"
                             "prose 2 {- one # not a comment}\n"
                             "prose 2 {  - deeper}\n"
                             "blank\n"
                             "comment # a comment\n"
                             "prose 2 {covers: no keyword here}\n"
                             "detail 1 verb undo: name lid\n");
}

TEST_CASE("below a safety message all is prose") {
    const Parsed parsed("caution strain on ribbon\n    Mind the # ribbon.\n  part x\npart y\n");
    CHECK(written(parsed) == "declaration 0 caution: name strain, word on, name ribbon\n"
                             "prose 1 {  Mind the # ribbon.}\n"
                             "prose 1 {part x}\n"
                             "declaration 0 part: name y\n");
}

TEST_CASE("a tab reaches to the next multiple of eight") {
    const Parsed parsed(
        "part a\n        covers b\n\tblocks c\n\tnote: One.\n\t\ttwo\n\t    three\n");
    CHECK(parsed.findings.empty());
    CHECK(written(parsed) == "declaration 0 part: name a\n"
                             "detail 1 covers: name b\n"
                             "detail 1 blocks: name c\n"
                             "detail 1 note {One.}\n"
                             "prose 2 {two}\n"
                             "prose 2 {three}\n");
}

TEST_CASE("the same word is an action or a detail, by where it stands") {
    const Parsed parsed("guide g \"G\"\n"
                        "  before drain oil\n"
                        "before\n"
                        "step s\n"
                        "  before lid\n"
                        "  mark lid\n"
                        "  photo \"a\" \"b\"\n"
                        "    mark lid 0.1,0.2\n"
                        "  caution: Mind.\n"
                        "caution c on lid\n");
    CHECK(parsed.findings.empty());
    CHECK(written(parsed) == "declaration 0 guide: name g, text \"G\"\n"
                             "detail 1 before: name drain, name oil\n"
                             "declaration 0 before\n"
                             "declaration 0 step: name s\n"
                             "detail 1 verb before: name lid\n"
                             "detail 1 verb mark: name lid\n"
                             "detail 1 photo: text \"a\", text \"b\"\n"
                             "detail 2 mark: name lid, number 0.1, comma, number 0.2\n"
                             "detail 1 caution {Mind.}\n"
                             "declaration 0 caution: name c, word on, name lid\n");
    CHECK(parsed.file.lines[2].keyword == syntax::Keyword::before_section);
    CHECK(parsed.file.lines[1].keyword == syntax::Keyword::before);
    CHECK(parsed.file.lines[7].keyword == syntax::Keyword::mark_on_photo);
}

TEST_CASE("a line of a hundred megabytes is one finding, and the rest is read") {
    std::string text = "part lid\n  covers ";
    text.append(100'000'000, 'a');
    text += "\n  blocks fan\n";
    const Parsed parsed(std::move(text));
    REQUIRE(parsed.findings.size() == 1);
    CHECK(written_finding(parsed, parsed.findings[0]) ==
          "2:3-3 this line is 100,000,009 bytes long; the longest that is read is 65,536 | "
          "break it into several lines");
    CHECK(written_line(parsed, 1) == "broken 0");
    CHECK(written_line(parsed, 2) == "detail 1 blocks: name fan");
}

TEST_CASE("the longest line that is read is read whole") {
    std::string text = "part lid\n  covers a #"; // a name has its own limit
    text.append(syntax::longest_line - 12, 'a');
    CHECK(Parsed(text).findings.empty());
    CHECK(Parsed(text + "a").findings.size() == 1);
}

TEST_CASE("any bytes at all give one line for each physical line, and marks inside the text") {
    const std::string good = "step s \"S\" # c\n  undo a 1, 3 with b to 2 N.m\n  text: x\n    y\n"
                             "fastener f 4 x screw M2 x 6, pan\n  at front 5,5\n\tone use\n";
    std::uint32_t seed = 7;
    const auto next = [&seed](std::size_t below) {
        seed = seed * 1664525U + 1013904223U;
        return static_cast<std::size_t>(seed >> 8U) % below;
    };
    for (int round = 0; round < 3000; ++round) {
        std::string text = good;
        for (int change = 0; change < 3; ++change) {
            const std::size_t at = next(text.size());
            switch (next(3)) {
            case 0:
                text.erase(at, next(4) + 1);
                break;
            case 1:
                text[at] = static_cast<char>(next(256));
                break;
            default:
                text.insert(at, 1, " \t\n\"#:,.x-"[next(10)]);
                break;
            }
        }
        const Parsed parsed(text);
        const auto ends = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
        CHECK(parsed.file.lines.size() == ends + (text.empty() || text.back() == '\n' ? 0U : 1U));
        for (const Diagnostic& finding : parsed.findings) {
            CHECK(finding.primary.begin <= finding.primary.end);
            CHECK(finding.primary.end <= text.size());
            CHECK(first_unreadable_byte(finding.message) == std::string::npos);
        }
    }
}

TEST_CASE("a reader takes what is there and leaves what is not") {
    const Parsed parsed("step s\n  undo lid 2 with \"a \\\"b\\\"\n  undo lid 2 to 3 N.m\n"
                        "device d \"a \\\"b\\\" c\"\n");
    syntax::Reader reader{parsed.sources, parsed.file, parsed.file.lines[2]};
    CHECK_FALSE(reader.take_number());
    CHECK(parsed.sources.slice(reader.last()) == "undo");
    CHECK(parsed.sources.slice(*reader.take_name()) == "lid");
    CHECK_FALSE(reader.take_word("with"));
    CHECK(reader.next_is(syntax::TermKind::number));
    CHECK(reader.next_is_word("to", 1));
    CHECK(parsed.sources.slice(*reader.take_number()) == "2");
    CHECK(reader.take_word("to"));
    CHECK(reader.next_text(1) == "N.m");
    CHECK(parsed.sources.slice(*reader.take_number()) == "3");
    CHECK(parsed.sources.slice(*reader.take_unit()) == "N.m");
    CHECK(reader.at_end());
    CHECK(reader.here().empty());
    CHECK(reader.here().begin == parsed.file.lines[2].whole.end);
    CHECK(reader.peek() == nullptr);
    syntax::Reader head{parsed.sources, parsed.file, parsed.file.lines[3]};
    head.skip();
    Span where;
    CHECK(head.take_text(&where) == "a \"b\" c");
    CHECK(parsed.sources.slice(where) == "\"a \\\"b\\\" c\"");
}
