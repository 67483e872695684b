// A finding stands where its author looks for the mend: under the heading of the step it is in.
#include "serve/preview/findings.hpp"

#include "diagnostics/edit_preview.hpp"
#include "diagnostics/severity.hpp"
#include "model/spelling.hpp"
#include "source/embedded.hpp"
#include "source/markup.hpp"
#include "syntax/reader.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::serve {

using syntax::Keyword;

namespace {

std::optional<model::Section> section_of(Keyword keyword) {
    switch (keyword) {
    case Keyword::before_section:
        return model::Section::before;
    case Keyword::take_apart:
        return model::Section::take_apart;
    case Keyword::work:
        return model::Section::work;
    case Keyword::put_back:
        return model::Section::put_back;
    default:
        return std::nullopt;
    }
}

// Names between backticks stand out; `text` is plain.
std::string with_names(const std::string& text) {
    std::string html;
    bool inside = false;
    for (const char c : markup_escaped(text)) {
        if (c == '`') {
            html += inside ? "</code>" : "<code>";
            inside = !inside;
        } else {
            html += c;
        }
    }
    return html + (inside ? "</code>" : "");
}

std::string where(const SourceMap& sources, Span span) {
    if (span.file >= sources.size()) {
        return {};
    }
    const Place place = sources.place(span.file, span.begin);
    return fmt::format("{}, line {}, column {}", sources.file(span.file).path, place.line,
                       place.column);
}

std::string source_line(const SourceMap& sources, Span span) {
    if (span.file >= sources.size()) {
        return {};
    }
    const auto number = sources.place(span.file, span.begin).line;
    const std::string line(sources.line(span.file, number).substr(0, 400));
    const auto start = line.find_first_not_of(" \t");
    return start == std::string::npos
               ? ""
               : fmt::format("<pre>{}</pre>\n", markup_escaped(line.substr(start)));
}

std::string edits(const SourceMap& sources, const Diagnostic& finding) {
    std::string lines;
    for (const EditPreview& run : preview_edits(sources, finding.edits)) {
        for (const std::string& line : run.removed) {
            lines += "- " + line + "\n";
        }
        for (const std::string& line : run.added) {
            lines += "+ " + line + "\n";
        }
    }
    return lines.empty() ? "" : "<pre class=\"mend\">" + markup_escaped(lines) + "</pre>\n";
}

std::string in_full(const SourceMap& sources, const Diagnostic& finding) {
    const std::string word(severity_word(finding.severity));
    std::string html = fmt::format("<p><strong class=\"finding-word\">{}</strong> {}</p>\n",
                                   markup_escaped(model::capitalised(word)),
                                   with_names(model::capitalised(finding.message)));
    html += source_line(sources, finding.primary);
    html +=
        finding.why.empty() ? "" : "<p>" + with_names(model::capitalised(finding.why)) + ".</p>\n";
    if (!finding.help.empty()) {
        html += "<p><strong>Mend:</strong> " + with_names(finding.help) + "</p>\n";
    }
    html += edits(sources, finding);
    std::string foot = markup_escaped(where(sources, finding.primary));
    if (!finding.variants.empty()) {
        std::string names;
        for (const std::string& variant : finding.variants) {
            names += (names.empty() ? "" : ", ") + variant;
        }
        foot += "; only " + markup_escaped(names);
    }
    const auto pages = rule_pages();
    const bool explained = std::any_of(pages.begin(), pages.end(), [&](const EmbeddedText& page) {
        return page.name == finding.rule;
    });
    foot += explained ? fmt::format("; <a href=\"/rule/{0}\">{0}</a>", markup_escaped(finding.rule))
                      : "; " + markup_escaped(finding.rule);
    return html + "<p class=\"finding-foot\">" + foot + "</p>\n";
}

std::string tally(const std::vector<FindingOnPage>& findings) {
    std::string text;
    for (const Severity severity : {Severity::error, Severity::warning, Severity::advice}) {
        const auto count = std::count_if(findings.begin(), findings.end(),
                                         [&](const auto& one) { return one.severity == severity; });
        if (count == 0) {
            continue;
        }
        text += text.empty() ? "" : ", ";
        if (severity == Severity::advice) {
            text += count == 1 ? "1 piece of advice" : fmt::format("{} pieces of advice", count);
        } else {
            text += fmt::format("{} {}{}", count, severity_word(severity), count == 1 ? "" : "s");
        }
    }
    return text;
}

std::string entry(const FindingOnPage& finding, std::size_t number) {
    return fmt::format("<div class=\"finding {}\" id=\"finding-{}\">\n{}</div>\n",
                       severity_word(finding.severity), number, finding.html);
}

// Puts the text under the heading of the step; false when the page has no such step.
bool put_beside(std::string& body, const std::string& anchor, const std::string& text) {
    const std::string start = "<section class=\"step\" aria-labelledby=\"" + anchor + "\"";
    const auto step = body.find(start);
    const std::string close = "</header>\n";
    const auto heading = step == std::string::npos ? step : body.find(close, step);
    if (heading == std::string::npos) {
        return false;
    }
    body.insert(heading + close.size(), text);
    return true;
}

const StepPlace* place_of(const FindingOnPage& finding, const std::vector<StepPlace>& steps,
                          const std::string& guide) {
    if (!finding.step || finding.step->guide != guide) {
        return nullptr;
    }
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const StepPlace& place) {
        return place.section == finding.step->section && place.name == finding.step->name;
    });
    return found == steps.end() ? nullptr : &*found;
}

} // namespace

