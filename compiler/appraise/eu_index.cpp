// Scores, and in words what each of them comes from.
#include "appraise/eu_index.hpp"

#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::appraise {

using guide::PartScore;
using guide::RepairIndex;
using guide::ScoreRange;

namespace {

constexpr ScoreRange full{best_score, best_score};
constexpr ScoreRange open_range{worst_score, best_score};
constexpr ScoreRange lowest{worst_score, worst_score};

const std::string& word_of(IndexPart part) {
    return model::index_part_words()[static_cast<std::size_t>(part)];
}

std::vector<std::string> in_words(const std::vector<IndexPart>& parts) {
    std::vector<std::string> words;
    for (const IndexPart part : parts)
        words.push_back(model::spaced(word_of(part)));
    return words;
}

struct Scored {
    ScoreRange score;
    std::string because;
};

Scored depth_of(const PartFacts& part) {
    if (!part.reached)
        return {lowest, "no way out"};
    if (!part.known)
        return {open_range, "no way found in the time given"};
    const unsigned steps = part.steps + (part.authorised_remotely ? authorisation_steps : 0);
    const int score = depth_score(steps);
    std::string words = model::counted(steps, "step");
    if (part.authorised_remotely)
        words += fmt::format(", {} of them for the remote authorisation", authorisation_steps);
    return {{score, score}, words};
}

Scored fastening_of(const PartFacts& part) {
    static constexpr std::array<const char*, 3> names{"reusable", "resupplied with the spare part",
                                                      "removable, not reusable"};
    if (!part.reached)
        return {lowest, "no way out"};
    if (!part.known)
        return {open_range, "no way found in the time given"};
    const int score = fastening_score(part.fastening);
    std::string words = names[static_cast<std::size_t>(part.fastening)];
    if (!part.worst_fastener.empty())
        words = part.worst_fastener + ": " + words;
    return {{score, score}, words};
}

Scored tool_of(const PartFacts& part) {
    static constexpr std::array<const char*, 5> names{"no tool", "basic tool",
                                                      "comes with the spare part",
                                                      "comes with the product", "to be bought"};
    // It is a tool, so at best a basic one.
    const int best_of_unknown = tool_score(ToolSource::basic);
    if (!part.reached)
        return {lowest, "no way out"};
    if (!part.known)
        return {open_range, "no way found in the time given"};
    const int score = tool_score(part.tool);
    std::string words = names[static_cast<std::size_t>(part.tool)];
    if (!part.worst_tool.empty())
        words = part.worst_tool + ": " + words;
    if (!part.undeclared_tool.empty() && score > worst_score)
        return {{worst_score, std::min(score, best_of_unknown)},
                part.undeclared_tool + ": its class is not declared"};
    return {{score, score}, words};
}

// Of several instances the lowest counts: of ranges, the lowest of each bound.
template <class Score>
Scored of_instances(const std::vector<PartFacts>& instances, const Score& score) {
    Scored worst{full, "the product has none"};
    bool first = true;
    for (const PartFacts& instance : instances) {
        Scored one = score(instance);
        if (instances.size() > 1)
            one.because = instance.title + ": " + one.because;
        const bool lower =
            one.score.lowest < worst.score.lowest ||
            (one.score.lowest == worst.score.lowest && one.score.highest < worst.score.highest);
        const int highest = std::min(worst.score.highest, one.score.highest);
        if (first || lower)
            worst = one;
        worst.score.highest = highest;
        first = false;
    }
    return worst;
}

PartScore part_score(const IndexFacts& facts, IndexPart part) {
    const auto& instances = facts.parts[static_cast<std::size_t>(part)];
    PartScore row;
    row.part = model::spaced(word_of(part));
    row.weight = part_weight(part, facts.folding);
    std::vector<std::string> titles;
    for (const PartFacts& instance : instances)
        titles.push_back(instance.title);
    row.items = model::list(titles);
    if (!facts.parts_declared) {
        row.depth = row.fasteners = row.tools = open_range;
        row.depth_because = row.fasteners_because = row.tools_because = "not declared";
        return row;
    }
    const Scored depth = of_instances(instances, depth_of);
    const Scored fastening = of_instances(instances, fastening_of);
    const Scored tool = of_instances(instances, tool_of);
    row.depth = depth.score;
    row.depth_because = depth.because;
    row.fasteners = fastening.score;
    row.fasteners_because = fastening.because;
    row.tools = tool.score;
    row.tools_because = tool.because;
    return row;
}

// The weighted mean over the parts; the weights add up to 100.
ScoreRange mean(const std::vector<PartScore>& parts, ScoreRange PartScore::*score) {
    int low = 0;
    int high = 0;
    for (const PartScore& part : parts) {
        low += part.weight * (part.*score).lowest;
        high += part.weight * (part.*score).highest;
    }
    return {low / 100, high / 100};
}

Scored spares_of(const IndexFacts& facts) {
    if (!facts.spares)
        return {open_range, "not declared"};
    std::vector<IndexPart> present;
    for (std::size_t i = 0; i < index_part_count; ++i) {
        if (!facts.parts[i].empty() || !facts.parts_declared)
            present.push_back(static_cast<IndexPart>(i));
    }
    const int score = spare_parts_score(*facts.spares, present, facts.folding);
    std::vector<IndexPart> missing;
    for (const IndexPart part : present) {
        const bool sold =
            std::find(facts.spares->begin(), facts.spares->end(), part) != facts.spares->end();
        if (!sold && part_weight(part, facts.folding) != 0)
            missing.push_back(part);
    }
    std::string words = facts.spares->empty()
                            ? std::string("nothing is sold")
                            : "sold to anyone: " + model::list(in_words(*facts.spares));
    if (!missing.empty())
        words += "; not sold: " + model::list(in_words(missing));
    return {{score, score}, words};
}

Scored updates_of(const IndexFacts& facts) {
    if (!facts.update_years)
        return {open_range, "not declared"};
    const int years = *facts.update_years;
    const int score = update_score(years);
    return {{score, score},
            fmt::format("{} {}{}", years, years == 1 ? "year" : "years",
                        years < 5 ? ", less than Regulation (EU) 2023/1670 asks for" : "")};
}

Scored information_of(const IndexFacts& facts) {
    const auto score = information_score(facts.information);
    if (!score)
        return {open_range, "not declared"};
    if (*score == best_score)
        return {{*score, *score}, "free to end users"};
    return {{*score, *score}, *score == worst_score ? "at a reasonable cost" : "free to repairers"};
}

void tell_undeclared(const IndexFacts& facts, RepairIndex& index) {
    auto& list = index.undeclared;
    if (!facts.parts_declared)
        list.emplace_back("which items are the priority parts: `counts as battery` under the item");
    if (!facts.spares)
        list.emplace_back("which spare parts are sold to anyone: `spares` under the device");
    if (!facts.update_years)
        list.emplace_back("for how many years updates are given: `updates` under the device");
    if (!information_score(facts.information))
        list.emplace_back("to whom the repair information is free: `information` under the device");
    for (const auto& instances : facts.parts) {
        for (const PartFacts& part : instances) {
            if (!part.undeclared_tool.empty())
                list.push_back(fmt::format("the class of the tool \"{}\", for {}: a `tool-kind` "
                                           "with its `class`, or `supplied` under the device",
                                           part.undeclared_tool, part.title));
        }
    }
}

void tell_notes(const IndexFacts& facts, RepairIndex& index) {
    std::vector<IndexPart> absent;
    for (std::size_t i = 0; i < index_part_count && facts.parts_declared; ++i) {
        const auto part = static_cast<IndexPart>(i);
        if (facts.parts[i].empty() && part_weight(part, facts.folding) != 0)
            absent.push_back(part);
    }
    if (!absent.empty())
        index.notes.push_back(
            fmt::format("No item counts as {}: taken as a part that the product does not have, "
                        "which scores 5. If it has one, write `counts as` under it.",
                        model::list(in_words(absent), "or")));
    index.notes.emplace_back("A fastener or tool counts for a part when it is met anywhere on the "
                             "part's way out; the lowest one decides.");
    if (facts.folding)
        index.notes.emplace_back(
            "The weights for a folding display were found in one text that "
            "restates the regulation; compare them with the Official Journal.");
    index.notes.emplace_back("The scores of spare parts and of repair information are from memory "
                             "of the annex; compare them with the Official Journal.");
}

} // namespace

