// From the counts of an appraisal to bars.
#include "draw/charts_appraisal.hpp"

#include "draw/charts_bars.hpp"
#include "draw/paint.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

namespace matchmark::draw {

namespace {

constexpr std::size_t most_waited_for = 20;

bool is_out(const guide::PartAppraisal& part) {
    return part.way == guide::WayFound::least || part.way == guide::WayFound::bounded;
}

void append(std::vector<Scene>& scenes, const BarChart& chart) {
    for (Scene& scene : bar_charts(chart))
        scenes.push_back(std::move(scene));
}

} // namespace

std::vector<Scene> appraisal_charts(const guide::Appraisal& appraisal) {
    BarChart depth{"Steps to each part", "steps until it is off", "", {}};
    BarChart times{"Time of each part",
                   "usual time to take it out",
                   "usual time to put it back, and all that came off for it",
                   {}};
    for (const guide::PartAppraisal& part : appraisal.parts) {
        if (!is_out(part))
            continue;
        const auto steps = part.steps.size();
        depth.bars.push_back({part.title, static_cast<double>(steps), 0, fmt::format("{}", steps)});
        times.bars.push_back({part.title, part.seconds_apart, part.seconds_back,
                              fmt::format("{} + {}", guide::time_words(part.seconds_apart),
                                          guide::time_words(part.seconds_back))});
    }
    BarChart waited{"What most parts wait for",
                    "parts that no way reaches without moving it",
                    "further parts whose least way moves it",
                    {}};
    for (const guide::WaitedFor& item : appraisal.waited_for) {
        if (waited.bars.size() == most_waited_for)
            break;
        const auto always = item.always.size();
        const auto all = item.parts.size();
        waited.bars.push_back({item.title, static_cast<double>(always),
                               static_cast<double>(all - always),
                               all == always ? fmt::format("{}", all)
                                             : fmt::format("{}, {} of them always", all, always)});
    }
    std::vector<Scene> scenes;
    append(scenes, depth);
    append(scenes, times);
    append(scenes, waited);
    return scenes;
}

std::vector<guide::Figure> appraisal_figures(const guide::Appraisal& appraisal) {
    std::vector<guide::Figure> figures;
    for (const Scene& scene : appraisal_charts(appraisal)) {
        figures.push_back({fmt::format("chart-{}", figures.size() + 1), scene.title,
                           paint_svg(scene), scene.width, scene.height, scene.alternative_text});
    }
    return figures;
}

} // namespace matchmark::draw
