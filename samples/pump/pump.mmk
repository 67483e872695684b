# The Brae 32, an end-suction circulation pump with a spacer coupling. An invented machine: the
# rotating unit is drawn out backwards, while the motor and the volute stay where they are.

use "kinds.mmk"

device pump "Brae 32 circulation pump"
  revision   A
  mass       64 kg

face guard-side 320 x 180 mm
face rear-flange 260 x 260 mm, corner 130 mm

# Energy and fluid

energy supply "three-phase supply" kind mains-isolator 400 V
  feeds      motor
energy circuit-pressure "pressure of the circuit" kind stored-pressure 1.5 bar
fluid coolant "water with 30 % glycol" in volute 2.6 l kind coolant
  needs      supply proved to drain
  needs      suction-valve closed to drain
  needs      delivery-valve closed to drain
  needs      circuit-pressure relieved to drain

# What stays

part base-frame "base frame"
part motor "motor 1.5 kW"
fastener motor-bolts "motor bolt" 4 x bolt M8 x 30, hexagon-head 13
  holds      motor to base-frame
  torque     24 N.m
part motor-hub "motor half of the coupling" in motor kind coupling
part terminal-lid "terminal box lid" in motor
fastener lid-screws "terminal lid screw" 4 x screw M5 x 16, cross-recess 2, pan
  holds      terminal-lid to motor
  torque     2.0 N.m
part volute "volute"
fastener volute-feet "volute foot bolt" 2 x bolt M10 x 40, hexagon-head 16
  holds      volute to base-frame
  torque     47 N.m
part drain-cock "drain cock" in volute
part vent-cock "vent cock" in volute
part gauge "pressure gauge" in volute
part wear-ring "wear ring" in volute

# Pipework

part suction-valve "suction valve" kind ball-valve
part delivery-valve "delivery valve" kind ball-valve
part suction-hose "suction hose" kind hose
part delivery-hose "delivery hose" kind hose
part system-pipe "pipe of the circuit"
connector delivery-joint "delivery spigot" kind hose-barb
  joins      delivery-hose to volute
connector delivery-end "upper end of the delivery hose" kind hose-barb
  joins      delivery-hose to system-pipe
connector suction-joint "suction spigot" kind hose-barb
  joins      suction-hose to volute
fastener lower-clamp "lower delivery hose clamp" 1 x hose-clamp 32..50 mm, hexagon-head 7
  holds      delivery-hose to volute
  needs      coolant drained to slacken
  torque     3.0 N.m
fastener upper-clamp "upper delivery hose clamp" 1 x hose-clamp 32..50 mm, hexagon-head 7
  holds      delivery-hose to system-pipe
  needs      coolant drained to slacken
  torque     3.0 N.m
fastener suction-clamp "suction hose clamp" 1 x hose-clamp 40..60 mm, hexagon-head 7
  holds      suction-hose to volute
  needs      coolant drained to slacken
  torque     3.0 N.m

# Guard and coupling

part guard "coupling guard" kind panel
  covers     spacer, spacer-bolts
fastener guard-screws "guard screw" 4 x screw M5 x 12, hexagon 4, cap
  holds      guard to base-frame
  torque     4.0 N.m
  at         guard-side 20,20 300,20 20,160 300,160
part spacer "coupling spacer" kind coupling
  keep       face
  blocks     bracket
fastener spacer-bolts "spacer bolt" 6 x bolt M6 x 20, hexagon 5, cap
  holds      spacer to motor-hub, pump-hub
  torque     9.0 N.m

# The rotating unit

part bracket "bearing bracket"
  carries    shaft, pump-hub, hub-key, backplate, impeller, impeller-shims, shaft-sleeve
fastener volute-bolts "volute bolt" 8 x bolt M8 x 25, hexagon-head 13
  holds      bracket to volute
  needs      coolant drained to undo
  torque     22 N.m in star, 3 passes
  at         rear-flange 130,18 209,51 242,130 209,209 130,242 51,209 18,130 51,51
fastener foot-bolt "bracket foot bolt" 1 x bolt M8 x 30, hexagon-head 13
  holds      bracket to base-frame
  torque     24 N.m
bond volute-gasket "volute gasket" kind flat-gasket
  joins      bracket to volute
  needs      volute-bolts out to separate
part shaft "shaft" kind shaft
part shaft-sleeve "shaft sleeve" kind shaft
  limit      diameter at least 23.96 mm when shaft-seal parted
part pump-hub "pump half of the coupling" kind coupling
fastener hub-key "hub key" 1 x shaft-key 8 x 7 x 32
  holds      pump-hub to shaft
part backplate "back plate"
part slinger "slinger" in shaft

# Impeller and seal, on the drawn-out unit

part impeller "impeller" kind impeller
  behind     bracket
  covers     impeller-shims
fastener impeller-nut "impeller nut" 1 x locking-nut M10, hexagon-head 16
  holds      impeller to shaft
  behind     bracket
  torque     30 N.m
fastener impeller-key "impeller key" 1 x shaft-key 6 x 6 x 18
  holds      impeller to shaft
  needs      impeller-nut off to draw
part impeller-shims "impeller shim" 2 x shim 0.10 mm, 0.20 mm
  keep       order
bond impeller-ring "impeller O-ring" kind o-ring
  joins      impeller to shaft
  needs      impeller-nut off to lift
bond shaft-seal "shaft seal" kind shaft-seal 24 mm
  joins      shaft-sleeve to backplate
  needs      impeller-shims out to pull-out
part front-bearing "front bearing" in bracket kind bearing
part rear-bearing "rear bearing" in bracket kind bearing

# What it does

function tightness "No coolant leaves the pump"
  through    shaft-seal, impeller-ring, volute-gasket, delivery-joint, delivery-end, suction-joint
function rotor "The impeller turns with the shaft"
  through    impeller-key, impeller-nut
function drive "The motor turns the shaft"
  through    spacer, spacer-bolts, hub-key