RepairIndex repair_index(const IndexFacts& facts) {
    RepairIndex index;
    index.source = "Commission Delegated Regulation (EU) 2023/1669, Annex IV, point 5";
    index.folding = facts.folding;
    for (std::size_t i = 0; i < index_part_count; ++i) {
        const auto part = static_cast<IndexPart>(i);
        if (part_weight(part, facts.folding) != 0)
            index.parts.push_back(part_score(facts, part));
    }
    const Scored spares = spares_of(facts);
    const Scored updates = updates_of(facts);
    const Scored information = information_of(facts);
    const std::string of_parts = "weighted mean over the priority parts";
    const std::array<Scored, 6> scored{{{mean(index.parts, &PartScore::depth), of_parts},
                                        {mean(index.parts, &PartScore::fasteners), of_parts},
                                        {mean(index.parts, &PartScore::tools), of_parts},
                                        spares,
                                        updates,
                                        information}};
    std::array<int, 6> low{};
    std::array<int, 6> high{};
    for (std::size_t i = 0; i < scored.size(); ++i) {
        low[i] = scored[i].score.lowest;
        high[i] = scored[i].score.highest;
        index.scores.push_back({std::string(score_names[i]), std::string(score_symbols[i]),
                                score_weights[i], scored[i].score, scored[i].because});
    }
    index.lowest = index_of(low);
    index.highest = index_of(high);
    index.lowest_class = class_of(index.lowest);
    index.highest_class = class_of(index.highest);
    tell_undeclared(facts, index);
    tell_notes(facts, index);
    return index;
}

std::optional<IndexPart> index_part(const model::Item& item) {
    const auto& words = model::index_part_words();
    const auto found = std::find(words.begin(), words.end(), *item.rare->counts_as);
    if (found == words.end())
        return std::nullopt;
    return static_cast<IndexPart>(found - words.begin());
}

std::optional<IndexFacts> declared_facts(const model::Model& model) {
    const model::Product& product = model.device.product;
    const auto is_a = [&](std::string_view word) {
        return std::find(product.classes.begin(), product.classes.end(), word) !=
               product.classes.end();
    };
    if (!is_a("smartphone") && !is_a("slate-tablet"))
        return std::nullopt;
    IndexFacts facts;
    facts.folding = is_a("folding");
    facts.update_years = product.update_years;
    facts.information = product.information;
    facts.parts_declared =
        std::any_of(model.items.begin(), model.items.end(),
                    [](const auto& item) { return !item.rare->counts_as->empty(); });
    if (!product.spares.empty()) {
        facts.spares.emplace();
        for (const std::string& word : product.spares) {
            const auto& words = model::index_part_words();
            const auto found = std::find(words.begin(), words.end(), word);
            if (found != words.end())
                facts.spares->push_back(static_cast<IndexPart>(found - words.begin()));
        }
    }
    return facts;
}

} // namespace matchmark::appraise
