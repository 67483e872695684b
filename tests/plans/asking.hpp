// What has to be so when an act is done, put together for z3 in the words of docs/semantics.md.
#pragma once

#include "plans/formula.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace matchmark::plans {

inline bool among(const std::vector<model::ItemId>& list, model::ItemId id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

class Asking {
public:
    explicit Asking(Formula& formula) : formula_(formula), model_(formula.model) {}

    // All that the deed asks for.
    std::string of(std::size_t deed);

private:
    struct Subject {
        const Deed& deed;
        Moment now;
        model::ItemId id;
        const model::Item& item;
        const model::Kind& kind;
        const model::Verb& verb;
        bool goes_out = false;                   // a part leaves its place
        std::vector<model::ItemId> could_move{}; // the part, with all that it could carry
    };
    [[nodiscard]] bool changes(const Subject& it, model::StateSet states) const {
        return it.deed.set == 0 &&
               model::contains(states, it.deed.from) != model::contains(states, it.deed.to);
    }
    [[nodiscard]] bool makes_safe(const Subject& it, model::StateSet safe) const;
    std::string in_reach(const Subject& it);
    std::string needs(const Subject& it);
    void add_loosened(const Subject& it, model::ItemId from, std::vector<std::string>& ways);
    // With what a part that goes out is in, or without.
    std::string in_touch_with(const Subject& it, model::ItemId from, bool with_carriers);
    std::string dead(const Subject& it);
    std::string cut(const Subject& it);
    std::string off(const Subject& it);
    std::string loose(const Subject& it);
    [[nodiscard]] bool is_in_a_joint(model::ItemId bond) const;
    [[nodiscard]] bool lies_in_its_groove(model::ItemId bond) const;
    std::string no_danger(const Subject& it);
    std::string meets(const Subject& it, model::ItemId danger, const model::HazardUse& use);
    std::string begins_with_safety(const Subject& it, model::ItemId danger,
                                   const model::HazardUse& use);
    std::string cuts_the_feed(const Subject& it, model::ItemId danger, const model::HazardUse& use);

    Formula& formula_;
    const model::Model& model_;
};

} // namespace matchmark::plans
