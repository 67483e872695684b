// What is wrong with a guide's translation.
#include "language/judging.hpp"

#include "language/words.hpp"
#include "model/quantity.hpp"
#include "source/text.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>

namespace matchmark::language {

namespace {

// Spaces that hold a number and its unit together count as spaces.
std::string plain_spaces(std::string text) {
    for (const std::string_view space : {"\u00a0", "\u202f", "\u2009"}) {
        for (std::size_t at = text.find(space); at != std::string::npos; at = text.find(space)) {
            text.replace(at, space.size(), " ");
        }
    }
    return text;
}

// Units that are also English words or letters of a list say nothing.
bool is_unit(const std::string& word) {
    static const std::set<std::string> doubtful{"in", "a", "A", "l", "m", "h", "g", "deg", "s"};
    const auto& units = model::unit_spellings();
    return !doubtful.contains(word) && std::find(units.begin(), units.end(), word) != units.end();
}

struct Number {
    std::string digits; // with a decimal point
    std::string unit;   // empty when none follows
};

std::vector<Number> numbers_in(const std::string& written) {
    const std::string text = plain_spaces(written) + " ";
    std::vector<Number> numbers;
    for (std::size_t at = 0; at < text.size();) {
        if (!is_digit(text[at])) {
            ++at;
            continue;
        }
        Number number;
        while (is_digit(text[at]) ||
               ((text[at] == '.' || text[at] == ',') && is_digit(text[at + 1]))) {
            number.digits += text[at] == ',' ? '.' : text[at];
            ++at;
        }
        if (text[at] == ' ' || text[at] == '%') {
            const std::size_t begin = text[at] == ' ' ? at + 1 : at;
            const std::size_t end = text.find_first_of(" ,;:!?()\n", begin);
            std::string word = text.substr(begin, end - begin);
            while (word.ends_with('.')) {
                word.pop_back();
            }
            number.unit = is_unit(word) ? word : "";
        }
        numbers.push_back(std::move(number));
    }
    return numbers;
}

Diagnostic finding_at(const Span& at, const char* rule, Severity severity, std::string message,
                      std::string label) {
    Diagnostic finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.primary = at;
    finding.message = std::move(message);
    finding.label = std::move(label);
    return finding;
}

// The beginning of a text, in one line.
std::string beginning(const std::string& text) {
    constexpr std::size_t most = 40;
    std::string start = text.substr(0, text.find('\n'));
    if (start.size() > most) {
        start.resize(start.rfind(' ', most) == std::string::npos ? most : start.rfind(' ', most));
        start += " ...";
    }
    return start;
}

const Message* find_in(const Catalogue& catalogue, const Text& text) {
    const auto found = std::find_if(
        catalogue.messages.begin(), catalogue.messages.end(), [&](const Message& message) {
            return !message.obsolete && message.one == text.one && message.context == text.context;
        });
    return found == catalogue.messages.end() ? nullptr : &*found;
}

Span span_of(const OwnCatalogue& own, const Message& message) {
    return {own.file, message.offset, message.offset + 5};
}

void judge_entry(const Text& text, const OwnCatalogue& own, const Message& message,
                 std::vector<Diagnostic>& findings) {
    const Span at = span_of(own, message);
    if (!is_translated(message)) {
        findings.push_back(finding_at(at, "not-translated", Severity::warning,
                                      fmt::format("“{}” is not translated", beginning(text.one)),
                                      "empty"));
        findings.back().help = "write its translation behind `msgstr`";
    } else if (message.fuzzy) {
        findings.push_back(finding_at(
            at, "doubtful-translation", Severity::warning,
            fmt::format("“{}” waits for a person to look at its translation", beginning(text.one)),
            "marked fuzzy"));
        findings.back().help = "correct it, then take the mark `fuzzy` away";
    } else {
        for (std::size_t i = 0; i < message.forms.size(); ++i) {
            const std::string& english = i == 0 || text.many.empty() ? text.one : text.many;
            const std::string lost = lost_in(english, message.forms[i], text.names);
            if (!lost.empty()) {
                findings.push_back(finding_at(
                    at, "lost-in-translation", Severity::error,
                    fmt::format("the translation of “{}” has lost {}", beginning(english), lost),
                    "translated here"));
                findings.back().why =
                    text.is_safety ? "it is a safety message" : "the reader needs it for the work";
                findings.back().help = "write it into the translation as it stands in the English";
            }
        }
    }
    if (!findings.empty() && findings.back().primary == at && text.span.known()) {
        findings.back().related.push_back({text.span, "written here"});
    }
}

void judge_text(const Text& text, const Catalogue& program, const std::vector<OwnCatalogue>& own,
                std::vector<Diagnostic>& findings) {
    for (auto one = own.rbegin(); one != own.rend(); ++one) {
        if (const Message* message = find_in(one->catalogue, text)) {
            judge_entry(text, *one, *message, findings);
            return;
        }
    }
    const Message* known = find_in(program, text);
    if (known == nullptr || !is_translated(*known)) {
        findings.push_back(finding_at(text.span, "not-translated", Severity::warning,
                                      fmt::format("“{}” is not translated", beginning(text.one)),
                                      "no catalogue has it"));
        findings.back().help = "bring the catalogue up to date: `matchmark catalog --update`";
    }
}

} // namespace

std::string lost_in(const std::string& english, const std::string& translation,
                    const std::vector<std::string>& names) {
    for (const std::string& place : places_of(english)) {
        const auto kept = places_of(translation);
        if (!std::binary_search(kept.begin(), kept.end(), place)) {
            return fmt::format("the place `{{{}}}`", place);
        }
    }
    for (const std::string& name : names) {
        if (translation.find(name) == std::string::npos) {
            return fmt::format("the name `{}`", name);
        }
    }
    std::vector<Number> there = numbers_in(translation);
    for (const Number& number : numbers_in(english)) {
        const auto same = std::find_if(there.begin(), there.end(), [&](const Number& other) {
            return other.digits == number.digits &&
                   (number.unit.empty() || other.unit == number.unit);
        });
        if (same == there.end()) {
            return number.unit.empty() ? fmt::format("the number {}", number.digits)
                                       : fmt::format("the value {} {}", number.digits, number.unit);
        }
        there.erase(same);
    }
    return {};
}

std::vector<Diagnostic> judged(const std::vector<Text>& texts, const Catalogue& program,
                               const std::vector<OwnCatalogue>& own, bool alone) {
    std::vector<Diagnostic> findings;
    std::set<std::pair<std::string, std::string>> asked;
    for (const Text& text : texts) {
        asked.insert({text.context, text.one});
        judge_text(text, program, own, findings);
    }
    for (const OwnCatalogue& one : own) {
        for (const Message& message : one.catalogue.messages) {
            const bool is_guides = !message.context.empty() && !message.obsolete;
            if (alone && is_guides && !asked.contains({message.context, message.one})) {
                findings.push_back(finding_at(
                    span_of(one, message), "stale-translation", Severity::warning,
                    fmt::format("no text of the guide says “{}” any more", beginning(message.one)),
                    "translated here"));
                findings.back().help =
                    "bring the catalogue up to date: `matchmark catalog --update`";
            }
        }
    }
    return findings;
}

} // namespace matchmark::language
