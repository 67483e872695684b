// What is done in another order than before: whether the order matters, and why.
#include "compare/findings.hpp"
#include "compare/messages.hpp"
#include "compare/trial.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

using model::Section;

namespace {

class Order {
public:
    explicit Order(Gathering& gathering)
        : gathering_(gathering), pairing_(gathering.pairing), old_deeds_(pairing_.before.deeds),
          new_deeds_(pairing_.after.deeds) {}

    void find() {
        for (std::size_t old = 0; old < old_deeds_.size(); ++old) {
            const bool own = old_deeds_[old].action != nullptr && !old_deeds_[old].derived;
            if (own && displaced(old) && !taken_.contains(old)) {
                tell(group_of(old));
            }
        }
        for (std::size_t old = 0; old < old_deeds_.size(); ++old) {
            const bool own = old_deeds_[old].action != nullptr && !old_deeds_[old].derived;
            if (!own && displaced(old) && !taken_.contains(old) && !follows(old) && !fold(old)) {
                tell({{old}, false});
            }
        }
    }

private:
    [[nodiscard]] std::size_t now(std::size_t old) const { return *pairing_.deeds.after_of[old]; }

    // Has it another place among the deeds, or stands it in another step?
    [[nodiscard]] bool displaced(std::size_t old) const {
        if (!pairing_.deeds.after_of[old]) {
            return false;
        }
        if (pairing_.moved[old]) {
            return true;
        }
        const auto from = pairing_.steps.after_of[old_deeds_[old].step];
        const std::size_t to = new_deeds_[now(old)].step;
        // Of a step that came or went, its entry tells.
        return from && pairing_.steps.before_of[to] && *from != to;
    }

    // The old deeds with which it has changed places.
    [[nodiscard]] std::vector<std::size_t> crossed(std::size_t old) const {
        std::vector<std::size_t> result;
        for (std::size_t k = 0; k < old_deeds_.size(); ++k) {
            if (k != old && pairing_.deeds.after_of[k] && (k < old) != (now(k) < now(old))) {
                result.push_back(k);
            }
        }
        return result;
    }

    [[nodiscard]] bool told(std::size_t old) const {
        return gathering_.told_old.contains(old) || gathering_.told_new.contains(now(old)) ||
               taken_.contains(old);
    }

    [[nodiscard]] bool origin_told(std::size_t old) const {
        const auto origin = old_deeds_[old].origin;
        return origin && pairing_.deeds.after_of[*origin] && told(*origin);
    }

    // The place of what the compiler puts there follows from what the author wrote.
    [[nodiscard]] bool follows(std::size_t old) const {
        if (told(old) || origin_told(old)) {
            return true;
        }
        const auto others = crossed(old);
        return std::all_of(others.begin(), others.end(), [&](std::size_t other) {
            if (told(other) || origin_told(other)) {
                return true;
            }
            const auto left = old_deeds_[old].origin;
            const auto right = old_deeds_[other].origin;
            return left && right && pairing_.deeds.after_of[*left] &&
                   pairing_.deeds.after_of[*right] &&
                   (*left < *right) != (now(*left) < now(*right));
        });
    }

    // The compiler puts tests where they can be done: one that stands elsewhere now follows from
    // what is done otherwise.
    bool fold(std::size_t old) {
        const model::Model& model = pairing_.after.side.model;
        const bool placed = model.guide(pairing_.after.side.procedure.guide).derives_put_back;
        if (!placed) {
            return false;
        }
        for (Change& change : gathering_.changes) {
            const bool acts =
                change.sort == Sort::action_added || change.sort == Sort::action_dropped ||
                change.sort == Sort::action_moved || change.sort == Sort::action_changed ||
                change.sort == Sort::step_added || change.sort == Sort::step_dropped ||
                change.sort == Sort::step_moved || change.sort == Sort::test_changed;
            if (acts) {
                change.with_it.push_back(fmt::format("“{}” now stands in {}",
                                                     pairing_.after.sentence(new_deeds_[now(old)]),
                                                     after_what(pairing_.after, now(old), false)));
                return true;
            }
        }
        return false;
    }

    // Lines that stood one below the other, and still do.
    void append_block(std::vector<std::size_t>& line) const {
        for (std::size_t k = line.back() + 1; k < old_deeds_.size(); ++k) {
            const std::size_t last = line.back();
            const bool along = pairing_.deeds.after_of[k] && pairing_.moved[k] &&
                               now(k) == now(last) + 1 &&
                               old_deeds_[k].step == old_deeds_[last].step &&
                               new_deeds_[now(k)].step == new_deeds_[now(last)].step &&
                               !old_deeds_[k].derived && old_deeds_[k].action != nullptr;
            if (!along) {
                return;
            }
            line.push_back(k);
        }
    }

    // What moved together: all of a step, or the items of one line.
    struct Group {
        std::vector<std::size_t> deeds; // old
        bool whole_step = false;
    };
    [[nodiscard]] Group group_of(std::size_t old) const {
        const std::size_t from = old_deeds_[old].step;
        const std::size_t to = new_deeds_[now(old)].step;
        std::vector<std::size_t> step;
        std::vector<std::size_t> line;
        bool whole = pairing_.steps.after_of[from] == to && pairing_.moved[old];
        for (std::size_t k = 0; k < old_deeds_.size(); ++k) {
            if (old_deeds_[k].step != from || !pairing_.deeds.after_of[k]) {
                continue;
            }
            whole = whole && pairing_.moved[k] && new_deeds_[now(k)].step == to;
            step.push_back(k);
            const bool same_line = old_deeds_[k].action == old_deeds_[old].action &&
                                   new_deeds_[now(k)].action == new_deeds_[now(old)].action;
            if (same_line && displaced(k)) {
                line.push_back(k);
            }
        }
        if (!whole && pairing_.moved[line.back()]) {
            append_block(line);
        }
        return {whole ? step : line, whole};
    }

