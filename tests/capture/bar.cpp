// 500 random devices, each captured from 1, 2, 4 and 8 random jobs: no job seen is contradicted,
// each is allowed, its guide checks clean, and what is assumed shrinks.
#include "capture/random_notes.hpp"

#include "capture/write.hpp"
#include "drive/capturing.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace matchmark::capture_test {

namespace {

using capture::Before;
using capture::Description;
using model::ItemId;

constexpr std::size_t devices = 500;
constexpr std::array<std::size_t, 4> job_counts{1, 2, 4, 8};

struct Tally {
    double pairs = 0; // of things of the first job: may be in the way
    double true_pairs = 0;
    double lines = 0; // in the device's file
};

using NamedPair = std::pair<std::string, std::string>;

// What the first job's acts are on, as the true device calls it, by the captured name.
std::map<std::string, ItemId> true_names(const Description& all, const std::vector<Work>& works) {
    std::map<std::string, ItemId> names;
    for (std::size_t j = 0; j < works.size(); ++j) {
        const auto& acts = all.jobs[j].acts;
        REQUIRE(acts.size() == works[j].size());
        for (std::size_t i = 0; i < acts.size(); ++i) {
            const auto [known, is_new] =
                names.emplace(all.pieces[acts[i].thing].name, works[j][i].item);
            // The same words mean the same thing in every job.
            REQUIRE(known->second == works[j][i].item);
            CHECK_FALSE(acts[i].added);
        }
    }
    return names;
}

// Pairs among the things of the first job that the jobs bear out.
std::set<NamedPair> pairs_of_first(const model::Model& kinds, const Description& all) {
    std::vector<capture::Sequence> sequences;
    for (const capture::Job& job : all.jobs)
        sequences.push_back(capture::sequence_of(kinds, all, job));
    std::set<capture::Thing> first;
    for (const capture::Done& act : all.jobs.front().acts)
        first.insert(act.thing);
    std::set<NamedPair> pairs;
    for (const Before& pair : capture::borne_out(sequences)) {
        if (first.contains(pair.first) && first.contains(pair.second))
            pairs.emplace(all.pieces[pair.first].name, all.pieces[pair.second].name);
    }
    return pairs;
}

// Is there no way to work on `under` while `over` is untouched?
bool truly_before(const model::Model& truth, ItemId over, ItemId under) {
    const bench::Bench on{&truth, 0};
    bench::State state = bench::assembled(on);
    for (bool moved = true; moved;) {
        moved = false;
        for (std::uint32_t i = 0; i < truth.items.size(); ++i) {
            const ItemId item{i};
            const auto& verbs = truth.kind_of(item).verbs;
            for (std::uint16_t v = 0; v < verbs.size() && item != over; ++v) {
                const model::StateId now = bench::state_of(on, state, item, 0, 0);
                if (verbs[v].to <= now || !model::contains(verbs[v].from, now) ||
                    bench::refusal(on, state, {item, v, {}, false}))
                    continue;
                if (item == under)
                    return false;
                bench::perform(on, state, {item, v, {}, false});
                moved = true;
            }
        }
    }
    return true;
}

class Judge {
public:
    explicit Judge(const drive::Compilation& library) : library_(library) {}

    // False when the device does not come apart at all.
    bool judge(std::size_t seed);
    std::array<Tally, job_counts.size()> tallies;
    std::size_t guides = 0;

private:
    drive::Captured capture_first(const std::vector<std::string>& texts, std::size_t count);
    void allow_all(const drive::Captured& captured, const std::vector<Work>& works);
    void write_guides(drive::Captured& captured, bool all);

