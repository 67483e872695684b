# Situations of renewing: sold only as an assembly, shims and marks that go back as they were, a wear limit, the old part
# disposed of, a goal.

--- lamp-head
device lamp "Work lamp"

part arm "arm"
part head "lamp head"
part window "window" in head
  renewed as head
part driver "driver board" in head kind circuit-board
fastener head-screw "head screw" 1 x screw M4 x 10, hexalobular 20, pan
  holds      head to arm
  torque     1.8 N.m

--- renewed-as-assembly
use "lamp-head.mmk"
guide renewed-as-assembly "Renew the lamp head"
  goal       replace head with head-new
  for        competent
  spare      head-new "lamp head", 1, 24.00 EUR for head
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the head off"
  undo       head-screw with driver-20
  remove     head

work

step renew "Take the new head"
  replace    head with head-new

put-back
  derived
test light "It lights"
  proves     head

--- renewed-by-itself
use "lamp-head.mmk"
guide renewed-by-itself "Renew the window"
  goal       replace window with window-new
  for        competent
  spare      window-new "window", 1, 3.00 EUR for window
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the window out"
  undo       head-screw with driver-20
  remove     head
  remove     window

work

step renew "Take the new window"
  # error 3-9 [renewed-alone] promised here
  replace    window with window-new

put-back
  derived
test light "It lights evenly"
  proves     window

--- heater-tank
device heater "Greenhouse heater"
part frame "frame"
part tank "tank"
part float "float" in tank
fastener tank-screws "tank screw" 4 x screw M5 x 12, hexalobular 25
  holds      tank to frame
fluid water "water" in tank 3 l kind water
fluid film "film of oil on the float" in float kind lubricant-film
fluid bath "descaler" in tank kind descaler

--- tank-full
use "heater-tank.mmk"
guide tank-full "Replace the tank"
  goal       replace tank with tank-new
  for        competent
  spare      tank-new "tank", 1, 21.00 EUR for tank
  # warning 14-16 [unused-resource] bought for nothing
  supply     oil "oil", 1 ml for film
  tool       driver-25 "hexalobular driver 25"

take-apart

step off "Take the tank off"
  undo       tank-screws with driver-25
  remove     tank

work

step renew "Take the new tank"
  # error 3-9 [renewed-full] comes without it
  # error 3-9 [renewed-full] comes without it
  replace    tank with tank-new

put-back
  derived
test tight "The tank holds water"
  proves     tank

--- tank-emptied
use "heater-tank.mmk"
guide tank-emptied "Replace the tank"
  goal       replace tank with tank-new
  for        competent
  spare      tank-new "tank", 1, 21.00 EUR for tank
  supply     oil "oil", 1 ml for film
  tool       driver-25 "hexalobular driver 25"

take-apart

step off "Take the tank off"
  drain      water
  wipe       film
  undo       tank-screws with driver-25
  remove     tank

work

step renew "Take the new tank"
  replace    tank with tank-new

put-back
  derived
test tight "The tank holds water"
  proves     tank

--- tank-comes-filled
use "heater-tank.mmk"
guide tank-comes-filled "Replace the tank"
  goal       replace tank with tank-new
  for        competent
  spare      tank-new "tank", 1, 21.00 EUR for tank
  # warning 14-16 [unused-resource] bought for nothing
  supply     oil "oil", 1 ml for film
  tool       driver-25 "hexalobular driver 25"

take-apart

step off "Take the tank off"
  undo       tank-screws with driver-25
  remove     tank

work

step renew "Take the new tank"
  # allow renewed-full: the new tank comes filled and oiled
  replace    tank with tank-new

put-back
  derived
test tight "The tank holds water"
  proves     tank

--- old-part-disposed-of
use "lamp-head.mmk"
guide old-part-disposed-of "Renew the driver board"
  goal       replace driver with driver-new
  for        competent
  spare      driver-new "driver board", 1, 11.00 EUR for driver
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the board out"
  undo       head-screw with driver-20
  remove     head
  remove     driver

work

step renew "Take the new board"
  replace    driver with driver-new
  dispose    driver as electronic-waste

put-back
  derived
test light "It lights"
  proves     driver

