# Situations of tests under power: what is fed is tried with its supply on, and closed; a dead or an open test says so.

--- winch
device winch "Winch"

energy mains "mains cord" kind mains-cord 230 V
  feeds      motor, board
part frame "frame"
part cover "cover" kind panel
  covers     motor, board, motor-plug
part motor "motor"
part board "board"
part store "store capacitor" in board kind capacitor
  behind     cover
connector motor-plug "motor plug" kind locking-tab-plug
  joins      motor to board
function haul "It hauls"
  through    motor, motor-plug

--- placed-by-itself
use "winch.mmk"
guide placed-by-itself "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test haul "It hauls"
  proves     haul

--- wants-the-cover-off
use "winch.mmk"
guide wants-the-cover-off "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
# error 6-9 [dead-test] no supply here
test haul "It hauls"
  when       cover out
  proves     haul

--- dead-by-its-word
use "winch.mmk"
guide dead-by-its-word "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test coil "The meter reads 20 to 30 ohm across the motor"
  when       mains unplugged, cover out
  proves     haul
  with       meter

--- before-the-plug
use "winch.mmk"
guide before-the-plug "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug

# error 6-9 [dead-test] no supply here
test haul "It hauls"
  proves     haul

step close "Close the winch"
  fit        cover
  plug-in    mains

--- plug-left-out
use "winch.mmk"
guide plug-left-out "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  # error 14-19 [not-put-back] so from here on
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  fit        cover

test haul "It hauls"
  proves     haul

--- open-and-live
use "winch.mmk"
guide open-and-live "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug-in    mains

# error 6-9 [live-test] hazard `mains` here
test haul "It hauls"
  proves     haul

step isolate "Unplug it again"
  unplug     mains
  discharge  store with resistor
  prove      store with meter

step close "Close the winch"
  fit        cover
  plug-in    mains

--- open-and-live-is-meant
use "winch.mmk"
guide open-and-live-is-meant "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug-in    mains

test haul "It hauls"
  when       mains plugged, cover out
  proves     haul

step isolate "Unplug it again"
  unplug     mains
  discharge  store with resistor
  prove      store with meter

step close "Close the winch"
  fit        cover
  plug-in    mains

--- charged-again
use "winch.mmk"
guide charged-again "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug-in    mains

test haul "It hauls"
  when       mains plugged, cover out
  proves     haul

step close "Close the winch"
  unplug     mains
  # error 3-5 [hazard-not-cleared] works near it
  fit        cover
  plug-in    mains

--- oven
device oven "Small oven"

energy mains "mains cord" kind mains-cord 230 V
  feeds      board
part frame "frame"
part cover "cover" kind panel
  covers     board, heater, heater-plug
part board "driver board"
part heater "heater" kind heating-element
energy warmth "heat of the board" in board kind heat
  behind     cover
connector heater-plug "heater plug" kind locking-tab-plug
  joins      heater to board
function heats "It heats"
  through    board, heater-plug, heater

--- hot-again-behind-its-plug
use "oven.mmk"
guide hot-again-behind-its-plug "Renew the heater"
  goal       replace heater with heater-new
  for        competent
  before     unplug mains
  before     cool heater
  before     cool warmth
  spare      heater-new "heater", 1, 9.50 EUR for heater

take-apart

step open "Take the heater out"
  remove     cover
  disconnect heater-plug
  remove     heater

work

step renew "Take the new one"
  replace    heater with heater-new

put-back

step heater-in "Put the heater in"
  fit        heater
  connect    heater-plug

step power-on "Power for the trial"
  plug-in    mains

test heats "It heats"
  when       mains plugged, cover out
  proves     heats, heater

step power-off "Isolate it again"
  unplug     mains

step seat "Seat the plug once more"
  # error 3-12 [hazard-not-cleared] works near it
  # error 3-12 [hazard-not-cleared] works near it
  disconnect heater-plug
  connect    heater-plug

step close "Close it"
  fit        cover

step power "Restore the supply"
  plug-in    mains

test heats-closed "It heats"
  proves     heats

--- tried-in-pieces
use "winch.mmk"
guide tried-in-pieces "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

# error 6-10 [test-not-ready] proves nothing here
test early "It hauls"
  proves     haul

# error 6-11 [test-not-ready] cannot be done here
test seated "It hauls"
  when       motor in
  proves     haul

# error 6-10 [test-not-ready] cannot be done here
test power "It hauls"
  when       mains plugged
  proves     haul

test coil "The meter reads 20 to 30 ohm across the motor on the bench"
  when       motor out, motor-plug apart, mains unplugged
  proves     motor
  with       meter

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test haul "It hauls"
  proves     haul

--- tried-before-anything
use "winch.mmk"
guide tried-before-anything "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

# error 6-10 [dead-test] no supply here
test first "It does not haul"
  proves     haul

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test haul "It hauls"
  proves     haul

--- closed-too-soon
use "winch.mmk"
guide closed-too-soon "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  fit        cover

# error 6-9 [test-not-ready] cannot be done here
test haul "It hauls"
  when       cover out
  proves     haul

step power "Restore the supply"
  plug-in    mains

