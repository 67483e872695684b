// Keeps what was made, and looks at the stamps of the files before it is shown again.
#include "serve/preview/pages.hpp"

#include "parse/parse.hpp"
#include "publish/digest.hpp"
#include "publish/page/text.hpp"
#include "serve/preview/json.hpp"
#include "source/markup.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <array>
#include <string_view>

#include <sys/random.h>

namespace matchmark::serve {

namespace {

constexpr std::size_t most_kept = 300; // pages

// A file changed this short a time before it was read could change again with the same stamp.
constexpr std::chrono::milliseconds coarse{50};

std::chrono::system_clock::time_point time_of(const Stamp& stamp) {
    return std::chrono::system_clock::time_point(
        std::chrono::duration_cast<std::chrono::system_clock::duration>(
            std::chrono::seconds(stamp.seconds) + std::chrono::nanoseconds(stamp.nanoseconds)));
}

struct Address {
    std::string path;
    std::string guide;
    bool is_device = false;
};

Address read_address(const std::string& name) {
    Address address;
    address.is_device = name.starts_with("device/");
    const auto slash = name.find('/');
    const auto mark = name.find("?guide=");
    address.path = name.substr(slash + 1, mark == std::string::npos ? mark : mark - slash - 1);
    address.guide = mark == std::string::npos ? "" : name.substr(mark + 7);
    return address;
}

std::string head(const std::string& title) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta "
           "name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta "
           "name=\"referrer\" content=\"no-referrer\">\n<title>" +
           publish::without_controls(markup_escaped(title)) +
           "</title>\n<link rel=\"icon\" href=\"data:,\">\n<link rel=\"stylesheet\" "
           "href=\"/preview.css\">\n"
           "<script src=\"/preview.js\" defer></script>\n</head>\n";
}

std::string last_written(const Written* last) {
    if (last == nullptr) {
        return {};
    }
    return fmt::format("<div class=\"taken-back\" role=\"region\" aria-label=\"Last written\">"
                       "<span>Written: <code>{}</code></span> <button type=\"button\" "
                       "class=\"undo\">Undo</button></div>\n",
                       markup_escaped(last->words));
}

std::string body_of(const std::string& name, const Page& page) {
    const Content* content = page.content();
    if (content != nullptr) {
        const std::string& guide = page.is_old() ? page.last_guide : page.shown.guide;
        return with_findings(content->body, page.shown.findings, content->steps, guide,
                             page.is_old());
    }
    const std::string nav = "<nav class=\"others\" aria-label=\"Other pages\">\n<ul>\n<li><a "
                            "href=\"/\">All guides</a></li>\n</ul>\n</nav>\n";
    const std::string title = "<header class=\"block\">\n<h1>" +
                              markup_escaped(read_address(name).path) + "</h1>\n</header>\n";
    const std::string rest = page.shown.findings.empty()
                                 ? "<p>Nothing that could be shown is declared there.</p>\n"
                                 : with_findings("", page.shown.findings, {}, "", false);
    return nav + "<main>\n" + title + rest + "</main>\n";
}

} // namespace

const Content* Page::content() const {
    if (is_old()) {
        return &*last_good;
    }
    return shown.content ? &*shown.content : nullptr;
}

bool Page::is_old() const { return shown.wrong && last_good.has_value(); }

bool Pages::holds(const Page& page) const {
    for (const auto& [path, stamp] : page.rests_on) {
        if (disk_.stamp(path) != stamp || (stamp.exists && page.made - time_of(stamp) < coarse)) {
            return false;
        }
    }
    return true;
}

const Page* Pages::page(const std::string& name) {
    const Address address = read_address(name);
    if (!address.path.ends_with(".mmk") || !disk_.stamp(address.path).exists) {
        return nullptr;
    }
    const auto known = pages_.find(name);
    if (known != pages_.end() && holds(known->second)) {
        return &known->second;
    }
    if (known == pages_.end() && pages_.size() >= most_kept) {
        pages_.clear();
    }
    Page& page = pages_[name];
    if (page.token.empty()) {
        page.token = new_token();
    }
    if (!page.shown.wrong && page.shown.content) {
        page.last_good = std::move(page.shown.content);
        page.last_guide = page.shown.guide;
    }
    disk_.begin_noting();
    page.made = std::chrono::system_clock::now();
    page.shown = show(disk_, address.path, address.guide);
    page.rests_on = disk_.noted();
    if (!page.shown.wrong) {
        page.last_good.reset();
    }
    return &page;
}

const Page* Pages::known(const std::string& name) const {
    const auto found = pages_.find(name);
    return found == pages_.end() ? nullptr : &found->second;
}

