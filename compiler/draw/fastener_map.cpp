// The fastener map: a face at true scale, with each fastener at its place.
#include "draw/fastener_map.hpp"

#include "draw/lettering.hpp"
#include "draw/map_furniture.hpp"
#include "draw/map_shapes.hpp"
#include "language/punctuation.hpp"
#include "language/spoken.hpp"
#include "language/words.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace matchmark::draw {

using language::fill_text;
using language::Language;

namespace {

constexpr double round_the_face = 13; // for balloons of fasteners at its edge
constexpr double least_overlap = 20;  // a fastener and its balloon are whole on one sheet

// How a face is cut: sheets across and down, all windows of one size.
struct Cut {
    Layout layout;
    unsigned across = 1;
    unsigned down = 1;
    double width = 0; // of a window
    double height = 0;
    double step_x = 0; // from window to window
    double step_y = 0;

    [[nodiscard]] unsigned sheets() const { return across * down; }
};

unsigned pieces_of(double whole, double window) {
    if (whole <= window) {
        return 1;
    }
    return static_cast<unsigned>(
        std::ceil((whole - least_overlap) / (window - least_overlap) - 1e-9));
}

Cut cut(const model::Face& face, const Layout& layout) {
    const double width = face.width_mm + 2 * round_the_face;
    const double height = face.height_mm + 2 * round_the_face;
    Cut made{layout};
    made.across = pieces_of(width, layout.width);
    made.down = pieces_of(height, layout.height);
    made.width = (width + (made.across - 1) * least_overlap) / made.across;
    made.height = (height + (made.down - 1) * least_overlap) / made.down;
    made.step_x = made.width - least_overlap;
    made.step_y = made.height - least_overlap;
    return made;
}

// The way to lay the sheets that needs the fewest.
Cut best_cut(const model::Face& face, Paper paper) {
    std::vector<Cut> cuts;
    for (const Layout& layout : layouts(paper)) {
        cuts.push_back(cut(face, layout));
    }
    return *std::min_element(cuts.begin(), cuts.end(),
                             [](const Cut& a, const Cut& b) { return a.sheets() < b.sheets(); });
}

// Crosses in the middle of each overlap, at the same places of the face on both sheets.
void add_register_crosses(std::vector<Shape>& shapes, const Cut& cut, Point region) {
    constexpr double half = 4;
    for (unsigned column = 1; column < cut.across; ++column) {
        const double x = region.x + column * cut.step_x + least_overlap / 2;
        for (unsigned row = 0; row < cut.down; ++row) {
            for (const double share : {0.25, 0.75}) {
                const double y = region.y + row * cut.step_y + share * cut.height;
                add_cross(shapes, {x, y}, half, {usual});
            }
        }
    }
    for (unsigned row = 1; row < cut.down; ++row) {
        const double y = region.y + row * cut.step_y + least_overlap / 2;
        for (unsigned column = 0; column < cut.across; ++column) {
            for (const double share : {0.25, 0.75}) {
                const double x = region.x + column * cut.step_x + share * cut.width;
                add_cross(shapes, {x, y}, half, {usual});
            }
        }
    }
}

// Broken lines along the edges at which another sheet goes on, with its number.
void add_edges(const Language& in, Scene& scene, const Cut& cut, Point corner, unsigned column,
               unsigned row) {
    const Stroke stroke{usual, Ink::black, Dash::cut_off};
    const Point far{corner.x + cut.width, corner.y + cut.height};
    const auto sheet = [&](unsigned c, unsigned r) {
        return fill_text(language::text(in, "goes on: sheet {sheet}"),
                         {{"sheet", std::to_string(r * cut.across + c + 1)}});
    };
    constexpr double size = 2.4;
    if (column > 0) {
        add(scene, Line{corner, {corner.x, far.y}, stroke});
        add(scene, Text{{corner.x + size + 1, (corner.y + far.y) / 2},
                        sheet(column - 1, row),
                        size,
                        Align::middle,
                        false,
                        Ink::black,
                        true});
    }
    if (column + 1 < cut.across) {
        add(scene, Line{{far.x, corner.y}, far, stroke});
        add(scene, Text{{far.x - 1.4, (corner.y + far.y) / 2},
                        sheet(column + 1, row),
                        size,
                        Align::middle,
                        false,
                        Ink::black,
                        true});
    }
    if (row > 0) {
        add(scene, Line{corner, {far.x, corner.y}, stroke});
        add(scene, Text{{(corner.x + far.x) / 2, corner.y + size + 1},
                        sheet(column, row - 1),
                        size,
                        Align::middle});
    }
    if (row + 1 < cut.down) {
        add(scene, Line{{corner.x, far.y}, far, stroke});
        add(scene, Text{{(corner.x + far.x) / 2, far.y - 1.4},
                        sheet(column, row + 1),
                        size,
                        Align::middle});
    }
}

std::string face_words(const Language& in, const model::Face& face) {
    return language::own(in, "face " + face.name, language::spaced(face.name));
}

// Each fastener with its place, for who cannot see the map.
std::string map_in_words(const Language& in, const model::Model& model, const FaceMap& map) {
    std::string text =
        fill_text(language::text(in, "Places on the face {face}, in mm from its top left:"),
                  {{"face", face_words(in, *map.face)}}) +
        "\n\n";
    for (const MapGroup& group : map.groups) {
        const KeyRow row = key_row(in, model, group);
        text += fmt::format("- {}{}{}", group.number, language::colon(in),
                            language::said(in, model, group.item, false));
        for (const std::string& cell : {row.thread, row.drive, row.torque, row.remarks}) {
            text += cell.empty() ? "" : "; " + cell;
        }
        std::string where;
        for (const MapPlace& place : group.places) {
            where += (where.empty() ? "" : ", ") +
                     fill_text(language::text(in, "{x} across and {y} down"),
                               {{"x", language::said_number(in, place.at.x)},
                                {"y", language::said_number(in, place.at.y)}});
        }
        text += fill_text(language::text(in, "; at {places}"), {{"places", where}});
        text += "\n";
    }
    return text;
}

// The sheets of one face.
class FaceSheets {
public:
    FaceSheets(const model::Model& model, const model::Procedure& procedure, const FaceMap& map,
               Paper paper, const Language& in)
        : in_(in), model_(model), map_(map), paper_(paper), cut_(best_cut(*map.face, paper)),
          balloons_(balloons_of(map)) {
        const model::Guide& guide = model.guide(procedure.guide);
        guide_ = language::own(in, "guide " + guide.name,
                               guide.title.empty() ? guide.name : guide.title);
        const model::Device& device = model.device;
        place_ =
            fill_text(language::text(in, "{device}: face {face}, {width} x {height} mm"),
                      {{"device", language::own(in, "device " + device.name,
                                                device.title.empty() ? device.name : device.title)},
                       {"face", face_words(in, *map.face)},
                       {"width", language::said_number(in, map.face->width_mm)},
                       {"height", language::said_number(in, map.face->height_mm)}});
        place_key();
        sheets_ = cut_.sheets() + static_cast<unsigned>(key_on_map_ ? 0 : keys_.size());
    }

