// Signal words, and which of them are about people.
#pragma once

#include "guide/document.hpp"
#include "model/hazard.hpp"

#include <optional>

namespace matchmark::compare {

std::optional<guide::Signal> signal_of(model::ProseKind kind);

// A notice is about property alone (ANSI Z535.6).
constexpr bool can_injure(guide::Signal signal) { return signal != guide::Signal::notice; }

} // namespace matchmark::compare
