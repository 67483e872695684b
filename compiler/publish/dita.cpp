// The guide as a task topic of OASIS DITA 1.3, for documentation systems.
//
// Steps go into `steps` behind their section's `stepsection`, actions into `substeps`. Messages are
// `hazardstatement`s, before the step's command as the content model of `step` has it.
#include "publish/dita.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/markup_tree.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

using guide::Document;
using guide::Words;

std::string element(const std::string& tag, const std::string& inside) {
    return "<" + tag + ">" + inside + "</" + tag + ">\n";
}

std::string dita_sentence(const Words& words) {
    std::string text;
    for (const guide::Run& run : words) {
        switch (run.kind) {
        case guide::RunKind::words:
            text += markup_escaped(run.text);
            break;
        case guide::RunKind::value:
            text += "<b>" + markup_escaped(run.text) + "</b>";
            break;
        case guide::RunKind::item_number:
            text += " (" + markup_escaped(run.text) + ")";
            break;
        }
    }
    return text;
}

std::string only(const Language& in, const std::vector<std::string>& variants) {
    return variants.empty() ? "" : "(" + markup_escaped(say_only(in, variants)) + ") ";
}

std::string list(const std::string& label, const std::vector<std::string>& lines) {
    if (lines.empty()) {
        return {};
    }
    std::string items;
    for (const std::string& line : lines) {
        items += element("li", line);
    }
    return element("p", "<b>" + markup_escaped(label) + "</b>") + element("ul", items);
}

std::string list(const std::string& label, const std::vector<Words>& sentences) {
    std::vector<std::string> lines;
    std::transform(sentences.begin(), sentences.end(), std::back_inserter(lines), dita_sentence);
    return list(label, lines);
}

std::string list(const std::string& label, const std::vector<guide::Provision>& provisions) {
    std::vector<std::string> lines;
    std::transform(provisions.begin(), provisions.end(), std::back_inserter(lines),
                   [](const guide::Provision& one) { return markup_escaped(one_line(one)); });
    return list(label, lines);
}

std::string dita_message(const Language& in, const guide::Message& one) {
    const std::string text = one.full_in_step == 0
                                 ? markup_escaped(plain_text(prose_tree(one.markdown)))
                                 : markup_escaped(say_with(in, "See step {step}.", "step",
                                                           std::to_string(one.full_in_step)));
    const std::string subject = one.subject.empty()
                                    ? markup_escaped(guide::signal_word(one.signal, in))
                                    : markup_escaped(one.subject);
    return "<hazardstatement type=\"" + std::string(signal_name(one.signal)) + "\"><messagepanel>" +
           element("typeofhazard", only(in, one.variants) + subject) + element("howtoavoid", text) +
           "</messagepanel></hazardstatement>\n";
}

std::string dita_passages(const std::vector<guide::Passage>& list) {
    std::string text;
    for (const guide::Passage& one : list) {
        const std::string body = dita_prose(one.markdown);
        text += one.kind == guide::PassageKind::text ? body : element("note", body);
    }
    return text;
}

std::string dita_pictures(const Language& in, const std::vector<guide::Picture>& list,
                          const ShownPictures& shown) {
    std::string text;
    for (const guide::Picture& one : list) {
        const auto found = shown.find(one.path);
        const std::string words = markup_escaped(one.alternative_text);
        text += found == shown.end()
                    ? element("p", say_with(in, "Picture not at hand: {words}", "words", words))
                    : "<fig><title>" + words + "</title><image href=\"" +
                          markup_escaped(found->second.source) + "\" placement=\"break\"><alt>" +
                          words + "</alt></image></fig>\n";
        std::string key;
        for (const guide::Mark& mark : one.marks) {
            key += element("li", std::to_string(mark.number) + ": " + markup_escaped(mark.words));
        }
        text += key.empty() ? "" : element("ul", key);
    }
    return text;
}

std::string substeps(const Language& in, const guide::Step& step) {
    const auto below = [&](std::size_t after) {
        const std::string words = dita_passages(guide::passages_after(step, after));
        return words.empty() ? words : element("info", words);
    };
    std::string text = below(0);
    std::string list;
    for (std::size_t i = 0; i < step.instructions.size(); ++i) {
        const guide::Instruction& one = step.instructions[i];
        std::string more;
        for (const Words& detail : one.details) {
            more += element("p", dita_sentence(detail));
        }
        more += one.record.empty() ? ""
                                   : element("p", markup_escaped(say_with(in, "Write down: {what}",
                                                                          "what", one.record)));
        list +=
            element("substep", element("cmd", only(in, one.variants) + dita_sentence(one.words)) +
                                   (more.empty() ? "" : element("info", more)));
        const std::string words = below(i + 1);
        if (!words.empty() || i + 1 == step.instructions.size()) {
            text += element("substeps", list) + words;
            list.clear();
        }
    }
    return text;
}

