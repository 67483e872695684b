# A splitter with its power pack, and a saw's engine: started before the guard, oil of another sort, one torque on two
# unions, a trial by hand with the engine disarmed.

--- wedge-splitter
device wedge-splitter "Wedge splitter"

energy supply "supply" kind motor-supply 400 V
  feeds      motor
part beam "beam"
part motor "motor" kind motor
  feeds      cylinder
part cylinder "cylinder" kind cylinder
  feeds      wedge
energy ram "raised ram" in cylinder kind lifted-ram
part wedge "wedge" kind blade
part guard "guard" kind guard
  covers     wedge
fastener screws "guard screw" 4 x screw M6 x 16, hexagon-head 10
  holds      guard to beam
function splitting "It splits"
  through    motor, cylinder, wedge

--- power-on-before-the-guard
use "wedge-splitter.mmk"
guide power-on-before-the-guard "Renew the wedge"
  goal       replace wedge with wedge-new
  for        trained
  spare      wedge-new "wedge", 1 for wedge
  tool       lock "padlock"
  tool       s10 "spanner 10"

take-apart

step off "Guard and wedge off"
  lower      ram
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  undo       screws with s10
  remove     guard, wedge

work

step renew "New wedge"
  replace    wedge with wedge-new

put-back

step wedge "Wedge in"
  fit        wedge

step power "Power on"
  hand-back  supply
  unlock     supply
  start-up   supply
  raise      ram

step guard "Guard on"
  # error 3-5 [hazard-not-cleared] what it feeds lies open here
  fit        guard
  fasten     screws

test splits "It splits a log"
  proves     splitting, wedge

--- lock-forgotten
use "wedge-splitter.mmk"
guide lock-forgotten "Renew the wedge"
  goal       replace wedge with wedge-new
  for        trained
  spare      wedge-new "wedge", 1 for wedge
  tool       lock "padlock"
  tool       s10 "spanner 10"

take-apart

step off "Guard and wedge off"
  lower      ram
  shut-down  supply
  # error 3-6 [hazard-not-cleared] works on what it feeds
  undo       screws with s10
  remove     guard, wedge

work

step renew "New wedge"
  replace    wedge with wedge-new

put-back

step back "Wedge in, guard on, power on"
  fit        wedge, guard
  fasten     screws
  start-up   supply
  raise      ram

test splits "It splits a log"
  proves     splitting, wedge

--- oil-unit
device oil-unit "Oil unit"

part tank "oil tank" kind tank
fluid oil "oil" in tank 9 l kind hydraulic-oil
part pipe "pipe" kind hose
part block "block"
part pump "pump"
connector near "near union" kind face-seal-joint
  joins      pipe to pump
  torque     55 N.m
connector far "far union" kind face-seal-joint
  joins      pipe to block
  torque     55 N.m

--- gear-oil-for-hydraulic-oil
use "oil-unit.mmk"
guide gear-oil-for-hydraulic-oil "Change the oil"
  for        trained
  # warning 14-20 [other-fluid] another fluid
  supply     new-oil "gear oil 90", 9 l for oil
  tool       pan "drain pan"

take-apart

step drain "Drain it"
  drain      oil with pan
  dispose    oil as waste-oil

put-back

step fill "Fill it"
  fill       oil with new-oil

--- oil-and-no-more-said
use "oil-unit.mmk"
guide oil-and-no-more-said "Change the oil"
  for        trained
  supply     new-oil "oil, 9 l", 9 l for oil
  tool       pan "drain pan"

take-apart

step drain "Drain it"
  drain      oil with pan
  dispose    oil as waste-oil

put-back

step fill "Fill it"
  fill       oil with new-oil

--- one-torque-on-two-unions
use "oil-unit.mmk"
guide one-torque-on-two-unions "Pipe off and on"
  goal       remove pipe
  for        trained
  tool       s27 "spanner 27"
  tool       wrench "torque wrench 5 to 100 N·m"

take-apart

step off "Pipe off"
  # warning 3-6 [nothing-behind] opened with what is in it
  undo       near, far with s27
  remove     pipe

put-back

step fit "Pipe on"
  fit        pipe
  # error 3-7 [other-torque] which of the two?
  do-up      near, far with s27 to 5.5 N.m

--- pole-saw
kind saw-engine "saw engine" is energy
  states     ready, disarmed
  disarm     ready -> disarmed by hand from outside takes 15 s
  arm        disarmed -> ready by hand from outside takes 15 s
  live in    ready
  hazard     unexpected-start until disarmed on reach

device pole-saw "Pole saw"

part shaft "shaft" kind shaft
energy engine "engine" kind saw-engine
  feeds      shaft
part tank "fuel tank" kind tank
fluid petrol "petrol" in tank 0.4 l kind fuel
part carburettor "carburettor"
part hose "fuel hose" kind hose
connector tank-end "tank end" kind hose-barb
  joins      hose to tank
connector carburettor-end "carburettor end" kind hose-barb
  joins      hose to carburettor
part silencer "silencer" kind exhaust
function running "It runs"
  through    shaft, hose, carburettor, silencer

--- pumped-up-with-the-engine-disarmed
use "pole-saw.mmk"
guide pumped-up-with-the-engine-disarmed "Renew the fuel hose"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "fuel hose", 1 for hose
  tool       hand-pump "hand pump"

take-apart

step off "Cold, disarmed, empty, hose off"
  cool       silencer
  disarm     engine
  drain      petrol with hand-pump
  pull-off   carburettor-end, tank-end
  remove     hose

work

step renew "New hose"
  replace    hose with hose-new

put-back

step fit "Hose on"
  fit        hose
  push-on    tank-end, carburettor-end

test holds "Pump air in: it holds for a minute"
  when       engine disarmed, petrol drained
  proves     hose

step fill "Fill"
  fill       petrol
  arm        engine

test runs "It runs"
  proves     running
