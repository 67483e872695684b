# The Kelda 20, a countertop oven that heats by microwaves made from an inverter. An invented
# appliance: its layout is that of an ordinary oven of 20 litres.

device oven "Kelda 20 countertop oven"
  revision   C
  mass       11.6 kg
  variant    eu, uk

face rear 450 x 260 mm, corner 8 mm
face right 340 x 260 mm, corner 8 mm
face base 450 x 340 mm, corner 8 mm

# The supply. The two models differ in the plug, and in two more screws that hold the case.

energy mains "mains supply" kind mains-cord 230 V
  feeds      filter-board, inverter-board, turntable-motor
part cord "supply cord" kind cable
part cord-grommet "cord grommet" in cord
fastener cord-clamp "cord clamp" 1 x strain-clamp M4 x 16, cross-recess 2, pan
  holds      cord to chassis
  behind     case
connector live-neutral "live and neutral terminal" 2 x screw-terminal M3.5, slotted 0.8
  joins      cord to filter-board
  behind     case
connector cord-earth "earth terminal" kind screw-terminal M4, cross-recess 2
  joins      cord to chassis
  behind     case
part plug-eu "two-pin plug with side earth" in cord only eu
part plug-uk "three-pin plug" in cord only uk
part plug-fuse "plug fuse 13 A" in plug-uk only uk kind fuse-link 13 A

# The case

part chassis "chassis with the cavity"
part case "outer case" kind panel
  covers     inverter-board, filter-board
fastener case-screws "case screw" 4 x screw M4 x 12, hexalobular 20, pan
  holds      case to chassis
  torque     1.2 N.m
  at         rear 14,14 436,14 14,246 436,246
  told by    "the bright zinc coat"
fastener case-edge-screws "case edge screw" 2 x screw M4 x 8, hexalobular 20, pan
  holds      case to chassis
  torque     1.2 N.m
  at         rear 225,14 225,246
  told by    "the black coat"
fastener case-side-screws "case side screw" only uk 2 x screw M4 x 8, hexalobular 20, pan
  holds      case to chassis
  torque     1.2 N.m
  at         right 20,240 320,240
  told by    "the black coat"
part base-cover "motor cover" kind panel
  covers     turntable-motor, motor-spades, motor-screw
fastener base-screws "motor cover screw" 3 x screw M4 x 8, hexalobular 20, pan
  holds      base-cover to chassis
  torque     1.2 N.m
  told by    "the black coat"
  at         base 160,120 290,120 225,230

# Electronics

part filter-board "noise filter board" kind circuit-board
  carries    main-fuse
part main-fuse "ceramic fuse 10 A" kind fuse-link 10 A
fastener filter-screws "filter board screw" 2 x screw M3 x 8, cross-recess 1, pan
  holds      filter-board to chassis
  behind     case
  torque     0.50 N.m
part inverter-board "inverter board" kind circuit-board
  carries    reservoir, inverter-fan-duct
fastener inverter-screws "inverter screw" 3 x screw M4 x 16, hexalobular 20, pan
  holds      inverter-board to chassis
  behind     case
  torque     1.2 N.m
part reservoir "reservoir capacitor" kind capacitor 4.7 uF 700 V
  behind     case
part inverter-fan-duct "heat sink hood"
connector supply-plug "inverter supply plug" kind locking-tab-plug
  joins      filter-board to inverter-board
  behind     case
connector control-plug "inverter control plug" kind locking-tab-plug
  joins      control-board to inverter-board
  behind     case

# The microwave source and its cooling

part magnetron "magnetron"
  behind     case
  carries    cutout, wave-gasket
part wave-gasket "wave guide gasket"
fastener magnetron-screws "magnetron screw" 4 x screw M5 x 12, hexagon-head 8
  holds      magnetron to chassis
  behind     case
  torque     2.5 N.m
connector filament-leads "filament lead" 2 x spade
  joins      inverter-board to magnetron
  behind     case
part cutout "magnetron thermal cut-out"
  behind     duct
fastener cutout-screws "cut-out screw" 2 x screw M3 x 6, cross-recess 1, pan
  holds      cutout to magnetron
  behind     duct
  torque     0.50 N.m
