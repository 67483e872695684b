// The page: everything is there, nothing runs, nothing is fetched.
#include "publish/html.hpp"

#include "publish/digest.hpp"
#include "publish/page/picture.hpp"
#include "publish/page/script.hpp"
#include "publish/page/text.hpp"
#include "publish/picture_shape.hpp"
#include "support/in_text.hpp"

#include <cmath>
#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::count;
using matchmark::test::has;
using namespace matchmark::guide;

namespace {

Document document_of(const std::string& text) {
    Document document;
    document.name = text;
    document.title = text;
    document.device = text;
    document.reader = text;
    document.source_version = text;
    document.signs.push_back({"sign", text, SignForm::warns, text});
    document.energies = {{{RunKind::words, text}}};
    document.ratings = {{{RunKind::words, text}}};
    Provision provision;
    provision.words = provision.amount = provision.price = provision.purpose = text;
    provision.tool_class = text;
    provision.sign = "sign";
    document.protection.push_back(provision);
    document.tools.push_back(provision);
    document.spares.push_back(provision);
    document.cost = {text};
    document.fasteners.push_back({text, text, text, text, {text}});
    Message message{Signal::danger, text, text, 0, {text}};
    message.sign = "sign";
    document.safety.push_back({message, {1}});
    document.disposals.push_back({text, text});
    document.figures.push_back({"figure-1", text, "<svg/>", 80, 50, text});
    Step step;
    step.number = 1;
    step.anchor = "step-1";
    step.title = text;
    step.variants = {text};
    step.tools = {text};
    step.is_test = true;
    step.test = {{text}, {text}, {text}};
    step.messages.push_back(message);
    Instruction instruction{{{RunKind::words, text}, {RunKind::value, text}}, {text}};
    instruction.details = {{{RunKind::words, text}}};
    instruction.record = text;
    step.instructions.push_back(instruction);
    step.passages.push_back({PassageKind::note, text});
    step.pictures.push_back({"a.svg", text, {{1, text, {{0.5, 0.5}}}}});
    document.sections.push_back({text, {step}});
    return document;
}

std::string figure_of(const Picture& picture, const Assets& assets) {
    return publish::figure(picture, publish::shown_pictures(assets));
}

} // namespace

TEST_CASE("names full of markup are shown and do nothing") {
    const std::string page = publish::html(document_of("\"'><script>alert(1)</script>&"), {});
    CHECK(count(page, "<script") == 1); // our own
    CHECK(count(page, "&lt;script") > 20);
    CHECK(has(page, "<h1>&quot;&#39;&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;</h1>"));
    CHECK_FALSE(has(page, "=\"\"'>")); // no attribute was closed by it
}

TEST_CASE("nothing is fetched, and nothing runs but the page's own script") {
    const std::string page = publish::html(document_of("x"), {{{"a.svg", "<svg></svg>"}}});
    CHECK(has(page, "default-src 'none'"));
    CHECK(has(page, "script-src 'sha256-" + publish::base64(publish::sha256(publish::page_script)) +
                        "'"));
    CHECK(has(page, "<img src=\"data:image/svg+xml;base64,PHN2Zy"));
    CHECK_FALSE(has(page, "src=\"http"));
    CHECK_FALSE(has(page, "https:"));
    CHECK_FALSE(has(page, "url("));
    CHECK_FALSE(has(page, "@import"));
}

TEST_CASE("ticks are kept for one revision of one text") {
    const auto name_of = [](const Document& document) {
        const std::string page = publish::html(document, {});
        const auto at = page.find("data-guide=\"") + 12;
        return page.substr(at, page.find('"', at) - at);
    };
    Document document = document_of("x");
    document.name = "renew-seal";
    document.revision = "B";
    const std::string first = name_of(document);
    CHECK(first.starts_with("renew-seal:B:"));
    CHECK(name_of(document) == first);
    document.sections[0].steps[0].title = "Another";
    CHECK(name_of(document) != first);
}

TEST_CASE("fields of a step reach the page") {
    Document document = document_of("y");
    Step& step = document.sections[0].steps[0];
    step.tools = {"driver", "pick"};
    step.seconds = 200;
    step.waiting_seconds = 5400;
    step.instructions[0].record = "length, at least 5 mm";
    document.energies = {{{RunKind::words, "The cell holds "}, {RunKind::value, "11.6 W·h"}}};
    const std::string page = publish::html(document, {});
    CHECK(has(page, "Tools: <strong>Driver and pick</strong>"));
    CHECK(has(page, "Handling: <strong>about 3 min 20 s</strong>"));
    CHECK(has(page, "Waiting: <strong>1 h 30 min</strong>"));
    CHECK(has(page, "<span class=\"asked\">length, at least 5 mm</span>"));
    CHECK(has(page, "The cell holds <strong class=\"value\">11.6 W·h</strong>"));
    CHECK(has(page, "aria-label=\"Sign: y\""));
}

TEST_CASE("links to other guides go in at the top, and are escaped") {
    const std::string page = publish::with_links(publish::html(document_of("x"), {}), "index.html",
                                                 {{"Renew <the> seal", "a/b%20c.html"}});
    CHECK(has(page, "<a href=\"index.html\">All guides</a>"));
    CHECK(has(page, "<a href=\"a/b%20c.html\">Renew &lt;the&gt; seal</a>"));
}

TEST_CASE("control characters, which HTML forbids, become U+FFFD") {
    CHECK(publish::without_controls(std::string("a\x01") + "b\x7f" + "c\xc2\x85" + "d\te\r\nf") ==
          "a\uFFFDb\uFFFDc\uFFFDd\te\nf");
}

