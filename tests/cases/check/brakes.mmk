# Situations of a brake that is tried: with its caliper on and bolted, and no bleed screw open.

--- axle-brake
device axle-brake "Axle brake"

part bracket "caliper bracket"
part reservoir "reservoir"
fluid juice "brake fluid" in reservoir 0.5 l kind brake-fluid
part caliper "caliper" kind brake-caliper
fastener guide-bolts "guide bolt" 2 x bolt M8 x 25, hexagon-head 13
  holds      caliper to bracket
  torque     25 N.m
fastener bleeder "bleed screw" in caliper kind bleed-screw M8x1, hexagon-head 9
  torque     8 N.m
part pads "pad" 2 x brake-pad
  behind     caliper
function braking "The pedal is firm"
  through    juice, caliper, pads

--- tried-with-the-caliper-aside
use "axle-brake.mmk"
guide tried-with-the-caliper-aside "Renew the pads"
  goal       replace pads with pads-new
  for        trained
  spare      pads-new "pad", 2 for pads
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 120 N·m"

take-apart

step off "Swing the caliper up"
  undo       guide-bolts with spanner-13
  swing-out  caliper
  remove     pads

work

step renew "Take the new pads"
  replace    pads with pads-new

put-back

step pads-in "Fit the pads"
  fit        pads

# error 6-10 [untested] proves nothing here
test pedal "The pedal is firm"
  proves     pads, braking

step bolted "Swing the caliper down"
  swing-in   caliper
  fasten     guide-bolts to 25 N.m with spanner-13, torque-wrench

--- tried-without-the-guide-bolts
use "axle-brake.mmk"
guide tried-without-the-guide-bolts "Renew the pads"
  goal       replace pads with pads-new
  for        trained
  spare      pads-new "pad", 2 for pads
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 120 N·m"

take-apart

step off "Swing the caliper up"
  undo       guide-bolts with spanner-13
  swing-out  caliper
  remove     pads

work

step renew "Take the new pads"
  replace    pads with pads-new

put-back

step pads-in "Fit the pads"
  fit        pads
  swing-in   caliper

# error 6-10 [untested] proves nothing here
test pedal "The pedal is firm"
  proves     pads, braking

step bolted "Bolt the caliper down"
  fasten     guide-bolts to 25 N.m with spanner-13, torque-wrench

--- tried-with-a-bleed-screw-open
use "axle-brake.mmk"
guide tried-with-a-bleed-screw-open "Renew the pads"
  goal       replace pads with pads-new
  for        trained
  spare      pads-new "pad", 2 for pads
  tool       spanner-13 "spanner 13"
  tool       spanner-9 "spanner 9"
  tool       torque-wrench "torque wrench 5 to 120 N·m"

take-apart

step off "Swing the caliper up"
  crack      bleeder with spanner-9
  undo       guide-bolts with spanner-13
  swing-out  caliper
  remove     pads

work

step renew "Take the new pads"
  replace    pads with pads-new

put-back

step pads-in "Fit the pads"
  fit        pads
  swing-in   caliper
  fasten     guide-bolts to 25 N.m with spanner-13, torque-wrench

# error 6-10 [untested] proves nothing here
test pedal "The pedal is firm"
  proves     pads, braking

step shut "Close the bleed screw"
  close      bleeder to 8 N.m with spanner-9, torque-wrench

--- tried-when-all-is-on
use "axle-brake.mmk"
guide tried-when-all-is-on "Renew the pads"
  goal       replace pads with pads-new
  for        trained
  spare      pads-new "pad", 2 for pads
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 5 to 120 N·m"

take-apart

step off "Swing the caliper up"
  undo       guide-bolts with spanner-13
  swing-out  caliper
  remove     pads

work

step renew "Take the new pads"
  replace    pads with pads-new

put-back
  derived

test pedal "The pedal is firm"
  proves     pads, braking
