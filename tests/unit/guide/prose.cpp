// Markdown to HTML that can do no harm.
#include "guide/prose.hpp"

#include "support/in_text.hpp"

#include <doctest/doctest.h>
#include <string>

using matchmark::guide::prose_html;
using matchmark::test::has;

namespace {

std::string repeated(const char* part, std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text += part;
    }
    return text;
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos;
         at = text.find(part, at + part.size())) {
        ++count;
    }
    return count;
}

} // namespace

TEST_CASE("usual Markdown is rendered") {
    CHECK(prose_html("Pull *slowly*.") == "<p>Pull <em>slowly</em>.</p>\n");
    CHECK(has(prose_html("- a\n- b"), "<ul>"));
    CHECK(has(prose_html("| a | b |\n| - | - |\n| 1 | 2 |"), "<td>2</td>"));
    CHECK(prose_html("").empty());
}

TEST_CASE("headings stay below those of the page") {
    CHECK(prose_html("# Big") == "<h4>Big</h4>\n");
    CHECK(prose_html("###### Small") == "<h6>Small</h6>\n");
}

TEST_CASE("markup is shown as text and loses nothing") {
    const std::string inline_html = prose_html("a <img src=x onerror=alert(1)> b");
    CHECK(inline_html == "<p>a &lt;img src=x onerror=alert(1)&gt; b</p>\n");
    const std::string block = prose_html("<script>\nalert(1)\n</script>\n\nafter");
    CHECK_FALSE(has(block, "<script"));
    CHECK(has(block, "&lt;script&gt;"));
    CHECK(has(block, "<p>after</p>"));
}

TEST_CASE("links that could run something lead nowhere") {
    CHECK_FALSE(has(prose_html("[x](javascript:alert(1))"), "javascript"));
    CHECK_FALSE(has(prose_html("[x](data:text/html,hi)"), "data:"));
    CHECK(has(prose_html("[x](https://example.org/)"), "href=\"https://example.org/\""));
}

TEST_CASE("a picture in prose becomes its alternative text: nothing is fetched") {
    CHECK(prose_html("see ![the *lid*](http://example.org/a.png)!") ==
          "<p>see the <em>lid</em>!</p>\n");
    CHECK(prose_html("![a ![b](c)](d)") == "<p>a b</p>\n");
}

TEST_CASE("nesting past any use neither crashes nor piles up elements") {
    for (const char* marker : {"- ", "> ", "1. ", "* > "}) {
        CAPTURE(marker);
        const std::string html = prose_html(repeated(marker, 10000) + "end");
        CHECK(has(html, "end"));
        CHECK(count_of(html, "<ul>") + count_of(html, "<ol") + count_of(html, "<blockquote>") <=
              12);
    }
    std::string stairs;
    for (std::size_t depth = 0; depth < 300; ++depth) {
        stairs += repeated("  ", depth) + "- level " + std::to_string(depth) + "\n";
    }
    const std::string html = prose_html(stairs);
    CHECK(has(html, "level 299"));
    CHECK(count_of(html, "<ul>") <= 12);
    CHECK(count_of(html, "<ul>") == count_of(html, "</ul>"));
    CHECK(count_of(html, "<li>") == count_of(html, "</li>"));
}

TEST_CASE("deep emphasis, brackets and broken UTF-8 do not crash") {
    CHECK(has(prose_html(repeated("*a ", 5000)), "a"));
    CHECK(has(prose_html(repeated("[", 20000)), "["));
    CHECK(has(prose_html(repeated("![", 5000) + "x" + repeated("](u)", 5000)), "x"));
    CHECK(has(prose_html("\xff\xfe ok"), "ok"));
}