--- left-on-after-an-open-trial
use "winch.mmk"
guide left-on-after-an-open-trial "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  # error 14-19 [not-put-back] so from here on
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug

step power-on "Power for the trial"
  plug-in    mains

# error 6-9 [live-test] hazard `mains` here
test haul "It hauls"
  when       cover out
  proves     haul

step close "Close the winch"
  # error 3-5 [hazard-not-cleared] what it feeds lies open here
  # error 3-5 [hazard-not-cleared] works near it
  fit        cover

--- garden-saw
device garden-saw "Garden saw"
energy mains "mains" kind mains-cord 230 V
  feeds      motor
part body "body"
part motor "motor" in body kind motor
part sprocket "sprocket" kind sprocket
part saw-chain "saw chain" kind chain
  behind     guard-plate
part guard-plate "guard" kind guard
fastener guard-screw "guard screw" 1 x screw M5, hexagon 4
  holds      guard-plate to body
fastener sprocket-nut "sprocket nut" 1 x nut M8, hexagon-head 13
  holds      sprocket to body
function cuts "It cuts"
  through    motor, sprocket, saw-chain


--- run-while-not-joined
use "garden-saw.mmk"
guide run-while-not-joined "Renew the chain"
  goal       replace saw-chain with chain-new
  for        competent
  spare      chain-new "saw chain", 1 for saw-chain
  tool       key "hexagon key 4"
  tool       spanner "spanner 13"
  tool       chain-tool "chain tool"
  before     unplug mains

take-apart
step open "Take the guard off"
  undo       guard-screw with key
  remove     guard-plate
step out "Take the chain off"
  open       saw-chain with chain-tool
  lift-off   saw-chain
  undo       sprocket-nut with spanner
  remove     sprocket

work
step renew "Take the new one"
  replace    saw-chain with chain-new

put-back
step lay "Lay it on"
  fit        sprocket
  lay-on     saw-chain
  fit        guard-plate
  fasten     guard-screw with key
  plug-in    mains
# error 6-9 [untested] proves nothing here
test runs "It runs"
  proves     cuts
step rest "The rest"
  unplug     mains
  undo       guard-screw with key
  remove     guard-plate
  join       saw-chain with chain-tool
  start      sprocket-nut
  tighten    sprocket-nut with spanner
  fit        guard-plate
  fasten     guard-screw with key
  plug-in    mains

--- run-while-not-fastened
use "garden-saw.mmk"
guide run-while-not-fastened "Renew the chain"
  goal       replace saw-chain with chain-new
  for        competent
  spare      chain-new "saw chain", 1 for saw-chain
  tool       key "hexagon key 4"
  tool       spanner "spanner 13"
  tool       chain-tool "chain tool"
  before     unplug mains

take-apart
step open "Take the guard off"
  undo       guard-screw with key
  remove     guard-plate
step out "Take the chain off"
  open       saw-chain with chain-tool
  lift-off   saw-chain
  undo       sprocket-nut with spanner
  remove     sprocket

work
step renew "Take the new one"
  replace    saw-chain with chain-new

put-back
step lay "Lay it on"
  fit        sprocket
  lay-on     saw-chain
  join       saw-chain with chain-tool
  fit        guard-plate
  fasten     guard-screw with key
  plug-in    mains
# error 6-9 [untested] proves nothing here
test runs "It runs"
  proves     cuts
step rest "The rest"
  unplug     mains
  undo       guard-screw with key
  remove     guard-plate
  start      sprocket-nut
  tighten    sprocket-nut with spanner
  fit        guard-plate
  fasten     guard-screw with key
  plug-in    mains

--- run-once-whole
use "garden-saw.mmk"
guide run-once-whole "Renew the chain"
  goal       replace saw-chain with chain-new
  for        competent
  spare      chain-new "saw chain", 1 for saw-chain
  tool       key "hexagon key 4"
  tool       spanner "spanner 13"
  tool       chain-tool "chain tool"
  before     unplug mains

take-apart
step open "Take the guard off"
  undo       guard-screw with key
  remove     guard-plate
step out "Take the chain off"
  open       saw-chain with chain-tool
  lift-off   saw-chain
  undo       sprocket-nut with spanner
  remove     sprocket

work
step renew "Take the new one"
  replace    saw-chain with chain-new

put-back
step lay "Lay it on"
  fit        sprocket
  start      sprocket-nut
  tighten    sprocket-nut with spanner
  lay-on     saw-chain
  join       saw-chain with chain-tool
  fit        guard-plate
  fasten     guard-screw with key
  plug-in    mains
test runs "It runs"
  proves     cuts

--- burr-mill
device burr-mill "Mill"
energy mains "mains supply" kind mains-cord 230 V
  feeds      motor
part body "body"
part hood "hood" kind guard
  covers     carrier, burr
part carrier "burr carrier"
  carries    burr
fastener hood-screw "hood screw" 1 x screw M4 x 10, cross-recess 2, pan
  holds      hood to body
  torque     1 N.m
fastener carrier-screws "carrier screw" 3 x screw M4 x 12, cross-recess 2, pan
  holds      carrier to body
  behind     hood
  torque     1.5 N.m
