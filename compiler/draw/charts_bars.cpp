// Bars on one common scale, each with its label before it and its value behind it.
#include "draw/charts_bars.hpp"

#include "draw/lettering.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::draw {

namespace {

constexpr std::size_t most_bars = 36; // on one sheet
constexpr double row = 5.6;
constexpr double bar_height = 3.4;
constexpr double bar_letters = 2.8;
constexpr double gap = 2;
constexpr double widest_label = 56;
constexpr double head = 9; // the line that says what a bar means

struct Columns {
    double label = 0; // where labels end
    double bars = 0;  // how wide the longest bar may be
    double scale = 0; // mm for one
};

std::string one_line(const std::string& words, double width) {
    const auto lines = wrapped(words, width, bar_letters, false, 1);
    return lines.empty() ? std::string() : lines.front();
}

Columns columns_of(const BarChart& chart) {
    Columns columns;
    double value = 0;
    double longest = 0;
    for (const Bar& bar : chart.bars) {
        columns.label =
            std::max(columns.label, std::min(widest_label, text_width(bar.label, bar_letters)));
        value = std::max(value, text_width(bar.value, bar_letters));
        longest = std::max(longest, bar.first + bar.second);
    }
    columns.bars = page_width - columns.label - value - 2 * gap - 1;
    columns.scale = longest > 0 ? columns.bars / longest : 0;
    return columns;
}

void add_key(Scene& scene, const BarChart& chart, double left) {
    double at = left;
    const auto entry = [&](const std::string& words, Ink fill) {
        add(scene, Rectangle{{at, 1.6}, 5, 3, 0, Stroke{usual, Ink::black, Dash::none}, fill});
        add(scene, Text{{at + 6.5, 4.1}, words, bar_letters});
        at += 6.5 + text_width(words, bar_letters) + 6;
    };
    entry(chart.first, Ink::black);
    if (!chart.second.empty())
        entry(chart.second, Ink::white);
}

void add_bar(Scene& scene, const Bar& bar, const Columns& columns, double top) {
    const double base = top + row / 2 + bar_letters * 0.34;
    const double left = columns.label + gap;
    const double bar_top = top + (row - bar_height) / 2;
    const Stroke edge{usual, Ink::black, Dash::none};
    add(scene, Text{{columns.label, base},
                    one_line(bar.label, columns.label + 0.1),
                    bar_letters,
                    Align::right});
    const double first = bar.first * columns.scale;
    const double second = bar.second * columns.scale;
    if (second > 0)
        add(scene, Rectangle{{left + first, bar_top}, second, bar_height, 0, edge, Ink::white});
    if (first > 0)
        add(scene, Rectangle{{left, bar_top}, first, bar_height, 0, edge, Ink::black});
    add(scene, Text{{left + first + second + gap / 2 + 0.4, base}, bar.value, bar_letters});
}

Scene sheet(const BarChart& chart, const Columns& columns, std::size_t from, std::size_t to) {
    Scene scene;
    scene.width = page_width;
    scene.height = head + row * static_cast<double>(to - from) + 2;
    scene.title = chart.title;
    if (to - from < chart.bars.size())
        scene.title += fmt::format(", {} to {} of {}", from + 1, to, chart.bars.size());
    add_key(scene, chart, columns.label + gap);
    const double left = columns.label + gap;
    scene.alternative_text = chart.first;
    if (!chart.second.empty())
        scene.alternative_text += "; " + chart.second;
    scene.alternative_text += ":\n\n";
    for (std::size_t i = from; i < to; ++i) {
        const Bar& bar = chart.bars[i];
        add_bar(scene, bar, columns, head + row * static_cast<double>(i - from));
        scene.alternative_text += fmt::format("- {}: {}\n", bar.label, bar.value);
    }
    add(scene, Line{{left, head - 0.6},
                    {left, scene.height - 1.4},
                    Stroke{usual, Ink::black, Dash::none}});
    return scene;
}

} // namespace

std::vector<Scene> bar_charts(const BarChart& chart) {
    std::vector<Scene> scenes;
    const Columns columns = columns_of(chart);
    for (std::size_t from = 0; from < chart.bars.size(); from += most_bars)
        scenes.push_back(
            sheet(chart, columns, from, std::min(from + most_bars, chart.bars.size())));
    return scenes;
}

} // namespace matchmark::draw
