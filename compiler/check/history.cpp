// Goes back and forth in what each event of a walk changed.
#include "check/history.hpp"

#include <utility>

namespace matchmark::check {

using bench::State;

void History::start(State state) {
    changes_.clear();
    ends_ = {0};
    cursor_ = {std::move(state), 0};
}

void History::record(std::size_t event, const model::Model& model, const State& state,
                     const std::vector<model::ItemId>& changed) {
    if (event + 1 < ends_.size()) {
        go_to(event);
        ends_.resize(event + 1);
        changes_.resize(ends_.back());
    }
    go_to(ends_.size() - 1);
    for (const model::ItemId id : changed) {
        const model::Item& item = model.item(id);
        const std::size_t sets = model.kind(item.kind).set_count();
        const auto last_slot = static_cast<std::uint32_t>(item.first_slot + item.count * sets);
        for (std::uint32_t slot = item.first_slot; slot < last_slot; ++slot)
            add(id, slot, cursor_.state.slots[slot], state.slots[slot]);
        for (std::uint32_t i = item.first_member; i < item.first_member + item.count; ++i)
            add(id, model.slot_count + i, cursor_.state.flags[i], state.flags[i]);
    }
    ends_.resize(event + 1);
    ends_.back() = changes_.size();
    cursor_.event = event;
}

void History::add(model::ItemId item, std::uint32_t place, std::uint8_t& was, std::uint8_t is) {
    if (was == is)
        return;
    changes_.push_back({item, place, was, is});
    was = is;
}

void History::set(std::uint32_t place, std::uint8_t value) const {
    State& state = cursor_.state;
    if (place < state.slots.size()) {
        state.slots[place] = value;
    } else {
        state.flags[place - state.slots.size()] = value;
    }
}

void History::go_to(std::size_t event) const {
    std::size_t at = ends_[cursor_.event];
    while (at < ends_[event]) {
        set(changes_[at].place, changes_[at].is);
        ++at;
    }
    while (at > ends_[event]) {
        --at;
        set(changes_[at].place, changes_[at].was);
    }
    cursor_.event = event;
}

std::vector<model::ItemId> History::changed_before(std::size_t event) const {
    std::vector<model::ItemId> items;
    for (std::size_t i = event == 0 ? 0 : ends_[event - 1]; i < ends_[event]; ++i)
        items.push_back(changes_[i].item);
    return items;
}

const State& History::before(std::size_t event) const {
    go_to(event);
    return cursor_.state;
}

} // namespace matchmark::check
