// First who asks, then what is asked for.
#include "serve/preview/preview.hpp"

#include "guide/prose.hpp"
#include "publish/page/script.hpp"
#include "publish/page/style.hpp"
#include "publish/page/text.hpp"
#include "publish/shown_picture.hpp"
#include "serve/preview/json.hpp"
#include "serve/preview/marking.hpp"
#include "serve/preview/script.hpp"
#include "serve/preview/style.hpp"
#include "source/embedded.hpp"
#include "source/markup.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace matchmark::serve {

namespace {

constexpr const char* html_type = "text/html; charset=utf-8";
constexpr const char* json_type = "application/json";
constexpr std::size_t most_undone = 100;

std::string value(const std::map<std::string, std::string>& all, const char* name) {
    const auto found = all.find(name);
    return found == all.end() ? std::string() : found->second;
}

Reply told(int status, const std::string& words) {
    return {status, "text/plain; charset=utf-8", words + "\n", {}};
}

Reply refused(const Refusal& refusal) {
    return {refusal.status, json_type, as_json("refused", refusal.reason), {}};
}

// The time that it takes does not depend on where two of one length differ.
bool same(std::string_view one, std::string_view other) {
    unsigned differ = one.size() == other.size() ? 0 : 1;
    for (std::size_t i = 0; i < one.size() && i < other.size(); ++i) {
        differ |= static_cast<unsigned char>(one[i]) ^ static_cast<unsigned char>(other[i]);
    }
    return differ == 0 && !one.empty();
}

// What a browser may do with any of our replies.
void guard(Reply& reply) {
    reply.headers.try_emplace(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' "
        "data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
    reply.headers["X-Content-Type-Options"] = "nosniff";
    reply.headers["Referrer-Policy"] = "no-referrer";
    reply.headers["Cross-Origin-Resource-Policy"] = "same-origin";
    reply.headers["Cross-Origin-Opener-Policy"] = "same-origin";
    reply.headers["Cache-Control"] = "no-store";
}

int hexadecimal_digit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    const char letter = static_cast<char>(c | 0x20);
    return letter >= 'a' && letter <= 'f' ? letter - 'a' + 10 : -1;
}

std::optional<std::string> without_percent(const std::string& sent) {
    std::string text;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        if (sent[i] != '%') {
            text += sent[i];
            continue;
        }
        const int high = i + 2 < sent.size() ? hexadecimal_digit(sent[i + 1]) : -1;
        const int low = i + 2 < sent.size() ? hexadecimal_digit(sent[i + 2]) : -1;
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        text += static_cast<char>(high * 16 + low);
        i += 2;
    }
    if (first_unreadable_byte(text) != std::string::npos) {
        return std::nullopt;
    }
    return text;
}

std::string rule_page(const std::string& name) {
    for (const EmbeddedText& page : rule_pages()) {
        if (page.name == name) {
            return plain_page(name, "<nav class=\"others\" aria-label=\"Other pages\"><ul><li><a "
                                    "href=\"/\">All guides</a></li></ul></nav>\n<main>\n<h1>" +
                                        markup_escaped(name) + "</h1>\n" +
                                        guide::prose_html(page.text) + "</main>\n");
        }
    }
    return {};
}

std::optional<Refusal> points_fault(const MarkOrder& order, const Content& content) {
    double across = 1;
    double down = 1;
    if (order.photo_line == 0) {
        const auto face =
            std::find_if(content.faces.begin(), content.faces.end(),
                         [&](const FacePlace& one) { return one.name == order.face; });
        if (face == content.faces.end()) {
            return Refusal{400, "there is no such face"};
        }
        across = face->width_mm;
        down = face->height_mm;
    } else if (std::none_of(content.photos.begin(), content.photos.end(),
                            [&](const PhotoPlace& photo) {
                                return photo.file == order.file && photo.line == order.photo_line;
                            })) {
        return Refusal{400, "there is no such photo on this page"};
    }
    const bool inside =
        std::all_of(order.points.begin(), order.points.end(), [&](const model::Point& point) {
            return point.x >= 0 && point.y >= 0 && point.x <= across && point.y <= down;
        });
    if (order.points.empty() || !inside) {
        return Refusal{400, "a mark stands inside its picture, and there is one at least"};
    }
    return std::nullopt;
}

} // namespace

