// What the author's way back put back while something after it still needs it away: the plug put in
// before the cover, the fuel filled in before the hose is on.
#pragma once

#include "check/walk.hpp"

#include <optional>

namespace matchmark::check {

struct TooEarly {
    std::vector<Span> lines;      // of the way back, in order: what is needed otherwise after them
    std::size_t at = 0;           // the event before which they can be done without harm, ...
    std::vector<bench::Act> acts; // ... as these: the walk found them, and told of
    const LeftOff* left_off = nullptr;  // what is never put back, or else
    const Trouble* not_ready = nullptr; // of a test that asks for it
};

// Of a danger met, of what is still live, or of a need that is not met. Nothing when it was so all
// along, when its line is not written in the guide's own way back, or when no later place was
// found.
std::optional<TooEarly> too_early(const Walk& walk, const Trouble& trouble);

// Mends the finding by moving the lines down, and marks where they stand now. To undo them in
// between would be work for nothing.
void move_down(const Walk& walk, const TooEarly& early, const char* label, Diagnostic& finding);

// Which findings of the walk are only what was put back too early, and told there.
class ToldAsTooEarly {
public:
    explicit ToldAsTooEarly(const Walk& walk);

    // What was left off, or what a test lacks.
    [[nodiscard]] bool covers(const LeftOff& left) const;
    // Also one more trouble that the same lines make.
    [[nodiscard]] bool covers(const Trouble& trouble) const;

private:
    struct Told {
        const Trouble* trouble = nullptr;
        TooEarly early;
    };
    std::vector<Told> told_;
};

} // namespace matchmark::check
