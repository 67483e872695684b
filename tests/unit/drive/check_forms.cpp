// Findings for code hosts and build servers, checks of what a change touches, and `compare` by its
// arguments.
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace matchmark;
using test::bench;
using test::Desk;

TEST_CASE("SARIF: a place in code points, the rule's page, the mend as a fix") {
    Desk desk = bench();
    CHECK(desk.run({"check", "shut.mmk", "--as", "sarif"}) == 1);
    const auto log = nlohmann::json::parse(desk.out);
    CHECK(log["version"] == "2.1.0");
    const auto& run = log["runs"][0];
    CHECK(run["columnKind"] == "unicodeCodePoints");
    REQUIRE(run["results"].size() == 1);
    const auto& result = run["results"][0];
    CHECK(result["ruleId"] == "not-put-back");
    CHECK(result["level"] == "error");
    const auto& place = result["locations"][0]["physicalLocation"];
    CHECK(place["artifactLocation"]["uri"] == "shut.mmk");
    CHECK(place["region"]["startLine"] == 10);
    const auto& rule = run["tool"]["driver"]["rules"][result["ruleIndex"].get<std::size_t>()];
    CHECK(rule["id"] == "not-put-back");
    CHECK_FALSE(rule["help"]["markdown"].get<std::string>().empty());
    const auto& change = result["fixes"][0]["artifactChanges"][0];
    CHECK(change["artifactLocation"]["uri"] == "shut.mmk");
    const auto text = change["replacements"][0]["insertedContent"]["text"].get<std::string>();
    CHECK(text.find("fasten") != std::string::npos);
}

TEST_CASE("SARIF: a fingerprint stays when lines above move") {
    Desk desk = bench();
    const auto print = [&] {
        desk.run({"check", "shut.mmk", "--as", "sarif"});
        const auto log = nlohmann::json::parse(desk.out);
        return log["runs"][0]["results"][0]["partialFingerprints"].dump();
    };
    const std::string before = print();
    desk.disk.files["shut.mmk"] = "\n# moved\n\n" + desk.disk.files["shut.mmk"];
    CHECK(print() == before);
}

TEST_CASE("SARIF of nothing") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "--as", "sarif"}) == 0);
    const auto log = nlohmann::json::parse(desk.out);
    CHECK(log["runs"][0]["results"].empty());
    CHECK(log["runs"][0]["invocations"][0]["executionSuccessful"] == true);
}

TEST_CASE("JUnit: a suite a file, a case a guide") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "shut.mmk", "--as", "junit"}) == 1);
    CHECK(desk.told("<testsuites name=\"matchmark\" tests=\"2\" failures=\"1\" errors=\"0\">"));
    CHECK(desk.told("<testcase classname=\"open.mmk\" name=\"open-lamp\" file=\"open.mmk\" "
                    "line=\"3\"/>"));
    CHECK(desk.told("name=\"shut-lamp\""));
    CHECK(desk.told("<failure type=\"failure\" message=\"error: "));
    CHECK(desk.told("[not-put-back]"));
}

TEST_CASE("JUnit: what belongs to no guide, and what cannot be read") {
    Desk desk = bench();
    desk.disk.files["shut.mmk"] = "part \"<&>\n" + desk.disk.files["shut.mmk"];
    CHECK(desk.run({"check", "shut.mmk", "--as", "junit"}) == 1);
    CHECK(desk.told("name=\"the file\""));
    CHECK_FALSE(desk.told("\"<&>"));
    desk.disk.files["lost.mmk"] = "use \"nowhere.mmk\"\n";
    CHECK(desk.run({"check", "lost.mmk", "--as", "junit"}) == 2);
    CHECK(desk.told("errors=\"1\""));
    CHECK(desk.told("<error "));
}

TEST_CASE("a form that is not there") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "--as", "sairf"}) == 2);
    CHECK(desk.complained("did you mean `sarif`?"));
    CHECK(desk.complained_in_one_line());
}

