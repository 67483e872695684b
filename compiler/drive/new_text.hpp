// What every command that writes new source needs: the canonical layout, and paths as seen from
// where it will stand.
#pragma once

#include <string>

namespace matchmark::drive {

// In canonical layout; as it is, if it cannot be read.
std::string tidied_text(const std::string& text);

// `path` as a file at `output` names it: ("out/a.mmk", "parts/b.mmk") -> "../parts/b.mmk". Both are
// taken from the current folder unless they start with `/`.
std::string seen_from(const std::string& output, const std::string& path);

} // namespace matchmark::drive
