// What a reader is told, and where.
#include "plan/reader/guide.hpp"

#include "support/small_device.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using namespace matchmark::support;

namespace {

guide::Document told(const SmallDevice& device) {
    return plan::reader_guide(SourceMap{}, device.model, device.procedure);
}

const guide::Step& step_of(const guide::Document& document, unsigned number) {
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps) {
            if (step.number == number)
                return step;
        }
    }
    REQUIRE(false);
    return document.sections.front().steps.front();
}

bool shows(const guide::Step& step, const std::string& markdown) {
    for (const guide::Message& message : step.messages) {
        if (message.markdown == markdown && message.full_in_step == 0)
            return true;
    }
    return false;
}

} // namespace

TEST_CASE("steps are numbered through the sections, in order") {
    SmallDevice device;
    device.usual_work();
    const guide::Document document = told(device);
    REQUIRE(document.sections.size() == 4);
    CHECK(document.sections[0].title == "Before you start");
    CHECK(document.sections[1].steps.size() == 2);
    CHECK(document.sections[3].steps[1].number == 6);
    CHECK(document.sections[3].steps[1].anchor == "step-6");
    CHECK(document.title == "Replace the cell");
    CHECK(document.device == "field logger");
}

TEST_CASE("a derived step is not called by what it takes back") {
    SmallDevice device;
    device.usual_work();
    const guide::Document document = told(device);
    CHECK(step_of(document, 3).title == "Take the cell out");
    CHECK(step_of(document, 5).title == "Fit the cell");
    CHECK(step_of(document, 6).title == "Close up"); // the author's own
    CHECK(step_of(document, 1).title == "Discharge the cell");
}

TEST_CASE("the time is the sum over the members that move") {
    SmallDevice device;
    device.usual_work();
    // 4 screws x 8 s twice, the lid 2 x 10 s, the cell 4 s and 6 s: 94 s, rounded up to minutes
    CHECK(told(device).time == "at least 2 min");
    for (Kind& kind : device.model.kinds.edit()) {
        for (Verb& one : kind.verbs)
            one.takes.reset();
    }
    CHECK(told(device).time.empty());
}

TEST_CASE("a time that a line states is waited for where its verb waits, and else worked through") {
    SmallDevice device;
    device.usual_work();
    device.procedure.steps[0].actions.edit(0).duration = make_quantity(600, "s");
    CHECK(told(device).time == "at least 12 min");
    CHECK(told(device).waiting.empty());
    for (Kind& kind : device.model.kinds.edit()) {
        for (Verb& one : kind.verbs)
            one.waits = make_quantity(60, "s");
    }
    CHECK(told(device).time == "at least 2 min");
    for (Kind& kind : device.model.kinds.edit()) {
        for (Verb& one : kind.verbs) {
            if (one.name != device.procedure.steps[0].actions[0].verb)
                one.waits.reset();
        }
    }
    CHECK(told(device).waiting == "10 min");
}

TEST_CASE("a hazard is told where it is met, and not once it is safe") {
    SmallDevice device;
    device.usual_work();
    const guide::Document document = told(device);
    CHECK(shows(step_of(document, 1), "A bent cell burns.")); // before it is discharged
    CHECK_FALSE(shows(step_of(document, 3), "A bent cell burns."));
    CHECK(step_of(document, 1).messages.front().subject == "Lithium cell: cell");
    device.procedure.steps.erase(device.procedure.steps.begin());
    const guide::Document unprepared = told(device);
    CHECK_FALSE(shows(step_of(unprepared, 1), "A bent cell burns."));
    CHECK(shows(step_of(unprepared, 2), "A bent cell burns."));
}

TEST_CASE("a caution stands where its condition comes about") {
    SmallDevice device;
    device.usual_work();
    const guide::Document document = told(device);
    CHECK(shows(step_of(document, 2), "The ribbon is short.")); // the lid opens
    CHECK_FALSE(shows(step_of(document, 3), "The ribbon is short."));
    CHECK_FALSE(shows(step_of(document, 6), "The ribbon is short."));
}

TEST_CASE("a kind's message stands once in each section; a long one of an item by its subject") {
    SmallDevice device;
    device.usual_work();
    const std::string of_kind = "Kind message.";
    const std::string of_item(200, 'x');
    device.model.kinds.edit(device.model.item(device.screws).kind.value).messages = {
        prose(ProseKind::notice, of_kind.c_str())};
    device.model.items.edit(device.screws.value).messages = {
        prose(ProseKind::warning, of_item.c_str())};
    device.step(Section::put_back, "again", "Again", {device.act(device.screws, 1)});
    const guide::Document document = told(device);
    CHECK(shows(step_of(document, 2), of_kind));
    CHECK(shows(step_of(document, 6), of_kind)); // another section
    CHECK_FALSE(shows(step_of(document, 7), of_kind));
    CHECK(shows(step_of(document, 6), of_item));
    REQUIRE(step_of(document, 7).messages.size() == 1);
    CHECK(step_of(document, 7).messages[0].full_in_step == 6);
}

TEST_CASE("a note of an item stands above the actions, once in a section") {
    SmallDevice device;
    device.usual_work();
    device.model.items.edit(device.screws.value).messages = {
        prose(ProseKind::note, "Two are long.")};
    const guide::Document document = told(device);
    REQUIRE(step_of(document, 2).passages.size() == 1);
    CHECK(guide::passages_after(step_of(document, 2), 0).size() == 1);
    CHECK_FALSE(step_of(document, 2).instructions.empty());
}

