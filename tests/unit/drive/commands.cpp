// What each command does to files, and the exit code that tells how it went.
#include "unit/drive/bench_files.hpp"

#include "drive/compilation.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark;
using test::bench;
using test::Desk;

namespace {

nlohmann::json parsed(const Desk& desk) { return nlohmann::json::parse(desk.out); }

} // namespace

TEST_CASE("check: nothing to report") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "lamp.mmk"}) == 0);
    CHECK(desk.out == "1 guide, 1 device: nothing to report\n");
    CHECK(desk.err.empty());

    desk.disk.files["empty.mmk"] = "# to be written\n";
    desk.out.clear();
    CHECK(desk.run({"check", "empty.mmk"}) == 0);
    CHECK(desk.out == "1 file without a guide or a device: nothing to report\n");
}

TEST_CASE("check: what is left out is told with its place") {
    Desk desk = bench();
    CHECK(desk.run({"check", "shut.mmk"}) == 1);
    CHECK(desk.told("lid-screws"));
    CHECK(desk.told("shut.mmk:"));
    CHECK(desk.told("1 error"));
}

TEST_CASE("check: a folder is gone through, and a shared finding is told once") {
    Desk desk;
    desk.disk.files = {{"g/lamp.mmk", std::string(test::device_text) + "  kind no-such-kind\n"},
                       {"g/a.mmk", test::good_guide},
                       {"g/b.mmk", test::bad_guide}};
    CHECK(desk.run({"check", "g", "--json"}) == 1);
    std::size_t of_device = 0;
    const auto object = parsed(desk);
    for (const auto& finding : object["findings"]) {
        of_device += finding["file"] == "g/lamp.mmk" ? 1U : 0U;
    }
    CHECK(of_device == 1);
}

TEST_CASE("check: the order of reports is that of the command line, whatever the threads do") {
    Desk desk;
    desk.disk.files["lamp.mmk"] = test::device_text;
    std::vector<std::string> arguments = {"check", "--json"};
    for (int i = 0; i < 40; ++i) {
        std::string text = test::bad_guide;
        text.replace(text.find("shut-lamp"), 9, "shut-lamp-" + std::to_string(i));
        const std::string path = "g" + std::to_string(100 - i) + ".mmk";
        desk.disk.files[path] = text;
        arguments.push_back(path);
    }
    CHECK(desk.run(arguments) == 1);
    const std::string first = desk.out;
    arguments.insert(arguments.end(), {"--jobs", "8"});
    CHECK(desk.run(arguments) == 1);
    CHECK(desk.out == first);
    CHECK(parsed(desk)["findings"][0]["file"] == "g100.mmk");
}

TEST_CASE("check: many findings are cut in text and whole in JSON") {
    Desk desk;
    std::string text = "device a \"A\"\n";
    for (int i = 0; i < 30; ++i) {
        text += "part p" + std::to_string(i) + " kind no-such-kind\n";
    }
    desk.disk.files["a.mmk"] = text;
    CHECK(desk.run({"check", "a.mmk"}) == 1);
    CHECK(desk.told("and 10 more"));
    CHECK(desk.told("30 errors"));
    CHECK(desk.run({"check", "a.mmk", "--as", "json"}) == 1);
    CHECK(parsed(desk)["findings"].size() == 30);
}

TEST_CASE("check: a missing picture is a warning, and an error when strict") {
    Desk desk = bench();
    std::string text = test::good_guide;
    text.insert(text.find("\nput-back"), "  photo \"img/lid.svg\" \"The lid\"\n");
    desk.disk.files["open.mmk"] = text;
    CHECK(desk.run({"check", "open.mmk"}) == 0);
    CHECK(desk.told("img/lid.svg"));
    CHECK(desk.run({"check", "open.mmk", "--strict"}) == 1);
    desk.disk.files["img/lid.svg"] = "<svg/>";
    CHECK(desk.run({"check", "open.mmk", "--strict"}) == 0);
}

TEST_CASE("check: standard input") {
    Desk desk = bench();
    desk.input = test::good_guide;
    CHECK(desk.run({"check", "-"}) == 0);
    desk.input = test::bad_guide;
    CHECK(desk.run({"check", "-"}) == 1);
}

