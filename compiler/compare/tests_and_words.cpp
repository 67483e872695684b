// What is tried and proved, and what a step says in the author's own words and pictures.
#include "compare/findings.hpp"
#include "compare/messages.hpp"
#include "model/describe.hpp"
#include "model/prose_place.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::compare {

using model::Section;
using model::Step;

namespace {

// One thing that a test says, alike on both sides, and in words.
struct Said {
    std::string key;
    std::string words;
    friend bool operator<(const Said& left, const Said& right) { return left.key < right.key; }
};

std::vector<Said> conditions(const Pairing& pairing, const Half& half, const Step& step, bool old) {
    std::vector<Said> said;
    for (const model::Condition& condition : step.when) {
        const model::Model& model = half.side.model;
        const std::string& state = model.kind_of(condition.item.item).states[condition.state];
        said.push_back({fmt::format("{} {} {}", pairing.item_key(condition.item.item, old),
                                    fmt::join(condition.item.members, ","), state),
                        model::for_reader(model, condition.item) + " " + state});
    }
    return said;
}

std::vector<Said> proofs(const Pairing& pairing, const Half& half, const Step& step, bool old) {
    std::vector<Said> said;
    const model::Model& model = half.side.model;
    for (const model::Proof& proof : step.proves) {
        if (proof.item.known()) {
            said.push_back(
                {pairing.item_key(proof.item, old), model::for_reader(model, proof.item)});
        } else if (proof.function.known()) {
            const model::Function& function = model.functions[proof.function.value];
            said.push_back(
                {function.name, function.title.empty() ? function.name : function.title});
        }
    }
    return said;
}

std::vector<Said> tools(const Pairing& pairing, const Half& half, const Step& step, bool old) {
    std::vector<Said> said;
    for (const model::ResourceId id : step.with) {
        const auto partner =
            old ? pairing.resources.after_of[id.value] : pairing.resources.before_of[id.value];
        const model::Resource& tool = half.side.procedure.resources[id.value];
        if (partner) { // what came or went is told with the list
            said.push_back({std::to_string(old ? id.value : *partner),
                            tool.text.empty() ? tool.name : tool.text});
        }
    }
    return said;
}

class TestPair {
public:
    TestPair(const Pairing& pairing, std::size_t old, std::size_t now)
        : pairing_(pairing), before_(pairing.before.step(old)), after_(pairing.after.step(now)) {
        compare("when", conditions);
        compare("proves", proofs);
        compare("with", tools);
        if (flowing(before_.title) != flowing(after_.title)) {
            append(old_, before_.title);
            append(new_, after_.title);
        }
    }

    [[nodiscard]] const std::string& old_words() const { return old_; }
    [[nodiscard]] const std::string& new_words() const { return new_; }

private:
    static void append(std::string& text, const std::string& words) {
        text += text.empty() ? words : "; " + words;
    }

    void compare(const char* keyword, const auto& find) {
        auto before = find(pairing_, pairing_.before, before_, true);
        auto after = find(pairing_, pairing_.after, after_, false);
        std::sort(before.begin(), before.end());
        std::sort(after.begin(), after.end());
        const bool same =
            std::equal(before.begin(), before.end(), after.begin(), after.end(),
                       [](const Said& left, const Said& right) { return left.key == right.key; });
        if (!same) {
            append(old_, words(keyword, before));
            append(new_, words(keyword, after));
        }
    }

    static std::string words(const char* keyword, const std::vector<Said>& said) {
        std::vector<std::string> all;
        for (const Said& one : said) {
            all.push_back(one.words);
        }
        return fmt::format("{} {}", keyword, all.empty() ? "nothing named" : model::list(all));
    }

