# Situations of parts in each other's way: a plate over connectors, a cover on its cables, a part that carries others,
# one that is moved aside or drawn back, two ways in.

--- camera
device camera "Trail camera"

part body "body"
part plate "bracket"
  covers     display-plug, touch-plug
fastener plate-screws "bracket screw" 2 x screw M2 x 4, hexalobular 6, pan
  holds      plate to body
part display "display"
connector display-plug "display plug" kind friction-plug
  joins      display to body
connector touch-plug "touch plug" kind friction-plug
  joins      display to body

--- plate-over-plugs
use "camera.mmk"
guide plate-over-plugs "Take the display out"
  for        competent
  tool       driver-6 "hexalobular driver 6"

take-apart

step display-out "Take the display out"
  undo       plate-screws with driver-6
  remove     plate
  disconnect display-plug, touch-plug
  remove     display

put-back
  derived

--- plate-back-too-early
use "camera.mmk"
guide plate-back-too-early "Take the display out"
  for        competent
  tool       driver-6 "hexalobular driver 6"

take-apart

step display-out "Take the display out"
  undo       plate-screws with driver-6
  remove     plate
  disconnect display-plug, touch-plug
  remove     display

put-back

step display-in "Fit the display"
  fit        display
  fit        plate
  fasten     plate-screws with driver-6
  # error 3-9 [out-of-reach] cannot be got at here
  connect    display-plug
  connect    touch-plug

--- plug-under-the-plate
use "camera.mmk"
guide plug-under-the-plate "Take the display out"
  for        competent
  tool       driver-6 "hexalobular driver 6"

take-apart

step display-out "Take the display out"
  # error 3-12 [out-of-reach] cannot be got at here
  disconnect display-plug, touch-plug
  undo       plate-screws with driver-6
  remove     plate
  remove     display

put-back
  derived

--- one-plug-of-two
use "camera.mmk"
guide one-plug-of-two "Take the display out"
  for        competent
  tool       driver-6 "hexalobular driver 6"

take-apart

step display-out "Take the display out"
  undo       plate-screws with driver-6
  remove     plate
  disconnect display-plug
  # error 3-8 [still-held] would tear what holds it
  remove     display

put-back
  derived

--- plate-over-loose-plug
use "camera.mmk"
guide plate-over-loose-plug "Reseat the display plugs"
  for        competent
  tool       driver-6 "hexalobular driver 6"

take-apart

step open "Take the bracket off"
  undo       plate-screws with driver-6
  remove     plate
  disconnect display-plug, touch-plug

put-back

step close "Put the bracket on"
  connect    touch-plug
  # error 3-5 [closed-over] cannot be reached after this
  fit        plate
  fasten     plate-screws with driver-6

--- reader
device reader "Card reader"

part back "back shell"
part lid "lid" kind hinged-cover
  covers     board
part board "board"
fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk
  holds      lid to back
  torque     0.20 N.m
connector lid-ribbon "lid ribbon" kind flip-lock-ribbon
  joins      lid to board
  behind     lid
caution strain on lid-ribbon when lid open
  The ribbon is 40 mm long. Stand the lid on its lower edge, against a block.

--- tied-by-its-cable
use "reader.mmk"
guide tied-by-its-cable "Look at the board"
  for        competent
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.2 N·m"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  open       lid

put-back
  derived

--- lifted-off-on-its-cable
use "reader.mmk"
guide lifted-off-on-its-cable "Take the lid off"
  for        competent
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.2 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-6
  open       lid
  # error 3-10 [still-held] would tear what holds it
  lift-off   lid

put-back
  derived

--- left-standing-open
use "reader.mmk"
guide left-standing-open "Look at the board"
  for        competent
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.2 N·m"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  open       lid

put-back

step close "Fasten the lid"
  # error 3-8 [not-seated] ties what is not there yet
  fasten     lid-screws with driver-6

--- blower
device blower "Blower box"

part frame "frame"
part filter-drawer "filter drawer" kind sliding-drawer
  blocks     fan
part arm "arm" kind retractable-part
  blocks     motor
part fan "fan"
  behind     left-panel or right-panel
part left-panel "left panel" kind panel
part right-panel "right panel" kind panel
part motor "motor"
  carries    pulley, key-ring
part pulley "pulley"
part key-ring "spacer ring"

--- moved-aside
use "blower.mmk"
guide moved-aside "Take the fan out"
  for        competent

take-apart

step fan-out "Take the fan out"
  remove     left-panel
  pull-out   filter-drawer
  remove     fan

put-back
  derived

--- other-way-in
use "blower.mmk"
guide other-way-in "Take the fan out"
  for        competent

