// Findings as JUnit XML, for build servers: one test case a guide and variant.
#pragma once

#include "drive/compilation.hpp"
#include "drive/report.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

struct JunitCase {
    std::string name; // "replace-cell", "replace-cell (eu)", "the file"
    std::uint32_t line = 1;
    std::vector<std::string> failures; // errors, framed; the first line is the message
    std::vector<std::string> others;   // warnings and advice
};

struct JunitSuite {
    std::string file;
    bool unreadable = false;
    std::vector<JunitCase> cases;
};

// `shown`: the same findings as those of `done`, in their order, ready to be shown. What stands
// outside the guides of the file, or in another file, is a case of its own, "the file".
JunitSuite junit_suite(const Compilation& done, const std::vector<Reported>& shown);

std::string junit_text(const std::vector<JunitSuite>& suites);

} // namespace matchmark::drive