TEST_CASE("check: what cannot be read ends with 2") {
    Desk desk = bench();
    desk.disk.files["bytes.mmk"] = "\xFF";
    desk.disk.files["lost.mmk"] = "use \"lmap.mmk\"\n";
    desk.disk.files["docs/readme.txt"] = "";
    CHECK(desk.run({"check", "bytes.mmk"}) == 2);
    CHECK(desk.told("UTF-8"));
    CHECK(desk.run({"check", "lost.mmk"}) == 2);
    CHECK(desk.told("lamp.mmk"));
    CHECK(desk.run({"check", "docs"}) == 2);
    CHECK(desk.complained("holds no guides"));
    CHECK(desk.run({"check", "oepn.mmk"}) == 2);
    CHECK(desk.complained("did you mean `open.mmk`?"));
    CHECK(desk.run({"check"}) == 2);
    CHECK(desk.complained_in_one_line());
}

TEST_CASE("mend: the missing step is written, and the guide checks clean") {
    Desk desk = bench();
    CHECK(desk.run({"mend", "shut.mmk", "--dry-run"}) == 0);
    CHECK(desk.told("+++ b/shut.mmk"));
    CHECK(desk.disk.files["shut.mmk"] == test::bad_guide);
    CHECK(desk.run({"mend", "shut.mmk"}) == 0);
    CHECK(desk.told("mended"));
    CHECK(desk.run({"check", "shut.mmk"}) == 0);
    CHECK(desk.run({"mend", "shut.mmk"}) == 0);
    CHECK(desk.told("nothing mended"));
}

TEST_CASE("mend: what it cannot mend is told, and ends with 1") {
    Desk desk;
    desk.disk.files["a.mmk"] = "device a \"A\"\npart p \"p\" kind zzzzzzzzzzzz\n";
    const std::string before = desk.disk.files["a.mmk"];
    CHECK(desk.run({"mend", "a.mmk", "--all"}) == 1);
    CHECK(desk.told("left a.mmk:2:"));
    CHECK(desk.disk.files["a.mmk"] == before);
    CHECK(desk.run({"mend", "a.mmk", "--json"}) == 1);
    CHECK(parsed(desk)["mended"].empty());
    CHECK(parsed(desk)["findings"].size() == 1);
}

TEST_CASE("mend: standard input to standard output") {
    Desk desk = bench();
    desk.input = test::bad_guide;
    CHECK(desk.run({"mend", "-"}) == 0);
    CHECK(desk.told("fasten"));
    CHECK(desk.out.starts_with("use \"lamp.mmk\""));
    CHECK(desk.complained("mended"));
}

TEST_CASE("tidy: the layout is changed once and then stays") {
    Desk desk;
    desk.disk.files["a.mmk"] = "device   a    \"A\"\n";
    CHECK(desk.run({"tidy", "a.mmk", "--check"}) == 1);
    CHECK(desk.told("would change a.mmk"));
    CHECK(desk.disk.files["a.mmk"] == "device   a    \"A\"\n");
    CHECK(desk.run({"tidy", "a.mmk"}) == 0);
    CHECK(desk.disk.files["a.mmk"] == "device a \"A\"\n");
    CHECK(desk.run({"tidy", "a.mmk", "--check"}) == 0);
    CHECK(desk.run({"tidy", "a.mmk", "--json"}) == 0);
    CHECK(parsed(desk)["files"][0]["changed"] == false);
}

TEST_CASE("tidy: a file with a syntax error is left as it is") {
    Desk desk;
    const std::string text = "device   a    \"A\"\npart ???\n";
    desk.disk.files["a.mmk"] = text;
    CHECK(desk.run({"tidy", "a.mmk"}) == 1);
    CHECK(desk.told("a.mmk:2"));
    CHECK(desk.disk.files["a.mmk"] == text);
    desk.input = text;
    CHECK(desk.run({"tidy", "-"}) == 1);
    CHECK(desk.out == text);
}

TEST_CASE("tidy: standard input to standard output") {
    Desk desk;
    desk.input = "device   a    \"A\"\n";
    CHECK(desk.run({"tidy", "-"}) == 0);
    CHECK(desk.out == "device a \"A\"\n");
    CHECK(desk.err.empty());
}

TEST_CASE("expand: every step is written out, and the result checks clean where it stands") {
    Desk desk = bench();
    CHECK(desk.run({"expand", "open.mmk"}) == 0);
    CHECK(desk.told("fasten"));
    CHECK_FALSE(desk.told("derived"));
    CHECK(desk.run({"expand", "open.mmk", "-o", "full/open.mmk"}) == 0);
    CHECK(desk.out == "full/open.mmk\n");
    CHECK(desk.disk.files["full/open.mmk"].starts_with("use \"../lamp.mmk\""));
    CHECK(desk.run({"check", "full"}) == 0);
    CHECK(desk.run({"tidy", "full", "--check"}) == 0);
}

