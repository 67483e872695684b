// What is drawn on the sheets of a fastener map: heads, balloons, the face, the key.
#include "draw/map_shapes.hpp"

#include "draw/lettering.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace matchmark::draw {

using language::Language;

namespace {

constexpr double number_size = 3.4;
constexpr double member_size = 2.4;
constexpr double cell_size = 2.6;
constexpr double leading = 1.3;

// A polygon with equal sides; the first corner at `turn` of a full circle, from the right.
Path polygon(Point centre, double radius, int corners, double turn) {
    constexpr double full = 6.28318530717958647692;
    Path path;
    for (int i = 0; i < corners; ++i) {
        const double angle = full * (turn + static_cast<double>(i) / corners);
        const Point at{centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
        if (i == 0) {
            path.start = at;
        } else {
            path.pieces.push_back({false, {}, {}, at});
        }
    }
    path.closed = true;
    path.stroke = Stroke{wide};
    path.fill = Ink::white;
    return path;
}

void add_head(std::vector<Shape>& shapes, const MapGroup& group, const MapPlace& place, Point at) {
    const double radius = head_radius(group);
    const bool known = group.head > 0;
    const Stroke rim{place.undone ? 0.35 : thin, Ink::black, known ? Dash::none : Dash::hidden};
    put(shapes, Circle{at, radius, rim, place.undone ? Ink::white : Ink::pale});
    if (group.shank > 0 && group.shank / 2 < radius) {
        put(shapes, Circle{at, group.shank / 2, Stroke{thin}, std::nullopt});
    }
    add_cross(shapes, at, radius + 0.8, {0.13});
}

// Beside the head, away from the balloon and clear of the outline.
Point member_place(const model::Face& face, const MapGroup& group, Point at, Point balloon) {
    constexpr double eighth = 0.78539816339744830962;
    const double away = head_radius(group) + 2.1;
    const double opposite = std::atan2(at.y - balloon.y, at.x - balloon.x);
    Point best = at;
    double clearest = -1;
    for (const int turns : {0, 1, -1, 2, -2}) {
        const double angle = opposite + turns * eighth;
        const Point place{at.x + away * std::cos(angle), at.y + away * std::sin(angle)};
        const double clear = std::min(distance_to_outline(face, place), 2.2);
        if (clear > clearest + 1e-6) {
            clearest = clear;
            best = place;
        }
    }
    return best;
}

void add_leader(std::vector<Shape>& shapes, const MapGroup& group, Point at, Point balloon) {
    const double length = std::max(0.001, std::hypot(at.x - balloon.x, at.y - balloon.y));
    const double from = head_radius(group);
    const Point edge{at.x + (balloon.x - at.x) / length * from,
                     at.y + (balloon.y - at.y) / length * from};
    put(shapes, Line{edge, balloon, {usual}});
}

struct Column {
    const char* heading;
    double share; // of the table's width
};
constexpr std::array columns{Column{"No.", 0.06},
                             Column{"Fastener", 0.22},
                             Column{"Count", 0.07},
                             Column{"Thread", 0.12},
                             Column{"Drive, head", 0.19},
                             Column{"Torque", 0.12},
                             Column{"Order, and what to watch", 0.22}};

std::vector<std::vector<std::string>> cells_of(const KeyRow& row, double width) {
    const std::array<std::string, columns.size()> words{
        "", row.name, row.count, row.thread, row.drive, row.torque, row.remarks};
    std::vector<std::vector<std::string>> cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells.push_back(words[i].empty()
                            ? std::vector<std::string>{}
                            : wrapped(words[i], width * columns[i].share - 2, cell_size));
    }
    return cells;
}

double height_of(const std::vector<std::vector<std::string>>& cells) {
    std::size_t lines = 1;
    for (const auto& cell : cells) {
        lines = std::max(lines, cell.size());
    }
    return std::max(10.0, static_cast<double>(lines) * cell_size * leading + 2.5);
}

void start_table(const Language& in, KeyTable& table, Point origin, double width) {
    double x = origin.x;
    for (const Column& column : columns) {
        put(table.shapes, Text{{x, origin.y + 3.6},
                               language::text(in, column.heading),
                               cell_size,
                               Align::left,
                               true});
        x += width * column.share;
    }
    put(table.shapes, Line{{origin.x, origin.y + 5.2}, {origin.x + width, origin.y + 5.2}, {0.35}});
    table.height = 5.2;
}

} // namespace

