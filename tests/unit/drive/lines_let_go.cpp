// A compilation that lets the lines of its files go finds what one that keeps them finds.
#include "drive/compilation.hpp"
#include "unit/drive/bench_files.hpp"

#include <algorithm>
#include <doctest/doctest.h>

using namespace matchmark;

TEST_CASE("lines let go take no finding and no allowance with them") {
    MapDisk disk;
    const std::string allowing = std::string(test::bad_guide) + "# allow no-such-rule: it is not\n";
    disk.files = {{"lamp.mmk", test::device_text}, {"shut.mmk", allowing}};
    for (const char* path : {"lamp.mmk", "shut.mmk"}) {
        const auto kept = drive::compile(disk, path);
        const auto gone = drive::compile(disk, path, nullptr, nullptr, drive::Lines::let_go);
        CHECK(gone.files.empty());
        const bool told = std::any_of(gone.findings.begin(), gone.findings.end(),
                                      [](const auto& f) { return f.rule == "unused-allowance"; });
        CHECK(told == (path == std::string("shut.mmk")));
        REQUIRE(gone.findings.size() == kept.findings.size());
        for (std::size_t i = 0; i < gone.findings.size(); ++i) {
            CHECK(gone.findings[i].message == kept.findings[i].message);
            CHECK(gone.findings[i].primary == kept.findings[i].primary);
        }
    }
}
