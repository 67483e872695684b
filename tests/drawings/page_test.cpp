// The drawings of a guide's page can be read at the width of a sheet, and hold no more than they
// should.
#include "draw/drawings.hpp"
#include "draw/views.hpp"
#include "drawings/paper.hpp"
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace matchmark;
using namespace matchmark::test;

namespace {

double smallest_letters(const draw::Scene& scene) {
    double smallest = 100;
    for (const draw::Shape& shape : scene.shapes) {
        if (const auto* text = std::get_if<draw::Text>(&shape.form)) {
            smallest = std::min(smallest, text->size);
        }
    }
    return smallest;
}

bool has_heading(const draw::Scene& scene) {
    return std::any_of(scene.shapes.begin(), scene.shapes.end(), [](const draw::Shape& shape) {
        const auto* text = std::get_if<draw::Text>(&shape.form);
        return text != nullptr && text->heading;
    });
}

// Three lids, each under the last, with the goal at the end, and a part that is not in the way.
std::string nested_device() {
    return R"(device box "Box"
part base "base"
part lid "lid"
fastener lid-screws "lid screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds lid to base
part inner-lid "inner lid"
  behind lid
fastener inner-screws "inner screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds inner-lid to base
part fuse-card "fuse card"
  behind inner-lid
part side-flap "side flap"
part side-card "side card"
  behind side-flap
)";
}

// The tray is not in the way of the cell, and the guide takes it off all the same.
std::string scale_and_guide() {
    return R"(device scale "Scale"
part chassis "chassis"
part cover "cover"
part board "board" in chassis
  behind cover
part cell "load cell" in chassis
  behind cover
part tray "tray"
fastener cover-screws "cover screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds cover to chassis
connector cell-plug "cell plug" kind locking-tab-plug
  joins cell to board
energy mains "mains supply" kind mains-cord
  feeds board

guide renew "Renew the load cell"
  goal replace cell with cell-new
  for competent
  before unplug mains
  spare cell-new "load cell", 1 for cell
  tool driver "hexalobular driver 10"
take-apart
step tray-off "Take the tray off"
  remove tray
step cover-off "Take the cover off"
  undo cover-screws with driver
  remove cover
step cell-out "Take the cell out"
  disconnect cell-plug
  remove cell
work
step new "Take the new one"
  replace cell with cell-new
put-back
  derived
test weigh "It weighs"
  proves cell
)";
}

double left_end(const draw::Scene& scene, std::string_view words) {
    for (const draw::Shape& shape : scene.shapes) {
        const auto* text = std::get_if<draw::Text>(&shape.form);
        if (text != nullptr && text->words == words) {
            return text->at.x;
        }
    }
    FAIL("not in the drawing: " << words);
    return 0;
}

} // namespace

TEST_CASE("on an A4 page the letters of every sample's drawings are 2 mm high or more") {
    const auto disk = real_disk();
    const std::string folder = std::string(MATCHMARK_SOURCE_DIR) + "/samples";
    const auto listed = disk->list(folder, ".mmk");
    std::size_t drawings = 0;
    for (const auto& name : std::get<std::vector<std::string>>(listed)) {
        const auto done = drive::compile(*disk, folder + "/" + name);
        for (const auto& procedure : done.procedures) {
            const auto page = draw::page_drawings(done.model, procedure);
            REQUIRE(page.figures.size() == page.scenes.size());
            std::set<std::string> anchors;
            std::set<std::string> titles;
            for (std::size_t i = 0; i < page.scenes.size(); ++i) {
                const draw::Scene& scene = page.scenes[i];
                CAPTURE(name);
                CAPTURE(scene.title);
                // Between the margins and furniture of an A4 sheet, below the figure's title.
                const double scale = std::min({1.0, 174 / scene.width, 220 / scene.height});
                CHECK(scale * smallest_letters(scene) >= 1.99);
                CHECK_FALSE(has_heading(scene)); // the page has it
                CHECK(anchors.insert(page.figures[i].anchor).second);
                CHECK(titles.insert(page.figures[i].title).second);
                CHECK_FALSE(page.figures[i].alternative_text.empty());
                ++drawings;
            }
        }
    }
    CHECK(drawings >= 40);
}

TEST_CASE("of the way in, a page shows the way and what stands directly before it") {
    const auto done = compiled(nested_device());
    draw::Viewing viewing;
    for (std::uint32_t i = 0; i < done.model.items.size(); ++i) {
        if (done.model.items[i].name == "fuse-card") {
            viewing.way_to = model::ItemId{i};
        }
    }
    const auto titles = [](const draw::Graph& graph) {
        std::vector<std::string> found;
        for (const draw::Box& box : graph.boxes) {
            found.push_back(box.title);
        }
        return found;
    };
    const draw::Graph whole = draw::access_graph(done.model, viewing);
    CHECK(std::count(whole.alternative_text.begin(), whole.alternative_text.end(), '\n') > 6);
    viewing.way_alone = true;
    const draw::Graph page = draw::access_graph(done.model, viewing);
    INFO(page.alternative_text);
    CHECK(titles(page) == std::vector<std::string>{"1. Lid", "2. Inner lid", "3. Fuse card"});
    CHECK(page.legend.find("Left out: ") != std::string::npos);
    CHECK(page.alternative_text.find("side") == std::string::npos);
    CHECK(page.alternative_text.find("- 3. Fuse card; after 2. Inner lid\n") != std::string::npos);
}

TEST_CASE("a way is numbered as the guide goes it") {
    const auto done = compiled(scale_and_guide());
    REQUIRE(done.procedures.size() == 1);
    const auto page = draw::page_drawings(done.model, done.procedures.front());
    for (std::size_t i = 0; i < page.figures.size(); ++i) {
        if (page.figures[i].anchor != "drawing-access") {
            continue;
        }
        CHECK(page.figures[i].alternative_text == R"(- 1\. Mains supply
- 2\. Tray
- 3\. Cover; 4 cover screws, M3 x 8
- 4\. Load cell; after 3. Cover; cell plug
)");
        CHECK(left_end(page.scenes[i], "1. Mains supply") < left_end(page.scenes[i], "2. Tray"));
        CHECK(left_end(page.scenes[i], "2. Tray") < left_end(page.scenes[i], "3. Cover"));
        return;
    }
    FAIL("the page has no such drawing");
}

TEST_CASE("the way into a device alone begins with what is unplugged") {
    const auto done = compiled(scale_and_guide());
    const model::Guide& guide = done.model.guides.front();
    draw::Viewing viewing;
    viewing.way_alone = true;
    viewing.way_to = guide.goals.front().targets.front().ref.item;
    const draw::Graph way = draw::access_graph(done.model, viewing);
    INFO(way.alternative_text);
    REQUIRE(way.boxes.size() >= 3);
    CHECK(way.boxes[0].title == "1. Mains supply");
    CHECK(way.boxes[1].title == "2. Cover");
    CHECK(way.boxes[2].title == "3. Load cell");
}
