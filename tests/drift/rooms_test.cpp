// The rooms of the house, as DEVELOPERS.md lists them, are the rooms that the code keeps to.
#include "drift/project.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace matchmark::drift;

namespace {

struct Rooms {
    std::vector<std::string> nouns; // each knows those before it
    std::set<std::string> verbs;
    std::vector<std::string> tops; // each knows those before it, and all the others
    std::string aside;             // the grammar
    std::string aside_reader;      // the one room that sees it
};

// The words behind `nouns`, `verbs`, `top` and `aside` at the start of a line.
Rooms read_rooms(const std::vector<std::string>& lines) {
    Rooms rooms;
    for (const std::string& line : lines) {
        std::istringstream words(line);
        std::string first;
        words >> first;
        std::vector<std::string> rest;
        for (std::string word; words >> word;) {
            if (word != "<") {
                rest.push_back(word);
            }
        }
        if (first == "nouns") {
            rooms.nouns = rest;
        } else if (first == "verbs") {
            rooms.verbs = {rest.begin(), rest.end()};
        } else if (first == "top") {
            rooms.tops = rest;
        } else if (first == "aside" && rest.size() == 5) { // "grammar seen by parse alone"
            rooms.aside = rest[0];
            rooms.aside_reader = rest[3];
        }
    }
    return rooms;
}

bool is_noun(const Rooms& rooms, const std::string& room) {
    return std::find(rooms.nouns.begin(), rooms.nouns.end(), room) != rooms.nouns.end();
}

bool is_top(const Rooms& rooms, const std::string& room) {
    return std::find(rooms.tops.begin(), rooms.tops.end(), room) != rooms.tops.end();
}

bool is_room(const Rooms& rooms, const std::string& room) {
    return is_noun(rooms, room) || rooms.verbs.contains(room) || is_top(rooms, room);
}

bool may_include(const Rooms& rooms, const std::string& from, const std::string& to) {
    if (from == to) {
        return true;
    }
    if (to == rooms.aside) {
        return from == rooms.aside_reader;
    }
    if (rooms.verbs.contains(from)) {
        return is_noun(rooms, to);
    }
    if (is_top(rooms, from)) {
        const auto end = std::find(rooms.tops.begin(), rooms.tops.end(), from);
        return is_noun(rooms, to) || rooms.verbs.contains(to) ||
               std::find(rooms.tops.begin(), end, to) != end;
    }
    const auto place = [&](const std::string& room) {
        return std::find(rooms.nouns.begin(), rooms.nouns.end(), room);
    };
    return is_noun(rooms, from) && is_noun(rooms, to) && place(to) < place(from);
}

// "compiler/check/walk.cpp" is in the room `check`, "grammar/terms.hpp" in `grammar`.
std::string room_of(std::string path) {
    if (path.starts_with("compiler/")) {
        path.erase(0, 9);
    }
    return path.substr(0, path.find('/'));
}

// The path between the quotes of an #include; empty for other lines.
std::string included_path(const std::string& line) {
    const std::string start = "#include \"";
    if (!line.starts_with(start)) {
        return "";
    }
    return line.substr(start.size(), line.rfind('"') - start.size());
}

} // namespace

TEST_CASE("DEVELOPERS.md lists the rooms, and each is a folder") {
    const Rooms rooms = read_rooms(read_project_file("DEVELOPERS.md").lines);
    REQUIRE(rooms.nouns.size() >= 6);
    REQUIRE(rooms.verbs.size() >= 6);
    REQUIRE(is_top(rooms, "drive"));
    REQUIRE(rooms.aside == "grammar");
    REQUIRE(rooms.aside_reader == "parse");
    std::vector<std::string> offences;
    const std::vector<std::string> folders = names_in("compiler");
    for (const std::string& folder : folders) {
        if (!is_room(rooms, folder)) {
            offences.push_back("compiler/" + folder + " is in no list");
        }
    }
    std::vector<std::string> listed = rooms.nouns;
    listed.insert(listed.end(), rooms.verbs.begin(), rooms.verbs.end());
    listed.insert(listed.end(), rooms.tops.begin(), rooms.tops.end());
    for (const std::string& room : listed) {
        if (!std::binary_search(folders.begin(), folders.end(), room)) {
            offences.push_back("there is no folder compiler/" + room);
        }
    }
    expect_none(offences, "the rooms of DEVELOPERS.md are the folders of compiler/");
}

TEST_CASE("a room includes only the rooms it may know") {
    const Rooms rooms = read_rooms(read_project_file("DEVELOPERS.md").lines);
    const std::vector<ProjectFile> files = files_of({"compiler", "grammar"}, {".cpp", ".hpp"});
    REQUIRE(files.size() > 10);
    std::vector<std::string> offences;
    std::size_t includes = 0;
    for (const ProjectFile& file : files) {
        for (const std::string& line : file.lines) {
            const std::string path = included_path(line);
            if (path.empty()) {
                continue;
            }
            ++includes;
            const std::string from = room_of(file.path);
            const std::string to = room_of(path);
            if (!may_include(rooms, from, to)) {
                offences.push_back(file.path + " includes " + path);
            }
        }
    }
    CHECK(includes > 20);
    expect_none(offences, "includes run one way only");
}

TEST_CASE("the law of the rooms tells what is allowed from what is not") {
    const Rooms rooms =
        read_rooms({"nouns a < b < c", "verbs v w", "top t", "aside grammar seen by v alone"});
    CHECK(may_include(rooms, "b", "a"));
    CHECK(may_include(rooms, "b", "b"));
    CHECK_FALSE(may_include(rooms, "a", "b"));
    CHECK_FALSE(may_include(rooms, "a", "v"));
    CHECK(may_include(rooms, "v", "c"));
    CHECK_FALSE(may_include(rooms, "v", "w"));
    CHECK_FALSE(may_include(rooms, "v", "t"));
    CHECK(may_include(rooms, "t", "w"));
    CHECK(may_include(rooms, "v", "grammar"));
    CHECK_FALSE(may_include(rooms, "w", "grammar"));
    CHECK_FALSE(may_include(rooms, "t", "grammar"));
    CHECK(may_include(rooms, "grammar", "grammar"));
    CHECK_FALSE(may_include(rooms, "grammar", "a"));
    CHECK_FALSE(may_include(rooms, "v", "terms.hpp")); // a path that names no room
    CHECK(included_path("#include \"a/b.hpp\" // why") == "a/b.hpp");
    CHECK(included_path("#include <vector>").empty());
}