TEST_CASE("check: only what a change touches") {
    Desk desk = bench();
    desk.input = "shut.mmk\n";
    CHECK(desk.run({"check", ".", "--touched", "-"}) == 1);
    desk.input = "open.mmk\nREADME.md\n";
    CHECK(desk.run({"check", ".", "--touched", "-"}) == 0);
    CHECK(desk.out == "1 guide touched: nothing to report\n");
    CHECK(desk.run({"check", ".", "--touched", "lamp.mmk"}) == 1);
    CHECK(desk.run({"check", "--touched", "open.mmk", "open.mmk", "shut.mmk"}) == 0);
    CHECK(desk.run({"check", ".", "--touched", "README.md"}) == 0);
    CHECK(desk.out == "no file is touched: nothing to check\n");
    CHECK(desk.run({"check", ".", "--touched", "README.md", "--json"}) == 0);
    CHECK(nlohmann::json::parse(desk.out)["findings"].empty());
}

TEST_CASE("dependency files") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "--depfile", "open.ok.d"}) == 0);
    CHECK(desk.disk.files["open.ok.d"] ==
          "open.ok: \\\n  lamp.mmk \\\n  open.mmk\nlamp.mmk:\nopen.mmk:\n");
    CHECK(desk.run({"publish", "open.mmk", "-o", "site", "--depfile", "site.d"}) == 0);
    CHECK(desk.disk.files["site.d"].starts_with("site/open-lamp.html: \\\n  lamp.mmk"));
}

TEST_CASE("compare: what it is asked in the wrong way") {
    Desk desk = bench();
    desk.disk.files["kinds.mmk"] = "";
    desk.disk.files["broken.mmk"] = "guide \"a\n";
    for (const std::vector<std::string>& arguments :
         {std::vector<std::string>{"compare"},
          {"compare", "open.mmk"},
          {"compare", "open.mmk", "none.mmk"},
          {"compare", "open.mmk", "open.mmk", "--json", "--html"},
          {"compare", "kinds.mmk", "kinds.mmk"},
          {"compare", "--git", "a", "b"}}) {
        CHECK(desk.run(arguments) == 2);
        CHECK(desk.out.empty());
        CHECK_MESSAGE(desk.complained_in_one_line(), desk.err);
    }
    CHECK(desk.run({"compare", "open.mmk", "broken.mmk"}) == 2);
    CHECK(desk.complained("`broken.mmk` cannot be read as a guide"));
}

TEST_CASE("compare: a guide with errors is compared as it stands") {
    Desk desk = bench();
    desk.disk.files["other.mmk"] = desk.disk.files["shut.mmk"];
    CHECK(desk.run({"compare", "shut.mmk", "other.mmk"}) == 0);
    CHECK(desk.told("note: `shut.mmk` has 1 error of its own; it is compared as it stands"));
    CHECK(desk.told("no change in the procedure"));
}

TEST_CASE("compare: a page is written where it is asked for") {
    Desk desk = bench();
    CHECK(desk.run({"compare", "open.mmk", "shut.mmk", "--html", "-o", "a.html"}) == 1);
    CHECK(desk.out == "a.html\n");
    CHECK(desk.disk.files["a.html"].starts_with("<!DOCTYPE html>"));
}

TEST_CASE("compare: two folders") {
    Desk desk;
    desk.disk.files = {{"old/lamp.mmk", test::device_text},
                       {"old/open.mmk", test::good_guide},
                       {"new/lamp.mmk", test::device_text},
                       {"new/open.mmk", test::good_guide},
                       {"new/shut.mmk", test::bad_guide}};
    CHECK(desk.run({"compare", "old", "new"}) == 1);
    CHECK(desk.told("a new guide “Shut the lamp”, file `shut.mmk`"));
    CHECK(desk.told("open-lamp “Open the lamp”: no change in the procedure"));
    desk.disk.files.erase("new/shut.mmk");
    CHECK(desk.run({"compare", "old", "new/"}) == 0);
}

TEST_CASE("compare: as git calls it") {
    Desk desk = bench();
    desk.disk.files["aside/old"] = desk.disk.files["open.mmk"];
    std::string& text = desk.disk.files["open.mmk"];
    text.replace(text.find("competent"), 9, "trained");
    CHECK(desk.run({"compare", "--git", "open.mmk", "aside/old", "1", "100644", "open.mmk", "0",
                    "100644"}) == 0);
    CHECK(desk.told("Reader: for whom the guide is"));
    CHECK(desk.run({"compare", "--git", "open.mmk", "/dev/null", ".", ".", "open.mmk", "0",
                    "100644"}) == 0);
    CHECK(desk.told("a new file"));
}
