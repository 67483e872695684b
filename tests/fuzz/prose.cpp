// An author's Markdown never becomes a tag, an attribute or an address that the page has not
// allowed, and what the forms make of it is a tree.
#include "fuzz/fuzz.hpp"

#include "guide/prose.hpp"
#include "publish/markup_tree.hpp"
#include "publish/page/text.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

using namespace matchmark;

namespace {

constexpr std::array<std::string_view, 23> allowed = {
    "p",  "ul", "ol", "li",    "blockquote", "pre",   "code", "em", "strong", "a",   "br", "hr",
    "h4", "h5", "h6", "table", "thead",      "tbody", "tr",   "th", "td",     "del", "h3"};

std::string_view name_of(std::string_view tag) {
    if (tag.starts_with('/'))
        tag.remove_prefix(1);
    return tag.substr(0, tag.find_first_of(" />\n"));
}

void demand_harmless(std::string_view tag) {
    const std::string_view name = name_of(tag);
    fuzz::demand(std::find(allowed.begin(), allowed.end(), name) != allowed.end(),
                 "only prose's own tags stand in the page");
    const std::size_t address = tag.find("href=\"");
    if (name != "a" || address == std::string_view::npos)
        return;
    std::string scheme(tag.substr(address + 6, 11));
    std::transform(scheme.begin(), scheme.end(), scheme.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    fuzz::demand(!scheme.starts_with("javascript:") && !scheme.starts_with("vbscript:") &&
                     !scheme.starts_with("file:"),
                 "a link that could run something leads nowhere");
}

// Tags are well nested, and each is one that prose may have.
void demand_closed(std::string_view html) {
    std::vector<std::string_view> open;
    for (std::size_t at = html.find('<'); at != std::string_view::npos; at = html.find('<', at)) {
        const std::size_t end = html.find('>', at);
        fuzz::demand(end != std::string_view::npos, "every tag ends");
        const std::string_view tag = html.substr(at + 1, end - at - 1);
        at = end;
        if (tag.starts_with("!--"))
            continue; // cmark's own, between two lists
        demand_harmless(tag);
        if (tag.starts_with('/')) {
            fuzz::demand(!open.empty() && open.back() == name_of(tag), "tags are nested");
            open.pop_back();
        } else if (!tag.ends_with('/')) {
            open.push_back(name_of(tag));
        }
    }
    fuzz::demand(open.empty(), "every tag is closed");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view markdown = fuzz::text_of(data, size);
    const std::string html = guide::prose_html(markdown);
    demand_closed(html);
    demand_closed(publish::without_controls(html));
    publish::plain_text(publish::prose_tree(markdown));
    return 0;
}
