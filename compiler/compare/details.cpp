// What is said of an action that is there before and after: torque, tool, limit, time.
#include "compare/findings.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace matchmark::compare {

using model::Action;
using model::ActionSort;
using model::Quantity;

namespace {

bool equal(double left, double right) {
    return std::abs(left - right) <= 1e-9 * std::max(std::abs(left), std::abs(right));
}

bool equal(const std::optional<Quantity>& left, const std::optional<Quantity>& right) {
    if (!left || !right) {
        return left.has_value() == right.has_value();
    }
    return left->measure == right->measure && equal(left->base, right->base) &&
           (left->measure != model::Measure::money || left->unit == right->unit);
}

bool equal(const std::optional<model::Limit>& left, const std::optional<model::Limit>& right) {
    if (!left || !right) {
        return left.has_value() == right.has_value();
    }
    return left->strict == right->strict && equal(left->least, right->least) &&
           equal(left->most, right->most);
}

std::string words(const auto& value) { return value ? model::for_reader(*value) : std::string(); }

std::string tightening_words(const Action& action) {
    std::string text = action.tightening->pattern;
    if (action.tightening->passes > 1) {
        text += text.empty() ? "" : ", ";
        text += fmt::format("{} passes", action.tightening->passes);
    }
    return text.empty() ? "in any order" : text;
}

std::string members_words(const model::Model& model, const Deed& deed) {
    return deed.target == nullptr ? "" : model::for_reader(model, deed.target->ref);
}

// Members named one by one that are all of them are no other members.
std::vector<std::uint16_t> members(const model::Model& model, const Deed& deed) {
    if (deed.target == nullptr) {
        return {};
    }
    std::vector<std::uint16_t> named = deed.target->ref.members;
    std::sort(named.begin(), named.end());
    named.erase(std::unique(named.begin(), named.end()), named.end());
    return named.size() == model.item(deed.target->ref.item).count ? std::vector<std::uint16_t>{}
                                                                   : named;
}

// One deed before and after.
class Looking {
public:
    Looking(Gathering& gathering, std::size_t old, std::size_t now)
        : gathering_(gathering), pairing_(gathering.pairing), old_(pairing_.before.deeds[old]),
          new_(pairing_.after.deeds[now]), before_(*old_.action), after_(*new_.action),
          name_(subject_of(pairing_.after, new_)) {}

    void look() {
        if (before_.verb != after_.verb) {
            look_at_verb();
            return; // what else is said of it is said of another act
        }
        look_at_members();
        look_at_tightening();
        look_at_values();
        look_at_with();
        look_at_rest();
    }

private:
    void found(Sort sort, bool safety, const std::string& what, std::string before,
               std::string after) {
        Change change;
        change.sort = sort;
        change.safety = safety || makes_safe(pairing_.after.side.model, new_);
        change.subject = name_;
        change.what = what;
        change.before = std::move(before);
        change.after = std::move(after);
        change.steps = {pairing_.after.place(new_.step, false)};
        change.at = gathering_.at_new(new_.step);
        gathering_.add(std::move(change));
    }

    [[nodiscard]] std::string title() const {
        return new_.target == nullptr
                   ? after_.verb
                   : model::for_reader(pairing_.after.side.model, new_.target->ref.item);
    }

    // The way back is derived: what is done there follows from what the author wrote.
    [[nodiscard]] bool follows() const {
        return new_.derived && new_.origin.has_value() && old_.origin.has_value();
    }

    void look_at_verb() {
        if (!follows()) {
            found(Sort::action_changed, makes_safe(pairing_.before.side.model, old_),
                  fmt::format("another act on {}", title()), pairing_.before.sentence(old_),
                  pairing_.after.sentence(new_));
        }
    }

    void look_at_members() {
        const model::Model& before = pairing_.before.side.model;
        const model::Model& after = pairing_.after.side.model;
        if (!follows() && members(before, old_) != members(after, new_)) {
            found(Sort::action_changed, false,
                  fmt::format("{} of others of the group", after_.verb),
                  members_words(before, old_), members_words(after, new_));
        }
    }

    void look_at_tightening() {
        const auto& left = *before_.tightening;
        const auto& right = *after_.tightening;
        if (!equal(left.preload, right.preload)) {
            found(Sort::torque_changed, true, fmt::format("preload of {}", title()),
                  words(left.preload), words(right.preload));
        } else if (!equal(left.torque, right.torque)) {
            found(Sort::torque_changed, true, fmt::format("torque of {}", title()),
                  words(left.torque), words(right.torque));
        }
        if (left.pattern != right.pattern || left.passes != right.passes) {
            found(Sort::tightening_changed, true, fmt::format("order of tightening of {}", title()),
                  tightening_words(before_), tightening_words(after_));
        }
    }

