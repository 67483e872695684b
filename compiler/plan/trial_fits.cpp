// Goes through a procedure once for all its tests, and notes where each begins and ceases to fit.
#include "plan/trial_fits.hpp"

#include "bench/power.hpp"
#include "bench/proof.hpp"
#include "bench/recharge.hpp"
#include "bench/running.hpp"
#include "bench/tally.hpp"
#include "bench/trial_power.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::ItemId;
using model::Step;

namespace {

// The lists of the tally that tell how a test fits.
struct Trial {
    std::size_t can = 0;     // its conditions hold, and what it proves is back
    std::size_t open = 0;    // nothing is hidden that may be
    std::size_t sources = 0; // all are back
    std::size_t dangers = 0; // none within reach
    std::size_t dead = 0;    // no supply is on
    bool done_dead = false;
    // What the test makes hot and hurts who touches it is touched no more from this point on.
    std::size_t not_before = 0;
};

// Water is thrown at what is not live, and an earth is measured before the supply is on.
bool is_done_dead(const model::Model& model, const Step& test) {
    return !test.proves.empty() &&
           std::all_of(test.proves.begin(), test.proves.end(), [&](const model::Proof& proof) {
               return proof.function.known() ? model.functions[proof.function.value].is_rating
                                             : model.kind_of(proof.item).parted_last;
           });
}

class Rehearsal {
public:
    Rehearsal(const bench::Bench& bench, const bench::Resources& resources,
              const std::vector<Step>& steps, const std::vector<const Step*>& tests)
        : bench_(bench), resources_(resources), steps_(steps), dangers_(bench::dangers(bench)),
          state_(dangers_.start), tally_(*bench.model) {
        const auto renewed = bench::renewed_by(steps);
        dead_ = tally_.add_list();
        for (const ItemId source : bench.model->sources) {
            if (bench::is_supply(bench, source))
                tally_.add(dead_, bench::asks_dead(bench, source));
        }
        plugs_ = tally_.add_list();
        for (const ItemId item : renewed) {
            for (const ItemId plug : bench::plugs_of(bench, item))
                tally_.add(plugs_, bench::asks_back(bench, plug));
        }
        all_dangers_ = tally_.add_list();
        for (const ItemId danger : dangers_.items)
            tally_.add(all_dangers_, bench::asks_kept_off(bench_, dangers_.start, danger));
        first_of_trials_ = tally_.list_count();
        for (const Step* test : tests)
            trials_.push_back(listed(*test, renewed));
        fits_.resize(tests.size());
        for (std::size_t trial = 0; trial < trials_.size(); ++trial)
            ready_at_.emplace_back(trials_[trial].not_before, trial);
        std::sort(ready_at_.begin(), ready_at_.end());
    }

    std::vector<TrialFits> run() {
        const std::size_t first = actions_before_put_back(steps_);
        std::size_t point = 0;
        if (first == 0)
            begin(0);
        for (const Step& step : steps_) {
            for (const model::Action& action : step.actions) {
                bench::carry_out(bench_, state_, resources_, action);
                ++point;
                if (point == first)
                    begin(point);
                else if (point > first)
                    go_on(point, action);
            }
        }
        return std::move(fits_);
    }

private:
    Trial listed(const Step& test, const std::vector<ItemId>& renewed) {
        Trial trial{tally_.add_list(), tally_.add_list(), tally_.add_list(), all_dangers_, dead_};
        trial.done_dead = is_done_dead(*bench_.model, test);
        trial_of_list_.insert(trial_of_list_.end(), 3, trials_.size());
        auto proven = test.proves.empty() ? renewed : bench::proven_items(bench_, test);
        if (test.proves.empty()) {
            for (const ItemId item : renewed) {
                const auto plugs = bench::plugs_asked(bench_, test, item);
                proven.insert(proven.end(), plugs.begin(), plugs.end());
            }
        }
        for (const model::Condition& condition : test.when)
            tally_.add(trial.can, bench::asks_condition(bench_, condition));
        for (const ItemId item : proven)
            tally_.add(trial.can, bench::asks_back(bench_, item));
        for (const ItemId item : bench::hidden_in_whole(bench_, dangers_.start, proven))
            tally_.add(trial.open, bench::asks_reachable(bench_, item));
        for (const ItemId source : bench::test_sources(bench_, test, renewed))
            tally_.add(trial.sources, bench::asks_restored(bench_, source));
        const auto brought_back = bench::brought_back_by(bench_, test, renewed);
        trial.not_before = last_work_on(bench::hurt_on_touch(bench_, brought_back));
        const auto meant = [&](ItemId item) { return bench::is_meant(bench_, test, item); };
        if (std::none_of(test.when.begin(), test.when.end(),
                         [&](const auto& condition) {
                             const auto& all = dangers_.items;
                             return std::binary_search(all.begin(), all.end(),
                                                       condition.item.item) &&
                                    meant(condition.item.item);
                         }) &&
            brought_back.empty())
            return trial;
        trial.dangers = tally_.add_list();
        trial_of_list_.push_back(trials_.size());
        for (const ItemId danger : dangers_.items) {
            if (!meant(danger))
                tally_.add(trial.dangers, bench::asks_kept_off(bench_, dangers_.start, danger));
        }
        const auto sources = bench::set_going_by(bench_, test, renewed);
        for (const ItemId danger : brought_back) {
            if (!meant(danger))
                tally_.add(trial.dangers,
                           bench::asks_kept_off_when_run(bench_, dangers_.start, danger, sources));
        }
        return trial;
    }

