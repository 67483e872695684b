// Finds the place of each test in the put-back.
#include "plan/trials.hpp"

#include "model/step_title.hpp"
#include "plan/trial_fits.hpp"

#include <algorithm>
#include <deque>
#include <iterator>
#include <list>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace matchmark::plan {

using model::Step;

namespace {

using Place = std::list<std::size_t>::iterator; // to the number of a step

struct Gap {
    Place step;
    std::size_t action = 0; // before this one; its step's action count: after the last
};

// The steps while tests are put between their actions. A test does nothing, so that a point, a
// number of actions done, stays the same wherever tests are put.
class Order {
public:
    Order(const model::Model& model, std::vector<Step>& given)
        : model_(model), given_(given), given_count_(given.size()) {
        for (std::size_t number = 0; number < given_count_; ++number) {
            const Step& step = given[number];
            const Place place = numbers_.insert(numbers_.end(), number);
            if (!step.actions.empty())
                doing_.emplace(actions_, place);
            actions_ += step.actions.size();
            if (is_back(step))
                names_.insert(step.name);
        }
    }

    // Brings the given steps and those that came to them into their order, in place: a step that
    // was given only ever moves backwards.
    void settle() {
        given_.resize(numbers_.size());
        std::size_t to = numbers_.size();
        for (auto number = numbers_.rbegin(); number != numbers_.rend(); ++number) {
            Step& step = step_of(*number);
            if (&step != &given_[--to])
                given_[to] = std::move(step);
        }
    }

    [[nodiscard]] std::size_t end() const { return actions_; }

    // Of the put-back's gaps at this point, the last.
    std::optional<Gap> last_gap(std::size_t point) {
        Gap gap{numbers_.end()};
        if (point < actions_)
            gap = before_action(point);
        else if (!numbers_.empty())
            gap = {std::prev(numbers_.end()), step_of(numbers_.back()).actions.size()};
        return in_put_back(gap);
    }

    std::optional<Gap> first_gap(std::size_t point) {
        Gap gap{numbers_.begin()};
        if (point > 0) {
            gap = before_action(point - 1);
            ++gap.action;
        }
        while (gap.step != numbers_.end() && !is_back(step_of(*gap.step)))
            gap = {std::next(gap.step)};
        return in_put_back(gap);
    }

    void insert(const Gap& gap, std::size_t point, const Step& test) {
        if (gap.action == 0) {
            add(gap.step, test);
        } else if (gap.action == step_of(*gap.step).actions.size()) {
            // After the tests that already stand there, so that tests keep the order written.
            Place after = std::next(gap.step);
            while (after != numbers_.end() && step_of(*after).is_test)
                ++after;
            add(after, test);
        } else {
            const Place rest = split(gap);
            add(rest, test);
            doing_.emplace(point, rest);
        }
    }

    void append(const Step& test) { add(numbers_.end(), test); }

private:
    [[nodiscard]] std::string title_of(const Step& step) const {
        return model::step_title(model_, model::deeds_of(step.actions));
    }

    static bool is_back(const Step& step) { return step.section == model::Section::put_back; }

    Step& step_of(std::size_t number) {
        return number < given_count_ ? given_[number] : came_[number - given_count_];
    }

    Place add(Place before, Step step) {
        names_.insert(step.name);
        came_.push_back(std::move(step));
        return numbers_.insert(before, given_count_ + came_.size() - 1);
    }

    std::optional<Gap> in_put_back(const Gap& gap) {
        if (gap.step == numbers_.end() || !is_back(step_of(*gap.step)))
            return std::nullopt;
        return gap;
    }

    Gap before_action(std::size_t action) {
        const auto step = std::prev(doing_.upper_bound(action));
        return {step->second, action - step->first};
    }

    // Makes a step of its own of what stands after the gap.
    Place split(const Gap& gap) {
        Step& step = step_of(*gap.step);
        // A title that says what is done is, of either half, what that half does.
        const bool told_by_deeds = step.title == title_of(step);
        Step rest = step;
        const auto gap_at = static_cast<std::ptrdiff_t>(gap.action);
        step.actions.edit().resize(gap.action);
        auto& later = rest.actions.edit();
        later.erase(later.begin(), later.begin() + gap_at);
        while (names_.count(rest.name) != 0)
            rest.name += "-then";
        rest.prose.clear();
        rest.photos.clear();
        if (told_by_deeds) {
            step.title = title_of(step);
            rest.title = title_of(rest);
        }
        return add(std::next(gap.step), std::move(rest));
    }

