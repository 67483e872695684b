// The guide as an EPUB 3.3 book of one chapter, for tablets and readers.
#include "publish/epub.hpp"

#include "language/punctuation.hpp"
#include "publish/archive.hpp"
#include "publish/digest.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/drawing.hpp"
#include "publish/page/parts.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

using guide::Document;

namespace {

constexpr const char* style = R"css(
body{margin:0 .5em;line-height:1.45}
h2{border-bottom:3px solid;margin-top:2em}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;vertical-align:top;padding:.3em .5em .3em 0;border-bottom:1px solid}
.amount{text-align:right}
.block,.signal{border:2px solid;padding:.4em .7em;margin:0 0 1em}
.danger,.warning{border-width:4px}
.notice{border-style:dashed}
.word{font-weight:bold;letter-spacing:.08em;margin:0 0 .4em}
.word svg{width:1.4em;height:1.3em;vertical-align:-.2em;margin-right:.4em}
.sign{width:3em;height:3em}
.step,.signal,figure,table{page-break-inside:avoid;break-inside:avoid}
.do,.key,.details{list-style:none;padding:0}
.do .line{border-left:1.1em solid transparent;position:relative}
.do .line::before{content:"\2610  ";margin-left:-1.1em}
.details{margin-left:1.4em}
.blank{display:inline-block;width:9em;border-bottom:2px solid}
.value{font-weight:bold;white-space:nowrap}
.number{border:2px solid;border-radius:1em;padding:0 .4em;font-weight:bold}
.note{border-left:4px solid;padding-left:.7em}
.ordinal{display:none}
.variant{border:1px solid;padding:0 .3em}
figure{margin:1em 0}
.picture{position:relative;background:#fff;line-height:0}
.picture img,.drawing img{width:100%;height:auto}
.point{position:absolute;width:0;height:0}
.point i{position:absolute;left:0;top:-1px;height:2px;background:#000;transform-origin:0 50%}
.point b{position:absolute;width:22px;height:22px;margin:-13px 0 0 -13px;border:2px solid #000;
border-radius:50%;background:#fff;color:#000;text-align:center;font-size:14px;line-height:22px}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden}
)css";

constexpr const char* container =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<container version=\"1.0\" "
    "xmlns=\"urn:oasis:names:tc:opendocument:xmlns:container\">\n<rootfiles><rootfile "
    "full-path=\"guide.opf\" media-type=\"application/oebps-package+xml\"/></rootfiles>\n"
    "</container>\n";

// Takes out, at each place where `before` stands, all from there up to and with the next `after`,
// when `wanted` says so of what lies between.
template <class Wanted>
std::string without(std::string_view text, std::string_view before, char after, Wanted wanted) {
    std::string result;
    for (;;) {
        const auto at = text.find(before);
        const auto end = at == std::string_view::npos ? at : text.find(after, at + before.size());
        if (end == std::string_view::npos) {
            return result + std::string(text);
        }
        const bool drop = wanted(text.substr(at + before.size(), end - at - before.size()));
        result += text.substr(0, drop ? at : end + 1);
        text.remove_prefix(end + 1);
    }
}

// What a book may not hold: links to files that are not in it, attributes that EPUB has no more,
// data for a script. Author's text cannot look like them, since its `<` and `"` are escaped.
std::string for_a_book(std::string_view page) {
    std::string text = without(page, " href=\"", '"', [](std::string_view address) {
        return !address.starts_with("https://") && !address.starts_with("http://") &&
               !address.starts_with("mailto:") && !address.starts_with("#step-") &&
               !address.starts_with("#section-") && address != "#safety" && address != "#needs" &&
               address != "#afterwards" && address != "#drawings";
    });
    const auto always = [](std::string_view) { return true; };
    text = without(text, " align=\"", '"', always);
    text = without(text, " tabindex=\"", '"', always);
    return without(text, " data-seconds=\"", '"', always);
}

std::string xhtml(const Language& in, const std::string& title, const std::string& body) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n<html "
           "xmlns=\"http://www.w3.org/1999/xhtml\" xmlns:epub=\"http://www.idpf.org/2007/ops\" "
           "lang=\"" +
           in.tag + "\" xml:lang=\"" + in.tag + "\">\n<head>\n<meta charset=\"UTF-8\"/>\n<title>" +
           title + "</title>\n<link rel=\"stylesheet\" href=\"guide.css\"/>\n</head>\n<body>\n" +
           body + "</body>\n</html>\n";
}

std::string contents(const Document& document, const std::string& title) {
    std::string list = "<li><a href=\"guide.xhtml\">" + title + "</a></li>\n";
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        if (!document.sections[i].steps.empty()) {
            list += "<li><a href=\"guide.xhtml#section-" + std::to_string(i + 1) + "\">" +
                    markup_escaped(document.sections[i].title) + "</a></li>\n";
        }
    }
    const std::string heading = markup_escaped(say(document.language, "Contents"));
    return xhtml(document.language, heading,
                 "<nav epub:type=\"toc\" id=\"toc\">\n<h1>" + heading + "</h1>\n<ol>\n" + list +
                     "</ol>\n</nav>\n");
}