part burr "burr" kind blade
fastener burr-screws "burr screw" 3 x screw M3 x 6, cross-recess 1, countersunk
  holds      burr to carrier
  behind     hood
  torque     0.8 N.m
part motor "motor" kind motor
  behind     base
part base "base cover" kind panel
fastener base-screws "base screw" 2 x screw M4 x 10, cross-recess 2, pan
  holds      base to body
  torque     1 N.m
function grinding "It grinds"
  through    motor, burr

--- run-with-its-carrier-loose
use "burr-mill.mmk"
guide run-with-its-carrier-loose "Renew the burr"
  goal       replace burr with burr-new
  for        competent
  spare      burr-new "burr", 1, 9.00 EUR for burr
  tool       cross-2 "cross-recess driver 2"
  tool       cross-1 "cross-recess driver 1"
  tool       torque-driver "torque driver 0.8 to 1.5 N·m"
take-apart
step unplug "Unplug"
  unplug     mains
step hood "Take the hood off"
  undo       hood-screw
  remove     hood
step carrier "Take the carrier out"
  undo       carrier-screws
  remove     carrier
step burr "Take the burr off"
  undo       burr-screws
  remove     burr
work
step renew "Renew"
  replace    burr with burr-new
put-back
step burr "Fit the burr"
  fit        burr
  fasten     burr-screws to 0.8 N.m
step carrier "Fit the carrier"
  fit        carrier
step hood "Fit the hood"
  fit        hood
  fasten     hood-screw to 1 N.m
step power "Plug in"
  plug-in    mains
# error 6-11 [untested] proves nothing here
test grinds "It grinds"
  proves     burr, grinding
step off "Tighten the carrier"
  unplug     mains
  undo       hood-screw
  remove     hood
  fasten     carrier-screws to 1.5 N.m
  fit        hood
  fasten     hood-screw to 1 N.m
  plug-in    mains

--- hedge-cutter
device hedge-cutter "Hedge cutter"

# A battery has no hazard of its own here: the guard is asked for all the same.
part pack "battery pack" kind battery-pack
  feeds      motor
part body "body"
part motor "motor" in body kind motor
part belt "belt" kind drive-belt
part belt-guard "belt guard" kind guard
  covers     belt
fastener guard-screws "guard screw" 2 x screw M4 x 10, cross-recess 2, pan
  holds      belt-guard to body
function cut "It cuts"
  through    motor, belt

--- run-with-the-guard-off
use "hedge-cutter.mmk"
guide run-with-the-guard-off "Renew the belt"
  goal       replace belt with belt-new
  for        competent
  spare      belt-new "belt", 1 for belt
  tool       driver-2 "cross-recess driver 2"

take-apart

step open "Take the guard off"
  slide-out  pack
  undo       guard-screws with driver-2
  remove     belt-guard
  remove     belt

work

step renew "Take the new one"
  replace    belt with belt-new

put-back

step belt-on "Put the belt on"
  fit        belt
  slide-in   pack

# error 6-9 [untested] proves nothing here
test cuts "It cuts"
  proves     cut

step close "Close it"
  slide-out  pack
  fit        belt-guard
  fasten     guard-screws with driver-2
  slide-in   pack

--- run-with-the-guard-on
use "hedge-cutter.mmk"
guide run-with-the-guard-on "Renew the belt"
  goal       replace belt with belt-new
  for        competent
  spare      belt-new "belt", 1 for belt
  tool       driver-2 "cross-recess driver 2"

take-apart

step open "Take the guard off"
  slide-out  pack
  undo       guard-screws with driver-2
  remove     belt-guard
  remove     belt

work

step renew "Take the new one"
  replace    belt with belt-new

put-back

step close "Close it"
  fit        belt
  fit        belt-guard
  fasten     guard-screws with driver-2
  slide-in   pack

test cuts "It cuts"
  proves     cut

--- loft-fan
device loft-fan "Loft fan"

energy supply "supply" kind mains-isolator 230 V
  feeds      block
part body "body"
part cover "cover"
  covers     block, motor-plug, fan-motor
part block "terminal block" in body
part fan-motor "fan motor" kind motor
connector motor-plug "motor plug" kind locking-tab-plug
  joins      fan-motor to block
part vane "vane"

--- fan-tried-with-its-board-dead
use "loft-fan.mmk"
guide fan-tried-with-its-board-dead "Renew the motor"
  goal       replace fan-motor with motor-new
  for        competent
  spare      motor-new "fan motor", 1 for fan-motor
  tool       lock "padlock"
  tool       tester "voltage tester"

take-apart

step out "Take the motor out"
  lock-off   supply with lock
  remove     cover
  prove      supply with tester
  disconnect motor-plug
  remove     fan-motor

work

step new "Take the new one"
  replace    fan-motor with motor-new
  dispose    fan-motor as electronic-waste

put-back

step motor-in "Put the motor in"
  fit        fan-motor
  connect    motor-plug
# error 6-10 [dead-test] no supply here
test turns "It turns"
  proves     fan-motor

step close "Close it"
  hand-back  supply
  fit        cover
  restore    supply
