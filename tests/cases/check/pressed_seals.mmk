# Situations of seals and what presses them: a rating is proved on the closed device, glue is renewed as it is laid.

--- pendant
device pendant "Hoist pendant"
  sealed     IP65 by lid-gasket, gland

part box "box"
part lid "lid"
  covers     cord, gland
part cord "control cord" kind cable
energy control "control supply" kind mains-isolator
  feeds      cord
fastener lid-screws "lid screw" 4 x captive-screw M4 x 20, cross-recess 2, pan
  holds      lid to box
  torque     1.2 N.m
bond lid-gasket "lid gasket" kind loose-seal
  joins      lid to box
bond gland "gland seal" kind loose-seal
  joins      cord to box
function lifting "It lifts while the button is pressed"
  through    control, cord

--- source-isolated-disturbs-no-function
use "pendant.mmk"
guide source-isolated-disturbs-no-function "Open the pendant"
  for        trained
  before     lock-off control
  before     prove control with tester
  tool       tester "voltage tester 400 V"
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step lid-off "Take the lid off"
  undo       lid-screws with cross-2
  lift       lid-gasket
  remove     lid

put-back
  derived
test drip "No drop gets in under the spray"
  proves     IP65

--- rating-tried-before-the-screws
use "pendant.mmk"
guide rating-tried-before-the-screws "Open the pendant"
  for        trained
  before     lock-off control
  before     prove control with tester
  tool       tester "voltage tester 400 V"
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step lid-off "Take the lid off"
  undo       lid-screws with cross-2
  lift       lid-gasket
  remove     lid

put-back

step lid-on "Fit the lid"
  fit        lid
  seat       lid-gasket

# error 6-9 [untested] proves nothing here
test drip "No drop gets in under the spray"
  proves     IP65

step screws "Fasten the lid"
  fasten     lid-screws with cross-2

step power "Restore the supply"
  hand-back  control
  restore    control

--- lower-unit
device lower-unit "Outboard"
  mass       26 kg

part leg "upper leg"
part lower "lower unit"
part prop "propeller" in lower
fastener prop-nut "propeller nut" 1 x nut M10, hexagon-head 17
  holds      prop to lower
  under      prop-pin
  torque     17 N.m
fastener prop-pin "split pin" 1 x split-pin 3 x 25
  holds      prop-nut to lower
fastener leg-bolts "leg bolt" 4 x bolt M8 x 35, hexagon-head 13
  holds      lower to leg
  torque     21 N.m

--- nut-and-pin-go-along
use "lower-unit.mmk"
guide nut-and-pin-go-along "Take the lower unit off"
  for        competent
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 21 N·m"

take-apart

step leg-off "Take the lower unit off"
  undo       leg-bolts
  remove     lower

put-back
  derived

--- sealed-reader
device sealed-reader "Sealed reader"
  mass       205 g

part shell "rear shell"
part display "display" kind hinged-cover
bond frame-glue "frame glue" kind heat-softened-glue 80 degC, 5 min
  joins      display to shell

--- glue-laid-and-not-renewed
use "sealed-reader.mmk"
guide glue-laid-and-not-renewed "Open the reader"
  for        trained
  tool       heat-mat "heat mat"
  tool       pick "opening pick"

take-apart

step open "Open the display"
  soften     frame-glue with heat-mat
  separate   frame-glue with pick
  open       display

put-back

step close "Close the display"
  shut       display
  stick      frame-glue
  # error 3-6 [used-twice] renewed by nothing here
  cure       frame-glue

--- clock
device clock "Wall clock"
  mass       640 g

part case "case"
part glass "glass" kind snap-cover
  covers     movement
part movement "movement"
part cell "cell" kind dry-cell 1.5 V
  feeds      movement

--- trial-that-can-stand-nowhere
use "clock.mmk"
guide trial-that-can-stand-nowhere "Renew the movement"
  goal       replace movement with movement-new
  for        novice
  spare      movement-new "movement", 1, 6.80 EUR for movement

take-apart

step cell-out "Take the cell out"
  remove     cell

step glass-off "Take the glass off"
  remove     glass
  remove     movement

work

step renew "Take the new movement"
  replace    movement with movement-new

put-back
  derived
# error 6-10 [test-not-ready] cannot be done here
test going "The hands go round"
  when       cell in, glass out
  proves     movement

--- cover-not-opened-for-the-trial
use "clock.mmk"
guide cover-not-opened-for-the-trial "Renew the movement"
  goal       replace movement with movement-new
  for        novice
  spare      movement-new "movement", 1, 6.80 EUR for movement

take-apart

step cell-out "Take the cell out"
  remove     cell
  # error 3-8 [out-of-reach] cannot be got at here
  remove     movement

work

step renew "Take the new movement"
  replace    movement with movement-new

put-back
  derived
test going "The hands go round"
  when       glass out
  proves     movement

--- open-pendant
use "pendant.mmk"
guide open-pendant "Open the pendant"
  for        trained
  # error 14-21 [wrong-state] `lock-off` starts from `switched-on`
  before     lock-off control
  before     prove control with tester
  tool       tester "voltage tester 400 V"
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step lid-off "Take the lid off"
  undo       lid-screws with cross-2
  lift       lid-gasket
  remove     lid

put-back
  derived
test drip "No drop gets in under the spray"
  proves     IP65

guide isolated-twice "Look at the cord"
  for        trained
  before     lock-off control
  before     prove control with tester
  tool       tester "voltage tester 400 V"
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step get-in "Get in"
  do         open-pendant

put-back
  derived
