# A cordless drill driver: two half-shells, a motor with brushes, a gearbox cassette, an 18 V battery pack.
use "kinds.mmk"

device drill "Kestrel 18 drill driver"
  revision   2
  mass       1240 g

face right-side 190 x 210 mm

# The battery pack slides off first; its rails clamp the two halves

part pack "battery pack" kind battery-pack 18 V 4000 mAh
  feeds      switch, motor, lamp
  blocks     right-shell

# The case: everything lies in the left half

part left-shell "left half-shell"
  covers     brushes, brush-springs, brush-leads
part right-shell "right half-shell"
  covers     drive-unit, switch, reverse-lever, pack-block, lamp, lamp-clip, supply-spades, motor-spades, lamp-plug
fastener long-screws "long case screw" 6 x self-tapping-screw ST3.5 x 22, hexalobular 15, pan
  holds      right-shell to left-shell
  torque     1.4 N.m
  told by    "the plain 22 mm shank; these sit round the motor"
  at         right-side 14,14 14,58 96,10 100,62 150,16 150,54
fastener short-screws "short case screw" 3 x self-tapping-screw ST3.5 x 14, hexalobular 15, pan
  holds      right-shell to left-shell
  torque     1.4 N.m
  told by    "the 14 mm length; these sit in the handle and the foot"
  at         right-side 52,98 58,146 104,186
part vent-screens "vent screen" in right-shell 2 x plain-part

# The drive unit lifts out whole: motor, gearbox and chuck

part drive-unit "drive unit"
  carries    motor, gearbox
part motor "motor" kind plain-part 18 V
part magnet-ring "magnet ring" in motor
  renewed as motor
part armature "armature" in motor kind shaft
  renewed as motor
part commutator "commutator" in armature
  limit      diameter at least 21.0 mm when brushes out
  renewed as motor
part fan "cooling fan" in armature kind impeller
  renewed as motor
part brush-holders "brush holder" in motor 2 x plain-part
  renewed as motor
part brushes "carbon brush" in motor 2 x plain-part
  limit      length at least 5 mm when brushes out
  needs      brush-springs held to remove
  notice: Oil ruins the brush. Hold each brush by its lead.
part brush-springs "brush spring" in motor 2 x brush-spring
connector brush-leads "brush lead" in motor 2 x spade 2.8 mm
  joins      brushes to brush-holders

part gearbox "gearbox cassette"
fastener gearbox-screws "gearbox screw" in drive-unit 4 x screw M4 x 12, hexalobular 20, pan
  holds      gearbox to motor
  torque     2 N.m
part planet-stages "planet stage" in gearbox 3 x gear
  renewed as gearbox
part clutch "torque clutch" in gearbox
  renewed as gearbox
part torque-collar "torque collar" in gearbox
part speed-slide "speed slide" in gearbox
part spindle "spindle" in gearbox kind shaft
  renewed as gearbox

part chuck "chuck" in gearbox kind threaded-chuck 13 mm
part jaws "chuck jaw" in chuck 3 x plain-part
  renewed as chuck
fastener chuck-screw "left-hand chuck screw" in gearbox 1 x screw M6 x 25, hexalobular 30, countersunk, left-hand
  holds      chuck to spindle
  torque     6 N.m
  needs      pack out to undo
  notice: This screw has a left-hand thread. Clockwise loosens it.

# The switch and its wiring

part switch "trigger switch" kind switch 18 V
part trigger "trigger" in switch
  renewed as switch
part reverse-lever "reverse lever"
  blocks     switch
part pack-block "pack terminal block"
connector supply-spades "supply lead" 2 x spade 4.8 mm
  joins      pack-block to switch
  keep       order
connector motor-spades "motor lead" 2 x spade 4.8 mm
  joins      motor to switch
  keep       order
  note: Exchanged motor leads make the drill turn the wrong way.
part lamp "work lamp"
connector lamp-plug "lamp plug" kind friction-plug
  joins      lamp to switch
fastener lamp-clip "lamp clip" 1 x clip
  holds      lamp to left-shell

# What hangs on the outside

part belt-clip "belt clip"
fastener clip-screw "belt clip screw" 1 x screw M4 x 10, hexalobular 20, pan
  holds      belt-clip to left-shell
  torque     1.8 N.m
part bit-holder "bit holder"
fastener bit-screw "bit holder screw" 1 x screw M4 x 8, hexalobular 20, countersunk
  holds      bit-holder to left-shell
  torque     1.8 N.m

# What the drill does

function commutation "Current passes through the brushes"
  through    brush-leads, brushes, motor

function running "The drill turns both ways"
  through    supply-spades, motor-spades

function lighting "The lamp lights with the trigger"
  through    lamp-plug, lamp