std::optional<SourceStep> step_at(const SourceMap& sources, const syntax::Files& files, Span span) {
    const auto found = std::find_if(files.begin(), files.end(),
                                    [&](const auto& one) { return one->id == span.file; });
    if (found == files.end() || !span.known()) {
        return std::nullopt;
    }
    const syntax::FilePointer& file = *found;
    const std::size_t number = sources.place(span.file, span.begin).line;
    std::optional<SourceStep> step;
    SourceStep around;
    for (std::size_t i = 0; i < number && i < file->lines.size(); ++i) {
        const syntax::Line& line = file->lines[i];
        if (line.depth != 0 || line.keyword == Keyword::none) {
            continue;
        }
        step.reset();
        const syntax::Reader reader{sources, *file, line};
        if (line.keyword == Keyword::guide) {
            around.guide = reader.next_text();
        } else if (const auto section = section_of(line.keyword)) {
            around.section = *section;
        } else if (line.keyword == Keyword::step || line.keyword == Keyword::test) {
            step = around;
            step->name = reader.next_text();
        }
    }
    return step;
}

std::vector<FindingOnPage> shown_findings(const drive::Compilation& done) {
    std::vector<FindingOnPage> shown;
    for (const Diagnostic& finding : done.findings) {
        shown.push_back({finding.severity, with_names(model::capitalised(finding.message)),
                         in_full(done.sources, finding),
                         step_at(done.sources, done.files, finding.primary)});
    }
    std::stable_sort(shown.begin(), shown.end(), [](const auto& left, const auto& right) {
        return left.severity < right.severity;
    });
    return shown;
}

std::string with_findings(std::string body, const std::vector<FindingOnPage>& findings,
                          const std::vector<StepPlace>& steps, const std::string& guide,
                          bool is_old) {
    if (findings.empty()) {
        return body;
    }
    std::string top;
    for (std::size_t i = findings.size(); i-- > 0;) { // the first of a step ends up on top there
        const FindingOnPage& finding = findings[i];
        const std::string text = entry(finding, i + 1);
        const StepPlace* place = place_of(finding, steps, guide);
        if (place != nullptr && put_beside(body, place->anchor, text)) {
            top.insert(0,
                       fmt::format("<li><a href=\"#finding-{}\">{}: {}</a></li>\n", i + 1,
                                   model::capitalised(std::string(severity_word(finding.severity))),
                                   finding.brief));
        } else {
            top.insert(0, "<li>" + text + "</li>\n");
        }
    }
    const char* old =
        is_old ? "<p>The page below is as it was before these errors. Do not work from it.</p>\n"
               : "";
    return fmt::format("<section class=\"findings\" aria-labelledby=\"findings\">\n<h2 "
                       "id=\"findings\">{}</h2>\n{}<ul>\n{}</ul>\n</section>\n",
                       tally(findings), old, top) +
           body;
}

} // namespace matchmark::serve
