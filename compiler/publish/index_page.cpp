// The page that leads to the other pages, when a folder of guides is published.
#include "publish/index_page.hpp"

#include "publish/fixed_words.hpp"
#include "publish/page/parts.hpp"
#include "publish/page/style.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark::publish {

namespace {

constexpr const char* search_script = R"js(
(function () {
"use strict";
function plain(text) { return text.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/g, ""); }
var list = document.getElementById("list"), place = document.createElement("div");
var label = document.createElement("label"), field = document.createElement("input");
var told = document.createElement("p"), found = [];
document.documentElement.className = "js";
Array.prototype.forEach.call(list.querySelectorAll("li"), function (line) {
  var section = line.parentNode.parentNode;
  found.push({ line: line, section: section, words: plain(section.firstElementChild.textContent +
    " " + line.textContent + " " + line.getAttribute("data-words")) });
});
function search() {
  var words = plain(field.value).split(/\s+/), count = 0;
  found.forEach(function (one) { one.section.hidden = true; });
  found.forEach(function (one) {
    var fits = words.every(function (word) { return one.words.indexOf(word) >= 0; });
    one.line.hidden = !fits;
    if (fits) { one.section.hidden = false; count += 1; }
  });
  told.textContent = count === 1 ? "1 guide" : count + " guides";
}
place.className = "search";
label.textContent = "Search";
label.htmlFor = "search";
field.id = "search";
field.type = "search";
field.autocomplete = "off";
told.setAttribute("role", "status");
field.addEventListener("input", search);
place.appendChild(label);
place.appendChild(field);
place.appendChild(told);
list.parentNode.insertBefore(place, list);
search();
}());
)js";

constexpr const char* list_style = R"css(
#list h2{margin:1.75rem 0 .5rem}
.guides{list-style:none;padding:0}
.guides li{display:flex;flex-wrap:wrap;gap:0 1rem;justify-content:space-between;padding:.4rem 0;
border-bottom:1px solid var(--line)}
.guides li[hidden]{display:none}
.search{display:flex;flex-wrap:wrap;gap:.4rem .8rem;align-items:center}
.search p{margin:0}
.search input{font:inherit;color:inherit;background:var(--paper);border:2px solid var(--ink);
padding:.3rem .5rem;flex:1 1 12rem;min-width:0}
@media print{.search{display:none}}
)css";

std::vector<std::string> folders_of(const std::string& path) {
    std::vector<std::string> folders;
    for (std::size_t at = 0;;) {
        const std::size_t slash = path.find('/', at);
        if (slash == std::string::npos) {
            return folders;
        }
        folders.push_back(path.substr(at, slash - at));
        at = slash + 1;
    }
}

} // namespace

std::string reference(const std::string& from, const std::string& to) {
    const std::vector<std::string> here = folders_of(from);
    const std::vector<std::string> there = folders_of(to);
    std::size_t same = 0;
    while (same < here.size() && same < there.size() && here[same] == there[same]) {
        ++same;
    }
    std::string path;
    for (std::size_t i = same; i < here.size(); ++i) {
        path += "../";
    }
    for (std::size_t i = same; i < there.size(); ++i) {
        path += there[i] + "/";
    }
    path += to.substr(to.rfind('/') == std::string::npos ? 0 : to.rfind('/') + 1);
    return address_escaped(path);
}

std::string search_words(const guide::Document& document) {
    std::string words;
    for (const auto* list : {&document.tools, &document.spares, &document.supplies}) {
        for (const guide::Provision& one : *list) {
            words += one.words + " ";
        }
    }
    for (const guide::FastenerRow& row : document.fasteners) {
        words += row.words + " ";
    }
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps) {
            words += step.title + " ";
        }
    }
    return words;
}

std::string index_page(std::vector<IndexEntry> entries, const Language& in) {
    std::sort(entries.begin(), entries.end(), [](const IndexEntry& a, const IndexEntry& b) {
        return std::tie(a.device, a.title, a.file) < std::tie(b.device, b.title, b.file);
    });
    std::string list;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const IndexEntry& entry = entries[i];
        if (i == 0 || entries[i - 1].device != entry.device) {
            list += i == 0 ? "" : "</ul>\n</section>\n";
            list +=
                "<section>\n<h2>" + markup_escaped(entry.device) + "</h2>\n<ul class=\"guides\">\n";
        }
        list += "<li data-words=\"" + markup_escaped(entry.words) + "\"><a href=\"" +
                markup_escaped(reference("", entry.file)) + "\">" + markup_escaped(entry.title) +
                "</a>";
        list += entry.time.empty() ? "" : " <span>" + markup_escaped(entry.time) + "</span>";
        list += "</li>\n";
    }
    list += entries.empty() ? "" : "</ul>\n</section>\n";
    const std::string title = markup_escaped(say(in, "Guides"));
    const std::string script = script_in(in, search_script);
    return page_head(title, std::string(page_style) + list_style, script, in) +
           "<body>\n<div class=\"sheet\">\n<main>\n<h1>" + title + "</h1>\n<div id=\"list\">\n" +
           without_controls(list) + "</div>\n</main>\n</div>\n<script>" + script +
           "</script>\n</body>\n</html>\n";
}

} // namespace matchmark::publish
