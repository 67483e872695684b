# A sealed handheld instrument: an invented device, built as such instruments are.

device logger "Tarn 4 field logger"
  revision   B
  mass       312 g
  sealed     IP67 by lid-seal, socket-ring
  variant    eu, us

face front 74 x 128 mm, corner 8 mm
face inside 66 x 118 mm, corner 5 mm

# Shell and lid

part back "back shell"
part lid "display lid" kind hinged-cover
  covers     board, cell, shield, socket-plate, aerial-lead, radio-eu, radio-us
  covers     buzzer, key-mat, display-frame
  covers     shield-screws, plate-screws, board-screws, post, lead-clamp, frame-screws
  covers     cell-plug, lid-ribbon, key-ribbon, buzzer-plug, socket-plug, aerial-plug
  covers     radio-plug-eu, radio-plug-us
  covers     cell-strips, lead-tape, display-tape
part window "window" in lid
  renewed as lid
part display "display" in lid kind display-module
part display-frame "display frame" in lid
  blocks     display
part key-mat "key mat" in lid
part buzzer "buzzer" in lid

# Inside the back shell

part board "main board" kind circuit-board
part radio-eu "radio module 868 MHz" in board
  covers     board-screws
  only       eu
part radio-us "radio module 915 MHz" in board
  covers     board-screws
  only       us
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  feeds      board, display, buzzer, key-mat, socket through cell-plug
part shield "connector shield"
  covers     cell-plug, lid-ribbon, key-ribbon, buzzer-plug
part socket-plate "socket cover plate"
  covers     socket-plug, post
  keep       face
part socket "probe socket"
part aerial-lead "aerial with its lead" kind lead
  blocks     board

# Fasteners

fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk
  holds      lid to back
  torque     0.20 N.m
  at         front 5,5 69,5 5,123 69,123
fastener frame-screws "frame screw" 2 x screw M1.6 x 5, cross-recess 0, pan
  holds      display-frame to lid
  torque     0.08 N.m
  told by    "the black finish"
fastener shield-screws "shield screw" 2 x captive-screw M2 x 3, hexalobular 6, pan
  holds      shield to back
  torque     0.15 N.m
  told by    "the ring that keeps it in the shield"
  at         inside 9,43 58,43
fastener plate-screws "plate screw" 2 x screw M1.6 x 3, cross-recess 0, pan
  holds      socket-plate to back
  torque     0.08 N.m
  told by    "the bright finish"
  at         inside 19,111 47,111
fastener post "threaded post" 1 x stud M2 x 4, slotted 3
  holds      board to back
  under      plate-screws 1
  torque     0.15 N.m
  limit      height at least 3.8 mm
  at         inside 19,111
fastener board-screws "board screw" 3 x screw M2 x 4, hexalobular 6, pan
  holds      board to back
  torque     0.15 N.m
  at         inside 6,72 60,72 60,98
fastener lead-clamp "lead clamp screw" 1 x screw M1.6 x 4, cross-recess 0, pan
  holds      aerial-lead to back
  torque     0.08 N.m
  told by    "the blue patch"
  at         inside 4,20
fastener socket-nut "socket nut" 1 x ring-nut M12
  holds      socket to back
  torque     0.60 N.m

# Connectors

connector cell-plug "cell plug" kind press-fit-plug
  joins      cell to board
connector lid-ribbon "display ribbon" kind flip-lock-ribbon
  joins      display to board
connector key-ribbon "key ribbon" kind slide-lock-ribbon
  joins      key-mat to board
connector buzzer-plug "buzzer plug" kind friction-plug
  joins      buzzer to board
connector socket-plug "socket plug" kind locking-tab-plug
  joins      socket to board
connector aerial-plug "aerial connector" kind snap-coax
  joins      aerial-lead to board
connector radio-plug-eu "radio plug" kind press-fit-plug
  joins      radio-eu to board
  only       eu
connector radio-plug-us "radio plug" kind press-fit-plug
  joins      radio-us to board
  only       us

# Bonds

bond lid-seal "lid seal" kind seal-tape
  joins      lid to back
bond cell-strips "cell strip" 2 x stretch-release-strip
  joins      cell to back
bond display-tape "display tape" kind double-sided-tape
  joins      display to lid
bond lead-tape "lead tape" kind light-tape
  joins      aerial-lead to back
bond socket-ring "socket ring" kind o-ring 12 x 1.5
  joins      socket to back

# What it does

function running "It starts and keeps the clock"
  through    cell, cell-plug, board
function picture "The display shows"
  through    board, lid-ribbon, display
function keys "The keys answer"
  through    key-mat, key-ribbon, board
function sound "The buzzer sounds"
  through    board, buzzer-plug, buzzer
function probe "The probe reads"
  through    socket, socket-plug, board
function link "The radio link stands"
  through    board, aerial-plug, aerial-lead, radio-plug-eu, radio-plug-us

caution ribbon-strain on lid-ribbon when lid open
  The ribbon is 40 mm long. Stand the lid on its lower edge, against a block.
