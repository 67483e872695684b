// The forms that want a whole device, as samples have them.
#include "draw/drawings.hpp"
#include "drive/compilation.hpp"
#include "plan/reader/guide.hpp"
#include "publish/json.hpp"
#include "publish/sheet.hpp"
#include "support/accept.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>

using namespace matchmark;

namespace {

void expect(const std::string& file, const std::string& now) {
    const std::string path = "tests/forms/recorded/" + file;
    std::ifstream in(std::string(MATCHMARK_SOURCE_DIR) + "/" + path, std::ios::binary);
    const std::string recorded{std::istreambuf_iterator<char>(in), {}};
    test::expect_recorded(path, recorded, now);
}

drive::Compilation sample(const std::string& name) {
    const auto disk = real_disk();
    auto done = drive::compile(*disk, "samples/" + name); // tests run in the project's folder
    REQUIRE(done.procedures.size() == 1);
    return done;
}

// The words of a drawing, one a line, without where they stand: fonts lay those out.
std::string words_of(const std::string& svg) {
    std::string words;
    for (std::size_t at = svg.find("<text"); at != std::string::npos; at = svg.find("<text", at)) {
        const std::size_t begin = svg.find('>', at) + 1;
        const std::size_t end = svg.find("</text>", begin);
        std::string text = svg.substr(begin, end - begin);
        while (text.find('<') != std::string::npos) {
            const std::size_t tag = text.find('<');
            text.erase(tag, text.find('>', tag) - tag + 1);
        }
        words += text + "\n";
        at = end;
    }
    return words;
}

} // namespace

TEST_CASE("the bench sheet of a sample") {
    const auto done = sample("lamp/replace-switch.mmk");
    const auto document = plan::reader_guide(done.sources, done.model, done.procedures.front());
    expect("lamp.sheet.html", publish::sheet_html(document));
}

TEST_CASE("the model of a sample as JSON") {
    const auto done = sample("lamp/replace-switch.mmk");
    expect("lamp.json", publish::json(done.sources, done.model, done.procedures.front(), 0));
}

TEST_CASE("the words of a sample's fastener map") {
    const auto done = sample("logger/replace-cell.mmk");
    const auto map =
        draw::map_files(done.model, done.procedures.front(), draw::Paper::a4, "2026-01-31");
    std::string words;
    for (const std::string& sheet : map.svg)
        words += words_of(sheet);
    REQUIRE(!words.empty());
    expect("logger.map.txt", words);
}
