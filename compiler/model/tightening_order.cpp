// Star and spiral orders, worked out from where the fasteners are.
#include "model/tightening_order.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace matchmark::model {

namespace {

constexpr auto patterns = std::to_array<std::string_view>({"star", "spiral"});
// Places whose distances from the middle differ by less stand on one ring.
constexpr double one_ring = 0.05;

Point middle_of(const std::vector<Point>& places) {
    Point middle;
    for (const Point& place : places) {
        middle.x += place.x / static_cast<double>(places.size());
        middle.y += place.y / static_cast<double>(places.size());
    }
    return middle;
}

// Clockwise from the top, in turns.
double bearing(const Point& place, const Point& middle) {
    const double turn = std::atan2(place.x - middle.x, middle.y - place.y) / (2 * std::acos(-1.0));
    return turn < -1e-9 ? turn + 1 : turn;
}

std::vector<std::uint16_t> by_number(std::uint16_t count) {
    std::vector<std::uint16_t> members(count);
    std::iota(members.begin(), members.end(), std::uint16_t{1});
    return members;
}

// Round the circle, from the top or from member 1 when it stands nearest to there.
std::vector<std::uint16_t> round_the_circle(const std::vector<Point>& places, std::uint16_t count) {
    std::vector<std::uint16_t> members = by_number(count);
    if (places.size() != count)
        return members;
    const Point middle = middle_of(places);
    const double start = bearing(places.front(), middle);
    const auto turn_from_first = [&](std::uint16_t member) {
        const double turn = bearing(places[member - 1U], middle) - start;
        return turn < -1e-9 ? turn + 1 : turn;
    };
    std::stable_sort(members.begin(), members.end(), [&](std::uint16_t a, std::uint16_t b) {
        return turn_from_first(a) < turn_from_first(b);
    });
    return members;
}

// 0, 1, ..., count - 1 in steps of half the count, so that neighbours come late.
std::vector<std::size_t> spread(std::size_t count) {
    const std::size_t step = std::max<std::size_t>(count / 2, 1);
    std::vector<std::size_t> order;
    for (std::size_t start = 0; start < step && order.size() < count; ++start) {
        for (std::size_t at = start; at < count; at += step) {
            if (std::find(order.begin(), order.end(), at) == order.end())
                order.push_back(at);
        }
    }
    return order;
}

// Places on the circle, by number from 0: opposite ones together, then those between.
std::vector<std::size_t> star(std::size_t count) {
    std::vector<std::size_t> order;
    if (count % 4 == 0) {
        const std::size_t quarter = count / 4;
        for (const std::size_t first : spread(quarter)) {
            for (const std::size_t turn : {0U, 2U, 1U, 3U})
                order.push_back(first + turn * quarter);
        }
        return order;
    }
    if (count % 2 == 0) {
        for (const std::size_t first : spread(count / 2)) {
            order.push_back(first);
            order.push_back(first + count / 2);
        }
        return order;
    }
    for (std::size_t i = 0, at = 0; i < count; ++i, at = (at + count / 2) % count)
        order.push_back(at);
    return order;
}

std::vector<std::uint16_t> spiral(const std::vector<Point>& places, std::uint16_t count) {
    std::vector<std::uint16_t> members = by_number(count);
    if (places.size() != count)
        return members;
    const Point middle = middle_of(places);
    std::vector<double> distance;
    for (const Point& place : places)
        distance.push_back(std::hypot(place.x - middle.x, place.y - middle.y));
    const double widest = *std::max_element(distance.begin(), distance.end());
    const auto ring = [&](std::uint16_t member) {
        return widest > 0 ? std::floor(distance[member - 1U] / widest / one_ring + 0.5) : 0.0;
    };
    std::stable_sort(members.begin(), members.end(), [&](std::uint16_t a, std::uint16_t b) {
        if (ring(a) != ring(b))
            return ring(a) < ring(b);
        return bearing(places[a - 1U], middle) < bearing(places[b - 1U], middle);
    });
    return members;
}

} // namespace

bool is_pattern(std::string_view pattern) {
    return std::find(patterns.begin(), patterns.end(), pattern) != patterns.end();
}

std::vector<std::string> pattern_names() { return {patterns.begin(), patterns.end()}; }

std::vector<std::uint16_t> tightening_order(std::string_view pattern,
                                            const std::vector<Point>& places, std::uint16_t count) {
    if (pattern == patterns[1])
        return spiral(places, count);
    if (pattern != patterns[0] || count == 0)
        return {};
    const std::vector<std::uint16_t> circle = round_the_circle(places, count);
    std::vector<std::uint16_t> order;
    for (const std::size_t at : star(count))
        order.push_back(circle[at]);
    return order;
}

std::vector<double> pass_parts(int passes) {
    if (passes <= 1)
        return {1.0};
    if (passes == 2)
        return {0.5, 1.0};
    std::vector<double> parts;
    for (int pass = 0; pass < passes; ++pass)
        parts.push_back(0.3 + 0.7 * pass / (passes - 1));
    return parts;
}

} // namespace matchmark::model