    const model::Model& model_;
    std::vector<Step>& given_;
    std::size_t given_count_;
    std::deque<Step> came_;              // tests, and the later halves of steps
    std::list<std::size_t> numbers_;     // in order; those past the given ones are of `came_`
    std::map<std::size_t, Place> doing_; // the steps that do something, by the actions before them
    std::set<std::string> names_;        // of the put-back's steps
    std::size_t actions_ = 0;
};

// The worse of the two at each point.
Fits worse(const Fits& some, const Fits& others) {
    Fits result;
    auto a = some.begin();
    auto b = others.begin();
    while (a != some.end() || b != others.end()) {
        const bool from_a = b == others.end() || (a != some.end() && a->point <= b->point);
        const bool from_b = a == some.end() || (b != others.end() && b->point <= a->point);
        const std::size_t point = from_a ? a->point : b->point;
        a += from_a ? 1 : 0;
        b += from_b ? 1 : 0;
        const Fit fit = std::min(std::prev(a)->fit, std::prev(b)->fit);
        if (result.empty() || result.back().fit != fit)
            result.push_back({point, fit});
    }
    return result;
}

// A point, and which of the gaps there: the last, or the first.
struct Point {
    std::size_t at = 0;
    bool first_gap = false;
};

// The last point where the test can be done in every variant with nothing hiding what it proves;
// failing that, the first where it can be done, best with all plugs in.
std::optional<Point> point_of(const Fits& fits, std::size_t end) {
    for (std::size_t i = fits.size(); i-- > 0;) {
        if (fits[i].fit == Fit::open)
            return Point{i + 1 < fits.size() ? fits[i + 1].point - 1 : end, false};
    }
    for (const Fit next_best : {Fit::plugged, Fit::hidden}) {
        const auto first = std::find_if(
            fits.begin(), fits.end(), [&](const FitFrom& entry) { return entry.fit == next_best; });
        if (first != fits.end())
            return Point{first->point, true};
    }
    return std::nullopt;
}

// Where nothing hides any more what the test proves, once and for all.
std::optional<Point> first_of_last_open(const Fits& fits) {
    const auto last = std::find_if(fits.rbegin(), fits.rend(),
                                   [](const FitFrom& entry) { return entry.fit == Fit::open; });
    return last == fits.rend() ? std::nullopt : std::optional(Point{last->point, true});
}

// Of each test, in all variants that it is for; nothing where there are none.
std::vector<TrialFits> fits_of(const model::Model& model, const bench::Resources& resources,
                               model::VariantMask variants, const std::vector<Step>& steps,
                               const std::vector<Step>& tests) {
    std::vector<TrialFits> all(tests.size());
    for (unsigned v = 0; v < model::variant_count(model); ++v) {
        std::vector<std::size_t> numbers;
        std::vector<const Step*> here;
        for (std::size_t i = 0; i < tests.size(); ++i) {
            if ((((variants & tests[i].variants) >> v) & 1U) == 0)
                continue;
            numbers.push_back(i);
            here.push_back(&tests[i]);
        }
        if (here.empty())
            continue;
        auto fits = trial_fits({&model, v}, resources, steps, here);
        for (std::size_t i = 0; i < here.size(); ++i) {
            TrialFits& known = all[numbers[i]];
            const bool first = known.anyhow.empty();
            known.anyhow = first ? std::move(fits[i].anyhow) : worse(known.anyhow, fits[i].anyhow);
            known.powered =
                first ? std::move(fits[i].powered) : worse(known.powered, fits[i].powered);
            known.dead = first ? std::move(fits[i].dead) : worse(known.dead, fits[i].dead);
        }
    }
    return all;
}

} // namespace

void place_trials(const model::Model& model, const std::vector<model::Resource>& resources,
                  model::VariantMask variants, std::vector<Step>& steps,
                  const std::vector<Step>& tests) {
    const auto fits = fits_of(model, resources, variants, steps, tests);
    Order order(model, steps);
    for (std::size_t i = 0; i < tests.size(); ++i) {
        auto point = first_of_last_open(fits[i].dead);
        if (!point)
            point = point_of(fits[i].powered, order.end());
        if (!point) // its conditions stand against the supply: the checker says so
            point = point_of(fits[i].anyhow, order.end());
        std::optional<Gap> gap;
        if (point)
            gap = point->first_gap ? order.first_gap(point->at) : order.last_gap(point->at);
        if (gap)
            order.insert(*gap, point->at, tests[i]);
        else
            order.append(tests[i]); // nowhere right: the checker says why
    }
    order.settle();
}

} // namespace matchmark::plan
