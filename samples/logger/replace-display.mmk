# A ribbon under a shield, a frame that is in the way, and two sizes of small screw to keep apart.
use "logger.mmk"

guide replace-display "Replace the display"
  goal       replace display with display-new
  for        competent
  before     discharge cell below 25 %
  spare      display-new "display module 60 x 90 mm", 1, 38.00 EUR for display
  supply     tape-new "double-sided tape 3 mm", 30 cm, 0.60 EUR for display-tape
  supply     seal-new "lid seal tape 2 mm", 45 cm, 1.20 EUR for lid-seal
  tool       driver-6 "hexalobular driver 6"
  tool       driver-0 "cross-recess driver 0"
  tool       pick "opening pick"
  tool       leak-tester "vacuum leak tester"
  tool       torque-driver "torque driver 0.08 to 0.2 N·m"
  text: The display is dark, striped or cracked. The window comes with a new lid only.

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  separate   lid-seal with pick
  open       lid
  text: Work the pick round from the lower left corner. Keep it within 3 mm of the edge.
  notice: The aerial lies behind the left wall. A deep cut breaks it.
  photo "img/open.svg" "The four lid screws and the place for the pick"
    mark     lid-screws 0.2,0.1 0.8,0.1 0.2,0.9 0.8,0.9

step shield-off "Take the connector shield off"
  undo       shield-screws with driver-6
  remove     shield
  text: The two screws stay in the shield.
  photo "img/inside.svg" "The shield with its two screws"
    mark     shield-screws 0.21,0.37 0.8,0.37

step isolate "Isolate the cell"
  disconnect cell-plug
  text: Fold the plug back. Keep it clear of the board.

step display-out "Take the display out"
  unlock     lid-ribbon
  disconnect lid-ribbon
  undo       frame-screws with driver-0
  remove     display-frame
  separate   display-tape with pick
  remove     display
  text: Draw the ribbon straight out of its socket. Slide the pick along the long sides only.

work

step renew "Take the new display"
  replace    display with display-new
  dispose    display as electronic-waste
  text: Leave the film on the glass until the test is done.

put-back
  derived

step display-out "Put the new display in"
  text: Lay the new tape along the rim. Push the ribbon in until its white line meets the socket.

test picture-on "Every line of the display shows"
  when       cell-plug connected, lid-ribbon locked, shield out, lid open
  proves     display, picture, running

step open "Close the lid"
  text: Clean both faces of the seal. Lay the new tape without a stretch.
  text: Engage the two rear lugs. Then lower the front corners together.

test leak "Vacuum of 5 kPa held for 30 s"
  when       lid shut, lid-screws tight
  proves     IP67
  with       leak-tester
  text: Connect the tester to the vent. The figures are those of the maker.
