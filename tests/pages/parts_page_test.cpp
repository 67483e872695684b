// docs/parts.md is what `matchmark kinds --markdown` writes of the library.
#include "pages/pages.hpp"
#include "support/accept.hpp"

#include "drive/catalogue.hpp"
#include "source/embedded.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace matchmark;
using namespace matchmark::test;

namespace {

std::string said_by(const drive::KindsOptions& options) {
    MapDisk disk;
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    CHECK(drive::kinds(options, terminal) == drive::exit_clean);
    CHECK(err.str().empty());
    return out.str();
}

std::string page_of_the_library() {
    drive::KindsOptions options;
    options.markdown = true;
    return said_by(options);
}

} // namespace

TEST_CASE("docs/parts.md is made from the library") {
    INFO("mend: build/matchmark kinds --markdown >docs/parts.md");
    expect_recorded("docs/parts.md", read_page("docs/parts.md"), page_of_the_library());
}

TEST_CASE("the page and the list hold every entry, twice in the same bytes") {
    const std::string page = page_of_the_library();
    CHECK(page == page_of_the_library());
    const std::string list = said_by({});
    const drive::Compilation library = compile_example("");
    const std::vector<drive::Entry> entries = drive::catalogue(library.model);
    REQUIRE(entries.size() > 100);
    for (const drive::Entry& entry : entries) {
        CAPTURE(entry.name);
        CHECK(page.find("| `" + entry.name + "` |") != std::string::npos);
        CHECK(list.find("\n  " + entry.name + " ") != std::string::npos);
    }
    for (const EmbeddedText& file : parts_library()) {
        const std::string_view head = file.text.substr(0, file.text.find("\nkind "));
        CAPTURE(file.name);
        CHECK(head.starts_with("# ")); // what the page says of its sources
    }
}
