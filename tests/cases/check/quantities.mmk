# Quantities: units of one sort convert, units of two sorts do not add.

--- pounds-and-newtons
device valve "Valve"

part body "body"
part cap "cap"
fastener cap-screws "cap screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      cap to body
  torque     0.15 N.m + 0.5 lbf.in

guide pounds-and-newtons "Take the cap off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 0.206492414513808 N·m"

take-apart

step open "Take the cap off"
  undo       cap-screws with driver-20
  remove     cap

put-back
  derived

--- millimetres-and-newton-metres
device valve "Valve"

part body "body"
part cap "cap"
fastener cap-screws "cap screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      cap to body
  # error 14-25 [mixed-units] 2 mm and 1 N.m cannot be added: one is a length, the other a torque; write both as a length
  torque     2 mm + 1 N.m

--- torque-in-millimetres
device valve "Valve"

part body "body"
part cap "cap"
fastener cap-screws "cap screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      cap to body
  # error 14-17 [mixed-units] expected a torque
  torque     2 mm

--- pounds-past-what-it-bears
device valve "Valve"

part body "body"
part cap "cap"
fastener cap-screws "cap screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      cap to body
  torque     40 lbf.in

guide pounds-past-what-it-bears "Take the cap off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 40 lbf·in"

take-apart

step open "Take the cap off"
  undo       cap-screws with driver-20
  remove     cap

put-back
  # error 3-9 [torque-too-high] shears here
  derived

--- time-in-newton-metres
device valve "Valve"

part body "body"
part cap "cap"

guide time-in-newton-metres "Press the cap"
  for        competent

take-apart

step open "Take the cap off"
  # error 22-27 [mixed-units] expected a time
  remove     cap for 15 N.m

put-back
  derived

--- balance-bike
device balance-bike "Balance bike"

part fork "fork"
part disc "brake disc" kind brake-disc
  limit      thickness at least 1.5 mm when disc out
fastener bolts "disc bolt" 6 x screw M5 x 10, hexalobular 25
  holds      disc to fork
  torque     6 N.m

--- worn-and-passed
use "balance-bike.mmk"
guide worn-and-passed "Measure the disc"
  for        trained
  before     cool disc
  tool       t25 "hexalobular driver 25"
  tool       rule "vernier caliper"
  tool       torque "torque driver 6 N·m"

take-apart

step off "Disc off"
  undo       bolts
  remove     disc
  # error 3-9 [lax-limit] the book asks at least 1.5 mm
  measure    disc thickness at least 0.5 mm with rule

put-back
  derived

--- snow-bike
device snow-bike "Snow bike"

part fork "fork"
part disc "brake disc" kind brake-disc
  limit      thickness at least 1.5 mm when disc out
fastener bolts "disc bolt" 6 x screw M5 x 10, hexalobular 25
  holds      disc to fork
  torque     6 N.m

--- else-another-guide
use "snow-bike.mmk"
guide else-another-guide "Measure the disc"
  for        trained
  before     cool disc
  tool       t25 "hexalobular driver 25"
  tool       rule "vernier caliper"
  tool       torque "torque driver 6 N·m"

take-apart

step off "Disc off"
  undo       bolts
  remove     disc
  # error 48-60 [unknown-guide] there is no guide `no-such-guide`; name the file of guide `no-such-guide` with `use` at the top of this file
  measure    disc thickness with rule, else do no-such-guide

put-back
  derived

--- charger-box
device charger-box "Charger box"

part case "case"
part lid "lid"
  covers     fuse, smoother, shunt
part fuse "fuse" kind fuse-link 2 A
part smoother "capacitor" kind capacitor-with-test-points 9 uF 450 V
part shunt "resistor" kind plain-part 10 ohm 5 W

--- other-ratings
use "charger-box.mmk"
guide other-ratings "Renew three parts"
  for        trained
  before     discharge smoother through 10 kohm for 5 s with res
  before     prove smoother below 60 V with meter
  # warning 14-21 [other-rating] another rating
  spare      fuse-new "fuse 32 A", 1 for fuse
  # warning 14-25 [other-rating] another rating
  spare      smoother-new "capacitor 9 uF 63 V", 1 for smoother
  # warning 14-22 [other-rating] another rating
  spare      shunt-new "resistor 22 ohm 5 W", 1 for shunt
  tool       res "discharge resistor 10 kohm"
  tool       meter "multimeter 1000 V"

take-apart

step off "Take them out"
  remove     lid
  remove     fuse, smoother, shunt

work

step renew "Take the new ones"
  replace    fuse with fuse-new
  replace    smoother with smoother-new
  dispose    smoother as electronic-waste
  replace    shunt with shunt-new

put-back
  derived

test works "It works"
  proves     fuse, smoother, shunt

--- ratings-that-bear-more
use "charger-box.mmk"
guide ratings-that-bear-more "Renew three parts"
  for        trained
  before     discharge smoother through 10 kohm for 5 s with res
  before     prove smoother below 60 V with meter
  spare      fuse-new "fuse 2 A slow", 1 for fuse
  spare      smoother-new "capacitor 9 uF 500 V", 1 for smoother
  spare      shunt-new "resistor 10 ohm 11 W", 1 for shunt
  tool       res "discharge resistor 10 kohm"
  tool       meter "multimeter 1000 V"

take-apart

step off "Take them out"
  remove     lid
  remove     fuse, smoother, shunt

work

step renew "Take the new ones"
  replace    fuse with fuse-new
  replace    smoother with smoother-new
  dispose    smoother as electronic-waste
  replace    shunt with shunt-new

put-back
  derived

test works "It works"
  proves     fuse, smoother, shunt
