// "Did you mean": the known name nearest to one that is not known.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace matchmark {

// The candidate with the least edit distance (insert, delete, replace, swap of neighbours), if it
// is near enough to be a slip (a third of the letters, at least one); the earliest on a tie; empty
// when none is.
std::string nearest(std::string_view word, const std::vector<std::string>& candidates);
std::string nearest_among(std::string_view word, const std::vector<std::string_view>& candidates);

} // namespace matchmark
