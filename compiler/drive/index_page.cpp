// A plain list of guides, by device.
#include "drive/index_page.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark::drive {

namespace {

std::string escaped(const std::string& text) {
    std::string result;
    for (const char c : text) {
        switch (c) {
        case '&':
            result += "&amp;";
            break;
        case '<':
            result += "&lt;";
            break;
        case '>':
            result += "&gt;";
            break;
        case '"':
            result += "&quot;";
            break;
        default:
            result += c;
        }
    }
    return result;
}

// A file's path as a reference: bytes outside the unreserved set of RFC 3986 are written %XX.
std::string as_reference(const std::string& file) {
    static constexpr char digits[] = "0123456789ABCDEF";
    std::string result;
    for (const char c : file) {
        const auto byte = static_cast<unsigned char>(c);
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                           (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '_' || c == '~' ||
                           c == '/';
        if (plain) {
            result += c;
        } else {
            result += '%';
            result += digits[byte >> 4U];
            result += digits[byte & 15U];
        }
    }
    return result;
}

constexpr const char* head = R"(<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Guides</title>
<style>
:root { color-scheme: light dark; }
body { font: 1.1rem/1.5 system-ui, sans-serif; margin: 0 auto; padding: 1rem; max-width: 45rem; }
li { margin: 0.4rem 0; }
.time { opacity: 0.8; }
@media print { a { color: inherit; } }
</style>
</head>
<body>
<main>
<h1>Guides</h1>
)";

} // namespace

std::string index_page(std::vector<IndexEntry> entries) {
    std::sort(entries.begin(), entries.end(), [](const IndexEntry& a, const IndexEntry& b) {
        return std::tie(a.device, a.title, a.file) < std::tie(b.device, b.title, b.file);
    });
    std::string page = head;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const IndexEntry& entry = entries[i];
        const bool first = i == 0 || entries[i - 1].device != entry.device;
        if (first) {
            page += i == 0 ? "" : "</ul>\n";
            page += "<h2>" + escaped(entry.device) + "</h2>\n<ul>\n";
        }
        page += "<li><a href=\"" + as_reference(entry.file) + "\">" + escaped(entry.title) + "</a>";
        page +=
            entry.time.empty() ? "" : " <span class=\"time\">" + escaped(entry.time) + "</span>";
        page += "</li>\n";
    }
    page += entries.empty() ? "" : "</ul>\n";
    return page + "</main>\n</body>\n</html>\n";
}

} // namespace matchmark::drive
