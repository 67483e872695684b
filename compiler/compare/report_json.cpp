// The difference for programs: docs/comparing.md says what each key means.
#include "compare/report.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace matchmark::compare {

namespace {

using Json = nlohmann::ordered_json;

Json json_of(const Change& change) {
    Json object;
    object["sort"] = name_of(change.sort);
    object["safety"] = change.safety;
    object["matters"] = change.matters;
    object["subject"] = change.subject;
    object["what"] = change.what;
    object["before"] = change.before;
    object["after"] = change.after;
    object["steps"] = Json::array();
    for (const StepPlace& place : change.steps) {
        Json step;
        step["number"] = place.number;
        step["name"] = place.name;
        step["title"] = place.title;
        step["in_old"] = place.in_old;
        object["steps"].push_back(std::move(step));
    }
    object["why"] = change.why;
    object["with_it"] = change.with_it;
    return object;
}

Json json_of(const std::vector<Change>& changes) {
    Json list = Json::array();
    for (const Change& change : changes) {
        list.push_back(json_of(change));
    }
    return list;
}

} // namespace

std::string to_json(const Report& report) {
    Json object;
    object["old"] = report.before;
    object["new"] = report.after;
    object["changed"] = report.changed();
    object["safety"] = std::any_of(
        report.differences.begin(), report.differences.end(), [](const Difference& difference) {
            return std::any_of(difference.changes.begin(), difference.changes.end(),
                               [](const Change& change) { return change.safety; });
        });
    object["remarks"] = report.remarks;
    object["guides"] = Json::array();
    for (const Difference& difference : report.differences) {
        Json guide;
        guide["name"] = difference.name;
        guide["title"] = difference.title;
        guide["changes"] = json_of(difference.changes);
        guide["notes"] = json_of(difference.notes);
        object["guides"].push_back(std::move(guide));
    }
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace matchmark::compare
