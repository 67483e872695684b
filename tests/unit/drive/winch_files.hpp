// A winch on the mains whose motor is renewed, with the way back left to the test.
#pragma once

#include <string>

namespace matchmark::test {

inline constexpr const char* winch = R"(device winch "Winch"

energy mains "mains cord" kind mains-cord 230 V
  feeds      motor
part frame "frame"
part cover "cover" kind panel
  covers     motor, motor-plug
part motor "motor"
connector motor-plug "motor plug" kind locking-tab-plug
  joins      motor to frame
function haul "It hauls"
  through    motor, motor-plug
)";

// A guide with its way back written out.
inline std::string renewing(const std::string& back) {
    return R"(use "winch.mmk"

guide renew-motor "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor

take-apart

step open "Take the motor out"
  remove     cover
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
)" + back;
}

} // namespace matchmark::test
