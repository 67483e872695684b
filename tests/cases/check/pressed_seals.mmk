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

take-apart

step lid-off "Take the lid off"
  undo       lid-screws with cross-2
  lift       lid-gasket
  remove     lid

put-back

step lid-on "Fit the lid"
  fit        lid
  seat       lid-gasket

# error 6-10 [untested] proves nothing here
test drip "No drop gets in under the spray"
  proves     IP65

step screws "Fasten the lid"
  fasten     lid-screws with cross-2

step power "Restore the supply"
  clear      control
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

take-apart

step leg-off "Take the lower unit off"
  undo       leg-bolts
  remove     lower

put-back
  derived
