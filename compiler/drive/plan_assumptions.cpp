// Puts the assumed lines of an answer into words: where they stand, and where to look first.
#include "drive/plan_assumptions.hpp"

#include "drive/plan_times.hpp"
#include "guide/appraisal.hpp"
#include "model/describe.hpp"
#include "plan/assumptions.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <ostream>
#include <sstream>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

// The line without its indentation and padding: "under lid".
std::string assumption_words(const SourceMap& sources, Span line) {
    std::istringstream in{std::string(sources.slice(line))};
    std::string words;
    for (std::string word; in >> word && !word.starts_with('#');) {
        if (word != "assumed")
            words += (words.empty() ? "" : " ") + word;
    }
    return words;
}

// What is gained when it is not so.
std::string gain(const plan::WayIn& way, const std::optional<double>& without) {
    if (!without)
        return {};
    return *without < way.seconds ? guide::time_words(way.seconds - *without) + " less"
                                  : "the same time";
}

} // namespace

void write_assumed(const Compilation& done, const bench::Bench& on, const plan::WayInGoal& goal,
                   const plan::WayIn& way, std::ostream& out) {
    const model::Model& model = done.model;
    if (model.assumptions.empty())
        return;
    const plan::Assumed found = plan::assumed_by(on, goal, way);
    if (found.rests_on.empty()) {
        out << fmt::format("Rests on none of the device's {}.\n",
                           model::counted(model.assumptions.size(), "assumed line"));
        return;
    }
    out << fmt::format("Rests on {} that {} assumed:\n",
                       model::counted(found.rests_on.size(), "line"),
                       found.rests_on.size() == 1 ? "is" : "are");
    for (const plan::Reliance& one : found.rests_on) {
        const Place place = done.sources.place(one.line.line.file, one.line.line.begin);
        const std::string less = gain(way, one.seconds_without);
        out << fmt::format("  {}:{}: {} {}{}\n", done.sources.file(one.line.line.file).path,
                           place.line, model.item(one.line.item).name,
                           assumption_words(done.sources, one.line.line),
                           less.empty() ? "" : "; if not so: " + less);
    }
    if (found.look) {
        const std::string less = gain(way, found.look->seconds_without);
        out << fmt::format("One look would settle most: at {}, {}{}\n",
                           model::for_reader(model, found.look->item),
                           model::counted(found.look->lines, "assumed line"),
                           less.empty() ? "" : "; if none is so: " + less);
    }
}

Json assumed_json(const Compilation& done, const bench::Bench& on, const plan::WayInGoal& goal,
                  const plan::WayIn& way) {
    Json root;
    root["rests_on"] = Json::array();
    root["look"] = nullptr;
    if (done.model.assumptions.empty())
        return root;
    const auto seconds = [](const std::optional<double>& value) {
        return value ? Json(*value) : Json(nullptr);
    };
    const plan::Assumed found = plan::assumed_by(on, goal, way);
    for (const plan::Reliance& one : found.rests_on) {
        const Span line = one.line.line;
        root["rests_on"].push_back({{"item", done.model.item(one.line.item).name},
                                    {"says", assumption_words(done.sources, line)},
                                    {"file", done.sources.file(line.file).path},
                                    {"line", done.sources.place(line.file, line.begin).line},
                                    {"is_reason", one.is_reason},
                                    {"seconds_without", seconds(one.seconds_without)}});
    }
    if (found.look) {
        root["look"] = {{"item", done.model.item(found.look->item).name},
                        {"lines", found.look->lines},
                        {"relied_on", found.look->relied_on},
                        {"seconds_without", seconds(found.look->seconds_without)}};
    }
    return root;
}

} // namespace matchmark::drive
