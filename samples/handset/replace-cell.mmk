# A glued back, a plate over all plugs, a cell on strips; what is renewed comes with the cell.
use "handset.mmk"

guide replace-cell-of-handset "Replace the cell"
  goal       replace cell with cell-new
  for        competent
  before     discharge cell below 25 %
  spare      cell-new "cell, 4200 mAh", 1, 19 EUR for cell
  supply     seal-new "back seal, cut to shape", 1 for back-seal
  supply     strips-new "cell strips", 2 for cell-strips
  tool       pick "opening pick"
  tool       driver-5 "hexalobular driver 5"
  tool       torque-driver "torque driver 0.08 N·m"
  text: The handset stops early, or its back stands up.
  text: The back seal and the strips come with the new cell.
  warning: A swollen cell can burst into flame. Give a swollen cell to a trained person.

take-apart

step open "Take the back off"
  separate   back-seal with pick
  remove     cover
  text: Work the pick round from the lower edge. Keep it within 2 mm of the edge.

step plate-off "Take the plug plate off"
  undo       plate-screws with driver-5
  remove     plate

step isolate "Isolate the cell"
  disconnect cell-plug with pick
  text: Lift the plug straight up. Fold its lead back.

step cell-out "Take the cell out"
  release    cell-strips
  remove     cell
  text: Pull each strip slowly towards the lower edge.

work

step renew "Take the new cell"
  replace    cell with cell-new
  dispose    cell as battery-waste
  text: Put tape over the contacts of the old cell.

put-back
  derived

step cell-out "Put the new cell in"
  text: Lay the new strips with their tabs towards the lower edge.
  text: Press the cell down for ten seconds.

test power-on "It starts, and the clock is kept"
  when       cell-plug connected, cover out
  proves     cell, running
