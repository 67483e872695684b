// A message reads as the documents promise, whatever the source holds.
#include "diagnostics/render.hpp"
#include "support/places.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;
using test::span_of;

namespace {

// Line `number` (from 1) of a text.
std::string line_of(const std::string& text, std::size_t number) {
    std::size_t begin = 0;
    for (std::size_t i = 1; i < number && begin != std::string::npos; ++i) {
        begin = text.find('\n', begin) + 1;
    }
    return text.substr(begin, text.find('\n', begin) - begin);
}

Diagnostic finding_at(Span span, const std::string& label = "") {
    Diagnostic finding;
    finding.rule = "some-rule";
    finding.message = "something is so";
    finding.primary = span;
    finding.label = label;
    return finding;
}

} // namespace

TEST_CASE("a whole message: marks, why, help, the source to add, where to read more") {
    SourceMap sources;
    std::string text(41, '\n');
    text += "  undo lid-screws with driver-6  \n";
    text += std::string(15, '\n');
    text += "test power-on \"It starts\"\n";
    const FileId file = sources.add("hinge.mmk", text);
    const Span test_word = span_of(sources, file, "test");
    Diagnostic finding;
    finding.rule = "not-put-back";
    finding.message = "`lid-screws` come off and are never put back";
    finding.primary = span_of(sources, file, "lid-screws");
    finding.label = "come off here";
    finding.related.push_back({test_word, "still off here"});
    finding.why = "the lid is held by 4 screws; the reader would finish with 3";
    finding.help = "add before line 58";
    finding.edits.push_back({{file, test_word.begin, test_word.begin},
                             "  fasten lid-screws with driver-6 to 0.20 N.m\n"});
    const std::string gap(29, ' ');
    CHECK(render_text(sources, finding) == "error: `lid-screws` come off and are never put back" +
                                               gap + "[not-put-back]\n" +
                                               R"(   --> hinge.mmk:42:8
    |
 42 |   undo lid-screws with driver-6
    |        ^^^^^^^^^^ come off here
    |
 58 | test power-on "It starts"
    | ---- still off here
    |
  why: the lid is held by 4 screws; the reader would finish with 3
 help: add before line 58
    |
    + |   fasten lid-screws with driver-6 to 0.20 N.m
    |
 more: matchmark explain not-put-back
)");
    const std::string without = render_text(sources, finding, false);
    CHECK(without.find("more:") == std::string::npos);
}

TEST_CASE("the words for severity, and the variants in which it is so") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\n");
    Diagnostic finding = finding_at(span_of(sources, file, "lid"));
    finding.severity = Severity::advice;
    finding.variants = {"eu", "uk"};
    const std::string text = render_text(sources, finding);
    CHECK(text.starts_with("advice: something is so "));
    CHECK(text.find("\n   in: variants eu, uk\n") != std::string::npos);
    finding.severity = Severity::warning;
    CHECK(render_text(sources, finding).starts_with("warning: "));
}

TEST_CASE("a long message keeps its rule's name two spaces off") {
    const SourceMap sources;
    Diagnostic finding = finding_at({});
    finding.message = std::string(100, 'm');
    CHECK(render_text(sources, finding, false) == "error: " + finding.message + "  [some-rule]\n");
}

TEST_CASE("marks stand in order of line, and the place named is the primary's") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "device d\npart lid\npart box\n");
    Diagnostic finding = finding_at(span_of(sources, file, "box"), "this");
    finding.related.push_back({span_of(sources, file, "d", 3), "in this"});
    finding.related.push_back({span_of(sources, file, "part box"), "all of it"});
    const std::string text = render_text(sources, finding, false);
    CHECK(text.substr(text.find('\n') + 1) == R"(   --> a.mmk:3:6
    |
  1 | device d
    |        - in this
    |
  3 | part box
    |      ^^^ this
    | -------- all of it
    |
)");
}

TEST_CASE("a mark in another file is shown under that file's name") {
    SourceMap sources;
    const FileId here = sources.add("a.mmk", "use \"b.mmk\"\npart lid\n");
    const FileId there = sources.add("b.mmk", "\n\npart lid\n");
    Diagnostic finding = finding_at(span_of(sources, here, "lid"), "declared again");
    finding.related.push_back({span_of(sources, there, "lid"), "first declared here"});
    const std::string text = render_text(sources, finding, false);
    CHECK(text.substr(text.find('\n') + 1) == R"(   --> a.mmk:2:6
    |
  2 | part lid
    |      ^^^ declared again
   --> b.mmk:3:6
    |
  3 | part lid
    |      --- first declared here
    |
)");
}