TEST_CASE("expand: a device in the same file goes along") {
    Desk desk;
    const std::string guide = test::good_guide;
    desk.disk.files["all.mmk"] = test::device_text + guide.substr(guide.find('\n'));
    CHECK(desk.run({"expand", "all.mmk", "-o", "full.mmk"}) == 0);
    CHECK(desk.run({"check", "full.mmk"}) == 0);
    CHECK(desk.out == "1 guide, 1 device: nothing to report\n");
}

TEST_CASE("expand: two guides in one file, and the comments above them") {
    Desk desk = bench();
    const std::string guide = test::good_guide;
    std::string second = guide.substr(guide.find("\nguide"));
    second.replace(second.find("open-lamp"), 9, "look-in");
    desk.disk.files["both.mmk"] = "# Both.\n" + guide + "\n# The second." + second;
    CHECK(desk.run({"expand", "both.mmk", "-o", "full.mmk"}) == 0);
    CHECK(desk.disk.files["full.mmk"].starts_with("# Both.\nuse \"lamp.mmk\"\n"));
    CHECK(desk.disk.files["full.mmk"].find("# The second.\nguide look-in") != std::string::npos);
    CHECK(desk.run({"check", "full.mmk"}) == 0);
    CHECK(desk.out == "2 guides: nothing to report\n");
}

TEST_CASE("expand: pictures are named from where the text stands") {
    Desk desk;
    std::string guide = test::good_guide;
    guide.insert(guide.find("\nput-back"), "  photo \"img/lid.svg\" \"The lid\"\n");
    desk.disk.files = {{"g/lamp.mmk", test::device_text},
                       {"g/open.mmk", guide},
                       {"g/img/lid.svg", "<svg/>"},
                       {"do.mmk",
                        "use \"g/lamp.mmk\"\nuse \"g/open.mmk\"\n\nguide look \"Look\"\n\n"
                        "take-apart\n\nstep first\n  do open-lamp\n\nput-back\n  derived\n"}};
    CHECK(desk.run({"expand", "g/open.mmk"}) == 0);
    CHECK(desk.told("photo \"img/lid.svg\""));
    CHECK(desk.run({"expand", "g/open.mmk", "-o", "full/open.mmk"}) == 0);
    CHECK(desk.run({"check", "full/open.mmk", "--strict"}) == 0);
    CHECK(desk.run({"expand", "do.mmk"}) == 0);
    CHECK(desk.told("photo \"g/img/lid.svg\""));
}

TEST_CASE("expand: a guide with errors, a device alone, a folder") {
    Desk desk = bench();
    CHECK(desk.run({"expand", "shut.mmk"}) == 1);
    CHECK(desk.out.empty());
    CHECK(desk.complained("lid-screws"));
    CHECK(desk.run({"expand", "lamp.mmk"}) == 2);
    CHECK(desk.complained("declares no guide"));
    CHECK(desk.run({"expand", "."}) == 2);
    CHECK(desk.complained("folder"));
}

TEST_CASE("publish: a page for each guide, and a list for a folder") {
    Desk desk;
    desk.disk.files = {{"g/lamp.mmk", test::device_text}, {"g/open.mmk", test::good_guide}};
    CHECK(desk.run({"publish", "g/open.mmk", "-o", "one"}) == 0);
    CHECK(desk.out == "one/open-lamp.html\n");
    CHECK_FALSE(desk.disk.exists("one/index.html"));
    CHECK(desk.run({"publish", "g", "-o", "site"}) == 0);
    CHECK(desk.out == "site/open-lamp.html\nsite/index.html\n");
    CHECK(desk.disk.files["site/index.html"].find("href=\"open-lamp.html\"") != std::string::npos);
    CHECK(desk.run({"publish", "g", "-o", "data", "--to", "json"}) == 0);
    CHECK(desk.out == "data/open-lamp.json\n");
    CHECK(nlohmann::json::accept(desk.disk.files["data/open-lamp.json"]));
}

