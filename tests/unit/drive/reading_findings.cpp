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
    drive::report_missing_pictures(disk, without);
    REQUIRE(without.findings.size() == 1);
    CHECK(without.findings[0].rule == "missing-picture");
    CHECK(without.findings[0].severity == Severity::warning);
    disk.files["img/a.svg"] = "<svg/>";
    drive::Compilation with = drive::compile(disk, "crate.mmk");
    drive::report_missing_pictures(disk, with);
    CHECK(with.findings.empty());
}
