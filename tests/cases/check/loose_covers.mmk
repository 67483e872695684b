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

--- dish-washer
device dish-washer "Dish washer"

energy mains "mains supply" kind mains-cord 230 V
  feeds      heater
part cabinet "cabinet"
part tray "base tray" kind panel
  covers     heater
fastener tray-screws "tray screw" 4 x screw M4 x 12, hexalobular 20, pan
  holds      tray to cabinet
  torque     1.5 N.m
part heater "heater"

--- plugged-in-before-the-tray-is-held
use "dish-washer.mmk"
guide plugged-in-before-the-tray-is-held "Look at the heater"
  for        trained
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.5 N·m"

take-apart

step open "Take the tray off"
  unplug     mains
  undo       tray-screws with driver-20
  remove     tray

put-back

step close "Fit the tray"
  fit        tray
  # error 3-9 [on-over-loose] live from here
  plug-in    mains
  fasten     tray-screws with driver-20 to 1.5 N.m

--- tray-screws-forgotten
# What holds a cover is back before the supply: the missing line stands above the plug.
use "dish-washer.mmk"
guide tray-screws-forgotten "Look at the heater"
  for        trained
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.5 N·m"

take-apart

step open "Take the tray off"
  unplug     mains
  # error 3-6 [not-put-back] come off here
  undo       tray-screws with driver-20
  remove     tray

put-back

step close "Fit the tray"
  fit        tray
  plug-in    mains

--- unplugging-forgotten
# The counterpart of a line of the way back belongs on the way in.
use "dish-washer.mmk"
guide unplugging-forgotten "Look at the heater"
  for        trained
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.5 N·m"

take-apart

step open "Take the tray off"
  undo       tray-screws with driver-20
  # error 3-8 [hazard-not-cleared] lays open what it feeds
  remove     tray

put-back

step close "Fit the tray"
  fit        tray
  fasten     tray-screws with driver-20 to 1.5 N.m
  plug-in    mains

--- fan-box
device fan-box "Fan box"

energy mains "mains" kind mains-cord
  feeds      board
part box "box"
part cover "cover"
  covers     board
fastener screws "cover screw" 4 x screw M4 x 8, hexalobular 20
  holds      cover to box
  torque     1.2 N.m
bond gasket "cover gasket" kind rubber-gasket
  joins      cover to box
part board "board" in box kind circuit-board
function works "It works"
  through    board

--- tried-under-a-cover-on-its-gasket
use "fan-box.mmk"
guide tried-under-a-cover-on-its-gasket "Renew the board"
  goal       replace board with new
  for        trained
  before     unplug mains
  spare      new "board", 1 for board
  tool       k "hexalobular driver 20"
  tool       t "torque driver 1 to 3 N·m"

take-apart

step a "Out"
  undo       screws
  lift       gasket
  remove     cover
  remove     board

work

step b "New"
  replace    board with new
  dispose    board as electronic-waste

put-back

step c "In"
  fit        board
  seat       gasket
  fit        cover

step p "Plug in"
  plug-in    mains

# error 6-7 [live-test] hazard `mains` here
test t1 "It works"
  proves     board, works

step e "Close"
  fasten     screws