    std::vector<Scene> draw() {
        std::vector<Scene> scenes;
        for (unsigned row = 0; row < cut_.down; ++row) {
            for (unsigned column = 0; column < cut_.across; ++column) {
                scenes.push_back(tile(column, row));
            }
        }
        for (std::size_t i = 0; i < keys_.size() && !key_on_map_; ++i) {
            Scene scene = sheet(key_layout(), cut_.sheets() + static_cast<unsigned>(i) + 1);
            scene.shapes.insert(scene.shapes.end(), keys_[i].shapes.begin(), keys_[i].shapes.end());
            scenes.push_back(std::move(scene));
        }
        scenes.front().alternative_text = map_in_words(in_, model_, map_);
        return scenes;
    }

private:
    [[nodiscard]] Layout key_layout() const { return layouts(paper_).front(); }

    // Below a face that leaves room, else on sheets of its own.
    void place_key() {
        const Layout& layout = cut_.layout;
        const Point below{layout.corner.x, layout.corner.y + cut_.height + 2};
        keys_ = key_tables(in_, model_, map_, below, layout.width, 1000);
        const double room = layout.height - cut_.height - 2;
        key_on_map_ = cut_.sheets() == 1 && keys_.front().height <= room && layout.is_upright;
        if (!key_on_map_) {
            const Layout own = key_layout();
            keys_ = key_tables(in_, model_, map_, own.corner, own.width, own.height);
        }
    }

