# The Linnet 60, a desktop press that prints, feeds and cuts labels from a roll.
# An invented machine: its layout is that of an ordinary thermal transfer printer with a cutter.

use "kinds.mmk"

device press "Linnet 60 label press"
  revision   D
  mass       7.8 kg

face top 270 x 320 mm, corner 12 mm
face right 320 x 210 mm, corner 12 mm
face left 320 x 210 mm, corner 12 mm
face front 270 x 210 mm, corner 12 mm
face rear 270 x 210 mm, corner 12 mm

# The supply

energy mains "mains supply" kind mains-cord 230 V
  feeds      supply-module, control-board
part supply-module "24 V supply module"
  behind     rear-cover
fastener supply-screws "supply module screw" 4 x screw M4 x 8, hexalobular 20, pan
  holds      supply-module to frame
  behind     rear-cover
  torque     1.2 N.m
  at         rear 24,60 24,160 110,60 110,160
connector supply-earth "earth lead of the supply module" kind spade
  joins      supply-module to frame
  behind     rear-cover

# The case

part frame "main frame"
part top-cover "top cover"
  covers     control-board, head-ribbon, cable-ties, feed-plug, take-up-plug, sensor-plug, dc-plug
  covers     tray-screws, left-earth, bezel-hooks
fastener top-screws "top cover screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      top-cover to frame
  torque     0.50 N.m
  at         top 12,14 258,14 12,306 258,306
fastener top-inner-screws "hidden top cover screw" 2 x screw M3 x 12, hexalobular 10, countersunk
  holds      top-cover to frame
  torque     0.50 N.m
  at         top 60,180 210,180
part lid "lid" in top-cover kind hinged-cover
  covers     ink-cassette, top-inner-screws
part ink-cassette "ink ribbon cassette"
  covers     top-inner-screws
part window "lid window" in lid
  renewed as lid

part right-panel "right side panel"
  covers     gear-cover, gear-cover-screws
fastener right-screws "right panel screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      right-panel to frame
  torque     0.50 N.m
  at         right 10,10 310,10 10,200 310,200
part left-panel "left side panel"
  covers     board-tray
fastener left-screws "left panel screw" 4 x screw M3 x 8, hexalobular 10, pan
  holds      left-panel to frame
  torque     0.50 N.m
  at         left 10,10 310,10 10,200 310,200
connector left-earth "earth lead of the left panel" kind spade
  joins      left-panel to frame
part rear-cover "rear cover"
fastener rear-screws "rear cover screw" 6 x screw M3 x 8, hexalobular 10, pan
  holds      rear-cover to frame
  torque     0.50 N.m
  at         rear 10,10 135,10 260,10 10,200 135,200 260,200

part front-bezel "front bezel" kind drop-front
  blocks     cutter-module
  covers     panel-ribbon, cutter-plug, cutter-screws
fastener bezel-screws "bezel screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      front-bezel to frame
  torque     0.50 N.m
  at         front 20,196 250,196
fastener bezel-hooks "bezel hook" 4 x snap-hook
  holds      front-bezel to frame
  at         front 40,8 110,8 160,8 230,8
part panel-board "panel board" in front-bezel kind circuit-board
fastener panel-screws "panel board screw" 4 x screw M2.5 x 6, hexalobular 8, pan
  holds      panel-board to front-bezel
  torque     0.25 N.m
part keypad "keypad" in front-bezel
part display "display" in panel-board
connector panel-ribbon "panel ribbon" kind flip-lock-ribbon
  joins      panel-board to control-board
notice bezel-hangs on panel-ribbon when front-bezel open
  The ribbon is 90 mm long, and tears under the weight of the bezel.
  Rest the bezel on a block before you touch the socket.

# The media drawer

part media-drawer "media drawer" kind sliding-drawer
  blocks     front-bezel, cutter-module
  carries    roll-spindle, core-left, core-right
fastener drawer-lock "drawer lock screw" 1 x captive-screw M4 x 12, hexalobular 20, pan
  holds      media-drawer to frame
  torque     0.80 N.m
  at         front 135,150
part roll-spindle "roll spindle"
part core-left "left core flange"
part core-right "right core flange"

