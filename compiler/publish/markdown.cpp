// The guide as GitHub Flavored Markdown: for wikis, repositories and plain reading.
#include "publish/markdown.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"

#include <algorithm>

namespace matchmark::publish {

using guide::Document;
using guide::Words;

namespace {

std::string markdown_sentence(const Words& words) {
    std::string text;
    for (const guide::Run& run : words) {
        switch (run.kind) {
        case guide::RunKind::words:
            text +=
                text.empty() ? markdown_text(run.text) : markdown_text("." + run.text).substr(1);
            break;
        case guide::RunKind::value:
            text += "**" + markdown_text(run.text) + "**";
            break;
        case guide::RunKind::item_number:
            text += " (" + markdown_text(run.text) + ")";
            break;
        }
    }
    return text;
}

std::string marked_only(const Language& in, const std::vector<std::string>& variants) {
    return variants.empty() ? "" : "(" + markdown_text(say_only(in, variants)) + ") ";
}

// The lines of a text behind a prefix that each of them needs.
std::string behind(const std::string& prefix, const std::string& text) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        result += prefix + text.substr(at, end - at);
        while (result.ends_with(' ')) {
            result.pop_back();
        }
        result += "\n";
        at = end + 1;
    }
    return result;
}

std::string markdown_message(const Document& document, const guide::Message& one) {
    const Language& in = document.language;
    std::string text = "**" + guide::signal_word(one.signal, in) + "**";
    text += one.subject.empty() ? "" : language::colon(in) + markdown_text(one.subject);
    text += one.variants.empty() ? "" : " " + marked_only(in, one.variants);
    for (const guide::Sign& sign : document.signs) {
        if (sign.name == one.sign) {
            text += " (" + say_with(in, "sign: {sign}", "sign", markdown_text(sign.title)) + ")";
        }
    }
    if (one.full_in_step != 0) {
        return "> " + text + ", " +
               say_with(in, "see step {step}", "step", std::to_string(one.full_in_step)) + "\n\n";
    }
    return behind("> ", text + "\n\n" + markdown_prose(one.markdown)) + "\n";
}

std::string listed(const Language& in, const char* label, const std::vector<Words>& sentences) {
    std::string text;
    for (const Words& one : sentences) {
        text += "- " + markdown_sentence(one) + "\n";
    }
    return text.empty() ? text : say(in, label) + ":\n\n" + text + "\n";
}

std::string provisions(const Language& in, const char* label,
                       const std::vector<guide::Provision>& list) {
    std::string text;
    for (const guide::Provision& one : list) {
        text += "- [ ] " + markdown_text(one_line(one)) + "\n";
    }
    return text.empty() ? text : "### " + say(in, label) + "\n\n" + text + "\n";
}

std::string markdown_passages(const Language& in, const std::vector<guide::Passage>& list) {
    std::string text;
    for (const guide::Passage& one : list) {
        const std::string label =
            one.kind == guide::PassageKind::note  ? say(in, "Note") + language::colon(in)
            : one.kind == guide::PassageKind::why ? say(in, "Reason") + language::colon(in)
                                                  : "";
        text += label + markdown_prose(one.markdown) + "\n";
    }
    return text;
}

std::string markdown_pictures(const Language& in, const std::vector<guide::Picture>& list,
                              const ShownPictures& shown) {
    std::string text;
    for (const guide::Picture& one : list) {
        const auto found = shown.find(one.path);
        const std::string words = markdown_text(one.alternative_text);
        text += found == shown.end()
                    ? say_with(in, "Picture not at hand: {words}", "words", words) + "\n\n"
                    : "![" + words + "](<" + found->second.source + ">)\n\n";
        for (const guide::Mark& mark : one.marks) {
            text += "- (" + std::to_string(mark.number) + ") " + markdown_text(mark.words) + "\n";
        }
        text += one.marks.empty() ? "" : "\n";
    }
    return text;
}

std::string instructions(const Language& in, const guide::Step& step) {
    std::string text = markdown_passages(in, guide::passages_after(step, 0));
    std::size_t told = 0;
    for (const guide::Instruction& one : step.instructions) {
        text += "- [ ] " + marked_only(in, one.variants) + markdown_sentence(one.words) + "\n";
        for (const Words& detail : one.details) {
            text += "  - " + markdown_sentence(detail) + "\n";
        }
        text +=
            one.record.empty() ? "" : "  - " + markdown_text(one.record) + ": \\_\\_\\_\\_\\_\n";
        const std::string below = markdown_passages(in, guide::passages_after(step, ++told));
        text += below.empty() && told < step.instructions.size() ? "" : "\n" + below;
    }
    return text;
}

