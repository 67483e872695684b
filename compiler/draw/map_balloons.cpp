// Where the balloons of a fastener map stand: near their fastener, over nothing else.
#include "draw/map_balloons.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace matchmark::draw {

namespace {

constexpr double clearance = 0.8; // between what must not touch

struct Disc {
    Point centre;
    double radius = 0;
};

double distance(Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y); }

// How near the point comes to the piece of line from `a` to `b`.
double distance_to_line(Point p, Point a, Point b) {
    const double length = distance(a, b);
    if (length < 1e-9) {
        return distance(p, a);
    }
    const double along =
        ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / (length * length);
    const double share = std::clamp(along, 0.0, 1.0);
    return distance(p, {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)});
}

// What is already on the map.
struct Taken {
    std::vector<Disc> heads;
    std::vector<Disc> balloons;
    std::vector<std::pair<Point, Point>> leaders;
};

double cost(const Taken& taken, const model::Face& face, Point head, Point centre) {
    const Point middle{face.width_mm / 2, face.height_mm / 2};
    double sum = distance(head, centre);
    sum += distance_to_outline(face, centre) < balloon_radius + clearance ? 12 : 0;
    // Outwards is where a fastener near an edge has room.
    sum += distance(centre, middle) < distance(head, middle) ? 2 : 0;
    for (const Disc& disc : taken.heads) {
        const double gap = distance(disc.centre, centre) - disc.radius - balloon_radius;
        sum += gap < clearance ? 200 : 0;
        const bool own = distance(disc.centre, head) < 1e-6;
        const bool crossed = distance_to_line(disc.centre, head, centre) < disc.radius + clearance;
        sum += !own && crossed ? 100 : 0;
    }
    for (const Disc& disc : taken.balloons) {
        const double gap = distance(disc.centre, centre) - disc.radius - balloon_radius;
        sum += gap < clearance ? 200 : 0;
        const bool crossed = distance_to_line(disc.centre, head, centre) < disc.radius + clearance;
        sum += crossed ? 100 : 0;
    }
    for (const auto& [from, to] : taken.leaders) {
        sum += distance_to_line(centre, from, to) < balloon_radius + clearance ? 100 : 0;
    }
    return sum;
}

Point best_centre(const Taken& taken, const model::Face& face, Point head, double radius) {
    constexpr int directions = 16;
    constexpr std::array steps{3.2, 5.5, 8.0, 11.0};
    constexpr double turn = 6.28318530717958647692 / directions;
    Point best = head;
    double least = -1;
    for (const double step : steps) {
        const double away = std::min(radius + balloon_radius + step, reach - balloon_radius);
        for (int i = 0; i < directions; ++i) {
            // Slanting first: a leader that lies on an edge or a centre line is hard to see.
            const double angle = turn * (i + 0.5) + turn * 2;
            const Point centre{head.x + away * std::cos(angle), head.y + away * std::sin(angle)};
            const double sum = cost(taken, face, head, centre);
            if (least < 0 || sum < least - 1e-6) {
                least = sum;
                best = centre;
            }
        }
    }
    return best;
}

} // namespace

double distance_to_outline(const model::Face& face, Point p) {
    const double rounding = std::min({face.corner_mm, face.width_mm / 2, face.height_mm / 2});
    const double across = std::abs(p.x - face.width_mm / 2) - face.width_mm / 2 + rounding;
    const double down = std::abs(p.y - face.height_mm / 2) - face.height_mm / 2 + rounding;
    const double beyond = std::hypot(std::max(across, 0.0), std::max(down, 0.0));
    return std::abs(beyond + std::min(std::max(across, down), 0.0) - rounding);
}

double head_radius(const MapGroup& group) {
    return std::max(group.head > 0 ? group.head : least_head, group.shank) / 2;
}

std::vector<Balloon> balloons_of(const FaceMap& map) {
    Taken taken;
    for (const MapGroup& group : map.groups) {
        for (const MapPlace& place : group.places) {
            // The member's small number stands beside its head.
            const double room = group.places.size() > 1 ? 2.2 : 0;
            taken.heads.push_back({place.at, head_radius(group) + room});
        }
    }
    std::vector<Balloon> balloons;
    for (std::size_t i = 0; i < map.groups.size(); ++i) {
        const MapGroup& group = map.groups[i];
        for (std::size_t j = 0; j < group.places.size(); ++j) {
            if (!group.places[j].undone) {
                continue;
            }
            const Point head = group.places[j].at;
            const Point centre = best_centre(taken, *map.face, head, head_radius(group));
            taken.balloons.push_back({centre, balloon_radius});
            taken.leaders.emplace_back(head, centre);
            balloons.push_back({i, j, centre});
        }
    }
    return balloons;
}

} // namespace matchmark::draw
