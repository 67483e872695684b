// A small device with one dangerous thing in it, and the guide that opens it safely: written from
// the kind alone.
#pragma once

#include "hazards/way.hpp"
#include "model/model.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::hazards {

struct Scene {
    bool made = false;                   // false: no way to safety, or none off its place
    std::vector<const model::Verb*> way; // what makes it safe, in order: its hazards' verbs
    std::string device;
    std::string head; // of the guide, without the reader's line
    std::string for_reader;
    std::string into_danger;              // lines, of what is safe until it is worked with
    std::vector<std::string> making_safe; // a line for each verb of `way`
    std::string opening;                  // the step that takes the cover off
    // Before which of them that step stands: from there on they are done inside. Nothing: behind
    // all.
    std::optional<std::size_t> opens_before;
    std::string rest;
};

Scene scene_of(const model::Kind& kind);

// The text; `omitted`: without that line of `making_safe`.
std::string text_of(const Scene& scene, std::optional<std::size_t> omitted = std::nullopt);
// Written for a reader without a licence.
std::string text_for_anyone(const Scene& scene);

} // namespace matchmark::hazards
