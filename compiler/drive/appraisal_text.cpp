// The appraisal in plain text: a table of parts, what they wait for, the index.
#include "drive/appraisal_report.hpp"

#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

using guide::Appraisal;
using guide::PartAppraisal;
using guide::WayFound;

constexpr std::size_t most_waited_for = 12;

// Letters, not bytes: a title may be in any script.
std::size_t width_of(const std::string& words) {
    return static_cast<std::size_t>(std::count_if(words.begin(), words.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

std::string filled(const std::string& words, std::size_t width) {
    return words + std::string(width - std::min(width, width_of(words)), ' ');
}

bool is_out(const PartAppraisal& part) {
    return part.way == WayFound::least || part.way == WayFound::bounded;
}

void write_line(const char* what, const std::string& words, std::ostream& out) {
    if (!words.empty())
        out << "        " << what << words << '\n';
}

void write_part(const PartAppraisal& part, std::size_t width, std::ostream& out) {
    out << fmt::format("{} {:>6} {:>5} {:>12} {:>12}\n", filled(part.title, width),
                       part.steps.size(), part.acts, guide::time_words(part.seconds_apart),
                       guide::time_words(part.seconds_back));
    write_line("", guide::counted_words(part.fasteners), out);
    write_line("", guide::counted_words(part.plugs), out);
    write_line("", guide::counted_words(part.bonds), out);
    std::string tools;
    for (const guide::ToolNeeded& tool : part.tools)
        tools += (tools.empty() ? "" : "; ") + tool.words +
                 (tool.sort.empty() ? "" : " (" + tool.sort + ")");
    write_line("with ", tools.empty() ? "no tool" : tools, out);
    if (!part.renewed.empty())
        write_line("renewed: ", model::list(part.renewed), out);
    if (part.waiting_apart + part.waiting_back > 0)
        write_line("waiting: ",
                   guide::time_words(part.waiting_apart) + " apart, " +
                       guide::time_words(part.waiting_back) + " back",
                   out);
    if (part.way == WayFound::bounded)
        write_line("not proved least: no way takes less than ",
                   guide::time_words(part.at_least_seconds), out);
    if (!part.fewest_steps)
        write_line("", "another order may have fewer steps", out);
}

void write_stuck(const PartAppraisal& part, std::ostream& out) {
    if (part.way == WayFound::unknown) {
        out << part.title << ": no way was found in the time given, and none was ruled out.\n";
        return;
    }
    out << part.title << ": there is no way.\n";
    for (const std::string& line : part.why_not)
        out << "        " << line << '\n';
}

void write_parts(const Appraisal& appraisal, std::ostream& out) {
    std::size_t width = 4;
    for (const PartAppraisal& part : appraisal.parts)
        width = std::max(width, width_of(part.title));
    out << fmt::format("{} {:>6} {:>5} {:>12} {:>12}\n", filled("Part", width), "steps", "acts",
                       "apart", "back");
    bool all_proved = true;
    for (const PartAppraisal& part : appraisal.parts) {
        if (is_out(part))
            write_part(part, width, out);
        else
            write_stuck(part, out);
        all_proved = all_proved && part.way == WayFound::least;
    }
    out << "\nSteps are those of Commission Decision (EU) 2016/1371: one ends when a part is off, "
           "or when\nanother tool is taken. Times are usual times of handling.";
    out << (all_proved ? " Every way is proved least.\n" : "\n");
}

void write_waited_for(const Appraisal& appraisal, std::ostream& out) {
    if (appraisal.waited_for.empty())
        return;
    const std::size_t shown = std::min(most_waited_for, appraisal.waited_for.size());
    std::size_t width = 4;
    for (std::size_t i = 0; i < shown; ++i)
        width = std::max(width, width_of(appraisal.waited_for[i].title));
    out << fmt::format("\nWhat most parts wait for: of {}, how many have it moved\n\n{} {:>10} "
                       "{:>10}\n",
                       model::counted(appraisal.parts.size(), "part"), filled("Item", width),
                       "least way", "any way");
    for (std::size_t i = 0; i < shown; ++i) {
        const guide::WaitedFor& item = appraisal.waited_for[i];
        out << fmt::format("{} {:>10} {:>10}\n", filled(item.title, width), item.parts.size(),
                           item.always.size());
    }
    if (shown < appraisal.waited_for.size())
        out << fmt::format("and {} more\n", appraisal.waited_for.size() - shown);
}

std::string index_value(const guide::RepairIndex& index) {
    if (index.lowest == index.highest)
        return fmt::format("R = {}, class {}", guide::ten_thousandths(index.lowest),
                           index.lowest_class);
    std::string classes(1, index.lowest_class);
    if (index.highest_class != index.lowest_class)
        classes += fmt::format(" to {}", index.highest_class);
    return fmt::format("R = {} to {}, class {}", guide::ten_thousandths(index.lowest),
                       guide::ten_thousandths(index.highest), classes);
}

void write_part_scores(const guide::RepairIndex& index, std::ostream& out) {
    out << "\n  What the priority parts give, weight, then depth, fasteners, tools:\n";
    for (const guide::PartScore& part : index.parts) {
        const std::string items =
            part.items.empty() || part.items == part.part ? "" : " (" + part.items + ")";
        out << fmt::format("    {} {}{}\n", guide::hundredths(part.weight), part.part, items);
        for (const auto& [score, because] : {std::pair{part.depth, part.depth_because},
                                             std::pair{part.fasteners, part.fasteners_because},
                                             std::pair{part.tools, part.tools_because}})
            out << fmt::format("         {:<12}  {}\n", guide::range_words(score), because);
    }
}

void write_index(const guide::RepairIndex& index, std::ostream& out) {
    out << "\nRepairability index, " << index.source << (index.folding ? ", folding" : "")
        << "\n\n  " << index_value(index) << "\n  " << guide::index_disclaimer() << "\n  "
        << guide::index_tolerance() << "\n\n";
    for (const guide::IndexScore& score : index.scores)
        out << fmt::format("  {:<19} {:<5} {:<12} x {}  {}\n", score.name, score.symbol,
                           guide::range_words(score.score), guide::hundredths(score.weight),
                           score.because);
    write_part_scores(index, out);
    if (!index.undeclared.empty())
        out << "\n  Not declared, and so the index is a range:\n";
    for (const std::string& line : index.undeclared)
        out << "    - " << line << '\n';
    out << '\n';
    for (const std::string& note : index.notes)
        out << "  " << note << '\n';
}

void write_changes(const Appraisal& appraisal, std::ostream& out) {
    if (appraisal.changes.empty())
        return;
    out << "\nWhat one change of the design would help most\n\n";
    for (const guide::DesignChange& change : appraisal.changes)
        out << "  " << change.words << ": " << guide::gain_words(change) << '\n';
}

} // namespace

void write_appraisal(const Appraisal& appraisal, std::ostream& out) {
    out << appraisal.title;
    if (!appraisal.variant.empty())
        out << ", variant " << appraisal.variant;
    out << "\n\n";
    write_parts(appraisal, out);
    write_waited_for(appraisal, out);
    if (appraisal.index)
        write_index(*appraisal.index, out);
    write_changes(appraisal, out);
}

} // namespace matchmark::drive