TEST_CASE("a picture that is missing, or is none, is shown by its words and key") {
    Picture picture{"a.svg", "The lid", {{3, "4 lid screws", {{0.1, 0.1}}}}};
    for (const char* bytes : {"", "<html><svg></svg></html>", "plain", "\x89PN", "<svgx>"}) {
        const std::string text = figure_of(picture, {{{"a.svg", bytes}}});
        CAPTURE(bytes);
        CHECK_FALSE(has(text, "<img"));
        CHECK(has(text, "The lid"));
        CHECK(has(text, "4 lid screws"));
    }
    CHECK(has(figure_of(picture, {}), "The lid"));
}

TEST_CASE("pictures are known by their bytes") {
    CHECK(publish::picture_type("\x89PNG\r\n\x1a\n....") == "image/png");
    CHECK(publish::picture_type("\xff\xd8\xff\xe0") == "image/jpeg");
    CHECK(publish::picture_type("\xef\xbb\xbf<?xml version='1.0'?>\n<!-- a > b -->\n<!DOCTYPE svg>"
                                "\n<svg xmlns='http://www.w3.org/2000/svg'/>") == "image/svg+xml");
    CHECK(publish::picture_type("<!DOCTYPE svg [<!ENTITY a 'b'>]>\n<svg/>") == "image/svg+xml");
    CHECK(publish::picture_type("<!-- never closed <svg>").empty());
}

TEST_CASE("the shape of a picture is read from its bytes") {
    using publish::picture_shape;
    using namespace std::string_literals;
    CHECK(picture_shape("<svg viewBox=\"0 0 400 640\"/>") == 0.625);
    CHECK(picture_shape("<svg stroke-width='9' width='300mm' height='100mm'>") == 3);
    CHECK(picture_shape("<svg>") == 0);
    CHECK(picture_shape("<svg viewBox='0 0 1 0'>") == 0);
    CHECK(picture_shape("<svg viewBox='0 0 900 1'>") == 10); // no page shows more than that
    const std::string png = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\2\0\0\0\1\0"s; // 512 x 256
    CHECK(picture_shape(png) == 2);
    const std::string gif = "GIF89a\x40\1\xf0\0"s; // 320 x 240
    CHECK(picture_shape(gif) == doctest::Approx(4.0 / 3));
    const std::string jpeg = "\xff\xd8\xff\xe0\0\4ab\xff\xc0\0\x11\x8\0\x64\0\xc8\3xxxxxx"s;
    CHECK(picture_shape(jpeg) == 2); // 200 x 100 behind another segment
    CHECK(picture_shape("\xff\xd8\xff") == 0);
}

TEST_CASE("base64 (RFC 4648, section 10)") {
    CHECK(publish::base64("").empty());
    CHECK(publish::base64("f") == "Zg==");
    CHECK(publish::base64("fo") == "Zm8=");
    CHECK(publish::base64("foo") == "Zm9v");
    CHECK(publish::base64("foobar") == "Zm9vYmFy");
    CHECK(publish::base64("\xff\xfe\xfd") == "//79");
}

TEST_CASE("balloons of neighbours keep clear of each other and of the points") {
    // Two columns of points 50 px apart and more, on the smallest picture (330 x 248 px).
    std::vector<model::Point> points;
    for (int row = 0; row < 4; ++row) {
        points.push_back({0.3, 0.1 + 0.26 * row});
        points.push_back({0.7, 0.1 + 0.26 * row});
    }
    const auto offsets = publish::balloon_offsets(points, 330.0 / 248);
    REQUIRE(offsets.size() == points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double x = points[i].x * 330 + offsets[i].x;
        const double y = points[i].y * 248 + offsets[i].y;
        CHECK(x > -14);
        CHECK(x < 344);
        for (std::size_t k = 0; k < points.size(); ++k) {
            CHECK(std::hypot(x - points[k].x * 330, y - points[k].y * 248) >= 17);
            const double other_x = points[k].x * 330 + offsets[k].x;
            const double other_y = points[k].y * 248 + offsets[k].y;
            CHECK((i == k || std::hypot(x - other_x, y - other_y) >= 27));
        }
    }
}

TEST_CASE("points off the picture, or none at all, stay on it") {
    Picture picture{"a", "x", {{1, "y", {{-3, 7}, {std::nan(""), 0.5}}}}};
    const std::string text = figure_of(picture, {{{"a", "<svg/>"}}});
    CHECK(has(text, "left:0%;top:100%"));
    CHECK(has(text, "left:0%;top:50%"));
}

TEST_CASE("signal words stand in words; a notice has no alert symbol (ANSI Z535.4, 4.14)") {
    Document document;
    Step step;
    step.number = 4;
    step.anchor = "step-4";
    step.messages = {{Signal::danger, "Charge", "Kills.", 0, {}},
                     {Signal::warning, "Ring", "Flies off.", 2, {}}};
    document.sections.push_back({"Work", {step}});
    std::string page = publish::html(document, {});
    CHECK(has(page, "</svg>DANGER</p>"));
    CHECK(has(page, "<p>Kills.</p>"));
    CHECK(has(page, "Ring: see <a href=\"#step-2\">step 2</a>"));
    CHECK_FALSE(has(page, "Flies off.")); // stands in full in step 2
    document.sections[0].steps[0].messages = {{Signal::notice, "Seal", "Tears.", 0, {}}};
    page = publish::html(document, {});
    CHECK(has(page, "<p class=\"word\">NOTICE</p>"));
    CHECK_FALSE(has(page, "<svg"));
}

TEST_CASE("a sum says when it lacks what has no price") {
    Document document = document_of("x");
    CHECK(has(publish::html(document, {}), ">Together</th>"));
    document.spares.push_back(document.spares.front());
    document.spares.back().price.clear();
    CHECK(has(publish::html(document, {}), ">Together, without what has no price</th>"));
}
