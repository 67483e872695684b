// How a difference is shown: what of two long texts is not the same, and nothing that could disturb
// a screen or a page.
#include "compare/report.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark::compare;

namespace {

Report hostile() {
    Change change;
    change.sort = Sort::text_changed;
    change.subject = "open";
    change.what = "<script>alert(1)</script>\x1b[31m";
    change.before = "a \"quoted\" <b>old</b> text";
    change.after = "a \"quoted\" <img src=x onerror=alert(2)> text";
    change.steps = {{3, "open", "Open & shut", false}};
    change.with_it = {"<i>more</i>"};
    Difference difference{"guide", "Title </title><script>", {change}, {}};
    return {"old<.mmk", "new&.mmk", {"<remark>"}, {difference}};
}

} // namespace

TEST_CASE("an excerpt keeps a few words on either side") {
    const Excerpt cut = excerpt("one two three four five six seven eight nine ten eleven twelve",
                                "one two three four five six SEVEN eight nine ten eleven twelve");
    CHECK(cut.before == "…three four five six seven eight nine ten eleven…");
    CHECK(cut.after == "…three four five six SEVEN eight nine ten eleven…");
}

TEST_CASE("an excerpt of short texts is all of them") {
    CHECK(excerpt("0.2 N·m", "0.3 N·m").before == "0.2 N·m");
    CHECK(excerpt("", "new").before.empty());
    CHECK(excerpt("a a", "a").after == "a");
}

TEST_CASE("a page holds what came from a file as text alone") {
    const std::string page = to_html(hostile());
    CHECK(page.find("<script") == std::string::npos);
    CHECK(page.find("<img") == std::string::npos);
    CHECK(page.find("<i>") == std::string::npos);
    CHECK(page.find('\x1b') == std::string::npos);
    CHECK(page.find("default-src 'none'") != std::string::npos);
    CHECK(page.find("&lt;script&gt;") != std::string::npos);
}

TEST_CASE("a terminal gets no control characters") {
    const std::string text = to_text(hostile());
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find("step 3 “Open & shut”") != std::string::npos);
}

TEST_CASE("JSON says whether anything changed, and whether it touches safety") {
    Report report = hostile();
    nlohmann::json object = nlohmann::json::parse(to_json(report));
    CHECK(object["changed"] == true);
    CHECK(object["safety"] == false);
    CHECK(object["guides"][0]["changes"][0]["sort"] == "text-changed");
    report.differences[0].changes[0].safety = true;
    CHECK(nlohmann::json::parse(to_json(report))["safety"] == true);
    report.differences[0].changes.clear();
    object = nlohmann::json::parse(to_json(report));
    CHECK(object["changed"] == false);
    CHECK(to_text(report).find("no change in the procedure") != std::string::npos);
}

TEST_CASE("what touches safety stands first, an order that does not matter last") {
    Change order;
    order.sort = Sort::action_moved;
    order.what = "moved";
    order.matters = false;
    Change grave;
    grave.sort = Sort::torque_changed;
    grave.what = "torque of the screws";
    grave.safety = true;
    Change plain;
    plain.sort = Sort::tool_changed;
    plain.what = "tool";
    const Report report{"a", "b", {}, {{"g", "", {order, plain, grave}, {}}}};
    const std::string text = to_text(report);
    CHECK(text.find("3 changes, 1 of safety") != std::string::npos);
    CHECK(text.find("! Torque of the screws") != std::string::npos); // not "Torque: torque of"
    CHECK(text.find("! Torque") < text.find("- Tool"));
    CHECK(text.find("- Tool") < text.find("either order works"));
}

TEST_CASE("a page sets names of the source in code, also where one is cut off") {
    Report report = hostile();
    report.differences[0].changes[0].what = "item `lid-<b>` is new, `half";
    const std::string page = to_html(report);
    CHECK(page.find("item <code>lid-&lt;b&gt;</code> is new, `half") != std::string::npos);
}
