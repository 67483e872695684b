# Tests that run the device: a cell inside charges what it feeds; the engine heats the exhaust, which lies on no path; braking
# heats the disc, and the horn does not. What a test's `when` names stays so.
device motorcycle "Motorcycle"

part frame "frame"
part engine "engine" in frame
part battery "battery" in frame kind lead-acid-battery
  feeds      coil, horn through battery-plug
part coil "ignition coil" in frame
part horn "horn" in frame
connector battery-plug "battery plug" kind locking-tab-plug
  joins      battery to coil
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
part flash "flash unit" in frame
part store "store capacitor" in flash kind capacitor
connector flash-plug "flash plug" kind locking-tab-plug
  joins      flash to coil
energy warmth "heat of the caliper" in caliper kind heat
energy room-heat "heat of the engine" kind heat

guide try-again "Try it, and look again"
  for        trained
  tool       spanner-13 "spanner 13"
  tool       resistor "discharge resistor"
  tool       meter "multimeter"
  spare      horn-new "horn", 1 for horn

before

step wait "Wait"
  cool       exhaust
  cool       disc
  cool       warmth
  cool       room-heat

take-apart

step open "Take it apart"
  disconnect battery-plug
  discharge  store with resistor
  prove      store with meter
  remove     caliper
  remove     disc
  undo       exhaust-bolts
  remove     exhaust
  remove     horn

work

step renew "Renew the horn"
  replace    horn with horn-new

put-back

step put-on "Put it together"
  fit        horn
  fit        exhaust
  fasten     exhaust-bolts
  fit        disc

test early "The horn sounds"
  proves     sounds

step plug "Plug it in"
  connect    battery-plug

test horn "The horn sounds"
  when       exhaust cooled
  proves     sounds

step again "Let it cool"
  cool       room-heat
  disconnect battery-plug
  discharge  store with resistor
  prove      store with meter
  connect    battery-plug

step caliper-in "Put the caliper on"
  fit        caliper

test brakes "It brakes"
  proves     brakes

step look "Look at the brake"
  cool       disc
  cool       warmth
  cool       room-heat
  remove     caliper
  fit        caliper

test runs "The engine runs"
  proves     runs

step look-again "Look at the exhaust"
  cool       exhaust
  cool       room-heat
  undo       exhaust-bolts
  fasten     exhaust-bolts
  disconnect battery-plug
  discharge  store with resistor
  prove      store with meter
  disconnect flash-plug
  connect    flash-plug
  connect    battery-plug

test renewed "The horn is as loud as before"
