// The numbers of an appraisal as words.
#include "guide/appraisal.hpp"

#include "language/spoken.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

namespace matchmark::guide {

std::string hundredths(int value) { return fmt::format("{}.{:02}", value / 100, value % 100); }

std::string ten_thousandths(int value) {
    std::string text = fmt::format("{}.{:04}", value / 10000, value % 10000);
    while (text.ends_with('0') && text.size() > 4)
        text.pop_back();
    return text;
}

std::string range_words(const ScoreRange& range) {
    return range.lowest == range.highest
               ? hundredths(range.lowest)
               : hundredths(range.lowest) + " to " + hundredths(range.highest);
}

std::string time_words(double seconds) { return language::said_time(language::english(), seconds); }

std::string counted_words(const std::vector<Counted>& counted) {
    std::string words;
    for (const Counted& one : counted)
        words += fmt::format("{}{} x {}", words.empty() ? "" : "; ", one.count, one.words);
    return words;
}

std::string gain_words(const DesignChange& change) {
    std::string words;
    if (!change.parts.empty()) {
        words = time_words(change.seconds_saved);
        if (change.acts_saved > 0)
            words += " and " + model::counted(static_cast<std::size_t>(change.acts_saved), "act");
        words += change.parts.size() > 1 ? " less together for " : " less for ";
        words += model::list(change.parts);
    }
    if (!change.opened.empty())
        words += (words.empty() ? "" : "; ") + model::list(change.opened) + " can be brought out";
    return words;
}

const std::string& index_disclaimer() {
    static const std::string words =
        "An estimate from declared data, never a regulatory declaration. The maker's declaration "
        "and the regulation itself come first.";
    return words;
}

// Annex IX, table 10.
const std::string& index_tolerance() {
    static const std::string words =
        "The regulation's tolerance, when an authority verifies a declared index, is 4 % "
        "(Annex IX, table 10).";
    return words;
}

} // namespace matchmark::guide
