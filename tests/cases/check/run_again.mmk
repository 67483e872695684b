# Situations of tests that run the device: what was made safe before is dangerous again, by a cell inside or by the running
# itself.

--- flash-lamp
device flash-lamp "Flash lamp"

part frame "frame"
part cell "cell" kind lithium-pouch-cell 1000 mAh 3.7 V
  feeds      board through cell-plug
part lid "lid"
  covers     board, cell, cell-plug, store
part board "board" kind circuit-board
part store "store capacitor" in board kind capacitor
connector cell-plug "cell plug" kind friction-plug
  joins      cell to board
function light "It lights"
  through    cell-plug, board

--- charged-by-the-cell
use "flash-lamp.mmk"
guide charged-by-the-cell "Renew the board"
  goal       replace board with board-new
  for        competent
  before     discharge cell below 25 %
  spare      board-new "board", 1 for board
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the board out"
  remove     lid
  disconnect cell-plug
  discharge  store with resistor
  prove      store with meter
  remove     board

work

step renew "Take the new one"
  replace    board with board-new
  dispose    board as electronic-waste

put-back

step board-in "Put the board in"
  fit        board
  connect    cell-plug

test light "It lights"
  when       cell-plug connected, lid out
  proves     light

step close "Close it"
  # error 3-5 [hazard-not-cleared] works near it
  fit        lid

--- let-off-after-the-trial
use "flash-lamp.mmk"
guide let-off-after-the-trial "Renew the board"
  goal       replace board with board-new
  for        competent
  before     discharge cell below 25 %
  spare      board-new "board", 1 for board
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the board out"
  remove     lid
  disconnect cell-plug
  discharge  store with resistor
  prove      store with meter
  remove     board

work

step renew "Take the new one"
  replace    board with board-new
  dispose    board as electronic-waste

put-back

step board-in "Put the board in"
  fit        board
  connect    cell-plug

test light "It lights"
  when       cell-plug connected, lid out
  proves     light

step close "Close it"
  disconnect cell-plug
  discharge  store with resistor
  prove      store with meter
  connect    cell-plug
  fit        lid

test light-closed "It lights"
  proves     light

--- motorcycle
device motorcycle "Motorcycle"

part frame "frame"
part engine "engine" in frame
part battery "battery" in frame kind lead-acid-battery
  feeds      coil, horn through battery-plug
part coil "ignition coil" in frame
part horn "horn" in frame
connector battery-plug "battery plug" kind locking-tab-plug
  joins      battery to coil
part seat "seat" in frame
fastener seat-bolt "seat bolt" 1 x screw M8 x 20, hexagon-head 13
  holds      seat to frame
  torque     20 N.m
part exhaust "exhaust" in frame kind exhaust
fastener exhaust-bolts "exhaust bolt" 2 x screw M8 x 20, hexagon-head 13
  holds      exhaust to engine
  torque     20 N.m
part caliper "brake caliper" in frame
  blocks     disc
part disc "brake disc" in frame kind brake-disc
function runs "The engine runs"
  through    coil, engine
function sounds "The horn sounds"
  through    horn
function brakes "It brakes from walking pace"
  through    caliper, disc

--- hot-by-the-engine
use "motorcycle.mmk"
guide hot-by-the-engine "Renew the ignition coil"
  goal       replace coil with coil-new
  for        competent
  before     cool exhaust
  spare      coil-new "ignition coil", 1, 40.00 EUR for coil
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step off "Take the coil out"
  undo       exhaust-bolts
  remove     exhaust
  disconnect battery-plug
  remove     coil

work

step renew "Take the new one"
  replace    coil with coil-new

put-back

step put-on "Put the coil in"
  fit        coil
  connect    battery-plug
  fit        exhaust
  fasten     exhaust-bolts

test runs "The engine runs"
  proves     runs, coil

step again "Tighten the exhaust once more"
  # error 3-6 [hazard-not-cleared] works near it
  undo       exhaust-bolts
  fasten     exhaust-bolts

--- cooled-after-the-engine
use "motorcycle.mmk"
guide cooled-after-the-engine "Renew the ignition coil"
  goal       replace coil with coil-new
  for        competent
  before     cool exhaust
  spare      coil-new "ignition coil", 1, 40.00 EUR for coil
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step off "Take the coil out"
  undo       exhaust-bolts
  remove     exhaust
  disconnect battery-plug
  remove     coil

work

step renew "Take the new one"
  replace    coil with coil-new

put-back

step put-on "Put the coil in"
  fit        coil
  connect    battery-plug
  fit        exhaust
  fasten     exhaust-bolts

test runs "The engine runs"
  proves     runs, coil

step again "Tighten the exhaust once more"
  cool       exhaust
  undo       exhaust-bolts
  fasten     exhaust-bolts

