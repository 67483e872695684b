// A drawing from another's guide may show, and may not fetch, link or run.
#include "publish/markup_tree.hpp"

#include <doctest/doctest.h>

#include <string>

using matchmark::publish::harmless_svg;

namespace {

std::string cleaned(const std::string& inside) {
    return harmless_svg("<svg xmlns=\"http://www.w3.org/2000/svg\">" + inside + "</svg>");
}

bool keeps(const std::string& inside, const char* what) {
    return cleaned(inside).find(what) != std::string::npos;
}

} // namespace

TEST_CASE("a drawing keeps its shapes and its links within itself") {
    CHECK(keeps("<circle r=\"3\"/>", "<circle r=\"3\"/>"));
    CHECK(keeps("<use href=\"#lid\"/>", "href=\"#lid\""));
    CHECK(keeps("<g xmlns:xlink=\"http://www.w3.org/1999/xlink\"><use xlink:href=\"#lid\"/></g>",
                "xlink:href=\"#lid\""));
}

TEST_CASE("a drawing loses what leads out of it") {
    CHECK_FALSE(keeps("<use href=\"https://somewhere.example/a.svg#b\"/>", "somewhere"));
    CHECK_FALSE(keeps("<rect style=\"fill:url(https://somewhere.example/)\"/>", "somewhere"));
    CHECK_FALSE(keeps("<script>alert(1)</script>", "alert"));
    CHECK_FALSE(keeps("<g onclick=\"alert(1)\"/>", "alert"));
}

TEST_CASE("a prefix that the drawing does not declare means nothing in it, and a link in a page") {
    CHECK_FALSE(keeps("<a xlink:href=\"https://somewhere.example/\"><text>x</text></a>", "some"));
    const std::string without =
        harmless_svg("<svg><feX:script/><a xlink:href=\"https://somewhere.example/\"/></svg>");
    CHECK(without.find("somewhere") == std::string::npos);
    CHECK(without.find("feX") == std::string::npos);
    CHECK(harmless_svg(without) == without);
}
