# The switch comes out of the left half with its trigger; the drive unit stays where it is.
use "drill.mmk"

guide renew-switch "Renew the trigger switch"
  goal       replace switch with switch-new
  for        competent
  spare      switch-new "trigger switch 18 V", 1, 17.90 EUR for switch
  tool       driver-15 "hexalobular driver 15"
  tool       pliers "flat pliers"
  tool       meter "resistance meter"
  tool       torque-driver "torque driver 1.4 N·m"
  text: Renew the switch when the drill does not start, or does not stop, with the trigger.

take-apart

step pack-off "Slide the battery pack off"
  slide-out  pack
  text: Press both catches. Slide the pack forward off its rails.

step open "Lift off the right half"
  undo       long-screws, short-screws with driver-15
  remove     right-shell
  text: Lay the drill on its left side. Keep the long and the short screws in two trays.
  photo "img/case.svg" "Nine screws in the right half: six long and three short"
    mark     long-screws 0.074,0.067 0.074,0.276 0.505,0.048 0.526,0.295 0.789,0.076 0.789,0.257
    mark     short-screws 0.274,0.467 0.305,0.695 0.547,0.886

step leads-off "Pull the leads off the switch"
  mark       supply-spades, motor-spades
  disconnect supply-spades, motor-spades with pliers
  disconnect lamp-plug
  text: Pull each lead by its sleeve.
  photo "img/inside.svg" "The drive unit, the switch and its leads in the left half"
    mark     motor-spades 0.36,0.46 0.44,0.46
    mark     supply-spades 0.36,0.66 0.44,0.66
    mark     lamp-plug 0.29,0.52

step switch-out "Lift out the switch"
  remove     reverse-lever
  remove     switch
  text: Tilt the switch backward to free its trigger.

work

step renew "Take the new switch"
  replace    switch with switch-new
  dispose    switch as electronic-waste

put-back
  derived

step switch-out "Lay the switch in"
  text: Lay the switch on its two pegs. Set the reverse lever in its middle position.
test passes "The meter shows less than 0.5 ohm with the trigger pulled, and no reading with it free"
  when       pack out, supply-spades connected, motor-spades connected, right-shell out
  proves     switch
  with       meter

step open "Close the case"
  text: Check that no lead lies across a screw post. Press the halves together before you start the screws.

step pack-off "Slide the battery pack on"
test run "The drill turns both ways, and the lamp lights with the trigger"
  when       pack in
  proves     running, lighting
