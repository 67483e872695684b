# A door switch is renewed, and the whole interlock is proved with a meter, with the oven dead.
use "oven.mmk"

guide renew-switch "Renew the lower door switch"
  goal       replace lower-switch with switch-new
  for        trained
  spare      switch-new "door switch 16 A", 1, 3.60 EUR for lower-switch
  tool       driver-20 "hexalobular driver 20"
  tool       resistor "discharge resistor 10 kohm 50 W"
  tool       meter "meter 1000 V"
  tool       torque-driver "torque driver 1 to 1.2 N·m"
  text: Renew the switch with the same type only. A wrong switch defeats the interlock.

take-apart

step unplug "Unplug the oven"
  unplug     mains

step case "Take off the case"
  undo       case-side-screws
  undo       case-edge-screws
  undo       case-screws
  remove     case
  photo "img/rear.svg" "The rear, six screws of two lengths"
    mark     case-screws 0.04,0.07 0.96,0.07 0.04,0.93 0.96,0.93
    mark     case-edge-screws 0.50,0.07 0.50,0.93

step charge "Discharge the capacitor"
  discharge  reservoir through 10 kohm for 15 s with resistor
  prove      reservoir below 60 V with meter
  photo "img/charge.svg" "The two terminals of the capacitor"
    mark     reservoir 0.62,0.42

step leads "Pull off the switch leads"
  mark       upper-leads, lower-leads, monitor-leads
  disconnect upper-leads, lower-leads, monitor-leads
  text: Write the number of its tab on each lead.

step bracket "Take out the switch bracket"
  undo       bracket-screws
  remove     switch-bracket
  photo "img/bracket.svg" "The switch bracket, two screws"
    mark     bracket-screws 0.50,0.14 0.50,0.86

step switch "Take the switch out of the bracket"
  unsnap     lower-hooks
  remove     lower-switch

work

step renew "Take the new switch"
  replace    lower-switch with switch-new
  dispose    lower-switch as electronic-waste

put-back
  derived

step switch
  text: Check that the lever of the switch points to the door.

step bracket
  text: Press the bracket towards the door while you tighten the screws.

step leads
  text: Follow the numbers on the leads.
test interlock "Door open: upper and lower switch read open, and the monitor switch reads closed"
  when       mains unplugged, case out
  when       upper-leads connected, lower-leads connected, monitor-leads connected
  proves     lower-switch, interlock
  with       meter
test earth "Below 0.1 ohm from the earth pin to the bare edge of the case"
  when       case-screws tight, mains unplugged
  proves     case-earth
  with       meter