    const Pairing& pairing_;
    const Step& before_;
    const Step& after_;
    std::string old_;
    std::string new_;
};

void tell_test(Gathering& gathering, const Half& half, std::size_t step, bool old) {
    Change change;
    change.sort = old ? Sort::test_dropped : Sort::test_added;
    change.safety = true;
    change.subject = half.step(step).name;
    change.what =
        fmt::format("{} “{}”", old ? "there is no more test" : "a new test", half.step(step).title);
    change.steps = {half.place(step, old)};
    change.at = old ? gathering.at_old(step) : gathering.at_new(step);
    for (std::size_t i = 0; i < half.deeds.size(); ++i) {
        if (half.deeds[i].step == step) {
            (old ? gathering.told_old : gathering.told_new)[i] = gathering.changes.size();
        }
    }
    gathering.changes.push_back(std::move(change));
}

// The author's words that are no safety message.
std::string passages(const std::vector<model::Prose>& prose) {
    std::string text;
    for (const model::Prose& one : prose) {
        if (signal_of(one.kind)) {
            continue;
        }
        text += text.empty() ? "" : "\n\n";
        text += one.kind == model::ProseKind::note  ? "Note: "
                : one.kind == model::ProseKind::why ? "Why: "
                                                    : "";
        text += flowing(one.markdown);
    }
    return text;
}

// Below how many actions each of them stands: "above all: Hold the lid."
std::string places(const model::Step& step) {
    std::string text;
    for (const model::Prose& one : step.prose) {
        if (signal_of(one.kind)) {
            continue;
        }
        const std::size_t above = model::actions_above(step, one);
        text += text.empty() ? "" : "; ";
        text += (above == 0                     ? "above all: "
                 : above == step.actions.size() ? "below all: "
                                                : fmt::format("below action {}: ", above)) +
                flowing(one.markdown);
    }
    return text;
}

std::string pictures(const Pairing& pairing, const Half& half,
                     const std::vector<model::Photo>& photos, bool old, bool keyed) {
    std::string text;
    for (const model::Photo& photo : photos) {
        text += text.empty() ? "" : "; ";
        text += fmt::format("{}, “{}”", photo.path, flowing(photo.alternative_text));
        for (const model::PhotoMark& mark : photo.marks) {
            text += ", " + (keyed ? pairing.item_key(mark.item.item, old)
                                  : half.side.model.item(mark.item.item).name);
            for (const model::Point& point : mark.points) {
                text += fmt::format(" {},{}", point.x, point.y);
            }
        }
    }
    return text;
}

class StepWords {
public:
    StepWords(Gathering& gathering, std::size_t old, std::size_t now)
        : gathering_(gathering), pairing_(gathering.pairing), now_(now),
          before_(pairing_.before.step(old)), after_(pairing_.after.step(now)) {}

    void look() {
        const bool titled =
            !after_.is_test && written(pairing_.before, before_) && written(pairing_.after, after_);
        if (titled && flowing(before_.title) != flowing(after_.title)) {
            tell(Sort::step_retitled, "the step has another title", before_.title, after_.title);
        }
        const std::string before = passages(before_.prose);
        const std::string after = passages(after_.prose);
        if (before != after) {
            tell(Sort::text_changed, "what the step says", before, after);
        } else if (before_.actions.size() == after_.actions.size() &&
                   places(before_) != places(after_)) {
            tell(Sort::text_changed, "where the step says it, among its actions", places(before_),
                 places(after_));
        }
        const auto seen = [&](bool old, bool keyed) {
            return old ? pictures(pairing_, pairing_.before, before_.photos, true, keyed)
                       : pictures(pairing_, pairing_.after, after_.photos, false, keyed);
        };
        if (seen(true, true) != seen(false, true)) {
            tell(Sort::picture_changed, "what the pictures show", seen(true, false),
                 seen(false, false));
        }
        const bool derived = after_.derived && after_.section == Section::put_back;
        if (before_.name != after_.name && !derived) {
            gathering_.notes.push_back(
                {Sort::renamed,
                 false,
                 true,
                 after_.name,
                 fmt::format("the {} `{}` is now called `{}`", after_.is_test ? "test" : "step",
                             before_.name, after_.name),
                 before_.name,
                 after_.name,
                 {pairing_.after.place(now_, false)},
                 "",
                 {},
                 gathering_.at_new(now_)});
        }
    }

private:
    // A title that the compiler gives follows from what is done.
    static bool written(const Half& half, const Step& step) {
        if (step.section != Section::put_back || !step.derived) {
            return true;
        }
        const auto& guides = half.side.model.guides;
        return std::any_of(guides.begin(), guides.end(), [&](const model::Guide& guide) {
            return std::any_of(guide.steps.begin(), guide.steps.end(), [&](const Step& own) {
                return own.section == Section::put_back && own.name == step.name &&
                       own.title == step.title && !own.title.empty();
            });
        });
    }

