// Goes through a walk once and notes for each obligation where it could be proved.
#include "check/chances.hpp"

#include "bench/tally.hpp"

#include <algorithm>
#include <map>

namespace matchmark::check {

namespace {

enum class Chance : unsigned char { none, hidden, open };

// One obligation on its way through the walk.
struct Followed {
    std::size_t back = 0; // a list of the tally: all is back
    std::size_t open = 0; // a list: nothing is hidden that may be
    Chance now = Chance::none;
    std::size_t since = 0;
    Chances hidden_at;
    Chances open_at;
};

class Following {
public:
    Following(const Walk& walk, const std::vector<Obligation>& obligations)
        : walk_(walk), obligations_(obligations), tally_(walk.model) {
        for (const Obligation& obligation : obligations) {
            Followed one;
            one.back = tally_.add_list();
            one.open = tally_.add_list();
            for (const model::ItemId item : obligation.must_be_back)
                tally_.add(one.back, bench::asks_back(walk.bench, item));
            for (const model::ItemId item : obligation.may_be_hidden)
                tally_.add(one.open, bench::asks_reachable(walk.bench, item));
            all_.push_back(std::move(one));
        }
    }

    std::vector<Chances> run() {
        tally_.start(walk_.state_at(0));
        for (std::size_t i = 0; i < all_.size(); ++i)
            look(i, 0);
        for (std::size_t at = 1; at <= walk_.events.size(); ++at) {
            const auto turned =
                tally_.changed(walk_.state_at(at), walk_.history.changed_before(at));
            for (const std::size_t list : turned)
                look(list / 2, at); // two lists for each
        }
        std::vector<Chances> found;
        for (std::size_t i = 0; i < all_.size(); ++i) {
            note(i, walk_.events.size() + 1);
            Followed& one = all_[i];
            found.push_back(std::move(one.open_at.empty() ? one.hidden_at : one.open_at));
        }
        return found;
    }

private:
    void look(std::size_t i, std::size_t at) {
        Followed& one = all_[i];
        Chance now = Chance::none;
        if (tally_.all_so(one.back))
            now = tally_.all_so(one.open) ? Chance::open : Chance::hidden;
        if (now == one.now)
            return;
        note(i, at);
        one.now = now;
        one.since = at;
    }

    // What was so up to this point.
    void note(std::size_t i, std::size_t to) {
        Followed& one = all_[i];
        const std::size_t from = std::max(one.since, obligations_[i].cause + 1);
        if (one.now == Chance::none || from >= to)
            return;
        (one.now == Chance::open ? one.open_at : one.hidden_at).push_back({from, to});
    }

    const Walk& walk_;
    const std::vector<Obligation>& obligations_;
    bench::Tally tally_;
    std::vector<Followed> all_;
};

} // namespace

std::vector<Chances> chances_for(const Walk& walk, const std::vector<Obligation>& obligations) {
    if (obligations.empty())
        return {};
    return Following(walk, obligations).run();
}

std::vector<std::optional<std::size_t>> last_open_before_test(const Walk& walk,
                                                              const std::vector<Proven>& all) {
    std::vector<std::optional<std::size_t>> found(all.size());
    bench::Tally tally(walk.model);
    std::vector<std::size_t> number; // of each list of the tally
    std::vector<std::size_t> closed; // for each list, the point at which it was last hidden
    std::map<std::size_t, std::vector<std::size_t>> at_test; // event -> lists
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!all[i].by || all[i].obligation.may_be_hidden.empty())
            continue;
        at_test[*all[i].by].push_back(tally.add_list());
        for (const model::ItemId item : all[i].obligation.may_be_hidden)
            tally.add(number.size(), bench::asks_reachable(walk.bench, item));
        number.push_back(i);
    }
    closed.resize(number.size()); // those hidden from the start never lay open before it
    tally.start(walk.state_at(0));
    std::size_t at = 0;
    for (const auto& [test, lists] : at_test) {
        while (at < test) {
            ++at;
            for (const std::size_t list :
                 tally.changed(walk.state_at(at), walk.history.changed_before(at)))
                closed[list] = tally.all_so(list) ? closed[list] : at;
        }
        for (const std::size_t list : lists) {
            const std::size_t cause = all[number[list]].obligation.cause;
            if (!tally.all_so(list) && closed[list] > cause + 1)
                found[number[list]] = closed[list] - 1;
        }
    }
    return found;
}

Chances common(const Chances& some, const Chances& others) {
    Chances both;
    auto a = some.begin();
    auto b = others.begin();
    while (a != some.end() && b != others.end()) {
        const Stretch shared{std::max(a->from, b->from), std::min(a->to, b->to)};
        if (shared.from < shared.to)
            both.push_back(shared);
        if (a->to <= b->to)
            ++a;
        else
            ++b;
    }
    return both;
}

} // namespace matchmark::check