TEST_CASE("carets stand under the text behind tabs, wide and combining characters") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "\tab\tlid\n蓋板 lid\ne\xCC\x81 lid\nlid 蓋板 x\n");
    const auto shown = [&](Span span) { return render_text(sources, finding_at(span), false); };
    const std::string tabs = shown(span_of(sources, file, "lid"));
    CHECK(line_of(tabs, 4) == "  1 |     ab  lid");
    CHECK(line_of(tabs, 5) == "    |         ^^^");
    CHECK(line_of(shown(span_of(sources, file, "lid", 10)), 5) == "    |      ^^^");
    CHECK(line_of(shown(span_of(sources, file, "lid", 20)), 5) == "    |   ^^^");
    CHECK(line_of(shown(span_of(sources, file, "蓋板", 12)), 5) == "    |     ^^^^");
}

TEST_CASE("an empty mark is one caret, at the end of the line too") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\npart");
    CHECK(line_of(render_text(sources, finding_at({file, 8, 8})), 5) == "    |         ^");
    CHECK(line_of(render_text(sources, finding_at({file, 8, 9})), 5) == "    |         ^");
    CHECK(line_of(render_text(sources, finding_at({file, 13, 13})), 5) == "    |     ^");
}

TEST_CASE("of a mark over several lines the first is underlined to its end") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\n  in box\n");
    const std::string text = render_text(sources, finding_at({file, 5, 14}, "here"), false);
    CHECK(line_of(text, 5) == "    |      ^^^ here");
}

TEST_CASE("a mark that points past its file is put right") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part 蓋\n");
    CHECK(render_text(sources, finding_at({file, 900, 950})).find("--> a.mmk:2:1") !=
          std::string::npos);
    CHECK(line_of(render_text(sources, finding_at({file, 5, 2})), 5) == "    |      ^");
    CHECK(line_of(render_text(sources, finding_at({file, 6, 7})), 5) == "    |      ^^");
    Diagnostic nowhere = finding_at({42, 0, 1});
    nowhere.related.push_back({{43, 1, 2}, "x"});
    nowhere.edits.push_back({{44, 1, 2}, "x"});
    nowhere.edits.push_back({{file, 1, 200}, "x"});
    CHECK(line_of(render_text(sources, nowhere), 2) == " more: matchmark explain some-rule");
    CHECK_FALSE(render_text(SourceMap{}, finding_at({0, 0, 0})).empty());
}

TEST_CASE("a long line is cut round the mark") {
    SourceMap sources;
    const std::string before(300, 'a');
    const std::string after(300, 'b');
    const FileId file = sources.add("a.mmk", before + "LID" + after + "\nLID" + after + "\n");
    const std::string middle = render_text(sources, finding_at(span_of(sources, file, "LID")));
    CHECK(line_of(middle, 4) ==
          "  1 | ..." + std::string(20, 'a') + "LID" + std::string(77, 'b') + "...");
    CHECK(line_of(middle, 5) == "    | " + std::string(23, ' ') + "^^^");
    const Span second = span_of(sources, file, "LID", 310);
    const std::string start = render_text(sources, finding_at(second));
    CHECK(line_of(start, 4) == "  2 | LID" + std::string(97, 'b') + "...");
    CHECK(line_of(start, 5) == "    | ^^^");
    const std::string whole = render_text(sources, finding_at({file, 0, 603}));
    CHECK(line_of(whole, 5) == "    | " + std::string(100, '^'));
}

TEST_CASE("a line of a million characters is cut without ado") {
    SourceMap sources;
    const std::string half(1'500'000, 'a');
    const FileId file = sources.add("a.mmk", half + "蓋" + half);
    const std::string text = render_text(sources, finding_at(span_of(sources, file, "蓋"), "here"));
    CHECK(line_of(text, 4).size() < 120);
    CHECK(line_of(text, 5) == "    | " + std::string(23, ' ') + "^^ here");
}

TEST_CASE("nothing in the source or in a message can disturb the screen") {
    SourceMap sources;
    const FileId file = sources.add("a\x1B.mmk", "p\x1B[31m \xFF \xE2\x80\xAE lid\n");
    Diagnostic finding = finding_at(span_of(sources, file, "lid"), "la\x07"
                                                                   "bel");
    finding.message = "two\nlines \x1B[0m";
    finding.why = "a\rb";
    const std::string text = render_text(sources, finding);
    CHECK(text.find('\x1B') == std::string::npos);
    CHECK(text.find('\x07') == std::string::npos);
    CHECK(text.find('\xFF') == std::string::npos);
    CHECK(text.find('\r') == std::string::npos);
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
    CHECK(text.find("two lines") != std::string::npos);
    CHECK(line_of(text, 5).find("^^^") == 17);
}

