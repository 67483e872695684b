// How the bench stood before each event of a walk.
//
// Kept is what each event changed, not whole states: those would take as much room as there are
// events times items.
#pragma once

#include "bench/bench.hpp"

#include <cstdint>
#include <vector>

namespace matchmark::check {

class History {
public:
    // The state before event 0.
    void start(bench::State state);

    // Before event `event`, which was recorded last or is the next, the bench stands as in `state`:
    // other than before only in these items. What was recorded of later events is forgotten.
    void record(std::size_t event, const model::Model& model, const bench::State& state,
                const std::vector<model::ItemId>& changed);

    // The state before an event that was recorded. It holds until the next call; one that asks for
    // the event next to it, or the same, costs next to nothing.
    [[nodiscard]] const bench::State& before(std::size_t event) const;

    // The items that stand otherwise before this event than before the last one; some twice.
    [[nodiscard]] std::vector<model::ItemId> changed_before(std::size_t event) const;

private:
    struct Change {
        model::ItemId item;
        std::uint32_t place = 0; // a slot, or past the slots a member's flags
        std::uint8_t was = 0;
        std::uint8_t is = 0;
    };
    struct Cursor {
        bench::State state;
        std::size_t event = 0;
    };

    void go_to(std::size_t event) const;
    void add(model::ItemId item, std::uint32_t place, std::uint8_t& was, std::uint8_t is);
    void set(std::uint32_t place, std::uint8_t value) const;

    std::vector<Change> changes_;
    std::vector<std::size_t> ends_; // of each event, those of its changes that lead up to it
    mutable Cursor cursor_;         // where the last question was
};

} // namespace matchmark::check