// What a file declares, by its first column alone: nothing is resolved, so a long list is quick.
std::string Pages::entries(const std::string& path) {
    const auto read = disk_.read(path);
    const auto* text = std::get_if<std::string>(&read);
    if (text == nullptr || first_unreadable_byte(*text) != std::string::npos) {
        return fmt::format("<li><a href=\"/guide/{}\">{}</a>, which cannot be read</li>\n",
                           address_escaped(path), markup_escaped(path));
    }
    SourceMap sources;
    const FileId id = sources.add(path, *text);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, id, findings);
    const char* wrong = findings.empty() ? "" : ", with errors";
    std::string html;
    bool first = true;
    for (const syntax::Line& line : file.lines) {
        const bool is_guide = line.keyword == syntax::Keyword::guide;
        if (line.depth != 0 || (!is_guide && line.keyword != syntax::Keyword::device)) {
            continue;
        }
        syntax::Reader reader{sources, file, line};
        const std::string name(reader.next_text());
        reader.skip();
        const auto title = reader.take_text();
        const std::string query = is_guide && !first ? "?guide=" + address_escaped(name) : "";
        html += fmt::format("<li><a href=\"/{}/{}{}\">{}</a>{}, <code>{}</code>{}</li>\n",
                            is_guide ? "guide" : "device", address_escaped(path), query,
                            markup_escaped(title && !title->empty() ? *title : name),
                            is_guide ? "" : " (device)", markup_escaped(path), wrong);
        first = first && !is_guide;
    }
    if (html.empty() && !findings.empty()) {
        html = fmt::format("<li><a href=\"/guide/{}\">{}</a>{}</li>\n", address_escaped(path),
                           markup_escaped(path), wrong);
    }
    return html;
}

std::string Pages::list() {
    const auto found = disk_.list(".", ".mmk");
    const auto* paths = std::get_if<std::vector<std::string>>(&found);
    std::string text;
    std::string folder = "."; // whose list is open; no folder has this name
    std::map<std::string, Listed> listed;
    for (const std::string& path : paths == nullptr ? std::vector<std::string>{} : *paths) {
        const bool hidden = path.starts_with('.') || path.find("/.") != std::string::npos;
        if (hidden || !disk_.real_path(path)) {
            continue; // not served, or a link that leads outside
        }
        const Stamp stamp = disk_.stamp(path);
        const auto known = listed_.find(path);
        const bool holds = known != listed_.end() && known->second.stamp == stamp;
        Listed& one = listed[path];
        one = {stamp, holds ? known->second.html : entries(path)};
        const std::string here = path.substr(0, path.rfind('/') + 1);
        if (!one.html.empty() && here != folder) {
            text += folder == "." ? "" : "</ul>\n</section>\n";
            text += fmt::format("<section class=\"guides\" aria-label=\"{0}\">\n<h2>{0}</h2>\n"
                                "<ul>\n",
                                here.empty() ? "This folder"
                                             : markup_escaped(here.substr(0, here.size() - 1)));
            folder = here;
        }
        text += one.html;
    }
    listed_ = std::move(listed);
    const std::string title = "<header class=\"block\">\n<h1>Guides in this folder</h1>\n"
                              "</header>\n";
    return title + "<main>\n" +
           (text.empty() ? "<p>No file in this folder ends in <code>.mmk</code>.</p>\n"
                         : text + "</ul>\n</section>\n") +
           "</main>\n";
}

std::string whole_page(const std::string& name, const Page& page, const Written* last) {
    const Content* content = page.content();
    const std::string title = content == nullptr ? read_address(name).path : content->title;
    return head(title + " - preview") + "<body data-guide=\"preview:" + markup_escaped(name) +
           "\">\n<div class=\"sheet\">\n" + publish::without_controls(last_written(last)) +
           publish::without_controls(body_of(name, page)) +
           "<p class=\"told-by-preview\" role=\"status\"></p>\n</div>\n<script "
           "type=\"application/json\" id=\"preview-data\">" +
           page_data(name, page.token, page.is_old() ? nullptr : content) +
           "</script>\n</body>\n</html>\n";
}

std::string plain_page(const std::string& title, const std::string& body) {
    return head(title) + "<body>\n<div class=\"sheet\">\n" + publish::without_controls(body) +
           "</div>\n</body>\n</html>\n";
}

std::string new_token() {
    std::array<char, 16> bytes{};
    if (::getrandom(bytes.data(), bytes.size(), 0) != static_cast<ssize_t>(bytes.size())) {
        return {};
    }
    return publish::hexadecimal(std::string_view(bytes.data(), bytes.size()), bytes.size());
}

} // namespace matchmark::serve
