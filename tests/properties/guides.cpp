// For devices made at random: the way in can be gone on the bench; its draft checks clean, and
// `tidy` has nothing to do in it; written out in full it is the same work; a layout is no meaning.
#include "properties/properties.hpp"

#include "bench/bench.hpp"
#include "drive/commands.hpp"
#include "drive/compilation.hpp"
#include "drive/new_text.hpp"
#include "plan/way_in/way_in.hpp"
#include "properties/random_text.hpp"
#include "publish/json.hpp"

#include <algorithm>
#include <cstdlib>
#include <fmt/core.h>
#include <nlohmann/json.hpp>
#include <sstream>

namespace matchmark::properties {

namespace {

using model::ItemId;
using support::Chance;

constexpr std::size_t devices = 150;
constexpr std::size_t devices_long = 3000;
constexpr std::size_t parts_of_each = 3;
constexpr const char* device_path = "truth.mmk";
constexpr const char* guide_path = "guide.mmk";
constexpr const char* expanded_path = "expanded.mmk";

struct Tally {
    std::size_t devices = 0;
    std::size_t faulty = 0; // devices that the checker refuses: not used
    std::size_t ways = 0;
    std::size_t none = 0; // parts without a way in
    std::size_t drafts = 0;
    std::size_t acts = 0; // of the written out guides
    std::size_t failed = 0;
};

struct Trying {
    std::size_t seed;
    MapDisk disk;
    Tally& tally;

    void complain(const std::string& part, const std::string& what) {
        ++tally.failed;
        if (tally.failed < 10)
            fmt::print("device {}, {}: {}\n{}\n", seed, part, what, disk.files[device_path]);
    }
};

// The acts of a guide with the states that they lead to; where a line stands is no part of it.
std::string work_of(const drive::Compilation& done, unsigned variant) {
    auto root = nlohmann::json::parse(
        publish::json(done.sources, done.model, done.procedures.front(), variant));
    std::string work;
    for (auto& act : root["acts"]) {
        act.erase("place");
        act.erase("derived");
        act.erase("step");
        work += act.dump() + "\n";
    }
    return work;
}

// Every act of the way in is allowed when its turn comes, and the part is out in the end.
bool can_be_gone(const bench::Bench& on, const plan::WayIn& way, ItemId goal) {
    bench::State state = bench::assembled(on);
    for (const plan::PlannedAct& planned : way.acts) {
        if (bench::apply(on, state, planned.act))
            return false;
    }
    return !bench::present(on, state, goal);
}

// The written out guide: accepted, the same work, and itself written out word for word.
void try_expanded(Trying& trying, const std::string& part, const drive::Compilation& guide) {
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{trying.disk, in, out, err, false};
    if (drive::expand({guide_path, expanded_path}, terminal) != drive::exit_clean)
        return trying.complain(part, "cannot be written out\n" + err.str());
    const drive::Compilation expanded = drive::compile(trying.disk, expanded_path);
    if (any_error(expanded.findings))
        return trying.complain(part, "written out, it has an error: " +
                                         expanded.findings.front().message);
    const model::VariantMask mask = guide.model.guide(guide.procedures.front().guide).variants;
    for (unsigned v = 0; v < model::variant_count(guide.model); ++v) {
        if (((mask >> v) & 1U) == 0)
            continue;
        const std::string work = work_of(guide, v);
        trying.tally.acts += static_cast<std::size_t>(std::count(work.begin(), work.end(), '\n'));
        if (work != work_of(expanded, v))
            return trying.complain(part, "written out, it is other work");
    }
    const std::string first = trying.disk.files[expanded_path];
    static_cast<void>(drive::expand({expanded_path, expanded_path}, terminal));
    if (trying.disk.files[expanded_path] != first)
        trying.complain(part, "written out twice, it is another text");
}

void try_draft(Trying& trying, const std::string& part, bool has_way) {
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{trying.disk, in, out, err, false};
    trying.disk.files.erase(guide_path);
    const int code = drive::draft_guide({device_path, "replace " + part, "", guide_path}, terminal);
    if (trying.disk.files.count(guide_path) == 0) {
        if (has_way || err.str().empty())
            trying.complain(part, "not drafted: " + err.str());
        return;
    }
    ++trying.tally.drafts;
    const drive::Compilation guide = drive::compile(trying.disk, guide_path);
    if (code != drive::exit_clean || guide.procedures.empty() || any_error(guide.findings))
        return trying.complain(
            part, "the draft has an error: " +
                      (guide.findings.empty() ? err.str() : guide.findings.front().message) + "\n" +
                      trying.disk.files[guide_path]);
    const std::string text = trying.disk.files[guide_path];
    if (drive::tidied_text(text) != text)
        return trying.complain(part, "`tidy` changes the draft");
    try_expanded(trying, part, guide);
}

// Another layout of device and draft is the same text when tidied, and the same work.
void try_layout(Trying& trying, Chance& chance) {
    for (const char* path : {device_path, guide_path}) {
        const std::string text = trying.disk.files[path];
        const std::string tidied = drive::tidied_text(text);
        const std::string other = another_layout(chance, text);
        if (drive::tidied_text(other) != tidied)
            return trying.complain(path, "tidied, another layout is another text:\n" + other +
                                             "\n--- tidied\n" + drive::tidied_text(other));
        if (path != guide_path)
            continue;
        const auto work = [&](const std::string& of) {
            const drive::Compilation done = drive::compile(trying.disk, path, &of);
            return any_error(done.findings) ? "an error" : work_of(done, 0);
        };
        if (work(text) != work(other) || work(text) != work(tidied))
            trying.complain(path, "another layout is other work");
    }
}

void try_device(std::size_t seed, Tally& tally) {
    Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
    Trying trying{seed, {}, tally};
    trying.disk.files[device_path] = random_text(chance);
    const drive::Compilation done = drive::compile(trying.disk, device_path);
    ++tally.devices;
    if (any_error(done.findings)) {
        ++tally.faulty;
        return;
    }
    for (std::size_t n = 0; n < parts_of_each; ++n) {
        const ItemId id{static_cast<std::uint32_t>(chance.below(done.model.items.size()))};
        const model::Item& item = done.model.item(id);
        if (item.role != model::Role::part || item.name == "base")
            continue;
        // The first variant that has the part, as the drafter takes it.
        unsigned variant = 0;
        while (((item.variants >> variant) & 1U) == 0)
            ++variant;
        const bench::Bench on{&done.model, variant};
        const plan::WayIn way = plan::way_in(on, {{id}, false});
        const bool has_way = way.proof == plan::Proof::least || way.proof == plan::Proof::bounded;
        tally.ways += has_way ? 1 : 0;
        tally.none += has_way ? 0 : 1;
        if (has_way && !can_be_gone(on, way, id))
            trying.complain(item.name, "the way in cannot be gone");
        try_draft(trying, item.name, has_way);
    }
    if (trying.disk.files.count(guide_path) != 0)
        try_layout(trying, chance);
}

} // namespace

bool guides_hold() {
    const std::size_t wanted = std::getenv("MATCHMARK_LONG") == nullptr ? devices : devices_long;
    Tally tally;
    for (std::size_t seed = 0; seed < wanted; ++seed)
        try_device(seed, tally);
    fmt::print("{} devices as text ({} with an error of their own), {} ways in gone, {} parts "
               "without one, {} drafts written out ({} acts), {} failed\n",
               tally.devices, tally.faulty, tally.ways, tally.none, tally.drafts, tally.acts,
               tally.failed);
    return tally.failed == 0 && tally.drafts > wanted / 4 && tally.faulty < wanted / 4;
}

} // namespace matchmark::properties
