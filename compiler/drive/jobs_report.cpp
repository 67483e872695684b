// Puts several jobs and the changes of a design into lines and JSON.
#include "drive/jobs_report.hpp"

#include "drive/plan_times.hpp"
#include "guide/appraisal.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;
using plan::Proof;

const char* proof_name(Proof proof) {
    static constexpr const char* names[] = {"least", "bounded", "impossible", "unknown"};
    return names[static_cast<std::size_t>(proof)];
}

std::string cost(const plan::WayIn& way) {
    if (way.proof == Proof::impossible)
        return "no way in";
    if (way.proof == Proof::unknown)
        return "not found";
    return fmt::format("{}, {}{}", model::counted(way.acts.size(), "act"),
                       guide::time_words(way.seconds),
                       way.proof == Proof::bounded ? " (not proved least)" : "");
}

Json cost_json(const plan::WayIn& way) {
    return Json{{"proof", proof_name(way.proof)},
                {"acts", way.acts.size()},
                {"seconds", way.seconds},
                {"waiting_seconds", way.waiting}};
}

// "17 actions and 9 min less"; with a sign the other way round, "more".
std::string saved(long long acts, double seconds) {
    std::vector<std::string> less;
    std::vector<std::string> more;
    if (acts != 0)
        (acts > 0 ? less : more)
            .push_back(model::counted(static_cast<std::size_t>(std::llabs(acts)), "action"));
    // Below half a second nothing would be left to read.
    if (std::abs(seconds) >= 0.5)
        (seconds > 0 ? less : more).push_back(guide::time_words(std::abs(seconds)));
    std::string words;
    if (!less.empty())
        words = model::list(less) + " less";
    if (!more.empty())
        words += (words.empty() ? "" : ", ") + model::list(more) + " more";
    return words.empty() ? "hardly less" : words;
}

std::string place_words(const Compilation& done, Span span) {
    if (!span.known())
        return {};
    return fmt::format("{}:{}", done.sources.file(span.file).path,
                       done.sources.place(span.file, span.begin).line);
}

std::string to_reach(const model::Model& model, const plan::PartThen& part, bool expose) {
    return fmt::format("{} `{}`", expose ? "to reach" : "to take out", model.item(part.part).name);
}

void write_change(const Compilation& done, const plan::Change& change, std::size_t number,
                  bool expose, std::ostream& out) {
    const model::Model& model = done.model;
    const std::string words = plan::in_words(model, done.sources, change.relation);
    const std::string at = place_words(done, change.relation.because);
    const auto of_part = [&](const plan::PartThen& part) {
        if (part.opened)
            return fmt::format("a way {} at all, {}", to_reach(model, part, expose),
                               guide::time_words(part.seconds));
        if (part.now_impossible)
            return fmt::format("no way {}", to_reach(model, part, expose));
        return fmt::format("{} {}", saved(part.acts_saved, part.seconds_saved),
                           to_reach(model, part, expose));
    };
    const std::string where = at.empty() ? "" : fmt::format("  [{}]", at);
    if (change.parts.size() == 1) {
        out << fmt::format("{:>4}  {}: {}{}\n", number, words, of_part(change.parts.front()),
                           where);
        return;
    }
    out << fmt::format("{:>4}  {}: {} over {}{}\n", number, words,
                       saved(change.acts_saved, change.seconds_saved),
                       model::counted(change.parts.size(), "part"), where);
    constexpr std::size_t most_parts = 4; // the others differ little, or are in the JSON
    std::vector<plan::PartThen> parts = change.parts;
    std::stable_sort(parts.begin(), parts.end(), [](const auto& a, const auto& b) {
        return a.opened != b.opened ? a.opened : a.seconds_saved > b.seconds_saved;
    });
    for (std::size_t i = 0; i < std::min(parts.size(), most_parts); ++i)
        out << "        " << of_part(parts[i]) << '\n';
    if (parts.size() > most_parts)
        out << fmt::format("        and so for {} more\n", parts.size() - most_parts);
}

} // namespace

void write_jobs(const model::Model& model, const std::vector<plan::Job>& jobs,
                const plan::WayIn& together, std::ostream& out) {
    out << "Several jobs in one opening:\n";
    double apart = 0;
    bool proved = together.proof == Proof::least;
    for (const plan::Job& job : jobs) {
        apart += job.alone.seconds;
        proved = proved && job.alone.proof == Proof::least;
        out << fmt::format("  {}: alone {}; added to those before {}\n",
                           model::for_reader(model, job.item), cost(job.alone), cost(job.added));
    }
    out << fmt::format("  together: {}", cost(together));
    if (proved)
        out << fmt::format("; {} less than one opening after the other",
                           guide::time_words(apart - together.seconds));
    out << '\n';
}

