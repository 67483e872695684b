// Steps as Commission Decision (EU) 2016/1371 counts them, and the order with the fewest.
#include "appraise/steps.hpp"
#include "drive/compilation.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <string>
#include <vector>

using namespace matchmark;
using appraise::OrderedAct;
using appraise::StepEnd;

namespace {

// Two lids over one chamber, screws of two drives, a glued window, a supply from outside.
constexpr const char* box_text = R"(device box "Box"

part body "body"
part upper "upper lid"
part lower "lower lid"
part inner "inner plate"
  behind     lower
part window "window"
fastener upper-screws "upper screw" 2 x screw M2 x 6, hexalobular 6
  holds      upper to body
fastener lower-screws "lower screw" 2 x screw M1.6 x 4, cross-recess 0
  holds      lower to body
fastener inner-screw "inner screw" 1 x screw M2 x 4, hexalobular 6
  holds      inner to body
  behind     upper
connector plug kind press-fit-plug
  joins      inner to body
  behind     upper
bond window-glue "window glue" kind gasket-adhesive
  joins      window to body
energy mains "mains" kind mains-cord
  feeds      inner
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  feeds      inner through plug
)";

struct Named {
    const char* verb;
    const char* item;
    const char* tool;
};

struct Box {
    drive::Compilation done;
    bench::Bench bench;

    Box() {
        MapDisk disk;
        disk.files["box.mmk"] = box_text;
        done = drive::compile(disk, "box.mmk");
        REQUIRE_FALSE(any_error(done.findings));
        bench = {&done.model, 0};
    }

    [[nodiscard]] std::vector<OrderedAct> acts(const std::vector<Named>& named) const {
        std::vector<OrderedAct> result;
        bench::State state = bench::assembled(bench);
        for (const Named& one : named) {
            const auto& items = done.model.items;
            const auto found = std::find_if(items.begin(), items.end(), [&](const auto& item) {
                return item.name == one.item;
            });
            REQUIRE(found != items.end());
            const model::ItemId id{static_cast<std::uint32_t>(found - items.begin())};
            const model::Kind& kind = done.model.kind_of(id);
            const model::Verb* verb = model::find_verb(kind, one.verb);
            REQUIRE(verb != nullptr);
            OrderedAct act;
            act.act.item = id;
            act.act.verb = static_cast<std::uint16_t>(verb - kind.verbs.data());
            act.from = bench::state_of(bench, state, id, 0, kind.set_of[verb->to]);
            act.tool = one.tool;
            CHECK_FALSE(bench::apply(bench, state, act.act).has_value());
            result.push_back(act);
        }
        return result;
    }

    [[nodiscard]] std::vector<StepEnd> ends(const std::vector<Named>& named) const {
        std::vector<StepEnd> result;
        for (const auto& step : appraise::count_steps(done.model, acts(named)))
            result.push_back(step.end);
        return result;
    }
};

constexpr const char* six = "hexalobular driver 6";
constexpr const char* cross = "cross-recess driver 0";

} // namespace

TEST_CASE("a fastener ends no step, and a part that comes off does") {
    const Box box;
    CHECK(box.ends({{"undo", "upper-screws", six}, {"remove", "upper", ""}}) ==
          std::vector{StepEnd::part_off});
}

TEST_CASE("another tool ends the step that is open, and costs nothing right behind an end") {
    const Box box;
    CHECK(box.ends({{"undo", "upper-screws", six}, {"undo", "lower-screws", cross}}) ==
          std::vector{StepEnd::tool_changed, StepEnd::at_last});
    CHECK(box.ends({{"undo", "upper-screws", six},
                    {"remove", "upper", ""},
                    {"undo", "lower-screws", cross},
                    {"remove", "lower", ""}}) == std::vector{StepEnd::part_off, StepEnd::part_off});
}

TEST_CASE("to lay a tool down and take it up again is no change of tool") {
    const Box box;
    CHECK(box.ends({{"unplug", "mains", ""},
                    {"undo", "upper-screws", six},
                    {"remove", "upper", ""},
                    {"undo", "inner-screw", six}}) ==
          std::vector{StepEnd::supply, StepEnd::part_off, StepEnd::at_last});
}

TEST_CASE("to heat a bond and to part it are steps of their own") {
    const Box box;
    CHECK(box.ends({{"soften", "window-glue", "heat mat"},
                    {"separate", "window-glue", "pick"},
                    {"remove", "window", ""}}) ==
          std::vector{StepEnd::bond, StepEnd::bond, StepEnd::part_off});
}

TEST_CASE("what makes safe from outside beforehand is no step") {
    const Box box;
    CHECK(box.ends({{"discharge", "cell", ""}, {"remove", "cell", ""}}) ==
          std::vector{StepEnd::part_off});
}

TEST_CASE("the order with the fewest steps is found among orders with as many changes of tool") {
    const Box box;
    // With one driver as far as it goes, the inner screw is undone long before its plate is free.
    const auto given = box.acts({{"unplug", "mains", ""},
                                 {"discharge", "cell", ""},
                                 {"undo", "upper-screws", six},
                                 {"remove", "upper", ""},
                                 {"disconnect", "plug", ""},
                                 {"undo", "inner-screw", six},
                                 {"undo", "lower-screws", cross},
                                 {"remove", "lower", ""},
                                 {"remove", "inner", ""}});
    CHECK(appraise::count_steps(box.done.model, given).size() == 5);
    const auto fewest = appraise::fewest_steps(box.bench, given);
    CHECK(fewest.steps.size() == 4);
    CHECK(fewest.proved);
    bench::State state = bench::assembled(box.bench);
    for (const OrderedAct& act : fewest.order)
        CHECK_FALSE(bench::apply(box.bench, state, act.act).has_value());
    CHECK(fewest.order.size() == given.size());
}

TEST_CASE("an order that cannot be bettered stays as it is") {
    const Box box;
    const auto given = box.acts({{"undo", "lower-screws", cross}, {"remove", "lower", ""}});
    const auto fewest = appraise::fewest_steps(box.bench, given);
    CHECK(fewest.proved);
    CHECK(fewest.order.front().act == given.front().act);
    CHECK(appraise::fewest_steps(box.bench, {}).steps.empty());
}