TEST_CASE("publish: several forms in one run, each once, and pages that know each other") {
    Desk desk;
    desk.disk.files = {{"g/lamp.mmk", test::device_text}, {"g/open.mmk", test::good_guide}};
    std::string other = test::good_guide;
    for (const char* name : {"open-lamp", "Open the lamp"}) {
        other.replace(other.find(name), 4, "Tune");
    }
    desk.disk.files["g/tune.mmk"] = other;
    CHECK(desk.run({"publish", "g", "-o", "site", "--to", "markdown,html,how-to,html"}) == 0);
    CHECK(desk.out == "site/open-lamp.html\nsite/open-lamp.md\nsite/open-lamp.how-to.jsonld\n"
                      "site/Tune-lamp.html\nsite/Tune-lamp.md\nsite/Tune-lamp.how-to.jsonld\n"
                      "site/index.html\n");
    const std::string& page = desk.disk.files["site/open-lamp.html"];
    CHECK(page.find("<a href=\"Tune-lamp.html\">Tune the lamp</a>") != std::string::npos);
    CHECK(page.find("<a href=\"index.html\">") != std::string::npos);
    CHECK(desk.run({"publish", "g/open.mmk", "--to", "html,"}) == 2);
    CHECK(desk.run({"publish", "g/open.mmk", "--paper", "a5"}) == 2);
    CHECK(desk.complained("a4 and letter are known"));
    CHECK(desk.run({"publish", "g/open.mmk", "--source-version", "v<7>", "-o", "one"}) == 0);
    CHECK(desk.disk.files["one/open-lamp.html"].find("v&lt;7&gt;") != std::string::npos);
}

TEST_CASE("publish: guides of one name in folders of their own do not meet") {
    Desk desk;
    for (const char* folder : {"g/one/", "g/two/"}) {
        desk.disk.files[std::string(folder) + "lamp.mmk"] = test::device_text;
        desk.disk.files[std::string(folder) + "open.mmk"] = test::good_guide;
    }
    CHECK(desk.run({"publish", "g", "-o", "site"}) == 0);
    CHECK(desk.out == "site/one/open-lamp.html\nsite/two/open-lamp.html\nsite/index.html\n");
    CHECK(desk.disk.files["site/index.html"].find("\"two/open-lamp.html\"") != std::string::npos);
}

TEST_CASE("publish: nothing is written for a guide with errors") {
    Desk desk = bench();
    const auto before = desk.disk.files.size();
    CHECK(desk.run({"publish", "shut.mmk", "-o", "site"}) == 1);
    CHECK(desk.disk.files.size() == before);
    CHECK(desk.complained("lid-screws"));
    CHECK(desk.run({"publish", ".", "-o", "site"}) == 1);
    CHECK(desk.disk.exists("site/open-lamp.html"));
    CHECK_FALSE(desk.disk.exists("site/shut-lamp.html"));
    CHECK_FALSE(desk.disk.exists("site/index.html"));
}

TEST_CASE("publish: two guides of one name, a form that is not known, a file for a folder") {
    Desk desk = bench();
    desk.disk.files["again.mmk"] = test::good_guide;
    CHECK(desk.run({"publish", "open.mmk", "again.mmk", "-o", "site"}) == 2);
    CHECK(desk.complained("open-lamp.html"));
    CHECK_FALSE(desk.disk.exists("site"));
    CHECK(desk.run({"publish", "open.mmk", "--to", "htlm"}) == 2);
    CHECK(desk.complained("did you mean `html`?"));
    CHECK(desk.run({"publish", "open.mmk", "-o", "lamp.mmk"}) == 2);
    CHECK(desk.complained("is a file"));
    CHECK(desk.run({"publish", "lamp.mmk", "-o", "site"}) == 2);
    CHECK(desk.complained("no guide"));
}

TEST_CASE("explain: the table, a page, a slip") {
    Desk desk;
    CHECK(desk.run({"explain"}) == 0);
    CHECK(desk.told("missing-file"));
    CHECK(desk.run({"explain", "use-cycle"}) == 0);
    CHECK(desk.told("a file of its own"));
    CHECK(desk.run({"explain", "reading"}) == 0);
    CHECK(desk.told("unknown-unit"));
    CHECK(desk.run({"explain", "use-cylce"}) == 2);
    CHECK(desk.complained("did you mean `use-cycle`?"));
    CHECK(desk.run({"explain", "not-put-back", "--json"}) == 0);
    CHECK(parsed(desk)["rule"] == "not-put-back");
}

TEST_CASE("explain: every finding that a command raises has an explanation") {
    Desk desk = bench();
    desk.disk.files["a.mmk"] = "use \"none.mmk\"\ndevice a \"A\"\npart ???\n";
    desk.disk.files["b.mmk"] = "device b \"B\"\npart p kind nope\npart p\n  mass 3 furlong\n"
                               "guide g \"G\"\nstep s \"S\"\n  undo nothing with that\n";
    for (const char* path : {"a.mmk", "b.mmk", "shut.mmk"}) {
        CHECK(desk.run({"check", path, "--json"}) != 0);
        const auto object = parsed(desk);
        REQUIRE_FALSE(object["findings"].empty());
        for (const auto& finding : object["findings"]) {
            const std::string rule = finding["rule"];
            CAPTURE(rule);
            CHECK(desk.run({"explain", rule}) == 0);
        }
    }
}