connector cutout-leads "cut-out lead" 2 x spade
  joins      cutout to filter-board
  behind     duct
part duct "air duct"
  behind     case
  needs      filament-leads apart to remove
fastener duct-screw "air duct screw" 1 x screw M3 x 12, cross-recess 1, pan
  holds      duct to chassis
  behind     case
  torque     0.50 N.m
fastener duct-hooks "air duct hook" 2 x snap-hook
  holds      duct to chassis
  behind     case
part fan "cooling fan"
  behind     case
fastener fan-screws "fan screw" 2 x screw M4 x 16, hexalobular 20, pan
  holds      fan to chassis
  behind     case
  torque     1.2 N.m
connector fan-plug "fan plug" kind locking-tab-plug
  joins      fan to filter-board
  behind     case

# The door and its switches

part door "door" kind hinged-cover
  covers     glass-plate
part switch-bracket "switch bracket"
  behind     case
  carries    upper-switch, lower-switch, monitor-switch
fastener bracket-screws "switch bracket screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      switch-bracket to chassis
  behind     case
  torque     1.0 N.m
  told by    "the bright zinc coat"
  at         right 24,60 24,190
part upper-switch "upper door switch" kind switch
part lower-switch "lower door switch" kind switch
part monitor-switch "monitor switch" kind switch
fastener upper-hooks "upper switch hook" 2 x snap-hook
  holds      upper-switch to switch-bracket
  behind     switch-bracket
fastener lower-hooks "lower switch hook" 2 x snap-hook
  holds      lower-switch to switch-bracket
  behind     switch-bracket
fastener monitor-hooks "monitor switch hook" 2 x snap-hook
  holds      monitor-switch to switch-bracket
  behind     switch-bracket
connector upper-leads "upper switch lead" 2 x spade
  joins      upper-switch to filter-board
  behind     case
  keep       order
connector lower-leads "lower switch lead" 2 x spade
  joins      lower-switch to inverter-board
  behind     case
  keep       order
connector monitor-leads "monitor switch lead" 2 x spade
  joins      monitor-switch to filter-board
  behind     case
  keep       order

# The panel

part control-panel "control panel"
  carries    control-board, keypad
part control-board "control board" kind circuit-board
part keypad "keypad"
fastener panel-screws "control panel screw" 2 x screw M4 x 8, hexalobular 20, pan
  holds      control-panel to chassis
  behind     case
  torque     1.0 N.m
  told by    "the black coat"
connector keypad-ribbon "keypad ribbon" kind friction-ribbon
  joins      keypad to control-board
  behind     case

# The turntable

part glass-plate "glass plate"
  covers     roller-ring
part roller-ring "roller ring"
  covers     drive-coupler
part drive-coupler "drive coupler"
  blocks     turntable-motor
part turntable-motor "turntable motor"
fastener motor-screw "turntable motor screw" 1 x self-tapping-screw M3 x 8, cross-recess 1, pan
  holds      turntable-motor to chassis
connector motor-spades "turntable motor lead" 2 x spade
  joins      turntable-motor to filter-board

# The lamp

part lamp-holder "lamp holder"
  behind     case
part oven-lamp "oven lamp" in lamp-holder kind lamp 20 W
connector lamp-leads "lamp lead" 2 x spade
  joins      lamp-holder to filter-board
  behind     case

# What it does

function interlock "The open door cuts the supply"
  through    upper-switch, upper-leads, lower-switch, lower-leads, monitor-switch, monitor-leads
function cutout-circuit "The thermal cut-out carries the supply"
  through    cutout, cutout-leads
function filament-circuit "The filament leads grip their tabs"
  through    filament-leads
function turntable "The turntable motor can turn the plate"
  through    turntable-motor, motor-spades
function case-earth "The case is bonded to earth"
  through    case, case-screws

caution glass on glass-plate
  A chipped plate can break when it is hot, and cuts. Look at its rim before it goes back.
warning bridged-switch on lower-switch, upper-switch, monitor-switch
  An oven that runs with its door open burns deep into the body. Never bridge a door switch.
