# A pocket telephone: an invented device, built as such handsets are.

device handset "Alder 3 handset"
  revision   C
  mass       188 g
  product    smartphone
  updates    6 years
  information repairers
  spares     display-assembly, battery, back-cover, front-camera, rear-camera
  supplied   heat-mat with spare

face back 71 x 150 mm, corner 8 mm

# Shell

part frame "frame"
part cover "back cover"
  counts as  back-cover
  covers     cell, cell-strips, plate, speaker-box, plate-screws, box-screws, rear-camera
part display "display assembly" kind display-module
  counts as  display-assembly
  price      92 EUR

# Upper half

part plate "plug plate"
  covers     cell-plug, display-ribbon, front-plug, rear-plug, button-ribbon, main-plug
  covers     board-screws
part board "main board" kind circuit-board
part front-camera "front camera" kind camera-module
  counts as  front-camera
  behind     board
part rear-camera "rear camera" kind camera-module
  counts as  rear-camera
  under      plate
part earpiece "earpiece" kind loudspeaker
  behind     board
part power-button "power button" kind button
  counts as  mechanical-button
  behind     button-bracket
part volume-button "volume button" kind button
  counts as  mechanical-button
  behind     button-bracket
part button-bracket "button bracket" kind bracket
  behind     board

# Lower half

part cell "cell" kind lithium-pouch-cell 4200 mAh 3.85 V
  counts as  battery
  price      19 EUR
  feeds      board, display, port-board, speaker-box through cell-plug
part speaker-box "speaker box" kind loudspeaker
  counts as  speaker
  covers     port-screws, main-ribbon
part port-board "charging board" kind circuit-board
  counts as  charging-port
part microphone "main microphone" kind microphone
  counts as  main-microphone
  behind     port-board
part vibrator "vibration motor" kind vibrator
  behind     speaker-box

# Fasteners

fastener plate-screws "plate screw" 6 x screw M1.6 x 4, hexalobular 5, pan
  holds      plate to frame
  torque     0.08 N.m
  at         back 8,12 30,12 63,12 8,40 30,40 63,40
fastener board-screws "board screw" 2 x screw M1.6 x 3, cross-recess 0, pan
  holds      board to frame
  torque     0.08 N.m
  told by    "the bright finish"
  at         back 12,30 58,30
fastener bracket-screw "bracket screw" 1 x screw M1.6 x 2.5, cross-recess 0, pan
  holds      button-bracket to frame
  torque     0.06 N.m
  behind     board
fastener box-screws "speaker screw" 4 x screw M1.6 x 5, hexalobular 5, pan
  holds      speaker-box to frame
  torque     0.08 N.m
  at         back 8,118 63,118 8,140 63,140
fastener port-screws "charging board screw" 2 x screw M1.6 x 3, hexalobular 5, pan
  holds      port-board to frame
  torque     0.08 N.m
  told by    "the black finish"
  at         back 14,138 57,138

# Connectors

connector cell-plug "cell plug" kind board-to-board-plug
  joins      cell to board
connector display-ribbon "display plug" kind board-to-board-plug
  joins      display to board
connector front-plug "front camera plug" kind board-to-board-plug
  joins      front-camera to board
connector rear-plug "rear camera plug" kind board-to-board-plug
  joins      rear-camera to board
connector button-ribbon "button ribbon" kind flip-lock-ribbon
  joins      button-bracket to board
connector main-plug "long ribbon, upper plug" kind board-to-board-plug
  joins      port-board to board
connector main-ribbon "long ribbon, lower clip" kind flip-lock-ribbon
  joins      port-board to frame

# Bonds

bond back-seal "back seal" kind seal-tape
  joins      cover to frame
  comes with cell, cover, display, speaker-box
bond cell-strips "cell strip" 2 x stretch-release-strip
  joins      cell to frame
  comes with cell
bond display-glue "display glue" kind gasket-adhesive
  joins      display to frame
  comes with display
bond microphone-tape "microphone tape" kind double-sided-tape
  joins      microphone to frame
bond motor-tape "motor tape" kind double-sided-tape
  joins      vibrator to frame

# What it does

function running "It starts and keeps the clock"
  through    cell, cell-plug, board
function picture "The display shows and answers to touch"
  through    board, display-ribbon, display
function sound "The speaker sounds"
  through    board, speaker-box
function charging "It charges"
  through    port-board, main-plug, board
