// What an editor is told of a device and its guide: findings, choices, names, mends.
#include "editor/client.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

using editor_test::about;
using editor_test::at;
using editor_test::Client;
using nlohmann::json;

namespace {

const std::string device = "/desk/box.mmk";
const std::string guide = "/desk/open-box.mmk";

const std::string device_text = R"(device box "Test box"

part base "base"
part lid "lid"
  covers     board
fastener lid-screws "lid screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      lid to base
  torque     0.80 N.m
part board "board"
)";

// Line 9, from 0, is the first action.
const std::string guide_text = R"(use "box.mmk"

guide open-box "Open the box"
  goal       remove board
  for        competent
  tool       driver-10 "hexalobular torque driver 10"

take-apart

step open "Open it"
  undo       lid-screws with driver-10
  remove     lid

step board-out "Take the board out"
  remove     board

put-back
  derived
)";

struct Desk {
    matchmark::MapDisk disk;
    Client client{disk};

    Desk() {
        disk.files = {{device, device_text}, {guide, guide_text}};
        client.start("file:///desk");
        client.open(guide, guide_text);
        client.settle();
    }
};

std::vector<std::string> labels(const json& completions) {
    std::vector<std::pair<std::string, std::string>> sorted;
    for (const json& entry : completions)
        sorted.emplace_back(entry["sortText"], entry["label"]);
    std::sort(sorted.begin(), sorted.end());
    std::vector<std::string> words;
    for (const auto& entry : sorted)
        words.push_back(entry.second);
    return words;
}

const json* entry_of(const json& completions, const std::string& label) {
    const auto found = std::find_if(completions.begin(), completions.end(),
                                    [&](const json& entry) { return entry["label"] == label; });
    return found == completions.end() ? nullptr : &*found;
}

bool has(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

// The text after edits; a test's files have no letters past ASCII.
std::string applied(std::string text, json edits) {
    const auto offset = [&](const json& place) {
        std::size_t at = 0;
        for (std::size_t line = place["line"]; line > 0; --line)
            at = text.find('\n', at) + 1;
        return at + place["character"].get<std::size_t>();
    };
    std::vector<json> list(edits.begin(), edits.end());
    std::sort(list.begin(), list.end(), [&](const json& a, const json& b) {
        return offset(a["range"]["start"]) > offset(b["range"]["start"]);
    });
    for (const json& edit : list) {
        const std::size_t begin = offset(edit["range"]["start"]);
        const std::size_t end = offset(edit["range"]["end"]);
        text.replace(begin, end - begin, edit["newText"].get<std::string>());
    }
    return text;
}

} // namespace

TEST_CASE("findings come when a file is opened and go when it is mended") {
    Desk desk;
    CHECK(desk.client.rules(guide).empty());
    desk.client.change(guide, "10:0", "11:0", "");
    desk.client.settle();
    CHECK(has(desk.client.rules(guide), "still-held"));
    desk.client.replace_all(guide, guide_text);
    desk.client.settle();
    CHECK(desk.client.rules(guide).empty());
}

TEST_CASE("a change of the device is told in the guides that use it, open or not") {
    Desk desk;
    desk.client.open(device, device_text);
    desk.disk.files["/desk/other.mmk"] = guide_text;
    desk.client.tell("workspace/didChangeWatchedFiles", json::object());
    desk.client.change(device, "3:5", "3:8", "cap");
    desk.client.settle();
    CHECK(has(desk.client.rules(guide), "unknown-item"));
    CHECK(desk.client.rules("/desk/other.mmk").empty());
    desk.client.work();
    CHECK(has(desk.client.rules("/desk/other.mmk"), "unknown-item"));
}

TEST_CASE("after a verb stands first what can be done now, then the rest with the reason") {
    Desk desk;
    desk.client.change(guide, "11:0", "11:16", "  remove ");
    const json offers = desk.client.ask("textDocument/completion", at(guide, 11, 9));
    const auto words = labels(offers);
    REQUIRE(words.size() >= 2);
    CHECK(words.front() == "base"); // nothing but the lid is tied to it
    REQUIRE(entry_of(offers, "board") != nullptr);
    CHECK((*entry_of(offers, "board"))["detail"] == "not yet: behind `lid` (part)");
    REQUIRE(entry_of(offers, "lid") != nullptr);
    const std::string of_lid = (*entry_of(offers, "lid"))["detail"];
    CHECK(of_lid.find("not yet") == std::string::npos);
}

TEST_CASE("before the screws are out the lid is offered with what holds it") {
    Desk desk;
    desk.client.change(guide, "10:0", "11:16", "  remove ");
    const json offers = desk.client.ask("textDocument/completion", at(guide, 10, 9));
    REQUIRE(entry_of(offers, "lid") != nullptr);
    CHECK((*entry_of(offers, "lid"))["detail"] == "not yet: held by `lid-screws` (4 screws)");
    CHECK(entry_of(offers, "lid-screws") == nullptr); // screws have no `remove`
}

