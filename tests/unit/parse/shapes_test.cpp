// Every shape that a line may have is read, and read as what it is.
#include "unit/parse/written_tree.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace matchmark;
using namespace matchmark::test;

TEST_CASE("declarations of devices and what they are made of") {
    check_shapes(
        "",
        {{R"(use "logger.mmk")", R"(declaration 0 use: text "logger.mmk")"},
         {R"(device logger "Tarn 4")", R"(declaration 0 device: name logger, text "Tarn 4")"},
         {"face front 74 x 128 mm, corner 8 mm",
          "declaration 0 face: name front, number 74, word x, number 128, unit mm, comma, "
          "word corner, number 8, unit mm"},
         {"face front 74x128 mm",
          "declaration 0 face: name front, number 74, word x, number 128, unit mm"},
         {"part back", "declaration 0 part: name back"},
         {R"(part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V)",
          R"(declaration 0 part: name cell, text "cell", word kind, name lithium-pouch-cell, )"
          "number 3000, unit mAh, number 3.85, unit V"},
         {"part buzzer in lid only eu, uk kind plain-part",
          "declaration 0 part: name buzzer, word in, name lid, word only, name eu, comma, "
          "name uk, word kind, name plain-part"},
         {"part x-arm kind arm in lid",
          "declaration 0 part: name x-arm, word kind, name arm, word in, name lid"},
         {R"(fastener s "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk)",
          R"(declaration 0 fastener: name s, text "lid screw", number 4, word x, name screw, )"
          "name M2, word x, number 6, comma, name hexalobular, number 6, comma, name countersunk"},
         {"fastener c 1 x hose-clamp 20..32 mm",
          "declaration 0 fastener: name c, number 1, word x, name hose-clamp, number 20, "
          "range .., number 32, unit mm"},
         {"part shims 3 x shim 0.10 mm, 0.15 mm",
          "declaration 0 part: name shims, number 3, word x, name shim, number 0.10, unit mm, "
          "comma, number 0.15, unit mm"},
         {"connector lid-ribbon kind flip-lock-ribbon",
          "declaration 0 connector: name lid-ribbon, word kind, name flip-lock-ribbon"},
         {"bond glue kind heat-softened-glue 80 degC, 5 min",
          "declaration 0 bond: name glue, word kind, name heat-softened-glue, number 80, "
          "unit degC, comma, number 5, unit min"},
         {"fluid coolant in radiator 1.2 l kind coolant",
          "declaration 0 fluid: name coolant, word in, name radiator, number 1.2, unit l, "
          "word kind, name coolant"},
         {R"(energy mains "mains" kind mains-supply 230 V)",
          R"(declaration 0 energy: name mains, text "mains", word kind, name mains-supply, )"
          "number 230, unit V"},
         {R"(function display "The display shows")",
          R"(declaration 0 function: name display, text "The display shows")"},
         {"caution strain on lid-ribbon when lid open, drawer in",
          "declaration 0 caution: name strain, word on, name lid-ribbon, word when, name lid, "
          "name open, comma, name drawer, name in"},
         {"danger shock on mains, lid", "declaration 0 danger: name shock, word on, name mains, "
                                        "comma, name lid"}});
}

TEST_CASE("declarations of kinds, guides, sections, steps and tests") {
    check_shapes("", {{R"(kind k "k" is connector)",
                       R"(declaration 0 kind: name k, text "k", word is, word connector)"},
                      {R"(drive hexalobular "hexalobular")",
                       R"(declaration 0 drive: name hexalobular, text "hexalobular")"},
                      {"thread M1.6", "declaration 0 thread: name M1.6"},
                      {R"(hazard stored-charge "Stored charge")",
                       R"(declaration 0 hazard: name stored-charge, text "Stored charge")"},
                      {R"(guide g "G")", R"(declaration 0 guide: name g, text "G")"},
                      {"before", "declaration 0 before"},
                      {"take-apart # now", "declaration 0 take-apart # now"},
                      {"work", "declaration 0 work"},
                      {"put-back", "declaration 0 put-back"},
                      {"step open", "declaration 0 step: name open"},
                      {R"(step open "Say \"open\" \\ wait")",
                       R"(declaration 0 step: name open, text "Say \"open\" \\ wait")"},
                      {R"(test power-on "It starts")",
                       R"(declaration 0 test: name power-on, text "It starts")"}});
}

