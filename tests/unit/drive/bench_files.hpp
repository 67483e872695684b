// A small device and guides for it, on a disk in memory, and a terminal that keeps what is written
// to it.
#pragma once

#include "drive/commands.hpp"

#include <sstream>
#include <string>
#include <vector>

namespace matchmark::test {

inline constexpr const char* device_text = R"(device lamp "Bench lamp"

part body "body"

part lid "lid"
  covers     board

fastener lid-screws "lid screw" 4 x screw M3 x 8, hexalobular 10
  holds      lid to body
  torque     0.5 N.m

part board "board" kind circuit-board
)";

inline constexpr const char* good_guide = R"(use "lamp.mmk"

guide open-lamp "Open the lamp"
  for        competent
  tool       driver-10 "hexalobular torque driver 10"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-10
  remove     lid

put-back
  derived
)";

// The lid goes back without its screws.
inline constexpr const char* bad_guide = R"(use "lamp.mmk"

guide shut-lamp "Shut the lamp"
  for        competent
  tool       driver-10 "hexalobular torque driver 10"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-10
  remove     lid

put-back

step close "Close the lid"
  fit        lid
)";

// Runs commands as a shell would: `run({"check", "a.mmk"})`.
struct Desk {
    MapDisk disk;
    std::string input;
    std::string out;
    std::string err;

    int run(const std::vector<std::string>& arguments) {
        std::vector<const char*> words = {"matchmark"};
        for (const std::string& argument : arguments) {
            words.push_back(argument.c_str());
        }
        std::istringstream in(input);
        std::ostringstream out_stream;
        std::ostringstream err_stream;
        drive::Terminal terminal{disk, in, out_stream, err_stream};
        const int code = drive::run(static_cast<int>(words.size()), words.data(), terminal);
        out = out_stream.str();
        err = err_stream.str();
        return code;
    }

    [[nodiscard]] bool told(const std::string& words) const {
        return out.find(words) != std::string::npos;
    }
    [[nodiscard]] bool complained(const std::string& words) const {
        return err.find(words) != std::string::npos;
    }
    // One line and no more.
    [[nodiscard]] bool complained_in_one_line() const {
        return !err.empty() && err.find('\n') == err.size() - 1;
    }
};

inline Desk bench() {
    Desk desk;
    desk.disk.files = {
        {"lamp.mmk", device_text}, {"open.mmk", good_guide}, {"shut.mmk", bad_guide}};
    return desk;
}

} // namespace matchmark::test
