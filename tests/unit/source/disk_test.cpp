// A file is read whole or not at all, and replaced whole or not at all.
#include "source/disk.hpp"

#include <doctest/doctest.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace matchmark;

namespace {

namespace fs = std::filesystem;

// A folder of the test's own, removed at its end.
struct Scratch {
    Scratch() {
        std::string pattern = (fs::temp_directory_path() / "matchmark-XXXXXX").string();
        REQUIRE(::mkdtemp(pattern.data()) != nullptr);
        path = pattern;
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch() {
        std::error_code ignored;
        fs::remove_all(path, ignored);
    }

    [[nodiscard]] std::string at(const std::string& name) const { return path + "/" + name; }

    void put(const std::string& name, const std::string& text) const {
        fs::create_directories(fs::path(at(name)).parent_path());
        std::ofstream(at(name), std::ios::binary) << text;
    }

    // How many entries the folder holds, hidden ones too.
    [[nodiscard]] std::ptrdiff_t entries() const {
        return std::distance(fs::directory_iterator(path), fs::directory_iterator());
    }

    std::string path;
};

template <class T> std::string reason(const DiskResult<T>& result) {
    const auto* problem = std::get_if<DiskProblem>(&result);
    return problem == nullptr ? "" : problem->reason;
}

std::string text_of(const DiskResult<std::string>& result) {
    const auto* text = std::get_if<std::string>(&result);
    return text == nullptr ? "(" + reason(result) + ")" : *text;
}

} // namespace

TEST_CASE("what is written is read again, byte for byte") {
    const Scratch scratch;
    const auto disk = real_disk();
    const std::string bytes("part lid\r\n\0\xFF end", 16);
    CHECK(reason(disk->write(scratch.at("a.mmk"), bytes)).empty());
    CHECK(text_of(disk->read(scratch.at("a.mmk"))) == bytes);
    CHECK(reason(disk->write(scratch.at("a.mmk"), "")).empty());
    CHECK(text_of(disk->read(scratch.at("a.mmk"))).empty());
    CHECK(scratch.entries() == 1); // nothing is left beside it
}

TEST_CASE("writing makes the folders that are missing") {
    const Scratch scratch;
    const auto disk = real_disk();
    CHECK(reason(disk->write(scratch.at("x/y/a.html"), "page")).empty());
    CHECK(text_of(disk->read(scratch.at("x/y/a.html"))) == "page");
}

TEST_CASE("a replaced file keeps its mode, and a link to it stays a link") {
    const Scratch scratch;
    const auto disk = real_disk();
    scratch.put("a.mmk", "old");
    REQUIRE(::chmod(scratch.at("a.mmk").c_str(), 0640) == 0);
    fs::create_symlink("a.mmk", scratch.at("link.mmk"));
    CHECK(reason(disk->write(scratch.at("link.mmk"), "new")).empty());
    CHECK(fs::is_symlink(scratch.at("link.mmk")));
    CHECK(text_of(disk->read(scratch.at("a.mmk"))) == "new");
    struct stat status {};
    REQUIRE(::stat(scratch.at("a.mmk").c_str(), &status) == 0);
    CHECK((status.st_mode & 07777U) == 0640);
}

TEST_CASE("what cannot be read is told in words") {
    const Scratch scratch;
    const auto disk = real_disk();
    CHECK(text_of(disk->read(scratch.at("none.mmk"))) == "(no such file)");
    CHECK(text_of(disk->read(scratch.path)) == "(it is a folder)");
    CHECK(text_of(disk->read("/dev/null")) == "(it is a device or a pipe, not a file)");
    CHECK(text_of(disk->read("")) == "(its name is empty)");
    CHECK(text_of(disk->read(std::string("a\0b", 3))) == "(its name contains a NUL)");
    scratch.put("a.mmk", "");
    CHECK(text_of(disk->read(scratch.at("a.mmk/b"))) == "(a part of its path is not a folder)");
    REQUIRE(::mkfifo(scratch.at("pipe").c_str(), 0600) == 0);
    CHECK(text_of(disk->read(scratch.at("pipe"))) == "(it is a device or a pipe, not a file)");
    fs::create_symlink("circle", scratch.at("circle"));
    CHECK(text_of(disk->read(scratch.at("circle"))) == "(its links lead in a circle)");
}

TEST_CASE("a file too large for the places in it is refused before it is read") {
    const Scratch scratch;
    scratch.put("large.mmk", "");
    fs::resize_file(scratch.at("large.mmk"), (256U << 20U) + 1); // sparse: takes no room
    CHECK(text_of(real_disk()->read(scratch.at("large.mmk"))) == "(it is larger than 256 MB)");
}

TEST_CASE("a file whose size is not what it was said to be is refused") {
    // The system's own tables say that they are empty and then are not.
    if (fs::exists("/proc/self/status")) {
        CHECK(text_of(real_disk()->read("/proc/self/status")) == "(it changed while it was read)");
    }
}

TEST_CASE("what cannot be written is told, and nothing is left behind") {
    const Scratch scratch;
    const auto disk = real_disk();
    CHECK(reason(disk->write(scratch.path, "x")) == "it is a folder");
    CHECK(reason(disk->write("/dev/null", "x")) == "it is a device or a pipe, not a file");
    scratch.put("a.mmk", "old");
    CHECK_FALSE(reason(disk->write(scratch.at("a.mmk/b.mmk"), "x")).empty());
    CHECK(reason(disk->write(scratch.at(std::string(300, 'n')), "x")) == "its name is too long");
    CHECK(text_of(disk->read(scratch.at("a.mmk"))) == "old");
    CHECK(scratch.entries() == 1);
}

TEST_CASE("a write that fails in the middle leaves the old file whole and nothing beside it") {
    const Scratch scratch;
    scratch.put("a.mmk", "old");
    // A limit on the size of files stops a write half-way, as a full disk does.
    struct rlimit usual {};
    REQUIRE(::getrlimit(RLIMIT_FSIZE, &usual) == 0);
    const struct rlimit tight { 4096, usual.rlim_max };
    const auto old_handler = std::signal(SIGXFSZ, SIG_IGN);
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &tight) == 0);
    const auto result = real_disk()->write(scratch.at("a.mmk"), std::string(100000, 'x'));
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &usual) == 0);
    std::signal(SIGXFSZ, old_handler);
    CHECK(reason(result) == "it is larger than the disk allows");
    CHECK(text_of(real_disk()->read(scratch.at("a.mmk"))) == "old");
    CHECK(scratch.entries() == 1);
}

