// Each sort of change of what warns, proves, is needed or is said, made in the text of a sample:
// named by one entry, with its subject, its step and whether it touches safety.
#include "compare/two_states.hpp"

#include <doctest/doctest.h>

using namespace matchmark::test;

namespace {

// What warns, and what is worn and proved.
std::vector<Case> safety_cases() {
    return {
        {"a caution of the device dropped", "logger", cell,
         one(logger,
             "caution ribbon-strain on lid-ribbon when lid open\n  The ribbon is 40 mm long. Stand "
             "the lid on its lower edge, against a block.\n",
             ""),
         "message-dropped", "Display ribbon", "open", true},
        {"a warning of the head dropped", "logger", cell,
         one(cell,
             "  warning: A swollen cell can burst into flame. Give a swollen cell to a trained "
             "person.\n",
             ""),
         "message-dropped", "replace-cell", "", true},
        {"a notice dropped", "logger", cell,
         one(cell, "  notice: The aerial lies behind the left wall. A deep cut breaks it.\n", ""),
         "message-dropped", "open", "open"},
        {"a warning added", "heater", valve,
         one(valve, "step valve-out \"Take the valve out\"\n",
             "step valve-out \"Take the valve out\"\n  warning: Gas left in the pipe can burn. "
             "Open a window.\n"),
         "message-added", "valve-out", "valve-out", true},
        {"a lower signal word", "logger", cell,
         one(cell, "  warning: A swollen", "  notice: A swollen"), "message-changed",
         "replace-cell", "", true},
        {"a caution put otherwise", "press", blade,
         one(blade, "The blades can cut deep. Keep", "The blades cut. Keep"), "message-changed",
         "cutter", "cutter", true},
        {"a caution moved to a later step",
         "press",
         blade,
         {{blade, "  caution: The blades can cut deep. Keep the blade guard closed.\n", ""},
          {blade, "step blade \"Take the blade off\"\n",
           "step blade \"Take the blade off\"\n  caution: The blades can cut deep. Keep the blade "
           "guard closed.\n"}},
         "message-moved",
         "blade",
         "blade",
         true},
        {"a message of an item", "gearbox", seal,
         one("gearbox.mmk", "The motor weighs 38 kg", "The motor weighs 42 kg"), "message-changed",
         "Drive motor", "motor-back", true},
        {"a caution of a kind dropped", "drill", brushes,
         one("kinds.mmk",
             "  caution: The spring can fly into an eye. Wear eye protection, and guide the spring "
             "with the hook.\n",
             ""),
         "message-dropped", "Brush spring", "brushes-out", true},
        {"a test dropped", "logger", cell,
         one(cell,
             "test power-on \"It starts, and the clock is kept\"\n  when       cell-plug "
             "connected, "
             "shield out, lid open\n  proves     cell, running\n",
             ""),
         "test-dropped", "power-on", "power-on", true},
        {"a test added", "heater", valve,
         one(valve, "test flame \"",
             "test spark \"The igniter sparks\"\n  when       igniter-plug connected, cover out\n  "
             "proves     flame-guard\ntest flame \""),
         "test-added", "spark", "spark", true},
        {"a test's condition", "logger", cell,
         one(cell, "cell-plug connected, shield out, lid open", "cell-plug connected, lid open"),
         "test-changed", "power-on", "power-on", true},
        {"what a test proves", "heater", valve,
         one(valve, "proves     gas-tight, valve", "proves     gas-tight"), "test-changed",
         "tightness", "tightness", true},
        {"how long a test lasts", "logger", cell,
         one(cell, "Vacuum of 5 kPa held for 30 s", "Vacuum of 5 kPa held for 10 s"),
         "test-changed", "leak", "leak", true},
        {"for whom the guide is", "logger", cell,
         one(cell, "  for        competent\n", "  for        novice\n"), "reader-changed",
         "replace-cell", "", true},
    };
}

// What the reader has to have, and what the guide says.
std::vector<Case> need_cases() {
    return {
        {"a tool added", "logger", cell,
         one(cell, "  tool       leak-tester",
             "  tool       tweezers \"tweezers\"\n  tool       leak-tester"),
         "tool-added", "tweezers", ""},
        {"a tool dropped",
         "logger",
         cell,
         {{cell, "  tool       leak-tester \"vacuum leak tester\"\n", ""},
          {cell, "  with       leak-tester\n", ""}},
         "tool-dropped",
         "leak-tester",
         "leak"},
        {"another tool on the list", "logger", cell,
         one(cell, "\"hexalobular driver 6\"", "\"hexalobular driver 6, long\""), "tool-changed",
         "driver-6", "open"},
        {"a price", "logger", cell, one(cell, "14.50 EUR", "16.00 EUR"), "price-changed",
         "cell-new", "renew"},
        {"an amount", "logger", cell, one(cell, "45 cm", "50 cm"), "amount-changed", "seal-new",
         "open"},
        {"a supply dropped", "logger", cell,
         one(cell,
             "  supply     strips-new \"stretch-release strips\", 2, 1.10 EUR for cell-strips\n",
             ""),
         "supply-dropped", "strips-new", "cell-out"},
        {"another spare", "logger", cell, one(cell, "\"cell, 3000 mAh\"", "\"cell, 3200 mAh\""),
         "spare-changed", "cell-new", "renew", true},
        {"what a step says", "logger", cell,
         one(cell, "Fold the plug back. Keep it clear of the board.", "Fold the plug back."),
         "text-changed", "isolate", "isolate"},
        {"the title of a step", "logger", cell,
         one(cell, "\"Isolate the cell\"", "\"Unplug the cell\""), "step-retitled", "isolate",
         "isolate"},
        {"a mark on a picture", "logger", cell,
         one(cell, "mark     lid-screws 0.2,0.1", "mark     lid-screws 0.25,0.1"),
         "picture-changed", "open", "open"},
        {"a step added", "logger", cell,
         one(cell, "put-back\n",
             "step clean \"Clean the seat\"\n  text: Wipe the seat of the cell dry.\n\nput-back\n"),
         "step-added", "clean", "clean"},
        {"a step dropped", "logger", cell,
         one(cell,
             "step isolate \"Isolate the cell\"\n  disconnect cell-plug\n  text: Fold the plug "
             "back. "
             "Keep it clear of the board.\n",
             ""),
         "step-dropped", "isolate", "isolate", true},
        {"the text of a shared procedure", "press", blade,
         one("open-case.mmk", "Lift the cover\n    straight up.", "Lift the cover off."),
         "text-changed", "top", "top"},
        {"the title of the guide", "logger", cell,
         one(cell, "\"Replace the cell\"", "\"Renew the cell\""), "title-changed", "replace-cell",
         ""},
        {"the goal", "heater", valve,
         one(valve, "goal       replace valve with valve-new",
             "goal       replace burner with valve-new"),
         "goal-changed", "renew-valve", ""},
        {"the variants that it is for", "logger", cell,
         one(cell, "  for        competent\n", "  for        competent\n  only       eu\n"),
         "variants-changed", "replace-cell", ""},
    };
}

// What the device says, where the reader of this guide meets it.
std::vector<Case> fact_cases() {
    return {
        {"longer screws", "logger", cell,
         one(logger, "4 x screw M2 x 6, hexalobular 6, countersunk",
             "4 x screw M2 x 8, hexalobular 6, countersunk"),
         "fact-changed", "lid-screws", "open"},
        {"more screws", "heater", valve, one(heater, "\"cover screw\" 4 x", "\"cover screw\" 6 x"),
         "fact-changed", "cover-screws", "cover-off"},
        {"told by another sign", "drill", brushes,
         one("drill.mmk", "the plain 22 mm shank", "the plain 24 mm shank"), "fact-changed",
         "long-screws", "open"},
        {"a seal that may be used again", "logger", cell,
         one(logger, "\"lid seal\" kind seal-tape\n",
             "\"lid seal\" kind seal-tape\n  used again\n"),
         "fact-changed", "lid-seal", "open", true},
        {"another name for the reader", "logger", cell,
         one(logger, "shield \"connector shield\"", "shield \"connector cover\""), "fact-changed",
         "shield", "shield-off"},
    };
}

} // namespace

TEST_CASE("what warns and what proves") { CHECK(check_all(safety_cases()) >= 15); }
TEST_CASE("what is needed and what is said") { CHECK(check_all(need_cases()) >= 16); }
TEST_CASE("facts of the device that the reader meets") { CHECK(check_all(fact_cases()) >= 5); }
