// Every case of the files beside this one: what it expects is found, and nothing else.
#include "support/accept.hpp"
#include "support/case_reader.hpp"

#include "diagnostics/mend.hpp"
#include "diagnostics/render.hpp"
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>

using namespace matchmark;
using namespace matchmark::test;

namespace {

namespace fs = std::filesystem;

std::vector<CaseFile> all_case_files() {
    const fs::path root = MATCHMARK_SOURCE_DIR;
    std::vector<std::string> paths;
    for (const auto& entry : fs::recursive_directory_iterator(root / "tests/cases")) {
        if (entry.path().extension() == ".mmk") {
            paths.push_back(entry.path().lexically_relative(root).generic_string());
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<CaseFile> files;
    for (const std::string& path : paths) {
        std::ifstream stream(root / path, std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(stream), {}};
        files.push_back(read_cases(path, text));
    }
    return files;
}

// The cases of a file see each other: a guide may `use "NAME.mmk"` of a device among them.
MapDisk disk_of(const CaseFile& file) {
    MapDisk disk;
    for (const Case& one : file.cases) {
        disk.files[one.name + ".mmk"] = one.text;
    }
    return disk;
}

std::string block_now(Disk& disk, const Case& one) {
    const drive::Compilation done = drive::compile(disk, one.name + ".mmk");
    return block_with(one, done.sources, done.root, done.findings);
}

} // namespace

TEST_CASE("every case finds what it expects") {
    const std::vector<CaseFile> files = all_case_files();
    REQUIRE(files.size() > 5);
    for (const CaseFile& file : files) {
        CAPTURE(file.path);
        CHECK_FALSE(file.cases.empty());
        MapDisk disk = disk_of(file);
        std::string recorded = file.head;
        std::string now = file.head;
        for (const Case& one : file.cases) {
            recorded += one.block;
            now += block_now(disk, one);
        }
        expect_recorded(file.path, recorded, now);
    }
}

TEST_CASE("no two cases have one name") {
    std::map<std::string, std::string> seen;
    for (const CaseFile& file : all_case_files()) {
        for (const Case& one : file.cases) {
            const auto earlier = seen.find(one.name);
            const std::string other = earlier == seen.end() ? "" : earlier->second;
            CHECK_MESSAGE(other.empty(), one.name, " stands in ", other, " and in ", file.path);
            seen.emplace(one.name, file.path);
        }
    }
    CHECK(seen.size() > 100);
}

// What `mend` writes has to make its finding go away; another may come to light.
TEST_CASE("what findings offer to write mends the cases") {
    std::size_t mended_cases = 0;
    for (const CaseFile& file : all_case_files()) {
        if (file.path.find("/check/") == std::string::npos)
            continue;
        for (const Case& one : file.cases) {
            CAPTURE(one.name);
            MapDisk disk = disk_of(file);
            const std::string path = one.name + ".mmk";
            const drive::Compilation before = drive::compile(disk, path);
            const Mended mended = mend(before.sources, before.findings, true);
            if (mended.applied == 0)
                continue;
            for (const auto& [id, text] : mended.texts) {
                disk.files[before.sources.file(id).path] = text;
            }
            const drive::Compilation after = drive::compile(disk, path);
            for (const Diagnostic& finding : after.findings) {
                const bool still = std::any_of(
                    before.findings.begin(), before.findings.end(), [&](const Diagnostic& was) {
                        return !was.edits.empty() && was.rule == finding.rule &&
                               was.message == finding.message;
                    });
                CHECK_MESSAGE(!still, disk.files[path], render_text(after.sources, finding));
            }
            ++mended_cases;
        }
    }
    CHECK(mended_cases > 20);
}

TEST_CASE("every finding says what to do about it") {
    for (const CaseFile& file : all_case_files()) {
        MapDisk disk = disk_of(file);
        for (const Case& one : file.cases) {
            CAPTURE(one.name);
            const drive::Compilation done = drive::compile(disk, one.name + ".mmk");
            for (const Diagnostic& finding : done.findings) {
                const bool told = !finding.help.empty() || !finding.edits.empty();
                CHECK_MESSAGE(told, render_text(done.sources, finding));
            }
        }
    }
}

TEST_CASE("the reader of cases tells an expectation from a comment") {
    const CaseFile file = read_cases(
        "f", "# about\n--- a\n# note [x]\n# error 1-4 [still-held] torn\npart b\n--- c\n");
    REQUIRE(file.cases.size() == 2);
    CHECK(file.head == "# about\n");
    CHECK(file.cases[0].name == "a");
    CHECK(file.cases[0].text == "# note [x]\npart b\n");
    CHECK(file.cases[1].text.empty());
    CHECK(rules_expected(file.cases[0].block) == std::vector<std::string>{"still-held"});
}

TEST_CASE("a finding that nobody expects changes the block of its case") {
    const CaseFile file = read_cases("f", "--- a\npart b\n  x\n");
    SourceMap sources;
    const FileId id = sources.add("a.mmk", file.cases[0].text);
    Diagnostic finding;
    finding.rule = "still-held";
    finding.primary = {id, 9, 10};
    finding.label = "torn";
    finding.variants = {"eu", "uk"};
    CHECK(block_with(file.cases[0], sources, id, {}) == file.cases[0].block);
    CHECK(block_with(file.cases[0], sources, id, {finding}) ==
          "--- a\npart b\n  # error 3-3 [still-held in eu, uk] torn\n  x\n");
}
