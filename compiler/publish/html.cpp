// The guide as one page of HTML: to read on a screen at the bench, or to print.
#include "publish/html.hpp"

#include "language/punctuation.hpp"
#include "publish/digest.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/drawing.hpp"
#include "publish/page/needs.hpp"
#include "publish/page/parts.hpp"
#include "publish/page/safety.hpp"
#include "publish/page/script.hpp"
#include "publish/page/style.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

using guide::Document;

namespace {

// Where the links to other guides are put in; an author's text cannot hold it, since every `<` of
// theirs is escaped.
constexpr std::string_view place_of_links = "<!-- other guides -->\n";

ShownPictures inside_the_page(const guide::Assets& assets) {
    ShownPictures pictures = shown_pictures(assets);
    for (auto& [path, picture] : pictures) {
        picture.source = "data:" + picture.type + ";base64," + base64(picture.bytes);
        picture.bytes.clear();
    }
    return pictures;
}

// The ticks of a page are kept under this name: another revision, or another text, begins anew.
std::string store_name(const Document& document, std::string_view body) {
    return document.name + ":" + document.revision + ":" + hexadecimal(sha256(body), 8);
}

} // namespace

std::string html(const Document& document, const guide::Assets& assets) {
    const std::string device =
        document.device.empty() ? "" : language::colon(document.language) + document.device;
    const std::string title = markup_escaped(document.title + device);
    const ShownPictures pictures = inside_the_page(assets);
    const auto source = [&](std::size_t i) {
        return "data:image/svg+xml;base64," + base64(document.figures[i].svg);
    };
    const Language& in = document.language;
    std::string body = "<div class=\"sheet\">\n<a class=\"skip\" href=\"#work\">" +
                       markup_escaped(say(in, "To the steps")) + "</a>\n";
    body += place_of_links;
    body += page_body({document, pictures}, drawings(document, source));
    body += "<footer>\n<p>" + title;
    for (const Fact& fact : facts(document)) {
        if (fact.term == say(in, "Guide revision") || fact.term == say(in, "Source version") ||
            fact.term == say(in, "Date")) {
            body += " · " + markup_escaped(fact.term + " " + fact.words);
        }
    }
    body += "</p>\n</footer>\n</div>\n";
    body = without_controls(body);
    const std::string script = script_in(in, page_script);
    const std::string page = page_head(title, page_style, script, in) + "<body data-guide=\"" +
                             without_controls(markup_escaped(store_name(document, body))) +
                             "\">\n" + body + "<script>" + script + "</script>\n</body>\n</html>\n";
    return language::is_english(in) ? page : with_languages_marked(page);
}

std::string with_links(std::string page, const std::string& list,
                       const std::vector<PageLink>& others, const Language& in) {
    const auto at = page.find(place_of_links);
    if (at == std::string::npos) {
        return page;
    }
    std::string links = "<nav class=\"others\" aria-label=\"" +
                        markup_escaped(say(in, "Other guides")) + "\">\n<ul>\n<li><a href=\"" +
                        markup_escaped(list) + "\">" + markup_escaped(say(in, "All guides")) +
                        "</a></li>\n";
    for (const PageLink& other : others) {
        links += "<li><a href=\"" + markup_escaped(other.address) + "\">" +
                 markup_escaped(other.title) + "</a></li>\n";
    }
    page.replace(at, place_of_links.size(), without_controls(links + "</ul>\n</nav>\n"));
    return page;
}

} // namespace matchmark::publish
