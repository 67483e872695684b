// Wrong use is told in one line, with the nearest command or option.
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using test::bench;
using test::Desk;

TEST_CASE("a command that is not there") {
    Desk desk;
    CHECK(desk.run({"chekc", "a.mmk"}) == 2);
    CHECK(desk.err == "matchmark: there is no command `chekc`; did you mean `check`?\n");
    CHECK(desk.run({"frobnicate"}) == 2);
    CHECK(desk.complained("--help"));
    CHECK(desk.run({}) == 2);
    CHECK(desk.out.empty());
}

TEST_CASE("an option that is not there") {
    Desk desk = bench();
    CHECK(desk.run({"check", "open.mmk", "--jsno"}) == 2);
    CHECK(desk.err == "matchmark check: there is no option `--jsno`; did you mean `--json`?\n");
    CHECK(desk.run({"check", "open.mmk", "--frobnicate=3"}) == 2);
    CHECK(desk.complained("matchmark check --help"));
    CHECK(desk.run({"--vresion"}) == 2);
    CHECK(desk.complained("did you mean `--version`?"));
}

TEST_CASE("an option without its value, or with a wrong one") {
    Desk desk = bench();
    for (const std::vector<std::string>& arguments :
         {std::vector<std::string>{"publish", "open.mmk", "--to"},
          {"check", "open.mmk", "--jobs", "many"},
          {"check", "open.mmk", "--jobs", "0"},
          {"check", "open.mmk", "--as", "jsno"},
          {"check", "open.mmk", "--as", "sarif", "--json"},
          {"expand", "open.mmk", "again.mmk"},
          {"expand"},
          {"publish", "open.mmk", "-o", ""}}) {
        CAPTURE(arguments[0]);
        CHECK(desk.run(arguments) == 2);
        CHECK(desk.out.empty());
        CHECK(desk.complained_in_one_line());
    }
}

TEST_CASE("--json beside --as json is the same once more") {
    Desk once = bench();
    Desk twice = bench();
    CHECK(once.run({"check", "open.mmk", "--json"}) == 0);
    CHECK(twice.run({"check", "open.mmk", "--as", "json", "--json"}) == 0);
    CHECK(once.out == twice.out);
    CHECK(twice.out.starts_with("{"));
}

TEST_CASE("help and version") {
    Desk desk;
    CHECK(desk.run({"--help"}) == 0);
    for (const char* name :
         {"check", "mend", "tidy", "expand", "publish", "explain", "kinds", "new"}) {
        CAPTURE(name);
        CHECK(desk.told(name));
        Desk other;
        CHECK(other.run({name, "--help"}) == 0);
        CHECK(other.told("Examples:"));
        CHECK(other.told(std::string("  matchmark ") + name));
    }
    CHECK(desk.run({"--version"}) == 0);
    CHECK(desk.out.starts_with("matchmark "));
}