take-apart

step fan-out "Take the fan out"
  remove     right-panel
  pull-out   filter-drawer
  remove     fan

put-back
  derived

--- neither-way-in
use "blower.mmk"
guide neither-way-in "Take the fan out"
  for        competent

take-apart

step fan-out "Take the fan out"
  pull-out   filter-drawer
  # error 3-8 [out-of-reach] cannot be got at here
  remove     fan

put-back
  derived

--- drawer-in-the-way
use "blower.mmk"
guide drawer-in-the-way "Take the fan out"
  for        competent

take-apart

step fan-out "Take the fan out"
  remove     left-panel
  # error 3-8 [still-blocked] blocked here
  remove     fan

put-back
  derived

--- drawer-pushed-in-too-soon
use "blower.mmk"
guide drawer-pushed-in-too-soon "Take the fan out"
  for        competent

take-apart

step fan-out "Take the fan out"
  remove     left-panel
  pull-out   filter-drawer
  remove     fan

put-back

step fan-in "Put the fan in"
  push-in    filter-drawer
  # error 3-5 [still-blocked] blocked here
  fit        fan
  fit        left-panel

--- drawn-back
use "blower.mmk"
guide drawn-back "Take the motor out"
  for        competent

take-apart

step motor-out "Take the motor out"
  draw-back  arm
  remove     motor

put-back
  derived

--- carried-out-with-it
use "blower.mmk"
guide carried-out-with-it "Change the pulley on the bench"
  for        competent

take-apart

step motor-out "Take the motor out"
  draw-back  arm
  remove     motor

step pulley-off "Take the pulley off, on the bench"
  remove     pulley

put-back
  derived

--- carried-and-forgotten
use "blower.mmk"
guide carried-and-forgotten "Change the pulley on the bench"
  for        competent

take-apart

step motor-out "Take the motor out"
  draw-back  arm
  remove     motor
  # error 3-8 [not-put-back] comes off here
  remove     pulley, key-ring

put-back

step motor-in "Put the motor in"
  fit        key-ring
  fit        motor
  run-out    arm

--- bread-oven
device bread-oven "Bread oven"

part body "body"
part door "door"
  covers     hinge
part hinge "hinge" in body
fluid hinge-grease "grease in the hinge" in hinge kind grease

--- greased-behind-the-door
use "bread-oven.mmk"
guide greased-behind-the-door "Grease the hinge"
  for        competent
  supply     grease-new "grease", 5 ml for hinge-grease

take-apart

step open "Take the door off"
  remove     door

work

step grease "Grease the hinge"
  clean      hinge-grease
  pack       hinge-grease with grease-new

put-back
  derived

--- greased-through-the-door
use "bread-oven.mmk"
guide greased-through-the-door "Grease the hinge"
  for        competent
  supply     grease-new "grease", 5 ml for hinge-grease

before

step clean "Clean the hinge"
  # error 3-7 [out-of-reach] cannot be got at here
  clean      hinge-grease

take-apart

step open "Take the door off"
  remove     door

work

step grease "Grease the hinge"
  pack       hinge-grease with grease-new

put-back
  derived

--- rain-camera
device rain-camera "Rain camera"
  sealed     IP68 by door-ring

part body "body"
part door "battery door" kind hinged-cover
  covers     pack
part pack "battery pack" kind battery-pack 1250 mAh 3.7 V
bond door-ring "door ring" kind o-ring 30 x 1
  joins      door to body

--- ring-left-in-its-groove
use "rain-camera.mmk"
guide ring-left-in-its-groove "Renew the battery pack"
  goal       replace pack with pack-new
  for        novice
  spare      pack-new "battery pack", 1 for pack

take-apart

step open "Open the door"
  open       door
  slide-out  pack

work

step renew "Take the new pack"
  replace    pack with pack-new
  dispose    pack as battery-waste

put-back
  derived

test starts "It starts"
  proves     pack

--- lid-camera
device lid-camera "Camera with a lid"

part body "body"
part lid "lid" kind hinged-cover
  covers     board
part board "board"
bond lid-ring "lid ring" kind o-ring 40 x 1
  joins      lid to body
fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, pan
  holds      lid to body
  torque     0.20 N.m

--- screwed-on-ring-forgotten
use "lid-camera.mmk"
guide screwed-on-ring-forgotten "Look at the board"
  goal       open lid
  for        competent
  tool       driver-6 "hexalobular driver 6"
  tool       torque-driver "torque driver 0.1 to 0.5 N·m with hexalobular 6 bit"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  # error 3-6 [still-held] would tear what holds it
  open       lid

put-back
  derived
