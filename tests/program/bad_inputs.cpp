// Whatever is given to the program, it says what is wrong and ends with 1 or 2: it never stops
// half-way, and it never leaves part of a result.
#include "program/workshop.hpp"
#include "unit/drive/bench_files.hpp"

#include <atomic>
#include <thread>

using matchmark::test::Ran;
using matchmark::test::Workshop;

namespace {

// The whole of the program's bargain with a bad input.
void check_refused(const Ran& ran, int code, const std::string& words) {
    CAPTURE(ran.out.substr(0, 2000));
    CAPTURE(ran.err.substr(0, 2000));
    CHECK(ran.code == code);
    CHECK((ran.told(words) || ran.complained(words)));
}

Workshop& with_lamp(Workshop& shop) {
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("open.mmk", matchmark::test::good_guide);
    return shop;
}

// The good guide with one piece of its text replaced.
std::string changed(const std::string& from, const std::string& to) {
    std::string text = matchmark::test::good_guide;
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("bytes that are not UTF-8, and NUL bytes") {
    Workshop shop;
    shop.put("latin.mmk", "device a \"K\xFC"
                          "che\"\n");
    shop.put("nul.mmk", std::string("device a \"\0\"\n", 13));
    check_refused(shop.run({"check", "latin.mmk"}), 2, "latin.mmk:1:12");
    check_refused(shop.run({"check", "nul.mmk"}), 2, "NUL");
    for (const char* command : {"mend", "tidy", "expand", "publish"}) {
        CAPTURE(command);
        check_refused(shop.run({command, "latin.mmk"}), 2, "UTF-8");
    }
    CHECK(shop.text("latin.mmk") == "device a \"K\xFC"
                                    "che\"\n");
    CHECK(shop.names() == std::vector<std::string>{"latin.mmk", "nul.mmk"});
}

TEST_CASE("a line of 100 MB") {
    Workshop shop;
    shop.put("long.mmk", "device a \"" + std::string(100'000'000, 'x') + "\"\n");
    const Ran ran = shop.run({"check", "long.mmk"});
    CHECK(ran.code == 1);
    CHECK(ran.told("long.mmk:1"));
    CHECK(ran.out.size() < 100'000); // the line is not shown whole
}

TEST_CASE("files that use each other, and a file that is not there") {
    Workshop shop;
    shop.put("a.mmk", "use \"b.mmk\"\n");
    shop.put("b.mmk", "use \"a.mmk\"\n");
    shop.put("lost.mmk", "use \"bb.mmk\"\n");
    check_refused(shop.run({"check", "a.mmk"}), 1, "a.mmk -> b.mmk -> a.mmk");
    check_refused(shop.run({"check", "lost.mmk"}), 2, "lost.mmk:1:5");
    check_refused(shop.run({"check", "lost.mmk"}), 2, "b.mmk");
    check_refused(shop.run({"check", "aa.mmk"}), 2, "did you mean `a.mmk`?");
}

TEST_CASE("a folder without guides") {
    Workshop shop;
    shop.put("empty/readme.txt", "");
    for (const char* command : {"check", "mend", "tidy", "expand", "publish"}) {
        CAPTURE(command);
        check_refused(shop.run({command, "empty"}), 2, "no file in it ends in .mmk");
    }
}

TEST_CASE("an unknown kind, verb, unit or item: the nearest spelling is offered") {
    Workshop shop;
    with_lamp(shop);
    shop.put("kind.mmk", "device a \"A\"\npart b \"b\" kind circuit-borad\n");
    check_refused(shop.run({"check", "kind.mmk"}), 1, "circuit-board");
    shop.put("unit.mmk", "device a \"A\"\n  mass 3 kgg\n");
    check_refused(shop.run({"check", "unit.mmk"}), 1, "kg");
    shop.put("verb.mmk", changed("  undo       lid", "  unod       lid"));
    check_refused(shop.run({"check", "verb.mmk"}), 1, "undo");
    shop.put("item.mmk", changed("lid-screws", "lid-scerws"));
    const Ran item = shop.run({"check", "item.mmk"});
    check_refused(item, 1, "`lid-screws`");
    CHECK(item.told("1 error\n")); // one slip, one finding
}

TEST_CASE("a name that is declared twice") {
    Workshop shop;
    shop.put("a.mmk", "device a \"A\"\npart b \"b\"\npart b \"b again\"\n");
    check_refused(shop.run({"check", "a.mmk"}), 1, "duplicate-name");
}

TEST_CASE("10,000 nested levels of a list in prose") {
    Workshop shop;
    with_lamp(shop);
    std::string list = "  text:\n";
    for (int level = 0; level < 10'000; ++level) {
        list += "    ";
        list += std::string(static_cast<std::size_t>(level % 60), ' ');
        list += "- ";
        list += std::string(60, '-');
        list += "\n";
    }
    list += "    " + std::string(20'000, '>') + " deep\n    ";
    for (int level = 0; level < 10'000; ++level) {
        list += "- ";
    }
    list += "deep\n";
    shop.put("deep.mmk", changed("\nput-back", list + "\nput-back"));
    for (const char* command : {"check", "publish", "expand"}) {
        CAPTURE(command);
        const Ran ran = shop.run({command, "deep.mmk"});
        CAPTURE(ran.err.substr(0, 2000));
        CHECK(ran.code >= 0);
        CHECK(ran.code <= 2);
    }
}

TEST_CASE("a file that changes while it is read is read whole or not at all") {
    Workshop shop;
    with_lamp(shop);
    std::atomic<bool> stop = false;
    std::thread writer([&] {
        const std::string text = matchmark::test::good_guide;
        while (!stop) { // in place, as some editors save
            std::ofstream(shop.at("open.mmk"), std::ios::binary)
                << text << std::string(50'000, '\n');
            std::ofstream(shop.at("open.mmk"), std::ios::binary) << text;
        }
    });
    for (int i = 0; i < 50; ++i) {
        const Ran ran = shop.run({"check", "open.mmk"});
        CAPTURE(ran.out);
        CHECK(ran.code >= 0);
        CHECK(ran.code <= 2);
    }
    stop = true;
    writer.join();
}

TEST_CASE("an output that cannot be written") {
    Workshop shop;
    with_lamp(shop);
    shop.put("taken", "a file\n");
    const auto before = shop.names();
    check_refused(shop.run({"publish", "open.mmk", "-o", "taken"}), 2, "is a file");
    check_refused(shop.run({"publish", "open.mmk", "-o", "taken/below"}), 2, "cannot be written");
    check_refused(shop.run({"expand", "open.mmk", "-o", "taken/open.mmk"}), 2, "cannot be written");
    check_refused(shop.run({"new", "device", "kettle", "-o", "taken/kettle.mmk"}), 2,
                  "cannot be written");
    CHECK(shop.names() == before);
    CHECK(shop.text("taken") == "a file\n");
    std::filesystem::create_directory(shop.at("site"));
    std::filesystem::create_directory(
        shop.at("site/open-lamp.html")); // a folder in the page's place
    check_refused(shop.run({"publish", "open.mmk", "-o", "site"}), 2, "open-lamp.html");
    CHECK(shop.names().size() == before.size() + 2);
}

TEST_CASE("odd paths") {
    Workshop shop;
    with_lamp(shop);
    check_refused(shop.run({"check", ""}), 2, "empty path");
    check_refused(shop.run({"check", "/dev/null"}), 2, "/dev/null");
    check_refused(shop.run({"check", "open.mmk/below.mmk"}), 2, "open.mmk/below.mmk");
    check_refused(shop.run({"check", std::string(5'000, 'a')}), 2, "matchmark check");
    CHECK(shop.run({"check", "./open.mmk", "open.mmk"}).told("1 guide"));
}

TEST_CASE("standard output that is full") {
    if (!std::filesystem::exists("/dev/full")) {
        return;
    }
    Workshop shop;
    with_lamp(shop);
    const std::string line =
        std::string(MATCHMARK_PROGRAM) + " kinds > /dev/full 2> " + shop.at("e");
    const int status = std::system(line.c_str());
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 2);
    CHECK(shop.text("e").find("cannot be written") != std::string::npos);
}