TEST_CASE("details of a device and of a function") {
    check_shapes("device d \"D\"\n",
                 {{"  revision   B", "detail 1 revision: name B"},
                  {"  revision 2.1 \"late\"", "detail 1 revision: number 2.1, text \"late\""},
                  {"  mass 312 g", "detail 1 mass: number 312, unit g"},
                  {"  sealed IP67", "detail 1 sealed: name IP67"},
                  {"  sealed IP67 by seal, ring",
                   "detail 1 sealed: name IP67, word by, name seal, comma, name ring"},
                  {"  variant eu, uk", "detail 1 variant: name eu, comma, name uk"}});
    check_shapes("function f\n", {{"  through board, lid 2",
                                   "detail 1 through: name board, comma, name lid, number 2"}});
}

TEST_CASE("details that any item may have") {
    for (const char* role : {"part", "fastener", "connector", "bond", "fluid", "energy"}) {
        check_shapes(
            std::string(role) + " a\n",
            {{"  kind k M2", "detail 1 kind: name k, name M2"},
             {"  2 x k M2", "detail 1 count: number 2, word x, name k, name M2"},
             {"  in lid", "detail 1 in: name lid"},
             {"  behind lid or fan 2, cap",
              "detail 1 behind: name lid, word or, name fan, number 2, comma, name cap"},
             {"  under lid, screws 2", "detail 1 under: name lid, comma, name screws, number 2"},
             {"  needs coolant drained to undo",
              "detail 1 needs: name coolant, name drained, word to, name undo"},
             {"  at front 5,5  69,5", "detail 1 at: name front, number 5, comma, number 5, "
                                      "number 69, comma, number 5"},
             {"  keep order, face", "detail 1 keep: name order, comma, name face"},
             {"  one use", "detail 1 one use"},
             {"  used   again", "detail 1 used again"},
             {"  only eu", "detail 1 only: name eu"},
             {"  note: Mind.", "detail 1 note {Mind.}"},
             {"  danger: Mind # it.", "detail 1 danger {Mind # it.}"}});
    }
}

TEST_CASE("details that only some items have") {
    check_shapes("part a\n",
                 {{"  carries b, c", "detail 1 carries: name b, comma, name c"},
                  {"  covers b", "detail 1 covers: name b"},
                  {"  blocks b", "detail 1 blocks: name b"},
                  {"  feeds b, c through p, q", "detail 1 feeds: name b, comma, name c, "
                                                "word through, name p, comma, name q"},
                  {"  limit length at least 5 mm when brush out",
                   "detail 1 limit: name length, word at, word least, number 5, unit mm, "
                   "word when, name brush, name out"},
                  {"  limit gap 0.05..0.15 mm", "detail 1 limit: name gap, number 0.05, range .., "
                                                "number 0.15, unit mm"},
                  {"  renewed as lid", "detail 1 renewed as: name lid"}});
    check_shapes("fastener a\n",
                 {{"  holds b, c 1 to d",
                   "detail 1 holds: name b, comma, name c, number 1, word to, name d"},
                  {"  torque 0.15 N.m + 0.5 lbf.in in star, 3 passes",
                   "detail 1 torque: number 0.15, unit N.m, plus +, number 0.5, unit lbf.in, "
                   "word in, name star, comma, number 3, word passes"},
                  {"  told by \"the # blue patch\" # mind",
                   "detail 1 told by: text \"the # blue patch\" # mind"}});
    check_shapes("connector a\n", {{"  joins b to c", "detail 1 joins: name b, word to, name c"},
                                   {"  safe when live", "detail 1 safe when live"}});
    check_shapes("fluid a\n", {{"  1.2 l", "detail 1 quantity: number 1.2, unit l"}});
}

