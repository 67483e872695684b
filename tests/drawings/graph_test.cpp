// What the drawings of a device say: boxes and arrows, not where they stand.
#include "draw/drawings.hpp"
#include "draw/views.hpp"
#include "drawings/paper.hpp"

#include <doctest/doctest.h>
#include <libxml/parser.h>

#include <algorithm>

using namespace matchmark;
using namespace matchmark::test;

namespace {

std::string shown(const draw::Graph& graph) {
    std::string text;
    for (const draw::Box& box : graph.boxes) {
        text += "[" + box.title;
        for (const std::string& line : box.lines) {
            text += " | " + line;
        }
        text += box.emphasis == draw::Emphasis::strong ? "]!\n" : "]\n";
    }
    for (const draw::Link& link : graph.links) {
        text += graph.boxes[link.from].title + (link.arrow ? " -> " : " -- ") +
                graph.boxes[link.to].title + (link.one_of_ways ? " (or)" : "") + "\n";
    }
    return text;
}

draw::Graph boxes(std::size_t count,
                  const std::vector<std::pair<std::size_t, std::size_t>>& pairs) {
    draw::Graph graph;
    graph.boxes.resize(count);
    for (const auto& [from, to] : pairs) {
        graph.links.push_back({from, to, draw::Emphasis::plain, true, false});
    }
    return graph;
}

bool well_formed(const std::string& xml) {
    xmlDocPtr document = xmlReadMemory(xml.data(), static_cast<int>(xml.size()), "drawing.svg",
                                       nullptr, XML_PARSE_NONET);
    const bool good = document != nullptr;
    xmlFreeDoc(document);
    return good;
}

model::ItemId named(const model::Model& model, const std::string& name) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == name) {
            return model::ItemId{i};
        }
    }
    FAIL("no item of that name");
    return {};
}

} // namespace

TEST_CASE("an arrow that a longer way says too is left out, within a ring none") {
    draw::Graph line = boxes(4, {{0, 1}, {1, 2}, {0, 2}, {2, 3}, {0, 3}});
    draw::reduce(line);
    CHECK(line.links.size() == 3);
    draw::Graph ring = boxes(3, {{0, 1}, {1, 2}, {2, 0}});
    draw::reduce(ring);
    CHECK(ring.links.size() == 3);
    draw::Graph twice = boxes(2, {{0, 1}, {0, 1}, {1, 1}});
    draw::tidy_links(twice);
    CHECK(twice.links.size() == 1);
    CHECK(draw::pieces(boxes(5, {{0, 2}, {3, 4}})) ==
          std::vector<std::vector<std::size_t>>{{0, 2}, {1}, {3, 4}});
}

TEST_CASE("the way to a part stands out, in the order of the work") {
    const auto done = compiled(tray_device());
    const draw::Viewing viewing{named(done.model, "board"), false};
    const draw::Graph graph = draw::access_graph(done.model, viewing);
    const std::string text = shown(graph);
    INFO(text);
    CHECK(text.find("Mains supply]!") != std::string::npos);
    CHECK(text.find("4 corner screws, M3 x 8 | 2 middle screws, M3 x 8.5]!") != std::string::npos);
    CHECK(text.find("Board | ") != std::string::npos);
    CHECK(std::count(text.begin(), text.end(), '!') == 3);
    CHECK(text.find(" & co -> ") != std::string::npos);
    CHECK(graph.alternative_text.find("The way to the board:") != std::string::npos);
    CHECK(graph.alternative_text.find("undo the 4 corner screws") != std::string::npos);
}

TEST_CASE("the bench's way makes safe what lies behind the cover before it is worked on") {
    const auto done = compiled(R"(device inverter "Inverter"

energy mains "mains" kind mains-cord
  feeds      board
part frame "frame"
part cover "cover" kind panel
  covers     board, store
part board "board" kind circuit-board
part store "capacitor" kind capacitor
  behind     cover
)");
    const draw::Viewing viewing{named(done.model, "board"), false};
    const std::string told = draw::access_graph(done.model, viewing).alternative_text;
    INFO(told);
    std::size_t at = 0;
    for (const char* act :
         {"1. unplug the mains\n", "2. remove the cover\n", "3. discharge the capacitor\n",
          "4. prove the capacitor\n", "5. remove the board\n"}) {
        const std::size_t found = told.find(act, at);
        CAPTURE(act);
        REQUIRE(found != std::string::npos);
        at = found;
    }
}

