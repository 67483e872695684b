// What one compilation leaves to the next of nearly the same files: for an editor, which compiles
// after every letter, and for a library, in which many guides use one device.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "resolve/resolve.hpp"
#include "syntax/files.hpp"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace matchmark::drive {

// A file as it was parsed; it holds for the same text under the same id.
struct Parsed {
    std::string text;
    syntax::FilePointer file; // null before the first time
    std::vector<Diagnostic> findings;
};

struct Memory {
    std::map<std::string, Parsed> parsed; // by path

    // The used files as they were last, and, once they have stayed so, what they declare.
    std::vector<std::pair<std::string, std::string>> used; // path and text, in order
    resolve::BasePointer base;
    bool tried = false; // to make the base
};

} // namespace matchmark::drive