TEST_CASE("details of kinds, drives, threads and hazards") {
    check_shapes(
        "kind k is part\n",
        {{"  states in, out", "detail 1 states: name in, comma, name out"},
         {"  also charged, low", "detail 1 also: name charged, comma, name low"},
         {"  unlock a, b->c by hand or pick",
          "detail 1 verb unlock: name a, comma, name b, arrow ->, name c, word by, name hand, "
          "word or, name pick"},
         {"  discharge in -> low below 60 V safe when live from outside takes 12 s",
          "detail 1 verb discharge: name in, arrow ->, name low, word below, number 60, unit V, "
          "word safe, word when, word live, word from, word outside, word takes, number 12, "
          "unit s"},
         {"  present in in, drawn", "detail 1 present in: name in, comma, name drawn"},
         {"  binds in a", "detail 1 binds in: name a"},
         {"  covers in a", "detail 1 covers in: name a"},
         {"  blocks in a", "detail 1 blocks in: name a"},
         {"  live in a", "detail 1 live in: name a"},
         {"  may end in a, b", "detail 1 may end in: name a, comma, name b"},
         {"  one use", "detail 1 one use"},
         {"  asks for torque", "detail 1 asks for torque"},
         {"  asks for test", "detail 1 asks for test"},
         {"  needs charged to fit", "detail 1 needs: name charged, word to, name fit"},
         {"  hazard fire until low, off on reach",
          "detail 1 hazard: name fire, word until, name low, comma, name off, word on, "
          "word reach"},
         {"  waste battery-waste", "detail 1 waste: name battery-waste"},
         {"  licensed \"gas fitter\"", "detail 1 licensed: text \"gas fitter\""}});
    check_shapes("drive d\n", {{"  driven by a or b", "detail 1 driven by: name a, word or, "
                                                      "name b"}});
    check_shapes("thread M2\n",
                 {{"  pitch 0.40 mm", "detail 1 pitch: number 0.40, unit mm"},
                  {"  breaks at 0.37 N.m", "detail 1 breaks at: number 0.37, unit N.m"}});
    check_shapes("hazard h \"H\"\n", {{"  danger: It kills.", "detail 1 danger {It kills.}"}});
}

TEST_CASE("details of guides and tests") {
    check_shapes(
        "guide g \"G\"\n",
        {{"  goal replace cell with cell-new",
          "detail 1 goal: name replace, name cell, word with, name cell-new"},
         {"  goal replace cell, fan with cell-new, remove lid",
          "detail 1 goal: name replace, name cell, comma, name fan, word with, name cell-new, "
          "comma, name remove, name lid"},
         {"  for competent", "detail 1 for: word competent"},
         {"  for licensed \"gas fitter\"", "detail 1 for: word licensed, text \"gas fitter\""},
         {"  only eu", "detail 1 only: name eu"},
         {"  before discharge cell below 25 %",
          "detail 1 before: name discharge, name cell, word below, number 25, unit %"},
         {"  spare c \"cell\", 1, 14.50 EUR for cell",
          "detail 1 spare: name c, text \"cell\", comma, number 1, comma, number 14.50, "
          "unit EUR, word for, name cell"},
         {"  supply s \"tape 2 mm\", 40 cm",
          "detail 1 supply: name s, text \"tape 2 mm\", comma, number 40, unit cm"},
         {"  tool t \"driver 6\"", "detail 1 tool: name t, text \"driver 6\""},
         {"  author \"A. Fitter\"", "detail 1 author: text \"A. Fitter\""},
         {"  date 2026-03-31", "detail 1 date: name 2026-03-31"},
         {"  text: What it is about.", "detail 1 text {What it is about.}"}});
    check_shapes("test t\n",
                 {{"  when plug connected, lid open",
                   "detail 1 when: name plug, name connected, comma, name lid, name open"},
                  {"  proves cell, IP67", "detail 1 proves: name cell, comma, name IP67"},
                  {"  with meter, lamp", "detail 1 with: name meter, comma, name lamp"}});
    check_shapes("put-back\n", {{"  derived", "detail 1 derived"}});
}

