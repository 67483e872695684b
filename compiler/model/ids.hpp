// Small typed numbers that name things in the model: an item cannot be taken for a kind.
#pragma once

#include <algorithm>
#include <compare>
#include <cstdint>
#include <vector>

namespace matchmark::model {

template <class Tag> struct Id {
    static constexpr std::uint32_t none_value = 0xffffffffU;
    std::uint32_t value = none_value;

    [[nodiscard]] bool known() const { return value != none_value; }
    friend auto operator<=>(const Id&, const Id&) = default;
};

template <class Ids, class Tag> bool among(const Ids& ids, Id<Tag> id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

using KindId = Id<struct KindTag>;
using ItemId = Id<struct ItemTag>;
using HazardId = Id<struct HazardTag>;
using FunctionId = Id<struct FunctionTag>;
using ResourceId = Id<struct ResourceTag>; // a tool, spare or supply of one guide
using GuideId = Id<struct GuideTag>;

using StateId = std::uint8_t;   // index into a kind's states, all its sets together
using StateSet = std::uint64_t; // bit n: state n
using VariantMask =
    std::uint32_t; // bit n: the device's variant n; a device without variants has one

constexpr StateSet in_set(StateId state) { return StateSet{1} << state; }
constexpr bool contains(StateSet set, StateId state) { return ((set >> state) & 1U) != 0; }
constexpr VariantMask all_variants = 0xffffffffU;

} // namespace matchmark::model
