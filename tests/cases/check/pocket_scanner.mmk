# A scanner with a glued cell: what is heated, slid out, pulled live and let out twice, and when its new cable works.

--- pocket-scanner
device pocket-scanner "Pocket scanner"

part shell "shell"
part window "window frame" kind hinged-cover
  covers     cell, cell-glue, board, cell-plug
part board "main board" kind circuit-board
  covers     cable
part cable "charging cable" kind cable
connector cable-plug "cable plug" kind board-to-board-plug
  joins      cable to board
fastener board-screws "board screw" 3 x screw M1.6 x 4, cross-recess 00, pan
  holds      board to shell
  torque     0.08 N.m
part cell "cell" kind lithium-pouch-cell 4800 mAh 3.85 V
  feeds      board through cell-plug
connector cell-plug "cell plug" kind board-to-board-plug
  joins      cell to board
bond cell-glue "cell glue" kind heat-softened-glue
  joins      cell to shell

--- glue-warmed-with-the-plug-off
use "pocket-scanner.mmk"
guide glue-warmed-with-the-plug-off "Renew the cell"
  goal       replace cell with cell-new
  for        competent
  before     discharge cell below 25 %
  spare      cell-new "cell", 1 for cell
  supply     glue-new "cell glue", 1 for cell-glue
  tool       mat "heat mat"
  tool       pick "opening pick"

take-apart

step cell-out "Take the cell out"
  open       window
  disconnect cell-plug
  soften     cell-glue with mat 70 degC
  separate   cell-glue
  remove     cell

work

step renew "Take the new cell"
  replace    cell with cell-new
  dispose    cell as battery-waste

put-back
  derived

step store "Charge it for the shelf"
  charge     cell above 50 %

test starts "It starts"
  proves     cell

--- glue-warmed-with-the-plug-on
use "pocket-scanner.mmk"
guide glue-warmed-with-the-plug-on "Renew the cell"
  goal       replace cell with cell-new
  for        competent
  before     discharge cell below 25 %
  spare      cell-new "cell", 1 for cell
  supply     glue-new "cell glue", 1 for cell-glue
  tool       mat "heat mat"
  tool       pick "opening pick"

take-apart

step cell-out "Take the cell out"
  open       window
  # error 3-8 [unmet-need] too early here
  soften     cell-glue with mat
  disconnect cell-plug
  separate   cell-glue
  remove     cell

work

step renew "Take the new cell"
  replace    cell with cell-new
  dispose    cell as battery-waste

put-back
  derived

test starts "It starts"
  proves     cell

--- glue-warmed-too-hot
use "pocket-scanner.mmk"
guide glue-warmed-too-hot "Renew the cell"
  goal       replace cell with cell-new
  for        competent
  before     discharge cell below 25 %
  spare      cell-new "cell", 1 for cell
  supply     glue-new "cell glue", 1 for cell-glue
  tool       mat "heat mat"
  tool       pick "opening pick"

take-apart

step cell-out "Take the cell out"
  open       window
  disconnect cell-plug
  # error 3-8 [lax-limit] to soften it asks 60..80 degC
  soften     cell-glue with mat 150 degC
  separate   cell-glue
  remove     cell

work

step renew "Take the new cell"
  replace    cell with cell-new
  dispose    cell as battery-waste

put-back
  derived

test starts "It starts"
  proves     cell

--- tried-with-its-plug-off
use "pocket-scanner.mmk"
guide tried-with-its-plug-off "Renew the charging cable"
  goal       replace cable with cable-new
  for        competent
  before     discharge cell below 25 %
  spare      cable-new "charging cable", 1 for cable
  tool       driver-00 "cross-recess driver 00"
  tool       torque-driver "torque driver 0.05 to 0.1 N·m with cross-recess 00 bit"
  tool       pick "opening pick"

take-apart

step open "Lay the cable bare"
  open       window
  disconnect cell-plug, cable-plug
  undo       board-screws with driver-00
  remove     board, cable

work

step renew "Take the new cable"
  replace    cable with cable-new

put-back

step cable-in "Fit the cable"
  fit        cable

# error 6-12 [untested] proves nothing here
test charges "It charges"
  proves     cable

step board-in "Fit the board"
  fit        board
  connect    cable-plug, cell-plug
  fasten     board-screws with torque-driver
  shut       window

--- flash-camera
device flash-camera "Flash camera"

part shell "shell"
part door "battery door" kind hinged-cover
  covers     pack
part pack "battery pack" kind battery-pack 1250 mAh 3.7 V
part back "back"
  covers     store, slot-board
part store "flash capacitor" kind capacitor 120 uF 330 V
part slot-board "slot board" kind circuit-board
  feeds      card
part card "memory card"
connector slot "card slot" kind card-tray
  joins      card to slot-board
connector pack-contacts "pack contacts" kind press-fit-plug
  joins      pack to slot-board

--- slid-through-its-door
use "flash-camera.mmk"
guide slid-through-its-door "Renew the battery pack"
  goal       replace pack with pack-new
  for        novice
  spare      pack-new "battery pack", 1 for pack

take-apart

step pack-out "Take the pack out"
  disconnect pack-contacts
  # error 3-11 [out-of-reach] cannot be got at here
  slide-out  pack

work

step renew "Take the new pack"
  replace    pack with pack-new
  dispose    pack as battery-waste

put-back
  derived

test starts "It starts"
  proves     pack

--- let-out-twice
use "flash-camera.mmk"
guide let-out-twice "Look inside"
  goal       remove back
  for        trained
  tool       resistor "discharge resistor 2 kohm 5 W"
  tool       meter "multimeter 600 V"

take-apart

step open "Take the back off"
  remove     back
  discharge  store with resistor for 5 s through 2 kohm
  discharge  store with resistor for 5 s through 2 kohm
  prove      store with meter

put-back
  derived
