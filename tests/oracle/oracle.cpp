// Compares the compiler's bench with an answer-set program of the same rules, on every sample guide
// and on mutants of it.
#include "drive/compilation.hpp"
#include "oracle/facts.hpp"
#include "oracle/mutants.hpp"
#include "oracle/random_acts.hpp"
#include "oracle/verdict.hpp"
#include "publish/json.hpp"
#include "source/disk.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fmt/core.h>
#include <map>
#include <string>
#include <vector>

using namespace matchmark;
using oracle::Verdict;

namespace {

constexpr std::size_t fewest_mutants = 300;
constexpr std::size_t rows_at_once = 24; // on one random device, judged by one program
constexpr std::size_t random_acts = 10000;
constexpr std::size_t random_acts_long = 100000;

struct Tally {
    std::size_t guides = 0;
    std::size_t mutants = 0;
    std::size_t agreed = 0;
    std::size_t disagreed = 0;
    std::map<std::string, std::size_t> verdicts; // on mutants, as both say
    bool failed = false;                         // a judge could not judge
};

std::string sort_of(const Verdict& verdict) {
    if (verdict.refused) {
        return verdict.condition;
    }
    return verdict.not_back.empty() ? "harmless" : "not back";
}

// The guide itself is scenario 0; its mutants follow.
void compare(const drive::Compilation& done, const model::Procedure& procedure, unsigned variant,
             Tally& tally) {
    std::vector<oracle::Mutant> scenarios{{"as written", procedure}};
    for (oracle::Mutant& mutant : oracle::mutants(done.model, procedure, variant)) {
        scenarios.push_back(std::move(mutant));
    }

    std::string facts;
    std::size_t acts = 0;
    for (std::size_t i = 0; i < scenarios.size(); ++i) {
        const auto root = nlohmann::json::parse(
            publish::json(done.sources, done.model, scenarios[i].procedure, variant));
        if (i == 0) {
            facts = oracle::device_facts(root);
            acts = root["acts"].size();
        }
        facts += oracle::scenario_facts(root, i);
    }

    const model::Guide& guide = done.model.guide(procedure.guide);
    const auto& variants = done.model.device.variants;
    const std::string name =
        fmt::format("{} {}{}{}", done.model.device.name, guide.name, variants.empty() ? "" : ", ",
                    variants.empty() ? "" : variants[variant]);
    const auto derived = oracle::by_answer_set(facts, scenarios.size());
    if (!derived) {
        fmt::print("{}: gringo and clasp (Debian packages of those names) gave no answer\n", name);
        tally.failed = true;
        return;
    }
    std::size_t agreed = 0;
    std::string differences;
    for (std::size_t i = 0; i < scenarios.size(); ++i) {
        const Verdict found = oracle::by_bench(done.model, scenarios[i].procedure, variant);
        const Verdict& expected = (*derived)[i];
        // `check` judges more than the bench does: without an error of its own there is none here.
        const bool checked = i != 0 || any_error(done.findings) || expected == Verdict{};
        if (found == expected && checked) {
            ++agreed;
            if (i != 0) {
                ++tally.verdicts[sort_of(expected)];
            }
            continue;
        }
        differences += fmt::format("    {}: bench.lp: {}; bench: {}{}\n", scenarios[i].what,
                                   oracle::to_text(expected), oracle::to_text(found),
                                   checked ? "" : "; check: no error");
    }
    fmt::print("{:<44}{:>6}{:>11}{:>8}{:>11}\n{}", name, acts, scenarios.size(), agreed,
               scenarios.size() - agreed, differences);
    std::fflush(stdout);
    ++tally.guides;
    tally.mutants += scenarios.size() - 1;
    tally.agreed += agreed;
    tally.disagreed += scenarios.size() - agreed;
}

void compare_file(Disk& disk, const std::string& path, Tally& tally) {
    const drive::Compilation done = drive::compile(disk, path);
    if (done.unreadable) {
        fmt::print("{}: cannot be read\n", path);
        tally.failed = true;
    }
    for (const model::Procedure& procedure : done.procedures) {
        const model::VariantMask mask = done.model.guide(procedure.guide).variants;
        for (unsigned variant = 0; variant < model::variant_count(done.model); ++variant) {
            if (((mask >> variant) & 1U) != 0) {
                compare(done, procedure, variant, tally);
            }
        }
    }
}

// One random device with its rows of acts.
void compare_rows(std::size_t number, Tally& tally, std::map<std::string, std::size_t>& verdicts,
                  std::size_t& acts) {
    support::Chance chance{std::mt19937(static_cast<std::uint32_t>(number))};
    const oracle::RandomRows made = oracle::random_rows(chance, rows_at_once);
    std::string facts;
    for (std::size_t i = 0; i < made.rows.size(); ++i) {
        const auto root =
            nlohmann::json::parse(publish::json(SourceMap{}, made.model, made.rows[i], 0));
        if (i == 0)
            facts = oracle::device_facts(root);
        facts += oracle::scenario_facts(root, i);
    }
    const auto derived = oracle::by_answer_set(facts, made.rows.size());
    if (!derived) {
        fmt::print("random device {}: no answer\n", number);
        tally.failed = true;
        return;
    }
    for (std::size_t i = 0; i < made.rows.size(); ++i) {
        const Verdict found = oracle::by_bench(made.model, made.rows[i], 0);
        const Verdict& expected = (*derived)[i];
        // What is not back at the end is compared with it.
        ++verdicts[expected.refused ? expected.condition : "allowed"];
        if (found == expected) {
            ++tally.agreed;
            continue;
        }
        ++tally.disagreed;
        fmt::print("random device {}, row {}: bench.lp: {}; bench: {}\n", number, i,
                   oracle::to_text(expected), oracle::to_text(found));
    }
    acts += made.acts;
}

// All acts but the last of a row are allowed, so that each act of each row is compared.
void compare_random_acts(Tally& tally) {
    const std::size_t wanted =
        std::getenv("MATCHMARK_LONG") == nullptr ? random_acts : random_acts_long;
    std::map<std::string, std::size_t> verdicts;
    std::size_t acts = 0;
    std::size_t devices = 0;
    for (; acts < wanted && !tally.failed; ++devices)
        compare_rows(devices, tally, verdicts, acts);
    std::string told;
    for (const auto& [verdict, count] : verdicts)
        told += fmt::format("{}{} {}", told.empty() ? "" : ", ", verdict, count);
    fmt::print("{} random acts on {} random devices, the last of each row by verdict: {}.\n", acts,
               devices, told);
}

void print_closing(const Tally& tally) {
    std::string verdicts;
    for (const auto& [verdict, count] : tally.verdicts) {
        verdicts += fmt::format("{}{} {}", verdicts.empty() ? "" : ", ", verdict, count);
    }
    fmt::print("\nThe mutants by verdict: {}.\n", verdicts);
    fmt::print("{} guides by variant, {} mutants: agreed {}, disagreed {}.\n", tally.guides,
               tally.mutants, tally.agreed, tally.disagreed);
    if (tally.mutants < fewest_mutants) {
        fmt::print("Too few mutants: {} are asked for.\n", fewest_mutants);
    }
}

} // namespace

int main() {
    const auto disk = real_disk();
    fmt::print("{:<44}{:>6}{:>11}{:>8}{:>11}\n", "guide", "acts", "scenarios", "agreed",
               "disagreed");
    Tally tally;
    for (const char* folder : {"samples", "tests/oracle/devices"}) {
        const std::string root = fmt::format("{}/{}", MATCHMARK_SOURCE_DIR, folder);
        const auto listed = disk->list(root, ".mmk");
        const auto* files = std::get_if<std::vector<std::string>>(&listed);
        if (files == nullptr) {
            fmt::print("{}: cannot be read\n", folder);
            return EXIT_FAILURE;
        }
        for (const std::string& file : *files) {
            compare_file(*disk, fmt::format("{}/{}", root, file), tally);
        }
    }
    print_closing(tally);
    compare_random_acts(tally);
    const bool fine = !tally.failed && tally.disagreed == 0 && tally.mutants >= fewest_mutants;
    return fine ? EXIT_SUCCESS : EXIT_FAILURE;
}
