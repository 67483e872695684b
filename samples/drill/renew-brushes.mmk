# The brushes are reached when the drive unit is out of the left half; both are renewed together.
use "drill.mmk"

guide renew-brushes "Renew the carbon brushes"
  goal       replace brushes with brushes-new
  for        competent
  spare      brushes-new "carbon brush with lead", 2, 6.40 EUR for brushes
  spare      motor-new "motor 18 V", 1, 34.00 EUR for motor
  tool       driver-15 "hexalobular driver 15"
  tool       pliers "flat pliers"
  tool       spring-hook "spring hook"
  tool       calliper "calliper"
  tool       meter "resistance meter"
  tool       torque-driver "torque driver 1.4 N·m"
  text: Renew the brushes when one is shorter than 5 mm, or when the drill sparks strongly.

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

step unit-out "Lift out the drive unit"
  mark       motor-spades
  disconnect motor-spades with pliers
  remove     drive-unit
  text: Pull each lead by its sleeve. Lift motor, gearbox and chuck out together.
  photo "img/inside.svg" "The drive unit, the switch and the motor leads in the left half"
    mark     motor-spades 0.36,0.46 0.44,0.46
    mark     drive-unit 0.45,0.20

step brushes-out "Take the brushes out"
  lift       brush-springs with spring-hook
  disconnect brush-leads with pliers
  remove     brushes
  text: Rest the end of each spring on the side of its holder.
  photo "img/brushes.svg" "Both brushes and their springs at the rear of the motor"
    mark     brushes 0.50,0.22 0.50,0.78
    mark     brush-springs 0.62,0.16 0.62,0.84
    mark     brush-leads 0.33,0.22 0.33,0.78

work

step inspect "Measure the commutator"
  measure    commutator diameter at least 21.0 mm with calliper, else replace motor with motor-new
  text: Measure where the brushes have run. Wipe the slots between the bars clean.

step renew "Take the new brushes"
  replace    brushes with brushes-new

put-back
  derived

step brushes-out "Put the brushes in"
  text: Slide each brush in with its hollow face on the commutator. Lower each spring slowly onto its brush.
test contact "The meter shows a steady 1 ohm or less while the armature is turned by hand"
  when       pack out, drive-unit out, brush-springs loaded
  proves     brushes, commutation
  with       meter

step unit-out "Lay the drive unit in"
  text: Turn the gearbox until its two lugs lie in the left half. Lay the leads in their guides.

step open "Close the case"
  text: Check that no lead lies across a screw post. Press the halves together before you start the screws.

step pack-off "Slide the battery pack on"
test run "The drill turns both ways"
  when       pack in
  proves     running
