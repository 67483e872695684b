# A source isolated first and restored last; a seal for one use; a rating proved again.
use "logger.mmk"

guide replace-cell "Replace the cell"
  goal       replace cell with cell-new
  for        competent
  before     discharge cell below 25 %
  spare      cell-new "cell, 3000 mAh", 1, 14.50 EUR for cell
  supply     seal-new "lid seal tape 2 mm", 45 cm, 1.20 EUR for lid-seal
  supply     strips-new "stretch-release strips", 2, 1.10 EUR for cell-strips
  tool       driver-6 "hexalobular driver 6"
  tool       pick "opening pick"
  tool       leak-tester "vacuum leak tester"
  tool       torque-driver "torque driver 0.15 to 0.2 N·m"
  text: The logger stops early, or the lid stands up over the cell.
  warning: A swollen cell can burst into flame. Give a swollen cell to a trained person.

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

step cell-out "Take the cell out"
  release    cell-strips
  remove     cell
  text: Pull each strip slowly towards the lower wall. Lift the cell by its sides.

work

step renew "Take the new cell"
  replace    cell with cell-new
  dispose    cell as battery-waste
  text: Put tape over the contacts of the old cell.

put-back
  derived

step cell-out "Put the new cell in"
  text: Lay the new strips with their tabs towards the lower wall. Press the cell down for ten
    seconds.

test power-on "It starts, and the clock is kept"
  when       cell-plug connected, shield out, lid open
  proves     cell, running

step open "Close the lid"
  text: Clean both faces of the seal. Lay the new tape without a stretch.
  text: Engage the two rear lugs. Then lower the front corners together.

test leak "Vacuum of 5 kPa held for 30 s"
  when       lid shut, lid-screws tight
  proves     IP67
  with       leak-tester
  text: Connect the tester to the vent. The figures are those of the maker.
