// What can be offered at a line: names that fit there, and what the bench says of them.
#pragma once

#include "serve/editor/moment.hpp"
#include "serve/editor/workspace.hpp"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace matchmark::serve {

// A list that grows, each text once.
class Offers {
public:
    explicit Offers(Range range) : range_(range) {}

    // `group`: offers of a lower one stand first; within one they stand as they were added.
    void add(const std::string& text, CompletionSort sort, std::string detail,
             const std::string& group);
    std::vector<Completion> take() { return std::move(offers_); }

private:
    Range range_;
    std::vector<Completion> offers_;
    std::set<std::string> known_;
};

// The file with the line left out that is asked about.
class Asked {
public:
    Asked(const Analysis& analysis, std::uint32_t line_begin);

    // --- names ---
    void offer_items(Offers& offers) const;
    void offer_functions(Offers& offers) const;
    void offer_guides(Offers& offers) const;
    void offer_variants(Offers& offers) const;
    void offer_faces(Offers& offers) const;
    // Kinds of the role that the declaration has; none: of any.
    void offer_kinds(Offers& offers, syntax::Keyword role) const;
    void offer_states(Offers& offers, const std::string& item) const;
    void offer_states_of_kind(Offers& offers, const std::string& kind) const;
    void offer_verbs_of(Offers& offers, const std::string& name, bool is_kind) const;
    // True when the keyword names something of the trade: a thread, a sign, a hazard.
    bool offer_trade(Offers& offers, syntax::Keyword keyword) const;
    [[nodiscard]] std::string declared_name(const syntax::Line& line) const;

    // --- by the bench ---
    // Whole lines that can be done now, in the direction of the section, and all verbs.
    void offer_actions(Offers& offers) const;
    void offer_verbs(Offers& offers) const;
    // After a verb: the items on which it can be done now, then the others with the reason.
    void offer_targets(Offers& offers, const std::string& verb,
                       const std::vector<std::string>& named) const;
    // After `with`: what fits first.
    void offer_resources(Offers& offers, const std::string& verb,
                         const std::vector<std::string>& named) const;
    // After `to`: the torque that the item declares.
    void offer_torque(Offers& offers, const std::vector<std::string>& named) const;

private:
    [[nodiscard]] const model::Model& model() const { return analysis_.done.model; }
    [[nodiscard]] std::optional<model::ItemId> item_named(const std::string& name) const;
    [[nodiscard]] const std::vector<model::Resource>& resources() const;

    const Analysis& analysis_;
    Course course_;
    std::optional<Moment> moment_;
};

} // namespace matchmark::serve
