// Short facts about a guide and a step, in the same words in every form.
#include "publish/facts.hpp"

#include "language/spoken.hpp"
#include "publish/fixed_words.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

void add_fact(std::vector<Fact>& facts, const Language& in, const char* term,
              const std::string& words) {
    if (!words.empty()) {
        facts.push_back({say(in, term), words});
    }
}

} // namespace

std::vector<Fact> facts(const guide::Document& document) {
    const Language& in = document.language;
    std::vector<Fact> all;
    add_fact(all, in, "Equipment", document.device);
    add_fact(all, in, "Its revision", document.device_revision);
    add_fact(all, in, "Only for", language::said_list(in, document.variants));
    add_fact(all, in, "Guide revision", document.revision);
    add_fact(all, in, "Source version", document.source_version);
    add_fact(all, in, "Date", document.date);
    add_fact(all, in, "Author", document.author);
    add_fact(all, in, "Handling alone", document.time);
    add_fact(all, in, "Waiting", document.waiting);
    return all;
}

std::vector<Fact> facts(const guide::Step& step, const Language& in) {
    std::vector<Fact> all;
    add_fact(all, in, "Tools", language::capital(in, language::said_list(in, step.tools)));
    add_fact(all, in, "Handling",
             step.seconds > 0
                 ? say_with(in, "about {time}", "time", language::said_time(in, step.seconds))
                 : "");
    add_fact(all, in, "Waiting",
             step.waiting_seconds > 0 ? language::said_time(in, step.waiting_seconds) : "");
    return all;
}

std::string sum_words(const guide::Document& document) {
    const auto unpriced = [](const guide::Provision& one) { return one.price.empty(); };
    const bool lacks = std::any_of(document.spares.begin(), document.spares.end(), unpriced) ||
                       std::any_of(document.supplies.begin(), document.supplies.end(), unpriced);
    return say(document.language, lacks ? "Together, without what has no price" : "Together");
}

std::string one_line(const guide::Provision& provision) {
    std::string text = provision.words;
    for (const std::string& more :
         {provision.amount, provision.tool_class, provision.price, provision.purpose}) {
        text += more.empty() ? "" : ", " + more;
    }
    return text;
}

std::string step_range(const guide::Section& section, const Language& in) {
    if (section.steps.empty()) {
        return {};
    }
    const std::string first = std::to_string(section.steps.front().number);
    const std::string last = std::to_string(section.steps.back().number);
    return first == last ? say_with(in, "step {step}", "step", first)
                         : language::fill_text(say(in, "steps {first} to {last}"),
                                               {{"first", first}, {"last", last}});
}

const char* signal_name(guide::Signal signal) {
    switch (signal) {
    case guide::Signal::danger:
        return "danger";
    case guide::Signal::warning:
        return "warning";
    case guide::Signal::caution:
        return "caution";
    case guide::Signal::notice:
        break;
    }
    return "notice";
}

} // namespace matchmark::publish