--- old-part-not-disposed-of
use "lamp-head.mmk"
guide old-part-not-disposed-of "Renew the driver board"
  goal       replace driver with driver-new
  for        competent
  spare      driver-new "driver board", 1, 11.00 EUR for driver
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the board out"
  undo       head-screw with driver-20
  remove     head
  remove     driver

work

step renew "Take the new board"
  # error 3-9 [not-disposed] taken out of service here
  replace    driver with driver-new

put-back
  derived
test light "It lights"
  proves     driver

--- renewed-in-its-place
use "lamp-head.mmk"
guide renewed-in-its-place "Renew the lamp head"
  goal       replace head with head-new
  for        competent
  spare      head-new "lamp head", 1, 24.00 EUR for head
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the head off"
  undo       head-screw with driver-20
  # error 3-9 [still-in-place] the old one is still in
  replace    head with head-new

put-back
  derived
test light "It lights"
  proves     head

--- goal-forgotten
use "lamp-head.mmk"
guide goal-forgotten "Renew the lamp head"
  # error 14-20 [goal-not-met] promised here
  goal       replace head with head-new
  for        competent
  spare      head-new "lamp head", 1, 24.00 EUR for head
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step off "Take the head off"
  undo       head-screw with driver-20
  remove     head

put-back
  derived

--- goal-of-a-verb
use "gear-unit.mmk"
guide goal-of-a-verb "Clean the bearing"
  goal       clean bearing, grease bearing
  for        competent

take-apart

step off "Take the bearing out"
  remove     cap
  mark       shims
  remove     shims
  remove     bearing

work

step clean "Clean it"
  clean      bearing
  grease     bearing

put-back
  derived

--- goal-of-a-verb-forgotten
use "gear-unit.mmk"
guide goal-of-a-verb-forgotten "Clean the bearing"
  # error 14-18 [goal-not-met] promised here
  goal       clean bearing
  for        competent

take-apart

step off "Take the bearing out"
  remove     cap
  mark       shims
  remove     shims
  remove     bearing

put-back
  derived

--- gear-unit
device gear-unit "Gear unit"

part housing "housing"
part cap "cap"
part shims "shim" 3 x shim 0.10 mm
  keep       order, face
  behind     cap
part bearing "bearing" kind bearing
  behind     cap, shims
part coupling-half "coupling half" kind coupling
  keep       face

--- marked-shims
use "gear-unit.mmk"
guide marked-shims "Take the bearing out"
  for        competent

take-apart

step off "Take the bearing out"
  remove     cap
  mark       shims
  remove     shims
  remove     bearing

put-back
  derived

--- unmarked-shims
use "gear-unit.mmk"
guide unmarked-shims "Take the bearing out"
  for        competent

take-apart

step off "Take the bearing out"
  remove     cap
  # error 3-8 [not-marked] come off here
  remove     shims
  remove     bearing

put-back
  derived

--- match-marks
use "gear-unit.mmk"
guide match-marks "Take the coupling off"
  for        competent

take-apart

step off "Take the coupling off"
  mark       coupling-half across coupling-half, housing
  remove     coupling-half

put-back

step close "Put the coupling on"
  fit        coupling-half as marked

--- marked-too-late
use "gear-unit.mmk"
guide marked-too-late "Take the coupling off"
  for        competent

take-apart

step off "Take the coupling off"
  # error 3-8 [not-marked] comes off here
  remove     coupling-half
  mark       coupling-half across coupling-half, housing

put-back
  derived

--- hand-drill
device drill "Hand drill"

part case "case"
part brush "carbon brush"
  limit      length at least 5 mm
part brush-cap "brush cap"
  covers     brush

--- wear-measured
use "hand-drill.mmk"
guide wear-measured "Clean the brush"
  for        competent
  spare      brush-new "carbon brush", 1, 2.20 EUR for brush
  tool       ruler "steel ruler"

take-apart

step off "Take the brush out"
  remove     brush-cap
  remove     brush

work

step measure "Measure the brush"
  measure    brush length at least 5 mm with ruler, else replace brush with brush-new

put-back
  derived

--- wear-not-measured
use "hand-drill.mmk"
guide wear-not-measured "Clean the brush"
  for        competent

take-apart

step off "Take the brush out"
  remove     brush-cap
  # error 3-8 [not-measured] can be measured from here on
  remove     brush

put-back
  derived