TEST_CASE("kinds: a list, a shelf, a page, a slip") {
    Desk desk;
    CHECK(desk.run({"kinds"}) == 0);
    CHECK(desk.told("flip-lock-ribbon"));
    CHECK(desk.told("hexalobular"));
    CHECK(desk.run({"kinds", "fasteners"}) == 0);
    CHECK(desk.told("circlip"));
    CHECK_FALSE(desk.told("flip-lock-ribbon"));
    CHECK(desk.run({"kinds", "circlip"}) == 0);
    CHECK(desk.told("circlip-pliers"));
    CHECK(desk.told("one use"));
    CHECK(desk.told("eye protection"));
    CHECK(desk.run({"kinds", "circlpi"}) == 2);
    CHECK(desk.complained("did you mean `circlip`?"));
    CHECK(desk.run({"kinds", "set-screw", "--json"}) == 0);
    CHECK(parsed(desk)["kinds"][0]["role"] == "fastener");
}

TEST_CASE("kinds: a file's own kinds") {
    Desk desk;
    desk.disk.files["own.mmk"] = "kind bead-pin \"bead pin\" is fastener\n  states in, out\n"
                                 "  pull in -> out by hand\n  push out -> in by hand\n";
    CHECK(desk.run({"kinds", "bead-pin"}) == 2);
    CHECK(desk.run({"kinds", "bead-pin", "--in", "own.mmk"}) == 0);
    CHECK(desk.told("in -> out by hand"));
}

TEST_CASE("new: a device and a guide that check clean as they stand") {
    Desk desk;
    CHECK(desk.run({"new", "device", "kettle"}) == 0);
    CHECK(desk.out == "kettle.mmk\n");
    CHECK(desk.run({"new", "guide", "open-kettle", "--for", "kettle.mmk", "-o", "g/open.mmk"}) ==
          0);
    CHECK(desk.disk.files["g/open.mmk"].find("\nuse \"../kettle.mmk\"") != std::string::npos);
    CHECK(desk.run({"check", "kettle.mmk", "g/open.mmk", "--strict"}) == 0);
    CHECK(desk.out == "1 guide, 1 device: nothing to report\n");
    CHECK(desk.run({"tidy", "--check", "kettle.mmk", "g/open.mmk"}) == 0);
    CHECK(desk.disk.files["g/open.mmk"].find("undo") != std::string::npos);
}

TEST_CASE("new: nothing is written over, and what is missing is asked for") {
    Desk desk = bench();
    CHECK(desk.run({"new", "device", "lamp"}) == 2);
    CHECK(desk.complained("there already"));
    CHECK(desk.disk.files["lamp.mmk"] == test::device_text);
    CHECK(desk.run({"new", "device"}) == 2);
    CHECK(desk.complained("name the device"));
    CHECK(desk.run({"new", "guide", "g"}) == 2);
    CHECK(desk.complained("--for DEVICE.mmk"));
    CHECK(desk.run({"new", "devcie", "g"}) == 2);
    CHECK(desk.complained("did you mean `device`?"));
    CHECK(desk.run({"new", "device", "my kettle"}) == 2);
    CHECK(desk.complained("write `my-kettle`"));
    CHECK(desk.run({"new"}) == 2);
    CHECK(desk.complained_in_one_line());
}

TEST_CASE("a slip in one line silences the walk over the bench") {
    Desk desk = bench();
    std::string text = test::bad_guide;
    text.insert(text.find("  remove     lid\n"), "  undo       lid-scerws\n");
    desk.disk.files["shut.mmk"] = text;
    const auto done = drive::compile(desk.disk, "shut.mmk");
    REQUIRE(done.findings.size() == 1);
    CHECK(done.findings[0].rule == "unknown-item");
    CHECK(done.procedures.empty());
}

TEST_CASE("a declaration that cannot be read is told once, not at every use of its name") {
    Desk desk;
    std::string text = test::device_text;
    text.replace(text.find("part lid \"lid\""), 14, "part lid \"lid\" ???");
    const std::string guide = test::good_guide;
    desk.disk.files["all.mmk"] = text + guide.substr(guide.find('\n'));
    const auto done = drive::compile(desk.disk, "all.mmk");
    REQUIRE(done.findings.size() == 1);
    CHECK(done.findings[0].rule == "syntax");
}
