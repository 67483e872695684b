// Compiles one file: gathers what it uses, parses, resolves, unfolds and checks. All that a command
// needs of it.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "drive/memory.hpp"
#include "model/model.hpp"
#include "source/disk.hpp"
#include "syntax/files.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

// The lines of the files, as parsed, weigh as much as what is made of them: who does not ask for
// them afterwards lets them go.
enum class Lines : bool { kept, let_go };

struct Compilation {
    SourceMap sources;
    // Parts library, used files in dependency order, the one asked about last; none once let go.
    syntax::Files files;
    FileId root = Span::no_file;
    model::Model model;
    std::vector<model::Procedure> procedures; // of the guides that the root file declares
    std::vector<Diagnostic> findings;         // sorted
    bool unreadable = false;                  // some file could not be read: exit 2
};

// Never throws. A missing file, a cycle of `use`, bytes that are not text are findings like any
// other. `text`: what to take in place of the root file's bytes on disk (standard input, an
// editor's buffer). `memory`: of earlier compilations of this path; the result is the same with it.
Compilation compile(Disk& disk, const std::string& path, const std::string* text = nullptr,
                    Memory* memory = nullptr, Lines lines = Lines::kept);

} // namespace matchmark::drive
