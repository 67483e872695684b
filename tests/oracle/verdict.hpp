// What a judge of a guide has to say: the first act refused, or what is not back at the end.
#pragma once

#include "model/model.hpp"

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace matchmark::oracle {

// An act is one action on one item; acts are counted from 0 in order of work.
struct Verdict {
    std::optional<std::size_t> refused;
    std::string condition;          // of the act refused: see condition_names
    std::set<std::string> not_back; // judged only when no act is refused

    friend bool operator==(const Verdict&, const Verdict&) = default;
};

// The conditions in the order of docs/semantics.md.
inline const std::vector<std::string> condition_names = {"state", "reach",  "needs",  "live",
                                                         "held",  "seated", "one use"};

// "act 12 refused: held", "not back: lid, lid-screws", "all back"
std::string to_text(const Verdict& verdict);

// The compiler's bench is the judge.
Verdict by_bench(const model::Model& model, const model::Procedure& procedure, unsigned variant);

// bench.lp is the judge, of all scenarios in `facts` at once; verdicts by the scenario's number.
// Nothing when gringo or clasp is missing or fails.
std::optional<std::vector<Verdict>> by_answer_set(const std::string& facts, std::size_t scenarios);

} // namespace matchmark::oracle
