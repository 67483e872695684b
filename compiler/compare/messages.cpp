// Safety messages that came, went, were put otherwise, or stand elsewhere than before.
#include "compare/messages.hpp"

#include "compare/findings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::compare {

using guide::GatheredMessage;

std::optional<guide::Signal> signal_of(model::ProseKind kind) {
    switch (kind) {
    case model::ProseKind::notice:
        return guide::Signal::notice;
    case model::ProseKind::caution:
        return guide::Signal::caution;
    case model::ProseKind::warning:
        return guide::Signal::warning;
    case model::ProseKind::danger:
        return guide::Signal::danger;
    case model::ProseKind::text:
    case model::ProseKind::note:
    case model::ProseKind::why:
        break;
    }
    return std::nullopt;
}

namespace {

// One message of one state of the guide.
struct Told {
    guide::Signal signal = guide::Signal::notice;
    std::string subject;
    std::string text;
    std::vector<std::size_t> steps; // of the procedure
};

// "Stored charge: b, a" and "Stored charge: a, b" are of the same things.
std::string sorted_subject(const std::string& subject) {
    const std::size_t colon = subject.find(": ");
    if (colon == std::string::npos) {
        return flowing(subject);
    }
    std::vector<std::string> words;
    std::string word;
    for (const char c : subject.substr(colon + 2) + " ") {
        if (c == ' ' || c == ',') {
            if (!word.empty() && word != "and") {
                words.push_back(word);
            }
            word.clear();
        } else {
            word += c;
        }
    }
    std::sort(words.begin(), words.end());
    return fmt::format("{}: {}", subject.substr(0, colon), fmt::join(words, " "));
}

std::vector<Told> told_by(const Half& half) {
    std::vector<Told> all;
    for (const GatheredMessage& gathered : half.side.document.safety) {
        Told told{gathered.message.signal,
                  gathered.message.subject,
                  flowing(gathered.message.markdown),
                  {}};
        for (std::size_t s = 0; s < half.told.size(); ++s) {
            const bool here =
                half.told[s] != nullptr && std::find(gathered.steps.begin(), gathered.steps.end(),
                                                     half.told[s]->number) != gathered.steps.end();
            if (here) {
                told.steps.push_back(s);
            }
        }
        all.push_back(std::move(told));
    }
    return all;
}

// Is it still said somewhere in the source, though no step shows it?
bool in_source(const model::Model& model, const std::string& text) {
    const auto has = [&](const std::vector<model::Prose>& messages) {
        return std::any_of(messages.begin(), messages.end(), [&](const model::Prose& prose) {
            return flowing(prose.markdown) == text;
        });
    };
    const auto any = [&](const auto& owners) {
        return std::any_of(owners.begin(), owners.end(),
                           [&](const auto& owner) { return has(owner.messages); });
    };
    return any(model.items) || any(model.kinds) || any(model.hazards) ||
           std::any_of(model.cautions.begin(), model.cautions.end(), [&](const auto& caution) {
               return flowing(caution.message.markdown) == text;
           });
}

class Messages {
public:
    explicit Messages(Gathering& gathering)
        : gathering_(gathering), pairing_(gathering.pairing), old_(told_by(pairing_.before)),
          new_(told_by(pairing_.after)) {
        for (std::size_t i = 0; i < gathering.changes.size(); ++i) {
            if (causes(gathering.changes[i])) {
                causes_.push_back(i);
            }
        }
    }

    void find() {
        pair();
        for (std::size_t i = 0; i < old_.size(); ++i) {
            if (const auto partner = pairs_.after_of[i]) {
                compare(old_[i], new_[*partner]);
            } else {
                tell_one(old_[i], true);
            }
        }
        for (std::size_t i = 0; i < new_.size(); ++i) {
            if (!pairs_.before_of[i]) {
                tell_one(new_[i], false);
            }
        }
    }

private:
    // Entries from which it can follow that a message is shown elsewhere.
    static bool causes(const Change& change) {
        switch (change.sort) {
        case Sort::action_added:
        case Sort::action_dropped:
        case Sort::action_moved:
        case Sort::action_changed:
        case Sort::step_added:
        case Sort::step_dropped:
        case Sort::step_moved:
        case Sort::test_added:
        case Sort::test_dropped:
        case Sort::test_moved:
        case Sort::test_changed:
        case Sort::fact_changed:
        case Sort::variants_changed:
            return true;
        default:
            return false;
        }
    }