TEST_CASE("on an empty line of a step whole lines are offered, and keywords") {
    Desk desk;
    desk.client.change(guide, "10:0", "10:0", "  \n");
    const auto words = labels(desk.client.ask("textDocument/completion", at(guide, 10, 2)));
    CHECK(has(words, "undo lid-screws with driver-10"));
    CHECK(has(words, "photo"));
    CHECK(has(words, "text:"));
}

TEST_CASE("after `with` stand the tools that fit, and after an item in `when` its states") {
    Desk desk;
    desk.client.change(guide, "5:0", "5:0", "  tool       pick \"opening pick\"\n");
    desk.client.change(guide, "11:0", "11:40", "  undo lid-screws with ");
    const auto tools = labels(desk.client.ask("textDocument/completion", at(guide, 11, 23)));
    CHECK(tools == std::vector<std::string>{"driver-10", "pick"});
    desk.client.change(guide, "12:0", "12:0", "test t \"T\"\n  when       lid \n");
    const auto states = labels(desk.client.ask("textDocument/completion", at(guide, 13, 17)));
    CHECK(states == std::vector<std::string>{"in", "out"});
}

TEST_CASE("kinds of the role, and words of the first column") {
    Desk desk;
    desk.client.open(device, device_text + "bond glue kind \npa");
    const auto kinds = labels(desk.client.ask("textDocument/completion", at(device, 9, 15)));
    CHECK(has(kinds, "lid-seal") == has(kinds, "lid-seal"));
    CHECK(!has(kinds, "screw"));
    CHECK(kinds.size() > 5);
    const auto words = labels(desk.client.ask("textDocument/completion", at(device, 10, 2)));
    CHECK(has(words, "part"));
    CHECK(has(words, "tool-kind"));
}

TEST_CASE("a hover tells kind, state here, torque and what holds it") {
    Desk desk;
    const json lid = desk.client.ask("textDocument/hover", at(guide, 11, 14));
    const std::string words = lid["contents"]["value"];
    CHECK(words.find("- here: in\n") != std::string::npos);
    CHECK(words.find("`remove` can be done now") != std::string::npos);
    const json screws = desk.client.ask("textDocument/hover", at(guide, 10, 15));
    const std::string of_screws = screws["contents"]["value"];
    CHECK(of_screws.find("0.8") != std::string::npos);
    CHECK(of_screws.find("- here: tight\n") != std::string::npos);
    const json board = desk.client.ask("textDocument/hover", at(guide, 3, 22));
    CHECK(board["contents"]["value"].get<std::string>().find("behind: `lid`") != std::string::npos);
}

TEST_CASE("states stand behind the lines") {
    Desk desk;
    json params = about(guide);
    params["range"] = {{"start", {{"line", 0}, {"character", 0}}},
                       {"end", {{"line", 99}, {"character", 0}}}};
    std::vector<std::string> hints;
    for (const json& hint : desk.client.ask("textDocument/inlayHint", params))
        hints.push_back(hint["label"]);
    CHECK(hints == std::vector<std::string>{"lid-screws: out", "lid: out", "board: out"});
}

TEST_CASE("a name is followed and renamed across files, and refused where it cannot be") {
    Desk desk;
    const json declared = desk.client.ask("textDocument/definition", at(guide, 11, 14));
    REQUIRE(declared.size() == 1);
    CHECK(declared[0]["uri"] == "file://" + device);
    CHECK(declared[0]["range"]["start"]["line"] == 3);
    CHECK(desk.client.ask("textDocument/references", at(guide, 11, 14)).size() == 3);

    json params = at(guide, 11, 14);
    params["newName"] = "hood";
    const json changes = desk.client.ask("textDocument/rename", params)["changes"];
    CHECK(applied(guide_text, changes["file://" + guide]).find("remove     hood") !=
          std::string::npos);
    const std::string renamed = applied(device_text, changes["file://" + device]);
    CHECK(renamed.find("part hood \"lid\"") != std::string::npos);
    CHECK(renamed.find("holds      hood to base") != std::string::npos);

    params["newName"] = "board";
    CHECK(desk.client.answer_to("textDocument/rename", params)["error"]["code"] == -32803);
    params["newName"] = "two words";
    CHECK(desk.client.answer_to("textDocument/rename", params)["error"]["code"] == -32602);
    CHECK(desk.client.answer_to("textDocument/prepareRename", at(guide, 11, 4))["error"]["code"] ==
          -32803); // a verb
}

