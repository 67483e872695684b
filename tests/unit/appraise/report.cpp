// `appraise` as a user meets it: what it counts on a device, and how it tells it.
#include "unit/drive/bench_files.hpp"

#include "drive/part_ways.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

using namespace matchmark;
using test::Desk;

namespace {

using Json = nlohmann::json;

// Two doors into one room; a glued window; a ring of two halves that block each other.
constexpr const char* cabinet = R"(device cabinet "Cabinet"

part body "body"
part left "left door"
fastener left-screws "left screw" 2 x screw M3 x 8, hexalobular 10
  holds      left to body
part right "right door"
fastener right-screws "right screw" 3 x screw M3 x 8, hexalobular 10
  holds      right to body
part fan "fan"
  behind     left or right
part lid "lid"
  covers     board, board-screws, plug
bond lid-seal "lid seal" kind seal-tape
  joins      lid to body
part board "board" kind circuit-board
fastener board-screws "board screw" 2 x screw M2 x 4, cross-recess 0
  holds      board to body
part motor "motor"
  behind     lid
connector plug kind press-fit-plug
  joins      motor to board
part upper-half "upper half"
  blocks     lower-half
part lower-half "lower half"
  blocks     upper-half
)";

constexpr const char* phone = R"(device phone "Phone"
  product    smartphone
  updates    7 years

part frame "frame"
part cover "cover"
  counts as  back-cover
  covers     cell, cell-plug
bond cover-seal "cover seal" kind seal-tape
  joins      cover to frame
  comes with cell
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  counts as  battery
part board "board" kind circuit-board
connector cell-plug "cell plug" kind press-fit-plug
  joins      cell to board
)";

Json appraised(Desk& desk, std::vector<std::string> more = {}) {
    std::vector<std::string> arguments = {"appraise", "cabinet.mmk", "--json"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    desk.disk.files["cabinet.mmk"] = cabinet;
    desk.run(arguments);
    return Json::parse(desk.out);
}

const Json& named(const Json& list, const char* key, const std::string& name) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const Json& one) { return one[key] == name; });
    REQUIRE(found != list.end());
    return *found;
}

} // namespace

TEST_CASE("each part has its steps, what is undone on the way, and the tools with their class") {
    Desk desk;
    const Json root = appraised(desk);
    const Json& board = named(root["parts"], "part", "board");
    CHECK(board["proof"] == "least");
    // The seal, the lid, the plug with the screws and the board.
    CHECK(board["steps"] == 3);
    CHECK(board["acts"] == 5);
    CHECK(board["fasteners"][0]["what"] == "screw M2 x 4, cross-recess 0");
    CHECK(board["fasteners"][0]["count"] == 2);
    CHECK(board["plugs"].size() == 1);
    CHECK(board["renewed"] == Json::array({"lid seal"}));
    CHECK(named(board["tools"], "tool", "cross recess driver 0")["sort"] == "basic tool");
    CHECK(board["seconds_apart"] > 0);
    CHECK(board["seconds_back"] > 0);
    CHECK(root["index"].is_null());
}

TEST_CASE("parts stand by depth, and one that cannot be brought out is told with its reason") {
    Desk desk;
    const Json root = appraised(desk);
    const Json& parts = root["parts"];
    for (std::size_t i = 1; i + 2 < parts.size(); ++i)
        CHECK(parts[i - 1]["steps"] <= parts[i]["steps"]);
    CHECK(parts[parts.size() - 1]["proof"] == "impossible");
    CHECK(parts[parts.size() - 2]["proof"] == "impossible");
    CHECK(desk.run({"appraise", "cabinet.mmk"}) == 0);
    CHECK(desk.told("upper half: there is no way."));
    CHECK(desk.told("the lower half blocks the upper half"));
}

TEST_CASE("what the least way moves is told apart from what every way moves") {
    Desk desk;
    const Json root = appraised(desk, {"--part", "fan,board"});
    CHECK(root["parts"].size() == 2);
    const Json& left = named(root["waited_for"], "item", "left-screws");
    CHECK(left["parts"] == Json::array({"fan"}));
    CHECK(left["always"].empty());
    const Json& lid = named(root["waited_for"], "item", "lid");
    CHECK(lid["parts"] == Json::array({"board"}));
    CHECK(lid["always"] == Json::array({"board"}));
}