std::optional<std::string> plain_path(const std::string& sent) {
    auto path = without_percent(sent);
    if (!path || path->empty() || path->find('\\') != std::string::npos) {
        return std::nullopt;
    }
    for (std::size_t at = 0; at <= path->size();) {
        const std::size_t end = std::min(path->find('/', at), path->size());
        const std::string part = path->substr(at, end - at);
        if (part.empty() || part.starts_with('.')) {
            return std::nullopt;
        }
        at = end + 1;
    }
    return path;
}

Preview::Preview(Disk& disk, const std::string& folder, unsigned port)
    : disk_(disk, folder), pages_(disk_) {
    for (const char* name : {"127.0.0.1", "localhost"}) {
        hosts_.push_back(fmt::format("{}:{}", name, port));
        if (port == 80) {
            hosts_.emplace_back(name);
        }
    }
}

// A page elsewhere can make a browser ask us, under a name of its own that leads here: its Host
// header gives it away. And it can make one send what it likes: its Origin does.
std::optional<Reply> Preview::refusal(const Request& request) const {
    const std::string host = value(request.headers, "host");
    if (std::find(hosts_.begin(), hosts_.end(), host) == hosts_.end()) {
        return told(403, "This preview answers to 127.0.0.1 and localhost alone.");
    }
    const bool writes = request.method == "POST";
    if (!writes && request.method != "GET" && request.method != "HEAD") {
        Reply reply = told(405, "Only GET, HEAD and POST are known here.");
        reply.headers["Allow"] = "GET, HEAD, POST";
        return reply;
    }
    const std::string origin = value(request.headers, "origin");
    if (origin != "http://" + host && (writes || !origin.empty())) {
        return told(403, "This page may not ask the preview.");
    }
    if (request.too_large) {
        return told(413, "That is more than the preview takes.");
    }
    if (writes && value(request.headers, "content-type") != json_type) {
        return told(415, "What is sent here is JSON.");
    }
    return std::nullopt;
}

bool Preview::waits(const Request& request) const {
    if (request.path != "/changes" || request.method != "GET" || refusal(request)) {
        return false;
    }
    const std::string since = value(request.query, "since");
    std::uint64_t number = 0;
    const auto read = std::from_chars(since.data(), since.data() + since.size(), number);
    return read.ec == std::errc{} && number == version_;
}

Reply Preview::answer(const Request& request) {
    Reply reply;
    if (auto refused_reply = refusal(request)) {
        reply = std::move(*refused_reply);
    } else if (request.method == "POST") {
        reply = post(request, request.path);
    } else {
        reply = get(request);
    }
    guard(reply);
    return reply;
}

Reply Preview::get(const Request& request) {
    Reply nothing = told(404, "There is nothing of that name in this folder.");
    if (request.path == "/") {
        return {200, html_type, plain_page("Guides - preview", pages_.list()), {}};
    }
    if (request.path == "/preview.css") {
        return {
            200, "text/css; charset=utf-8", std::string(publish::page_style) + preview_style, {}};
    }
    if (request.path == "/preview.js") {
        return {200,
                "text/javascript; charset=utf-8",
                std::string("function pageScript() {") + publish::page_script + "}\n" +
                    preview_live_script + preview_marking_script,
                {}};
    }
    if (request.path == "/changes") {
        return {200, json_type, as_json("version", std::to_string(version_)), {}};
    }
    const auto slash = request.path.find('/', 1);
    if (!request.path.starts_with('/') || slash == std::string::npos) {
        return nothing;
    }
    const std::string sort = request.path.substr(1, slash - 1);
    const auto path = plain_path(request.path.substr(slash + 1));
    if (path && sort == "picture") {
        return picture(*path);
    }
    if (path && sort == "rule") {
        const std::string made = rule_page(*path);
        return made.empty() ? nothing : Reply{200, html_type, made, {}};
    }
    if (path && (sort == "guide" || sort == "device")) {
        const auto guide = without_percent(value(request.query, "guide"));
        const std::string query = guide && !guide->empty() ? "?guide=" + *guide : "";
        return page(sort + "/" + *path + query, request);
    }
    return nothing;
}

