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