    const drive::Compilation& library_;
    MapDisk disk_;
};

drive::Captured Judge::capture_first(const std::vector<std::string>& texts, std::size_t count) {
    std::vector<drive::NotesText> notes;
    for (std::size_t i = 0; i < count; ++i)
        notes.push_back({fmt::format("notes-{}.txt", i + 1), texts[i]});
    return drive::captured_device(disk_, library_, notes, ".");
}

// Every job seen can be done on the captured device: nothing inferred contradicts it.
void Judge::allow_all(const drive::Captured& captured, const std::vector<Work>& works) {
    for (const Diagnostic& finding : captured.findings) {
        FAIL(finding.message, ": ", captured.base.sources.slice(finding.primary), "\n",
             captured.device_text);
    }
    REQUIRE_FALSE(captured.refused);
    const model::Model& device = captured.device.model;
    for (const capture::Job& job : captured.description.jobs) {
        const bench::Bench on{&device, 0};
        bench::State state = bench::assembled(on);
        for (const capture::Done& act : job.acts) {
            const auto& name = captured.description.pieces[act.thing].name;
            const auto item =
                std::find_if(device.items.begin(), device.items.end(),
                             [&](const model::Item& one) { return one.name == name; });
            REQUIRE(item != device.items.end());
            const ItemId id{static_cast<std::uint32_t>(item - device.items.begin())};
            REQUIRE_FALSE(bench::apply(on, state, {id, act.verb, {}, false}));
        }
    }
    REQUIRE(captured.description.jobs.size() == works.size());
}

void Judge::write_guides(drive::Captured& captured, bool all) {
    const std::vector<capture::Job> jobs = captured.description.jobs;
    for (std::size_t i = all ? 0 : jobs.size() - 1; i < jobs.size(); ++i) {
        drive::add_guide(disk_, captured, jobs[i], ".");
        ++guides;
    }
    CHECK(captured.guides.size() == (all ? jobs.size() : 1));
    for (const auto& unclean : captured.unclean) {
        for (const Diagnostic& finding : unclean.findings) {
            if (finding.severity != Severity::advice)
                FAIL_CHECK(finding.rule, ": ", finding.message, "\n", captured.device_text,
                           captured.guides.back().text);
        }
    }
}

bool Judge::judge(std::size_t seed) {
    Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
    const std::string truth_text = random_device_text(chance);
    const drive::Compilation truth = drive::compile(disk_, "truth.mmk", &truth_text);
    REQUIRE_FALSE(any_error(truth.findings)); // a part may hide what holds it, and stay
    std::vector<Work> works;
    std::vector<std::string> texts;
    for (std::size_t j = 0; j < job_counts.back(); ++j) {
        Work work = random_job(chance, truth.model);
        if (work.empty())
            return false;
        texts.push_back(notes_of(chance, truth.model, work));
        works.push_back(std::move(work));
    }
    std::set<NamedPair> before;
    for (std::size_t k = 0; k < job_counts.size(); ++k) {
        CAPTURE(seed);
        CAPTURE(job_counts[k]);
        CAPTURE(truth_text);
        drive::Captured captured = capture_first(texts, job_counts[k]);
        const std::vector<Work> seen(works.begin(),
                                     works.begin() + static_cast<std::ptrdiff_t>(job_counts[k]));
        allow_all(captured, seen);
        const auto names = true_names(captured.description, seen);
        const auto pairs = pairs_of_first(library_.model, captured.description);
        for (const NamedPair& pair : pairs) {
            tallies[k].pairs += 1;
            if (truly_before(truth.model, names.at(pair.first), names.at(pair.second)))
                tallies[k].true_pairs += 1;
            CHECK((k == 0 || before.contains(pair)));
        }
        before = pairs;
        tallies[k].lines += static_cast<double>(captured.description.assumed.size());
        if (k == 0 || k + 1 == job_counts.size())
            write_guides(captured, seed % 20 == 0);
    }
    return true;
}

} // namespace

TEST_CASE("what is inferred from random jobs allows them all, and shrinks") {
    MapDisk empty;
    const std::string nothing;
    const drive::Compilation library = drive::compile(empty, "library", &nothing);
    Judge judge(library);
    std::size_t judged = 0;
    for (std::size_t seed = 1; judged < devices; ++seed)
        judged += judge.judge(seed) ? 1 : 0;
    std::string table = "  jobs  assumed pairs  truly so  lines written\n";
    for (std::size_t k = 0; k < job_counts.size(); ++k) {
        const Tally& tally = judge.tallies[k];
        table +=
            fmt::format("  {:>4}  {:>13.1f}  {:>8.1f}  {:>13.1f}\n", job_counts[k],
                        tally.pairs / devices, tally.true_pairs / devices, tally.lines / devices);
        if (k > 0) {
            CHECK(tally.pairs <= judge.tallies[k - 1].pairs);
            // What is truly so is never given up.
            CHECK(tally.true_pairs == judge.tallies[k - 1].true_pairs);
        }
    }
    MESSAGE(devices << " random devices, pairs among what the first job took off, mean:\n"
                    << table << "  " << judge.guides << " guides checked clean\n");
}

} // namespace matchmark::capture_test
