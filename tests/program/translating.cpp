// A guide is gathered into a catalogue, translated, and published in another language; what is
// missing or lost is told with its place.
#include "program/workshop.hpp"
#include "unit/drive/bench_files.hpp"

using matchmark::test::Ran;
using matchmark::test::Workshop;

namespace {

void with_german_lamp(const Workshop& shop) {
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("open.mmk", matchmark::test::good_guide);
}

// The catalogue with the translation of one text put in.
std::string translated(std::string po, const std::string& english, const std::string& german) {
    const std::size_t at = po.find("msgid \"" + english + "\"\n");
    REQUIRE(at != std::string::npos);
    const std::size_t form = po.find("msgstr \"\"", at);
    REQUIRE(form != std::string::npos);
    return po.replace(form, 9, "msgstr \"" + german + "\"");
}

// The title of the guide as the catalogue has it.
std::string title_of(const std::string& po) {
    const std::size_t at = po.find("msgid \"", po.find("msgctxt \"guide ")) + 7;
    return po.substr(at, po.find('"', at) - at);
}

} // namespace

TEST_CASE("a guide's sentences go into a catalogue, and come back in its language") {
    Workshop shop;
    with_german_lamp(shop);
    const Ran made = shop.run({"catalog", "open.mmk", "--language", "de", "-o", "open.de.po"});
    CHECK(made.code == 0);
    CHECK(made.told("open.de.po"));
    const std::string po = shop.text("open.de.po");
    CHECK(po.find("Language: de") != std::string::npos);
    CHECK(po.find("#: lamp.mmk:") != std::string::npos);
    const std::string title = title_of(po);
    shop.put("open.de.po", translated(po, title, "Die Lampe"));

    const Ran ran = shop.run({"publish", "open.mmk", "--language", "de", "-o", "out"});
    CHECK(ran.code == 0);
    CHECK(ran.complained("not-translated"));
    CHECK(ran.complained("open.de.po:"));
    const std::string page = shop.text("out/open-lamp.html");
    CHECK(page.find("<html lang=\"de\">") != std::string::npos);
    CHECK(page.find("<h1>Die Lampe</h1>") != std::string::npos);
    CHECK(page.find("Was Sie brauchen") != std::string::npos);
    CHECK(page.find("<span lang=\"en\">") != std::string::npos);

    const Ran strict =
        shop.run({"publish", "open.mmk", "--language", "de", "--strict", "-o", "strict"});
    CHECK(strict.code == 1);
    CHECK(!shop.has("strict/open-lamp.html"));
}

TEST_CASE("an update keeps what is translated, and marks what has changed") {
    Workshop shop;
    with_german_lamp(shop);
    CHECK(shop.run({"catalog", "open.mmk", "--language", "de", "-o", "open.de.po"}).code == 0);
    const std::string title = title_of(shop.text("open.de.po"));
    shop.put("open.de.po", translated(shop.text("open.de.po"), title, "Die Lampe"));
    std::string guide = matchmark::test::good_guide;
    const std::size_t at = guide.find(title);
    REQUIRE(at != std::string::npos);
    shop.put("open.mmk", guide.insert(at + title.size(), " now"));
    const Ran ran = shop.run({"catalog", "open.mmk", "--language", "de", "--update", "open.de.po"});
    CHECK(ran.code == 0);
    const std::string po = shop.text("open.de.po");
    CHECK(po.find("#, fuzzy") != std::string::npos);
    CHECK(po.find("#| msgid \"" + title + "\"") != std::string::npos);
    CHECK(po.find("Die Lampe") != std::string::npos);
    CHECK(shop.run({"publish", "open.mmk", "--language", "de", "-o", "out"})
              .complained("doubtful-translation"));
}

TEST_CASE("what cannot be used as a catalogue is refused, and nothing is written") {
    Workshop shop;
    with_german_lamp(shop);
    const auto publish = [&](const char* catalogue) {
        return shop.run(
            {"publish", "open.mmk", "--language", "de", "--catalog", catalogue, "-o", "out"});
    };
    shop.put("broken.po", "msgid \"a\nmsgstr b\n");
    shop.put("latin.po", "msgid \"a\"\nmsgstr \"\xFC\"\n");
    shop.put("dutch.po", "msgid \"\"\nmsgstr \"\"\n\"Language: nl\\n\"\n"
                         "\"Content-Type: text/plain; charset=UTF-8\\n\"\n");
    for (const char* name : {"broken.po", "latin.po", "dutch.po"}) {
        CAPTURE(name);
        const Ran ran = publish(name);
        CHECK(ran.code == 1);
        CHECK(ran.complained("broken-catalogue"));
        CHECK(!shop.has("out/open-lamp.html"));
    }
    CHECK(publish("none.po").code == 2);
    CHECK(shop.run({"publish", "open.mmk", "--language", "xx"}).code == 2);
    CHECK(shop.run({"catalog", "open.mmk", "--language", "xx"}).code == 2);
    CHECK(shop.run({"catalog"}).code == 2);
    CHECK(shop.run({"catalog", "open.mmk", "--update", "broken.po"}).code == 1);
}

TEST_CASE("English is not changed by the other languages") {
    Workshop shop;
    with_german_lamp(shop);
    CHECK(shop.run({"publish", "open.mmk", "-o", "one"}).code == 0);
    CHECK(shop.run({"publish", "open.mmk", "--language", "en", "-o", "two"}).code == 0);
    CHECK(shop.text("one/open-lamp.html") == shop.text("two/open-lamp.html"));
    CHECK(shop.text("one/open-lamp.html").find("<html lang=\"en\">") != std::string::npos);
}
