// Steps and actions that came or went. What the compiler derives from a line goes with that line.
#include "compare/findings.hpp"
#include "compare/messages.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

using model::Section;
using model::Step;

namespace {

// One state of the guide, looked at for what the other does not have.
class OneSided {
public:
    OneSided(Gathering& gathering, bool old)
        : gathering_(gathering), pairing_(gathering.pairing), old_(old),
          half_(old ? pairing_.before : pairing_.after),
          steps_(old ? pairing_.steps.after_of : pairing_.steps.before_of),
          deeds_(old ? pairing_.deeds.after_of : pairing_.deeds.before_of),
          told_(old ? gathering.told_old : gathering.told_new) {}

    void find_whole_steps() {
        for (std::size_t s = 0; s < steps_.size(); ++s) {
            if (!steps_[s] && !half_.step(s).is_test) {
                tell_step(s);
            }
        }
    }

    void find_deeds() {
        for (std::size_t i = 0; i < deeds_.size(); ++i) {
            if (deeds_[i] || told_.contains(i) || half_.deeds[i].action == nullptr) {
                continue;
            }
            if (!fold(i)) {
                tell_action(i);
            }
        }
    }

private:
    // The step of the way in that a derived one takes back.
    [[nodiscard]] std::optional<std::size_t> origin_of(std::size_t step) const {
        for (std::size_t s = 0; s < step; ++s) {
            const bool opening = half_.step(s).section != Section::put_back;
            if (opening && half_.step(s).name == half_.step(step).name) {
                return s;
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] std::size_t at(std::size_t step) const {
        return old_ ? gathering_.at_old(step) : gathering_.at_new(step);
    }

    [[nodiscard]] bool weighs(const Deed& deed) const {
        return makes_safe(half_.side.model, deed) || deed.action->tightening->torque ||
               deed.action->sort == model::ActionSort::measure;
    }

    // A derived step goes with the one that it takes back.
    bool fold_step(std::size_t s) {
        const auto origin = origin_of(s);
        const bool derived = half_.step(s).derived && half_.step(s).section == Section::put_back;
        if (!derived || !origin) {
            return false;
        }
        const auto entry = entries_.find(*origin);
        if (entry != entries_.end()) {
            fold_deeds(s, entry->second);
            return true;
        }
        // Its actions are told one by one, with those that they take back.
        return half_.step(s).prose.empty();
    }

    void fold_deeds(std::size_t step, std::size_t entry) {
        for (std::size_t i = 0; i < half_.deeds.size(); ++i) {
            if (half_.deeds[i].step == step && !deeds_[i] && !told_.contains(i)) {
                told_[i] = entry;
                gathering_.changes[entry].with_it.push_back(
                    fmt::format("{}: {}", way_back(), half_.sentence(half_.deeds[i])));
            }
        }
    }

    [[nodiscard]] const char* way_back() const {
        return old_ ? "the way back no longer has" : "on the way back";
    }

    // The second half of a step that the compiler has split, for a test in its midst.
    [[nodiscard]] bool only_split(std::size_t s) const {
        for (std::size_t i = 0; i < half_.deeds.size(); ++i) {
            if (half_.deeds[i].step == s && !deeds_[i]) {
                return false;
            }
        }
        return half_.step(s).section == Section::put_back && half_.step(s).derived &&
               half_.step(s).name.ends_with("-then");
    }

    void tell_step(std::size_t s) {
        if (only_split(s) || fold_step(s)) {
            return;
        }
        const Step& step = half_.step(s);
        Change change;
        change.sort = old_ ? Sort::step_dropped : Sort::step_added;
        change.subject = step.name;
        change.what = fmt::format("{} “{}”", old_ ? "there is no more step" : "a new step",
                                  half_.place(s, old_).title);
        change.steps = {half_.place(s, old_)};
        change.at = at(s);
        const std::size_t entry = gathering_.changes.size();
        const model::Action* last = nullptr;
        for (std::size_t i = 0; i < half_.deeds.size(); ++i) {
            const Deed& deed = half_.deeds[i];
            if (deed.step != s) {
                continue;
            }
            if (!deeds_[i]) {
                told_[i] = entry;
                change.safety = change.safety || weighs(deed);
            }
            if (deed.action != last) {
                change.with_it.push_back((deeds_[i] ? elsewhere(i) : "") + half_.sentence(deed));
            }
            last = deed.action;
        }
        for (const model::Prose& prose : step.prose) {
            const auto signal = signal_of(prose.kind);
            change.safety = change.safety || (signal && can_injure(*signal));
            change.with_it.push_back(flowing(prose.markdown));
        }
        gathering_.changes.push_back(std::move(change));
        entries_[s] = entry;
    }

    [[nodiscard]] std::string elsewhere(std::size_t deed) const {
        return fmt::format(
            "{}: ", old_ ? "now in " + words_of(pairing_.after.place(
                                           pairing_.after.deeds[*deeds_[deed]].step, false))
                         : "until now in " + words_of(pairing_.before.place(
                                                 pairing_.before.deeds[*deeds_[deed]].step, true)));
    }

    // Goes with the line that it takes back, when that came or went as well.
    bool fold(std::size_t i) {
        const auto origin = half_.deeds[i].origin;
        const auto entry = origin ? told_.find(*origin) : told_.end();
        if (entry == told_.end()) {
            return false;
        }
        told_[i] = entry->second;
        gathering_.changes[entry->second].with_it.push_back(
            fmt::format("{}: {}", way_back(), half_.sentence(half_.deeds[i])));
        return true;
    }

    void tell_action(std::size_t i) {
        const Deed& deed = half_.deeds[i];
        Change change;
        change.sort = old_ ? Sort::action_dropped : Sort::action_added;
        change.what = half_.sentence(deed);
        const auto partner = steps_[deed.step];
        change.steps = {old_ && partner ? pairing_.after.place(*partner, false)
                                        : half_.place(deed.step, old_)};
        change.at = at(deed.step);
        const std::size_t entry = gathering_.changes.size();
        for (std::size_t k = i; k < half_.deeds.size(); ++k) {
            const Deed& other = half_.deeds[k];
            if (other.action == deed.action && !deeds_[k] && !told_.contains(k)) {
                change.subject += change.subject.empty() ? "" : ", ";
                change.subject += subject_of(half_, other);
                change.safety = change.safety || weighs(other);
                told_[k] = entry;
            }
        }
        if (deed.derived) {
            change.why = "the compiler derives it";
        }
        gathering_.changes.push_back(std::move(change));
    }

    Gathering& gathering_;
    const Pairing& pairing_;
    bool old_;
    const Half& half_;
    const std::vector<std::optional<std::size_t>>& steps_;
    const std::vector<std::optional<std::size_t>>& deeds_;
    std::map<std::size_t, std::size_t>& told_;
    std::map<std::size_t, std::size_t> entries_; // by step
};

} // namespace

void find_steps(Gathering& gathering) {
    for (const bool old : {true, false}) {
        OneSided(gathering, old).find_whole_steps();
    }
}

void find_actions(Gathering& gathering) {
    for (const bool old : {true, false}) {
        OneSided(gathering, old).find_deeds();
    }
}

} // namespace matchmark::compare