Reply Preview::page(const std::string& name, const Request& request) {
    const Page* page = pages_.page(name);
    const bool is_there = page != nullptr && (page->content() != nullptr || page->shown.wrong ||
                                              name.find('?') == std::string::npos);
    if (!is_there) {
        return told(404, "There is nothing of that name in this folder.");
    }
    Reply reply{200, html_type, whole_page(name, *page, last_that_stands()), {}};
    const std::string print = "\"" + fingerprint(reply.body) + "\"";
    reply.headers["ETag"] = print;
    if (value(request.headers, "if-none-match") == print) {
        reply.status = 304;
        reply.body.clear();
    }
    return reply;
}

Reply Preview::picture(const std::string& path) {
    const auto read = disk_.read(path);
    const auto* bytes = std::get_if<std::string>(&read);
    publish::ShownPictures shown;
    if (bytes != nullptr) {
        shown = publish::shown_pictures(guide::Assets{{{path, *bytes}}});
    }
    if (shown.empty()) {
        return told(404, "There is no such picture in this folder.");
    }
    publish::ShownPicture& picture = shown.begin()->second;
    return {
        200,
        picture.type,
        std::move(picture.bytes),
        {{"Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox"}}};
}

Reply Preview::post(const Request& request, const std::string& path) {
    auto asked = read_asked(request.body);
    if (!asked) {
        return told(400, "That is no order.");
    }
    const Page* page = pages_.known(asked->page);
    if (page == nullptr || !same(asked->token, page->token)) {
        return told(403, "Only a page of this preview may write.");
    }
    if (path == "/undo") {
        return undo();
    }
    if (path != "/mark") {
        return told(404, "Nothing is written there.");
    }
    page = pages_.page(asked->page);
    const Content* content = page == nullptr || page->is_old() ? nullptr : page->content();
    return content == nullptr ? refused({409, "mend the errors of this page first"})
                              : mark(std::move(asked->order), *content);
}

Reply Preview::mark(MarkOrder order, const Content& content) {
    const auto item = std::find_if(content.items.begin(), content.items.end(),
                                   [&](const ItemChoice& one) { return one.name == order.item; });
    if (item == content.items.end()) {
        return refused({400, "there is no such item"});
    }
    order.most = item->count;
    if (order.photo_line == 0) {
        order.file = item->file;
    }
    if (const auto fault = points_fault(order, content)) {
        return refused(*fault);
    }
    auto made = write_marks(disk_, order);
    if (const auto* refusal = std::get_if<Refusal>(&made)) {
        return refused(*refusal);
    }
    written_.push_back(std::get<Written>(std::move(made)));
    if (written_.size() > most_undone) {
        written_.erase(written_.begin());
    }
    changed();
    return {200, json_type, as_json("written", written_.back().words), {}};
}

Reply Preview::undo() {
    if (written_.empty()) {
        return refused({409, "nothing was written that could be taken back"});
    }
    const auto result = take_back(disk_, written_.back());
    if (const auto* refusal = std::get_if<Refusal>(&result)) {
        return refused(*refusal);
    }
    const std::string words = written_.back().words;
    written_.pop_back();
    changed();
    return {200, json_type, as_json("taken-back", words), {}};
}

const Written* Preview::last_that_stands() {
    if (written_.empty()) {
        return nullptr;
    }
    const auto read = disk_.read(written_.back().path);
    const auto* text = std::get_if<std::string>(&read);
    return text != nullptr && *text == written_.back().after ? &written_.back() : nullptr;
}

} // namespace matchmark::serve
