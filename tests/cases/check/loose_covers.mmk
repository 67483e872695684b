# Situations of trials under covers that nothing holds.

--- mixer
device mixer "Mixer"

energy mains "mains cord" kind mains-cord 230 V
  feeds      motor
part frame "frame"
part guard "guard" kind panel
  covers     motor
fastener guard-screws "guard screw" 4 x screw M5 x 12, hexalobular 25, pan
  holds      guard to frame
  torque     3 N.m
part motor "motor"
function turn "It turns"
  through    motor

--- tried-with-the-guard-laid-on
use "mixer.mmk"
guide tried-with-the-guard-laid-on "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       driver-25 "hexalobular driver 25"
  tool       torque-driver-25 "torque driver, hexalobular 25"

take-apart

step open "Take the motor out"
  undo       guard-screws with driver-25
  remove     guard
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  fit        guard
  plug-in    mains

# error 6-9 [live-test] hazard `mains` here
test turn "It turns"
  proves     turn

step close "Close the mixer"
  unplug     mains
  fasten     guard-screws with torque-driver-25
  plug-in    mains

--- tried-with-one-screw-in
use "mixer.mmk"
guide tried-with-one-screw-in "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       driver-25 "hexalobular driver 25"
  tool       torque-driver-25 "torque driver, hexalobular 25"

take-apart

step open "Take the motor out"
  undo       guard-screws with driver-25
  remove     guard
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  fit        guard
  fasten     guard-screws 1 with torque-driver-25
  plug-in    mains

test turn "It turns"
  proves     turn

step close "Close the mixer"
  unplug     mains
  fasten     guard-screws 2, 3, 4 with torque-driver-25
  plug-in    mains

--- laid-on-on-purpose
use "mixer.mmk"
guide laid-on-on-purpose "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       driver-25 "hexalobular driver 25"
  tool       torque-driver-25 "torque driver, hexalobular 25"

take-apart

step open "Take the motor out"
  undo       guard-screws with driver-25
  remove     guard
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  fit        guard
  plug-in    mains

test turn "It turns"
  when       mains plugged, guard-screws out
  proves     turn

step close "Close the mixer"
  unplug     mains
  fasten     guard-screws with torque-driver-25
  plug-in    mains

--- placed-after-the-screws
use "mixer.mmk"
guide placed-after-the-screws "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       driver-25 "hexalobular driver 25"
  tool       torque-driver "torque driver 3 N·m"

take-apart

step open "Take the motor out"
  undo       guard-screws with driver-25
  remove     guard
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived

test turn "It turns"
  proves     turn