std::string dita_step(const Language& in, const guide::Step& one, const ShownPictures& shown) {
    std::string before;
    for (const guide::Message& each : one.messages) {
        before += dita_message(in, each);
    }
    std::string info;
    for (const Fact& fact : facts(one, in)) {
        info += element("p", markup_escaped(fact.term) + language::colon(in) +
                                 markup_escaped(fact.words));
    }
    const auto condition = [&](const char* label, const std::vector<std::string>& words) {
        info += words.empty() ? ""
                              : element("p", markup_escaped(say(in, label) + language::colon(in) +
                                                            language::said_list(in, words)));
    };
    condition("Do this test with", one.test.when);
    condition("Test equipment", one.test.with);
    condition("What it proves", one.test.proves);
    const std::string after = dita_pictures(in, one.pictures, shown);
    return "<step id=\"" + markup_escaped(one.anchor) + "\">\n" + before +
           element("cmd",
                   (one.is_test ? markup_escaped(say(in, "Test")) + language::colon(in) : "") +
                       only(in, one.variants) + markup_escaped(one.title)) +
           (info.empty() ? "" : element("info", info)) + substeps(in, one) +
           (after.empty() ? "" : element("info", after)) + "</step>\n";
}

std::string prerequisites(const Document& document) {
    const Language& in = document.language;
    std::string text = list(say(in, "Stored in it"), document.energies);
    for (const guide::GatheredMessage& one : document.safety) {
        text += dita_message(in, one.message);
    }
    text += list(say(in, "To wear"), document.protection) + list(say(in, "Tools"), document.tools) +
            list(say(in, "Spares"), document.spares) + list(say(in, "Supplies"), document.supplies);
    text += document.cost.empty()
                ? ""
                : element("p", markup_escaped(sum_words(document) + language::colon(in) +
                                              language::said_list(in, document.cost)));
    std::vector<std::string> fasteners;
    for (const guide::FastenerRow& row : document.fasteners) {
        std::string line = only(in, row.variants) + markup_escaped(row.words);
        for (const std::string& more : {row.description, row.told_by, row.torque}) {
            line += more.empty() ? "" : ", " + markup_escaped(more);
        }
        fasteners.push_back(line);
    }
    text += list(say(in, "Fasteners that you will handle"), fasteners);
    return text.empty() ? text : element("prereq", text);
}

std::string dita_afterwards(const Document& document) {
    const Language& in = document.language;
    std::string text =
        list(say(in, "What this work voids, and what restores it"), document.ratings);
    std::vector<std::string> waste;
    for (const guide::Disposal& one : document.disposals) {
        waste.push_back(markup_escaped(one.words) + language::colon(in) + "<b>" +
                        markup_escaped(one.waste_class) + "</b>");
    }
    text += list(say(in, "To a collecting point under the rules of your country"), waste);
    for (const guide::Figure& figure : document.figures) {
        text += element("p", "<b>" + markup_escaped(figure.title) + "</b>") +
                dita_prose(figure.alternative_text);
    }
    return text.empty() ? text : element("postreq", text);
}

// An XML name: what of the guide's name may not stand in one becomes a hyphen.
std::string identifier(const std::string& name) {
    std::string id = "guide-";
    for (const char c : name) {
        const bool allowed = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                             (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
        id += allowed ? c : '-';
    }
    return id;
}

} // namespace

std::string dita(const Document& document, const ShownPictures& shown) {
    std::string about;
    for (const Fact& fact : facts(document)) {
        about += element("li", markup_escaped(fact.term) + language::colon(document.language) +
                                   markup_escaped(fact.words));
    }
    std::string context = about.empty() ? "" : element("ul", about);
    context += element("p", markup_escaped(document.deferral)) + dita_passages(document.passages) +
               list(say(document.language, "The aim"), document.goals) +
               dita_pictures(document.language, document.pictures, shown);
    std::string steps;
    for (const guide::Section& section : document.sections) {
        steps += section.steps.empty() ? "" : element("stepsection", markup_escaped(section.title));
        for (const guide::Step& one : section.steps) {
            steps += dita_step(document.language, one, shown);
        }
    }
    const std::string author =
        document.author.empty()
            ? ""
            : element("prolog", element("author", markup_escaped(document.author)));
    return without_controls(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<!DOCTYPE task PUBLIC \"-//OASIS//DTD DITA 1.3 Task//EN\" \"task.dtd\">\n<task id=\"" +
        identifier(document.name) + "\" xml:lang=\"" + document.language.tag + "\">\n" +
        element("title", markup_escaped(document.title)) +
        element("shortdesc", markup_escaped(document.reader)) + author + "<taskbody>\n" +
        prerequisites(document) + element("context", context) +
        (steps.empty() ? "" : element("steps", steps)) + dita_afterwards(document) +
        "</taskbody>\n</task>\n");
}

} // namespace matchmark::publish
