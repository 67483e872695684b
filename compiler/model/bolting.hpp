// What a threaded fastener bears: stress area, preload and torque, breaking torque.
//
// Lengths in mm, areas in mm2, forces in N, torques in N.m. Each gives nothing when the thread or
// the grade lacks a number that it needs.
#pragma once

#include "model/model.hpp"

#include <optional>

namespace matchmark::model {

// ISO 724, with the thread form's number of pitches.
std::optional<double> pitch_diameter(const Thread& thread);
std::optional<double> root_diameter(const Thread& thread);
// ISO 898-1, 9.1.6.1 (ASME B1.1, appendix B for inch threads): of a circle half way between the
// two.
std::optional<double> stress_area(const Thread& thread);

// Of a screw of this diameter, in N/mm2.
std::optional<double> strength_at(const Strength& strength, double diameter);

// Tensile strength over the stress area: ISO 898-1, 9.1.
std::optional<double> breaking_force(const Thread& thread, const Grade& grade);
// ISO 898-7, for the smallest root; `breaks_at` of the thread, when it has one, stands for the
// usual grade. A test value, never one to tighten to.
std::optional<double> breaking_torque(const Thread& thread, const Grade& grade);

// VDI 2230-1: thread and head bearing with one coefficient of friction.
std::optional<double> torque_for(const Thread& thread, double preload, double friction);
std::optional<double> preload_for(const Thread& thread, double torque, double friction);
// The preload at which the shank, pulled and twisted, reaches nine tenths of its yield: VDI 2230-1.
std::optional<double> usual_preload(const Thread& thread, const Grade& grade, double friction);
std::optional<double> usual_torque(const Thread& thread, const Grade& grade, double friction);

// What an item's description names, or else the usual; null when there is none.
const Thread* thread_of(const Model& model, const Item& item);
const Grade* grade_of(const Model& model, const Item& item);
const Friction* friction_of(const Model& model, const Item& item);

} // namespace matchmark::model
