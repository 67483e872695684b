// Sentences, plurals, numbers and lists of the reader's language.
#include "language/language.hpp"

#include "drive/compilation.hpp"
#include "language/judging.hpp"
#include "language/loading.hpp"
#include "language/spoken.hpp"
#include "language/texts.hpp"
#include "language/words.hpp"
#include "support/small_device.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace matchmark;
using namespace matchmark::language;

namespace {

Language small(const std::string& tag, const Table& table) {
    Language language;
    language.tag = tag;
    language.table = std::make_shared<const Table>(table);
    return language;
}

model::Quantity quantity(double value, const char* unit) {
    return *model::make_quantity(value, unit);
}

} // namespace

TEST_CASE("a pattern's places are filled in the order in which it names them") {
    const Words items = words_of("the lid");
    const Words torque = words_of("2 N·m", RunKind::value);
    const Words filled =
        fill("{torque} for {the items}.", {{"the items", items}, {"torque", torque}});
    REQUIRE(filled.size() == 2);
    CHECK(filled[0] == Run{RunKind::value, "2 N·m"});
    CHECK(filled[1] == Run{RunKind::words, " for the lid."});
    CHECK(fill_text("{a} {unknown} {a}", {{"a", "x"}}) == "x {unknown} x");
    CHECK(places_of("{the items} and {how}") == std::vector<std::string>{"how", "items"});
}

TEST_CASE("English gives back what is asked for") {
    CHECK(text(english(), "Tools") == "Tools");
    CHECK(counted(english(), 1, "{count} guide", "{count} guides") == "{count} guide");
    CHECK(counted(english(), 0, "{count} guide", "{count} guides") == "{count} guides");
    CHECK(said(english(), quantity(0.2, "N.m")) == "0.2 N·m");
}

TEST_CASE("the plural is that of the language") {
    const Table table{{"step", {{"", {"eins", "viele"}}}}};
    const auto form = [&](const char* tag, std::size_t count) {
        return counted(small(tag, table), count, "step", "steps");
    };
    CHECK(form("de", 0) == "viele"); // CLDR: one for 1 alone
    CHECK(form("de", 1) == "eins");
    CHECK(form("fr", 0) == "eins"); // CLDR: one for 0 and 1
    CHECK(form("fr", 1) == "eins");
    CHECK(form("fr", 2) == "viele");
    CHECK(form("es", 0) == "viele");
}

TEST_CASE("numbers have the language's decimal sign and space") {
    CHECK(said(small("de", {}), quantity(0.2, "N.m")) == "0,2\u00a0N·m");
    CHECK(said(small("fr", {}), quantity(12.5, "%")) == "12,5\u00a0%");
    CHECK(said(small("fr", {}), quantity(5, "mm")) == "5\u202fmm");
    CHECK(said(small("nl", {}), quantity(25, "%")) == "25%");
    CHECK(said(small("es", {}), quantity(25, "%")) == "25\u00a0%");
    CHECK(said(small("de", {{"below {bound}", {{"", {"unter {bound}"}}}}}),
               model::Limit{{}, quantity(60, "V"), true}) == "unter 60\u00a0V");
}

TEST_CASE("a list ends as the language joins it") {
    const Language spanish = small("es", {{"and", {{"", {"y"}}}}, {"or", {{"", {"o"}}}}});
    CHECK(said_list(spanish, {"tapa", "placa", "arandela"}) == "tapa, placa y arandela");
    CHECK(said_list(spanish, {"tapa", "interruptor"}) == "tapa e interruptor");
    CHECK(said_list(spanish, {"agua", "hielo"}) == "agua y hielo");
    CHECK(said_list(spanish, {"uno", "otro"}, "or") == "uno u otro");
    CHECK(said_list(small("de", {{"and", {{"", {"und"}}}}}), {"A", "B", "C"}) == "A, B und C");
}

TEST_CASE("an item has its article in a sentence, and none in a list") {
    support::SmallDevice device;
    const ItemKey key = item_key(device.model, device.screws);
    CHECK(key.one == "[the] lid screw");
    CHECK(key.many == "[the] {count} lid screws");
    const Language german = small(
        "de",
        {{key.one, {{key.context, {"[die ]Deckelschraube", "[die ]{count} Deckelschrauben"}}}},
         {"and", {{"", {"und"}}}}});
    CHECK(said(german, device.model, device.screws) == "die 4 Deckelschrauben");
    CHECK(said(german, device.model, device.screws, false) == "4 Deckelschrauben");
    CHECK(said_bare(german, device.model, device.screws) == "Deckelschrauben");
    CHECK(said_one(german, device.model, device.screws) == "Deckelschraube");
    CHECK(said(german, device.model, {device.screws, {3}, {}}) == "die Deckelschraube 3");
    CHECK(said(german, device.model, {device.screws, {1, 3}, {}}) == "die Deckelschrauben 1 und 3");
}

TEST_CASE("a translation is looked for in its context, then in others of its sort") {
    const Language german = small(
        "de", {{"open", {{"state open", {"offen"}}}}, {"Close it", {{"step a", {"Schließen"}}}}});
    CHECK(own(german, "state open", "open") == "offen");
    CHECK(own(german, "step b", "Close it") == "Schließen");
    CHECK(own(german, "step open", "open") == "open"); // a state is no title
}

TEST_CASE("what has no translation can be marked as English") {
    Language german = small("de", {});
    CHECK(own(german, "step a", "Open it") == "Open it");
    german.marks_english = true;
    const std::string marked = own(german, "step a", "Open it");
    CHECK(marked == std::string(english_begins) + "Open it" + std::string(english_ends));
}

TEST_CASE("the first letter of a sentence is large in any script") {
    CHECK(capital(small("de", {}), "über die Platte") == "Über die Platte");
    CHECK(capital(small("fr", {}), "étape") == "Étape");
    CHECK(capital(small("es", {}), "") == "");
}

TEST_CASE("all that the parts library says to a reader is said in German, French and Spanish") {
    MapDisk disk;
    const std::string nothing;
    const drive::Compilation library = drive::compile(disk, "library.mmk", &nothing);
    const auto texts = library_texts(library.sources, library.model);
    REQUIRE(texts.size() > 1000);
    for (const char* tag : {"de", "fr", "es"}) {
        std::set<std::pair<std::string, std::string>> said;
        for (const Message& message : built_in(tag).messages)
            said.insert({message.context, message.one});
        for (const Text& text : texts) {
            CAPTURE(tag);
            CAPTURE(text.context);
            CAPTURE(text.one);
            CHECK(said.contains({text.context, text.one}));
        }
    }
}

TEST_CASE("the program speaks German, French and Spanish in the same sentences") {
    Table tables[3];
    const char* tags[] = {"de", "fr", "es"};
    for (int i = 0; i < 3; ++i) {
        add_to(tables[i], built_in(tags[i]));
        REQUIRE(tables[i].size() > 400);
    }
    for (const auto& entry : tables[0]) {
        const std::string& english = entry.first;
        CAPTURE(english);
        CHECK(tables[1].contains(english));
        CHECK(tables[2].contains(english));
    }
    for (const char* tag : tags) {
        for (const Message& message : built_in(tag).messages) {
            CAPTURE(message.one);
            CHECK(lost_in(message.one, message.forms.front(), {}) == "");
        }
    }
    // ANSI Z535.6 has four signal words; each language four of its own.
    for (Table& table : tables) {
        std::set<std::string> words;
        for (const char* word : {"DANGER", "WARNING", "CAUTION", "NOTICE"}) {
            words.insert(table.at(word).front().forms.front());
        }
        CHECK(words.size() == 4);
    }
}
