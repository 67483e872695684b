# Situations of waiting and discharging while the supply is still on: what it comes to, behind an inner plug too, does not
# cool and is not proved dead.

--- toaster
device toaster "Toaster"

energy mains "mains cord" kind mains-cord 230 V
  feeds      board
part frame "frame"
part cover "cover" kind panel
  covers     board, heater, heater-plug
part board "driver board"
part heater "heater" kind heating-element
energy warmth "heat of the board" in board kind heat
  behind     cover
part store "store capacitor" kind capacitor-with-test-points
connector heater-plug "heater plug" kind locking-tab-plug
  joins      heater to board
connector store-plug "plug of the store" kind locking-tab-plug
  joins      store to board

--- off-and-waited-for
use "toaster.mmk"
guide off-and-waited-for "Take the heater out"
  for        competent
  before     unplug mains
  before     cool heater
  before     cool warmth

take-apart

step open "Take the heater out"
  remove     cover
  disconnect heater-plug
  remove     heater

put-back
  derived

--- heater-waited-for-while-on
use "toaster.mmk"
guide heater-waited-for-while-on "Take the heater out"
  for        competent
  # error 14-17 [still-live] under power here
  before     cool heater
  before     unplug mains
  before     cool warmth

take-apart

step open "Take the heater out"
  remove     cover
  disconnect heater-plug
  remove     heater

put-back
  derived

--- warmth-waited-for-while-on
use "toaster.mmk"
guide warmth-waited-for-while-on "Take the heater out"
  for        competent
  # error 14-17 [still-live] under power here
  before     cool warmth
  before     unplug mains
  before     cool heater

take-apart

step open "Take the heater out"
  remove     cover
  disconnect heater-plug
  remove     heater

put-back
  derived

--- store-discharged-while-on
use "toaster.mmk"
guide store-discharged-while-on "Take the store out"
  for        competent
  tool       resistor "discharge resistor"
  tool       meter "multimeter"
  # error 14-22 [still-live] under power here
  before     discharge store with resistor
  before     prove store with meter
  before     unplug mains

take-apart

step out "Take the store out"
  disconnect store-plug
  remove     store

put-back
  derived

--- cooled-beside-the-live-device
use "toaster.mmk"
guide cooled-beside-the-live-device "Let the heater cool once more"
  for        competent
  before     unplug mains
  before     cool heater
  before     cool warmth

take-apart

step open "Take the heater out"
  remove     cover
  disconnect heater-plug
  remove     heater
  fit        cover
  plug-in    mains

work

step warm "Warm it on the bench"
  warm       heater
  cool       heater

step off "Isolate it again"
  unplug     mains
  cool       warmth

put-back

step back "Put the heater back"
  remove     cover
  fit        heater
  connect    heater-plug
  fit        cover
  plug-in    mains

--- station
device station "Soldering station"

energy mains "mains cord" kind mains-cord 230 V
  feeds      base
part base "base"
part tip "tip" in base
energy heat "hot tip" kind heat
  feeds      tip
energy fan "fan" in base kind moving-mechanism

--- stopped-while-on
use "station.mmk"
guide stopped-while-on "Take the tip out"
  for        competent
  before     stop fan
  before     unplug mains
  before     run-down fan
  before     cool heat

take-apart

step out "Take the tip out"
  remove     tip

put-back
  derived

--- tip-waited-for-while-on
use "station.mmk"
guide tip-waited-for-while-on "Take the tip out"
  for        competent
  # error 14-17 [still-live] under power here
  before     cool heat
  before     unplug mains

take-apart

step out "Take the tip out"
  remove     tip

put-back
  derived

--- tip-hot-again
use "station.mmk"
guide tip-hot-again "Seat the tip"
  for        competent
  before     unplug mains
  before     cool heat

take-apart

step out "Take the tip out"
  remove     tip

put-back

step tip-in "Put the tip in"
  fit        tip
  plug-in    mains

step seat "Seat the tip once more"
  unplug     mains
  # error 3-8 [still-live] under power here
  remove     tip
  fit        tip
  plug-in    mains

--- roof-inverter
device roof-inverter "Roof inverter"
energy roof "panels" kind solar-panel 600 V
  feeds      board
part case "case"
part lid "lid"
  covers     board, board-screws
fastener lid-screws "lid screw" 4 x screw M5 x 16, hexagon 4
  holds      lid to case
  torque     3 N.m
part board "board" kind circuit-board
fastener board-screws "board screw" 4 x screw M4 x 8, hexagon 3
  holds      board to case
  torque     1.5 N.m

--- locked-off-and-back-too-early
use "roof-inverter.mmk"
guide locked-off-and-back-too-early "Clean the board"
  for        competent
  tool       tester "voltage tester 1000 V"
  tool       key-4 "hexagon key 4"
  tool       key-3 "hexagon key 3"
  tool       torque-driver "torque driver 1.5 to 3 N·m"

take-apart

step open "Take the board out"
  isolate    roof
  undo       lid-screws with key-4
  remove     lid
  prove      roof with tester
  undo       board-screws with key-3
  remove     board

put-back

step board-in "Put the board in, switch on, and close"
  fit        board
  fasten     board-screws with key-3 to 1.5 N.m
  hand-back  roof
  reconnect  roof
  # error 3-5 [hazard-not-cleared] what it feeds lies open here
  fit        lid
  fasten     lid-screws with key-4 to 3 N.m