--- worn-part-renewed-anyway
use "hand-drill.mmk"
guide worn-part-renewed-anyway "Renew the brush"
  goal       replace brush with brush-new
  for        competent
  spare      brush-new "carbon brush", 1, 2.20 EUR for brush

take-apart

step off "Take the brush out"
  remove     brush-cap
  remove     brush

work

step renew "Take the new brush"
  replace    brush with brush-new

put-back
  derived
test run "It runs"
  proves     brush

--- measured-for-nothing
use "hand-drill.mmk"
guide measured-for-nothing "Look at the cap"
  for        competent
  tool       ruler "steel ruler"

take-apart

step off "Take the brush out"
  remove     brush-cap
  # advice 3-9 [asked-by-nothing] nothing declared asks to measure `brush-cap`; add `limit depth ...` to `brush-cap`
  measure    brush-cap depth at least 2 mm with ruler

put-back
  derived

--- disposed-for-nothing
use "hand-drill.mmk"
guide disposed-for-nothing "Renew the cap"
  goal       replace brush-cap with cap-new
  for        competent
  spare      cap-new "brush cap", 1, 0.80 EUR for brush-cap

take-apart

step off "Take the cap off"
  remove     brush-cap

work

step renew "Take the new cap"
  replace    brush-cap with cap-new
  # advice 3-9 [asked-by-nothing] nothing declared asks to dispose `brush-cap`; add `waste` to a kind of its own for `brush-cap`
  dispose    brush-cap as plastic-waste

put-back
  derived
test run "It runs"
  proves     brush-cap

--- given-up-on-purpose
use "hand-drill.mmk"
guide given-up-on-purpose "Take the cap off for good"
  for        competent

take-apart

step off "Take the cap off"
  remove     brush-cap
  leave-off  brush-cap

--- unused-tool
use "hand-drill.mmk"
guide unused-tool "Take the cap off and on"
  for        competent
  # warning 14-18 [unused-resource] laid out for nothing
  tool       ruler "steel ruler"

take-apart

step off "Take the cap off"
  remove     brush-cap

put-back
  derived

--- unused-spare-part
use "hand-drill.mmk"
guide unused-spare-part "Take the cap off and on"
  for        competent
  # error 14-20 [unused-spare] bought for nothing
  spare      cap-new "brush cap", 1, 0.80 EUR for brush-cap

take-apart

step off "Take the cap off"
  remove     brush-cap

put-back
  derived

--- wrong-number-of-marks
use "gear-unit.mmk"
guide wrong-number-of-marks "Look at the shims"
  for        competent

take-apart

step off "Take the cap off"
  remove     cap
  photo "img/shims.svg" "The three shims"
    # error 5-34 [wrong-count] `shims` is 3 pieces and has 2 marks; count again
    mark     shims 0.2,0.5 0.5,0.5

put-back
  derived

--- right-number-of-marks
use "gear-unit.mmk"
guide right-number-of-marks "Look at the shims"
  for        competent

take-apart

step off "Take the cap off"
  remove     cap
  photo "img/shims.svg" "The three shims"
    mark     shims 0.2,0.5 0.5,0.5 0.8,0.5
    mark     shims 2 0.5,0.5

put-back
  derived

--- wrong-number-of-positions
device panel "Front panel"

face front 100 x 50 mm

part base "base"
part front-plate "front plate"
fastener plate-screws "plate screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      front-plate to base
  torque     0.8 N.m
  # error 3-32 [wrong-count] `plate-screws` is 4 pieces and has 3 positions; count again
  at         front 5,5 95,5 5,45

guide wrong-number-of-positions "Take the plate off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       torque-driver "torque driver 0.8 N·m"

take-apart

step off "Take the plate off"
  undo       plate-screws with driver-10
  remove     front-plate

put-back
  derived

--- no-positions-but-a-side
device panel "Front panel"

face front 100 x 50 mm

part base "base"
part front-plate "front plate"
fastener plate-screws "plate screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      front-plate to base
  torque     0.8 N.m
  at         front

guide no-positions-but-a-side "Take the plate off"
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       torque-driver "torque driver 0.8 N·m"

take-apart

step off "Take the plate off"
  undo       plate-screws with driver-10
  remove     front-plate

put-back
  derived

