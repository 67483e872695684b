// Brings together the files of one compilation: the file asked about, and all that its `use` lines
// name.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "drive/limits.hpp"
#include "drive/memory.hpp"
#include "source/disk.hpp"
#include "syntax/files.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

struct Gathered {
    SourceMap sources;
    syntax::Files files; // parts library, used files before their users, the root last
    FileId root = Span::no_file;
    std::vector<Diagnostic> findings; // of parsing too
    bool unreadable = false;          // some file is missing, not text, or cannot be read
};

// Reads and parses the parts library, `path` and what it uses, each file once.
// `text`: what to take in place of the root file's bytes on disk. `memory`: files in it that have
// not changed are not parsed again.
Gathered gather(Disk& disk, const std::string& path, const std::string* text,
                Memory* memory = nullptr);

// Adds a text to the map. If it is not text (bytes that are not UTF-8, or NUL), says where and
// gives false; the bytes that cannot be shown stand as `?` in the map, so that places stay right.
bool add_source(SourceMap& sources, const std::string& path, std::string text,
                std::vector<Diagnostic>& findings);

// The name in the folder of `path`, ending in .mmk, that is nearest to it; empty when none is near.
std::string nearest_file(Disk& disk, const std::string& path);

} // namespace matchmark::drive