# Electronics

part board-tray "board tray"
  carries    control-board, harness, heat-pad
  behind     fan
  covers     shield, left-circlip, left-bush
part control-board "control board" kind circuit-board
fastener board-screws "control board screw" 5 x screw M2.5 x 6, hexalobular 8, pan
  holds      control-board to board-tray
  torque     0.25 N.m
part harness "wire harness" kind lead
part heat-pad "heat pad"
fastener tray-screws "board tray screw" 4 x captive-screw M4 x 8, hexalobular 20, pan
  holds      board-tray to frame
  torque     0.80 N.m
  at         left 60,40 200,40 60,150 200,150
fastener cable-ties "cable tie" 3 x cable-tie
  holds      harness to frame
connector head-ribbon "print head ribbon" kind flip-lock-ribbon
  joins      printhead to control-board
connector feed-plug "feed motor plug" kind locking-tab-plug
  keep       order
  joins      feed-motor to control-board
connector take-up-plug "take-up motor plug" kind locking-tab-plug
  keep       order
  joins      take-up-motor to control-board
connector sensor-plug "label sensor plug" kind locking-tab-plug
  joins      sensor-bracket to control-board
connector dc-plug "24 V plug" kind locking-tab-plug
  joins      supply-module to control-board
connector cutter-plug "cutter plug" kind locking-tab-plug
  joins      cutter-module to control-board
part fan "cooling fan"
  behind     left-panel or right-panel
  carries    fan-grille
  covers     supply-screws
part fan-grille "fan grille"
fastener fan-screws "fan screw" 2 x screw M3 x 20, hexalobular 10, pan
  holds      fan to frame
  behind     left-panel or right-panel
  torque     0.40 N.m
  at         rear 160,60 240,140
connector fan-plug "fan plug" kind locking-tab-plug
  joins      fan to control-board
  behind     left-panel or right-panel
part shield "head shield"
  covers     pivot-clips, pivot-pin, head-springs, clutch-screw
fastener shield-screws "shield screw" 5 x screw M3 x 8, hexalobular 10, pan
  holds      shield to frame
  behind     supply-module
  torque     0.50 N.m
  at         top 30,120 90,120 150,120 210,120 135,160

# Print head

part head-arm "head arm"
  carries    printhead, head-plate
  covers     platen, peel-bar, peel-screws, guide-plate, guide-screws
  needs      head-springs held to remove
part printhead "print head"
part head-plate "head plate"
fastener head-screws "print head screw" 2 x screw M3 x 6, hexalobular 10, pan
  holds      printhead to head-plate
  torque     0.40 N.m
fastener head-plate-screws "head plate screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      head-plate to head-arm
  torque     0.50 N.m
part head-springs "head spring" 2 x compression-spring
fastener pivot-pin "head arm pivot pin" 1 x dowel 5 x 140
  holds      head-arm to frame
  under      pivot-clips
  needs      head-springs held to draw
fastener pivot-clips "pivot pin clip" 2 x grip-ring 4
  holds      head-arm to frame

# Ink ribbon take-up

part take-up-motor "take-up motor"
fastener take-up-screws "take-up motor screw" 2 x screw M3 x 6, hexalobular 10, pan
  holds      take-up-motor to frame
  torque     0.40 N.m
part take-up-clutch "take-up clutch"
  carries    clutch-screw
  blocks     head-arm
fastener clutch-screw "clutch set screw" 1 x set-screw M3 x 4, hexagon 1.5
  holds      take-up-clutch to frame
  torque     0.40 N.m

# Drive, behind the right side panel

part gear-cover "gear cover"
  covers     tension-spring, tension-screw, main-belt, idler-clip, idler-gear, gear-clip
  covers     platen-gear, motor-screws
fastener gear-cover-screws "gear cover screw" 3 x screw M3 x 8, hexalobular 10, pan
  holds      gear-cover to frame
  torque     0.50 N.m
  at         right 60,60 180,60 120,150
part tensioner "belt tensioner"
fastener tension-screw "tensioner screw" 1 x captive-screw M4 x 10, hexalobular 20, pan
  holds      tensioner to frame
  torque     1.0 N.m
  needs      tension-spring out to undo
  at         right 150,110
