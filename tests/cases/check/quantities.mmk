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
