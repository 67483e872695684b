// What was meant by members of a group that are told in another way than the language's.
#pragma once

#include "parse/meant.hpp"

namespace matchmark::syntax {

// `undo lid-screws 1-4`, `1 to 4`, `1 and 2`, `1 2`: members are told one by one. False where the
// line is not of that sort.
bool meant_members(Diagnostic& finding, const Scene& scene, const Misread& misread);

// `undo 4 lid-screws`, `undo all the lid-screws`, `undo lid-screws x4`: a name alone stands for all
// of its group. Takes the place of another help. False where the line is not of that sort.
bool meant_how_many(Diagnostic& finding, const Scene& scene, const Misread& misread);

} // namespace matchmark::syntax