part tension-spring "tensioner spring" kind small-spring
part main-belt "drive belt" kind drive-belt
  needs      tension-screw loose to remove
  blocks     idler-gear, feed-motor
part idler-gear "idler gear" kind gear
  covers     idler-shims
fastener idler-clip "idler gear clip" 1 x grip-ring 5
  holds      idler-gear to frame
  needs      main-belt out to push-off
part idler-shims "idler shim" 3 x shim 0.10 mm, 0.10 mm, 0.20 mm
  keep       order
  blocks     motor-plate
part platen-gear "platen gear" kind gear
  keep       face
  covers     motor-plate-screws
fastener gear-clip "platen gear clip" 1 x grip-ring 6
  holds      platen-gear to platen
  needs      idler-gear out to push-off
part feed-motor "feed motor"
  covers     motor-plate-screws
fastener motor-screws "feed motor screw" 2 x screw M3 x 10, hexagon 2.5, cap
  holds      feed-motor to motor-plate
  torque     0.60 N.m
  at         right 86,120 86,151
part motor-plate "motor plate"
  covers     right-bush, right-bush-screws
fastener motor-plate-screws "motor plate screw" 4 x screw M4 x 8, hexalobular 20, pan
  holds      motor-plate to frame
  torque     1.2 N.m
  at         right 50,100 50,170 130,100 130,170

# The platen and what lies round it

part platen "platen roller"
fastener left-circlip "left bush circlip" 1 x circlip 8
  holds      left-bush to frame
part left-bush "left platen bush"
  blocks     platen
part right-bush "right platen bush"
  blocks     platen
fastener right-bush-screws "right bush screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      right-bush to frame
  torque     0.50 N.m
part peel-bar "peel bar"
  covers     static-brush, brush-screws
fastener peel-screws "peel bar screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      peel-bar to frame
  torque     0.50 N.m
part static-brush "static brush"
  blocks     platen
  limit      length at least 6 mm when static-brush out
fastener brush-screws "static brush screw" 2 x screw M2.5 x 6, hexalobular 8, pan
  holds      static-brush to frame
  torque     0.25 N.m
part guide-plate "label guide plate"
  covers     sensor-hooks, sensor-bracket
fastener guide-screws "guide plate screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      guide-plate to frame
  torque     0.50 N.m
part sensor-bracket "label sensor bracket"
  blocks     platen
fastener sensor-hooks "sensor bracket hook" 2 x snap-hook
  holds      sensor-bracket to frame

# The cutter

part cutter-module "cutter module"
  blocks     peel-bar
  carries    blade, anvil, cutter-motor
fastener cutter-screws "cutter screw" 3 x screw M4 x 12, hexalobular 20, pan
  holds      cutter-module to frame
  torque     1.2 N.m
  at         front 40,90 135,90 230,90
part blade "cutter blade" kind blade
fastener blade-screws "blade screw" 2 x screw M4 x 8, hexalobular 20, pan
  holds      blade to cutter-module
  needs      cutter-module out to undo
  torque     1.2 N.m
part anvil "fixed blade"
fastener anvil-screws "fixed blade screw" 2 x screw M4 x 8, hexalobular 20, pan
  holds      anvil to cutter-module
  torque     1.2 N.m
part cutter-motor "cutter motor"
fastener cutter-motor-screws "cutter motor screw" 2 x screw M3 x 6, hexalobular 10, pan
  holds      cutter-motor to cutter-module
  torque     0.40 N.m

# What it does

function self-test "The self-test finds every module"
  through    dc-plug, head-ribbon, panel-ribbon, feed-plug, take-up-plug, sensor-plug, cutter-plug
function cooling "The fan turns"
  through    fan, fan-plug
function feeding "The drive turns the platen"
  through    feed-motor, motor-screws, main-belt, idler-gear, idler-clip, platen-gear, gear-clip
function cutting "The cutter cuts a label through"
  through    cutter-plug, cutter-screws, blade, blade-screws
function loading "The drawer feeds a straight label"
  through    media-drawer, drawer-lock
function protective-earth "The metal parts are bonded to earth"
  through    supply-earth, left-earth
