// The bench sheet: a box for each action, a place for each value, nothing that runs.
#include "publish/sheet.hpp"

#include "publish/sheet_lines.hpp"
#include "support/in_text.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::count;
using namespace matchmark::guide;

namespace {

Document two_actions() {
    Document document;
    document.title = "Close up";
    Step step;
    step.number = 1;
    step.title = "Close";
    step.messages.push_back({Signal::warning, "Spring", "It *flies* off.", 0, {}});
    Instruction shut;
    shut.words = {{RunKind::words, "Shut the lid."}};
    Instruction fasten;
    fasten.words = {{RunKind::words, "Fasten 4 screws to "}, {RunKind::value, "0.2 N\u00b7m"}};
    step.instructions = {shut, fasten};
    document.sections.push_back({"Put back", {step}});
    return document;
}

} // namespace

TEST_CASE("each action has a box; each value a place to write; each caution stands before") {
    Document document = two_actions();
    std::string page = publish::sheet_html(document);
    CHECK(count(page, "type=\"checkbox\"") == 2);
    CHECK(count(page, "class=\"write\"") == 1);
    CHECK(page.find("It flies off.") < page.find("Shut the lid."));
    CHECK(count(page, "<label>Serial number<input></label>") == 1);
    CHECK(count(page, "<script") == 0);
    document.sections[0].steps[0].instructions[0].record = "gap, at most 1 mm";
    page = publish::sheet_html(document);
    CHECK(count(page, "class=\"write\"") == 2);
    CHECK(count(page, ">gap, at most 1 mm<input>") == 1);
}

TEST_CASE("what a thing has to be told by the way stands above the acts; what its author explains "
          "does not") {
    Document document = two_actions();
    Step& step = document.sections[0].steps[0];
    step.passages = {{PassageKind::note, "Only who hung a *lock* takes it off.", 0, true},
                     {PassageKind::note, "The lid is old.", 0},
                     {PassageKind::text, "The lid is blue.", 0, true}};
    CHECK(publish::notes_of(step) ==
          std::vector<std::string>{"Note: Only who hung a lock takes it off."});
    const std::string page = publish::sheet_html(document);
    CHECK(page.find("Note: Only who hung a lock takes it off.") < page.find("Shut the lid."));
    CHECK(count(page, "The lid is") == 0);
}

TEST_CASE("what is to be worn stands above the first action, in both forms") {
    Document document = two_actions();
    CHECK(publish::gear_line(document).empty());
    CHECK(count(publish::sheet_html(document), "To wear") == 0);
    document.protection = {{"Eye protection", "", "", "", {}, {}}, {"Gloves", "", "", "", {}, {}}};
    CHECK(publish::gear_line(document) == "To wear: Eye protection; Gloves");
    const std::string page = publish::sheet_html(document);
    CHECK(page.find("To wear: Eye protection; Gloves") < page.find("Shut the lid."));
}

TEST_CASE("a value without a figure asks for nothing to be written") {
    Instruction one;
    one.words = {{RunKind::value, "battery waste"}};
    CHECK_FALSE(publish::writing_for(one).wanted);
    one.words = {{RunKind::value, "below 60 V"}};
    CHECK(publish::writing_for(one).wanted);
    CHECK(publish::writing_for(one).what.empty());
}

TEST_CASE("a test that has no action of its own is ticked as passed") {
    Document document = two_actions();
    Step test;
    test.number = 2;
    test.title = "It shuts";
    test.is_test = true;
    test.test = {{"the lid shut"}, {"the lid"}, {"a gauge"}};
    document.sections[0].steps.push_back(test);
    const std::string page = publish::sheet_html(document);
    CHECK(count(page, "type=\"checkbox\"") == 3);
    CHECK(count(page, "Passed. With the lid shut. Test equipment: a gauge. Proves: the lid.") == 1);
}

TEST_CASE("a message that stands in full elsewhere says where") {
    CHECK(publish::message_text({Signal::caution, "x", "long", 3, {}}) == "See step 3.");
    CHECK(publish::message_text({Signal::caution, "x", "a **b**\n\n- c", 0, {}}) == "a b c");
}
