// Which files a change touches, and what a dependency file says.
#include "drive/touched.hpp"

#include "drive/depfile.hpp"

#include <doctest/doctest.h>

using namespace matchmark;
using namespace matchmark::drive;

namespace {

std::vector<std::string> touched(MapDisk& disk, const std::vector<std::string>& names) {
    std::vector<Input> inputs;
    for (const auto& [path, text] : disk.files) {
        inputs.push_back({path, std::nullopt, ""});
    }
    std::vector<std::string> found;
    for (const Input& input : touched_by(disk, inputs, names)) {
        found.push_back(input.path);
    }
    return found;
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("a list of names, as git writes it") {
    CHECK(listed_names("a.mmk\nb c.mmk\n") == Names{"a.mmk", "b c.mmk"});
    CHECK(listed_names("a.mmk\r\n\r\nb.mmk") == Names{"a.mmk", "b.mmk"});
    CHECK(listed_names("\"Ger\\303\\244t.mmk\"\n") == Names{"Gerät.mmk"});
    CHECK(listed_names("\"a\\\"b\\\\c\\t.mmk\"\n") == Names{"a\"b\\c\t.mmk"});
    CHECK(listed_names(std::string("\"a\".mmk\0b\n.mmk\0", 15)) == Names{"\"a\".mmk", "b\n.mmk"});
    CHECK(listed_names("").empty());
    CHECK(listed_names("\"\\3\"\n").size() == 1); // no octal number: nothing is read past its end
}

TEST_CASE("a change touches what uses the file at any distance, and what shows it") {
    MapDisk disk;
    disk.files = {{"kinds.mmk", ""},
                  {"d/device.mmk", "use \"../kinds.mmk\"\n"},
                  {"d/guide.mmk", "use \"device.mmk\"\nguide g\ntake-apart\nstep a\n  photo "
                                  "\"img/a.svg\" \"words\"\n"},
                  {"other.mmk", "use \"nowhere.mmk\"\n"},
                  {"ring-a.mmk", "use \"ring-b.mmk\"\n"},
                  {"ring-b.mmk", "use \"ring-a.mmk\"\n"}};
    CHECK(touched(disk, {"kinds.mmk"}) == Names{"d/device.mmk", "d/guide.mmk", "kinds.mmk"});
    CHECK(touched(disk, {"./d/../d/img/a.svg"}) == Names{"d/guide.mmk"});
    CHECK(touched(disk, {"nowhere.mmk"}) == Names{"other.mmk"});
    CHECK(touched(disk, {"ring-a.mmk"}) == Names{"ring-a.mmk", "ring-b.mmk"});
    CHECK(touched(disk, {"README.md"}).empty());
}

TEST_CASE("names in a dependency file") {
    CHECK(depfile_text({"a.ok"}, {"b.mmk"}) == "a.ok: \\\n  b.mmk\nb.mmk:\n");
    CHECK(depfile_text({"a b"}, {"$x#.mmk"}) == "a\\ b: \\\n  $$x\\#.mmk\n$$x\\#.mmk:\n");
    CHECK(depfile_text({"a"}, {"b\\ c"}) == "a: \\\n  b\\\\\\ c\nb\\\\\\ c:\n");
    CHECK(depfile_text({"a"}, {"b\nc"}).empty());
}
