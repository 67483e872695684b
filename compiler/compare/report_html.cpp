// The difference as one page for screen and print: no script, nothing from outside.
#include "compare/report.hpp"

#include "source/markup.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

namespace {

// Black on white, the smallest type 16 px; was and is are told apart by words, not by colour alone,
// and no line is drawn through a number that somebody may have to read.
constexpr const char* style = R"css(
*{box-sizing:border-box}
body{margin:0;color:#000;background:#fff;overflow-wrap:anywhere;
font:1.0625rem/1.5 "Liberation Sans","Noto Sans",Arial,system-ui,sans-serif}
main{max-width:52rem;margin:0 auto;padding:1.5rem 1rem 4rem}
h1{font-size:1.7rem;line-height:1.2;margin:0 0 .3rem}
h2{font-size:1.35rem;line-height:1.25;margin:2.2rem 0 .2rem}
h3{font-size:1.1rem;margin:1.6rem 0 .5rem;padding:.3rem .7rem;background:#000;color:#fff;
print-color-adjust:exact;-webkit-print-color-adjust:exact;break-after:avoid}
h3.quiet{background:#fff;color:#000;border:2px solid #000}
p{margin:0 0 .5rem}
code,.files{font-family:"Liberation Mono",monospace;font-size:1rem}
ol,ul{margin:0;padding:0;list-style:none}
.change{border-bottom:1px solid #6b6b6b;padding:.7rem 0 .6rem;break-inside:avoid}
.head{font-weight:700;margin:0}
.mark{display:inline-block;border:2px solid #000;padding:0 .4rem;margin-right:.5rem;
font-weight:700;line-height:1.35}
.what{margin:.1rem 0}
dl{display:grid;grid-template-columns:4rem 1fr;gap:.1rem .7rem;margin:.35rem 0}
dt{color:#3a3a3a}
dd{margin:0}
del,ins{text-decoration:none;padding:0 .2rem;print-color-adjust:exact;
-webkit-print-color-adjust:exact}
del{background:#f3dcd6}
ins{background:#d9ecd9;font-weight:700}
.with{padding-left:1rem;border-left:3px solid #6b6b6b;margin:.3rem 0}
.same{border:2px solid #000;padding:.6rem .8rem;font-weight:700;margin:.6rem 0}
@media print{main{max-width:none;padding:0}body{font-size:10.5pt}@page{margin:16mm}}
)css";

// Names as the source has them stand between backticks: on the page, in type of their own.
std::string with_code(const std::string& words) {
    const std::string text = markup_escaped(words);
    std::string html;
    std::size_t at = 0;
    for (;;) {
        const auto open = text.find('`', at);
        const auto close = open == std::string::npos ? open : text.find('`', open + 1);
        if (close == std::string::npos)
            return html + text.substr(at);
        html += text.substr(at, open - at) + "<code>" + text.substr(open + 1, close - open - 1) +
                "</code>";
        at = close + 1;
    }
}

std::string place_words(const StepPlace& place) {
    std::string words = place.in_old ? "old step" : "step";
    words += place.number == 0 ? "" : fmt::format(" {}", place.number);
    return place.title.empty() ? words : fmt::format("{}, {}", words, place.title);
}

void append_row(std::string& html, const char* term, const std::string& inner) {
    html += fmt::format("<dt>{}</dt><dd>{}</dd>\n", term, inner);
}

void append_html_change(std::string& html, const Change& change) {
    html += "<li class=\"change\">\n<p class=\"head\">";
    html += change.safety ? "<span class=\"mark\">Safety</span>" : "";
    if (says_heading(change)) {
        html +=
            with_code(std::string(heading_of(change.sort).substr(0, 1)) + change.what.substr(1)) +
            "</p>\n";
    } else {
        html += fmt::format("{}</p>\n<p class=\"what\">{}</p>\n", heading_of(change.sort),
                            with_code(change.what));
    }
    html += "<dl>\n";
    if (!change.before.empty() || !change.after.empty()) {
        const Excerpt cut = excerpt(change.before, change.after);
        append_row(html, "was",
                   cut.before.empty() ? "nothing" : "<del>" + with_code(cut.before) + "</del>");
        append_row(html, "is",
                   cut.after.empty() ? "nothing" : "<ins>" + with_code(cut.after) + "</ins>");
    }
    if (!change.steps.empty()) {
        std::string places;
        for (const StepPlace& place : change.steps) {
            places += places.empty() ? "" : "<br>";
            places += with_code(place_words(place));
        }
        append_row(html, "where", places);
    }
    if (!change.why.empty()) {
        append_row(html, "why", with_code(change.why));
    }
    html += "</dl>\n";
    if (!change.with_it.empty()) {
        html += "<ul class=\"with\">\n";
        for (const std::string& line : change.with_it) {
            html += "<li>with it: " + with_code(line) + "</li>\n";
        }
        html += "</ul>\n";
    }
    html += "</li>\n";
}

void append_html_group(std::string& html, const char* title, bool quiet,
                       const std::vector<Change>& changes, const auto& belongs) {
    if (std::none_of(changes.begin(), changes.end(), belongs)) {
        return;
    }
    html += fmt::format("<h3{}>{}</h3>\n<ol>\n", quiet ? " class=\"quiet\"" : "", title);
    for (const Change& change : changes) {
        if (belongs(change)) {
            append_html_change(html, change);
        }
    }
    html += "</ol>\n";
}

void append_difference(std::string& html, const Difference& difference) {
    html += fmt::format("<section>\n<h2>{}</h2>\n",
                        with_code(difference.title.empty() ? difference.name : difference.title));
    html += fmt::format("<p{}>{}</p>\n", difference.changes.empty() ? " class=\"same\"" : "",
                        tally(difference));
    append_html_group(html, "Safety", false, difference.changes,
                      [](const Change& change) { return change.safety; });
    append_html_group(html, "Other changes", false, difference.changes,
                      [](const Change& change) { return !change.safety && change.matters; });
    append_html_group(html, "Order alone, where either order works", true, difference.changes,
                      [](const Change& change) { return !change.safety && !change.matters; });
    append_html_group(html, "In the source, beside the procedure", true, difference.notes,
                      [](const Change&) { return true; });
    html += "</section>\n";
}

} // namespace

std::string to_html(const Report& report) {
    std::string html = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                       "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                       "style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'\">\n"
                       "<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n";
    html += fmt::format("<title>What changed: {}</title>\n<style>{}</style>\n</head>\n<body>\n",
                        markup_escaped(report.after), style);
    html += "<main>\n<h1>What changed in the procedure</h1>\n";
    html += fmt::format("<p class=\"files\">{} → {}</p>\n", markup_escaped(report.before),
                        markup_escaped(report.after));
    for (const std::string& remark : report.remarks) {
        html += fmt::format("<p>Note: {}</p>\n", with_code(remark));
    }
    for (const Difference& difference : report.differences) {
        append_difference(html, difference);
    }
    html += "</main>\n</body>\n</html>\n";
    return html;
}

} // namespace matchmark::compare
