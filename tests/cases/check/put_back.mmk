# The derived put-back, and what an author's own steps add to it or replace in it.

--- chest
device chest "Tool chest"

part base "base"
part lid "lid"
  covers     tray, tray-plug
part tray "tray"
connector tray-plug "tray plug" kind friction-plug
  joins      tray to base
fastener lid-screws "lid screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      lid to base
  torque     1.8 N.m

--- all-derived
use "chest.mmk"
guide all-derived "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  derived

--- words-for-a-derived-step
use "chest.mmk"
guide words-for-a-derived-step "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  derived
step open "Put the lid on"
  text: Engage the two rear lugs first.

--- actions-replaced
use "chest.mmk"
guide actions-replaced "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  derived
step tray-out "Put the tray in"
  fit        tray
  connect    tray-plug

--- actions-replaced-one-forgotten
use "chest.mmk"
guide actions-replaced-one-forgotten "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  # error 3-9 [closed-over] cannot be reached after this
  derived
step tray-out "Put the tray in"
  fit        tray

--- actions-replaced-in-the-wrong-order
use "chest.mmk"
guide actions-replaced-in-the-wrong-order "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  derived
step tray-out "Put the tray in"
  # error 3-9 [not-seated] ties what is not there yet
  connect    tray-plug
  fit        tray

--- step-added
use "chest.mmk"
guide step-added "Take the tray out"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

step tray-out "Take the tray out"
  disconnect tray-plug
  remove     tray

put-back
  derived
step tray-out "Put the tray in"
step shake "See that the tray is seated"
  text: Press on all four corners.

--- step-added-too-late
use "chest.mmk"
guide step-added-too-late "Reseat the plug"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  # error 3-6 [not-put-back] come off here
  undo       lid-screws with driver-20
  remove     lid

put-back
  derived
step open "Put the lid on"
step reseat "Reseat the plug"
  # error 3-12 [out-of-reach] cannot be got at here
  disconnect tray-plug
  connect    tray-plug

--- nothing-put-back
use "chest.mmk"
guide nothing-put-back "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"

take-apart

step open "Take the lid off"
  # error 3-6 [not-put-back] come off here
  undo       lid-screws with driver-20
  remove     lid

--- one-line-not-put-back
use "chest.mmk"
guide one-line-not-put-back "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"

take-apart

step open "Take the lid off"
  # error 3-6 [not-put-back] come off here
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  fit        lid

--- wrong-order-on-the-way-back
use "chest.mmk"
guide wrong-order-on-the-way-back "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  # error 3-8 [not-seated] ties what is not there yet
  fasten     lid-screws with driver-20
  fit        lid

--- closed-over-the-plug
use "chest.mmk"
guide closed-over-the-plug "Reseat the plug"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  disconnect tray-plug

put-back

step close "Put the lid on"
  # error 3-5 [closed-over] cannot be reached after this
  fit        lid
  fasten     lid-screws with driver-20

--- shut-for-a-while
use "chest.mmk"
guide shut-for-a-while "Take the lid off twice"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  disconnect tray-plug

work

step lay-on "Lay the lid on while the paint dries"
  fit        lid
  remove     lid

put-back

step close "Put the lid on"
  connect    tray-plug
  fit        lid
  fasten     lid-screws with driver-20
