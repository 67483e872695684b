// The guide as a HowTo of schema.org, in JSON-LD: for search and for other programs.
#include "publish/how_to.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/json_model.hpp"
#include "publish/markup_tree.hpp"

#include <cmath>

namespace matchmark::publish {

namespace {

using guide::Document;

Json typed(const char* type, const std::string& property, const std::string& text) {
    return {{"@type", type}, {property, text}};
}

std::string spoken_only(const Language& in, const std::vector<std::string>& variants) {
    return variants.empty() ? "" : say_only(in, variants) + language::colon(in);
}

// A message is a tip that stands before the directions: schema.org has no type for a warning.
Json tip(const Language& in, const guide::Message& one) {
    const std::string subject = one.subject.empty() ? "" : one.subject + ". ";
    const std::string text = one.full_in_step == 0 ? plain_text(prose_tree(one.markdown))
                                                   : say_with(in, "See step {step}.", "step",
                                                              std::to_string(one.full_in_step));
    return typed("HowToTip", "text",
                 guide::signal_word(one.signal, in) + language::colon(in) +
                     spoken_only(in, one.variants) + subject + text);
}

Json condition_list(const Language& in, const guide::Test& test) {
    Json list = Json::array();
    const auto add = [&](const char* label, const std::vector<std::string>& words) {
        if (!words.empty()) {
            list.push_back(
                typed("HowToTip", "text",
                      say(in, label) + language::colon(in) + language::said_list(in, words)));
        }
    };
    add("Do this test with", test.when);
    add("Test equipment", test.with);
    add("What it proves", test.proves);
    return list;
}

Json step(const Language& in, const guide::Step& one) {
    Json list = Json::array();
    for (const guide::Message& each : one.messages) {
        list.push_back(tip(in, each));
    }
    for (const Json& each : condition_list(in, one.test)) {
        list.push_back(each);
    }
    const auto tell = [&](std::size_t after) {
        for (const guide::Passage& each : guide::passages_after(one, after)) {
            list.push_back(typed("HowToTip", "text", plain_text(prose_tree(each.markdown))));
        }
    };
    std::size_t told = 0;
    tell(told);
    for (const guide::Instruction& each : one.instructions) {
        std::string text = spoken_only(in, each.variants) + guide::plain(each.words);
        for (const guide::Words& detail : each.details) {
            text += " " + guide::plain(detail);
        }
        text += each.record.empty()
                    ? ""
                    : " " + say_with(in, "Write down: {what}", "what", each.record) + ".";
        list.push_back(typed("HowToDirection", "text", text));
        tell(++told);
    }
    return {{"@type", "HowToStep"},
            {"position", one.number},
            {"name", (one.is_test ? say(in, "Test") + language::colon(in) : "") +
                         spoken_only(in, one.variants) + one.title},
            {"itemListElement", list}};
}

void add_supplies(Json& list, const std::vector<guide::Provision>& provisions) {
    for (const guide::Provision& one : provisions) {
        Json supply = typed("HowToSupply", "name", one.words);
        if (!one.amount.empty()) {
            supply["requiredQuantity"] = one.amount;
        }
        if (!one.price.empty()) {
            supply["estimatedCost"] = one.price;
        }
        list.push_back(supply);
    }
}

// ISO 8601; empty when no step has a usual time.
std::string duration(const Document& document) {
    double seconds = 0;
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& one : section.steps) {
            seconds += one.seconds;
        }
    }
    return seconds > 0 ? "PT" + std::to_string(std::lround(std::ceil(seconds / 60))) + "M" : "";
}

void add_if(Json& root, const char* key, const std::string& text) {
    if (!text.empty()) {
        root[key] = text;
    }
}

} // namespace

std::string how_to(const Document& document) {
    Json root = {{"@context", "https://schema.org"}, {"@type", "HowTo"}, {"name", document.title}};
    root["description"] = document.reader + " " + document.deferral;
    const Language& in = document.language;
    root["inLanguage"] = in.tag;
    if (!document.device.empty()) {
        root["about"] = typed("Product", "name", document.device);
    }
    add_if(root, "version", document.revision);
    add_if(root, "creditText", document.author);
    add_if(root, "dateModified", document.date);
    add_if(root, "performTime", duration(document));
    Json tools = Json::array();
    for (const auto* list : {&document.protection, &document.tools}) {
        for (const guide::Provision& one : *list) {
            tools.push_back(typed("HowToTool", "name", one.words));
        }
    }
    Json supplies = Json::array();
    add_supplies(supplies, document.spares);
    add_supplies(supplies, document.supplies);
    root["tool"] = tools;
    root["supply"] = supplies;
    Json sections = Json::array();
    if (!document.safety.empty()) {
        Json messages = Json::array();
        for (const guide::GatheredMessage& one : document.safety) {
            messages.push_back(tip(in, one.message));
        }
        const Json first = {{"@type", "HowToStep"},
                            {"name", say(in, "Read all of this")},
                            {"itemListElement", messages}};
        sections.push_back({{"@type", "HowToSection"},
                            {"name", say(in, "Safety first")},
                            {"itemListElement", Json::array({first})}});
    }
    for (const guide::Section& section : document.sections) {
        Json steps = Json::array();
        for (const guide::Step& one : section.steps) {
            steps.push_back(step(in, one));
        }
        sections.push_back(
            {{"@type", "HowToSection"}, {"name", section.title}, {"itemListElement", steps}});
    }
    root["step"] = sections;
    return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace matchmark::publish
