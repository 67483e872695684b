// The forms that are text, as a small guide has them; and what a hostile guide cannot do in them.
#include "publish/archive.hpp"
#include "publish/digest.hpp"
#include "publish/dita.hpp"
#include "publish/epub.hpp"
#include "publish/how_to.hpp"
#include "publish/markdown.hpp"
#include "publish/marked_picture.hpp"
#include "publish/markup_tree.hpp"
#include "publish/page/parts.hpp"
#include "support/accept.hpp"
#include "support/in_text.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

using namespace matchmark;
using matchmark::test::has;
using namespace matchmark::guide;

namespace {

void expect_text(const std::string& file, const std::string& now) {
    const std::string path = "tests/forms/recorded/" + file;
    std::ifstream in(std::string(MATCHMARK_SOURCE_DIR) + "/" + path, std::ios::binary);
    const std::string recorded{std::istreambuf_iterator<char>(in), {}};
    test::expect_recorded(path, recorded, now);
}

Words sentence(const std::string& before, const std::string& value) {
    return {{RunKind::words, before},
            {RunKind::item_number, "2"},
            {RunKind::words, " to "},
            {RunKind::value, value},
            {RunKind::words, "."}};
}

Step first_step() {
    Step step;
    step.number = 1;
    step.anchor = "step-1";
    step.title = "Open the lid";
    step.tools = {"hexalobular driver 6"};
    step.seconds = 130;
    step.waiting_seconds = 600;
    Message hot{Signal::caution, "Hot plate", "Let it cool to 40 °C.", 0, {}};
    hot.sign = "hot";
    step.messages = {hot};
    Instruction line{sentence("Tighten the 4 lid screws", "0.2 N·m"), {"eu"}};
    line.details = {{{RunKind::words, "In this order: 1, 3, 2, 4."}}};
    line.record = "gap, at least 0.5 mm";
    step.instructions = {line};
    step.passages = {
        {PassageKind::text, "Work from the *left*; see [the list](https://example.com/a)."},
        {PassageKind::note, "1. one\n2. two\n\n| a | b |\n| --- | --- |\n| 1 | `2` |", 1}};
    step.pictures = {{"lid.svg", "The lid", {{2, "4 lid screws", {{0.1, 0.1}, {0.9, 0.1}}}}}};
    return step;
}

Document small_guide() {
    Document document;
    document.name = "open-lid";
    document.title = "Open the lid";
    document.device = "Tarn 4 field logger";
    document.revision = "B";
    document.source_version = "v1.2";
    document.date = "2026-03-01";
    document.author = "R. Tarn";
    document.reader = "For readers who have done work of this sort before.";
    document.deferral = "The maker's instructions go before this guide.";
    document.time = "at least 2 min";
    document.signs = {{"hot", "Hot surface", SignForm::warns, "M10 90 L50 10 L90 90 Z"}};
    document.goals = {{{RunKind::words, "Open the lid."}}};
    document.energies = {{{RunKind::words, "The cell holds "}, {RunKind::value, "11.6 W·h"}}};
    document.ratings = {{{RunKind::words, "IP67 is void until the leak test."}}};
    document.protection = {{"eye protection", "", "", "", "", "hot"}};
    document.tools = {{"hexalobular driver 6", "", "", "", "basic tool", ""}};
    document.spares = {{"lid seal", "1", "1.20 EUR", "for the lid seal", "", ""}};
    document.cost = {"1.20 EUR"};
    document.fasteners = {{"4 lid screws", "M2 x 6", "the short ones", "0.2 N·m", {}}};
    document.safety = {{first_step().messages[0], {1}}};
    Step test;
    test.number = 2;
    test.anchor = "step-2";
    test.title = "It holds 5 kPa";
    test.is_test = true;
    test.test = {{"the lid shut"}, {"IP67"}, {"leak tester"}};
    document.sections = {{"Take apart", {first_step()}}, {"Put back", {test}}};
    document.disposals = {{"cell", "lithium battery"}};
    document.figures = {{"order", "Order of the work",
                         "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", 80, 40,
                         "- step 1\n- step 2"}};
    return document;
}

const Assets assets{
    {{"lid.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 4 3\"/>"}}};

publish::ShownPictures beside() {
    publish::ShownPictures pictures = publish::shown_pictures(assets);
    for (auto& [path, picture] : pictures) {
        picture.source = "open-lid.picture-1.svg";
    }
    return pictures;
}

constexpr const char* hostile_words =
    "<script>alert(1)</script> \"'&]]> [x](javascript:alert(2)) *a*";

Document hostile_guide() {
    Document document = small_guide();
    document.title = document.device = document.name = document.author = hostile_words;
    document.tools[0].words = hostile_words;
    document.fasteners[0].words = hostile_words;
    Step& step = document.sections[0].steps[0];
    step.title = hostile_words;
    step.messages[0].markdown = step.messages[0].subject = hostile_words;
    step.instructions[0].words = {{RunKind::words, hostile_words}};
    step.instructions[0].record = hostile_words;
    step.passages[0].markdown = std::string(hostile_words) + "\n\n<iframe src=\"x\"></iframe>\n";
    step.pictures[0].alternative_text = hostile_words;
    return document;
}

} // namespace

