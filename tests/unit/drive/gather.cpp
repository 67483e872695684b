// A guide finds its device by `use`, and what is wrong with a file is told where it was named.
#include "drive/gather.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace matchmark;

namespace {

std::vector<std::string> own_paths(const drive::Gathered& gathered) {
    std::vector<std::string> paths;
    for (const syntax::FilePointer& file : gathered.files) {
        const SourceFile& source = gathered.sources.file(file->id);
        if (!source.built_in) {
            paths.push_back(source.path);
        }
    }
    return paths;
}

std::size_t count_of(const drive::Gathered& gathered, const std::string& rule) {
    return static_cast<std::size_t>(
        std::count_if(gathered.findings.begin(), gathered.findings.end(),
                      [&](const Diagnostic& finding) { return finding.rule == rule; }));
}

const Diagnostic& first_of(const drive::Gathered& gathered, const std::string& rule) {
    const auto found =
        std::find_if(gathered.findings.begin(), gathered.findings.end(),
                     [&](const Diagnostic& finding) { return finding.rule == rule; });
    REQUIRE(found != gathered.findings.end());
    return *found;
}

} // namespace

TEST_CASE("used files stand before their users, each once") {
    MapDisk disk;
    disk.files = {{"g/top.mmk", "use \"a.mmk\"\nuse \"../d/b.mmk\"\n"},
                  {"g/a.mmk", "use \"./../d/b.mmk\"\n"},
                  {"d/b.mmk", "device b \"B\"\n"}};
    const auto gathered = drive::gather(disk, "g/top.mmk", nullptr);
    CHECK(own_paths(gathered) == std::vector<std::string>{"d/b.mmk", "g/a.mmk", "g/top.mmk"});
    CHECK(gathered.findings.empty());
    CHECK(gathered.sources.file(gathered.root).path == "g/top.mmk");
}

TEST_CASE("a file that is not there is told at its `use` line, and the nearest is offered") {
    MapDisk disk;
    disk.files = {{"g/top.mmk", "use \"../d/kettel.mmk\"\n"}, {"d/kettle.mmk", ""}};
    const auto gathered = drive::gather(disk, "g/top.mmk", nullptr);
    CHECK(gathered.unreadable);
    const Diagnostic& finding = first_of(gathered, "missing-file");
    CHECK(gathered.sources.slice(finding.primary) == "\"../d/kettel.mmk\"");
    REQUIRE(finding.edits.size() == 1);
    CHECK(finding.edits[0].text == "\"../d/kettle.mmk\"");
    CHECK_FALSE(finding.safe);
}

TEST_CASE("a missing file that two files use is told once") {
    MapDisk disk;
    disk.files = {{"top.mmk", "use \"a.mmk\"\nuse \"none.mmk\"\n"},
                  {"a.mmk", "use \"none.mmk\"\n"}};
    CHECK(count_of(drive::gather(disk, "top.mmk", nullptr), "missing-file") == 1);
}

TEST_CASE("a ring of files is shown whole") {
    MapDisk disk;
    disk.files = {
        {"a.mmk", "use \"b.mmk\"\n"}, {"b.mmk", "use \"c.mmk\"\n"}, {"c.mmk", "use \"a.mmk\"\n"}};
    const auto gathered = drive::gather(disk, "a.mmk", nullptr);
    CHECK_FALSE(gathered.unreadable);
    REQUIRE(count_of(gathered, "use-cycle") == 1);
    const Diagnostic& finding = first_of(gathered, "use-cycle");
    CHECK(finding.why.find("a.mmk -> b.mmk -> c.mmk -> a.mmk") != std::string::npos);
    CHECK(finding.related.size() == 2);
    CHECK(gathered.sources.file(finding.primary.file).path == "c.mmk");
}

TEST_CASE("a file that uses itself") {
    MapDisk disk;
    disk.files = {{"a.mmk", "use \"a.mmk\"\n"}};
    const auto gathered = drive::gather(disk, "a.mmk", nullptr);
    CHECK(first_of(gathered, "use-cycle").why.find("a.mmk -> a.mmk") != std::string::npos);
}

TEST_CASE("two ways to one file are no ring") {
    MapDisk disk;
    disk.files = {{"a.mmk", "use \"b.mmk\"\nuse \"c.mmk\"\n"},
                  {"b.mmk", "use \"d.mmk\"\n"},
                  {"c.mmk", "use \"d.mmk\"\n"},
                  {"d.mmk", ""}};
    CHECK(drive::gather(disk, "a.mmk", nullptr).findings.empty());
}

TEST_CASE("bytes that are not text are told with their place") {
    MapDisk disk;
    disk.files = {{"latin.mmk", "# ok\ndevice k\xFC"
                                "che \"x\"\n"},
                  {"nul.mmk", std::string("device a \"\0\"\n", 13)}};
    const auto latin = drive::gather(disk, "latin.mmk", nullptr);
    CHECK(latin.unreadable);
    const Diagnostic& finding = first_of(latin, "not-text");
    const Place place = latin.sources.place(finding.primary.file, finding.primary.begin);
    CHECK(place.line == 2);
    CHECK(place.column == 9);
    CHECK(finding.label.find("FC") != std::string::npos);
    CHECK(latin.sources.line(latin.root, 2) == "device k?che \"x\"");
    CHECK(count_of(latin, "syntax") == 0);
    const auto nul = drive::gather(disk, "nul.mmk", nullptr);
    CHECK(first_of(nul, "not-text").message.find("NUL") != std::string::npos);
}

TEST_CASE("every bad byte is replaced, so that findings can be printed") {
    SourceMap sources;
    std::vector<Diagnostic> findings;
    CHECK_FALSE(drive::add_source(sources, "x.mmk",
                                  "a\xFF\xFE"
                                  "b\x80"
                                  "c",
                                  findings));
    CHECK(sources.file(0).text == "a??b?c");
}

TEST_CASE("a chain of files that is too long is cut, once") {
    MapDisk disk;
    for (int i = 0; i < 300; ++i) {
        disk.files["f" + std::to_string(i) + ".mmk"] =
            "use \"f" + std::to_string(i + 1) + ".mmk\"\n";
    }
    const auto gathered = drive::gather(disk, "f0.mmk", nullptr);
    CHECK(count_of(gathered, "too-many-files") == 1);
    CHECK(own_paths(gathered).size() == drive::most_deep);
}

TEST_CASE("the root's text may come from elsewhere than the disk") {
    MapDisk disk;
    disk.files = {{"b.mmk", ""}};
    const std::string text = "use \"b.mmk\"\n";
    const auto gathered = drive::gather(disk, "-", &text);
    CHECK(own_paths(gathered) == std::vector<std::string>{"b.mmk", "-"});
}

TEST_CASE("a root that is not there is a finding like any other") {
    MapDisk disk;
    const auto gathered = drive::gather(disk, "none.mmk", nullptr);
    CHECK(gathered.unreadable);
    CHECK(count_of(gathered, "missing-file") == 1);
}

TEST_CASE("the nearest file is looked for in the folder named alone") {
    MapDisk disk;
    disk.files = {{"d/lamp.mmk", ""}, {"d/deep/lamq.mmk", ""}, {"lamq.mmk", ""}};
    CHECK(drive::nearest_file(disk, "d/lamq.mmk") == "d/lamp.mmk");
    CHECK(drive::nearest_file(disk, "d/lamp") == "d/lamp.mmk");
    CHECK(drive::nearest_file(disk, "d/motor.mmk").empty());
}
