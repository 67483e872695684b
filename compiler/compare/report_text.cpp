// The difference at a terminal: what touches safety first, one entry a change.
#include "compare/report.hpp"

#include "diagnostics/screen_line.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

namespace {

std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text + " ") {
        if (c != ' ' && c != '\n') {
            word += c;
        } else if (!word.empty()) {
            words.push_back(word);
            word.clear();
        }
    }
    return words;
}

std::string cut_out(const std::vector<std::string>& words, std::size_t front, std::size_t back) {
    constexpr std::size_t round = 4; // words that stay on either side
    const std::size_t first = front > round ? front - round : 0;
    const std::size_t left = back > round ? back - round : 0;
    std::string text = first > 0 ? "…" : "";
    for (std::size_t i = first; i + left < words.size(); ++i) {
        text += (text.empty() || text == "…" ? "" : " ") + words[i];
    }
    return left > 0 ? text + "…" : text;
}

void append_places(std::string& text, const Change& change) {
    if (change.steps.empty()) {
        return;
    }
    constexpr std::size_t most = 6;
    std::string line;
    for (std::size_t i = 0; i < std::min(most, change.steps.size()); ++i) {
        const StepPlace& place = change.steps[i];
        line += line.empty() ? "in " : "; ";
        line += place.in_old ? "the old " : "";
        line += place.number == 0 ? "a step" : fmt::format("step {}", place.number);
        line += place.title.empty() ? "" : fmt::format(" “{}”", place.title);
    }
    if (change.steps.size() > most) {
        line += fmt::format(" and {} more", change.steps.size() - most);
    }
    text += "      " + one_line(line) + "\n";
}

void append_change(std::string& text, const Change& change) {
    const std::string_view heading = heading_of(change.sort);
    std::string what = one_line(change.what);
    if (says_heading(change)) {
        what[0] = heading[0];
    } else {
        what.insert(0, std::string(heading) + ": ");
    }
    text += fmt::format("  {} {}\n", change.safety ? '!' : '-', what);
    if (!change.before.empty() || !change.after.empty()) {
        const Excerpt cut = excerpt(change.before, change.after);
        const std::string before = cut.before.empty() ? "(nothing)" : one_line(cut.before);
        const std::string after = cut.after.empty() ? "(nothing)" : one_line(cut.after);
        if (before.size() + after.size() < 70) {
            text += fmt::format("      {} -> {}\n", before, after);
        } else {
            text += fmt::format("      was: {}\n      is:  {}\n", before, after);
        }
    }
    append_places(text, change);
    if (!change.why.empty()) {
        text += "      why: " + one_line(change.why) + "\n";
    }
    for (const std::string& line : change.with_it) {
        text += "      with it: " + one_line(line) + "\n";
    }
}

void append_group(std::string& text, const char* title, const std::vector<Change>& changes,
                  const auto& belongs) {
    bool first = true;
    for (const Change& change : changes) {
        if (!belongs(change)) {
            continue;
        }
        if (first) {
            text += fmt::format("\n{}\n", title);
        }
        first = false;
        append_change(text, change);
    }
}

} // namespace

bool Report::changed() const {
    return std::any_of(differences.begin(), differences.end(),
                       [](const Difference& difference) { return !difference.changes.empty(); });
}

Excerpt excerpt(const std::string& before, const std::string& after) {
    const auto old = words_of(before);
    const auto now = words_of(after);
    const std::size_t shorter = std::min(old.size(), now.size());
    std::size_t front = 0;
    while (front < shorter && old[front] == now[front]) {
        ++front;
    }
    std::size_t back = 0;
    while (back < shorter - front && old[old.size() - 1 - back] == now[now.size() - 1 - back]) {
        ++back;
    }
    return {cut_out(old, front, back), cut_out(now, front, back)};
}

bool says_heading(const Change& change) {
    const std::string_view heading = heading_of(change.sort);
    const auto alike = [](char a, char b) { return (a | 0x20) == (b | 0x20); };
    return change.what.size() >= heading.size() &&
           std::equal(heading.begin(), heading.end(), change.what.begin(), alike);
}

std::string tally(const Difference& difference) {
    const auto& changes = difference.changes;
    if (changes.empty()) {
        return "no change in the procedure";
    }
    const auto grave = std::count_if(changes.begin(), changes.end(),
                                     [](const Change& change) { return change.safety; });
    std::string text =
        fmt::format("{} {}", changes.size(), changes.size() == 1 ? "change" : "changes");
    if (grave != 0) {
        text += fmt::format(", {} of safety", grave);
    }
    return text;
}

std::string to_text(const Report& report) {
    std::string text;
    for (const std::string& remark : report.remarks) {
        text += "note: " + one_line(remark) + "\n";
    }
    for (const Difference& difference : report.differences) {
        text += text.empty() ? "" : "\n";
        text += fmt::format("{}{}: {}\n", difference.name,
                            difference.title.empty() ? "" : " “" + one_line(difference.title) + "”",
                            tally(difference));
        append_group(text, "Safety", difference.changes,
                     [](const Change& change) { return change.safety; });
        append_group(text, "Other changes", difference.changes,
                     [](const Change& change) { return !change.safety && change.matters; });
        append_group(text, "Order alone, where either order works", difference.changes,
                     [](const Change& change) { return !change.safety && !change.matters; });
        append_group(text, "In the source, beside the procedure", difference.notes,
                     [](const Change&) { return true; });
    }
    return text;
}

} // namespace matchmark::compare
