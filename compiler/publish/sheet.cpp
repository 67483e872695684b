// The bench sheet as a page of HTML.
#include "publish/sheet.hpp"

#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"
#include "publish/page/words.hpp"
#include "publish/sheet_lines.hpp"
#include "source/markup.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr const char* head =
    "\">\n<head>\n<meta charset=\"utf-8\">\n"
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
    "'unsafe-inline'; base-uri 'none'; form-action 'none'\">\n"
    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
    "<meta name=\"referrer\" content=\"no-referrer\">\n";

constexpr const char* sheet_style = R"css(
:root{color-scheme:light}
*{box-sizing:border-box}
body{margin:0;color:#000;background:#fff;font:15px/1.4 "Liberation Sans",Arial,sans-serif}
main{max-width:52rem;margin:0 auto;padding:1rem}
h1{font-size:1.6rem;margin:0 0 .3rem}
h2{font-size:1.1rem;margin:1.2rem 0 .3rem;border-top:3px solid #000;padding-top:.2rem}
h3{font-size:1rem;margin:.8rem 0 .2rem}
p{margin:.3rem 0}
.facts{margin:0;display:flex;flex-wrap:wrap;gap:0 1.2rem}
.facts div{display:flex;gap:.35rem}
.facts dd{margin:0;font-weight:700}
.fields{display:flex;flex-wrap:wrap;margin:.8rem 0}
.fields label{flex:1 1 11rem;border:1px solid #000;margin:0 -1px -1px 0;padding:.1rem .3rem;
font-size:.85rem}
.fields input,.write input{display:block;width:100%;font:inherit;color:#000;background:#fff;
border:0;min-height:1.9rem}
.write input{border-bottom:1px solid #000;min-height:1.75rem}
.fields input{font-size:1rem}
ul{list-style:none;margin:0;padding:0}
li{display:flex;gap:.6rem;padding:.2rem 0;border-bottom:1px solid #777}
li>label{flex:1;display:flex;gap:.6rem;min-height:1.75rem}
li input[type=checkbox]{appearance:none;flex:none;width:1.15rem;height:1.15rem;margin:.1rem 0 0;
border:2px solid #000;border-radius:0;background:#fff}
li input[type=checkbox]:checked{background:linear-gradient(45deg,transparent 45%,#000 45%,#000 55%,
transparent 55%),linear-gradient(-45deg,transparent 45%,#000 45%,#000 55%,transparent 55%)}
input:focus-visible{outline:3px solid #000;outline-offset:2px}
.more{display:block;font-size:.9rem}
.write{flex:0 0 11rem;font-size:.85rem}
.variant{display:inline-block;border:1px solid #000;padding:0 .3rem;font-weight:400}
.number{display:inline-block;min-width:1.45em;height:1.45em;line-height:1.3em;text-align:center;
border:1.5px solid #000;border-radius:1em;padding:0 .2em;font-size:.85em;font-weight:700}
.value{white-space:nowrap}
.signal{border-left:3px solid #000;padding-left:.6rem;margin:.35rem 0}
.note{padding-left:.6rem;font-size:.9rem}
.danger{border-left-width:9px}
.warning{border-left-width:6px}
.notice{border-left-style:dashed}
.notice b:first-child{font-style:italic}
@page{size:A4;margin:14mm 15mm 16mm;@bottom-right{content:counter(page) " / " counter(pages);
font:9pt "Liberation Sans",Arial,sans-serif}}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
@media print{body{font-size:9.5pt}main{max-width:none;padding:0}
h1,h2,h3,.signal,.note{break-after:avoid}li,.signal,.note,.fields{break-inside:avoid}}
)css";

std::string variant_words(const Language& in, const std::vector<std::string>& variants) {
    return variants.empty()
               ? ""
               : " <span class=\"variant\">" + markup_escaped(say_only(in, variants)) + "</span> ";
}

std::string message_line(const Language& in, const guide::Message& message) {
    const std::string subject =
        message.subject.empty() ? "" : " <b>" + markup_escaped(message.subject) + ".</b>";
    return "<p class=\"signal " + std::string(signal_name(message.signal)) + "\"><b>" +
           markup_escaped(guide::signal_word(message.signal, in)) + "</b>" +
           variant_words(in, message.variants) + subject + " " +
           markup_escaped(message_text(message, in)) + "</p>\n";
}

std::string line(const Language& in, const std::string& action, const Writing& writing) {
    std::string text = "<li><label><input type=\"checkbox\"><span>" + action + "</span></label>";
    if (writing.wanted) {
        const std::string what =
            writing.what.empty()
                ? "<input aria-label=\"" + markup_escaped(say(in, "Value reached")) + "\">"
                : markup_escaped(writing.what) + "<input>";
        text += "<label class=\"write\">" + what + "</label>";
    }
    return text + "</li>\n";
}

std::string step_lines(const Language& in, const guide::Step& step) {
    std::string text = "<section>\n<h3>" + std::to_string(step.number) + " " +
                       (step.is_test ? markup_escaped(say(in, "TEST")) + " " : "") +
                       markup_escaped(step.title) + variant_words(in, step.variants) + "</h3>\n";
    for (const guide::Message& message : step.messages) {
        text += message_line(in, message);
    }
    for (const std::string& note : notes_of(step, in)) {
        text += "<p class=\"note\">" + markup_escaped(note) + "</p>\n";
    }
    text += "<ul>\n";
    for (const guide::Instruction& one : step.instructions) {
        std::string action = variant_words(in, one.variants) + words(one.words, in);
        for (const guide::Words& detail : one.details) {
            action += "<span class=\"more\">" + words(detail, in) + "</span>";
        }
        text += line(in, action, writing_for(one));
    }
    const std::string test = test_text(step.test, in);
    if (!test.empty() || step.instructions.empty()) {
        text += line(in,
                     markup_escaped(step.is_test ? say(in, "Passed.") : say(in, "Done.")) + " " +
                         markup_escaped(test),
                     {step.is_test, {}});
    }
    return text + "</ul>\n</section>\n";
}

std::string top(const guide::Document& document) {
    std::string text = "<h1>" + markup_escaped(document.title) + "</h1>\n<dl class=\"facts\">\n";
    for (const Fact& fact : facts(document)) {
        text += "<div><dt>" + markup_escaped(fact.term) + ":</dt><dd>" +
                markup_escaped(fact.words) + "</dd></div>\n";
    }
    text += "</dl>\n<p>" + markup_escaped(document.deferral) + "</p>\n<div class=\"fields\">\n";
    for (const char* field : sheet_fields) {
        text += "<label>" + markup_escaped(say(document.language, field)) + "<input></label>\n";
    }
    text += "</div>\n";
    const std::string gear = gear_line(document);
    return gear.empty() ? text : text + "<p><b>" + markup_escaped(gear) + "</b></p>\n";
}

} // namespace

std::string sheet_html(const guide::Document& document) {
    const Language& in = document.language;
    std::string page = "<!DOCTYPE html>\n<html lang=\"" + in.tag + std::string(head);
    page +=
        "<title>" + markup_escaped(say_with(in, "Bench sheet: {title}", "title", document.title)) +
        "</title>\n<style>" + sheet_style + "</style>\n</head>\n<body>\n<main>\n" + top(document);
    for (const guide::Message* message : whole_work(document)) {
        page += message_line(in, *message);
    }
    for (const guide::Section& section : document.sections) {
        if (section.steps.empty()) {
            continue;
        }
        page += "<section>\n<h2>" + markup_escaped(section.title) + "</h2>\n";
        for (const guide::Step& step : section.steps) {
            page += step_lines(in, step);
        }
        page += "</section>\n";
    }
    page = without_controls(page + "</main>\n</body>\n</html>\n");
    return language::is_english(in) ? page : with_languages_marked(page);
}

} // namespace matchmark::publish