TEST_CASE("the small guide in each form of text") {
    const Document document = small_guide();
    expect_text("small.md", publish::markdown(document, beside()));
    expect_text("small.dita", publish::dita(document, beside()));
    expect_text("small.how-to.jsonld", publish::how_to(document));
    expect_text("small.page", publish::page_body({document, beside()}, ""));
    expect_text("small.picture.svg",
                publish::marked_pictures(document, assets).at("lid.svg").bytes);
}

TEST_CASE("markup in names and prose is text in Markdown and DITA") {
    const std::string markdown = publish::markdown(hostile_guide(), beside());
    CHECK_FALSE(has(markdown, " <script"));
    CHECK_FALSE(has(markdown, "\n<"));
    CHECK_FALSE(has(markdown, "x](javascript:"));
    CHECK_FALSE(has(markdown, "(<javascript:"));
    CHECK(has(markdown, "\\<script\\>"));
    const std::string dita = publish::dita(hostile_guide(), beside());
    CHECK_FALSE(has(dita, "<script"));
    CHECK_FALSE(has(dita, "<iframe"));
    CHECK_FALSE(has(dita, "href=\"javascript"));
    CHECK(has(dita, "&lt;script&gt;"));
    CHECK(has(dita, "<task id=\"guide--script-alert-1---script-"));
}

TEST_CASE("markup in names is text in the HowTo, which stays JSON") {
    const auto root = nlohmann::json::parse(publish::how_to(hostile_guide()));
    CHECK(root["name"] == hostile_words);
    CHECK(root["step"][0]["name"] == "Safety first");
    CHECK(root["performTime"] == "PT3M");
}

TEST_CASE("a number and a full stop begin no list, nor a hash a heading") {
    CHECK(publish::markdown_text("1. x") == "1\\. x");
    CHECK(publish::markdown_text("11.6 W") == "11.6 W");
    CHECK(publish::markdown_text("# x") == "\\# x");
    CHECK(publish::markdown_text("a\nb|c") == "a b\\|c");
    CHECK(publish::markdown_prose("a<br>b `x``y`") == "a\\<br\\>b ``` x``y ```\n");
}

TEST_CASE("a drawing loses what could run or fetch, and keeps its shapes") {
    const std::string clean = publish::harmless_svg(
        "<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY e \"javascript:alert(1)\">]>"
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:x=\"http://www.w3.org/1999/xlink\" "
        "onload=\"alert(2)\"><script>alert(3)</script><rect width=\"1\" OnClick=\"alert(4)\" "
        "fill=\"url(#g)\"/><a x:href=\" java\nscript:alert(5)\"><text>lid</text></a>"
        "<use href=\"other.svg#a\"/><use href=\"#a\"/><circle href=\"&e;\" "
        "style=\"fill:url(http://127.0.0.1/a)\"/><foreignObject/><set to=\"x\"/>"
        "<style>@import 'a.css';</style><style>rect{fill:red}</style></svg>");
    for (const char* bad : {"alert", "script", "127.0.0.1", "other.svg", "foreign", "<set",
                            "import", "DOCTYPE", "ENTITY"}) {
        CAPTURE(bad);
        CHECK_FALSE(has(clean, bad));
    }
    for (const char* good : {"<rect width=\"1\" fill=\"url(#g)\"/>", "<text>lid</text>",
                             "<use href=\"#a\"/>", "<style>rect{fill:red}</style>"}) {
        CAPTURE(good);
        CHECK(has(clean, good));
    }
    CHECK(publish::harmless_svg("<svg>").empty());
    CHECK(publish::harmless_svg("<html xmlns=\"http://www.w3.org/1999/xhtml\"/>").empty());
}

TEST_CASE("a book is the same to the byte, and begins with its type as it is") {
    const std::string book = publish::epub(small_guide(), assets, "2026-03-01");
    CHECK(book == publish::epub(small_guide(), assets, "2026-03-01"));
    CHECK(book != publish::epub(small_guide(), assets, "2026-03-02"));
    REQUIRE(book.size() > 100);
    CHECK(book.substr(30, 28) == "mimetypeapplication/epub+zip");
    CHECK(book.substr(8, 2) == std::string(2, '\0')); // stored
}

TEST_CASE("SHA-256 (FIPS 180-4; NIST's example \"abc\")") {
    CHECK(publish::hexadecimal(publish::sha256("abc"), 32) ==
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}