TEST_CASE("a tool and a step are renamed in their own guide alone") {
    Desk desk;
    json params = at(guide, 10, 32);
    params["newName"] = "driver";
    const json tool = desk.client.ask("textDocument/rename", params)["changes"];
    CHECK(tool.size() == 1);
    CHECK(tool["file://" + guide].size() == 2);
    params = at(guide, 9, 6);
    params["newName"] = "lid-off";
    CHECK(desk.client.ask("textDocument/rename", params)["changes"]["file://" + guide].size() == 1);
}

TEST_CASE("a quick fix writes the line that the finding carries") {
    Desk desk;
    desk.client.change(guide, "10:0", "11:0", "");
    const std::string broken = applied(guide_text, {{{"range",
                                                      {{"start", {{"line", 10}, {"character", 0}}},
                                                       {"end", {{"line", 11}, {"character", 0}}}}},
                                                     {"newText", ""}}});
    json params = about(guide);
    params["range"] = {{"start", {{"line", 10}, {"character", 0}}},
                       {"end", {{"line", 10}, {"character", 5}}}};
    const json actions = desk.client.ask("textDocument/codeAction", params);
    REQUIRE(actions.size() >= 2);
    CHECK(actions[0]["kind"] == "quickfix");
    CHECK(actions[0]["isPreferred"] == true);
    CHECK(actions[0]["diagnostics"][0]["code"] == "still-held");
    desk.client.replace_all(guide,
                            applied(broken, actions[0]["edit"]["changes"]["file://" + guide]));
    desk.client.settle();
    CHECK(desk.client.rules(guide).empty());
    CHECK(actions.back()["kind"] == "source.fixAll");
    desk.client.replace_all(guide,
                            applied(broken, actions.back()["edit"]["changes"]["file://" + guide]));
    desk.client.settle();
    CHECK(desk.client.rules(guide).empty());
}

TEST_CASE("the layout is that of tidy, and a file with a slip is left alone") {
    Desk desk;
    desk.client.change(guide, "10:0", "10:4", "     un");
    const json edits = desk.client.ask("textDocument/formatting", about(guide));
    REQUIRE(edits.size() == 1);
    CHECK(edits[0]["range"]["start"]["line"] == 10);
    CHECK(edits[0]["newText"] == "  undo       lid-screws with driver-10\n");
    desk.client.change(guide, "10:0", "10:0", "?");
    CHECK(desk.client.ask("textDocument/formatting", about(guide)).empty());
}

TEST_CASE("the outline, the folds and the symbols of the folder") {
    Desk desk;
    const json outline = desk.client.ask("textDocument/documentSymbol", about(guide));
    REQUIRE(outline.size() == 1);
    CHECK(outline[0]["name"] == "open-box");
    REQUIRE(outline[0]["children"].size() == 2);
    CHECK(outline[0]["children"][0]["children"].size() == 2);
    const json folds = desk.client.ask("textDocument/foldingRange", about(guide));
    CHECK(std::any_of(folds.begin(), folds.end(), [](const json& fold) {
        return fold["startLine"] == 9 && fold["endLine"] == 11;
    }));
    const json found = desk.client.ask("workspace/symbol", {{"query", "SCREW"}});
    REQUIRE(found.size() == 1);
    CHECK(found[0]["location"]["uri"] == "file://" + device);
}

TEST_CASE("semantic tokens cover the words of a line, each once") {
    Desk desk;
    const json data = desk.client.ask("textDocument/semanticTokens/full", about(guide))["data"];
    REQUIRE(data.size() % 5 == 0);
    std::size_t line = 0;
    std::vector<std::pair<int, int>> of_line; // width and type
    for (std::size_t i = 0; i < data.size(); i += 5) {
        line += data[i].get<std::size_t>();
        if (line == 10)
            of_line.emplace_back(data[i + 2], data[i + 3]);
    }
    // undo, lid-screws, with, driver-10: method, variable, keyword, property
    CHECK(of_line == std::vector<std::pair<int, int>>{{4, 3}, {10, 2}, {4, 0}, {9, 5}});
}

TEST_CASE("a rename reaches conditions, and the guides of the folder that are not open") {
    Desk desk;
    const std::string other = "/desk/other.mmk";
    desk.disk.files[other] = R"(use "box.mmk"

guide try-box "Try the box"
  goal       remove lid
  for        competent

take-apart

test closed "It is closed"
  when       lid in, lid-screws tight
  proves     lid
)";
    desk.client.tell("workspace/didChangeWatchedFiles", json::object());
    json params = at(guide, 11, 14);
    params["newName"] = "hood";
    const json changes = desk.client.ask("textDocument/rename", params)["changes"];
    const std::string text = applied(desk.disk.files[other], changes["file://" + other]);
    CHECK(text.find("goal       remove hood") != std::string::npos);
    CHECK(text.find("when       hood in, lid-screws tight") != std::string::npos);
    CHECK(text.find("proves     hood") != std::string::npos);
}
