// The page of every rule: its first example raises that rule alone and prints the message shown,
// its second is clean.
#include "pages/markdown.hpp"
#include "pages/pages.hpp"
#include "support/accept.hpp"

#include "check/rule.hpp"
#include "drive/compilation.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace matchmark;
using namespace matchmark::test;

namespace {

// The block of this sort that comes first, from `from` on.
const Block* next_block(const std::vector<Block>& blocks, std::size_t& from,
                        std::string_view info) {
    while (from < blocks.size()) {
        const Block& block = blocks[from++];
        if (block.info == info)
            return &block;
    }
    return nullptr;
}

void check_example(const std::string& rule, const std::string& text) {
    const drive::Compilation done = compile_example(text);
    CHECK_FALSE(done.findings.empty());
    for (const Diagnostic& finding : done.findings) {
        CHECK(finding.rule == rule);
    }
}

std::string underscored(std::string name) {
    for (char& c : name)
        c = c == '-' ? '_' : c;
    return name;
}

void check_page(const std::string& rule) {
    CAPTURE(rule);
    const std::string path = "compiler/check/rules/" + underscored(rule) + ".md";
    const std::string page = read_page(path);
    CHECK(page.starts_with("# " + rule + "\n"));
    const std::vector<Block> blocks = blocks_of(page);
    std::size_t at = 0;
    const Block* broken = next_block(blocks, at, "mmk fails");
    const Block* message = next_block(blocks, at, "text");
    const Block* mended = next_block(blocks, at, "mmk");
    REQUIRE(broken != nullptr);
    REQUIRE(message != nullptr);
    REQUIRE(mended != nullptr);
    check_example(rule, broken->text);
    expect_recorded(path, page, with_block(page, *message, printed(broken->text)));
    const std::string clean = printed(mended->text);
    const bool quiet = clean == "1 guide, 1 device: nothing to report\n" ||
                       clean == "1 device: nothing to report\n";
    CHECK_MESSAGE(quiet, clean);
}

} // namespace

TEST_CASE("the page of a rule shows what the rule finds, and how it is mended") {
    REQUIRE(check::all_rules().size() > 20);
    for (const check::Rule* rule : check::all_rules()) {
        check_page(rule->name);
    }
}

TEST_CASE("explain prints the page") {
    for (const check::Rule* rule : check::all_rules()) {
        MapDisk disk;
        std::istringstream in;
        std::ostringstream out;
        std::ostringstream err;
        drive::Terminal terminal{disk, in, out, err};
        CHECK(drive::explain({rule->name, false}, terminal) == drive::exit_clean);
        CHECK(out.str() == read_page("compiler/check/rules/" + underscored(rule->name) + ".md"));
    }
}