--- duct-fan
device duct-fan "Duct fan"

energy mains "mains" kind mains-cord 230 V
  feeds      cap
part case "case"
part lid "lid" kind panel
  covers     cap
fastener screws "lid screw" 2 x screw M4 x 10, cross-recess 2
  holds      lid to case
part cap "capacitor" kind capacitor 50 uF 400 V
part foot "foot"
function works "It works"
  through    cap

--- plugged-in-before-the-lid
use "duct-fan.mmk"
guide plugged-in-before-the-lid "Renew the capacitor"
  goal       replace cap with cap-new
  for        trained
  spare      cap-new "capacitor 50 uF 400 V", 1, 30 EUR for cap
  tool       ph2 "cross-recess driver 2"
  tool       res "discharge resistor 10 kohm 25 W"
  tool       meter "meter 1000 V"

take-apart

step open "Open"
  unplug     mains
  remove     foot
  undo       screws
  remove     lid
  discharge  cap through 10 kohm for 15 s with res
  prove      cap below 60 V with meter
  remove     cap

work

step take "Take the new one"
  replace    cap with cap-new
  dispose    cap as electronic-waste

put-back

step in-again "In"
  fit        cap

step power "Power"
  plug-in    mains

step close "Close"
  # error 3-5 [hazard-not-cleared] what it feeds lies open here
  fit        lid
  fasten     screws
  fit        foot

test works "It works"
  when       mains plugged
  proves     cap, works

--- wall-lamp
device wall-lamp "Wall lamp"
energy mains "mains" kind mains-cord
  feeds      board
part body "body"
part lid "lid"
  covers     board
fastener screws "lid screw" 4 x screw M3 x 10, hexalobular 10
  holds      lid to body
  torque     0.8 N.m
part board "board" in body

--- never-unplugged
use "wall-lamp.mmk"
guide never-unplugged "Look at the board"
  for        competent
  tool       driver "hexalobular driver 10"
  tool       torque-driver "torque driver 0.8 N·m"

take-apart

step open "Open"
  undo       screws with driver
  # error 3-8 [hazard-not-cleared] lays open what it feeds
  remove     lid

put-back

step close "Close"
  fit        lid
  fasten     screws with driver to 0.8 N.m

--- siskin-inverter
device siskin-inverter "Siskin 5 inverter"
energy supply "three-phase supply" kind mains-isolator 400 V
  feeds      block
energy panels "string of panels" kind solar-panel 600 V
  feeds      dc-input
part case "case"
part block "terminal block" in case
part lead "supply lead" kind cable
connector wires "supply wire" 3 x screw-terminal M4, slotted 5.5
  joins      lead to block
part dc-input "DC input" in case
part roof-lead "roof lead" kind cable
connector dc-plug "DC plug" kind sealed-plug
  joins      roof-lead to dc-input

--- off-and-not-proved
use "siskin-inverter.mmk"
guide off-and-not-proved "Take the leads off"
  for        competent
  tool       lock "padlock with tag"
  tool       driver "slotted driver 5.5"

take-apart

step off "Take the leads off"
  lock-off   supply with lock
  isolate    panels
  # error 3-9 [hazard-not-cleared] works on what it feeds
  slacken    wires with driver
  # error 3-12 [hazard-not-cleared] works on what it feeds
  disconnect wires, dc-plug
  remove     lead, roof-lead

put-back
  derived

--- proved-at-the-terminals
use "siskin-inverter.mmk"
guide proved-at-the-terminals "Take the leads off"
  for        competent
  tool       lock "padlock with tag"
  tool       tester "voltage tester 1000 V"
  tool       driver "slotted driver 5.5"

take-apart

step off "Take the leads off"
  lock-off   supply with lock
  prove      supply with tester
  isolate    panels
  prove      panels with tester
  slacken    wires with driver
  disconnect wires, dc-plug
  remove     lead, roof-lead

put-back
  derived

--- proved-after-the-plugs
use "siskin-inverter.mmk"
guide proved-after-the-plugs "Take the leads off"
  for        competent
  tool       lock "padlock with tag"
  tool       tester "voltage tester 1000 V"
  tool       driver "slotted driver 5.5"

take-apart

step off "Take the leads off"
  lock-off   supply with lock
  isolate    panels
  # error 3-9 [hazard-not-cleared] works on what it feeds
  slacken    wires with driver
  # error 3-12 [hazard-not-cleared] works on what it feeds
  disconnect wires, dc-plug
  prove      supply with tester
  prove      panels with tester
  remove     lead, roof-lead

put-back
  derived

--- roof-string
device roof-string "Inverter under a roof"

energy panels "string of panels" kind solar-panel 600 V
  feeds      dc-input
energy sun "sun on the string" kind daylight 600 V
  feeds      roof-lead
part roof-lead "lead from the panels" kind cable
part dc-input "DC input board" kind circuit-board
connector dc-plug "DC plug" kind sealed-plug
  joins      roof-lead to dc-input

--- lead-live-by-day
use "roof-string.mmk"
guide lead-live-by-day "Take the lead off"
  for        competent
  tool       tester "voltage tester 1000 V"

take-apart

step off "Take the lead off"
  isolate    panels
  prove      panels with tester
  # error 3-12 [still-live] under power here
  disconnect dc-plug
  remove     roof-lead

put-back
  derived