    [[nodiscard]] Scene sheet(const Layout& layout, unsigned number) const {
        Scene scene;
        scene.width = layout.paper_width;
        scene.height = layout.paper_height;
        scene.title = fill_text(language::text(in_, "Fastener map, {place}"), {{"place", place_}});
        if (sheets_ > 1) {
            scene.title +=
                fill_text(language::text(in_, ", sheet {sheet} of {sheets}"),
                          {{"sheet", std::to_string(number)}, {"sheets", std::to_string(sheets_)}});
        }
        const std::string title =
            fill_text(language::text(in_, "Fastener map: {guide}"), {{"guide", guide_}});
        add_head(in_, scene, layout, {title, place_, number, sheets_});
        add_foot(in_, scene, layout);
        return scene;
    }

    // Does the window show the balloon, its fastener and the number beside that?
    [[nodiscard]] bool is_whole(const Balloon& balloon, unsigned column, unsigned row) const {
        const MapGroup& group = map_.groups[balloon.group];
        const Point head = group.places[balloon.place].at;
        const double round_head = head_radius(group) + (group.places.size() > 1 ? 3 : 0);
        const double left = column * cut_.step_x - round_the_face;
        const double top = row * cut_.step_y - round_the_face;
        const auto inside = [&](Point p, double radius) {
            return p.x - radius >= left && p.x + radius <= left + cut_.width &&
                   p.y - radius >= top && p.y + radius <= top + cut_.height;
        };
        return inside(balloon.centre, balloon_radius) && inside(head, round_head);
    }

    [[nodiscard]] bool is_whole_somewhere(const Balloon& balloon) const {
        for (unsigned row = 0; row < cut_.down; ++row) {
            for (unsigned column = 0; column < cut_.across; ++column) {
                if (is_whole(balloon, column, row)) {
                    return true;
                }
            }
        }
        return false;
    }

    [[nodiscard]] Scene tile(unsigned column, unsigned row) const {
        const Layout& layout = cut_.layout;
        Scene scene = sheet(layout, row * cut_.across + column + 1);
        const double spare = std::max(0.0, layout.width - cut_.width);
        const Point corner{layout.corner.x + spare / 2, layout.corner.y};
        const Point region{corner.x - column * cut_.step_x, corner.y - row * cut_.step_y};
        const Point origin{region.x + round_the_face, region.y + round_the_face};
        std::vector<Balloon> shown;
        for (const Balloon& balloon : balloons_) {
            if (is_whole(balloon, column, row) || !is_whole_somewhere(balloon)) {
                shown.push_back(balloon);
            }
        }
        std::vector<Shape> shapes = face_shapes(map_, shown, origin);
        add_register_crosses(shapes, cut_, region);
        add(scene, Window{corner, cut_.width, cut_.height, std::move(shapes)});
        add_edges(in_, scene, cut_, corner, column, row);
        if (cut_.sheets() > 1) {
            add_locator(scene, layout, {cut_.across, cut_.down, column, row});
        }
        if (key_on_map_) {
            scene.shapes.insert(scene.shapes.end(), keys_.front().shapes.begin(),
                                keys_.front().shapes.end());
        }
        return scene;
    }

    const Language& in_;
    const model::Model& model_;
    const FaceMap& map_;
    Paper paper_;
    Cut cut_;
    std::vector<Balloon> balloons_;
    std::string guide_;
    std::string place_;
    std::vector<KeyTable> keys_;
    bool key_on_map_ = false;
    unsigned sheets_ = 0;
};

} // namespace

std::vector<Scene> fastener_map(const model::Model& model, const model::Procedure& procedure,
                                Paper paper, const Language& in) {
    const std::vector<FaceMap> maps = face_maps(model, procedure, in);
    std::vector<Scene> scenes;
    for (const FaceMap& map : maps) {
        for (Scene& scene : FaceSheets(model, procedure, map, paper, in).draw()) {
            scenes.push_back(std::move(scene));
        }
    }
    return scenes;
}

} // namespace matchmark::draw
