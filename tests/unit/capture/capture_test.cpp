// Notes as people write them, through the command, on a disk in memory.
#include "unit/drive/bench_files.hpp"

#include "drive/compilation.hpp"
#include "support/in_text.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark;
using matchmark::test::has;
using test::Desk;

namespace {

constexpr const char* lid_job = "device: radio\n"
                                "undo 4 screw M2x6 hexalobular 6, lid\n"
                                "remove lid\n"
                                "disconnect friction plug, board to case\n"
                                "remove board\n";

std::string device_of(const std::string& notes) {
    Desk desk;
    desk.disk.files["n.txt"] = notes;
    desk.run({"capture", "n.txt"});
    return desk.disk.files["radio.mmk"];
}

} // namespace

TEST_CASE("capture: what is said, what is assumed, and a guide that checks clean") {
    Desk desk;
    desk.disk.files["n.txt"] = lid_job;
    CHECK(desk.run({"capture", "n.txt"}) == 0);
    const std::string device = desk.disk.files["radio.mmk"];
    CHECK(has(device, "fastener lid-screws \"lid screw\" 4 x screw M2 x 6, hexalobular 6\n"
                      "  holds      lid to body assumed\n"));
    CHECK(has(device, "  joins      board to case\n  under      lid assumed\n"));
    CHECK(desk.run({"check", "--strict", "radio.mmk", "remove-board.mmk"}) == 0);
    CHECK(desk.run({"tidy", "--check", "radio.mmk", "remove-board.mmk"}) == 0);
}

TEST_CASE("capture: bullets, numbers, capitals and number words say the same") {
    const std::string plain = device_of(lid_job);
    CHECK(device_of("device: radio\n1. Undo four screws m2 x 6 hexalobular 6, the lid.\n"
                    "- then Remove lid\n* disconnect friction plug, board to case\n"
                    "remove the board\n") == plain);
}

TEST_CASE("capture: notes written afterwards say the same") {
    const std::string plain = device_of(lid_job);
    CHECK(device_of("device: radio\nundid 4 screw M2x6 hexalobular 6, lid\nremoved lid\n"
                    "disconnected friction plug, board to case\nremoved board\n") == plain);
    for (const char* verb : {"took off the lid", "pulled off the lid", "lifted the lid off",
                             "slid out the lid", "pulled lid"}) {
        CAPTURE(verb);
        const std::string device =
            device_of("device: radio\n" + std::string(verb) + "\nremove board\n");
        CHECK(has(device, "part lid"));
        CHECK(has(device, "under      lid assumed"));
    }
}

TEST_CASE("capture: a line that is not understood is kept and told, with its place") {
    Desk desk;
    desk.disk.files["n.txt"] = std::string(lid_job) + "  mumble mumble\n";
    CHECK(desk.run({"capture", "n.txt", "--json"}) == 0);
    const auto told = nlohmann::json::parse(desk.out);
    REQUIRE(told["findings"].size() == 1);
    CHECK(told["findings"][0]["rule"] == "unread-note");
    CHECK(has(desk.disk.files["remove-board.mmk"],
              "# decide: not understood, line 6 of the notes: mumble mumble"));
}

TEST_CASE("capture: a job whose part did not come out is told, and the last part is taken") {
    Desk desk;
    desk.disk.files["n.txt"] = "job: replace aerial\n" + std::string(lid_job);
    CHECK(desk.run({"capture", "n.txt", "--json"}) == 0);
    const auto told = nlohmann::json::parse(desk.out);
    REQUIRE(told["findings"].size() == 1);
    CHECK(told["findings"][0]["rule"] == "job-not-done");
    CHECK(has(desk.disk.files["remove-board.mmk"], "remove board"));
}

TEST_CASE("capture: a guess is marked") {
    const std::string device = device_of("device: radio\ndisconnect flat plug, board to case\n");
    CHECK(has(device, "# decide: the notes say \"flat plug\"; taken for kind"));
}

