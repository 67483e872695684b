// Visits what stood against the work, one sort of reason at a time; for the rules that report
// refusals of the bench.
#pragma once

#include "check/mending.hpp"
#include "check/rule.hpp"
#include "model/describe.hpp"

#include <algorithm>

namespace matchmark::check {

template <class Reason, class Visit> void each_refusal(const Walk& walk, Visit visit) {
    for (const Trouble& trouble : walk.troubles) {
        const auto* refusal = std::get_if<bench::Refusal>(&trouble.objection);
        if (refusal == nullptr || trouble.is_echo)
            continue;
        if (const auto* reason = std::get_if<Reason>(refusal))
            visit(trouble, *reason);
    }
}

template <class Reason, class Visit> void each_objection(const Walk& walk, Visit visit) {
    for (const Trouble& trouble : walk.troubles) {
        const auto* reason = std::get_if<Reason>(&trouble.objection);
        if (reason != nullptr && !trouble.is_echo)
            visit(trouble, *reason);
    }
}

inline const bench::Act& act_of(const Walk& walk, const Trouble& trouble) {
    return *walk.events[trouble.event].act;
}

inline const model::Verb& verb_of(const Walk& walk, const Trouble& trouble) {
    const bench::Act& act = act_of(walk, trouble);
    return walk.model.kind_of(act.item).verbs[act.verb];
}

// The finding with the missing lines to add; lines that do it later are taken away.
inline Diagnostic refused(const Walk& walk, const Trouble& trouble, std::string message) {
    Diagnostic finding = finding_at(walk, trouble.event, std::move(message));
    mend_with(walk, finding, trouble.mend_at, trouble.missing, trouble.done_later);
    for (const LeftOff& back : trouble.way_back) {
        Diagnostic later;
        mend_with(walk, later, back.at, back.acts);
        if (finding.edits.empty() || later.edits.empty())
            continue;
        finding.edits.insert(finding.edits.end(), later.edits.begin(), later.edits.end());
        finding.help = "add these lines, here and on the way home";
    }
    for (const Span line : trouble.done_later) {
        const bool own_line = line.file == finding.primary.file &&
                              line.begin <= finding.primary.begin &&
                              finding.primary.end <= line.end;
        if (!own_line)
            finding.related.push_back({line, "done only here"});
        if (!finding.edits.empty())
            finding.edits.push_back(take_out(walk, line, trouble.missing));
        finding.help = "move it up";
    }
    return finding;
}

// Is this one of the trades that the guide names: "gas fitter", "gas fitter and electrician"?
inline bool names_trade(std::string said, const std::string& trade) {
    if (said == trade)
        return true;
    for (std::size_t at = 0; (at = said.find(" and ")) != std::string::npos;)
        said.replace(at, 5, ", ");
    for (std::size_t from = 0; from <= said.size();) {
        const std::size_t end = std::min(said.find(", ", from), said.size());
        if (said.compare(from, end - from, trade) == 0)
            return true;
        from = end + 2;
    }
    return false;
}

// Is the guide written for a reader who may work on things of this kind?
inline bool may_do(const model::Guide& guide, const model::Kind& kind) {
    if (!kind.needs_license)
        return true;
    return guide.reader == model::ReaderLevel::licensed &&
           (kind.licensed.empty() || guide.trade.empty() ||
            names_trade(guide.trade, kind.licensed));
}

// "`lid` (part) is", "`lid-screws` (4 screws) are".
inline std::string item_is(const Walk& walk, model::ItemId item) {
    return model::with_kind(walk.model, item) + (walk.model.item(item).count > 1 ? " are" : " is");
}

inline bool several(const Walk& walk, const std::vector<model::ItemId>& items) {
    return items.size() != 1 || walk.model.item(items.front()).count != 1;
}

inline std::string names(const Walk& walk, const std::vector<model::ItemId>& items) {
    std::vector<std::string> words;
    for (const auto item : items)
        words.push_back(model::with_kind(walk.model, item));
    return model::list(words);
}

} // namespace matchmark::check