TEST_CASE("a danger that is made safe only behind the cover does not keep the others from being") {
    const auto done = compiled(R"(device mill "Mill"

energy rotor "rotor" kind flywheel
  behind     shell
energy mains "mains" kind mains-isolator
  feeds      motor
part frame "frame"
part shell "shell" kind panel
  covers     motor
part motor "motor"
)");
    const draw::Viewing viewing{named(done.model, "motor"), false};
    const std::string told = draw::access_graph(done.model, viewing).alternative_text;
    INFO(told);
    CHECK(told.find("1. lock off the mains\n2. spin down the rotor\n") != std::string::npos);
    const std::size_t stopped = told.find("spin down the rotor\n");
    const std::size_t opened = told.find("remove the shell\n");
    CHECK(stopped < opened);
    CHECK(opened < told.find("block the rotor\n"));
}

TEST_CASE("a pressure that is let off from outside waits for no hood over its pump") {
    const auto done = compiled(R"(device washer "Pressure washer"

energy pressure "water pressure" in pump kind stored-pressure 140 bar
part hood "hood"
  covers     pump
part pump "pump" kind pump
part outlet "outlet"
connector joint "outlet union" kind face-seal-joint
  joins      outlet to pump
  under      hood
)");
    const draw::Viewing viewing{named(done.model, "outlet"), false};
    const std::string text = shown(draw::access_graph(done.model, viewing));
    INFO(text);
    CHECK(text.find("1. Water pressure -> 3. Outlet\n") != std::string::npos);
    CHECK(text.find("2. Hood -> 1. Water pressure") == std::string::npos);
}

TEST_CASE("a fluid that is let out on the way waits for what its letting out needs") {
    const auto done = compiled(R"(device chiller "Chiller"

part frame "frame"
part tray "tray"
part coil "coil"
part lid "lid"
fluid brine "brine" kind coolant in coil
  behind     lid
  needs      tray out to drain
fastener unions "union" 2 x bolt M8 x 20, hexagon-head 13
  holds      coil to frame
  torque     12 N.m
  needs      brine drained to undo
)");
    const draw::Viewing viewing{named(done.model, "coil"), false};
    const std::string text = shown(draw::access_graph(done.model, viewing));
    INFO(text);
    CHECK(text.find("Tray -> 3. Brine\n") != std::string::npos);
    CHECK(text.find("Lid -> 3. Brine\n") != std::string::npos);
    CHECK(text.find("3. Brine -> 4. Coil\n") != std::string::npos);
}

TEST_CASE("what lies under a ribbon waits for the ribbon, not for what the ribbon joins") {
    const auto done = compiled(R"(device reader "Card reader"

part base "base"
part screen "screen"
part board "board"
connector ribbon "screen ribbon" kind flip-lock-ribbon
  joins      screen to board
part cell "cell"
  under      ribbon
)");
    const draw::Viewing viewing{named(done.model, "cell"), false};
    const std::string text = shown(draw::access_graph(done.model, viewing));
    INFO(text);
    CHECK(text.find("[1. Screen ribbon]!") != std::string::npos);
    CHECK(text.find("1. Screen ribbon -> 2. Cell") != std::string::npos);
    CHECK(text.find("1. Screen ribbon -> Screen\n") != std::string::npos);
    CHECK(text.find("Screen -> ") == std::string::npos);
    CHECK(text.find("Board -> ") == std::string::npos);
    CHECK(std::count(text.begin(), text.end(), '!') == 2);
}

TEST_CASE("what holds what: ties with counts between their parts") {
    const auto done = compiled(tray_device());
    const std::string text = shown(draw::held_graph(done.model, {}));
    INFO(text);
    CHECK(text.find("[4 board screws, M2.5 x 6 | board plug]") != std::string::npos);
    CHECK(text.find("Board -- 4 board screws, M2.5 x 6") != std::string::npos);
    CHECK(text.find("4 board screws, M2.5 x 6 -- Base") != std::string::npos);
}

TEST_CASE("wiring: supplies, what they make live, and plugs alone") {
    const auto done = compiled(tray_device());
    const std::string text = shown(draw::wiring_graph(done.model, {}));
    INFO(text);
    CHECK(text.find("Mains supply -> Board") != std::string::npos);
    CHECK(text.find("Board -- board plug") != std::string::npos);
    CHECK(text.find("screw") == std::string::npos);
}

