# Both bearings are opened from the left; the right cone stays set on the axle.
use "hub.mmk"

guide service-bearings "Clean and grease the wheel bearings"
  goal       grease left-balls, right-balls
  for        competent
  spare      balls-new "ball 6.35 mm", 18, 4.50 EUR for left-balls, right-balls
  supply     bearing-grease "bearing grease", 10 g, 1.20 EUR for left-balls, right-balls
  supply     solvent "degreaser", 50 ml, 0.80 EUR for left-balls, right-balls
  tool       cone-spanner "cone spanner 15"
  tool       spanner-17 "open-ended spanner 17"
  tool       driver-25 "hexalobular driver 25"
  tool       pick "blunt pick"
  tool       brush "small stiff brush"
  tool       micrometer "micrometer 0 to 25 mm"
  tool       torque-wrench "torque wrench 6 to 20 N·m"
  text: The wheel is out of the bicycle. Service the bearings when the axle feels rough or has play.

take-apart

step skewer-out "Draw out the skewer"
  undo       skewer-nut
  remove     skewer
  text: Keep the two springs on the skewer. Their narrow ends point to the middle.

step rotor-off "Take the rotor off"
  undo       rotor-screws with driver-25
  remove     rotor
  text: Lay the rotor in a clean bag.
  photo "img/rotor.svg" "The six screws of the brake rotor, seen from the left"
    mark     rotor-screws 0.867,0.5 0.683,0.818 0.317,0.818 0.133,0.5 0.317,0.182 0.683,0.182

step left-end "Open the left end of the axle"
  mark       left-spacers
  undo       left-lock-nut with spanner-17
  remove     left-spacers
  undo       left-cone with cone-spanner
  text: Hold the left cone with the cone spanner while you turn the lock nut. Thread the spacers on a wire in their order.
  photo "img/left-end.svg" "Lock nut, spacers and cone on the left end of the axle"
    mark     left-lock-nut 0.30,0.50
    mark     left-spacers 0.40,0.50 0.46,0.50
    mark     left-cone 0.54,0.50

step axle-out "Draw the axle out"
  remove     axle
  text: Draw the axle out to the right. Leave the right cone and its lock nut as they are.

step balls-out "Take out the seals and the balls"
  remove     left-seal, right-seal with pick
  remove     left-balls, right-balls
  text: Turn the wheel over a tray to let the balls fall. Count nine balls from each side.
  photo "img/balls.svg" "Nine balls in the left cup"
    mark     left-balls 0.75,0.50 0.692,0.661 0.543,0.746 0.375,0.717 0.265,0.586 0.265,0.414 0.375,0.283 0.543,0.254 0.692,0.339

work

step clean "Clean the balls and the tracks"
  warning: Vapour of the degreaser is harmful and can catch fire. Work in moving air, away from flames.
  clean      left-balls, right-balls with brush, solvent
  text: Wipe the cups and both cones dry. Look for pits in the tracks under a strong light.

step inspect "Measure the balls"
  measure    left-balls diameter at least 6.33 mm with micrometer, else replace left-balls with balls-new
  measure    right-balls diameter at least 6.33 mm with micrometer, else replace right-balls with balls-new
  note: One worn ball means that all nine of that side are renewed together.

step grease "Grease the balls"
  grease     left-balls, right-balls with bearing-grease
  text: Fill each cup to half its depth with grease.

put-back
  derived

step balls-out "Set the balls in the grease"
  text: Press nine balls into each cup. Press the seals in square with your thumbs.

step axle-out "Put the axle in"
  text: Push the axle in from the right. Hold it so that the right balls stay in place.

step rotor-off "Put the rotor on"
  text: Spin the wheel. Check that the rotor runs true.

step left-end "Set the left cone"
  text: Turn the cone down by hand until it touches the balls. Turn it back by a twelfth of a turn. Lock the nut against the spacers while you hold the cone.
  note: A skewer that is clamped takes up a little play. A trace of play is right before the skewer is in.
test spin "The axle turns smoothly by hand, and has no play that can be felt"
  when       left-lock-nut tight, skewer out
  proves     rolling
