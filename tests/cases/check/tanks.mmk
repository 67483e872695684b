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
