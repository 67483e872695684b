# The deepest work: a post under a screw, a lead stuck down along its way, a part moved over to
# the new board.
use "logger.mmk"

guide replace-board "Replace the main board"
  goal       replace board with board-new
  for        trained
  before     discharge cell below 25 %
  spare      board-new "main board without radio module", 1, 96.00 EUR for board
  spare      post-new "threaded post M2 x 4", 1, 0.40 EUR for post
  supply     seal-new "lid seal tape 2 mm", 45 cm, 1.20 EUR for lid-seal
  tool       driver-6 "hexalobular driver 6"
  tool       driver-0 "cross-recess driver 0"
  tool       driver-3 "slotted driver 3"
  tool       pick "opening pick"
  tool       caliper "vernier caliper, 0.05 mm"
  tool       test-probe "reference probe"
  tool       leak-tester "vacuum leak tester"
  tool       torque-driver "torque driver 0.08 to 0.2 N·m"
  text: The logger stays dead with a good cell, or loses its records.

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

step leads-off "Disconnect the leads"
  unlock     lid-ribbon, key-ribbon
  disconnect lid-ribbon, key-ribbon
  disconnect buzzer-plug, socket-plug, aerial-plug
  text: Draw each ribbon straight out of its socket.

step aerial-out "Take the aerial lead out"
  lift       lead-tape with pick
  undo       lead-clamp with driver-0
  remove     aerial-lead
  text: Lift the tape from the upper end. Lay the lead beside the shell without a sharp bend.

step radio-off "Take the radio module off the board"
  disconnect radio-plug-eu
  remove     radio-eu
  disconnect radio-plug-us
  remove     radio-us

step board-out "Take the board out"
  undo       post with driver-3
  undo       board-screws with driver-6
  remove     board
  photo "img/inside.svg" "The three board screws and the post"
    mark     board-screws 0.17,0.6 0.83,0.6 0.83,0.81
    mark     post 0.33,0.91

work

step renew "Take the new board"
  measure    post height at least 3.8 mm with caliper, else replace post with post-new
  replace    board with board-new
  dispose    board as electronic-waste
  text: Compare the revision on the new board with the old one.

put-back
  derived

step board-out "Put the new board in"
  text: Slide the upper edge under its lugs. Then lower the board onto the posts.

step radio-off "Put the radio module on the new board"
  text: Align both ends of the plug. Press until it clicks.

step leads-off "Connect the leads"
  text: Push each ribbon in until its white line meets the socket.

test works "The self-test passes, and the base station answers"
  when       cell-plug connected, shield out, socket-plate out, lid open
  proves     board, running, picture, keys, sound, probe, link
  with       test-probe

step open "Close the lid"
  text: Clean both faces of the seal. Lay the new tape without a stretch.
  text: Engage the two rear lugs. Then lower the front corners together.

test leak "Vacuum of 5 kPa held for 30 s"
  when       lid shut, lid-screws tight
  proves     IP67
  with       leak-tester
  text: Connect the tester to the vent. The figures are those of the maker.