    void tell(const Group& moved) {
        const std::vector<std::size_t>& group = moved.deeds;
        const Deed& first = new_deeds_[now(group.front())];
        const bool test = first.action == nullptr;
        const bool step = !test && moved.whole_step;
        Change change;
        change.sort = test ? Sort::test_moved : step ? Sort::step_moved : Sort::action_moved;
        for (const std::size_t old : group) {
            taken_[old] = gathering_.changes.size();
        }
        if (test || step) {
            change.subject = pairing_.after.step_of(first).name;
            change.what = fmt::format("the {} “{}” stands elsewhere", test ? "test" : "step",
                                      pairing_.after.place(first.step, false).title);
        } else {
            for (const std::size_t old : group) {
                change.subject += change.subject.empty() ? "" : ", ";
                change.subject += subject_of(pairing_.after, new_deeds_[now(old)]);
            }
            change.what = pairing_.after.sentence(first);
        }
        change.steps = {pairing_.after.place(first.step, false)};
        change.at = gathering_.at_new(first.step);
        change.before = after_what(pairing_.before, group.front(), true);
        change.after = after_what(pairing_.after, now(group.front()), false);
        judge(group, change);
        gathering_.changes.push_back(std::move(change));
    }

    [[nodiscard]] static std::string after_what(const Half& half, std::size_t deed, bool old) {
        const std::string where = words_of(half.place(half.deeds[deed].step, old));
        if (deed == 0) {
            return where + ": first of all";
        }
        const Deed& previous = half.deeds[deed - 1];
        std::string words = half.sentence(previous);
        while (words.ends_with('.')) {
            words.pop_back();
        }
        return fmt::format("{}: after “{}”", where, words);
    }

    void judge(const std::vector<std::size_t>& group, Change& change) const {
        if (change.sort == Sort::test_moved) {
            change.safety = true;
            change.why = "a test proves what was done before it";
            return;
        }
        std::vector<std::size_t> moved;
        bool back = false;
        for (const std::size_t old : group) {
            moved.push_back(now(old));
            back =
                back || pairing_.after.step_of(new_deeds_[now(old)]).section == Section::put_back;
            change.safety =
                change.safety || makes_safe(pairing_.after.side.model, new_deeds_[now(old)]);
        }
        const Trial trial = try_orders(pairing_, moved, !back);
        if (trial.against_new) {
            change.safety = change.safety || trial.against_new->danger;
            change.why = "the new order cannot be done: " + trial.against_new->words;
        } else if (trial.against_old) {
            change.safety = change.safety || trial.against_old->danger;
            change.why = "the order as it was cannot be done now: " + trial.against_old->words;
        } else if (!trial.same_result) {
            change.why = "the two orders leave the device in different states";
        } else if (!judge_messages(group, change) && !judge_tests(group, change)) {
            change.matters = false;
            change.safety = false;
            change.why = "either order works: the bench allows both, with the same result";
        }
    }

    // Does a safety message of the author's stand otherwise to it?
    bool judge_messages(const std::vector<std::size_t>& group, Change& change) const {
        const std::size_t old_step = old_deeds_[group.front()].step;
        const std::size_t new_step = new_deeds_[now(group.front())].step;
        bool found = false;
        for (std::size_t s = 0; s < pairing_.steps.after_of.size(); ++s) {
            const auto partner = pairing_.steps.after_of[s];
            if (!partner) {
                continue;
            }
            const bool before = s <= old_step;
            const bool after = *partner <= new_step;
            for (const model::Prose& prose : pairing_.after.step(*partner).prose) {
                const auto signal = signal_of(prose.kind);
                if (!signal || before == after) {
                    continue;
                }
                found = true;
                change.safety = change.safety || (before && can_injure(*signal));
                change.why = fmt::format(
                    "the {} “{}” {}", guide::signal_word(*signal), flowing(prose.markdown),
                    before ? "is read only after it now" : "is read before it now");
            }
        }
        return found;
    }

    bool judge_tests(const std::vector<std::size_t>& group, Change& change) const {
        for (const std::size_t old : group) {
            for (const std::size_t other : crossed(old)) {
                if (old_deeds_[other].action == nullptr) {
                    const bool later = now(other) < now(old);
                    change.safety = change.safety || later;
                    change.why = fmt::format(
                        "the test “{}” {}", pairing_.after.sentence(new_deeds_[now(other)]),
                        later ? "stands before it now" : "stands after it now");
                    return true;
                }
            }
        }
        return false;
    }

    Gathering& gathering_;
    const Pairing& pairing_;
    const std::vector<Deed>& old_deeds_;
    const std::vector<Deed>& new_deeds_;
    std::map<std::size_t, std::size_t> taken_; // old deed -> its entry
};

} // namespace

void find_order(Gathering& gathering) { Order(gathering).find(); }

} // namespace matchmark::compare
