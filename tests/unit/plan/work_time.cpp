// What acts take: by a timing, by the kind where the timing does not know the verb; tools taken up,
// the device turned, the way back.
#include "plan/work_time.hpp"

#include "drive/compilation.hpp"
#include "plan/way_in/way_in.hpp"
#include "support/in_text.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using matchmark::test::has;
using test::Desk;

namespace {

// Two screws on each side, with one driver; the catch has a time of its own alone.
constexpr const char* box = R"(kind catch "catch" is fastener
  states     shut, open
  release    shut -> open by hook takes 7 s
  close      open -> shut by hand takes 5 s

timing bench "Our bench"
  tool-change 3 s
  identify   0.5 s
  handle     1 s
  position   0.25 s
  set-aside  2 s
  turn       10 s
  act        undo screw 4 s
  act        fasten screw 6 s
  act        remove plain-part 1 s
  usual

device box "Box"

face top 60 x 60 mm
face bottom 60 x 60 mm

part body "body"
part lid "lid"
fastener top-screws "top screw" 2 x screw M3 x 8, hexalobular 10
  holds      lid to body
  at         top
fastener lid-catch "catch" kind catch
  holds      lid to body
  at         top
fastener bottom-screws "bottom screw" 2 x screw M3 x 8, hexalobular 10
  holds      lid to body
  at         bottom
)";

model::Model model_of(const std::string& text) {
    MapDisk disk;
    drive::Compilation done = drive::compile(disk, "box.mmk", &text);
    REQUIRE_FALSE(any_error(done.findings));
    return std::move(done.model);
}

plan::WayIn way_to(const model::Model& model, const char* name) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == name)
            return plan::way_in({&model, 0}, {{model::ItemId{i}}});
    }
    return {};
}

const plan::PlannedAct& act_on(const model::Model& model, const plan::WayIn& way,
                               const char* name) {
    for (const plan::PlannedAct& planned : way.acts) {
        if (model.item(planned.act.item).name == name)
            return planned;
    }
    FAIL("no act on ", name);
    return way.acts.front();
}

} // namespace

TEST_CASE("an act that the timing knows is made of its tasks") {
    const model::Model model = model_of(box);
    const plan::WayIn way = way_to(model, "lid");
    const plan::ActTime& time = act_on(model, way, "top-screws").time;
    CHECK_FALSE(time.by_kind);
    CHECK(time.alone() == doctest::Approx(0.5 + 1 + 2 * (0.25 + 4 + 2)));
    // By hand: nothing is set on it.
    CHECK(act_on(model, way, "lid").time.alone() == doctest::Approx(0.5 + 1 + 1 + 2));
}

TEST_CASE("of an act that the timing does not know, the kind says it all but the tool") {
    const model::Model model = model_of(box);
    const plan::WayIn way = way_to(model, "lid");
    const plan::ActTime& time = act_on(model, way, "lid-catch").time;
    CHECK(time.by_kind);
    CHECK(time.alone() == doctest::Approx(7));
    CHECK(time.labour() == doctest::Approx(7 + 3));
}

TEST_CASE("with one driver in hand both sides are done, and the device is turned once") {
    const model::Model model = model_of(box);
    const plan::WayIn way = way_to(model, "lid");
    CHECK(way.tool_changes == 2);
    CHECK(way.turnings == 1);
    CHECK(way.turnings_at_least == 1);
    CHECK(way.labour_seconds == doctest::Approx(way.seconds + 2 * 3 + 10));
}

TEST_CASE("the way back is by the inverse verbs") {
    const model::Model model = model_of(box);
    const plan::WayIn way = way_to(model, "lid");
    // The lid as its kind says, the catch by hand, four screws in two lines, the driver once, one
    // turning.
    const double screws = 2 * (0.5 + 1 + 2 * (0.25 + 6 + 2));
    CHECK(way.back_seconds == doctest::Approx(4 + 5 + screws + 3 + 10));
}

TEST_CASE("without any timing the kinds' own times are what is left") {
    model::Model model = model_of(box);
    model.timings.edit().clear();
    const plan::WayIn way = way_to(model, "lid");
    CHECK(way.seconds == doctest::Approx(4 * 8 + 7 + 4));
    CHECK(way.labour_seconds == doctest::Approx(way.seconds));
}

TEST_CASE("the last timing that is usual counts, and another can be named") {
    model::Model model = model_of(box);
    REQUIRE(plan::usual_timing(model) != nullptr);
    CHECK(plan::usual_timing(model)->name == "bench");
    CHECK_FALSE(plan::use_timing(model, "no-such"));
    CHECK(plan::usual_timing(model)->name == "bench");
    REQUIRE(plan::use_timing(model, "handbook"));
    CHECK(act_on(model, way_to(model, "lid"), "top-screws").time.alone() ==
          doctest::Approx(2 * (8.0 + 1.4)));
}

TEST_CASE("plan shows of what each act's time is made") {
    Desk desk;
    desk.disk.files["box.mmk"] = box;
    REQUIRE(desk.run({"plan", "box.mmk", "--reach", "lid", "--times"}) == 0);
    CHECK(has(desk.out, "identify handle    n position"));
    CHECK(has(desk.out, "* all that its kind says it takes"));
    CHECK(has(desk.out, "Times by `bench`."));
    CHECK(has(desk.out, "Turnings of the device: 1, the fewest of these orders: proved."));
    REQUIRE(desk.run({"plan", "box.mmk", "--reach", "lid", "--json", "--timing", "handbook"}) == 0);
    CHECK(has(desk.out, "\"timing\": \"handbook\""));
    CHECK(has(desk.out, "\"turnings\": 1"));
    CHECK(desk.run({"plan", "box.mmk", "--reach", "lid", "--timing", "handbok"}) == 2);
    CHECK(has(desk.err, "there is no timing `handbok`; did you mean `handbook`?"));
}

TEST_CASE("a timing can be looked up") {
    Desk desk;
    REQUIRE(desk.run({"kinds", "handbook"}) == 0);
    CHECK(has(desk.out, "timing handbook"));
    CHECK(has(desk.out, "tool-change"));
}

TEST_CASE("what waits one right after the other waits side by side, and stages are added") {
    plan::WorkHand hand;
    const ItemId boiler{0};
    const ItemId lamp{1};
    CHECK(hand.wait(boiler, 3600) == 3600);
    CHECK(hand.wait(lamp, 1800) == 0);
    CHECK(hand.wait(lamp, 2400) == 600); // its second stage ends after the boiler is cold
    CHECK(hand.wait(boiler, 0) == 0);    // somebody works in between
    CHECK(hand.wait(lamp, 1800) == 1800);
}
