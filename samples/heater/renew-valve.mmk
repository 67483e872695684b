# A short guide for licensed readers; the maker's instructions and the local code come first.
use "heater.mmk"

guide renew-valve "Renew the gas valve"
  goal       replace valve with valve-new
  for        licensed "gas fitter"
  spare      valve-new "gas valve", 1, 64.00 EUR for valve
  tool       driver-2 "cross-recess driver 2"
  tool       key-4 "hexagon key 4"
  tool       spanner-13 "spanner 13"
  tool       spanner-24 "spanner 24"
  tool       gauge "water gauge 0 to 30 mbar"
  tool       torque-driver "torque driver 1.5 to 4 N·m"
  text: Work to the maker's instructions and to the code of the place. They come before this guide.

take-apart

step shut-off "Shut the gas off"
  turn-off   gas
  text: Let the heater burn until its flame dies.

step cover-off "Take the cover off"
  remove     knob
  undo       cover-screws with driver-2
  remove     cover
  photo "img/heater.svg" "Four screws of the front cover, and the knob"
    mark     cover-screws 0.10,0.10 0.90,0.10 0.10,0.90 0.90,0.90
    mark     knob 0.50,0.78

step valve-out "Take the valve out"
  disconnect igniter-plug
  undo       probe-nut with spanner-13
  undo       inlet-union, outlet-union with spanner-24
  undo       valve-screws with key-4
  remove     valve
  text: Hold the valve while you turn each union.

work

step renew "Take the new valve"
  replace    valve with valve-new

put-back
  derived

step valve-out "Fit the new valve"
  text: Clean the faces of both unions. Start each union by hand.
test tightness "The gauge holds at 20 mbar for two minutes"
  when       gas shut-off, inlet-union tight, outlet-union tight, cover out
  proves     gas-tight, valve
  with       gauge
test flame "The gas shuts off within the maker's time when the flame is put out"
  when       gas open
  proves     flame-guard
