// `check --cache`: what was found once is told again, and never when a file has changed since.
#include "drive/check_cache.hpp"

#include "publish/digest.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace matchmark;
using namespace matchmark::drive;
using test::bench;
using test::Desk;

namespace {

constexpr const char* program = "/proc/self/exe";

Desk with_program() {
    Desk desk = bench();
    desk.disk.files[program] = "one program";
    return desk;
}

// One thread: a disk in memory takes no writing beside reading.
int check(Desk& desk, std::vector<std::string> more = {}) {
    std::vector<std::string> words = {"check",  "lamp.mmk", "open.mmk", "shut.mmk",
                                      "--jobs", "1",        "--cache",  "kept"};
    words.insert(words.end(), more.begin(), more.end());
    return desk.run(words);
}

std::vector<std::string> entries(const Desk& desk) {
    std::vector<std::string> names;
    for (const auto& [name, text] : desk.disk.files) {
        if (name.starts_with("kept/")) {
            names.push_back(name);
        }
    }
    return names;
}

// Writes another message into each entry that holds this one, as a program that knows the format
// could: so that what is told shows where it came from.
void reword(Desk& desk, const std::string& from, const std::string& to) {
    for (const std::string& name : entries(desk)) {
        std::string& text = desk.disk.files[name];
        std::string rest = text.substr(text.find('\n') + 1);
        for (auto at = rest.find(from); at != std::string::npos; at = rest.find(from, at)) {
            rest.replace(at, from.size(), to);
        }
        text = publish::hexadecimal(publish::sha256(rest), 32) + "\n" + rest;
    }
}

constexpr const char* found = "come off and are never put back";

} // namespace

TEST_CASE("the cache: every form is the same cold, warm and without it") {
    for (const std::string as : {"text", "json", "sarif", "junit"}) {
        CAPTURE(as);
        Desk desk = with_program();
        desk.run({"check", "lamp.mmk", "open.mmk", "shut.mmk", "--jobs", "1", "--as", as});
        const std::string plain = desk.out;
        CHECK(check(desk, {"--as", as}) == 1);
        CHECK(desk.out == plain);
        CHECK(entries(desk).size() == 3);
        CHECK(check(desk, {"--as", as}) == 1);
        CHECK(desk.out == plain);
        CHECK(desk.err.empty());
        CHECK(entries(desk).size() == 3);
    }
}

TEST_CASE("the cache: a known file is not checked again") {
    Desk desk = with_program();
    check(desk);
    CHECK(desk.told(found));
    reword(desk, found, "are told from the cache");
    check(desk);
    CHECK(desk.told("are told from the cache"));
    CHECK_FALSE(desk.told(found));
}

TEST_CASE(
    "the cache: a change of the file, of what it uses, of the program or of an option counts") {
    Desk desk = with_program();
    check(desk);
    reword(desk, found, "are told from the cache");

    SUBCASE("the file") { desk.disk.files["shut.mmk"] += "\n"; }
    SUBCASE("the device that it uses") { desk.disk.files["lamp.mmk"] += "\n"; }
    SUBCASE("the program") { desk.disk.files[program] = "another program"; }
    SUBCASE("an option") {
        check(desk, {"--strict"});
        CHECK(desk.told(found));
        return;
    }
    SUBCASE("the place of the file") {
        desk.disk.files["sub/shut.mmk"] = desk.disk.files["shut.mmk"];
        desk.disk.files["sub/lamp.mmk"] = desk.disk.files["lamp.mmk"];
        desk.run({"check", "sub/shut.mmk", "--jobs", "1", "--cache", "kept"});
        CHECK(desk.told("sub/shut.mmk"));
        return;
    }
    check(desk);
    CHECK(desk.told(found));
    CHECK_FALSE(desk.told("are told from the cache"));
}

TEST_CASE("the cache: a file that comes, and a picture that goes or changes") {
    Desk desk = with_program();
    desk.disk.files["picture.mmk"] = std::string(test::good_guide) +
                                     "\nstep open \"Shut the lid\"\n  photo \"img/a.svg\" \"It\"\n";
    const auto run = [&] {
        desk.run({"check", "picture.mmk", "--jobs", "1", "--cache", "kept"});
        return desk.out;
    };
    const std::string missing = run();
    CHECK(desk.told("missing-picture"));
    CHECK(run() == missing);
    desk.disk.files["img/a.svg"] = "no picture";
    run();
    CHECK(desk.told("not-a-picture"));
    desk.disk.files["img/a.svg"] =
        R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0"/></svg>)";
    run();
    CHECK(desk.told("nothing to report"));
    desk.disk.files.erase("img/a.svg");
    CHECK(run() == missing);

    // A used file that is not there yet.
    const std::string device = desk.disk.files["lamp.mmk"];
    desk.disk.files.erase("lamp.mmk");
    CHECK(check(desk) == 2);
    desk.disk.files["picture.mmk"] = test::good_guide;
    run();
    CHECK(desk.told("missing-file"));
    desk.disk.files["lamp.mmk"] = device;
    run();
    CHECK(desk.told("nothing to report"));
}