    void tell(Sort sort, const char* what, std::string before, std::string after) {
        Change change;
        change.sort = sort;
        change.subject = after_.name;
        change.what = what;
        change.before = std::move(before);
        change.after = std::move(after);
        change.steps = {pairing_.after.place(now_, false)};
        change.at = gathering_.at_new(now_);
        gathering_.add(std::move(change));
    }

    Gathering& gathering_;
    const Pairing& pairing_;
    std::size_t now_;
    const Step& before_;
    const Step& after_;
};

} // namespace

void find_tests(Gathering& gathering) {
    const Pairing& pairing = gathering.pairing;
    for (std::size_t s = 0; s < pairing.steps.after_of.size(); ++s) {
        if (pairing.before.step(s).is_test && !pairing.steps.after_of[s]) {
            tell_test(gathering, pairing.before, s, true);
        }
    }
    for (std::size_t now = 0; now < pairing.steps.before_of.size(); ++now) {
        if (!pairing.after.step(now).is_test) {
            continue;
        }
        const auto old = pairing.steps.before_of[now];
        if (!old) {
            tell_test(gathering, pairing.after, now, false);
            continue;
        }
        const TestPair pair(pairing, *old, now);
        if (pair.old_words() == pair.new_words()) {
            continue;
        }
        Change change;
        change.sort = Sort::test_changed;
        change.safety = true;
        change.subject = pairing.after.step(now).name;
        change.what = fmt::format("the test “{}”", pairing.after.step(now).title);
        change.before = pair.old_words();
        change.after = pair.new_words();
        change.steps = {pairing.after.place(now, false)};
        change.at = gathering.at_new(now);
        for (std::size_t i = 0; i < pairing.after.deeds.size(); ++i) {
            if (pairing.after.deeds[i].step == now) {
                gathering.told_new[i] = gathering.changes.size();
            }
        }
        gathering.changes.push_back(std::move(change));
    }
}

void find_words(Gathering& gathering) {
    const Pairing& pairing = gathering.pairing;
    for (std::size_t now = 0; now < pairing.steps.before_of.size(); ++now) {
        if (const auto old = pairing.steps.before_of[now]) {
            StepWords(gathering, *old, now).look();
        }
    }
    const model::Guide& before =
        pairing.before.side.model.guide(pairing.before.side.procedure.guide);
    const model::Guide& after = pairing.after.side.model.guide(pairing.after.side.procedure.guide);
    const std::string was = passages(before.prose);
    const std::string is = passages(after.prose);
    const std::string saw = pictures(pairing, pairing.before, before.photos, true, true);
    const std::string sees = pictures(pairing, pairing.after, after.photos, false, true);
    Change change;
    change.subject = after.name;
    if (was != is) {
        change.sort = Sort::text_changed;
        change.what = "what the guide says first";
        change.before = was;
        change.after = is;
        gathering.add(change);
    }
    if (saw != sees) {
        change.sort = Sort::picture_changed;
        change.what = "the pictures at the guide's head";
        change.before = pictures(pairing, pairing.before, before.photos, true, false);
        change.after = pictures(pairing, pairing.after, after.photos, false, false);
        gathering.add(change);
    }
}

} // namespace matchmark::compare