TEST_CASE("a list holds the files below a folder in order, hidden folders left out") {
    const Scratch scratch;
    const auto disk = real_disk();
    for (const char* name : {"b.mmk", "a.mmk", "a/z.mmk", "a-b.mmk", "a.txt", ".git/c.mmk",
                             "a/.x/d.mmk", "Z.mmk", "ö.mmk"}) {
        scratch.put(name, "");
    }
    fs::create_directory_symlink("a", scratch.at("linked"));
    fs::create_symlink("nowhere", scratch.at("broken.mmk"));
    const auto listed = disk->list(scratch.path, ".mmk");
    REQUIRE(std::holds_alternative<std::vector<std::string>>(listed));
    const std::vector<std::string> expected{"Z.mmk",   "a-b.mmk", "a.mmk",
                                            "a/z.mmk", "b.mmk",   "ö.mmk"};
    CHECK(std::get<std::vector<std::string>>(listed) == expected);
    CHECK(reason(disk->list(scratch.at("none"), ".mmk")) == "no such folder");

    MapDisk map;
    for (const std::string& name : expected) {
        map.files["g/" + name] = "";
    }
    map.files["g/.git/c.mmk"] = "";
    map.files["g/a/.x/d.mmk"] = "";
    map.files["ga.mmk"] = "";
    const auto mapped = map.list("g", ".mmk");
    REQUIRE(std::holds_alternative<std::vector<std::string>>(mapped));
    CHECK(std::get<std::vector<std::string>>(mapped) == expected);
    CHECK(reason(map.list("none", ".mmk")) == "no such folder");
}

TEST_CASE("files and folders are told apart") {
    const Scratch scratch;
    const auto disk = real_disk();
    scratch.put("a/b.mmk", "");
    MapDisk map;
    map.files[scratch.at("a/b.mmk")] = "";
    for (Disk* each : {disk.get(), static_cast<Disk*>(&map)}) {
        CHECK(each->is_folder(scratch.at("a")));
        CHECK(each->is_folder(scratch.at("a/")));
        CHECK_FALSE(each->is_folder(scratch.at("a/b.mmk")));
        CHECK(each->exists(scratch.at("a")));
        CHECK(each->exists(scratch.at("a/b.mmk")));
        CHECK(each->exists(scratch.at("a/./b.mmk")));
        CHECK_FALSE(each->exists(scratch.at("a/c.mmk")));
        CHECK(reason(each->read(scratch.at("a"))) == "it is a folder");
        CHECK(reason(each->write(scratch.at("a"), "")) == "it is a folder");
        CHECK(reason(each->read(scratch.at("c"))) == "no such file");
    }
}

TEST_CASE("a path is told from the folder of the file that names it") {
    CHECK(beside("a/b.mmk", "../c.mmk") == "c.mmk");
    CHECK(beside("a/b.mmk", "c.mmk") == "a/c.mmk");
    CHECK(beside("b.mmk", "c.mmk") == "c.mmk");
    CHECK(beside("b.mmk", "./x//y/../c.mmk") == "x/c.mmk");
    CHECK(beside("b.mmk", "../../c.mmk") == "../../c.mmk");
    CHECK(beside("../a/b.mmk", "../c.mmk") == "../c.mmk");
    CHECK(beside("/a/b.mmk", "../../../c.mmk") == "/c.mmk");
    CHECK(beside("a/b.mmk", "/x/c.mmk") == "/x/c.mmk");
    CHECK(beside("a/b.mmk", "..") == ".");
    CHECK(beside("/b.mmk", "c.mmk") == "/c.mmk");
}
