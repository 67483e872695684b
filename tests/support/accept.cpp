// Compares recorded text with today's, or records it.
#include "support/accept.hpp"

#include "diagnostics/mend.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iostream>
#include <string_view>

namespace matchmark::test {

namespace {

bool accept_mode = false;
std::string program; // as it was called

} // namespace

void read_accept(int& argument_count, char** arguments) {
    program = arguments[0];
    int kept = 1;
    for (int i = 1; i < argument_count; ++i) {
        if (std::string_view(arguments[i]) == "--accept") {
            accept_mode = true;
        } else {
            arguments[kept++] = arguments[i];
        }
    }
    argument_count = kept;
}

bool accepting() { return accept_mode; }

void expect_recorded(const std::string& path, const std::string& recorded, const std::string& now) {
    if (recorded == now) {
        CHECK(recorded == now);
        return;
    }
    const std::string difference = unified_diff(path, recorded, now);
    if (accept_mode) {
        std::ofstream(std::string(MATCHMARK_SOURCE_DIR) + "/" + path, std::ios::binary) << now;
        std::cout << "accepted:\n" << difference;
        return;
    }
    FAIL_CHECK(difference, "if this is as it should be: ", program, " --accept");
}

} // namespace matchmark::test