std::string conditions(const Language& in, const char* label,
                       const std::vector<std::string>& list) {
    return list.empty() ? ""
                        : say(in, label) + language::colon(in) +
                              markdown_text(language::said_list(in, list)) + "\n\n";
}

std::string markdown_step(const Document& document, const guide::Step& step,
                          const ShownPictures& shown) {
    const Language& in = document.language;
    std::string text = "### " + std::to_string(step.number) + ". " +
                       (step.is_test ? say(in, "TEST") + language::colon(in) : "") +
                       marked_only(in, step.variants) + markdown_text(step.title) + "\n\n";
    for (const Fact& fact : facts(step, in)) {
        text += fact.term + language::colon(in) + markdown_text(fact.words) + "\n\n";
    }
    for (const guide::Message& one : step.messages) {
        text += markdown_message(document, one);
    }
    text += conditions(in, "Do this test with", step.test.when) +
            conditions(in, "Test equipment", step.test.with) +
            conditions(in, "What it proves", step.test.proves);
    return text + instructions(in, step) + markdown_pictures(in, step.pictures, shown);
}

std::string fasteners(const Document& document) {
    const Language& in = document.language;
    std::string text;
    for (const guide::FastenerRow& row : document.fasteners) {
        text += "| " + marked_only(in, row.variants) + markdown_text(row.words) + " | " +
                markdown_text(row.description) +
                (row.told_by.empty()
                     ? ""
                     : ", " + say_with(in, "told by {what}", "what", markdown_text(row.told_by))) +
                " | " + markdown_text(row.torque) + " |\n";
    }
    return text.empty() ? text
                        : "### " + say(in, "Fasteners that you will handle") + "\n\n| " +
                              say(in, "Which") + " | " + say(in, "What it is") + " | " +
                              say(in, "Torque") + " |\n| --- | --- | --- |\n" + text + "\n";
}

std::string safety(const Document& document) {
    if (document.safety.empty() && document.energies.empty()) {
        return {};
    }
    std::string text = "## " + say(document.language, "Safety first") + "\n\n";
    for (const guide::GatheredMessage& one : document.safety) {
        text += markdown_message(document, one.message);
    }
    return text + listed(document.language, "What is stored in it", document.energies);
}

std::string needs_of(const Document& document) {
    const Language& in = document.language;
    std::string text =
        provisions(in, "To wear", document.protection) + provisions(in, "Tools", document.tools) +
        provisions(in, "Spares", document.spares) + provisions(in, "Supplies", document.supplies);
    if (!document.cost.empty()) {
        text += sum_words(document) + language::colon(in) +
                markdown_text(language::said_list(in, document.cost)) + "\n\n";
    }
    text += fasteners(document);
    return text.empty() ? text : "## " + say(in, "What you need") + "\n\n" + text;
}

std::string markdown_afterwards(const Document& document) {
    const Language& in = document.language;
    std::string text = listed(in, "What this work voids, and what restores it", document.ratings);
    if (!document.disposals.empty()) {
        text += say(in, "These go to a collecting point under the rules of your country:") + "\n\n";
        for (const guide::Disposal& one : document.disposals) {
            text += "- [ ] " + markdown_text(one.words) + ": **" + markdown_text(one.waste_class) +
                    "**\n";
        }
        text += "\n";
    }
    return text.empty() ? text : "## " + say(in, "Afterwards") + "\n\n" + text;
}

} // namespace

std::string markdown(const Document& document, const ShownPictures& shown) {
    std::string text = "# " + markdown_text(document.title) + "\n\n";
    for (const Fact& fact : facts(document)) {
        text += "- " + fact.term + language::colon(document.language) + markdown_text(fact.words) +
                "\n";
    }
    text += "\n**" + markdown_text(document.reader) + "**\n\n" + markdown_text(document.deferral) +
            "\n\n" + markdown_passages(document.language, document.passages) +
            listed(document.language, "The aim", document.goals) +
            markdown_pictures(document.language, document.pictures, shown) + safety(document) +
            needs_of(document);
    for (const guide::Section& section : document.sections) {
        text += "## " + markdown_text(section.title) + "\n\n";
        for (const guide::Step& one : section.steps) {
            text += markdown_step(document, one, shown);
        }
    }
    text += markdown_afterwards(document);
    for (const guide::Figure& figure : document.figures) {
        text += "## " + markdown_text(figure.title) + "\n\n" +
                markdown_prose(figure.alternative_text) + "\n";
    }
    while (text.ends_with("\n\n")) {
        text.pop_back();
    }
    return without_controls(text);
}

} // namespace matchmark::publish
