// Short facts about a guide and a step, in the same words in every form.
#include "publish/facts.hpp"

#include "model/describe.hpp"

#include <cmath>

namespace matchmark::publish {

namespace {

void add(std::vector<Fact>& facts, const char* term, const std::string& words) {
    if (!words.empty()) {
        facts.push_back({term, words});
    }
}

std::string capital(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    }
    return words;
}

} // namespace

std::vector<Fact> facts(const guide::Document& document) {
    std::vector<Fact> all;
    add(all, "Equipment", document.device);
    add(all, "Its revision", document.device_revision);
    add(all, "Only for", model::list(document.variants));
    add(all, "Guide revision", document.revision);
    add(all, "Source version", document.source_version);
    add(all, "Date", document.date);
    add(all, "Author", document.author);
    add(all, "Handling alone", document.time);
    add(all, "Waiting", document.waiting);
    return all;
}

std::vector<Fact> facts(const guide::Step& step) {
    std::vector<Fact> all;
    add(all, "Tools", capital(model::list(step.tools)));
    add(all, "Handling", step.seconds > 0 ? "about " + time_words(step.seconds) : "");
    add(all, "Waiting", step.waiting_seconds > 0 ? time_words(step.waiting_seconds) : "");
    return all;
}

std::string time_words(double seconds) {
    if (seconds < 90) {
        return std::to_string(std::lround(seconds)) + " s";
    }
    const long minutes = std::lround(seconds / 60);
    const long hours = minutes / 60;
    const long rest = minutes % 60;
    if (hours == 0) {
        return std::to_string(minutes) + " min";
    }
    return std::to_string(hours) + " h" + (rest == 0 ? "" : " " + std::to_string(rest) + " min");
}

std::string one_line(const guide::Provision& provision) {
    std::string text = provision.words;
    for (const std::string& more :
         {provision.amount, provision.tool_class, provision.price, provision.purpose}) {
        text += more.empty() ? "" : ", " + more;
    }
    return text;
}

std::string step_range(const guide::Section& section) {
    if (section.steps.empty()) {
        return {};
    }
    const std::string first = std::to_string(section.steps.front().number);
    const std::string last = std::to_string(section.steps.back().number);
    return first == last ? "step " + first : "steps " + first + " to " + last;
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
