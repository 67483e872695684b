# Situations of tests: a trial before closing, a rating that the work voids, functions that are disturbed.

--- logger
device logger "Field logger"
  sealed     IP67 by lid-seal

part back "back shell"
part lid "lid"
  covers     board, lid-plug
part board "board"
bond lid-seal "lid seal" kind seal-tape
  joins      lid to back
connector lid-plug "display plug" kind friction-plug
  joins      board to back
function display "The display shows"
  through    board, lid-plug

--- trial-before-closing
use "logger.mmk"
guide trial-before-closing "Renew the board"
  goal       replace board with board-new
  for        competent
  spare      board-new "board", 1, 40.00 EUR for board
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  disconnect lid-plug
  remove     board

work

step renew "Take the new board"
  replace    board with board-new

put-back
  derived
test shows "It starts and shows the time"
  when       lid out
  proves     board, display
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- trials-placed-by-themselves
use "logger.mmk"
guide trials-placed-by-themselves "Renew the board"
  goal       replace board with board-new
  for        competent
  spare      board-new "board", 1, 40.00 EUR for board
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  disconnect lid-plug
  remove     board

work

step renew "Take the new board"
  replace    board with board-new

put-back
  derived
test tight "It holds 5 kPa for 30 s"
  proves     IP67
test shows "It starts and shows the time"
  proves     board, display

--- trial-after-closing
use "logger.mmk"
guide trial-after-closing "Renew the board"
  goal       replace board with board-new
  for        competent
  spare      board-new "board", 1, 40.00 EUR for board
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  disconnect lid-plug
  remove     board

work

step renew "Take the new board"
  replace    board with board-new

put-back

step board-in "Put the board in"
  fit        board
  connect    lid-plug

step close "Close the lid"
  seal       lid-seal with seal-new
  fit        lid

# error 6-10 [late-test] too late here
test shows "It starts and shows the time"
  proves     board, display
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- trial-that-has-to-wait
use "logger.mmk"
guide trial-that-has-to-wait "Renew the board"
  goal       replace board with board-new
  for        competent
  spare      board-new "board", 1, 40.00 EUR for board
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  disconnect lid-plug
  remove     board

work

step renew "Take the new board"
  replace    board with board-new

put-back

step board-in "Put the board in"
  fit        board
  connect    lid-plug

step close "Close the lid"
  seal       lid-seal with seal-new
  fit        lid

test shows "It starts and shows the time"
  when       lid in
  proves     board, display
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- no-trial
use "logger.mmk"
guide no-trial "Renew the board"
  goal       replace board with board-new
  for        competent
  spare      board-new "board", 1, 40.00 EUR for board
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  disconnect lid-plug
  remove     board

work

step renew "Take the new board"
  # error 3-9 [untested] renewed here
  replace    board with board-new

put-back
  derived
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- rating-not-proved
use "logger.mmk"
guide rating-not-proved "Look at the board"
  for        competent
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  # error 3-10 [untested] disturbed here
  separate   lid-seal with pick
  remove     lid

put-back
  derived

--- seal-not-renewed
use "logger.mmk"
guide seal-not-renewed "Look at the board"
  for        competent
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

put-back
  # error 3-9 [used-twice] renewed by nothing here
  derived
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- function-not-proved
use "logger.mmk"
guide function-not-proved "Reseat the plug"
  for        competent
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid
  # error 3-12 [untested] disturbed here
  disconnect lid-plug

put-back
  derived
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- trial-before-it-is-back
use "logger.mmk"
guide trial-before-it-is-back "Reseat the plug"
  for        competent
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid
  disconnect lid-plug

put-back

# error 6-10 [untested] proves nothing here
test shows "It starts and shows the time"
  proves     display

step close "Close it"
  connect    lid-plug
  seal       lid-seal with seal-new
  fit        lid

test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- trial-not-possible-there
use "logger.mmk"
guide trial-not-possible-there "Reseat the plug"
  for        competent
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid
  disconnect lid-plug

put-back

step plug-in "Connect the plug"
  connect    lid-plug