TEST_CASE("the answer is the same with one thread, two and eight") {
    Desk desk;
    const std::string once = appraised(desk, {"--jobs", "1"}).dump();
    CHECK(appraised(desk, {"--jobs", "2"}).dump() == once);
    CHECK(appraised(desk, {"--jobs", "8"}).dump() == once);
}

TEST_CASE("of a phone the index is told with what it rests on, and what is missing") {
    Desk desk;
    desk.disk.files["phone.mmk"] = phone;
    REQUIRE(desk.run({"appraise", "phone.mmk"}) == 0);
    CHECK(desk.told("An estimate from declared data, never a regulatory declaration."));
    CHECK(desk.told("4 %"));
    CHECK(desk.told("cover seal: resupplied with the spare part"));
    CHECK(desk.told("cover seal: removable, not reusable"));
    CHECK(desk.told("pick: basic tool"));
    CHECK(desk.told("No item counts as display assembly"));
    CHECK(desk.told("Not declared, and so the index is a range"));
    REQUIRE(desk.run({"appraise", "phone.mmk", "--json"}) == 0);
    const Json index = Json::parse(desk.out)["index"];
    // Battery: seal, cover, plug and cell are 3 steps: 4. Cover: 2 steps: 5. All others: 5.
    CHECK(index["scores"][0]["score"]["lowest"] == 4.7);
    // The seal comes with the cell, not with the cover: 3 and 1.
    CHECK(index["scores"][1]["score"]["lowest"] == 4.0);
    CHECK(index["scores"][2]["score"]["highest"] == 4.6);
    CHECK(index["scores"][4]["score"]["lowest"] == 5.0);
    CHECK(index["undeclared"].size() == 2);
}

TEST_CASE("with --part the index is still that of the whole device") {
    Desk desk;
    desk.disk.files["phone.mmk"] = phone;
    REQUIRE(desk.run({"appraise", "phone.mmk", "--part", "board", "--json"}) == 0);
    const Json root = Json::parse(desk.out);
    CHECK(root["parts"].size() == 1);
    CHECK(root["index"]["scores"][0]["score"]["lowest"] == 4.7);
}

TEST_CASE("the page holds the tables and charts, runs no script and lets no text act") {
    Desk desk;
    std::string text = phone;
    text.replace(text.find("\"Phone\""), 7, "\"<b>Phone</b>\"");
    desk.disk.files["phone.mmk"] = text;
    REQUIRE(desk.run({"appraise", "phone.mmk", "--html", "-o", "out"}) == 0);
    CHECK(desk.out == "out/phone-appraisal.html\n");
    const std::string page = desk.disk.files["out/phone-appraisal.html"];
    CHECK(page.find("<script") == std::string::npos);
    CHECK(page.find("<b>Phone") == std::string::npos);
    CHECK(page.find("&lt;b&gt;Phone") != std::string::npos);
    CHECK(page.find("<svg") != std::string::npos);
    CHECK(page.find("never a regulatory declaration") != std::string::npos);
    CHECK(page.find("http-equiv=\"Content-Security-Policy\"") != std::string::npos);
}

TEST_CASE(
    "wrong use is one line, and a part without a way out is a finding when it was asked for") {
    Desk desk;
    desk.disk.files["cabinet.mmk"] = cabinet;
    CHECK(desk.run({"appraise", "cabinet.mmk", "--part", "fann"}) == 2);
    CHECK(desk.complained_in_one_line());
    CHECK(desk.run({"appraise", "cabinet.mmk", "--json", "--html"}) == 2);
    CHECK(desk.complained_in_one_line());
    CHECK(desk.run({"appraise", "cabinet.mmk", "--html", "-o", "cabinet.mmk"}) == 2);
    CHECK(desk.run({"appraise", "missing.mmk"}) == 2);
    CHECK(desk.run({"appraise", "cabinet.mmk", "--part", "upper-half"}) == 1);
    CHECK(desk.run({"appraise", "cabinet.mmk", "--part", "fan"}) == 0);
}