TEST_CASE("a part that much is tied to is named by its ties, and no line leads there") {
    std::string text = "device rack \"Rack\"\npart frame \"frame\"\n";
    for (int i = 0; i < 20; ++i) {
        const std::string n = std::to_string(i);
        text += "part unit-" + n + " \"unit " + n + "\"\nfastener screws-" + n + " \"unit " + n +
                " screw\" 2 x screw M3 x 8, hexalobular 10, pan\n  holds unit-" + n +
                " to frame\n  torque 0.5 N.m\n";
    }
    const auto done = compiled(text);
    const draw::Graph graph = draw::held_graph(done.model, {});
    CHECK(shown(graph).find("screws, M3 x 8 | to: Frame]") != std::string::npos);
    CHECK(graph.links.size() == 20);
    CHECK(graph.alternative_text.find("Unit 7 and Frame: 2 unit 7 screws") != std::string::npos);
}

TEST_CASE("names full of markup do no harm, and SVG is well-formed and the same each time") {
    const auto done = compiled(tray_device() + tray_guide());
    const model::Procedure& procedure = done.procedures.front();
    std::vector<std::string> files =
        draw::map_files(done.model, procedure, draw::Paper::a4, "").svg;
    for (const draw::What what :
         {draw::What::access, draw::What::held, draw::What::wiring, draw::What::order}) {
        for (const draw::Scene& scene : draw::drawing(what, done.model, &procedure, {})) {
            files.push_back(draw::paint_svg(scene));
            CHECK(files.back() == draw::paint_svg(scene));
            const std::string markdown = draw::in_markdown({scene});
            for (std::size_t at = 0; (at = markdown.find('<', at)) != std::string::npos; ++at) {
                CHECK(markdown[at - 1] == '\\');
            }
        }
    }
    for (const guide::Figure& figure : draw::page_drawings(done.model, procedure).figures) {
        files.push_back(figure.svg);
        CHECK_FALSE(figure.alternative_text.empty());
    }
    CHECK(files.size() > 8);
    for (const std::string& file : files) {
        CHECK(well_formed(file));
        CHECK(file.find("<script") == std::string::npos);
        CHECK(file.find(" id=") == std::string::npos);
        CHECK(file.find("href") == std::string::npos);
    }
}

TEST_CASE("the order of work shows when a tool is taken up") {
    const auto done = compiled(tray_device() + tray_guide());
    const auto scenes = draw::drawing(draw::What::order, done.model, &done.procedures.front(), {});
    REQUIRE(scenes.size() == 1);
    const std::string& text = scenes.front().alternative_text;
    INFO(text);
    CHECK(text.find("Step 1: Isolate it\n") != std::string::npos);
    CHECK(text.find("Take the cover off; take up hexalobular driver 10") != std::string::npos);
    CHECK(text.find("Take the board out; take up hexalobular driver 8") != std::string::npos);
    CHECK(draw::drawing(draw::What::order, done.model, nullptr, {}).empty());
}

TEST_CASE("three hundred items are laid out, and no two boxes overlap") {
    std::string text = "device rack \"Rack\"\npart frame \"frame\"\n";
    for (int i = 0; i < 150; ++i) {
        const std::string n = std::to_string(i);
        text += "part unit-" + n + " \"unit " + n + "\"\n";
        text += i > 0 ? "  behind unit-" + std::to_string(i / 2) + "\n" : "";
        text += "fastener screws-" + n + " \"unit " + n +
                " screw\" 2 x screw M3 x 8, hexalobular 10, pan\n  holds unit-" + n +
                " to frame\n  torque 0.5 N.m\n";
    }
    const auto done = compiled(text);
    const auto scenes = draw::drawing(draw::What::access, done.model, nullptr, {});
    std::vector<draw::Rectangle> found;
    for (const draw::Shape& shape : scenes.front().shapes) {
        if (const auto* box = std::get_if<draw::Rectangle>(&shape.form)) {
            found.push_back(*box);
        }
    }
    CHECK(found.size() == 150);
    std::size_t overlaps = 0;
    for (std::size_t i = 0; i < found.size(); ++i) {
        for (std::size_t j = i + 1; j < found.size(); ++j) {
            const draw::Rectangle& a = found[i];
            const draw::Rectangle& b = found[j];
            overlaps += a.corner.x < b.corner.x + b.width && b.corner.x < a.corner.x + a.width &&
                        a.corner.y < b.corner.y + b.height && b.corner.y < a.corner.y + a.height;
        }
    }
    CHECK(overlaps == 0);
}
