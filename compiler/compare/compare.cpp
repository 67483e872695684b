// The procedural difference of two states of a guide: all the searches in turn, and what none of
// them found.
#include "compare/compare.hpp"

#include "compare/findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace matchmark::compare {

namespace {

// Every string that a reader sees and no other search looks at.
class Read {
public:
    explicit Read(const guide::Document& document) : document_(document) {}

    std::vector<std::string> all() {
        add_head();
        add_lists();
        for (const guide::Section& section : document_.sections) {
            for (const guide::Step& step : section.steps) {
                add_step(step);
            }
        }
        std::sort(words_.begin(), words_.end());
        return std::move(words_);
    }

private:
    void add(const std::string& words) { words_.push_back(flowing(words)); }
    // Values left out: they are compared by their size, whatever their unit.
    void add(const guide::Words& runs) {
        std::string words;
        for (const guide::Run& run : runs) {
            words += run.kind == guide::RunKind::words ? run.text : "";
        }
        add(words);
    }
    void add(const std::vector<std::string>& many) {
        for (const std::string& words : many) {
            add(words);
        }
    }

    void add_head() {
        add(document_.variants);
        add(document_.deferral);
        for (const guide::Words& words : document_.goals) {
            add(words);
        }
        for (const guide::Words& words : document_.energies) {
            add(words);
        }
        for (const guide::Words& words : document_.ratings) {
            add(words);
        }
        for (const guide::Sign& sign : document_.signs) {
            add(sign.title);
        }
        add(document_.cost);
    }

    void add_lists() {
        for (const auto* list :
             {&document_.protection, &document_.tools, &document_.spares, &document_.supplies}) {
            for (const guide::Provision& piece : *list) {
                add(fmt::format("{} {} {} {} {}", piece.words, piece.amount, piece.price,
                                piece.purpose, piece.tool_class));
            }
        }
        for (const guide::FastenerRow& row : document_.fasteners) {
            add(fmt::format("{} {} {} {}", row.words, row.description, row.told_by,
                            fmt::join(row.variants, " ")));
        }
        for (const guide::Disposal& disposal : document_.disposals) {
            add(disposal.words + " " + disposal.waste_class);
        }
    }

    void add_step(const guide::Step& step) {
        add(step.title);
        add(step.variants);
        add(step.tools);
        for (const guide::Instruction& instruction : step.instructions) {
            add(instruction.words);
            add(instruction.variants);
            add(instruction.record);
            for (const guide::Words& detail : instruction.details) {
                add(detail);
            }
        }
        for (const guide::Passage& passage : step.passages) {
            add(passage.markdown);
        }
        add(step.test.when);
        add(step.test.proves);
        add(step.test.with);
    }

    const guide::Document& document_;
    std::vector<std::string> words_;
};

std::string only_in(const std::vector<std::string>& these, const std::vector<std::string>& those) {
    std::vector<std::string> only;
    std::set_difference(these.begin(), these.end(), those.begin(), those.end(),
                        std::back_inserter(only));
    constexpr std::size_t most = 5;
    const std::size_t more = only.size() > most ? only.size() - most : 0;
    only.resize(std::min(only.size(), most));
    std::string text = fmt::format("{}", fmt::join(only, "; "));
    return more == 0 ? text : fmt::format("{}; and {} more", text, more);
}

void find_time(Gathering& gathering) {
    const guide::Document& before = gathering.pairing.before.side.document;
    const guide::Document& after = gathering.pairing.after.side.document;
    const auto tell = [&](const char* what, const std::string& was, const std::string& is) {
        if (was == is) {
            return;
        }
        Change change;
        change.sort = Sort::time_changed;
        change.subject = after.name;
        change.what = what;
        change.before = was;
        change.after = is;
        // Where actions came or went, the time follows.
        (gathering.changes.empty() ? gathering.changes : gathering.notes)
            .push_back(std::move(change));
    };
    tell("time that the work takes", before.time, after.time);
    tell("time that passes by itself", before.waiting, after.waiting);
}

} // namespace

void find_rest(Gathering& gathering) {
    find_time(gathering);
    if (!gathering.changes.empty()) {
        return;
    }
    const auto before = Read(gathering.pairing.before.side.document).all();
    const auto after = Read(gathering.pairing.after.side.document).all();
    if (before != after) {
        Change change;
        change.sort = Sort::other_change;
        change.subject = gathering.pairing.after.side.document.name;
        change.what = "what the reader is told";
        change.before = only_in(before, after);
        change.after = only_in(after, before);
        gathering.changes.push_back(std::move(change));
    }
}

Difference compare_guides(const Side& before, const Side& after) {
    const Pairing pairing = pair_up(before, after);
    Gathering gathering{pairing, {}, {}};
    for (const auto find :
         {find_steps, find_actions, find_details, find_tests, find_order, find_words, find_needs,
          find_head, find_facts, find_messages, find_gear, find_rest}) {
        find(gathering);
    }
    Difference result;
    result.name = after.document.name;
    result.title = after.document.title;
    result.changes = std::move(gathering.changes);
    result.notes = std::move(gathering.notes);
    std::stable_sort(result.changes.begin(), result.changes.end(),
                     [](const Change& left, const Change& right) {
                         return std::tuple(!left.safety, !left.matters, left.at) <
                                std::tuple(!right.safety, !right.matters, right.at);
                     });
    return result;
}

} // namespace matchmark::compare
