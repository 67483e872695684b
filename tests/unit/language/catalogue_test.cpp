// Catalogues read, written, brought up to date and judged.
#include "language/catalogue.hpp"
#include "language/judging.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace matchmark;
using namespace matchmark::language;

namespace {

const std::string head = "msgid \"\"\nmsgstr \"\"\n\"Language: de\\n\"\n"
                         "\"Content-Type: text/plain; charset=UTF-8\\n\"\n"
                         "\"Plural-Forms: nplurals=2; plural=(n != 1);\\n\"\n\n";

struct Read {
    SourceMap sources;
    FileId file;
    std::vector<Diagnostic> findings;
    Catalogue catalogue;

    explicit Read(const std::string& text) : file(sources.add("x.po", text)) {
        catalogue = read_po(sources, file, findings);
    }
    [[nodiscard]] unsigned line(std::size_t finding) const {
        return sources.place(file, findings.at(finding).primary.begin).line;
    }
};

Message message(const std::string& context, const std::string& one, const std::string& form) {
    Message made;
    made.context = context;
    made.one = one;
    made.forms = {form};
    return made;
}

Text text(const std::string& context, const std::string& one) { return {context, one, "", "", {}}; }

std::vector<std::string> rules(const std::vector<Diagnostic>& findings) {
    std::vector<std::string> names;
    for (const Diagnostic& finding : findings) {
        names.push_back(finding.rule);
    }
    return names;
}

} // namespace

TEST_CASE("a catalogue is read as it was written") {
    Catalogue written;
    written.language = "de";
    written.header = po_header("lamp", "de");
    written.messages = {message("step a", "Open the \"lid\"\nnow", "Den Deckel öffnen"),
                        message("item s", "[the] screw", "[die ]Schraube")};
    written.messages[1].many = "[the] {count} screws";
    written.messages[1].forms.emplace_back("[die ]{count} Schrauben");
    written.messages[0].explained = {"a step's text"};
    written.messages[0].references = {{"lamp.mmk", 7}};
    Message old = message("step b", "Gone", "Weg");
    old.obsolete = true;
    written.messages.push_back(old);
    const Read read(write_po(written));
    CHECK(read.findings.empty());
    CHECK(read.catalogue.language == "de");
    REQUIRE(read.catalogue.messages.size() == 3);
    CHECK(read.catalogue.messages[0].one == "Open the \"lid\"\nnow");
    CHECK(read.catalogue.messages[0].references.front().line == 7);
    CHECK(read.catalogue.messages[1].forms.back() == "[die ]{count} Schrauben");
    CHECK(read.catalogue.messages[2].obsolete);
    // The place of an entry is that of its msgid.
    for (const Message& one : read.catalogue.messages) {
        CHECK(read.sources.file(read.file).text.substr(one.offset, 5) == "msgid");
    }
}

TEST_CASE("a catalogue whose header names no charset is written as UTF-8") {
    Catalogue written;
    written.header = "Language: de";
    written.messages = {message("", "größer", "größer als 5 µm")};
    const Read read(write_po(written));
    CHECK(read.findings.empty());
    REQUIRE(read.catalogue.messages.size() == 1);
    CHECK(read.catalogue.messages[0].one == "größer");
    CHECK(read.catalogue.messages[0].forms.front() == "größer als 5 µm");
}

TEST_CASE("a remark that ends in a backslash takes no line from the entry below it") {
    Catalogue written;
    written.header = po_header("lamp", "de");
    written.messages = {message("step a", "Open", "Auf")};
    written.messages[0].comments = {"see C:\\guides\\"};
    written.messages[0].explained = {"a path\\"};
    written.messages[0].references = {{"lamp\\\\", 0}};
    const Read read(write_po(written));
    CHECK(read.findings.empty());
    REQUIRE(read.catalogue.messages.size() == 1);
    CHECK(read.catalogue.messages[0].forms.front() == "Auf");
}

