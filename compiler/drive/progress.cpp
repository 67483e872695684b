// Which file of many the work is at, for a person who waits at a terminal.
#include "drive/progress.hpp"

#include <ostream>

namespace matchmark::drive {

namespace {

using Clock = std::chrono::steady_clock;
constexpr auto first_pause = std::chrono::milliseconds(500);
constexpr auto pause = std::chrono::milliseconds(100);
constexpr std::size_t widest = 50; // of a path, so that the line stays one line

} // namespace

Progress::Progress(Terminal& terminal, std::size_t total)
    : terminal_(terminal), total_(total), next_(Clock::now() + first_pause) {}

void Progress::at(const std::string& path) {
    ++begun_;
    if (!terminal_.err_is_terminal || Clock::now() < next_) {
        return;
    }
    next_ = Clock::now() + pause;
    shown_ = true;
    const std::string tail =
        path.size() <= widest ? path : "..." + path.substr(path.size() - widest);
    // Back to the start of the line, and what stood there wiped out (ECMA-48, EL).
    terminal_.err << "\r\x1b[K" << begun_ << " of " << total_ << "  " << tail << std::flush;
}

void Progress::clear() {
    if (shown_) {
        terminal_.err << "\r\x1b[K" << std::flush;
        shown_ = false;
    }
}

} // namespace matchmark::drive
