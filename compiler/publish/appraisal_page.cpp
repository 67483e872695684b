// The appraisal as a page: the index first, where there is one, then every part, then what most
// parts wait for.
#include "publish/appraisal_page.hpp"

#include "guide/prose.hpp"
#include "model/describe.hpp"
#include "publish/page/parts.hpp"
#include "publish/page/style.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <fmt/core.h>

namespace matchmark::publish {

using guide::Appraisal;
using guide::PartAppraisal;
using guide::WayFound;

namespace {

constexpr const char* appraisal_style = R"css(
.sheet{max-width:62rem}
table{margin-bottom:1.25rem}
th,td,tbody th{font-size:1rem;line-height:1.35}
td ul{margin:0;padding-left:1.1rem}
th.number-cell,.number-cell{text-align:right;white-space:nowrap;padding-right:1.2rem;
font-variant-numeric:tabular-nums}
.chart{background:#fff;border:1px solid var(--line);padding:.5rem;overflow-x:auto}
.chart svg{display:block;width:100%;min-width:34rem;height:auto}
.result{border:2px solid var(--ink);padding:.7rem .9rem;margin:0 0 1.25rem}
.result p:last-child{margin:0}
.wide{overflow-x:auto}
@media print{th,td,tbody th{font-size:9.5pt;padding-right:.4rem}
.chart{border:0;padding:0}.chart svg{min-width:0}.wide{overflow:visible}}
)css";

bool is_out(const PartAppraisal& part) {
    return part.way == WayFound::least || part.way == WayFound::bounded;
}

std::string heading(const char* id, const std::string& words) {
    return fmt::format("<section aria-labelledby=\"{0}\">\n<h2 id=\"{0}\">{1}</h2>\n", id,
                       markup_escaped(words));
}

struct Column {
    const char* name;
    bool numbers = false;
};

std::string row_head(const std::vector<Column>& columns) {
    std::string text = "<thead><tr>";
    for (const Column& column : columns) {
        text += std::string("<th scope=\"col\"") +
                (column.numbers ? " class=\"number-cell\">" : ">") + markup_escaped(column.name) +
                "</th>";
    }
    return text + "</tr></thead>\n";
}

std::string cell(const std::string& words) { return "<td>" + markup_escaped(words) + "</td>"; }

std::string number(const std::string& words) {
    return "<td class=\"number-cell\">" + markup_escaped(words) + "</td>";
}

std::string list_of(const std::vector<std::string>& lines) {
    if (lines.empty())
        return {};
    std::string text = "<ul>\n";
    for (const std::string& line : lines)
        text += "<li>" + markup_escaped(line) + "</li>\n";
    return text + "</ul>\n";
}

std::string table(const std::string& caption, const std::vector<Column>& columns,
                  const std::string& rows) {
    return "<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"" +
           markup_escaped(caption) + "\">\n<table>\n<caption>" + markup_escaped(caption) +
           "</caption>\n" + row_head(columns) + "<tbody>\n" + rows + "</tbody>\n</table>\n</div>\n";
}

// --- the index ---

std::string class_words(const guide::RepairIndex& index) {
    if (index.lowest_class == index.highest_class)
        return fmt::format("class {}", index.lowest_class);
    return fmt::format("class {} to {}", index.lowest_class, index.highest_class);
}

std::string value_words(const guide::RepairIndex& index) {
    const std::string low = guide::ten_thousandths(index.lowest);
    return index.lowest == index.highest ? low
                                         : low + " to " + guide::ten_thousandths(index.highest);
}

std::string scores_table(const guide::RepairIndex& index) {
    std::string rows;
    for (const guide::IndexScore& score : index.scores) {
        rows += "<tr><th scope=\"row\">" + markup_escaped(score.name + ", " + score.symbol) +
                "</th>" + number(guide::range_words(score.score)) +
                number(guide::hundredths(score.weight)) + cell(score.because) + "</tr>\n";
    }
    return table("The six scores, each from 1 to 5",
                 {{"Score"}, {"Value", true}, {"Weight", true}, {"From"}}, rows);
}

std::string parts_table(const guide::RepairIndex& index) {
    std::string rows;
    const auto scored = [](const guide::ScoreRange& score, const std::string& because) {
        return cell(guide::range_words(score) + ": " + because);
    };
    for (const guide::PartScore& part : index.parts) {
        const std::string items =
            part.items.empty() || part.items == part.part ? "" : " (" + part.items + ")";
        rows += "<tr><th scope=\"row\">" + markup_escaped(part.part + items) + "</th>" +
                number(guide::hundredths(part.weight)) + scored(part.depth, part.depth_because) +
                scored(part.fasteners, part.fasteners_because) +
                scored(part.tools, part.tools_because) + "</tr>\n";
    }
    return table("What the priority parts give",
                 {{"Priority part"}, {"Weight", true}, {"Depth"}, {"Fasteners"}, {"Tools"}}, rows);
}

std::string index_section(const guide::RepairIndex& index) {
    std::string text = heading("index", "Repairability index");
    text += "<div class=\"result\">\n<p><strong>R = " + markup_escaped(value_words(index)) + ", " +
            markup_escaped(class_words(index)) + "</strong></p>\n<p>" +
            markup_escaped(guide::index_disclaimer()) + "</p>\n</div>\n<p>" +
            markup_escaped(index.source + (index.folding ? ", with a folding display" : "") +
                           ": R is the sum of the six scores, each times its weight. " +
                           guide::index_tolerance()) +
            "</p>\n";
    if (!index.undeclared.empty())
        text += "<p>The device does not say, and so the index is a range:</p>\n" +
                list_of(index.undeclared);
    return text + scores_table(index) + parts_table(index) + "<p>How it was counted:</p>\n" +
           list_of(index.notes) + "</section>\n";
}

// --- the parts ---

std::string tool_words(const PartAppraisal& part) {
    std::string words;
    for (const guide::ToolNeeded& tool : part.tools)
        words += (words.empty() ? "" : "; ") + tool.words +
                 (tool.sort.empty() ? "" : " (" + tool.sort + ")");
    return words.empty() ? "by hand" : words;
}

// A number stays with its unit.
std::string kept_time(double seconds) {
    std::string words;
    for (const char c : guide::time_words(seconds))
        words += c == ' ' ? std::string("\u00A0") : std::string(1, c);
    return words;
}

std::string waited(double seconds, double waiting) {
    return kept_time(seconds) + (waiting > 0 ? " + " + kept_time(waiting) + " waiting" : "");
}

std::string undone_words(const PartAppraisal& part) {
    std::string words;
    for (const auto* list : {&part.fasteners, &part.plugs, &part.bonds}) {
        const std::string some = guide::counted_words(*list);
        words += (words.empty() || some.empty() ? "" : "; ") + some;
    }
    return words.empty() ? "nothing" : words;
}

std::string parts_section(const Appraisal& appraisal) {
    std::string rows;
    std::vector<std::string> stuck;
    std::vector<std::string> bounded;
    for (const PartAppraisal& part : appraisal.parts) {
        if (!is_out(part)) {
            std::string why = part.way == WayFound::unknown
                                  ? "no way was found in the time given, and none was ruled out"
                                  : "there is no way";
            for (const std::string& line : part.why_not)
                why += "; " + line;
            stuck.push_back(part.title + ": " + why);
            continue;
        }
        rows += "<tr><th scope=\"row\">" + markup_escaped(part.title) + "</th>" +
                number(fmt::format("{}", part.steps.size())) +
                number(fmt::format("{}", part.acts)) +
                cell(waited(part.seconds_apart, part.waiting_apart)) +
                cell(waited(part.seconds_back, part.waiting_back)) + cell(undone_words(part)) +
                cell(tool_words(part)) +
                cell(part.renewed.empty() ? "nothing" : model::list(part.renewed)) + "</tr>\n";
        if (part.way == WayFound::bounded)
            bounded.push_back(part.title + ": no way takes less than " +
                              guide::time_words(part.at_least_seconds));
    }
    std::string text = heading("parts", "Every part");
    text += "<p>Steps are those of Commission Decision (EU) 2016/1371: a step ends when a part is "
            "off, or when another tool is taken. Times are usual times of handling; to put back "
            "means all that came off.</p>\n";
    if (!rows.empty())
        text += table("Parts, the shallowest first",
                      {{"Part"},
                       {"Steps", true},
                       {"Acts", true},
                       {"Apart"},
                       {"Back"},
                       {"Undone"},
                       {"Tools"},
                       {"Renewed"}},
                      rows);
    text += bounded.empty() ? std::string("<p>Every way is proved to take the least time.</p>\n")
                            : "<p>Not proved to take the least time:</p>\n" + list_of(bounded);
    if (!stuck.empty())
        text += "<p>Cannot be brought out:</p>\n" + list_of(stuck);
    return text + "</section>\n";
}

std::string steps_section(const Appraisal& appraisal) {
    std::string text = heading("steps", "The steps one by one");
    for (const PartAppraisal& part : appraisal.parts) {
        if (!is_out(part) || part.steps.empty())
            continue;
        text += "<h3>" + markup_escaped(part.title) + "</h3>\n<ol>\n";
        for (const guide::CountedStep& step : part.steps)
            text += "<li>" + markup_escaped(model::list(step.acts, "and") + ": " + step.ends_with) +
                    "</li>\n";
        text += "</ol>\n";
    }
    return text + "</section>\n";
}

std::string waited_section(const Appraisal& appraisal) {
    if (appraisal.waited_for.empty())
        return {};
    std::string rows;
    for (const guide::WaitedFor& item : appraisal.waited_for)
        rows += "<tr><th scope=\"row\">" + markup_escaped(item.title) + "</th>" +
                number(fmt::format("{}", item.parts.size())) +
                number(fmt::format("{}", item.always.size())) + "</tr>\n";
    return heading("waited-for", "What most parts wait for") +
           table("For how many parts each item has to be moved",
                 {{"Item"}, {"Least way moves it", true}, {"No way does without", true}}, rows) +
           "</section>\n";
}

std::string charts_section(const std::vector<guide::Figure>& charts) {
    std::string text = heading("charts", "Charts");
    for (const guide::Figure& chart : charts) {
        text += "<section class=\"drawn\">\n<h3 id=\"" + markup_escaped(chart.anchor) + "\">" +
                markup_escaped(chart.title) +
                "</h3>\n<div class=\"chart\" role=\"group\" tabindex=\"0\" aria-labelledby=\"" +
                markup_escaped(chart.anchor) + "\">\n" + chart.svg +
                "</div>\n<details><summary>In words</summary>\n" +
                guide::prose_html(chart.alternative_text) + "</details>\n</section>\n";
    }
    return text + "</section>\n";
}

// Names of items stand between backticks.
std::string with_names(const std::string& words) {
    std::string text;
    bool inside = false;
    for (const char c : words) {
        if (c == '`') {
            text += inside ? "</code>" : "<code>";
            inside = !inside;
        } else {
            text += markup_escaped(std::string(1, c));
        }
    }
    return text + (inside ? "</code>" : "");
}

std::string changes_section(const Appraisal& appraisal) {
    if (appraisal.changes.empty())
        return {};
    std::string rows;
    for (const guide::DesignChange& change : appraisal.changes)
        rows += "<tr><th scope=\"row\">" + with_names(change.words) + "</th>" +
                cell(guide::gain_words(change)) + "</tr>\n";
    return heading("changes", "What one change would help most") +
           table("Single changes of the design, the most helpful first",
                 {{"If it were so"}, {"Gain"}}, rows) +
           "</section>\n";
}

} // namespace

std::string appraisal_page(const Appraisal& appraisal, const std::vector<guide::Figure>& charts) {
    const std::string title = "How easy it is to repair: " + appraisal.title;
    std::string body =
        "<div class=\"sheet\">\n<header class=\"block\">\n<h1>" + markup_escaped(title) + "</h1>\n";
    if (!appraisal.variant.empty())
        body += "<dl>\n<div><dt>Variant</dt><dd>" + markup_escaped(appraisal.variant) +
                "</dd></div>\n</dl>\n";
    body += "</header>\n<main>\n";
    if (appraisal.index)
        body += index_section(*appraisal.index);
    body += parts_section(appraisal) + waited_section(appraisal);
    body += charts.empty() ? std::string() : charts_section(charts);
    body += changes_section(appraisal) + steps_section(appraisal);
    body += "</main>\n<footer>\n<p>Counted from the device's file. The maker's instructions and "
            "local rules come first.</p>\n</footer>\n</div>\n";
    return page_head(markup_escaped(title), std::string(page_style) + appraisal_style, "") +
           "<body>\n" + without_controls(body) + "</body>\n</html>\n";
}

} // namespace matchmark::publish
