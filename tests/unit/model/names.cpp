// Names made of what people call things.
#include "model/spelling.hpp"

#include "parse/parse.hpp"

#include <doctest/doctest.h>
#include <utf8proc.h>

#include <array>
#include <set>
#include <string>

using namespace matchmark;
using model::name_from;

namespace {

std::string bytes_of(utf8proc_int32_t code) {
    std::array<utf8proc_uint8_t, 4> bytes{};
    const auto length = static_cast<std::size_t>(utf8proc_encode_char(code, bytes.data()));
    return {bytes.begin(), bytes.begin() + length};
}

} // namespace

TEST_CASE("names are made as the language has them") {
    CHECK(name_from("Lid Screw (M2)") == "lid-screw-m2");
    CHECK(name_from("  --x__y ") == "x-y");
    CHECK(name_from("4 pins") == "part-4-pins");
    CHECK(name_from("4 pins", "thing") == "thing-4-pins");
    CHECK(name_from("Gehäuse") == "gehäuse");
    CHECK(name_from("\"; drop") == "drop");
    CHECK(name_from("...").empty());
}

TEST_CASE("signs beyond ASCII are no part of a name") {
    CHECK(name_from("Screw M4×12") == "screw-m4-12");
    CHECK(name_from("cover – left") == "cover-left");
    CHECK(name_from("„Haube“") == "haube");
    CHECK(name_from("60 °C cutout") == "part-60-c-cutout");
    CHECK(name_from("motor ½ HP™") == "motor-hp");
    CHECK(name_from("lid\xc2\x94 cap") == "lid-cap");
    CHECK(name_from("lid\xff\xfe cap") == "lid-cap");
    CHECK(name_from("\xcc\xaa arm") == "part-\xcc\xaa-arm");
    CHECK(name_from("крышка") == "крышка");
    CHECK(name_from("ढक्कन") == "ढक्कन");
}

TEST_CASE("whatever a thing is called, its name is one of the language") {
    std::set<std::string> names;
    for (utf8proc_int32_t code = 1; code < 0x110000; ++code) {
        if (!utf8proc_codepoint_valid(code))
            continue;
        const std::string letter = bytes_of(code);
        names.insert({name_from(letter), name_from(letter + "b"), name_from("a" + letter + "b"),
                      name_from("a " + letter)});
    }
    names.erase("");
    names.erase("x"); // as in "4 x screw": a word of the language, as any title may be
    REQUIRE(names.size() > 300000);
    std::string text;
    for (const std::string& name : names)
        text += "part " + name + " \"Thing\"\n";
    SourceMap sources;
    const FileId file = sources.add("names.mmk", std::move(text));
    std::vector<Diagnostic> findings;
    syntax::parse(sources, file, findings);
    std::string refused;
    for (const Diagnostic& finding : findings)
        refused +=
            std::string(sources.line(file, sources.place(file, finding.primary.begin).line)) + "\n";
    CHECK(refused == "");
}
