# The first guide to read: a screw, a cover, two plugs, a part renewed, a test before closing.
use "lamp.mmk"

guide replace-switch "Replace the switch"
  goal       replace switch with switch-new
  for        competent
  before     unplug mains
  spare      switch-new "rocker switch, 250 V 2 A", 1, 2.80 EUR for switch
  tool       driver-1 "cross-recess driver 1"
  tool       pick "plastic pick"
  tool       meter "continuity meter"
  text: The lamp no longer lights, or the switch feels loose. The work takes about fifteen
    minutes.
  text: Follow the maker's instructions and the local rules for mains equipment.

take-apart

step plate-off "Take the bottom plate off"
  undo       plate-screws
  remove     bottom-plate
  text: Lay the lamp on a soft cloth. Undo the three screws.
  photo "img/bottom.svg" "The bottom plate with its three screws"
    mark     plate-screws 0.5,0.2 0.717,0.575 0.283,0.575

step switch-out "Take the switch out"
  disconnect switch-tabs
  unsnap     switch-hooks with pick
  remove     switch
  text: Pull each terminal by its sleeve. Then press both hooks. Push the switch out of the foot.
  photo "img/inside.svg" "Terminals and hooks of the switch"
    mark     switch-tabs 0.27,0.47 0.27,0.57
    mark     switch-hooks 0.2,0.38 0.2,0.66

work

step renew "Take the new switch"
  replace    switch with switch-new
  dispose    switch as electronic-waste
  text: Compare the rating on the new switch with the old one.

put-back
  derived

step switch-out "Put the new switch in"
  text: Press the switch into the foot until both hooks click. Push each terminal fully on.

test circuit "The meter shows a circuit with the switch on, and none with it off"
  when       switch in, switch-tabs connected, bottom-plate out, mains unplugged
  proves     switch, switching
  with       meter
  text: Hold the probes on the two pins of the mains plug. Move the switch five times.

step plate-off "Put the bottom plate back"
  text: Tuck all wires into the foot. Check that no wire lies under the edge of the plate.