    // The point after the last action that works on any of these.
    [[nodiscard]] std::size_t last_work_on(const std::vector<ItemId>& items) const {
        if (items.empty())
            return 0;
        std::size_t point = 0;
        std::size_t last = 0;
        for (const Step& step : steps_) {
            for (const model::Action& action : step.actions) {
                ++point;
                if (action.sort != model::ActionSort::verb)
                    continue;
                for (const model::Target& target : action.targets) {
                    const auto& verb = bench_.model->kind_of(target.ref.item).verbs[target.verb];
                    if (std::any_of(items.begin(), items.end(), [&](ItemId item) {
                            return bench::is_work_on(bench_, target.ref.item, verb, item);
                        }))
                        last = point;
                }
            }
        }
        return last;
    }

    void begin(std::size_t point) {
        tally_.start(state_);
        note_all(point);
    }

    void go_on(std::size_t point, const model::Action& action) {
        std::vector<ItemId> items;
        for (const model::Target& target : action.targets) {
            items.push_back(target.ref.item);
            for (const ItemId charged : bench::charged_by(bench_, target.ref.item))
                items.push_back(charged);
        }
        const auto turned = tally_.changed(state_, items);
        if (!turned.empty() && turned.front() < first_of_trials_) {
            note_all(point);
            return;
        }
        for (const std::size_t list : turned)
            note(point, trial_of_list_[list - first_of_trials_]);
        while (next_ready_ < ready_at_.size() && ready_at_[next_ready_].first < point)
            ++next_ready_;
        for (auto at = next_ready_; at < ready_at_.size() && ready_at_[at].first == point; ++at)
            note(point, ready_at_[at].second);
    }

    void note_all(std::size_t point) {
        for (std::size_t trial = 0; trial < trials_.size(); ++trial)
            note(point, trial);
    }

    void note(std::size_t point, std::size_t trial) {
        const Trial& lists = trials_[trial];
        Fit fit = Fit::no;
        if (tally_.all_so(lists.can) && tally_.all_so(lists.open))
            fit = Fit::open;
        else if (tally_.all_so(lists.can))
            fit = tally_.all_so(plugs_) ? Fit::plugged : Fit::hidden;
        const bool powered = tally_.all_so(lists.sources) && tally_.all_so(lists.dangers) &&
                             point >= lists.not_before;
        const bool dead = lists.done_dead && tally_.all_so(lists.dead);
        add(fits_[trial].dead, {point, dead ? fit : Fit::no});
        add(fits_[trial].anyhow, {point, fit});
        add(fits_[trial].powered, {point, powered ? fit : Fit::no});
    }

    static void add(Fits& fits, FitFrom next) {
        if (!fits.empty() && fits.back().point == next.point)
            fits.pop_back();
        if (fits.empty() || fits.back().fit != next.fit)
            fits.push_back(next);
    }

    const bench::Bench& bench_;
    const bench::Resources& resources_;
    const std::vector<Step>& steps_;
    bench::Dangers dangers_;
    bench::State state_;
    bench::Tally tally_;
    std::size_t dead_ = 0;        // a list: no supply is on
    std::size_t plugs_ = 0;       // a list: those of what is renewed are back
    std::size_t all_dangers_ = 0; // a list: none within reach
    std::size_t first_of_trials_ = 0;
    std::vector<std::size_t> trial_of_list_; // from `first_of_trials_` on
    std::vector<Trial> trials_;
    std::vector<std::pair<std::size_t, std::size_t>> ready_at_; // `not_before`, and the trial
    std::size_t next_ready_ = 0;                                // into the list above
    std::vector<TrialFits> fits_;
};

} // namespace

std::size_t actions_before_put_back(const std::vector<Step>& steps) {
    std::size_t count = 0;
    for (const Step& step : steps) {
        if (step.section == model::Section::put_back)
            break;
        count += step.actions.size();
    }
    return count;
}

std::vector<TrialFits> trial_fits(const bench::Bench& bench, const bench::Resources& resources,
                                  const std::vector<Step>& steps,
                                  const std::vector<const Step*>& tests) {
    return Rehearsal(bench, resources, steps, tests).run();
}

} // namespace matchmark::plan