void write_then(const model::Model& model, const std::vector<plan::Job>& jobs, std::ostream& out) {
    for (const plan::Job& job : jobs) {
        out << fmt::format("\nThen, the device being open, {}: {} more; alone {}\n",
                           model::for_reader(model, job.item), cost(job.added), cost(job.alone));
        for (std::size_t i = 0; i < job.added.acts.size(); ++i) {
            const auto& act = job.added.acts[i];
            out << fmt::format("{:>4}  {}  {}{}\n", i + 1, act_words(model, act.act),
                               act.seconds > 0 ? guide::time_words(act.seconds) : "-",
                               act.tool.empty() ? "" : "  " + act.tool);
        }
    }
}

Json jobs_json(const model::Model& model, const std::vector<plan::Job>& jobs) {
    Json all = Json::array();
    for (const plan::Job& job : jobs) {
        Json entry{{"item", model.item(job.item).name},
                   {"alone", cost_json(job.alone)},
                   {"added", cost_json(job.added)}};
        entry["added"]["items"] = Json::array();
        for (const auto& act : job.added.acts)
            entry["added"]["items"].push_back(model.item(act.act.item).name);
        all.push_back(std::move(entry));
    }
    return all;
}

void write_what_if(const Compilation& done, const plan::WhatIf& found, bool expose,
                   std::size_t most, std::ostream& out) {
    const auto helps = [](const plan::Change& change) {
        return change.opened > 0 || change.seconds_saved > 0 ||
               (change.seconds_saved >= 0 && change.acts_saved > 0);
    };
    const auto useful =
        static_cast<std::size_t>(std::count_if(found.changes.begin(), found.changes.end(), helps));
    out << fmt::format("What one line less would save, over {} and {}:\n\n",
                       model::counted(found.parts.size(), "part"),
                       model::counted(found.relations, "relation"));
    std::size_t told = 0;
    for (const plan::Change& change : found.changes) {
        if (told < most && helps(change))
            write_change(done, change, ++told, expose, out);
    }
    if (told == 0)
        out << "  nothing\n";
    if (useful > told)
        out << fmt::format("  and {} more that would save something\n", useful - told);
    out << fmt::format("\n{} would change nothing", model::counted(found.unchanged, "relation"));
    if (found.changes.size() > useful)
        out << fmt::format("; without {} it would take longer", found.changes.size() - useful);
    out << ".\n";
    for (const plan::PartNow& part : found.parts) {
        if (part.proof == Proof::bounded || part.proof == Proof::unknown)
            out << fmt::format("`{}` is left out: its least way in is not proved.\n",
                               done.model.item(part.part).name);
    }
    if (found.not_proved > 0)
        out << fmt::format("Not proved, and not told: {} of {} answers.\n", found.not_proved,
                           found.relations * found.parts.size());
}

Json what_if_json(const Compilation& done, const plan::WhatIf& found, bool expose) {
    const model::Model& model = done.model;
    static constexpr const char* sorts[] = {"in-the-way", "holds", "blocks", "needs", "one-use"};
    Json root;
    root["device"] = model.device.name;
    root["goal"] = expose ? "reach" : "out";
    root["parts"] = Json::array();
    for (const plan::PartNow& part : found.parts)
        root["parts"].push_back({{"item", model.item(part.part).name},
                                 {"proof", proof_name(part.proof)},
                                 {"acts", part.acts},
                                 {"seconds", part.seconds}});
    root["relations"] = found.relations;
    root["unchanged"] = found.unchanged;
    root["not_proved"] = found.not_proved;
    root["changes"] = Json::array();
    for (const plan::Change& change : found.changes) {
        Json entry;
        entry["words"] = plan::in_words(model, done.sources, change.relation);
        entry["relation"] = sorts[static_cast<std::size_t>(change.relation.sort)];
        entry["item"] = model.item(change.relation.item).name;
        entry["other"] = model.item(change.relation.other).name;
        const Span span = change.relation.because;
        entry["file"] = span.known() ? Json(done.sources.file(span.file).path) : Json(nullptr);
        entry["line"] =
            span.known() ? Json(done.sources.place(span.file, span.begin).line) : Json(nullptr);
        entry["acts_saved"] = change.acts_saved;
        entry["seconds_saved"] = change.seconds_saved;
        entry["parts"] = Json::array();
        for (const plan::PartThen& part : change.parts)
            entry["parts"].push_back({{"item", model.item(part.part).name},
                                      {"acts", part.acts},
                                      {"seconds", part.seconds},
                                      {"acts_saved", part.acts_saved},
                                      {"seconds_saved", part.seconds_saved},
                                      {"opened", part.opened},
                                      {"now_impossible", part.now_impossible}});
        root["changes"].push_back(std::move(entry));
    }
    return root;
}

} // namespace matchmark::drive