void add_cross(std::vector<Shape>& shapes, Point at, double half, Stroke stroke) {
    put(shapes, Line{{at.x - half, at.y}, {at.x + half, at.y}, stroke});
    put(shapes, Line{{at.x, at.y - half}, {at.x, at.y + half}, stroke});
}

void add_mark(std::vector<Shape>& shapes, Point centre, const MapGroup& group) {
    double low = 0; // by how much the number stands below the middle
    switch (group.mark) {
    case Mark::ring:
        put(shapes, Circle{centre, balloon_radius, Stroke{0.35}, Ink::white});
        break;
    case Mark::square:
        put(shapes,
            Rectangle{{centre.x - 2.9, centre.y - 2.9}, 5.8, 5.8, 0, Stroke{wide}, Ink::white});
        break;
    case Mark::triangle:
        put(shapes, polygon(centre, 4.6, 3, 0.75));
        low = 0.5;
        break;
    case Mark::diamond:
        put(shapes, polygon(centre, 4.2, 4, 0));
        break;
    case Mark::hexagon:
        put(shapes, polygon(centre, 3.7, 6, 0));
        break;
    }
    const bool long_number = group.number > 99;
    const bool narrow =
        group.number > 9 && (group.mark == Mark::triangle || group.mark == Mark::diamond);
    const double size = long_number ? 2.4 : narrow ? 2.8 : number_size;
    put(shapes, Text{{centre.x, centre.y + size * 0.36 + low},
                     std::to_string(group.number),
                     size,
                     Align::middle,
                     true});
}

std::vector<Shape> face_shapes(const FaceMap& map, const std::vector<Balloon>& balloons,
                               Point origin) {
    std::vector<Shape> shapes;
    const model::Face& face = *map.face;
    const double rounding = std::min({face.corner_mm, face.width_mm / 2, face.height_mm / 2});
    put(shapes,
        Rectangle{origin, face.width_mm, face.height_mm, rounding, Stroke{widest}, std::nullopt});
    const auto moved = [&](Point p) { return Point{p.x + origin.x, p.y + origin.y}; };
    for (const Balloon& balloon : balloons) {
        const MapGroup& group = map.groups[balloon.group];
        add_leader(shapes, group, moved(group.places[balloon.place].at), moved(balloon.centre));
    }
    for (const MapGroup& group : map.groups) {
        for (const MapPlace& place : group.places) {
            add_head(shapes, group, place, moved(place.at));
        }
    }
    for (const Balloon& balloon : balloons) {
        const MapGroup& group = map.groups[balloon.group];
        add_mark(shapes, moved(balloon.centre), group);
        if (group.places.size() > 1) {
            const MapPlace& place = group.places[balloon.place];
            const Point at = moved(member_place(face, group, place.at, balloon.centre));
            put(shapes, Text{{at.x, at.y + member_size * 0.36},
                             std::to_string(place.member),
                             member_size,
                             Align::middle});
        }
    }
    return shapes;
}

std::vector<KeyTable> key_tables(const Language& in, const model::Model& model, const FaceMap& map,
                                 Point origin, double width, double room) {
    std::vector<KeyTable> tables(1);
    start_table(in, tables.back(), origin, width);
    bool is_empty = true;
    for (const MapGroup& group : map.groups) {
        const auto cells = cells_of(key_row(in, model, group), width);
        const double height = height_of(cells);
        if (!is_empty && tables.back().height + height > room) {
            tables.emplace_back();
            start_table(in, tables.back(), origin, width);
        }
        KeyTable& table = tables.back();
        const double top = origin.y + table.height;
        add_mark(table.shapes, {origin.x + 4.2, top + height / 2}, group);
        double x = origin.x;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const auto lines = static_cast<double>(cells[i].size());
            double y = top + (height - lines * cell_size * leading) / 2;
            for (const std::string& line : cells[i]) {
                y += cell_size * leading;
                put(table.shapes, Text{{x, y - cell_size * 0.42}, line, cell_size});
            }
            x += width * columns[i].share;
        }
        table.height += height;
        const double foot = origin.y + table.height;
        put(table.shapes, Line{{origin.x, foot}, {origin.x + width, foot}, {0.13, Ink::grey}});
        is_empty = false;
    }
    return tables;
}

} // namespace matchmark::draw
