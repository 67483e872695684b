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
