// The findings of reading that need a disk: a file that cannot be read, a picture that is not
// there.
#include "drive/compilation.hpp"
#include "drive/pictures.hpp"

#include <doctest/doctest.h>

using namespace matchmark;

TEST_CASE("a file that cannot be read is a finding of its own") {
    MapDisk disk;
    disk.files["tray.mmk/lid.mmk"] = "part lid\n"; // a folder of that name
    const drive::Compilation done = drive::compile(disk, "tray.mmk");
    REQUIRE(done.findings.size() == 1);
    CHECK(done.findings[0].rule == "unreadable-file");
    CHECK(done.unreadable);
}

TEST_CASE("a picture that is not there is a warning, and one that is there is not") {
    MapDisk disk;
    disk.files["crate.mmk"] = "device crate \"Crate\"\npart lid \"lid\"\n"
                              "guide look \"Look in\"\n  for competent\ntake-apart\n"
                              "step open \"Open\"\n  remove lid\n"
                              "  photo \"img/a.svg\" \"The lid\"\nput-back\n  derived\n";
    drive::Compilation without = drive::compile(disk, "crate.mmk");
    drive::report_pictures(disk, without);
    REQUIRE(without.findings.size() == 1);
    CHECK(without.findings[0].rule == "missing-picture");
    CHECK(without.findings[0].severity == Severity::warning);
    disk.files["img/a.svg"] = "<svg/>";
    drive::Compilation with = drive::compile(disk, "crate.mmk");
    drive::report_pictures(disk, with);
    CHECK(with.findings.empty());
    // 512 x 256 pixels, printed 100 mm wide: 130 dots per inch.
    using namespace std::string_literals;
    disk.files["img/a.svg"] = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\2\0\0\0\1\0"s;
    drive::Compilation coarse = drive::compile(disk, "crate.mmk");
    drive::report_pictures(disk, coarse);
    REQUIRE(coarse.findings.size() == 1);
    CHECK(coarse.findings[0].rule == "coarse-picture");
    CHECK(coarse.findings[0].severity == Severity::advice);
    CHECK(coarse.findings[0].message == "`img/a.svg` is coarse in print: 130 dots per inch");
    disk.files["img/a.svg"] = "<svg><g></svg>";
    drive::Compilation broken = drive::compile(disk, "crate.mmk");
    drive::report_pictures(disk, broken);
    REQUIRE(broken.findings.size() == 1);
    CHECK(broken.findings[0].rule == "not-a-picture");
}
