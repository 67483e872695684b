// Short texts that ask for endless work are refused with a reason.
#include "drive/compilation.hpp"
#include "drive/limits.hpp"
#include "parse/parse.hpp"
#include "resolve/limits.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace matchmark;

namespace {

const std::string cabinet =
    "device cabinet \"Cabinet\"\npart frame \"frame\"\npart door \"door\"\n";

drive::Compilation compiled(const std::string& text) {
    MapDisk disk;
    return drive::compile(disk, "cabinet.mmk", &text);
}

std::size_t limit_count_of(const drive::Compilation& done, const std::string& rule) {
    return static_cast<std::size_t>(
        std::count_if(done.findings.begin(), done.findings.end(),
                      [&](const Diagnostic& finding) { return finding.rule == rule; }));
}

std::string guide(const std::string& name, const std::string& first, const std::string& second) {
    std::string text = "guide " + name + " \"G\"\n  for competent\ntake-apart\n";
    text += "step one \"One\"\n  " + first + "\n";
    text += second.empty() ? "" : "step two \"Two\"\n  " + second + "\n";
    return text + "put-back\n  derived\n";
}

} // namespace

TEST_CASE("guides that double at every line are not written out") {
    std::string text = cabinet + guide("g0", "remove door", "");
    for (int i = 1; i < 30; ++i) {
        const std::string inner = "do g" + std::to_string(i - 1);
        text += guide("g" + std::to_string(i), inner, inner);
    }
    const auto done = compiled(text);
    CHECK(limit_count_of(done, "too-many-steps") == 1);
    CHECK(done.procedures.empty());
}

TEST_CASE("a chain of guides ends at its limit") {
    for (const std::size_t more : {std::size_t{0}, std::size_t{1}}) {
        std::string text = cabinet + guide("g0", "remove door", "");
        for (std::size_t i = 1; i <= resolve::most_guides_deep + more; ++i)
            text += guide("g" + std::to_string(i), "do g" + std::to_string(i - 1), "");
        CHECK(limit_count_of(compiled(text), "too-many-steps") == more);
    }
}

TEST_CASE("a ring of guides is told where it closes") {
    const auto own = compiled(cabinet + guide("a", "do a", ""));
    CHECK(limit_count_of(own, "done-in-itself") == 1);
    const auto two = compiled(cabinet + guide("a", "do b", "") + guide("b", "do a", ""));
    CHECK(limit_count_of(two, "done-in-itself") == 1);
    const auto twice = compiled(cabinet + guide("a", "remove door", "") + guide("b", "do a", "") +
                                guide("c", "do a", "do b"));
    CHECK(limit_count_of(twice, "done-in-itself") == 0);
}

TEST_CASE("a device has no more variants than are told apart") {
    for (const std::size_t more : {std::size_t{0}, std::size_t{1}, std::size_t{2000}}) {
        std::string text = "device cabinet \"Cabinet\"\n  variant v0";
        for (std::size_t i = 1; i < resolve::most_variants + more; ++i)
            text += ", v" + std::to_string(i);
        text += "\npart door \"door\" only v" + std::to_string(resolve::most_variants + more - 1) +
                "\n";
        CHECK(limit_count_of(compiled(text), "too-many-variants") == (more == 0 ? 0 : 1));
    }
}

TEST_CASE("names and numbers have a longest length") {
    const std::string name(syntax::longest_name, 'n');
    CHECK(limit_count_of(compiled(cabinet + "part " + name + " \"p\"\n"), "syntax") == 0);
    CHECK(limit_count_of(compiled(cabinet + "part n" + name + " \"p\"\n"), "syntax") == 1);
    const std::string number(syntax::longest_number, '9');
    const std::string head = "device cabinet \"Cabinet\"\n  mass ";
    CHECK(limit_count_of(compiled(head + number + " g\n"), "syntax") == 0);
    CHECK(limit_count_of(compiled(head + "9" + number + " g\n"), "syntax") == 1);
}

TEST_CASE("a file that makes no sense is given up") {
    std::string text = cabinet;
    for (std::size_t i = 0; i < 3 * syntax::most_slips; ++i)
        text += "nonsense here\n";
    const auto done = compiled(text);
    CHECK(done.findings.size() == syntax::most_slips + 1);
    CHECK(done.findings.back().message.find("not read") != std::string::npos);
}

TEST_CASE("findings are kept up to their limit") {
    std::string text = cabinet;
    for (std::size_t i = 0; i < drive::most_findings + 10; ++i)
        text += "part p" + std::to_string(i) + " \"p\"\n  covers nothing\n";
    const auto done = compiled(text);
    REQUIRE(done.findings.size() == drive::most_findings + 1);
    CHECK(done.findings.back().rule == "too-many-findings");
    CHECK(done.findings.back().severity == Severity::error);
}
