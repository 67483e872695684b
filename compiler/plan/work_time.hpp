// How long an act takes, by the timing in use: the tasks of which it is made, one by one.
//
// The formula and what each source gives: docs/planning.md, "Time".
#pragma once

#include "model/model.hpp"

#include <string>
#include <utility>
#include <vector>

namespace matchmark::plan {

// In s. `position`, `verb` and `set_aside` are for each member that moves.
struct ActTime {
    double tool_change = 0; // of taking up the tool; 0: it is in hand, or none is asked for
    double turn = 0;        // of turning the device to where the item is
    double identify = 0;
    double handle = 0;
    double position = 0;
    double verb = 0;
    double set_aside = 0;
    double waits = 0; // passes by itself; no labour
    std::size_t members = 1;
    bool by_kind = false; // the timing does not know the verb: `verb` is all that its kind says

    // What the act takes wherever it stands in the work.
    [[nodiscard]] double alone() const {
        return identify + handle + static_cast<double>(members) * (position + verb + set_aside);
    }
    // As labour, where it stands.
    [[nodiscard]] double labour() const { return tool_change + turn + alone(); }
};

// The timing that is used: of those declared `usual`, the last. Null when there is none.
const model::Timing* usual_timing(const model::Model& model);
// From now on the timing of that name is the usual one. False when there is none.
bool use_timing(model::Model& model, const std::string& name);

// All verbs of all kinds, by the model's usual timing; without one, by
// the kinds' own `takes`.
class WorkTimes {
public:
    // The model has to last as long.
    explicit WorkTimes(const model::Model& model);

    // Without the change of tool and the turning, which depend on what was done before.
    [[nodiscard]] ActTime act(model::KindId kind, std::size_t verb, std::size_t members) const;
    [[nodiscard]] double tool_change() const;
    [[nodiscard]] double turn() const;

private:
    const model::Model& model_;
    const model::Timing* timing_;
    std::vector<const model::TimedVerb*> by_verb_; // sorted by the verb's name, else as declared
};

// The face on which the verb is done: that of the item. Empty: it is the same from any side.
std::string face_of(const model::Item& item, const model::Verb& verb);

// Goes along with the work: what is in the hand, which side is up, what is waited for.
class WorkHand {
public:
    // Adds to the act's time what it takes to take up the tool (empty: by hand, and what is in the
    // hand stays there) and to turn the device to the face (empty: any). The first side up is no
    // turning.
    void take(const WorkTimes& times, const std::string& tool, const std::string& face,
              ActTime& time);

    // What an act on the item that waits so long (0: not at all) adds to the time waited. Items
    // that wait one right after the other wait side by side, and the longest counts: what cools.
    double wait(model::ItemId item, double seconds);

private:
    std::string tool_;
    std::string face_;
    std::vector<std::pair<model::ItemId, double>> side_by_side_;
};

} // namespace matchmark::plan