TEST_CASE("actions") {
    check_shapes(
        "step s\n",
        {{"  undo lid-screws 1, 3, plate with driver-6, oil",
          "detail 1 verb undo: name lid-screws, number 1, comma, number 3, comma, name plate, "
          "word with, name driver-6, comma, name oil"},
         {"  tighten bolts to 24 N.m in star, 3 passes",
          "detail 1 verb tighten: name bolts, word to, number 24, unit N.m, word in, name star, "
          "comma, number 3, word passes"},
         {"  discharge cap through 10 kohm for 15 s below 60 V",
          "detail 1 verb discharge: name cap, word through, number 10, unit kohm, word for, "
          "number 15, unit s, word below, number 60, unit V"},
         {"  fill coolant 1.2 l with can", "detail 1 verb fill: name coolant, number 1.2, unit l, "
                                           "word with, name can"},
         {"  fit hub as marked", "detail 1 verb fit: name hub, word as, word marked"},
         {"  mark coupling across hub, flange",
          "detail 1 verb mark: name coupling, word across, name hub, comma, name flange"},
         {"  measure brush length at least 5 mm with gauge, else replace brush with brush-new",
          "detail 1 verb measure: name brush, name length, word at, word least, number 5, unit mm, "
          "word with, name gauge, comma, word else, name replace, name brush, word with, "
          "name brush-new"},
         {"  measure end-float 0.05..0.15 mm, else adjust with shims",
          "detail 1 verb measure: name end-float, number 0.05, range .., number 0.15, unit mm, "
          "comma, word else, name adjust, word with, name shims"},
         {"  dispose cell as battery-waste",
          "detail 1 verb dispose: name cell, word as, name battery-waste"},
         {"  do open-case", "detail 1 verb do: name open-case"},
         {"  limit lid", "detail 1 verb limit: name lid"},
         {"  needs lid", "detail 1 verb needs: name lid"},
         {"  photo \"a.svg\" \"A lid\"", "detail 1 photo: text \"a.svg\", text \"A lid\""},
         {"  photo \"a.svg\" \"A\"\n    mark lid 1, 3 0.08,0.05 0.92,0.05",
          "detail 2 mark: name lid, number 1, comma, number 3, number 0.08, comma, number 0.05, "
          "number 0.92, comma, number 0.05"}});
}

TEST_CASE("names of any script, and units as the trade writes them") {
    check_shapes("step s\n",
                 {{"  löse 蓋, Деталь-2", "detail 1 verb löse: name 蓋, comma, name Деталь-2"},
                  {"  heat glue to 80 °C", "detail 1 verb heat: name glue, word to, number 80, "
                                           "unit °C"},
                  {"  bleed cap through 4.7 Ω for 5s", "detail 1 verb bleed: name cap, "
                                                       "word through, number 4.7, unit Ω, "
                                                       "word for, number 5, unit s"}});
    check_shapes("", {{"part c kind capacitor 220 µF 400V",
                       "declaration 0 part: name c, word kind, name capacitor, number 220, "
                       "unit µF, number 400, unit V"}});
}

TEST_CASE("the examples of the language's description and of the grammar are read") {
    for (const char* path : {"docs/language.md", "grammar/README.md"}) {
        const std::vector<std::string> examples = examples_of(path);
        CHECK(examples.size() >= 2);
        for (const std::string& example : examples) {
            const Parsed parsed(example);
            for (const Diagnostic& finding : parsed.findings) {
                FAIL_CHECK(path << ": " << written_finding(parsed, finding));
            }
        }
    }
}