TEST_CASE("the cache: entries that are broken, foreign or gone are made anew") {
    Desk desk = with_program();
    check(desk);
    const std::string told = desk.out;
    const std::map<std::string, std::string> whole = desk.disk.files;
    const auto names = entries(desk);
    const auto spoil = [&](const auto& change) {
        for (std::size_t i = 0; i < names.size(); ++i) {
            change(desk.disk.files[names[i]], whole.at(names[(i + 1) % names.size()]));
        }
        CHECK(check(desk) == 1);
        CHECK(desk.out == told);
        CHECK(desk.err.empty());
        CHECK(desk.disk.files == whole);
    };
    spoil([](std::string& text, const std::string&) { text.clear(); });
    spoil([](std::string& text, const std::string&) { text.resize(text.size() / 2); });
    spoil([](std::string& text, const std::string&) { text.back() = ' '; });
    spoil([](std::string& text, const std::string&) { text = "\n"; });
    spoil([](std::string& text, const std::string& other) { text = other; });
    spoil([](std::string& text, const std::string&) {
        text = publish::hexadecimal(publish::sha256("[]"), 32) + "\n[]";
    });
    spoil([](std::string& text, const std::string&) {
        text = publish::hexadecimal(publish::sha256("{"), 32) + "\n{";
    });
    for (const std::string& name : names) {
        desk.disk.files.erase(name);
    }
    check(desk);
    CHECK(desk.disk.files == whole);
}

TEST_CASE("the cache: the same dependency file from it") {
    Desk desk = with_program();
    check(desk, {"--depfile", "a.ok.d"});
    const std::string cold = desk.disk.files["a.ok.d"];
    CHECK(cold.find("lamp.mmk") != std::string::npos);
    desk.disk.files.erase("a.ok.d");
    check(desk, {"--depfile", "a.ok.d"});
    CHECK(desk.disk.files["a.ok.d"] == cold);
}

TEST_CASE(
    "the cache: a name that is no UTF-8, a file in its place, a program that cannot be read") {
    Desk desk = with_program();
    desk.disk.files["\xFF.mmk"] = test::bad_guide;
    const auto run = [&] {
        return desk.run({"check", "\xFF.mmk", "--jobs", "1", "--cache", "kept"});
    };
    CHECK(run() == 1);
    CHECK(entries(desk).empty());
    CHECK(run() == 1);
    CHECK(desk.told(found));

    desk.disk.files["kept"] = "a file";
    CHECK(check(desk) == 2);
    CHECK(desk.complained_in_one_line());

    desk.disk.files.erase("kept");
    desk.disk.files.erase(program);
    CHECK(check(desk) == 1);
    CHECK(desk.told(found));
    CHECK(desk.complained_in_one_line());
    CHECK(entries(desk).empty());
}

TEST_CASE("findings of many files: the gravest twenty are framed, whichever file has them") {
    Desk desk;
    std::vector<std::string> words = {"check", "--jobs", "4"};
    std::string guide = test::bad_guide;
    const std::string use = guide.substr(0, guide.find('\n') + 1);
    for (int i = 0; i < 60; ++i) {
        // Advice and warnings first, errors in the last files.
        const std::string name = "g" + std::to_string(100 + i);
        desk.disk.files[name + ".mmk"] =
            i < 40 ? test::good_guide + std::string("  text: The lid.\n\nstep open \"Shut it\"\n"
                                                    "  photo \"none.svg\" \"It\"\n")
                   : guide;
        words.push_back(name + ".mmk");
    }
    desk.disk.files["lamp.mmk"] = test::device_text;
    desk.run(words);
    std::size_t framed = 0;
    for (auto at = desk.out.find(found); at != std::string::npos;
         at = desk.out.find(found, at + 1)) {
        ++framed;
    }
    CHECK(framed == 20);
    CHECK(desk.told("more (--json lists all)"));
    CHECK(desk.told("g159.mmk"));
}
