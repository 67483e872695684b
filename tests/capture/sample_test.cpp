// What the sample's notes become, kept to the byte.
#include "drive/capturing.hpp"
#include "support/accept.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace matchmark;

namespace {

std::string project_text(const std::string& path) {
    const auto read = real_disk()->read(std::string(MATCHMARK_SOURCE_DIR) + "/" + path);
    const auto* text = std::get_if<std::string>(&read);
    return text == nullptr ? std::string() : *text;
}

} // namespace

TEST_CASE("the notes of samples/radio become the device and the guides on record") {
    MapDisk disk;
    const std::string nothing;
    std::vector<drive::NotesText> notes;
    for (const char* name : {"notes-1.txt", "notes-2.txt"})
        notes.push_back({name, project_text(std::string("samples/radio/") + name)});
    const drive::Captured all =
        drive::captured(disk, drive::compile(disk, "library", &nothing), notes, ".");
    CHECK(all.unclean.empty());
    CHECK(all.guides.size() == 2);
    const std::string folder = "tests/capture/recorded/";
    const auto expect = [&](const std::string& path, const std::string& text) {
        const std::string recorded = folder + path + ".txt";
        test::expect_recorded(recorded, project_text(recorded), text);
    };
    expect(all.device_path, all.device_text);
    for (const drive::CapturedGuide& guide : all.guides)
        expect(guide.path, guide.text);
}
