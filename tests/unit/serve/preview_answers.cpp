// Who is answered, and what a path may be, without any network.
#include "serve/preview/preview.hpp"

#include "serve/preview/json.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace fs = std::filesystem;

using matchmark::serve::FolderDisk;
using matchmark::serve::plain_path;
using matchmark::serve::Preview;
using matchmark::serve::Reply;
using matchmark::serve::Request;

namespace {

class Folder {
public:
    Folder() {
        std::string pattern = (fs::temp_directory_path() / "matchmark-XXXXXX").string();
        REQUIRE(::mkdtemp(pattern.data()) != nullptr);
        path_ = pattern;
        fs::create_directory(path_ + "/in");
        put("in/lamp.mmk",
            "device lamp \"Bench lamp\"\n\nface top 90 x 50 mm\n\npart lid \"lid\"\n");
        put("out.mmk", "device out \"Hidden away\"\n");
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    void put(const std::string& name, const std::string& text) const {
        std::ofstream(path_ + "/" + name, std::ios::binary) << text;
    }
    [[nodiscard]] std::string at(const std::string& name) const { return path_ + "/" + name; }

private:
    std::string path_;
};

Request request(const std::string& path, const std::string& host = "127.0.0.1:8137") {
    Request made;
    made.method = "GET";
    made.path = path;
    made.headers["host"] = host;
    return made;
}

} // namespace

TEST_CASE("a path leads below the folder, or is none") {
    CHECK(plain_path("lamp/lamp.mmk") == "lamp/lamp.mmk");
    CHECK(plain_path("a%20b.mmk") == "a b.mmk");
    CHECK(plain_path("%E8%93%8B.mmk") == "\u84CB.mmk");
    for (const char* bad : {"", "..", "../x", "a/../b", "a/..", "%2e%2e/x", "a%2f%2e%2e/x", "/etc",
                            "a//b", ".git/x", "a/.x", "a%00b", "%zz", "%2", "%", "a\\b", "%ff"}) {
        CAPTURE(bad);
        CHECK_FALSE(plain_path(bad));
    }
}

TEST_CASE("the folder's disk ends at the folder, whatever a link says") {
    const Folder folder;
    fs::create_symlink(folder.at("out.mmk"), folder.at("in/link.mmk"));
    fs::create_symlink(folder.at("in/lamp.mmk"), folder.at("in/inner.mmk"));
    const auto below = matchmark::real_disk();
    FolderDisk disk(*below, folder.at("in"));
    CHECK(std::holds_alternative<std::string>(disk.read("lamp.mmk")));
    CHECK(std::holds_alternative<std::string>(disk.read("inner.mmk")));
    for (const std::string& outside :
         {std::string("../out.mmk"), std::string("link.mmk"), folder.at("out.mmk"),
          std::string("none.mmk"), std::string("lamp.mmk/../../out.mmk")}) {
        CAPTURE(outside);
        CHECK(std::holds_alternative<matchmark::DiskProblem>(disk.read(outside)));
        CHECK(std::holds_alternative<matchmark::DiskProblem>(disk.write(outside, "x")));
        CHECK_FALSE(disk.exists(outside));
    }
    CHECK_FALSE(disk.is_folder(".."));
}

TEST_CASE("who does not name this machine is refused") {
    const Folder folder;
    const auto below = matchmark::real_disk();
    Preview preview(*below, folder.at("in"), 8137);
    CHECK(preview.answer(request("/")).status == 200);
    CHECK(preview.answer(request("/", "localhost:8137")).status == 200);
    for (const char* host : {"", "example.org", "example.org:8137", "127.0.0.1", "127.0.0.1:80"}) {
        CAPTURE(host);
        const Reply reply = preview.answer(request("/device/lamp.mmk", host));
        CHECK(reply.status == 403);
        CHECK(reply.body.find("Bench") == std::string::npos);
    }
}

TEST_CASE("a page is made anew when its file has changed, and not otherwise") {
    const Folder folder;
    const auto below = matchmark::real_disk();
    Preview preview(*below, folder.at("in"), 8137);
    Reply reply = preview.answer(request("/device/lamp.mmk"));
    REQUIRE(reply.status == 200);
    CHECK(reply.body.find("Bench lamp") != std::string::npos);
    Request again = request("/device/lamp.mmk");
    again.headers["if-none-match"] = reply.headers["ETag"];
    CHECK(preview.answer(again).status == 304);
    folder.put("in/lamp.mmk", "device lamp \"Reading lamp\"\n");
    reply = preview.answer(again);
    CHECK(reply.status == 200);
    CHECK(reply.body.find("Reading lamp") != std::string::npos);
}

TEST_CASE("a page with an error keeps its last good state, and tells the error") {
    const Folder folder;
    const auto below = matchmark::real_disk();
    Preview preview(*below, folder.at("in"), 8137);
    CHECK(preview.answer(request("/device/lamp.mmk")).status == 200);
    folder.put("in/lamp.mmk", "device lamp \"Bench lamp\"\n\npart lid \"lid\"\n  covrs x\n");
    const Reply reply = preview.answer(request("/device/lamp.mmk"));
    CHECK(reply.status == 200);
    CHECK(reply.body.find("Face top") != std::string::npos);
    CHECK(reply.body.find("1 error") != std::string::npos);
    CHECK(reply.body.find("as it was before these errors") != std::string::npos);
}

TEST_CASE("who waits is let go by a change alone") {
    const Folder folder;
    const auto below = matchmark::real_disk();
    Preview preview(*below, folder.at("in"), 8137);
    Request waiting = request("/changes");
    waiting.query["since"] = std::to_string(preview.version());
    CHECK(preview.waits(waiting));
    preview.changed();
    CHECK_FALSE(preview.waits(waiting));
    waiting.headers["host"] = "example.org";
    waiting.query["since"] = std::to_string(preview.version());
    CHECK_FALSE(preview.waits(waiting));
}

TEST_CASE("an order is read whole or not at all") {
    using matchmark::serve::read_asked;
    const auto good = read_asked(R"({"page":"guide/a.mmk","token":"t","file":"a.mmk","line":3,)"
                                 R"("item":"lid","points":[[0.5,1]],"instead":true})");
    REQUIRE(good);
    CHECK(good->order.photo_line == 3);
    CHECK(good->order.points.size() == 1);
    CHECK(good->order.instead);
    for (const char* bad : {"", "[]", "{", "7", R"({"line":-1})", R"({"line":"3"})",
                            R"({"points":[[1]]})", R"({"points":[["a",1]]})", R"({"points":7})"}) {
        CAPTURE(bad);
        CHECK_FALSE(read_asked(bad));
    }
}
