# A cover plate that goes back face up as it was, a nut outside, and a seal ring that is renewed.
use "logger.mmk"

guide replace-socket "Replace the probe socket"
  goal       replace socket with socket-new
  for        competent
  before     discharge cell below 25 %
  spare      socket-new "probe socket, five pins", 1, 11.00 EUR for socket
  supply     ring-new "O-ring 12 x 1.5", 1, 0.30 EUR for socket-ring
  supply     seal-new "lid seal tape 2 mm", 45 cm, 1.20 EUR for lid-seal
  tool       driver-6 "hexalobular driver 6"
  tool       driver-0 "cross-recess driver 0"
  tool       pick "opening pick"
  tool       pin-spanner "pin spanner for the socket nut"
  tool       test-probe "reference probe"
  tool       leak-tester "vacuum leak tester"
  tool       torque-driver "torque driver 0.08 to 0.6 N·m"
  text: The probe reads only when its plug is held to one side.

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  separate   lid-seal with pick
  open       lid
  text: Work the pick round from the lower left corner. Keep it within 3 mm of the edge.
  notice: The aerial lies behind the left wall. A deep cut breaks it.
  photo "img/open.svg" "The four lid screws and the place for the pick"
    mark     lid-screws 0.2,0.1 0.8,0.1 0.2,0.9 0.8,0.9

step plate-off "Take the socket plate off"
  mark       socket-plate
  undo       plate-screws with driver-0
  remove     socket-plate
  text: Note which face of the plate is up.
  photo "img/inside.svg" "The socket plate with its two screws"
    mark     plate-screws 0.33,0.91 0.67,0.91

step shield-off "Take the connector shield off"
  undo       shield-screws with driver-6
  remove     shield
  text: The two screws stay in the shield.

step isolate "Isolate the cell"
  disconnect cell-plug
  text: Fold the plug back. Keep it clear of the board.

step socket-out "Take the socket out"
  disconnect socket-plug
  undo       socket-nut with pin-spanner
  lift       socket-ring
  remove     socket
  text: Hold the socket from inside. Turn the nut from outside.

work

step renew "Take the new socket"
  replace    socket with socket-new
  text: Wipe the seat of the ring.

put-back
  derived

step socket-out "Put the new socket in"
  text: Turn the key of the socket towards the lid. Wet the new ring with clean water.

test probe-reads "The reference probe reads within its tolerance"
  when       cell-plug connected, socket-plug connected, socket-plate out, lid open
  proves     socket, probe, running
  with       test-probe

step open "Close the lid"
  text: Clean both faces of the seal. Lay the new tape without a stretch.
  text: Engage the two rear lugs. Then lower the front corners together.

test leak "Vacuum of 5 kPa held for 30 s"
  when       lid shut, lid-screws tight
  proves     IP67
  with       leak-tester
  text: Connect the tester to the vent. The figures are those of the maker.
