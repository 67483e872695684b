// What the author's way back put back while something after it still needs it away: the plug put in
// before the cover, the fuel filled in before the hose is on.
#pragma once

#include "check/walk.hpp"

#include <optional>

namespace matchmark::check {

struct TooEarly {
    Span line;                      // of the way back: what is needed otherwise after it
    const LeftOff* later = nullptr; // where it can be done without harm, as the walk found; of it
};

// Of a danger met, of what is still live, or of a need that is not met. Nothing when it was so all
// along, when its line is not written in the guide's own way back, or when no later place was
// found.
std::optional<TooEarly> too_early(const Walk& walk, const Trouble& trouble);

// Mends the finding by moving the line down, and marks where it stands now. To undo it in between
// would be work for nothing.
void move_down(const Walk& walk, const TooEarly& early, const char* label, Diagnostic& finding);

// Is what was left off only what was put back too early? Then it is told there.
bool told_as_too_early(const Walk& walk, const LeftOff& left);

} // namespace matchmark::check
