// Works out which pairs all jobs bear out, and drops those that follow from others.
#include "capture/order.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace matchmark::capture {

namespace {

// For each thing worked on, what was out of the way before.
std::map<Thing, std::set<Thing>> gone_before(const Sequence& sequence) {
    std::map<Thing, std::set<Thing>> found;
    std::set<Thing> gone;
    for (const Step& step : sequence) {
        if (step.reaches && !found.contains(step.thing)) {
            found[step.thing] = gone;
            found[step.thing].erase(step.thing);
        }
        if (step.clears)
            gone.insert(step.thing);
    }
    return found;
}

// All that comes after a thing by pairs and what is enforced.
class Reach {
public:
    Reach(const std::set<Before>& pairs, const Known& known) : known_(known) {
        for (const auto& [over, under] : pairs)
            next_[over].insert(under);
        for (const auto& [over, under] : known.enforced)
            next_[over].insert(under);
    }

    void drop(const Before& pair) { next_[pair.first].erase(pair.second); }
    void keep(const Before& pair) { next_[pair.first].insert(pair.second); }

    [[nodiscard]] std::set<Thing> after(Thing from) const {
        std::set<Thing> seen;
        std::vector<Thing> open{from};
        while (!open.empty()) {
            const Thing at = open.back();
            open.pop_back();
            if (at != from && !known_.passes_on.contains(at))
                continue;
            const auto next = next_.find(at);
            if (next == next_.end())
                continue;
            for (const Thing thing : next->second) {
                if (seen.insert(thing).second)
                    open.push_back(thing);
            }
        }
        return seen;
    }

    // Is `to` among what comes after `from`? By one thing in between it mostly is, and that is
    // quickly seen.
    [[nodiscard]] bool leads(Thing from, Thing to) const {
        const auto next = next_.find(from);
        if (next == next_.end())
            return false;
        for (const Thing between : next->second) {
            const auto second = next_.find(between);
            if (between == to || (between != from && known_.passes_on.contains(between) &&
                                  second != next_.end() && second->second.contains(to)))
                return true;
        }
        return after(from).contains(to);
    }

private:
    const Known& known_;
    std::map<Thing, std::set<Thing>> next_;
};

} // namespace

std::set<Before> borne_out(const std::vector<Sequence>& sequences) {
    std::map<Thing, std::set<Thing>> all;
    for (const Sequence& sequence : sequences) {
        for (auto& [thing, gone] : gone_before(sequence)) {
            const auto known = all.find(thing);
            if (known == all.end()) {
                all.emplace(thing, std::move(gone));
                continue;
            }
            std::set<Thing> both;
            std::set_intersection(known->second.begin(), known->second.end(), gone.begin(),
                                  gone.end(), std::inserter(both, both.end()));
            known->second = std::move(both);
        }
    }
    std::set<Before> pairs;
    for (const auto& [thing, gone] : all) {
        for (const Thing over : gone)
            pairs.emplace(over, thing);
    }
    return pairs;
}

std::set<Before> not_contradicted(const std::set<Before>& pairs, const Sequence& sequence) {
    const auto seen = gone_before(sequence);
    std::set<Before> left;
    std::copy_if(pairs.begin(), pairs.end(), std::inserter(left, left.end()),
                 [&](const auto& pair) {
                     const auto under = seen.find(pair.second);
                     return under == seen.end() || under->second.contains(pair.first);
                 });
    return left;
}

std::vector<Before> reduced(const std::set<Before>& pairs, const Known& known) {
    Reach reach(pairs, known);
    std::vector<Before> kept;
    for (const Before& pair : pairs) {
        if (known.enforced.contains(pair))
            continue;
        reach.drop(pair);
        if (reach.leads(pair.first, pair.second))
            continue;
        reach.keep(pair);
        kept.push_back(pair);
    }
    return kept;
}

std::set<Before> closed(const std::set<Before>& pairs, const Known& known) {
    const Reach reach(pairs, known);
    std::set<Thing> starts;
    for (const auto* from : {&pairs, &known.enforced}) {
        for (const Before& pair : *from)
            starts.insert(pair.first);
    }
    std::set<Before> all;
    for (const Thing start : starts) {
        for (const Thing under : reach.after(start)) {
            if (under != start)
                all.emplace(start, under);
        }
    }
    return all;
}

} // namespace matchmark::capture
