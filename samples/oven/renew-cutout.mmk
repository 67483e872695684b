# The cut-out lies under the air duct, beside the high voltage: the charge is taken off first.
use "oven.mmk"

guide renew-cutout "Renew the magnetron thermal cut-out"
  goal       replace cutout with cutout-new
  for        trained
  spare      cutout-new "thermal cut-out 150 degC", 1, 4.20 EUR for cutout
  tool       driver-20 "hexalobular driver 20"
  tool       cross-1 "cross-recess driver 1"
  tool       resistor "discharge resistor 10 kohm 50 W"
  tool       meter "meter 1000 V"
  tool       torque-driver "torque driver 0.5 to 1.2 N·m"
  text: The oven stops after some minutes, and the fan still runs. The cut-out opens too early.
    Follow the maker's instructions and the local rules for mains repair.

take-apart

step unplug "Unplug the oven"
  unplug     mains
  text: Pull the plug, and never the cord, out of the socket. Keep the plug in sight while you work.

step case "Take off the case"
  undo       case-side-screws
  undo       case-edge-screws
  undo       case-screws
  remove     case
  text: The United Kingdom model has two more screws on the right side. Slide the case 20 mm to
    the rear. Lift it over the chassis.
  photo "img/rear.svg" "The rear, six screws of two lengths"
    mark     case-screws 0.04,0.07 0.96,0.07 0.04,0.93 0.96,0.93
    mark     case-edge-screws 0.50,0.07 0.50,0.93

step charge "Discharge the capacitor"
  discharge  reservoir through 10 kohm for 15 s with resistor
  prove      reservoir below 60 V with meter
  text: Keep one hand behind your back. Touch both terminals with the resistor's probes.
  photo "img/charge.svg" "The two terminals of the capacitor"
    mark     reservoir 0.62,0.42

step filament "Pull off the filament leads"
  disconnect filament-leads
  text: Pull each terminal by its sleeve.

step duct "Take out the air duct"
  undo       duct-screw
  unsnap     duct-hooks
  remove     duct

step cutout "Take out the cut-out"
  disconnect cutout-leads
  undo       cutout-screws
  remove     cutout

work

step renew "Fit the new cut-out"
  replace    cutout with cutout-new
  text: Check that the new cut-out carries the same temperature. Wipe the seat clean.

put-back
  derived

step cutout
  text: Push each terminal on until it stops. Pull each wire lightly.
test cutout "The meter reads below 1 ohm across the cut-out leads"
  when       mains unplugged, cutout-leads connected, duct out
  proves     cutout, cutout-circuit
  with       meter

step filament
  text: A loose filament lead burns its tab. Squeeze a slack terminal before you push it on.
test filament "Each filament lead holds a pull of 20 N"
  when       mains unplugged, filament-leads connected, case out
  proves     filament-circuit

step case
  text: Hook the front edge of the case under the door frame first.
test earth "Below 0.1 ohm from the earth pin to the bare edge of the case"
  when       case-screws tight, mains unplugged
  proves     case-earth
  with       meter

step unplug
  text: Put the oven back in its place before you plug it in.
