# Situations of spares for one side: the other one does not fit.

--- two-sided-car
device two-sided-car "Small car"

part near-caliper "left front caliper"
part off-caliper "right front caliper"
part pads "front brake pad" 4 x brake-pad
part mirror "mirror"

--- other-side-and-other-axle
use "two-sided-car.mmk"
guide other-side-and-other-axle "Renew the calipers"
  goal       replace near-caliper with caliper-new
  for        trained
  # warning 14-24 [other-side] for another place
  spare      caliper-new "caliper, right", 1 for near-caliper
  # warning 14-21 [other-side] for another place
  spare      pads-new "rear pads", 4 for pads

take-apart

step off "Take them off"
  remove     near-caliper
  remove     pads

work

step renew "Take the new ones"
  replace    near-caliper with caliper-new
  replace    pads with pads-new

put-back
  derived
test pedal "The pedal is firm"
  proves     near-caliper, pads

--- for-either-side-or-none
use "two-sided-car.mmk"
guide for-either-side-or-none "Renew the calipers"
  goal       replace near-caliper with caliper-new
  for        trained
  spare      caliper-new "caliper, left and right", 1 for near-caliper
  spare      right-new "caliper right", 1 for near-caliper, off-caliper
  spare      pads-new "pads, left", 4 for pads
  spare      mirror-new "left mirror", 1 for mirror

take-apart

step off "Take them off"
  remove     near-caliper
  remove     off-caliper
  remove     pads
  remove     mirror

work

step renew "Take the new ones"
  replace    near-caliper with caliper-new
  replace    off-caliper with right-new
  replace    pads with pads-new
  replace    mirror with mirror-new

put-back
  derived
test pedal "The pedal is firm"
  proves     near-caliper, off-caliper, pads, mirror

--- brew-group
device brew-group "Brew group"

part lid "boiler lid"
part seal "boiler seal"
part ring "brew valve ring"
part lamp "front lamp"
part bulb "halogen bulb" in lamp

--- described-as-another
use "brew-group.mmk"
guide described-as-another "Renew the seal"
  goal       replace seal with seal-new
  for        trained
  spare      seal-new "brew valve ring 12 mm", 1
  spare      ring-new "ring of PTFE", 1
  spare      bulb-new "front lamp bulb", 1

take-apart

step off "Take them out"
  remove     seal
  remove     ring
  remove     bulb

work

step renew "Take the new ones"
  # error 3-9 [wrong-spare] not the part for it
  replace    seal with seal-new
  replace    ring with ring-new
  replace    bulb with bulb-new

put-back
  derived
test tight "It is tight, and it shines"
  proves     seal, ring, bulb

--- dive-torch
device dive-torch "Dive torch"

part case "case"
part cap "cap"
bond ring "cap ring" kind o-ring 96 x 1.2
  joins      cap to case
fastener screws "cap screw" 2 x screw M2 x 8, hexalobular 6, pan
  holds      cap to case
  torque     0.20 N.m

--- of-another-size
use "dive-torch.mmk"
guide of-another-size "Renew the ring and the screws"
  goal       remove cap
  for        competent
  # warning 14-21 [other-size] another size
  supply     ring-new "O-ring 80 x 2", 1 for ring
  # warning 14-23 [other-size] another size
  spare      screws-new "screw M2 x 12", 2 for screws
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.1 to 0.5 N·m with hexalobular 6 bit"

take-apart

step open "Take the cap and the ring off"
  undo       screws with driver-6
  remove     cap
  lift       ring

put-back

step close "New ring, cap, new screws"
  seat       ring with ring-new
  fit        cap
  fasten     screws with torque-driver, screws-new

test tight "It stays dry"
  proves     ring

--- of-the-same-size
use "dive-torch.mmk"
guide of-the-same-size "Renew the ring and the screws"
  goal       remove cap
  for        competent
  supply     ring-new "O-ring 96.0 x 1.20, black", 1 for ring
  spare      screws-new "screw M2 x 8", 2 for screws
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.1 to 0.5 N·m with hexalobular 6 bit"

take-apart

step open "Take the cap and the ring off"
  undo       screws with driver-6
  remove     cap
  lift       ring

put-back

step close "New ring, cap, new screws"
  seat       ring with ring-new
  fit        cap
  fasten     screws with torque-driver, screws-new

test tight "It stays dry"
  proves     ring