    void pair() {
        pairs_.after_of.resize(old_.size());
        pairs_.before_of.resize(new_.size());
        const auto tie = [&](const auto& key) {
            std::vector<std::string> before;
            std::vector<std::string> after;
            for (const Told& told : old_) {
                before.push_back(key(told, true));
            }
            for (const Told& told : new_) {
                after.push_back(key(told, false));
            }
            tie_equal(pairs_, before, after);
        };
        tie([](const Told& told, bool) {
            return fmt::format("{}|{}|{}", static_cast<int>(told.signal),
                               sorted_subject(told.subject), told.text);
        });
        tie([](const Told& told, bool) { return sorted_subject(told.subject) + "|" + told.text; });
        tie([](const Told& told, bool) { return told.text; });
        // Put otherwise: about the same thing, or in the same place.
        tie([](const Told& told, bool) {
            return told.subject.empty() ? ""
                                        : fmt::format("{}|{}", static_cast<int>(told.signal),
                                                      sorted_subject(told.subject));
        });
        tie([&](const Told& told, bool old) {
            if (!told.subject.empty()) {
                return std::string();
            }
            if (told.steps.empty()) {
                return fmt::format("head {}", static_cast<int>(told.signal));
            }
            const auto step = old ? std::optional(told.steps.front())
                                  : pairing_.steps.before_of[told.steps.front()];
            return step ? fmt::format("{} {}", static_cast<int>(told.signal), *step)
                        : std::string();
        });
    }

    [[nodiscard]] std::size_t at(const Told& told, bool old) const {
        if (told.steps.empty()) {
            return 0;
        }
        return old ? gathering_.at_old(told.steps.front()) : gathering_.at_new(told.steps.front());
    }

    [[nodiscard]] std::vector<StepPlace> places(const Told& told, bool old) const {
        std::vector<StepPlace> places;
        for (const std::size_t step : told.steps) {
            places.push_back(old ? pairing_.place_of_old(step) : pairing_.after.place(step, false));
        }
        return places;
    }

    static std::string words(const Told& told) {
        return fmt::format("{}: {}{}", guide::signal_word(told.signal),
                           told.subject.empty() ? "" : told.subject + ". ", told.text);
    }

    // Goes with the nearest entry from which it follows.
    bool follows(const Told& told, bool old, const std::string& what, bool safety) {
        if (causes_.empty()) {
            return false;
        }
        const std::size_t here = at(told, old);
        std::size_t best = causes_.front();
        const auto distance = [&](std::size_t entry) {
            const std::size_t there = gathering_.changes[entry].at;
            return there > here ? there - here : here - there;
        };
        for (const std::size_t entry : causes_) {
            best = distance(entry) < distance(best) ? entry : best;
        }
        Change& change = gathering_.changes[best];
        change.with_it.push_back(what + words(told));
        change.safety = change.safety || safety;
        return true;
    }

    // An author's message goes with its step.
    [[nodiscard]] bool with_its_steps(const Told& told, bool old) const {
        const auto& partners = old ? pairing_.steps.after_of : pairing_.steps.before_of;
        return !told.steps.empty() && told.subject.empty() &&
               std::all_of(told.steps.begin(), told.steps.end(),
                           [&](std::size_t step) { return !partners[step]; });
    }

    void tell_one(const Told& told, bool old) {
        const model::Model& other = (old ? pairing_.after : pairing_.before).side.model;
        const bool still_said = !told.subject.empty() && in_source(other, told.text);
        const char* what = old ? "no longer shown: " : "now shown: ";
        // A hazard that came with an action is news; one that went with it is not.
        if (with_its_steps(told, old) ||
            (still_said && follows(told, old, what, !old && can_injure(told.signal)))) {
            return;
        }
        Change change;
        change.sort = old ? Sort::message_dropped : Sort::message_added;
        change.safety = can_injure(told.signal);
        change.what = words(told);
        fill(change, told, old);
        if (still_said) {
            change.why = old ? "the source still holds it, and no step shows it"
                             : "the source held it before, and no step showed it";
        }
        gathering_.changes.push_back(std::move(change));
    }

