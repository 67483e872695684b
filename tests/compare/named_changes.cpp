// Each sort of change of the work, made in the text of a sample: named by one entry, with its
// subject, its step and whether it touches safety.
#include "compare/two_states.hpp"

#include <doctest/doctest.h>

using namespace matchmark::test;

namespace {

// Actions: added, dropped, another act, other members.
std::vector<Case> action_cases() {
    return {
        {"a line added", "logger", cell,
         one(cell, "  disconnect cell-plug\n",
             "  disconnect cell-plug\n  disconnect buzzer-plug\n"),
         "action-added", "buzzer-plug", "isolate"},
        {"a line dropped", "logger", cell, one(cell, "  release    cell-strips\n", ""),
         "action-dropped", "cell-strips", "cell-out"},
        {"screws no longer undone", "heater", valve,
         one(valve, "  undo       probe-nut with spanner-13\n", ""), "action-dropped", "probe-nut",
         "valve-out"},
        {"the charge no longer taken off", "oven", cutout,
         one(cutout, "  discharge  reservoir through 10 kohm for 15 s with resistor\n", ""),
         "action-dropped", "reservoir", "charge", true},
        {"no longer proved dead", "oven", cutout,
         one(cutout, "  prove      reservoir below 60 V with meter\n", ""), "action-dropped",
         "reservoir", "charge", true},
        {"the gas no longer shut off", "heater", valve, one(valve, "  turn-off   gas\n", ""),
         "action-dropped", "gas", "shut-off", true},
        {"one item of a list dropped", "heater", valve,
         one(valve, "undo       inlet-union, outlet-union with", "undo       inlet-union with"),
         "action-dropped", "outlet-union", "valve-out"},
        {"no longer disposed of", "logger", cell,
         one(cell, "  dispose    cell as battery-waste\n", ""), "action-dropped", "cell", "renew"},
        {"no longer marked", "drill", brushes, one(brushes, "  mark       motor-spades\n", ""),
         "action-dropped", "motor-spades", "unit-out"},
        {"no longer measured", "drill", brushes,
         one(brushes,
             "  measure    commutator diameter at least 21.0 mm with calliper, else replace motor "
             "with motor-new\n",
             ""),
         "action-dropped", "commutator", "inspect", true},
        {"other members", "heater", valve,
         one(valve, "undo       cover-screws with", "undo       cover-screws 1, 2, 3 with"),
         "action-changed", "cover-screws", "cover-off"},
        {"another act", "press", "renew-platen.mmk",
         one("renew-platen.mmk", "  slacken    clutch-screw\n", "  undo       clutch-screw\n"),
         "action-changed", "clutch-screw", "clutch"},
    };
}

// What is said of an action.
std::vector<Case> detail_cases() {
    return {
        {"a torque in the device", "logger", cell,
         one(logger, "holds      lid to back\n  torque     0.20 N.m",
             "holds      lid to back\n  torque     0.25 N.m"),
         "torque-changed", "lid-screws", "open", true},
        {"a torque dropped", "heater", valve,
         one(heater, "  holds      valve to back-plate\n  torque     4 N.m\n",
             "  holds      valve to back-plate\n"),
         "torque-changed", "valve-screws", "valve-out", true},
        {"passes of tightening", "gearbox", "renew-bearings.mmk",
         one("gearbox.mmk", "40 N.m in star, 3 passes", "40 N.m in star, 2 passes"),
         "tightening-changed", "input-bolts", "cover-off", true},
        {"another tool in a line", "logger", cell,
         one(cell, "separate   lid-seal with pick", "separate   lid-seal with driver-6"),
         "tool-changed", "lid-seal", "open"},
        {"a limit of the head", "logger", cell,
         one(cell, "discharge cell below 25 %", "discharge cell below 30 %"), "limit-changed",
         "cell", "before", true},
        {"a limit that proves dead", "oven", cutout,
         one(cutout, "prove      reservoir below 60 V", "prove      reservoir below 120 V"),
         "limit-changed", "reservoir", "charge", true},
        {"a wear limit", "drill", brushes,
         one(brushes, "diameter at least 21.0 mm", "diameter at least 20.5 mm"), "limit-changed",
         "commutator", "inspect", true},
        {"a time", "oven", cutout, one(cutout, "for 15 s with resistor", "for 5 s with resistor"),
         "time-changed", "reservoir", "charge", true},
        {"by other means", "oven", cutout,
         one(cutout, "through 10 kohm for", "through 22 kohm for"), "means-changed", "reservoir",
         "charge", true},
        {"what to do past the limit", "drill", brushes,
         one(brushes, "with calliper, else replace motor with motor-new",
             "with calliper, else replace motor"),
         "action-changed", "commutator", "inspect", true},
        {"another class of waste", "logger", cell,
         one(cell, "dispose    cell as battery-waste", "dispose    cell as electronics-waste"),
         "waste-changed", "cell", "renew"},
        {"other match marks", "pump", "renew-seal.mmk",
         one(seal, "mark       spacer across motor-hub, pump-hub",
             "mark       spacer across motor-hub"),
         "marks-changed", "spacer", "spacer"},
    };
}

// The order of the work.
std::vector<Case> order_cases() {
    return {
        {"two lines changed places, and either order works", "heater", valve,
         one(valve, "  disconnect igniter-plug\n  undo       probe-nut with spanner-13\n",
             "  undo       probe-nut with spanner-13\n  disconnect igniter-plug\n"),
         "action-moved", "igniter-plug", "valve-out", false, false},
        {"a lid opened before its screws", "logger", cell,
         one(cell,
             "  undo       lid-screws with driver-6\n  separate   lid-seal with pick\n  open       "
             "lid\n",
             "  open       lid\n  undo       lid-screws with driver-6\n  separate   lid-seal with "
             "pick\n"),
         "action-moved", "lid", "open"},
        {"the gas shut off after the cover",
         "heater",
         valve,
         {{valve,
           "step shut-off \"Shut the gas off\"\n  turn-off   gas\n  text: Let the heater burn "
           "until "
           "its flame dies.\n",
           ""},
          {valve, "step valve-out \"Take the valve out\"\n",
           "step shut-off \"Shut the gas off\"\n  turn-off   gas\n  text: Let the heater burn "
           "until "
           "its flame dies.\n\nstep valve-out \"Take the valve out\"\n"}},
         "step-moved",
         "shut-off",
         "shut-off",
         true},
        {"a whole step moved, and the bench asks for the old order",
         "oven",
         cutout,
         {{cutout,
           "step filament \"Pull off the filament leads\"\n  disconnect filament-leads\n  text: "
           "Pull each terminal by its sleeve.\n\nstep duct \"Take out the air duct\"\n  undo       "
           "duct-screw\n  unsnap     duct-hooks\n  remove     duct\n",
           "step duct \"Take out the air duct\"\n  undo       duct-screw\n  unsnap     "
           "duct-hooks\n  remove     duct\n\nstep filament \"Pull off the filament leads\"\n  "
           "disconnect filament-leads\n  text: Pull each terminal by its sleeve.\n"}},
         "step-moved",
         "filament",
         "filament"},
        {"a whole step moved, and either order works",
         "press",
         "renew-platen.mmk",
         {{"renew-platen.mmk",
           "step head-ribbon \"Free the print head ribbon\"\n  unlock     head-ribbon\n  "
           "disconnect "
           "head-ribbon\n  text: Draw the ribbon out straight. Fold it over the front of the "
           "frame.\n\nstep ties \"Cut the harness free\"\n  cut        cable-ties\n  text: Count "
           "three "
           "ties along the top rail.\n",
           "step ties \"Cut the harness free\"\n  cut        cable-ties\n  text: Count three ties "
           "along the top rail.\n\nstep head-ribbon \"Free the print head ribbon\"\n  unlock     "
           "head-ribbon\n  disconnect head-ribbon\n  text: Draw the ribbon out straight. Fold it "
           "over the front of the frame.\n"}},
         "step-moved",
         "ties",
         "ties",
         false,
         false},
        {"a line moved past a caution",
         "press",
         blade,
         {{blade, "  disconnect cutter-plug\n", ""},
          {blade, "  lift-off   front-bezel\n",
           "  lift-off   front-bezel\n  disconnect cutter-plug\n"}},
         "action-moved",
         "cutter-plug",
         "bezel-off",
         true},
        {"a line regrouped, its order the same",
         "logger",
         cell,
         {{cell, "  undo       shield-screws with driver-6\n", ""},
          {cell, "  open       lid\n",
           "  open       lid\n  undo       shield-screws with driver-6\n"}},
         "action-moved",
         "shield-screws",
         "open",
         false,
         false},
        {"the order of filling", "gearbox", seal,
         one(seal, "  close-cock oil\n  fill       oil with funnel, oil-new\n",
             "  fill       oil with funnel, oil-new\n  close-cock oil\n"),
         "action-moved", "oil", "drain"},
        {"lines moved together past a test", "gearbox", seal,
         one(seal,
             "  fit        belly-plate\n  fasten     belly-screws with spanner-10\n  fasten     "
             "breather with breather-spanner\n",
             "  fasten     breather with breather-spanner\n  fit        belly-plate\n  fasten     "
             "belly-screws with spanner-10\n"),
         "action-moved", "belly-plate, belly-screws", "drain-then", true},
    };
}

} // namespace

TEST_CASE("actions that came, went or changed") { CHECK(check_all(action_cases()) >= 12); }
TEST_CASE("what is said of an action") { CHECK(check_all(detail_cases()) >= 12); }
TEST_CASE("the order of the work") { CHECK(check_all(order_cases()) >= 9); }
