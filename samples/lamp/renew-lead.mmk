# A lead that is clamped, marked before it comes off, and tested before the plate goes back.
use "lamp.mmk"

guide renew-lead "Renew the mains lead"
  goal       replace cord with cord-new
  for        competent
  before     unplug mains
  spare      cord-new "mains lead 2 x 0.75 mm2 with moulded plug, 2 m", 1, 6.40 EUR for cord
  tool       driver-1 "cross-recess driver 1"
  tool       driver-3 "slotted driver 3"
  tool       driver-4 "slotted driver 4"
  tool       meter "continuity meter"
  text: The sheath of the lead is cut, hard or bent sharply where it enters the foot.
  text: Fit a lead of the same type and size. Where local rules ask for it, a qualified person
    tests the lamp afterwards.

take-apart

step plate-off "Take the bottom plate off"
  undo       plate-screws
  remove     bottom-plate
  text: Lay the lamp on a soft cloth. Undo the three screws.
  photo "img/bottom.svg" "The bottom plate with its three screws"
    mark     plate-screws 0.5,0.2 0.717,0.575 0.283,0.575

step lead-out "Take the lead out"
  mark       cord-terminals
  slacken    cord-terminals with driver-3
  disconnect cord-terminals
  slacken    cord-clamp with driver-4
  remove     cord
  text: Note which colour goes to which terminal. Draw the lead out through the opening.
  photo "img/inside.svg" "Lead terminals and lead clamp"
    mark     cord-terminals 0.62,0.47 0.62,0.57
    mark     cord-clamp 0.8,0.52

work

step renew "Prepare the new lead"
  replace    cord with cord-new
  text: Strip 60 mm of the sheath. Then strip 6 mm of each core.

put-back
  derived

step lead-out "Put the new lead in"
  text: Push the lead in until its sheath stands 5 mm past the clamp. Put each core in its noted
    terminal.

test circuit "The meter shows a circuit with the switch on, and none with it off"
  when       cord-clamp tight, cord-terminals tight, bottom-plate out, mains unplugged
  proves     cord, switching
  with       meter
  text: Pull the lead firmly. Hold the probes on the two pins of the mains plug. Move the switch
    five times.

step plate-off "Put the bottom plate back"
  text: Tuck all wires into the foot. Check that no wire lies under the edge of the plate.
