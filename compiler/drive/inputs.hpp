// The files that a command line names: folders gone through, standard input read.
#pragma once

#include "drive/commands.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::drive {

struct Input {
    std::string path;                // "-" for standard input
    std::optional<std::string> text; // of standard input
    std::string below;               // of a file found in a folder: its own folder there, "drill/"

    [[nodiscard]] const std::string* given() const { return text ? &*text : nullptr; }
};

// Every .mmk file of the paths, folders in order of name, each file once. Nothing when a path
// cannot be used; the reason is on `terminal.err` then, one line that starts with the command's
// name.
std::optional<std::vector<Input>> inputs(const std::string& command,
                                         const std::vector<std::string>& paths, Terminal& terminal);

// One line on `terminal.err`: "matchmark COMMAND: what". Gives exit_failed.
int fail(Terminal& terminal, const std::string& command, const std::string& what);

// "; did you mean `NEAR`?", or nothing when no candidate is near.
std::string did_you_mean(const std::string& word, const std::vector<std::string>& candidates);

} // namespace matchmark::drive
