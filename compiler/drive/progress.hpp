// Which file of many the work is at, for a person who waits at a terminal.
#pragma once

#include "drive/commands.hpp"

#include <chrono>
#include <cstddef>
#include <string>

namespace matchmark::drive {

// One line on `terminal.err`, written over and over; none when that is no terminal, and none in the
// first half second.
class Progress {
public:
    Progress(Terminal& terminal, std::size_t total);

    // Before each file.
    void at(const std::string& path);
    // Takes the line away.
    void clear();

private:
    Terminal& terminal_;
    std::size_t total_;
    std::size_t begun_ = 0;
    bool shown_ = false;
    std::chrono::steady_clock::time_point next_;
};

} // namespace matchmark::drive
