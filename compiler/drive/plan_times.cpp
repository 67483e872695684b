// Writes the times of a way in: act by act in columns, and the sums.
#include "drive/plan_times.hpp"

#include "guide/appraisal.hpp"
#include "language/spoken.hpp"
#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

using plan::ActTime;
using plan::PlannedAct;
using plan::WayIn;

// In s, to the tenth; nothing where nothing is taken.
std::string tenths(double seconds) {
    return seconds > 0 ? fmt::format("{:.1f}", seconds) : std::string();
}

std::string marked(const ActTime& time) {
    const std::string text = fmt::format("{:.1f}", time.verb);
    return time.by_kind ? text + "*" : text + " ";
}

std::string columns(const ActTime& time) {
    return fmt::format("{:>5} {:>5} {:>8} {:>6} {:>4} {:>8} {:>7} {:>6} {:>8.1f}",
                       tenths(time.tool_change), tenths(time.turn), tenths(time.identify),
                       tenths(time.handle), time.members, tenths(time.position), marked(time),
                       tenths(time.set_aside), time.labour());
}

bool any_face(const WayIn& way) {
    return std::any_of(way.acts.begin(), way.acts.end(),
                       [](const PlannedAct& planned) { return !planned.face.empty(); });
}

} // namespace

std::string act_words(const model::Model& model, const bench::Act& act) {
    const model::Verb& verb = model.kind_of(act.item).verbs[act.verb];
    model::ItemRef ref;
    ref.item = act.item;
    ref.members = act.members;
    return model::spaced(verb.name) + " " + model::for_reader(model, ref);
}

std::string timing_name(const model::Model& model) {
    const model::Timing* timing = plan::usual_timing(model);
    return timing == nullptr ? std::string() : timing->name;
}

void write_times(const model::Model& model, const WayIn& way, std::ostream& out) {
    std::size_t width = 4;
    for (const PlannedAct& planned : way.acts)
        width = std::max(width, act_words(model, planned.act).size());
    out << fmt::format("      {:<{}}  {:>5} {:>5} {:>8} {:>6} {:>4} {:>8} {:>7} {:>6} {:>8}\n", "",
                       width, "tool", "turn", "identify", "handle", "n", "position", "verb ",
                       "aside", "s");
    bool by_kind = false;
    for (std::size_t i = 0; i < way.acts.size(); ++i) {
        const PlannedAct& planned = way.acts[i];
        out << fmt::format("{:>4}  {:<{}}  {}\n", i + 1, act_words(model, planned.act), width,
                           columns(planned.time));
        by_kind = by_kind || planned.time.by_kind;
    }
    out << "\ns = tool + turn + identify + handle + n x (position + verb + aside)\n";
    if (by_kind)
        out << "* all that its kind says it takes; the timing does not know this verb\n";
}

void write_labour(const model::Model& model, const WayIn& way, std::ostream& out) {
    const model::Timing* timing = plan::usual_timing(model);
    out << fmt::format(
        "With tools taken up and the device turned: {}. Back, about {}{}. {}\n",
        guide::time_words(way.labour_seconds), guide::time_words(way.back_seconds),
        way.back_waiting > 0 ? " and " + guide::time_words(way.back_waiting) + " of waiting" : "",
        timing == nullptr ? "Times are the kinds' own." : "Times by `" + timing->name + "`.");
}

void write_turnings(const WayIn& way, std::ostream& out) {
    if (!any_face(way))
        return;
    if (way.tool_changes == way.tool_changes_at_least && way.turnings == way.turnings_at_least) {
        out << fmt::format("Turnings of the device: {}, the fewest of these orders: proved.\n",
                           way.turnings);
    } else {
        out << fmt::format("Turnings of the device: {}; not proved fewest.\n", way.turnings);
    }
}

std::string time_as_json(const ActTime& time) {
    nlohmann::ordered_json object;
    object["tool_change"] = time.tool_change;
    object["turn"] = time.turn;
    object["identify"] = time.identify;
    object["handle"] = time.handle;
    object["members"] = time.members;
    object["position"] = time.position;
    object["verb"] = time.verb;
    object["set_aside"] = time.set_aside;
    object["by_kind"] = time.by_kind;
    object["labour"] = time.labour();
    return object.dump();
}

} // namespace matchmark::drive