TEST_CASE("the bars give way to long line numbers") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", std::string(12344, '\n') + "part lid\n");
    Diagnostic finding = finding_at(span_of(sources, file, "lid"), "here");
    finding.why = "because";
    const std::string text = render_text(sources, finding);
    CHECK(text.substr(text.find('\n') + 1) == R"(      --> a.mmk:12345:6
       |
 12345 | part lid
       |      ^^^ here
       |
     why: because
    more: matchmark explain some-rule
)");
}

TEST_CASE("help shows lines as they will be") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\n  torqe 2 N.m\n  in box\nlast");
    const auto help = [&](std::vector<Edit> edits, const std::string& words = "write") {
        Diagnostic finding = finding_at({file, 0, 4});
        finding.help = words;
        finding.edits = std::move(edits);
        const std::string text = render_text(sources, finding, false);
        return text.substr(text.find(" help:"));
    };
    const Span word = span_of(sources, file, "torqe");
    CHECK(help({{word, "torque"}}) ==
          " help: write\n    |\n    - |   torqe 2 N.m\n    + |   torque 2 N.m\n    |\n");
    SUBCASE("two edits of a line are one change") {
        CHECK(help({{span_of(sources, file, "N.m"), "lbf.in"}, {word, "torque"}}) ==
              " help: write\n    |\n    - |   torqe 2 N.m\n    + |   torque 2 lbf.in\n    |\n");
    }
    SUBCASE("a line taken out") {
        CHECK(help({{{file, 9, 23}, ""}}) == " help: write\n    |\n    - |   torqe 2 N.m\n    |\n");
    }
    SUBCASE("a line put in behind another, and at the end of a file without a line end") {
        CHECK(help({{{file, 22, 22}, "\n  one use"}}) ==
              " help: write\n    |\n    + |   one use\n    |\n");
        CHECK(help({{{file, 36, 36}, "\nmore"}}) == " help: write\n    |\n    + | more\n    |\n");
    }
    SUBCASE("changes far apart stand apart; without words, the line is named") {
        CHECK(help({{{file, 0, 4}, "bond"}, {{file, 32, 36}, "end"}}, "") ==
              " help: change line 1\n    |\n    - | part lid\n    + | bond lid\n"
              "    |\n    - | last\n    + | end\n    |\n");
    }
    SUBCASE("help without edits is a line") { CHECK(help({}, "do so") == " help: do so\n"); }
}

TEST_CASE("an edit in another file names the file") {
    SourceMap sources;
    const FileId here = sources.add("a.mmk", "part lid\n");
    const FileId there = sources.add("b.mmk", "\npart box\n");
    Diagnostic finding = finding_at({here, 5, 8});
    finding.help = "add";
    finding.edits.push_back({{there, 1, 1}, "part lid\n"});
    CHECK(render_text(sources, finding, false)
              .ends_with(" help: add\n   --> b.mmk:2:1\n    |\n    + | part lid\n    |\n"));
}

TEST_CASE("many findings: the first are shown, the rest counted, all tallied") {
    SourceMap sources;
    const FileId file = sources.add("a.mmk", "part lid\n");
    std::vector<Diagnostic> findings;
    for (int i = 0; i < 5; ++i) {
        findings.push_back(finding_at({file, 5, 8}));
        findings.back().message = "finding " + std::to_string(i);
        findings.back().severity = i == 4 ? Severity::error : Severity::warning;
    }
    const std::string all = render_text(sources, findings);
    CHECK(all.ends_with("\n\n1 error, 4 warnings\n"));
    CHECK(all.find("... and") == std::string::npos);
    // The way to the rule's page is told once.
    CHECK(all.find("more:") == all.rfind("more:"));
    const std::string few = render_text(sources, findings, 2);
    CHECK(few.find("finding 0") != std::string::npos);
    CHECK(few.find("finding 1") == std::string::npos);
    CHECK(few.find("finding 4") != std::string::npos); // an error is not hidden by warnings
    CHECK(few.find("finding 0") < few.find("finding 4"));
    CHECK(few.ends_with("\n\n... and 3 more findings\n1 error, 4 warnings\n"));
    CHECK(render_text(sources, std::vector<Diagnostic>{}).empty());
}
