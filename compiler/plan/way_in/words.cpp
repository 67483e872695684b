// The reasons of a way in, in the fitter's words.
#include "plan/way_in/way_in.hpp"

#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::ItemId;
using model::Model;

namespace {

std::string state_words(const Model& model, ItemId item, model::StateId state) {
    return model::spaced(model.kind_of(item).states[state]);
}

// "the mains feeds the motor", "through the plug the mains drives the blade"
std::string live_words(const Model& model, ItemId acted, ItemId source, ItemId met,
                       const std::string& met_words) {
    const bool drives = among(model.item(source).feeding->drives, met) || model.kind_of(met).moves;
    const bool several = model.item(source).count > 1;
    const std::string verb =
        drives ? (several ? " drive " : " drives ") : (several ? " feed " : " feeds ");
    const std::string source_words = model::for_reader(model, source);
    return (acted == source ? std::string() : "through " + model::for_reader(model, acted) + " ") +
           source_words + verb + met_words;
}

// "the 4 lid screws hold the display lid"
std::string clause(const Model& model, ItemId acted, const ActReason& reason) {
    const std::string subject = model::for_reader(model, acted);
    const bool several = model.item(acted).count > 1;
    const std::string met =
        reason.met.known() ? model::for_reader(model, reason.met) : std::string("the next thing");
    const auto does = [&](const char* one, const char* many) {
        return subject + " " + (several ? many : one) + " ";
    };
    switch (reason.sort) {
    case ReasonSort::goal:
        return does("is", "are") + "what is asked for";
    case ReasonSort::holds:
        return does("holds", "hold") + met;
    case ReasonSort::covers:
        return model.item(acted).role == model::Role::part
                   ? does("covers", "cover") + met
                   : does("is", "are") + "in front of " + met;
    case ReasonSort::aside:
        return "with " + subject + " out, nothing covers " + met;
    case ReasonSort::blocks:
        return does("blocks", "block") + met;
    case ReasonSort::needs:
        return reason.met == acted
                   ? does("has to be", "have to be") + state_words(model, acted, reason.state) +
                         " first"
                   : does("has to be", "have to be") + state_words(model, acted, reason.state) +
                         " before " + met + " can be worked on";
    case ReasonSort::live:
        return live_words(model, acted, reason.item, reason.met, met);
    case ReasonSort::hazard:
        return does("is", "are") + "a danger to whoever comes to " + met;
    case ReasonSort::by_way_of:
        return does("has to be", "have to be") + state_words(model, acted, reason.state) +
               " before more can be done to " + (several ? "them" : "it");
    }
    return {};
}

} // namespace

std::vector<std::string> why(const Model& model, const WayIn& way, std::size_t act) {
    std::vector<std::string> lines;
    std::optional<std::size_t> at = act;
    while (at && lines.size() <= way.acts.size()) {
        const ActReason& reason = way.reasons[*at];
        lines.push_back(clause(model, way.acts[*at].act.item, reason));
        at = reason.for_act;
    }
    return lines;
}

std::vector<std::string> why_not(const Model& model, const WayIn& way) {
    std::vector<std::string> lines;
    for (const Obstacle& obstacle : way.obstacles) {
        if (!obstacle.item.known())
            continue;
        std::string line = clause(model, obstacle.item, obstacle.reason);
        if (obstacle.no_verb)
            line = "nothing can be done to " + model::for_reader(model, obstacle.item) +
                   " that would help";
        if (obstacle.closes_ring)
            line += ", and so round again";
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace matchmark::plan