    void look_at_values() {
        if (!equal(before_.amount, after_.amount)) {
            found(Sort::amount_changed, false, fmt::format("amount of {}", title()),
                  words(before_.amount), words(after_.amount));
        }
        if (!equal(before_.duration, after_.duration)) {
            found(Sort::time_changed, false, fmt::format("time for {}", title()),
                  words(before_.duration), words(after_.duration));
        }
        if (!equal(before_.limit, after_.limit)) {
            found(Sort::limit_changed, true, fmt::format("limit for {}{}", title(), measured()),
                  words(before_.limit), words(after_.limit));
        }
    }

    [[nodiscard]] std::string measured() const {
        return after_.sort == ActionSort::measure ? ", " + *after_.aspect : std::string();
    }

    // Tools, spares and supplies; those that came to the list or left it are told there.
    void look_at_with() {
        for (const auto sort :
             {model::ResourceSort::tool, model::ResourceSort::spare, model::ResourceSort::supply}) {
            const std::string before = others(sort, true);
            const std::string after = others(sort, false);
            if (before != after) {
                constexpr std::array sorts{Sort::tool_changed, Sort::spare_changed,
                                           Sort::supply_changed};
                constexpr std::array names{"tool", "spare", "supply"};
                const auto index = static_cast<std::size_t>(sort);
                found(sorts[index], false, fmt::format("{} for {}", names[index], title()), before,
                      after);
            }
        }
    }

    // Of this sort, what one side uses and the other, though it is on both lists, does not.
    [[nodiscard]] std::string others(model::ResourceSort sort, bool old) const {
        const Half& half = old ? pairing_.before : pairing_.after;
        const auto& mine = old ? before_.with : after_.with;
        const auto& theirs = old ? after_.with : before_.with;
        const auto& partners = old ? pairing_.resources.after_of : pairing_.resources.before_of;
        std::vector<std::string> names;
        for (const model::ResourceId id : mine) {
            const model::Resource& resource = half.side.procedure.resources[id.value];
            const auto partner = partners[id.value];
            const bool there =
                partner && std::any_of(theirs.begin(), theirs.end(), [&](model::ResourceId other) {
                    return other.value == *partner;
                });
            if (resource.sort == sort && partner && !there) {
                names.push_back(resource.text.empty() ? resource.name : resource.text);
            }
        }
        return model::list(names);
    }

    [[nodiscard]] std::string across(bool old) const {
        const Action& action = old ? before_ : after_;
        const model::Model& model = (old ? pairing_.before : pairing_.after).side.model;
        std::vector<std::string> names;
        for (const model::ItemId item : action.across) {
            names.push_back(model::for_reader(model, item));
        }
        return action.as_marked ? "to the match marks" : model::list(names);
    }

    void look_at_rest() {
        if (flowing(*before_.means) != flowing(*after_.means)) {
            found(Sort::means_changed, true, fmt::format("means for {}", title()), *before_.means,
                  *after_.means);
        }
        if (after_.sort == ActionSort::dispose && *before_.aspect != *after_.aspect) {
            found(Sort::waste_changed, false, fmt::format("how to dispose of {}", title()),
                  *before_.aspect, *after_.aspect);
        }
        if (across(true) != across(false)) {
            found(Sort::marks_changed, false, fmt::format("match marks of {}", title()),
                  across(true), across(false));
        }
        if (flowing(before_.otherwise->text) != flowing(after_.otherwise->text)) {
            found(Sort::action_changed, true,
                  fmt::format("what to do with {} past its limit", title()),
                  before_.otherwise->text, after_.otherwise->text);
        }
        look_at_variants();
    }

    void look_at_variants() {
        const auto names = [](const Half& half, const Action& action) {
            const auto all = model::variant_names(half.side.model, action.variants);
            return all.empty() ? std::string("every variant") : model::list(all);
        };
        const std::string before = names(pairing_.before, before_);
        const std::string after = names(pairing_.after, after_);
        if (before != after) {
            found(Sort::variants_changed, false, fmt::format("on which {} is worked on", title()),
                  before, after);
        }
    }

    Gathering& gathering_;
    const Pairing& pairing_;
    const Deed& old_;
    const Deed& new_;
    const Action& before_;
    const Action& after_;
    std::string name_;
};

} // namespace

void find_details(Gathering& gathering) {
    const Pairing& pairing = gathering.pairing;
    for (std::size_t now = 0; now < pairing.after.deeds.size(); ++now) {
        const auto old = pairing.deeds.before_of[now];
        const bool both = old && pairing.after.deeds[now].action != nullptr &&
                          pairing.before.deeds[*old].action != nullptr;
        if (both) {
            Looking(gathering, *old, now).look();
        }
    }
}

} // namespace matchmark::compare
