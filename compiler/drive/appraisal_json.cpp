// The appraisal as JSON.
#include "drive/appraisal_report.hpp"

#include <nlohmann/json.hpp>

#include <ostream>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

Json counted(const std::vector<guide::Counted>& list) {
    Json rows = Json::array();
    for (const guide::Counted& one : list)
        rows.push_back({{"what", one.words}, {"count", one.count}});
    return rows;
}

Json part_json(const guide::PartAppraisal& part) {
    static constexpr const char* ways[] = {"least", "bounded", "impossible", "unknown"};
    Json row;
    row["part"] = part.name;
    row["title"] = part.title;
    row["counts_as"] = part.counts_as.empty() ? Json(nullptr) : Json(part.counts_as);
    row["proof"] = ways[static_cast<std::size_t>(part.way)];
    row["why_not"] = part.why_not;
    row["steps"] = part.steps.size();
    row["fewest_steps"] = part.fewest_steps;
    row["acts"] = part.acts;
    row["fasteners"] = counted(part.fasteners);
    row["plugs"] = counted(part.plugs);
    row["bonds"] = counted(part.bonds);
    row["tools"] = Json::array();
    for (const guide::ToolNeeded& tool : part.tools)
        row["tools"].push_back(
            {{"tool", tool.words}, {"sort", tool.sort.empty() ? Json(nullptr) : Json(tool.sort)}});
    row["renewed"] = part.renewed;
    row["seconds_apart"] = part.seconds_apart;
    row["seconds_back"] = part.seconds_back;
    row["waiting_seconds_apart"] = part.waiting_apart;
    row["waiting_seconds_back"] = part.waiting_back;
    row["at_least_seconds"] = part.at_least_seconds;
    row["step_list"] = Json::array();
    for (const guide::CountedStep& step : part.steps)
        row["step_list"].push_back({{"acts", step.acts}, {"ends_with", step.ends_with}});
    return row;
}

// Hundredths, as decimals: exact enough to be read, the whole numbers are what is compared.
Json range(const guide::ScoreRange& score) {
    return {{"lowest", score.lowest / 100.0}, {"highest", score.highest / 100.0}};
}

Json index_json(const guide::RepairIndex& index) {
    Json root;
    root["source"] = index.source;
    root["estimate"] = guide::index_disclaimer();
    root["tolerance"] = guide::index_tolerance();
    root["folding"] = index.folding;
    root["lowest"] = guide::ten_thousandths(index.lowest);
    root["highest"] = guide::ten_thousandths(index.highest);
    root["lowest_class"] = std::string(1, index.lowest_class);
    root["highest_class"] = std::string(1, index.highest_class);
    root["scores"] = Json::array();
    for (const guide::IndexScore& score : index.scores)
        root["scores"].push_back({{"name", score.name},
                                  {"symbol", score.symbol},
                                  {"weight", score.weight / 100.0},
                                  {"score", range(score.score)},
                                  {"because", score.because}});
    root["parts"] = Json::array();
    for (const guide::PartScore& part : index.parts)
        root["parts"].push_back(
            {{"part", part.part},
             {"items", part.items},
             {"weight", part.weight / 100.0},
             {"depth", {{"score", range(part.depth)}, {"because", part.depth_because}}},
             {"fasteners", {{"score", range(part.fasteners)}, {"because", part.fasteners_because}}},
             {"tools", {{"score", range(part.tools)}, {"because", part.tools_because}}}});
    root["undeclared"] = index.undeclared;
    root["notes"] = index.notes;
    return root;
}

} // namespace

void write_appraisal_json(const guide::Appraisal& appraisal, std::ostream& out) {
    Json root;
    root["device"] = appraisal.device;
    root["title"] = appraisal.title;
    root["variant"] = appraisal.variant.empty() ? Json(nullptr) : Json(appraisal.variant);
    root["parts"] = Json::array();
    for (const guide::PartAppraisal& part : appraisal.parts)
        root["parts"].push_back(part_json(part));
    root["waited_for"] = Json::array();
    for (const guide::WaitedFor& item : appraisal.waited_for)
        root["waited_for"].push_back({{"item", item.name},
                                      {"title", item.title},
                                      {"parts", item.parts},
                                      {"always", item.always}});
    root["index"] = appraisal.index ? index_json(*appraisal.index) : Json(nullptr);
    root["changes"] = Json::array();
    for (const guide::DesignChange& change : appraisal.changes)
        root["changes"].push_back({{"if", change.words},
                                   {"seconds_saved", change.seconds_saved},
                                   {"acts_saved", change.acts_saved},
                                   {"parts", change.parts},
                                   {"opened", change.opened}});
    out << root.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

} // namespace matchmark::drive
