// docs/rules.md lists the rules as `matchmark explain` does.
#include "pages/pages.hpp"
#include "support/accept.hpp"

#include "check/rule.hpp"
#include "diagnostics/severity.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace matchmark;
using namespace matchmark::test;

namespace {

const std::string table_head = "| rule | severity | group | finds |\n| --- | --- | --- | --- |\n";

std::string table_of_rules() {
    std::string table = table_head;
    for (const check::Rule* rule : check::all_rules()) {
        std::string file = rule->name;
        for (char& c : file)
            c = c == '-' ? '_' : c;
        table += "| [`" + std::string(rule->name) + "`](../compiler/check/rules/" + file +
                 ".md) | " + std::string(severity_word(rule->severity)) + " | " +
                 std::string(rule->group) + " | " + std::string(rule->summary) + " |\n";
    }
    return table;
}

} // namespace

TEST_CASE("docs/rules.md holds the table of the rules") {
    const std::string page = read_page("docs/rules.md");
    const std::size_t begin = page.find(table_head);
    REQUIRE(begin != std::string::npos);
    std::size_t end = page.find("\n\n", begin);
    end = end == std::string::npos ? page.size() : end + 1;
    const std::string table = table_of_rules();
    CHECK(table.size() > table_head.size());
    expect_recorded("docs/rules.md", page, page.substr(0, begin) + table + page.substr(end));
}

TEST_CASE("explain lists every rule that docs/rules.md lists, in the same order") {
    MapDisk disk;
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    REQUIRE(drive::explain({"", false}, terminal) == drive::exit_clean);
    const std::string said = out.str();
    const std::string page = read_page("docs/rules.md");
    std::size_t listed = 0;
    std::size_t shown = page.find(table_head);
    for (const check::Rule* rule : check::all_rules()) {
        const std::string name = rule->name;
        const std::size_t found = said.find("\n" + name + " ", listed);
        const std::size_t at = listed == 0 && said.starts_with(name + " ") ? 0 : found;
        CHECK_MESSAGE(at != std::string::npos, name, " is not listed by explain in its place");
        listed = at == std::string::npos ? listed : at;
        shown = page.find("| [`" + name + "`]", shown);
        REQUIRE_MESSAGE(shown != std::string::npos, name, " is not in docs/rules.md in its place");
    }
}
