# Situations of a tank that its supply fills: emptied with the tap shut, filled with it open.

--- tank-heater
device tank-heater "Tank heater"

energy cold "cold water" kind water-supply 6 bar
  feeds      tank
part tank "tank" kind tank
fluid bath "tank water" in tank 80 l kind water
part flange "flange"
fastener flange-bolts "flange bolt" 5 x bolt M8 x 25, hexagon-head 13
  holds      flange to tank
  torque     12 N.m
  needs      bath drained to undo

--- emptied-with-the-tap-open
use "tank-heater.mmk"
guide emptied-with-the-tap-open "Look into the tank"
  for        competent
  tool       bucket "bucket"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step open "Take the flange off"
  # error 3-7 [unmet-need] too early here
  drain      bath with bucket
  undo       flange-bolts with spanner-13
  remove     flange

put-back
  derived

--- filled-by-the-tap
use "tank-heater.mmk"
guide filled-by-the-tap "Look into the tank"
  for        competent
  tool       bucket "bucket"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step open "Take the flange off"
  turn-off   cold
  drain      bath with bucket
  undo       flange-bolts with spanner-13
  remove     flange

put-back

step shut "Bolt the flange on, and fill"
  fit        flange
  fasten     flange-bolts to 12 N.m with spanner-13, torque-wrench
  turn-on    cold
  fill       bath

--- let-off-as-well
use "tank-heater.mmk"
guide let-off-as-well "Look into the tank"
  for        competent
  tool       bucket "bucket"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step open "Take the flange off"
  turn-off   cold
  drain      cold
  drain      bath with bucket
  undo       flange-bolts with spanner-13
  remove     flange

put-back
  derived

--- turned-on-over-the-hole
use "tank-heater.mmk"
guide turned-on-over-the-hole "Look into the tank"
  for        competent
  tool       bucket "bucket"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step open "Take the flange off"
  turn-off   cold
  drain      bath with bucket
  undo       flange-bolts with spanner-13
  remove     flange

put-back

step shut "Bolt the flange on, and fill"
  # error 3-9 [filled-open] runs out again
  turn-on    cold
  fit        flange
  fasten     flange-bolts to 12 N.m with spanner-13, torque-wrench
  fill       bath

--- tank-by-its-lines
device tank-by-its-lines "Tank whose file says all"

part body "body"
energy tap "tap" kind water-supply
  feeds      body
part cistern "cistern"
fluid pool "pool" in cistern 9 l kind water
  needs      tap shut-off or relieved to drain alone
  needs      tap supplied to fill alone

--- filled-with-its-tap-shut
use "tank-by-its-lines.mmk"
guide filled-with-its-tap-shut "Empty the cistern"
  for        competent
  tool       bucket "bucket"

take-apart

step drain "Empty it"
  turn-off   tap
  drain      tap
  drain      pool with bucket

put-back

step fill "Fill it"
  # error 3-6 [unmet-need] too early here
  fill       pool
  stop-draining tap
  turn-on    tap

--- filled-with-its-tap-open
use "tank-by-its-lines.mmk"
guide filled-with-its-tap-open "Empty the cistern"
  for        competent
  tool       bucket "bucket"

take-apart

step drain "Empty it"
  turn-off   tap
  drain      pool with bucket

put-back

step fill "Fill it"
  turn-on    tap
  fill       pool

--- an-unknown-state-among-two
use "tank-by-its-lines.mmk"
part float "float"
  # error 18-20 [unknown-state] there is no state of `tap` (water supply) called `off`; write `supplied`, `shut-off` or `relieved`
  needs      tap off or ajar to remove

--- small-boiler
device small-boiler "Small boiler"

energy mains "mains" kind mains-cord 230 V
  feeds      rod
part boiler "boiler" kind tank
part rod "heating rod" in boiler
energy steam-in "pressure of the boiler" in boiler kind boiler-pressure
part boiler-lid "boiler lid"
fastener boiler-bolts "boiler bolt" 6 x bolt M6 x 16, hexagon 5, cap
  holds      boiler-lid to boiler
  torque     9 N.m
bond boiler-seal "boiler seal" kind loose-seal
  joins      boiler-lid to boiler

--- boiler-cooled-while-it-is-heated
use "small-boiler.mmk"
guide boiler-cooled-while-it-is-heated "Look into the boiler"
  for        competent
  tool       key-5 "hexagon key 5"
  tool       torque-wrench "torque wrench 5 to 25 N·m"
  # error 14-17 [still-live] under power here
  before     cool steam-in
  before     relieve steam-in

take-apart

step open "Open the boiler"
  undo       boiler-bolts with key-5
  lift       boiler-seal
  remove     boiler-lid

put-back
  derived

--- boiler-opened-under-pressure
use "small-boiler.mmk"
guide boiler-opened-under-pressure "Look into the boiler"
  for        competent
  tool       key-5 "hexagon key 5"
  tool       torque-wrench "torque wrench 5 to 25 N·m"
  before     unplug mains

take-apart

step open "Open the boiler"
  # error 3-6 [unmet-need] too early here
  undo       boiler-bolts with key-5
  lift       boiler-seal
  remove     boiler-lid

put-back
  derived

--- boiler-heats-up-again
use "small-boiler.mmk"
# What its plug brings back is waited for in a line of its own.
guide boiler-heats-up-again "Look into the boiler"
  for        competent
  tool       key-5 "hexagon key 5"
  tool       torque-wrench "torque wrench 5 to 25 N·m"
  before     unplug mains
  before     cool steam-in
  before     relieve steam-in

take-apart

step open "Open the boiler"
  undo       boiler-bolts with key-5
  lift       boiler-seal
  remove     boiler-lid

put-back

step close "Close the boiler and heat it up"
  seat       boiler-seal
  fit        boiler-lid
  fasten     boiler-bolts to 9 N.m with key-5, torque-wrench
  close-down steam-in
  plug-in    mains
  heat-up    steam-in

--- flow-heater
device flow-heater "Flow heater"

energy mains "mains" kind mains-cord 230 V
  feeds      rod
energy cold "cold water" kind water-supply
  feeds      vessel
part vessel "heat exchanger" kind tank
fluid warm-water "water" in vessel 2 l kind water
part rod "heating rod" kind heating-element
part gauge "gauge"
connector gauge-union "gauge union" kind pipe-union
  joins      gauge to vessel
function warming "The water comes out hot"
  through    rod

--- water-on-before-the-power
use "flow-heater.mmk"
# Made safe last, the water is on again before the power: no element is tried dry.
guide water-on-before-the-power "Renew the gauge"
  goal       replace gauge with gauge-new
  for        trained
  spare      gauge-new "gauge", 1 for gauge
  tool       spanner "spanner 14"

take-apart

step off "Pull the plug"
  unplug     mains

step empty "Shut the water and empty it"
  turn-off   cold
  drain      cold
  drain      warm-water

step gauge "Take the gauge out"
  undo       gauge-union with spanner
  remove     gauge

work

step renew "Renew it"
  replace    gauge with gauge-new

put-back
  derived
test warm "Hot water comes, and no drop falls"
  when       cold supplied, mains plugged
  proves     warming, gauge

--- filled-by-its-tap-on-the-way-back
use "tank-by-its-lines.mmk"
# The tap is on before what asks for it.
guide filled-by-its-tap-on-the-way-back "Empty the cistern"
  for        competent
  tool       bucket "bucket"

take-apart

step drain "Empty it"
  turn-off   tap
  drain      tap
  drain      pool with bucket

put-back
  derived