TEST_CASE("broken catalogues give findings with a line, and nothing half read") {
    const Read cut(head + "msgid \"a\"\nmsgstr \"b\nmsgid \"c\"\nmsgstr \"d\"\n");
    REQUIRE(!cut.findings.empty());
    CHECK(cut.findings[0].rule == "broken-catalogue");
    CHECK_FALSE(cut.findings[0].help.empty());
    CHECK(cut.line(0) >= 8);
    CHECK(cut.catalogue.messages.empty());

    const Read garbage("this is no catalogue\n\x01\x02{}\n");
    CHECK(!garbage.findings.empty());

    const Read bytes(head + "msgid \"a\"\nmsgstr \"\xff\xfe\"\n");
    REQUIRE(!bytes.findings.empty());
    CHECK(bytes.line(0) == 8);

    const Read latin("msgid \"\"\nmsgstr \"Content-Type: text/plain; charset=ISO-8859-1\\n\"\n");
    REQUIRE(!latin.findings.empty());
    CHECK(latin.line(0) == 2);

    const Read twice(head + "msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"\n");
    CHECK(!twice.findings.empty());

    std::string huge = head + "# ";
    huge.resize(17UL << 20U, 'x');
    const Read large(huge);
    REQUIRE(large.findings.size() == 1);
    CHECK(large.findings[0].message.find("16 MB") != std::string::npos);
}

TEST_CASE("a thousand faults end the reading, not the program") {
    std::string text = head;
    for (int i = 0; i < 1000; ++i) {
        text += "msgid \"x\nmsgstr y\n";
    }
    const Read read(text);
    CHECK(!read.findings.empty());
    CHECK(read.findings.size() <= 20);
    const Read after(head + "msgid \"a\"\nmsgstr \"b\"\n");
    CHECK(after.findings.empty());
    CHECK(after.catalogue.messages.size() == 1);
}

TEST_CASE("an update keeps translations, marks changed ones and drops nothing") {
    Catalogue old;
    old.messages = {message("step a", "Open the lid with care", "Den Deckel vorsichtig öffnen"),
                    message("step b", "Lift it", "Anheben"),
                    message("step c", "This is gone for ever", "Das ist weg")};
    Catalogue found;
    found.messages = {message("step a", "Open the lid with great care", ""),
                      message("step b", "Lift it", ""), message("step d", "Entirely new", "")};
    const Catalogue now = merged(old, found);
    REQUIRE(now.messages.size() == 4);
    CHECK(now.messages[0].fuzzy);
    CHECK(now.messages[0].forms.front() == "Den Deckel vorsichtig öffnen");
    CHECK(now.messages[0].previous == "Open the lid with care");
    CHECK(!now.messages[1].fuzzy);
    CHECK(now.messages[1].forms.front() == "Anheben");
    CHECK(now.messages[2].forms.front().empty());
    CHECK(now.messages[3].obsolete);
    CHECK(now.messages[3].one == "This is gone for ever");
    Table table;
    add_to(table, now);
    CHECK(table.size() == 1); // neither fuzzy, missing nor obsolete
}

TEST_CASE("a translation may lose no place, number, unit or name") {
    CHECK(lost_in("Undo {the items}{how}", "{items}{how} lösen", {}).empty());
    CHECK(lost_in("Undo {the items}{how}", "{items} lösen", {}) == "the place `{how}`");
    CHECK(lost_in("Discharge below 60 V.", "Unter 60\u00a0V entladen.", {}).empty());
    CHECK(lost_in("Discharge below 60 V.", "Unter 50 V entladen.", {}) == "the value 60 V");
    CHECK(lost_in("Discharge below 60 V.", "Unter 60 A entladen.", {}) == "the value 60 V");
    CHECK(lost_in("1.5 bar, then 3", "1,5\u202fbar, dann 3", {}).empty());
    CHECK(lost_in("Wait 5 s, 5 s", "5 s warten", {}) == "the number 5");
    CHECK(lost_in("replace cell with cell-new", "durch cell-new ersetzen", {"cell", "cell-new"})
              .empty());
    CHECK(lost_in("replace cell", "die Zelle ersetzen", {"cell"}) == "the name `cell`");
}

TEST_CASE("what is missing, doubtful, lost or stale is told") {
    OwnCatalogue own;
    own.file = 0;
    own.catalogue.messages = {
        message("step a", "Wait 5 min", "Warten"), message("step b", "Lift it", "Anheben"),
        message("step c", "Lower it", ""), message("step z", "Nobody says this", "Niemand")};
    own.catalogue.messages[1].fuzzy = true;
    const std::vector<Text> texts{text("step a", "Wait 5 min"), text("step b", "Lift it"),
                                  text("step c", "Lower it"), text("step d", "Turn it"),
                                  text("verb undo", "Undo")};
    Catalogue program;
    program.messages = {message("verb undo", "Undo", "Lösen")};
    const auto findings = judged(texts, program, {own}, true);
    CHECK(rules(findings) == std::vector<std::string>{"lost-in-translation", "doubtful-translation",
                                                      "not-translated", "not-translated",
                                                      "stale-translation"});
    for (const Diagnostic& finding : findings)
        CHECK_MESSAGE(!finding.help.empty(), finding.message);
    CHECK(findings[0].severity == Severity::error);
    CHECK(findings[1].severity == Severity::warning);
    CHECK(judged(texts, program, {own}, false).size() == 4);
}
