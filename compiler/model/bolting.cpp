// The formulas of screwed joints, each from the standard that its header names.
#include "model/bolting.hpp"

#include <cmath>
#include <numbers>

namespace matchmark::model {

namespace {

constexpr double pi = std::numbers::pi;
constexpr double part_of_yield = 0.9;

double in_mm(const Quantity& length) { return length.base * 1e3; }

std::optional<double> below_diameter(const Thread& thread, double pitches) {
    if (!thread.diameter || !thread.pitch || pitches <= 0)
        return std::nullopt;
    return in_mm(*thread.diameter) - pitches * in_mm(*thread.pitch);
}

// How far a preload of 1 N turns into torque, in mm: pitch, thread friction and head friction.
std::optional<double> lever(const Thread& thread, double friction) {
    const auto pitch_line = pitch_diameter(thread);
    if (!pitch_line || !thread.bears_on || !thread.bears_on->least || !thread.bears_on->most)
        return std::nullopt;
    const double bearing = (in_mm(*thread.bears_on->least) + in_mm(*thread.bears_on->most)) / 2;
    // 0.159 is 1 / (2 pi); 0.577 is 1 / (2 cos 30 deg), of a 60 degree thread.
    return 0.159 * in_mm(*thread.pitch) + 0.577 * friction * *pitch_line + friction * bearing / 2;
}

template <class Entry> const Entry* named(const SharedList<Entry>& entries, const auto& name) {
    for (const Entry& entry : entries) {
        if (entry.name == name)
            return &entry;
    }
    return nullptr;
}

template <class Entry>
const Entry* named_or_usual(const SharedList<Entry>& entries, const auto& name) {
    if (const Entry* found = named(entries, name))
        return found;
    for (const Entry& entry : entries) {
        if (entry.usual)
            return &entry;
    }
    return nullptr;
}

} // namespace

std::optional<double> pitch_diameter(const Thread& thread) {
    return below_diameter(thread, thread.form ? thread.form->pitch_line : 0);
}

std::optional<double> root_diameter(const Thread& thread) {
    return below_diameter(thread, thread.form ? thread.form->root : 0);
}

std::optional<double> stress_area(const Thread& thread) {
    const auto pitch_line = pitch_diameter(thread);
    const auto root = root_diameter(thread);
    if (!pitch_line || !root)
        return std::nullopt;
    const double middle = (*pitch_line + *root) / 2;
    return pi / 4 * middle * middle;
}

std::optional<double> strength_at(const Strength& strength, double diameter) {
    const bool large = strength.large && strength.above && diameter > in_mm(*strength.above);
    const auto& found = large ? strength.large : strength.usual;
    if (!found)
        return std::nullopt;
    return found->base * 1e-6;
}

std::optional<double> breaking_force(const Thread& thread, const Grade& grade) {
    const auto area = stress_area(thread);
    const auto tensile = area ? strength_at(grade.tensile, in_mm(*thread.diameter)) : std::nullopt;
    if (!tensile)
        return std::nullopt;
    return *area * *tensile;
}

std::optional<double> breaking_torque(const Thread& thread, const Grade& grade) {
    if (thread.breaks_at && grade.usual)
        return thread.breaks_at->base;
    const auto root =
        thread.root_at_least ? std::optional(in_mm(*thread.root_at_least)) : root_diameter(thread);
    if (!root || !thread.diameter || grade.shear <= 0)
        return std::nullopt;
    const auto tensile = strength_at(grade.tensile, in_mm(*thread.diameter));
    if (!tensile)
        return std::nullopt;
    return pi / 16 * std::pow(*root, 3) * grade.shear * *tensile / 1e3;
}

std::optional<double> torque_for(const Thread& thread, double preload, double friction) {
    const auto arm = lever(thread, friction);
    if (!arm)
        return std::nullopt;
    return preload * *arm / 1e3;
}

std::optional<double> preload_for(const Thread& thread, double torque, double friction) {
    const auto arm = lever(thread, friction);
    if (!arm)
        return std::nullopt;
    return torque * 1e3 / *arm;
}

std::optional<double> usual_preload(const Thread& thread, const Grade& grade, double friction) {
    const auto area = stress_area(thread);
    const auto yield = area ? strength_at(grade.yield, in_mm(*thread.diameter)) : std::nullopt;
    if (!yield)
        return std::nullopt;
    const double pitch_line = *pitch_diameter(thread);
    const double middle = (pitch_line + *root_diameter(thread)) / 2;
    // 1.155 is 1 / cos 30 deg.
    const double twist =
        1.5 * pitch_line / middle * (in_mm(*thread.pitch) / (pi * pitch_line) + 1.155 * friction);
    return part_of_yield * *yield * *area / std::sqrt(1 + 3 * twist * twist);
}

std::optional<double> usual_torque(const Thread& thread, const Grade& grade, double friction) {
    const auto preload = usual_preload(thread, grade, friction);
    if (!preload)
        return std::nullopt;
    return torque_for(thread, *preload, friction);
}

const Thread* thread_of(const Model& model, const Item& item) {
    return item.bolt->thread.empty() ? nullptr : named(model.threads, item.bolt->thread);
}

const Grade* grade_of(const Model& model, const Item& item) {
    return named_or_usual(model.grades, item.bolt->grade);
}

const Friction* friction_of(const Model& model, const Item& item) {
    return named_or_usual(model.frictions, item.bolt->friction);
}

} // namespace matchmark::model
