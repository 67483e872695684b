// A guide that the program has written, checked and mended before anybody sees it.
#pragma once

#include "drive/compilation.hpp"

#include <string>

namespace matchmark::drive {

struct MendedDraft {
    std::string text;
    Compilation done; // of that text; its findings are those that carry no mend
};

// As if `text` stood at `path`; nothing is written.
MendedDraft mended_draft(Disk& disk, const std::string& path, std::string text);

} // namespace matchmark::drive
