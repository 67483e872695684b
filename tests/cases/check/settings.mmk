# Situations of what is set on a new part: a gap between two bounds is measured, a wear limit is not.

--- rolling-door
device rolling-door "Rolling door"

part hub "hub"
part shield "brake shield" kind panel
  covers     disc-brake, brake-bolts
part disc-brake "spring-applied brake"
  limit      air-gap 0.25..0.35 mm when disc-brake in, shield out
  limit      lining at least 3 mm when shield out
fastener brake-bolts "brake bolt" 3 x bolt M6 x 40, hexagon 5
  holds      disc-brake to hub
  torque     9 N.m

--- gap-of-the-new-one-not-measured
use "rolling-door.mmk"
guide gap-of-the-new-one-not-measured "Renew the brake"
  goal       replace disc-brake with brake-new
  for        trained
  spare      brake-new "spring-applied brake", 1 for disc-brake
  tool       key-5 "hexagon key 5"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step off "Take the brake off"
  remove     shield
  undo       brake-bolts with key-5
  remove     disc-brake

work

step renew "Take the new one"
  replace    disc-brake with brake-new

put-back

step put "Put the new brake on"
  # error 3-5 [not-measured] can be measured from here on
  fit        disc-brake
  fasten     brake-bolts to 9 N.m with key-5, torque-wrench

test hold "It holds"
  proves     disc-brake

step shut "Shut it"
  fit        shield

--- gap-measured-on-the-old-one-only
use "rolling-door.mmk"
guide gap-measured-on-the-old-one-only "Renew the brake"
  goal       replace disc-brake with brake-new
  for        trained
  spare      brake-new "spring-applied brake", 1 for disc-brake
  tool       key-5 "hexagon key 5"
  tool       feeler "feeler gauge"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step off "Take the brake off"
  remove     shield
  measure    disc-brake air-gap 0.25..0.35 mm with feeler
  undo       brake-bolts with key-5
  remove     disc-brake

work

step renew "Take the new one"
  replace    disc-brake with brake-new

put-back

step put "Put the new brake on"
  # error 3-5 [not-measured] can be measured from here on
  fit        disc-brake
  fasten     brake-bolts to 9 N.m with key-5, torque-wrench

test hold "It holds"
  proves     disc-brake

step shut "Shut it"
  fit        shield

--- gap-measured-on-the-new-one
use "rolling-door.mmk"
guide gap-measured-on-the-new-one "Renew the brake"
  goal       replace disc-brake with brake-new
  for        trained
  spare      brake-new "spring-applied brake", 1 for disc-brake
  tool       key-5 "hexagon key 5"
  tool       feeler "feeler gauge"
  tool       torque-wrench "torque wrench 5 to 25 N·m"

take-apart

step off "Take the brake off"
  remove     shield
  undo       brake-bolts with key-5
  remove     disc-brake

work

step renew "Take the new one"
  replace    disc-brake with brake-new

put-back

step put "Put the new brake on"
  fit        disc-brake
  fasten     brake-bolts to 9 N.m with key-5, torque-wrench
  measure    disc-brake air-gap 0.25..0.35 mm with feeler

test hold "It holds"
  proves     disc-brake

step shut "Shut it"
  fit        shield