# error 6-10 [test-not-ready] cannot be done here
test shows "It starts and shows the time"
  when       lid in
  proves     display

step close "Close it"
  seal       lid-seal with seal-new
  fit        lid

test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- trial-asked-by-nothing
device tin "Tin"

part body "body"
part lid "lid"

guide trial-asked-by-nothing "Look in"
  for        competent

take-apart

step open "Take the lid off"
  remove     lid

put-back
  derived
# advice 6-11 [asked-by-nothing] nothing that the work renews or disturbs asks for test `rattle`; declare the `function` that it proves
test rattle "Nothing rattles"
  proves     body

--- one-line-missing-is-one-finding
use "logger.mmk"
guide one-line-missing-is-one-finding "Look under the board"
  for        competent
  supply     seal-new "lid seal tape 2 mm", 40 cm for lid-seal
  tool       pick "opening pick"

take-apart

step open "Take the lid off"
  separate   lid-seal with pick
  remove     lid

step board-out "Take the board out"
  # error 3-8 [still-held] would tear what holds it
  remove     board

put-back
  derived
test shows "It starts and shows the time"
  proves     display
test tight "It holds 5 kPa for 30 s"
  proves     IP67

--- hob
device hob "Gas hob"

energy gas "gas supply" kind gas-supply
  feeds      valve
part frame "frame"
part lid "lid"
  covers     valve, inlet, outlet
part valve "gas valve"
part burner "burner"
connector inlet "inlet union" kind gas-union
  joins      valve to frame
connector outlet "outlet union" kind gas-union
  joins      burner to valve

--- made-again-untested
use "hob.mmk"
guide made-again-untested "Look at the valve"
  for        licensed "gas fitter"
  tool       spanner-24 "spanner 24"

take-apart

step open "Take the valve out"
  turn-off   gas
  remove     lid
  # error 3-6 [untested] disturbed here
  undo       inlet, outlet with spanner-24
  remove     valve

put-back
  derived

--- made-again-tested
use "hob.mmk"
guide made-again-tested "Look at the valve"
  for        licensed "gas fitter"
  tool       spanner-24 "spanner 24"
  tool       gauge "water gauge 0 to 30 mbar"

take-apart

step open "Take the valve out"
  turn-off   gas
  remove     lid
  undo       inlet, outlet with spanner-24
  remove     valve

put-back
  derived

test tightness "The gauge holds at 20 mbar for two minutes"
  proves     inlet, outlet
  with       gauge

--- not-for-this-reader
use "hob.mmk"
guide not-for-this-reader "Look at the valve"
  for        competent
  tool       spanner-24 "spanner 24"

take-apart

step open "Take the valve out"
  # error 3-10 [unlicensed-work] licensed work
  turn-off   gas
  remove     lid
  undo       inlet, outlet with spanner-24
  remove     valve

put-back
  derived

test tightness "The gauge holds at 20 mbar for two minutes"
  proves     inlet, outlet

--- rim-brake
device rim-brake "Brake of a trailer"

part lever "lever"
part caliper "caliper"
part hose "hose" kind hose
connector eye "eye joint" 1 x banjo-joint M6, hexagon-head 10
  joins      hose to caliper
connector top "nut at the lever" 1 x compression-joint
  joins      hose to lever
fluid liquid "brake fluid" in caliper 30 ml kind brake-fluid
fastener nipple "bleed screw" in caliper 1 x bleed-screw M6, hexagon-head 8
function braking "The brake holds"
  through    lever, top, hose, eye, liquid, caliper

--- bleed-screw-shut-too-late
use "rim-brake.mmk"
guide bleed-screw-shut-too-late "Renew the brake fluid"
  for        trained
  supply     dot "brake fluid", 100 ml for liquid
  tool       s10 "spanner 8"
  tool       pan "drain pan"

take-apart

step out "Drain"
  crack      nipple with s10
  drain      liquid with pan

work

step waste "Waste"
  dispose    liquid as brake-fluid-waste

put-back

step fill "Fill"
  fill       liquid with dot

# error 6-9 [untested] proves nothing here
test hold "The lever is hard"
  proves     braking

