// A diff says which lines change, in the form that `patch` reads.
#include "diagnostics/mend.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

using namespace matchmark;

namespace {

// A little reader of unified diffs: applies one to `before`, and fails when it does not fit.
std::string patched(const std::string& before, const std::string& diff) {
    std::vector<std::string> lines;
    std::string rest = diff;
    while (!rest.empty()) {
        const std::size_t end = rest.find('\n') + 1;
        lines.push_back(rest.substr(0, end));
        rest.erase(0, end);
    }
    std::string result;
    std::size_t copied = 0;
    std::size_t read = 0;
    const auto take = [&](const std::string& expected) {
        REQUIRE(before.compare(copied, expected.size(), expected) == 0);
        copied += expected.size();
        ++read;
    };
    for (std::size_t i = 2; i < lines.size(); ++i) {
        std::string content = lines[i].substr(1);
        if (i + 1 < lines.size() && lines[i + 1].starts_with('\\')) {
            content.pop_back();
        }
        if (lines[i].starts_with("@@ -")) {
            const std::string from = lines[i].substr(4, lines[i].find(' ', 4) - 4);
            const std::size_t first = std::stoul(from);
            const std::size_t target = from.ends_with(",0") ? first : first - 1;
            for (; read < target; ++read) {
                const std::size_t end = before.find('\n', copied) + 1;
                result += before.substr(copied, end - copied);
                copied = end;
            }
        } else if (lines[i].starts_with(' ')) {
            take(content);
            result += content;
        } else if (lines[i].starts_with('-')) {
            take(content);
        } else if (lines[i].starts_with('+')) {
            result += content;
        }
    }
    return result + before.substr(copied);
}

} // namespace

TEST_CASE("no change is no diff") {
    CHECK(unified_diff("a.mmk", "one\n", "one\n").empty());
    CHECK(unified_diff("a.mmk", "", "").empty());
}

TEST_CASE("a change stands between three lines of context") {
    const std::string before = "1\n2\n3\n4\n5\n6\n7\n8\n9\n";
    const std::string after = "1\n2\n3\n4\nfive\n6\n7\n8\n9\n";
    CHECK(unified_diff("x/a.mmk", before, after) ==
          "--- a/x/a.mmk\n+++ b/x/a.mmk\n@@ -2,7 +2,7 @@\n 2\n 3\n 4\n-5\n+five\n 6\n 7\n 8\n");
}

TEST_CASE("changes far apart are hunks of their own, near ones share one") {
    std::string before;
    for (int i = 1; i <= 30; ++i) {
        before += std::to_string(i) + "\n";
    }
    std::string after = before;
    after.replace(after.find("2\n"), 2, "two\n");
    after.replace(after.find("25\n"), 3, "");
    CHECK(unified_diff("a", before, after) ==
          "--- a/a\n+++ b/a\n@@ -1,5 +1,5 @@\n 1\n-2\n+two\n 3\n 4\n 5\n"
          "@@ -22,7 +22,6 @@\n 22\n 23\n 24\n-25\n 26\n 27\n 28\n");
}

TEST_CASE("new files, emptied files and files without a last line end") {
    CHECK(unified_diff("a", "", "one\ntwo\n") == "--- a/a\n+++ b/a\n@@ -0,0 +1,2 @@\n+one\n+two\n");
    CHECK(unified_diff("a", "one\n", "") == "--- a/a\n+++ b/a\n@@ -1 +0,0 @@\n-one\n");
    CHECK(unified_diff("a", "one", "one\n") ==
          "--- a/a\n+++ b/a\n@@ -1 +1 @@\n-one\n\\ No newline at end of file\n+one\n");
}

TEST_CASE("a diff applied to the old text gives the new one, and is short") {
    std::uint32_t state = 7;
    const auto below = [&](std::uint32_t limit) {
        state = state * 1664525U + 1013904223U; // Numerical Recipes' generator: the same every run
        return (state >> 16U) % limit;
    };
    for (int round = 0; round < 300; ++round) {
        std::vector<std::string> lines;
        for (std::uint32_t i = below(40); i > 0; --i) {
            lines.push_back("line " + std::to_string(below(6)) + "\n");
        }
        std::string before;
        for (const std::string& line : lines) {
            before += line;
        }
        const std::uint32_t changes = below(6);
        for (std::uint32_t i = 0; i < changes; ++i) {
            const auto at =
                static_cast<std::ptrdiff_t>(below(static_cast<std::uint32_t>(lines.size()) + 1));
            if (at < static_cast<std::ptrdiff_t>(lines.size()) && below(2) == 0) {
                lines.erase(lines.begin() + at);
            } else {
                lines.insert(lines.begin() + at, "new " + std::to_string(below(3)) + "\n");
            }
        }
        std::string after;
        for (const std::string& line : lines) {
            after += line;
        }
        const std::string diff = unified_diff("a", before, after);
        CAPTURE(diff);
        if (before == after) {
            CHECK(diff.empty());
            continue;
        }
        REQUIRE(patched(before, diff) == after);
        std::size_t changed = 0;
        for (std::size_t at = diff.find('\n', diff.find("@@")); at != std::string::npos;
             at = diff.find('\n', at + 1)) {
            changed +=
                at + 1 < diff.size() && (diff[at + 1] == '+' || diff[at + 1] == '-') ? 1U : 0U;
        }
        CHECK(changed <= changes);
    }
}

TEST_CASE("texts with nothing in common are replaced whole, and soon") {
    std::string before;
    std::string after;
    for (int i = 0; i < 20'000; ++i) {
        before += "old " + std::to_string(i) + "\n";
        after += "new " + std::to_string(i) + "\n";
    }
    const std::string diff = unified_diff("a", before, after);
    CHECK(diff.find("@@ -1,20000 +1,20000 @@") != std::string::npos);
    CHECK(patched(before, diff) == after);
}
