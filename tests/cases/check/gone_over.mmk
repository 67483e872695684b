# What is done again on purpose, what hangs, what a joint presses, what is measured dead: found in guides of
# fitters, who do it so.

--- switch-cabinet
device switch-cabinet "Switch cabinet"

energy supply "three-phase supply" kind mains-isolator 400 V
  feeds      contactor
part door "door" kind hinged-cover
  covers     contactor, terminals
part plate "plate"
part contactor "contactor"
part incoming "incoming cable" kind cable
connector terminals "terminal" 3 x screw-terminal M4, slotted 1
  joins      incoming to contactor
  torque     1.2 N.m

--- proved-again-and-gone-over
use "switch-cabinet.mmk"
guide proved-again-and-gone-over "Renew the contactor"
  goal       replace contactor with contactor-new
  for        licensed "electrician"
  spare      contactor-new "contactor", 1 for contactor
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       meter "multimeter 1000 V"
  tool       slot "slotted driver 1"
  tool       torque-driver "torque driver 0.5 to 2 N·m"

take-apart

step isolate "Lock off, open, prove dead"
  lock-off   supply with lock
  open       door
  prove      supply with tester
  text: After the break, once more.
  prove      supply with tester
  slacken    terminals with slot
  disconnect terminals
  remove     contactor

work

step renew "Take the new one"
  replace    contactor with contactor-new

put-back

step refit "Put it back"
  fit        contactor
  connect    terminals
  tighten    terminals to 1.2 N.m with slot, torque-driver
  tighten    terminals to 1.2 N.m with slot, torque-driver
  hand-back  supply
  restore    supply

test volts "400 V between each two terminals"
  when       supply switched-on, door open
  proves     contactor
  with       meter

step shut-door "Shut the door"
  shut       door

--- shut-over-a-supply-that-nobody-tried
use "switch-cabinet.mmk"
guide shut-over-a-supply-that-nobody-tried "Look at the contactor"
  for        licensed "electrician"
  tool       lock "padlock"

take-apart

step isolate "Lock off and open"
  lock-off   supply with lock
  open       door

put-back

step shut-door "Shut the door"
  restore    supply
  # error 3-6 [hazard-not-cleared] what it feeds lies open here
  shut       door

--- insulation-measured-live
use "switch-cabinet.mmk"
guide insulation-measured-live "Measure it"
  for        licensed "electrician"
  tool       megger "insulation tester 500 V"
  tool       lock "padlock"

take-apart

step look "Look at it"
  lock-off   supply with lock
  open       door

put-back
  derived
# advice 6-15 [asked-by-nothing] nothing that the work renews or disturbs asks for test `insulation`; declare the `function` that it proves
# error 6-15 [measured-live] its tool is for dead circuits
test insulation "Above 1 megohm"
  when       supply switched-on
  proves     contactor
  with       megger

--- insulation-measured-dead
use "switch-cabinet.mmk"
guide insulation-measured-dead "Measure it"
  for        licensed "electrician"
  tool       megger "insulation tester 500 V"
  tool       lock "padlock"

take-apart

step look "Look at it"
  lock-off   supply with lock
  open       door

put-back

# advice 6-15 [asked-by-nothing] nothing that the work renews or disturbs asks for test `insulation`; declare the `function` that it proves
test insulation "Above 1 megohm"
  proves     contactor
  with       megger

step shut-door "Shut the door"
  shut       door
  restore    supply

--- gate-motor
device gate-motor "Gate drive"

energy mains "mains supply" kind mains-isolator 400 V
  feeds      drive-motor
part frame "frame"
part drive-motor "motor" kind motor
part lid "terminal lid" in drive-motor kind panel
  covers     leads
fastener lid-screws "lid screw" 4 x screw M4 x 12, cross-recess 2, pan
  holds      lid to drive-motor
part cable "cable" kind cable
connector leads "motor terminal" 3 x ring-terminal M5, hexagon-head 8
  joins      cable to drive-motor

--- lid-off-then-proved
use "gate-motor.mmk"
guide lid-off-then-proved "Take the motor leads off"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester 1000 V"
  tool       cross-2 "cross-recess driver 2"
  tool       socket-8 "socket wrench 8"

take-apart

step open "Take the lid off"
  lock-off   mains with lock
  undo       lid-screws with cross-2
  remove     lid
  prove      mains with tester
  slacken    leads with socket-8
  take-off   leads with socket-8

put-back
  derived

--- bare-terminals-open-live
use "gate-motor.mmk"
guide bare-terminals-open-live "Look at the leads"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       cross-2 "cross-recess driver 2"

take-apart

step open "Take the lid off"
  lock-off   mains with lock
  undo       lid-screws with cross-2
  remove     lid

put-back

step close "Put the lid on"
  # error 3-9 [on-over-loose] live from here
  restore    mains
  # error 3-5 [still-live] under power here
  fit        lid
  fasten     lid-screws with cross-2

--- small-car
device small-car "Small car"

part body "body"
part bracket "caliper bracket"
part caliper "caliper" kind swing-bracket
fastener guide-bolts "guide bolt" 2 x bolt M8 x 25, hexagon-head 13
  holds      caliper to bracket
  torque     25 N.m
part brake-hose "brake hose" kind hose
fluid fluid "brake fluid" in body 0.6 l kind brake-fluid
connector banjo "banjo joint" 1 x banjo-joint M10x1, hexagon-head 14
  joins      brake-hose to caliper
  torque     32 N.m
bond washers "banjo washer" 2 x copper-washer 10 mm
  joins      brake-hose to caliper
part pads "pad" 2 x brake-pad
  behind     caliper
part wheel "wheel" kind wheel
energy car-weight "car" kind jacked-vehicle

--- caliper-aside-on-its-hose
# warning elsewhere [unplaced-danger] never met
use "small-car.mmk"
guide caliper-aside-on-its-hose "Renew the pads"
  goal       replace pads with pads-new
  for        trained
  spare      pads-new "pad", 2, 30.00 EUR for pads
  tool       socket-13 "socket wrench 13"
  tool       torque-wrench "torque wrench 5 to 120 N·m"

take-apart

step off "Swing the caliper up"
  undo       guide-bolts with socket-13
  swing-out  caliper
  remove     pads

work

step renew "Take the new pads"
  replace    pads with pads-new

put-back
  derived

test pedal "The pedal is firm"
  when       guide-bolts tight
  proves     pads

--- wheel-off-on-the-jack
use "small-car.mmk"
guide wheel-off-on-the-jack "Take the wheel off"
  for        trained
  tool       jack "trolley jack"

take-apart

step off "Take the wheel off"
  jack-up    car-weight with jack
  # error 3-8 [raised-by-work] hands are here
  remove     wheel

put-back
  derived
