// Lines that the grammar takes, and that mean something else than whoever wrote them meant.
#pragma once

#include "parse/meant.hpp"

#include <optional>

namespace matchmark::syntax {

// A decimal comma that parts a list, a detail or a torque that became a word of a description, and
// members behind `#`, which begins a comment. Nothing for any other line.
std::optional<Diagnostic> taken_otherwise(const Scene& scene, Body body, Keyword keyword, Span line,
                                          Span comment);

} // namespace matchmark::syntax