TEST_CASE("capture: a plug with two acts is one plug, a second of the same sort another") {
    const std::string device =
        device_of("device: radio\nunlock flip lock ribbon, board to case\n"
                  "disconnect flip lock ribbon, board to case\n"
                  "disconnect flip lock ribbon, board to case\nremove board\n");
    CHECK(has(device, "connector board-ribbon \"board ribbon\" kind flip-lock-ribbon"));
    CHECK(has(device, "connector board-ribbon-2 "));
    CHECK_FALSE(has(device, "board-ribbon-3"));
}

TEST_CASE("capture: another job takes away what it did without, and nothing else") {
    Desk desk;
    desk.disk.files["n.txt"] = lid_job;
    REQUIRE(desk.run({"capture", "n.txt"}) == 0);
    std::string device = desk.disk.files["radio.mmk"];
    device += "\n# Seen on Monday.\npart foot \"foot\"\n  note: It is   rubber.\n";
    desk.disk.files["radio.mmk"] = device;
    desk.disk.files["m.txt"] = "disconnect friction plug, board to case\n"
                               "remove foot\nremove aerial\n";
    CHECK(desk.run({"capture", "m.txt", "--device", "radio.mmk"}) == 0);
    const std::string refined = desk.disk.files["radio.mmk"];
    const std::string gone = "  under      lid assumed\n";
    std::string expected = device;
    expected.erase(expected.find(gone), gone.size());
    // The board was not touched this time: what followed for it by way of the plug is said now.
    CHECK(has(refined, "# Seen on Monday.\npart foot \"foot\"\n  note: It is   rubber.\n"));
    CHECK(has(refined, "part aerial \"aerial\" kind aerial\n"));
    CHECK(has(refined, "part board \"board\"\n  under      lid assumed\n"));
    CHECK(has(refined, "  joins      board to case\n"));
    CHECK_FALSE(has(refined, "  joins      board to case\n  under"));
}

TEST_CASE("capture: notes against a declared fact are an error, and nothing is written") {
    Desk desk;
    desk.disk.files["radio.mmk"] = "device radio \"Radio\"\n\npart body \"body\"\n"
                                   "part lid \"lid\"\npart board \"board\"\n  under      lid\n";
    desk.disk.files["n.txt"] = "remove board\n";
    const auto before = desk.disk.files;
    CHECK(desk.run({"capture", "n.txt", "--device", "radio.mmk"}) == 1);
    CHECK(has(desk.err, "note-against-device"));
    CHECK(desk.disk.files == before);
}

TEST_CASE("capture: nothing is overwritten unasked") {
    Desk desk;
    desk.disk.files["n.txt"] = lid_job;
    desk.disk.files["radio.mmk"] = "mine";
    CHECK(desk.run({"capture", "n.txt"}) == 2);
    CHECK(desk.disk.files["radio.mmk"] == "mine");
    CHECK(desk.run({"capture", "n.txt", "--force"}) == 0);
    CHECK(desk.disk.files["radio.mmk"] != "mine");
    CHECK(desk.run({"capture"}) == 2);
    CHECK(desk.run({"capture", "none.txt"}) == 2);
}

TEST_CASE("plan: the answer says on which assumed lines it rests, and where to look") {
    Desk desk;
    desk.disk.files["radio.mmk"] =
        "device radio \"Radio\"\n\npart lid \"lid\"\npart foot \"foot\"\n"
        "part board \"board\"\n  under      lid assumed\n"
        "part coil \"coil\"\n  under      foot assumed\n";
    CHECK(desk.run({"plan", "radio.mmk", "--reach", "board", "--json"}) == 0);
    const auto told = nlohmann::json::parse(desk.out)["assumed"];
    REQUIRE(told["rests_on"].size() == 1);
    CHECK(told["rests_on"][0]["item"] == "board");
    CHECK(told["rests_on"][0]["is_reason"] == true);
    CHECK(told["look"]["item"] == "board");
}
