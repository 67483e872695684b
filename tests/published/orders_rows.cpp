// Tightening orders and passes.
#include "model/tightening_order.hpp"
#include "published/subjects.hpp"

#include <array>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin sequence_of{"ASME PCC-1, cross-pattern tightening sequences", Reading::memory};
constexpr Origin passes_of{"ASME PCC-1, torque of each pass", Reading::memory};

struct Sequence {
    std::uint16_t bolts;
    std::string_view order;
};

constexpr auto sequences = std::to_array<Sequence>(
    {{4, "1 3 2 4"},
     {8, "1 5 3 7 2 6 4 8"},
     {12, "1 7 4 10 2 8 5 11 3 9 6 12"},
     {16, "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16"},
     {20, "1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19"},
     {24, "1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24"}});

std::string star(const std::vector<model::Point>& places, std::uint16_t bolts) {
    std::string order;
    for (const std::uint16_t member : model::tightening_order("star", places, bolts))
        order += fmt::format("{}{}", order.empty() ? "" : " ", member);
    return order;
}

// Places clockwise round a circle, the first at the top.
std::vector<model::Point> circle(std::uint16_t bolts) {
    std::vector<model::Point> places;
    for (std::uint16_t i = 0; i < bolts; ++i) {
        const double turn = 2 * std::acos(-1.0) * i / bolts;
        places.push_back({100 + 50 * std::sin(turn), 100 - 50 * std::cos(turn)});
    }
    return places;
}

} // namespace

void add_orders(Table& table) {
    for (const Sequence& one : sequences) {
        expect_same(table, sequence_of, fmt::format("{} bolts, by number", one.bolts),
                    std::string(one.order), star({}, one.bolts));
        expect_same(table, sequence_of, fmt::format("{} bolts, by place", one.bolts),
                    std::string(one.order), star(circle(one.bolts), one.bolts));
    }
    const std::vector<double> parts = model::pass_parts(3);
    const auto part = [&](std::size_t pass) {
        return pass < parts.size() ? std::optional(100 * parts[pass]) : std::nullopt;
    };
    // 20 to 30 %, 50 to 70 %, 100 %.
    expect(table, passes_of, "first of three passes, %", 25, part(0), within(5));
    expect(table, passes_of, "second of three passes, %", 60, part(1), within(10));
    expect(table, passes_of, "third of three passes, %", 100, part(2), exactly);
}

} // namespace matchmark::published