    void fill(Change& change, const Told& told, bool old) const {
        change.subject = told.subject;
        change.steps = places(told, old);
        if (change.subject.empty()) {
            change.subject = change.steps.empty() ? pairing_.after.side.document.name
                                                  : change.steps.front().name;
        }
        change.at = at(told, old);
    }

    void compare(const Told& old, const Told& now) {
        if (old.text != now.text || old.signal != now.signal) {
            Change change;
            change.sort = Sort::message_changed;
            change.safety = can_injure(old.signal) || can_injure(now.signal);
            change.what = old.signal == now.signal ? "a message is put otherwise"
                                                   : "a message has another signal word";
            change.before = words(old);
            change.after = words(now);
            fill(change, now, false);
            gathering_.changes.push_back(std::move(change));
            return;
        }
        compare_places(old, now);
    }

    void compare_places(const Told& old, const Told& now) {
        std::vector<std::size_t> kept; // new numbers of the old steps that are there still
        for (const std::size_t step : old.steps) {
            if (const auto partner = pairing_.steps.after_of[step]) {
                kept.push_back(*partner);
            }
        }
        std::vector<std::size_t> is;
        for (const std::size_t step : now.steps) {
            if (pairing_.steps.before_of[step]) {
                is.push_back(step);
            }
        }
        std::sort(kept.begin(), kept.end());
        if (kept == is && old.steps.empty() == now.steps.empty()) {
            return;
        }
        const bool whole = now.steps.empty(); // of the whole guide: it stands before all steps
        const bool later = !whole && (old.steps.empty() ||
                                      (!is.empty() && !kept.empty() && is.front() > kept.front()) ||
                                      (is.size() < kept.size()));
        if (!now.subject.empty() && follows(now, false, "shown in other steps: ",
                                            later && can_injure(now.signal) && old.steps.empty())) {
            return;
        }
        Change change;
        change.sort = Sort::message_moved;
        change.safety = can_injure(now.signal) && later;
        change.what = words(now);
        change.before = where(old, true);
        change.after = where(now, false);
        change.why = later ? "it is read later than before, or in fewer steps" : "";
        fill(change, now, false);
        gathering_.changes.push_back(std::move(change));
    }

    [[nodiscard]] std::string where(const Told& told, bool old) const {
        std::string text;
        for (const std::size_t step : told.steps) {
            text += text.empty() ? "" : "; ";
            text += words_of((old ? pairing_.before : pairing_.after).place(step, old));
        }
        return text.empty() ? "before all steps" : text;
    }

    Gathering& gathering_;
    const Pairing& pairing_;
    std::vector<Told> old_;
    std::vector<Told> new_;
    Pairs pairs_;
    std::vector<std::size_t> causes_;
};

std::vector<std::string> gear(const guide::Document& document) {
    std::vector<std::string> words;
    for (const guide::Provision& piece : document.protection) {
        words.push_back(piece.words);
    }
    return words;
}

void tell_gear(Gathering& gathering, const std::vector<std::string>& these,
               const std::vector<std::string>& those, bool old) {
    for (const std::string& piece : these) {
        if (std::find(those.begin(), those.end(), piece) != those.end()) {
            continue;
        }
        // With the danger that it is worn against.
        const Sort cause = old ? Sort::message_dropped : Sort::message_added;
        Change* with = nullptr;
        for (Change& change : gathering.changes) {
            const bool acts =
                change.sort == cause || change.sort == Sort::action_added ||
                change.sort == Sort::action_dropped || change.sort == Sort::step_added ||
                change.sort == Sort::step_dropped || change.sort == Sort::fact_changed;
            with = with == nullptr && acts ? &change : with;
        }
        if (with != nullptr) {
            with->with_it.push_back(
                fmt::format("{}: {}", old ? "no longer worn" : "to be worn", piece));
            with->safety = true;
            continue;
        }
        Change change;
        change.sort = old ? Sort::gear_dropped : Sort::gear_added;
        change.safety = true;
        change.subject = piece;
        change.what = piece;
        gathering.changes.push_back(std::move(change));
    }
}

} // namespace

void find_messages(Gathering& gathering) { Messages(gathering).find(); }

void find_gear(Gathering& gathering) {
    const auto before = gear(gathering.pairing.before.side.document);
    const auto after = gear(gathering.pairing.after.side.document);
    tell_gear(gathering, before, after, true);
    tell_gear(gathering, after, before, false);
}

} // namespace matchmark::compare
