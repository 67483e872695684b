// `explain`: what a finding means, why it matters on the bench, and how it is mended.
#include "check/rule.hpp"
#include "diagnostics/severity.hpp"
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/reading_findings.hpp"
#include "source/embedded.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

// A finding that can be explained: a rule of the check, or one of reading.
struct Topic {
    std::string_view name;
    std::string_view group;
    Severity severity = Severity::error;
    std::string_view summary;
    std::string_view page; // Markdown; of a rule without a page, or of reading, its few words
};

const EmbeddedText* page_of(std::string_view name) {
    const auto pages = rule_pages();
    const auto found = std::find_if(pages.begin(), pages.end(),
                                    [&](const EmbeddedText& page) { return page.name == name; });
    return found == pages.end() ? nullptr : &*found;
}

// Rules first, by name, then the findings of reading that no rule has the name of.
std::vector<Topic> all_topics() {
    std::vector<Topic> topics;
    for (const check::Rule* rule : check::all_rules()) {
        const EmbeddedText* page = page_of(rule->name);
        topics.push_back({rule->name, rule->group, rule->severity, rule->summary,
                          page != nullptr ? page->text : std::string_view()});
    }
    const std::size_t rules = topics.size();
    for (const ReadingFinding& finding : reading_findings()) {
        const bool is_rule =
            std::any_of(topics.begin(), topics.begin() + static_cast<std::ptrdiff_t>(rules),
                        [&](const Topic& topic) { return topic.name == finding.name; });
        if (!is_rule) {
            const EmbeddedText* page = page_of(finding.name);
            topics.push_back({finding.name, reading_group, finding.severity, finding.summary,
                              page != nullptr ? page->text : finding.more});
        }
    }
    return topics;
}

Json json_of(const Topic& topic) {
    Json object;
    object["rule"] = topic.name;
    object["group"] = topic.group;
    object["severity"] = severity_word(topic.severity);
    object["summary"] = topic.summary;
    return object;
}

void write_table(const std::vector<Topic>& topics, bool json, std::ostream& out) {
    if (json) {
        Json object;
        object["rules"] = Json::array();
        for (const Topic& topic : topics) {
            object["rules"].push_back(json_of(topic));
        }
        out << object.dump(2) << '\n';
        return;
    }
    std::size_t width = 0;
    for (const Topic& topic : topics) {
        width = std::max(width, topic.name.size());
    }
    std::string_view group;
    for (const Topic& topic : topics) {
        if (topic.group == reading_group && group != reading_group) {
            out << (group.empty() ? "" : "\n");
        }
        group = topic.group;
        out << fmt::format("{:<{}}  {:<7}  {}\n", topic.name, width, severity_word(topic.severity),
                           topic.summary);
    }
}

void write_rule_page(const Topic& topic, bool json, std::ostream& out) {
    if (json) {
        Json object = json_of(topic);
        object["page"] = topic.page;
        out << object.dump(2) << '\n';
        return;
    }
    if (page_of(topic.name) == nullptr) {
        out << fmt::format("# {}\n\n{}: {}.\n\n", topic.name, severity_word(topic.severity),
                           topic.summary);
    }
    out << topic.page << (topic.page.ends_with('\n') ? "" : "\n");
}

std::vector<std::string> names_of(const std::vector<Topic>& topics) {
    std::vector<std::string> names;
    for (const Topic& topic : topics) {
        names.emplace_back(topic.name);
    }
    for (const Topic& topic : topics) {
        names.emplace_back(topic.group);
    }
    return names;
}

} // namespace

int explain(const ExplainOptions& options, Terminal& terminal) {
    const std::vector<Topic> topics = all_topics();
    std::vector<Topic> group;
    for (const Topic& topic : topics) {
        if (topic.name == options.topic) {
            write_rule_page(topic, options.json, terminal.out);
            return exit_clean;
        }
        if (options.topic.empty() || topic.group == options.topic) {
            group.push_back(topic);
        }
    }
    if (group.empty()) {
        const std::string near = did_you_mean(options.topic, names_of(topics));
        return fail(terminal, "explain",
                    fmt::format("there is no finding and no group `{}`{}", options.topic,
                                near.empty() ? "; `matchmark explain` lists them" : near));
    }
    write_table(group, options.json, terminal.out);
    if (!options.json) {
        terminal.out << "\nmatchmark explain NAME says more about one of these\n";
    }
    return exit_clean;
}

} // namespace matchmark::drive