step shut "Shut the bleed screw"
  close      nipple with s10

--- child-trailer
device child-trailer "Child trailer"

part fork "fork"
part wheel "front wheel" kind wheel
fastener axle "axle" 1 x quick-release
  holds      wheel to fork
part disc "brake disc" in wheel kind brake-disc
part pads "brake pad" 2 x brake-pad
  behind     wheel
function braking "The brake holds the wheel"
  through    pads, disc

--- brake-tried-without-its-wheel
use "child-trailer.mmk"
guide brake-tried-without-its-wheel "Renew the pads"
  goal       replace pads with pads-spare
  for        trained
  before     cool disc
  spare      pads-spare "brake pad", 2, 18 EUR for pads

take-apart

step wheel-out "Wheel out"
  release    axle
  draw       axle
  remove     wheel
  remove     pads

work

step renew "New pads"
  replace    pads with pads-spare

put-back

step pads-in "Pads in"
  fit        pads

# error 6-9 [untested] proves nothing here
test hold "The brake holds the wheel"
  proves     pads, braking

step wheel-in "Wheel in"
  fit        wheel
  insert     axle
  tighten    axle

--- drum-brake
device drum-brake "Drum brake"

part lever "lever"
part caliper "caliper"
part hose "hose" kind hose
connector eye "eye joint" 1 x banjo-joint M6, hexagon-head 10
  joins      hose to caliper
connector top "nut at the lever" 1 x compression-joint
  joins      hose to lever
fluid liquid "brake fluid" in caliper 30 ml kind brake-fluid
function braking "The brake holds"
  through    lever, top, hose, eye, liquid, caliper

--- joints-tried-by-name
use "drum-brake.mmk"
guide joints-tried-by-name "Renew the hose"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "hose", 1, 20 EUR for hose
  supply     dot "brake fluid", 100 ml for liquid
  tool       s10 "spanner 10"
  tool       pan "drain pan"

take-apart

step out "Hose out"
  drain      liquid with pan
  undo       top, eye with s10
  remove     hose

work

step take "Take the new hose"
  replace    hose with hose-new
  dispose    liquid as brake-fluid-waste

put-back
  derived

test leak "No drop at either joint with the lever pulled for one minute"
  when       liquid full
  proves     top, eye

test hold "The brake holds"
  when       liquid full
  proves     hose, braking

--- lift-door
kind door-cord-catch "catch pulled by a cord" is connector
  states     engaged, released
  release    engaged -> released by hand from outside takes 3 s
  engage     released -> engaged by hand from outside takes 3 s
device lift-door "Lift door"
energy mains "mains of the operator" kind mains-cord
  feeds      motor
energy leaf-weight "weight of the leaf" in leaf kind hanging-weight
part motor "operator motor" kind motor
part arm "arm"
connector catch "trolley catch" kind door-cord-catch
  joins      arm to motor
fastener arm-screws "arm screw" 2 x bolt M8 x 20, hexagon-head 13
  holds      arm to leaf
  torque     22 N.m
part leaf "door leaf"
function driving "The operator opens the door, and turns back at a block"
  through    motor, catch, arm, arm-screws, leaf

--- run-against-its-clamps
use "lift-door.mmk"
guide run-against-its-clamps "Renew the arm"
  goal       replace arm with arm-new
  for        competent
  spare      arm-new "door arm", 1 for arm
  tool       pliers "prop of the track, two locking pliers"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 22 N·m"

take-apart

step off "Cut the operator off"
  unplug     mains
  release    catch

step clamp "Clamp the leaf"
  prop       leaf-weight with pliers

step arm-off "Take the arm off"
  undo       arm-screws with spanner-13
  remove     arm

work

step new "Take the new arm"
  replace    arm with arm-new

put-back

step arm-on "Fit the arm, and couple it"
  fit        arm
  fasten     arm-screws with spanner-13 to 22 N.m
  engage     catch
  plug-in    mains

# error 6-9 [untested] proves nothing here
test back "The operator opens the door"
  proves     arm, driving

step unclamp "Take the pliers off"
  unprop     leaf-weight with pliers
