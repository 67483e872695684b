// Many guides checked in one run: what one leaves to the next changes no finding.
#include "unit/drive/bench_files.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark;
using test::Desk;

namespace {

using Json = nlohmann::json;

std::string with(std::string text, const std::string& from, const std::string& to) {
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

// Guides of two devices in turn, two that add to their device, some whose
// device cannot be read whole, and the devices themselves.
Desk shelf() {
    Desk desk;
    auto& files = desk.disk.files;
    files["lamp.mmk"] = test::device_text;
    files["fan.mmk"] = with(with(test::device_text, "lamp", "fan"), "screw M3 x 8", "screw M4 x 8");
    files["torn.mmk"] = std::string(test::device_text) + "part shade kind no-such-kind\n";
    for (const char* number : {"1", "2", "3", "4"}) {
        const std::string n = number;
        files["lamp-" + n + ".mmk"] = n == "3" ? test::bad_guide : test::good_guide;
        files["fan-" + n + ".mmk"] = with(test::bad_guide, "lamp", "fan");
        files["torn-" + n + ".mmk"] = with(test::good_guide, "lamp.mmk", "torn.mmk");
    }
    files["lamp-5.mmk"] = std::string(test::good_guide) +
                          "\nfastener more-screws 2 x screw M9 x 8\n"
                          "  holds      lid to body\n";
    files["lamp-6.mmk"] = test::bad_guide;
    files["lamp-7.mmk"] =
        std::string(test::good_guide) + "\nfunction glow \"It glows\"\n  through    board\n";
    files["lamp-8.mmk"] = test::bad_guide;
    return desk;
}

Json findings_of(Desk& desk, std::vector<std::string> paths) {
    paths.insert(paths.begin(), {"check", "--json", "--jobs", "1"});
    desk.out.clear();
    desk.run(paths);
    return Json::parse(desk.out)["findings"];
}

} // namespace

TEST_CASE("a guide's findings are the same alone and among others, in any order") {
    Desk desk = shelf();
    std::vector<std::string> paths;
    for (const auto& [path, text] : desk.disk.files)
        paths.push_back(path);
    std::map<std::string, Json> alone;
    for (const std::string& path : paths)
        alone[path] = findings_of(desk, {path});
    CHECK(std::count_if(alone.begin(), alone.end(),
                        [](const auto& entry) { return !entry.second.empty(); }) >= 10);
    for (int order = 0; order < 3; ++order) {
        CAPTURE(order);
        Json expected = Json::array();
        for (const std::string& path : paths) {
            for (const Json& finding : alone[path]) { // those of a device are told once
                if (std::find(expected.begin(), expected.end(), finding) == expected.end())
                    expected.push_back(finding);
            }
        }
        CHECK(findings_of(desk, paths) == expected);
        std::reverse(paths.begin(), paths.end());
        if (order == 1)
            std::rotate(paths.begin(), paths.begin() + 5, paths.end());
    }
}
