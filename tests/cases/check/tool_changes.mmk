# Tools put down and taken up again in one step: when the second turn could have been done before, and when not.

--- grip
device grip "Grip"

part body "body"
part cover "cover"
  covers     core, core-screw
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to body
  torque     0.8 N.m
fastener strap-nut "strap nut" 1 x nut M4, hexagon-head 7
  holds      cover to body
  torque     0.9 N.m
fastener foot-screw "foot screw" 1 x screw M3 x 12, hexalobular 10, pan
  under      strap-nut
  holds      cover to body
  torque     0.8 N.m
fastener side-screws "side screw" 2 x screw M3 x 16, hexalobular 10, pan
  holds      cover to body
  torque     0.8 N.m
part core "core"
fastener core-screw "core screw" 1 x screw M3 x 6, hexalobular 10, countersunk
  holds      core to body
  torque     0.8 N.m

--- driver-to-and-fro
use "grip.mmk"
guide driver-to-and-fro "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       strap-nut with nut-driver-7
  # advice 3-6 [tool-again] could be done before it is put down
  undo       side-screws with driver-10
  undo       foot-screw with driver-10
  remove     cover

put-back
  derived

--- driver-in-one-go
use "grip.mmk"
guide driver-in-one-go "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       side-screws with driver-10
  undo       strap-nut with nut-driver-7
  undo       foot-screw with driver-10
  remove     cover

put-back
  derived

--- driver-again-in-the-next-step
use "grip.mmk"
guide driver-again-in-the-next-step "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       strap-nut with nut-driver-7

step lift "Lift the cover off"
  undo       side-screws, foot-screw with driver-10
  remove     cover

put-back
  derived

--- driver-again-behind-the-cover
use "grip.mmk"
guide driver-again-behind-the-cover "Take the core out"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws, side-screws with driver-10
  undo       strap-nut with nut-driver-7
  undo       foot-screw with driver-10
  remove     cover
  undo       core-screw with driver-10
  remove     core

put-back
  derived

--- words-before-the-second-turn
use "grip.mmk"
guide words-before-the-second-turn "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       strap-nut with nut-driver-7

  note: Hold the cover: now it hangs by its side.

  undo       side-screws with driver-10
  undo       foot-screw with driver-10
  remove     cover

put-back
  derived

--- order-allowed
use "grip.mmk"
guide order-allowed "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       strap-nut with nut-driver-7
  # allow tool-again: the side screws keep the cover from swinging
  undo       side-screws with driver-10
  undo       foot-screw with driver-10
  remove     cover

put-back
  derived

--- driver-to-and-fro-on-the-way-back
use "grip.mmk"
guide driver-to-and-fro-on-the-way-back "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws, side-screws with driver-10
  undo       strap-nut with nut-driver-7
  undo       foot-screw with driver-10
  remove     cover

put-back

step close "Put the cover back"
  fit        cover
  fasten     foot-screw with driver-10
  fasten     strap-nut with nut-driver-7
  # advice 3-8 [tool-again] could be done before it is put down
  fasten     cover-screws, side-screws with driver-10

--- driver-again-after-a-mark
use "grip.mmk"
guide driver-again-after-a-mark "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with driver-10
  undo       strap-nut with nut-driver-7
  # allow asked-by-nothing: it looks the same both ways round
  mark       cover
  undo       side-screws with driver-10
  undo       foot-screw with driver-10
  remove     cover

put-back
  derived

--- driver-to-and-fro-unnamed
use "grip.mmk"
guide driver-to-and-fro-unnamed "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       nut-driver-7 "nut driver 7"
  tool       torque-driver "torque driver 0.8 to 0.9 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws
  undo       strap-nut
  # advice 3-6 [tool-again] could be done before it is put down
  undo       side-screws
  undo       foot-screw
  remove     cover

put-back
  derived
