// The guide as GitHub Flavored Markdown: for wikis, repositories and plain reading.
#include "publish/markdown.hpp"

#include "model/describe.hpp"
#include "publish/facts.hpp"
#include "publish/page_text.hpp"

#include <algorithm>

namespace matchmark::publish {

using guide::Document;
using guide::Words;

namespace {

std::string sentence(const Words& words) {
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

std::string only(const std::vector<std::string>& variants) {
    return variants.empty() ? "" : "(" + markdown_text(model::list(variants)) + " only) ";
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

std::string message(const Document& document, const guide::Message& one) {
    std::string text = "**" + std::string(guide::signal_word(one.signal)) + "**";
    text += one.subject.empty() ? "" : ": " + markdown_text(one.subject);
    text += one.variants.empty() ? "" : " " + only(one.variants);
    for (const guide::Sign& sign : document.signs) {
        if (sign.name == one.sign) {
            text += " (sign: " + markdown_text(sign.title) + ")";
        }
    }
    if (one.full_in_step != 0) {
        return "> " + text + ", see step " + std::to_string(one.full_in_step) + "\n\n";
    }
    return behind("> ", text + "\n\n" + markdown_prose(one.markdown)) + "\n";
}

std::string listed(const char* label, const std::vector<Words>& sentences) {
    std::string text;
    for (const Words& one : sentences) {
        text += "- " + sentence(one) + "\n";
    }
    return text.empty() ? text : std::string(label) + "\n\n" + text + "\n";
}

std::string provisions(const char* label, const std::vector<guide::Provision>& list) {
    std::string text;
    for (const guide::Provision& one : list) {
        text += "- [ ] " + markdown_text(one_line(one)) + "\n";
    }
    return text.empty() ? text : std::string("### ") + label + "\n\n" + text + "\n";
}

std::string passages(const std::vector<guide::Passage>& list) {
    std::string text;
    for (const guide::Passage& one : list) {
        const char* label = one.kind == guide::PassageKind::note  ? "Note: "
                            : one.kind == guide::PassageKind::why ? "Reason: "
                                                                  : "";
        text += label + markdown_prose(one.markdown) + "\n";
    }
    return text;
}

std::string pictures(const std::vector<guide::Picture>& list, const ShownPictures& shown) {
    std::string text;
    for (const guide::Picture& one : list) {
        const auto found = shown.find(one.path);
        const std::string words = markdown_text(one.alternative_text);
        text += found == shown.end() ? "Picture not at hand: " + words + "\n\n"
                                     : "![" + words + "](<" + found->second.source + ">)\n\n";
        for (const guide::Mark& mark : one.marks) {
            text += "- (" + std::to_string(mark.number) + ") " + markdown_text(mark.words) + "\n";
        }
        text += one.marks.empty() ? "" : "\n";
    }
    return text;
}

std::string instructions(const guide::Step& step) {
    std::string text;
    for (const guide::Instruction& one : step.instructions) {
        text += "- [ ] " + only(one.variants) + sentence(one.words) + "\n";
        for (const Words& detail : one.details) {
            text += "  - " + sentence(detail) + "\n";
        }
        text +=
            one.record.empty() ? "" : "  - " + markdown_text(one.record) + ": \\_\\_\\_\\_\\_\n";
    }
    return text.empty() ? text : text + "\n";
}

std::string conditions(const char* label, const std::vector<std::string>& list) {
    return list.empty() ? ""
                        : std::string(label) + ": " + markdown_text(model::list(list)) + "\n\n";
}

std::string step(const Document& document, const guide::Step& step, const ShownPictures& shown) {
    std::string text = "### " + std::to_string(step.number) + ". " +
                       (step.is_test ? "TEST: " : "") + only(step.variants) +
                       markdown_text(step.title) + "\n\n";
    for (const Fact& fact : facts(step)) {
        text += fact.term + ": " + markdown_text(fact.words) + "\n\n";
    }
    for (const guide::Message& one : step.messages) {
        text += message(document, one);
    }
    text += conditions("Do this test with", step.test.when) +
            conditions("Test equipment", step.test.with) +
            conditions("What it proves", step.test.proves);
    return text + instructions(step) + passages(step.passages) + pictures(step.pictures, shown);
}

std::string fasteners(const Document& document) {
    std::string text;
    for (const guide::FastenerRow& row : document.fasteners) {
        text += "| " + only(row.variants) + markdown_text(row.words) + " | " +
                markdown_text(row.description) +
                (row.told_by.empty() ? "" : ", told by " + markdown_text(row.told_by)) + " | " +
                markdown_text(row.torque) + " |\n";
    }
    return text.empty() ? text
                        : "### Fasteners that you will handle\n\n| Which | What it is | Torque |\n"
                          "| --- | --- | --- |\n" +
                              text + "\n";
}

std::string safety(const Document& document) {
    if (document.safety.empty() && document.energies.empty()) {
        return {};
    }
    std::string text = "## Safety first\n\n";
    for (const guide::GatheredMessage& one : document.safety) {
        text += message(document, one.message);
    }
    return text + listed("What is stored in it:", document.energies);
}

std::string needs(const Document& document) {
    std::string text = provisions("To wear", document.protection) +
                       provisions("Tools", document.tools) + provisions("Spares", document.spares) +
                       provisions("Supplies", document.supplies);
    if (!document.cost.empty()) {
        text += "Together: " + markdown_text(model::list(document.cost)) + "\n\n";
    }
    text += fasteners(document);
    return text.empty() ? text : "## What you need\n\n" + text;
}

std::string afterwards(const Document& document) {
    std::string text = listed("What this work voids, and what restores it:", document.ratings);
    if (!document.disposals.empty()) {
        text += "These go to a collecting point under the rules of your country:\n\n";
        for (const guide::Disposal& one : document.disposals) {
            text += "- [ ] " + markdown_text(one.words) + ": **" + markdown_text(one.waste_class) +
                    "**\n";
        }
        text += "\n";
    }
    return text.empty() ? text : "## Afterwards\n\n" + text;
}

} // namespace

std::string markdown(const Document& document, const ShownPictures& shown) {
    std::string text = "# " + markdown_text(document.title) + "\n\n";
    for (const Fact& fact : facts(document)) {
        text += "- " + fact.term + ": " + markdown_text(fact.words) + "\n";
    }
    text += "\n**" + markdown_text(document.reader) + "**\n\n" + markdown_text(document.deferral) +
            "\n\n" + passages(document.passages) + listed("The aim:", document.goals) +
            pictures(document.pictures, shown) + safety(document) + needs(document);
    for (const guide::Section& section : document.sections) {
        text += "## " + markdown_text(section.title) + "\n\n";
        for (const guide::Step& one : section.steps) {
            text += step(document, one, shown);
        }
    }
    text += afterwards(document);
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