--- a-test-that-needs-what-closes-it-in
device mill "Mill"

part base "base"
part burr "burr"
part motor "motor" kind motor
  behind     burr
connector motor-plug kind friction-plug
  joins      motor to base
  behind     burr
function grinding "It grinds"
  through    motor, burr

guide a-test-that-needs-what-closes-it-in "Replace the motor"
  goal       replace motor with motor-new
  for        competent
  spare      motor-new "motor", 1

take-apart

step open "Take the burr off"
  remove     burr

step out "Take the motor out"
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new
  dispose    motor as electronic-waste

put-back
  derived

test grinds "It grinds"
  proves     grinding

--- torch
device torch "Torch"

part body "body"
part cell "cell" kind dry-cell

--- disposed-of-as-another-class
use "torch.mmk"
guide disposed-of-as-another-class "Renew the cell"
  goal       replace cell with cell-new
  for        novice
  spare      cell-new "cell", 1 for cell

take-apart

step out "Take the cell out"
  remove     cell

work

step renew "Take the new one"
  replace    cell with cell-new
  # error 3-36 [not-disposed] another class
  dispose    cell as household-waste

put-back
  derived

test shines "It shines"
  proves     cell

--- twin-torch
device twin-torch "Twin torch"

part left "left lamp"
part right "right lamp"

--- spare-of-the-other-side
use "twin-torch.mmk"
guide spare-of-the-other-side "Renew the right lamp"
  goal       replace right with lamp-new
  for        competent
  spare      lamp-new "lamp 3 V", 1 for left

take-apart

step lamp-out "Take the lamp out"
  remove     right

work

step renew "Take the new one"
  # error 3-9 [wrong-spare] not the part for it
  replace    right with lamp-new

put-back
  derived

test shines "It shines"
  proves     right

--- replaced-with-paste
use "twin-torch.mmk"
guide replaced-with-paste "Renew the right lamp"
  goal       replace right with paste
  for        competent
  supply     paste "paste", 2 g for right

take-apart

step lamp-out "Take the lamp out"
  remove     right

work

step renew "Take the new one"
  # error 3-9 [wrong-spare] not the part for it
  replace    right with paste

put-back
  derived

test shines "It shines"
  proves     right

--- spinner
device spinner "Spinner"
part motor "motor" kind motor
part brushes "carbon brush" 2 x carbon-brush in motor
  behind     caps
fastener caps "brush cap" 2 x screw M12 x 8, slotted 10
  holds      brushes to motor
part pads "brake pad" 2 x brake-pad
function spinning "It runs"
  through    motor, brushes
function braking "It brakes"
  through    pads

--- one-brush-of-two
use "spinner.mmk"
guide one-brush-of-two "Renew the brushes and the pads"
  # error 14-20 [goal-not-met] promised here
  goal       replace brushes with brushes-new
  # error 14-20 [goal-not-met] promised here
  goal       replace pads with pads-new
  for        competent
  spare      brushes-new "carbon brush", 2 for brushes
  spare      pads-new "brake pad", 2 for pads
  tool       slot-10 "slotted driver 10"

take-apart

step out "Take the brushes and pads out"
  undo       caps with slot-10
  remove     brushes, pads

work

step new "Take the new brush"
  replace    brushes 1 with brushes-new
  replace    pads 1 with pads-new

put-back
  derived

test runs "It runs"
  proves     brushes, spinning, pads, braking

--- lid-pot
device lid-pot "Lidded pot"
part pot-body "pot"
part lid "lid"
fastener screws "lid screw" 4 x screw M5 x 16, hexagon 4
  holds      lid to pot-body
  torque     3 N.m
bond ring "lid ring" kind o-ring
  joins      lid to pot-body

--- renewed-by-laying-it
use "lid-pot.mmk"
guide renewed-by-laying-it "Renew the lid ring"
  goal       replace ring with ring-new
  for        competent
  supply     ring-new "O-ring 80 x 3 mm", 1 for ring
  tool       key-4 "hexagon key 4"
  tool       torque-driver "torque driver 3 N·m"

take-apart

step off "Take the ring out"
  undo       screws with key-4
  remove     lid
  lift       ring

put-back

step close "Close it on a new ring"
  seat       ring with ring-new
  fit        lid
  fasten     screws with key-4 to 3 N.m