--- tried-last-by-itself
use "motorcycle.mmk"
guide tried-last-by-itself "Renew the ignition coil"
  goal       replace coil with coil-new
  for        competent
  before     cool exhaust
  spare      coil-new "ignition coil", 1, 40.00 EUR for coil
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step off "Take the coil out"
  undo       exhaust-bolts
  remove     exhaust
  disconnect battery-plug
  remove     coil

work

step renew "Take the new one"
  replace    coil with coil-new

put-back
  derived
test runs "The engine runs"
  proves     runs, coil

--- horn-alone
use "motorcycle.mmk"
guide horn-alone "Renew the horn"
  goal       replace horn with horn-new
  for        competent
  before     cool exhaust
  before     cool disc
  spare      horn-new "horn", 1, 40.00 EUR for horn
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step off "Take the horn out"
  disconnect battery-plug
  remove     caliper
  remove     disc
  undo       exhaust-bolts
  remove     exhaust
  remove     horn

work

step renew "Take the new one"
  replace    horn with horn-new

put-back

step put-on "Put the horn in"
  fit        horn
  connect    battery-plug
  fit        exhaust

test sounds "The horn sounds"
  when       exhaust cooled
  proves     sounds, horn

step last "Put the rest on"
  fasten     exhaust-bolts
  fit        disc
  fit        caliper

--- disc-hot-by-braking
use "motorcycle.mmk"
guide disc-hot-by-braking "Renew the caliper"
  goal       replace caliper with caliper-new
  for        trained
  before     cool disc
  spare      caliper-new "brake caliper", 1, 90.00 EUR for caliper

take-apart

step off "Take the caliper off"
  remove     caliper
  remove     disc

work

step renew "Take the new one"
  replace    caliper with caliper-new

put-back

step put-on "Put the caliper on"
  fit        disc
  fit        caliper

test brakes "It brakes from walking pace"
  proves     brakes, caliper

step look "Look at the disc once more"
  remove     caliper
  # error 3-8 [hazard-not-cleared] works near it
  remove     disc
  fit        disc
  fit        caliper

test brakes-again "It brakes from walking pace"
  proves     brakes, caliper

--- pump-set
device pump-set "Motor pump"

part battery "starter battery" kind lead-acid-battery
  feeds      coil through battery-plug
part engine "engine"
part exhaust "exhaust" in engine kind exhaust
part shield "heat shield"
fastener shield-bolt "shield bolt" 2 x screw M6 x 12, hexagon-head 10
  holds      shield to exhaust
  torque     9 N.m
part coil "ignition coil"
connector battery-plug "battery plug" kind locking-tab-plug
  joins      coil to engine
function runs "The engine runs"
  through    coil, engine, exhaust

--- hot-on-the-derived-way-back
use "pump-set.mmk"
guide hot-on-the-derived-way-back "Renew the ignition coil"
  goal       replace coil with coil-new
  for        competent
  before     cool exhaust
  spare      coil-new "ignition coil", 1, 40.00 EUR for coil
  tool       spanner-10 "spanner 10"
  tool       torque-wrench "torque wrench 9 N·m"

take-apart

step off "Take the coil out"
  undo       shield-bolt
  remove     shield
  disconnect battery-plug
  remove     coil

work

step renew "Take the new one"
  replace    coil with coil-new

put-back
  # error 3-9 [hazard-not-cleared] works near it
  derived
test runs "The engine runs"
  when       shield out
  proves     runs, coil

--- rook-tiller
device rook-tiller "Rook 3 tiller"
energy engine-run "running engine" kind moving-mechanism
  feeds      crankshaft
part engine "engine"
part crankshaft "crankshaft" in engine kind shaft
part guard "belt guard" kind guard
  covers     belt
fastener guard-bolts "guard bolt" 2 x bolt M8 x 16, hexagon-head 13
  holds      guard to engine
  torque     20 N.m
part belt "drive belt" kind drive-belt
function tilling "The tines turn"
  through    crankshaft, belt

--- released-and-started
use "rook-tiller.mmk"
guide released-and-started "Renew the belt"
  goal       replace belt with belt-new
  for        competent
  spare      belt-new "drive belt", 1 for belt
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step open "Open the guard"
  stop       engine-run
  run-down   engine-run
  undo       guard-bolts with spanner-13
  remove     guard
  remove     belt

work

step new "Take the new belt"
  replace    belt with belt-new

put-back

step close "Close the guard"
  fit        belt
  fit        guard
  fasten     guard-bolts with spanner-13 to 20 N.m

step start "Start the engine"
  release    engine-run
  start      engine-run

test tills "The tines turn"
  proves     belt, tilling