bool is_date(std::string_view text) {
    constexpr std::string_view shape = "0000-00-00";
    bool same = text.size() >= shape.size();
    for (std::size_t i = 0; same && i < shape.size(); ++i) {
        same = shape[i] == '-' ? text[i] == '-' : text[i] >= '0' && text[i] <= '9';
    }
    return same;
}

std::string date_of(const std::string& created) {
    if (!is_date(created)) {
        return "1970-01-01T00:00:00Z";
    }
    return created.size() == 20 ? created : created.substr(0, 10) + "T00:00:00Z";
}

// A UUID of version 8 (RFC 9562, 5.8) made from what the book holds.
std::string book_identifier(std::string_view bytes) {
    std::string text = hexadecimal(sha256(bytes), 16);
    text[12] = '8';
    text[16] = 'a';
    for (const std::size_t at : {20U, 16U, 12U, 8U}) {
        text.insert(at, 1, '-');
    }
    return "urn:uuid:" + text;
}

std::string manifest_line(std::size_t number, const Packed& file, const std::string& type) {
    return "<item id=\"picture-" + std::to_string(number) + "\" href=\"" +
           markup_escaped(file.name) + "\" media-type=\"" + type + "\"/>\n";
}

struct Book {
    std::vector<Packed> pictures;
    std::string manifest; // their lines
};

// Puts each picture into the book under a number, and says so in its `source`.
void add_pictures(Book& book, ShownPictures& pictures) {
    for (auto& [path, picture] : pictures) {
        const std::size_t number = book.pictures.size() + 1;
        picture.source = "pictures/" + std::to_string(number) + picture_ending(picture.type);
        book.pictures.push_back({picture.source, picture.bytes, false});
        book.manifest += manifest_line(number, book.pictures.back(), picture.type);
    }
}

void add_drawings(Book& book, const Document& document) {
    for (std::size_t i = 0; i < document.figures.size(); ++i) {
        book.pictures.push_back(
            {"drawings/" + std::to_string(i + 1) + ".svg", document.figures[i].svg, false});
        book.manifest += manifest_line(book.pictures.size(), book.pictures.back(), "image/svg+xml");
    }
}

std::string package(const Document& document, const std::string& title, const Book& book,
                    const std::string& page, const std::string& created) {
    const std::string author =
        document.author.empty()
            ? ""
            : "<dc:creator>" + markup_escaped(document.author) + "</dc:creator>\n";
    const std::string drawn = page.find("<svg") == std::string::npos ? "" : " properties=\"svg\"";
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<package "
           "xmlns=\"http://www.idpf.org/2007/opf\" version=\"3.0\" unique-identifier=\"id\" "
           "xml:lang=\"" +
           document.language.tag +
           "\">\n<metadata xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
           "<dc:identifier id=\"id\">" +
           book_identifier(page) + "</dc:identifier>\n<dc:title>" + title +
           "</dc:title>\n<dc:language>" + document.language.tag + "</dc:language>\n" + author +
           "<meta property=\"dcterms:modified\">" + date_of(created) +
           "</meta>\n</metadata>\n<manifest>\n<item id=\"contents\" href=\"contents.xhtml\" "
           "media-type=\"application/xhtml+xml\" properties=\"nav\"/>\n<item id=\"guide\" "
           "href=\"guide.xhtml\" media-type=\"application/xhtml+xml\"" +
           drawn + "/>\n<item id=\"style\" href=\"guide.css\" media-type=\"text/css\"/>\n" +
           book.manifest +
           "</manifest>\n<spine>\n<itemref idref=\"guide\"/>\n</spine>\n</package>\n";
}

} // namespace

std::string epub(const Document& document, const guide::Assets& assets,
                 const std::string& created) {
    const std::string device =
        document.device.empty() ? "" : language::colon(document.language) + document.device;
    const std::string title =
        without_language_marks(without_controls(markup_escaped(document.title + device)));
    Book book;
    ShownPictures pictures = shown_pictures(assets);
    add_pictures(book, pictures);
    add_drawings(book, document);
    const auto source = [](std::size_t i) { return "drawings/" + std::to_string(i + 1) + ".svg"; };
    const std::string body =
        for_a_book(without_controls(page_body({document, pictures}, drawings(document, source))));
    std::string page = xhtml(document.language, title, body);
    if (!language::is_english(document.language)) {
        page = with_languages_marked(page);
    }
    std::vector<Packed> files = {
        {"mimetype", "application/epub+zip", true},
        {"META-INF/container.xml", container, false},
        {"guide.opf", package(document, title, book, page, created), false},
        {"contents.xhtml", with_languages_marked(without_controls(contents(document, title))),
         false},
        {"guide.xhtml", page, false},
        {"guide.css", style, false}};
    files.insert(files.end(), book.pictures.begin(), book.pictures.end());
    return archive(files);
}

} // namespace matchmark::publish
