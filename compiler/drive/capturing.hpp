// From notes to a device and its guides, in memory: what `capture` does before it writes.
#pragma once

#include "capture/description.hpp"
#include "drive/compilation.hpp"

#include <map>
#include <string>
#include <vector>

namespace matchmark::drive {

struct NotesText {
    std::string path;
    std::string text;
};

struct CapturedGuide {
    std::string path;
    std::string text;
    std::vector<std::string> added; // acts that the notes lack and that `check` asks for
};

struct Captured {
    Compilation base; // the device that was refined, or the library; the notes are in its sources
    capture::Description description;
    std::string device_path;
    std::string device_text;
    std::vector<CapturedGuide> guides; // one for each file of notes that does anything
    std::vector<Diagnostic> findings;  // about the notes
    std::vector<Compilation> unclean;  // the device or a guide that still has errors or warnings
    Compilation device;                // as `device_text` has it
    bool refused = false;              // notes and device contradict each other: nothing to write
};

// `base`: the compiled device that is refined, without errors, or, of a new one, the library alone.
// New files are named below `folder`.
Captured captured(Disk& disk, Compilation base, const std::vector<NotesText>& notes,
                  const std::string& folder);

// The same in two steps: the device, then the guide of one job of its description.
Captured captured_device(Disk& disk, Compilation base, const std::vector<NotesText>& notes,
                         const std::string& folder);
void add_guide(Disk& disk, Captured& all, const capture::Job& job, const std::string& folder);

} // namespace matchmark::drive