TEST_CASE("safety first gathers every message once, the gravest first") {
    SmallDevice device;
    device.usual_work();
    device.model.guides.edit(0).prose = {prose(ProseKind::notice, "Mind the seal."),
                                         prose(ProseKind::text, "About.")};
    device.procedure.steps[2].prose = {prose(ProseKind::warning, "Sharp."),
                                       prose(ProseKind::note, "Easy.")};
    const guide::Document document = told(device);
    REQUIRE(document.safety.size() == 4);
    CHECK(document.safety[0].message.signal == guide::Signal::danger);
    CHECK(document.safety[0].steps == std::vector<unsigned>{1});
    CHECK(document.safety[1].message.markdown == "Sharp.");
    CHECK(document.safety[1].steps == std::vector<unsigned>{3});
    CHECK(document.safety[2].message.markdown == "The ribbon is short.");
    CHECK(document.safety[3].message.markdown == "Mind the seal.");
    CHECK(document.safety[3].steps.empty());
    REQUIRE(document.passages.size() == 1);
    CHECK(document.passages[0].markdown == "About.");
    CHECK(step_of(document, 3).passages[0].kind == guide::PassageKind::note);
}

TEST_CASE("what is needed, what it costs, and what is thrown away") {
    SmallDevice device;
    device.usual_work();
    device.resource(ResourceSort::supply, "seal", "seal tape");
    device.procedure.resources.back().quantities = {*make_quantity(40, "cm"),
                                                    *make_quantity(1.2, "EUR")};
    device.resource(ResourceSort::supply, "grease", "grease");
    device.procedure.resources.back().quantities = {*make_quantity(3, "CHF")};
    const guide::Document document = told(device);
    REQUIRE(document.tools.size() == 1);
    CHECK(document.tools[0].words == "Hexalobular driver 6");
    REQUIRE(document.spares.size() == 1);
    CHECK(document.spares[0].amount == "1");
    CHECK(document.spares[0].price == "14.50 EUR");
    CHECK(document.supplies[0].amount == "40 cm");
    CHECK(document.cost == std::vector<std::string>{"15.70 EUR", "3 CHF"});
    REQUIRE(document.fasteners.size() == 1);
    CHECK(document.fasteners[0].words == "4 lid screws");
    CHECK(document.fasteners[0].description == "M2 x 6");
    CHECK(document.fasteners[0].torque == "0.2 N·m, star pattern, 3 passes");
    REQUIRE(document.disposals.size() == 1);
    CHECK(document.disposals[0].words == "Cell");
    CHECK(document.disposals[0].waste_class == "old cells");
}

TEST_CASE("a test says in what state, with what, and what it proves") {
    SmallDevice device;
    device.usual_work();
    Step& test = device.step(Section::put_back, "on", "It starts", {});
    test.is_test = true;
    test.when = {{{device.lid, {}, {}}, 0, {}}};
    test.with = {ResourceId{0}};
    const guide::Document document = told(device);
    const guide::Step& step = step_of(document, 7);
    CHECK(step.is_test);
    CHECK(step.test.when == std::vector<std::string>{"the display lid shut"});
    CHECK(step.test.with == std::vector<std::string>{"hexalobular driver 6"});
    CHECK(step.test.proves == std::vector<std::string>{"the cell"}); // what the guide renews
}

TEST_CASE("what is for some variants alone says so") {
    SmallDevice device;
    device.usual_work();
    device.model.device.variants = {"eu", "us"};
    device.model.items.edit(device.cell.value).variants = 1;
    const guide::Document document = told(device);
    const std::vector<std::string> eu{"eu"};
    CHECK(step_of(document, 3).instructions[0].variants == eu);
    CHECK(step_of(document, 2).instructions[0].variants.empty());
    CHECK(document.variants.empty());
    device.model.guides.edit(0).variants = 1;
    CHECK(told(device).variants == eu);
    CHECK(step_of(told(device), 3).instructions[0].variants.empty()); // the guide is for no other
    device.procedure.steps[2].variants = 2;
    CHECK(step_of(told(device), 3).title == "Take the new cell"); // no step of this guide any more
}

TEST_CASE("a thing has one number on all pictures, and the sentences give it") {
    SmallDevice device;
    device.usual_work();
    Photo lid;
    lid.path = "a.svg";
    lid.marks.push_back({{device.lid, {}, {}}, {{0.5, 0.5}}, {}});
    Photo both = lid;
    both.path = "b.svg";
    both.marks.insert(both.marks.begin(), {{device.screws, {}, {}}, {{0.1, 0.1}}, {}});
    device.procedure.steps[1].photos = {lid};
    device.procedure.steps[5].photos = {both};
    const guide::Document document = told(device);
    CHECK(step_of(document, 2).pictures[0].marks[0].number == 1);
    CHECK(step_of(document, 6).pictures[0].marks[0].number == 2);
    CHECK(step_of(document, 6).pictures[0].marks[0].words == "4 lid screws");
    CHECK(step_of(document, 6).pictures[0].marks[1].number == 1);
    CHECK(guide::picture_paths(document) == std::vector<std::string>{"a.svg", "b.svg"});
}

TEST_CASE("readers are told who may do the work") {
    SmallDevice device;
    device.usual_work();
    device.model.guides.edit(0).reader = ReaderLevel::licensed;
    device.model.guides.edit(0).trade = "gas fitter";
    CHECK(told(device).reader.find("Only for a licensed gas fitter.") == 0);
    CHECK(told(device).deferral.find("maker") != std::string::npos);
}
