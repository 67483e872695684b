# The freehub body comes off through the right end, once the axle and the right balls are out.
use "hub.mmk"

guide renew-freehub "Renew the freehub body"
  goal       replace freehub with freehub-new
  for        competent
  spare      freehub-new "freehub body with cup and pawls", 1, 38.00 EUR for freehub
  spare      balls-new "ball 6.35 mm", 9, 2.25 EUR for right-balls
  supply     bearing-grease "bearing grease", 6 g, 0.75 EUR for right-balls
  supply     solvent "degreaser", 30 ml, 0.50 EUR for right-balls
  tool       ring-tool "spline tool for the cassette ring"
  tool       whip "chain whip"
  tool       cone-spanner "cone spanner 15"
  tool       spanner-17 "open-ended spanner 17"
  tool       key-10 "hexagon key 10"
  tool       pick "blunt pick"
  tool       brush "small stiff brush"
  tool       micrometer "micrometer 0 to 25 mm"
  tool       torque-wrench "torque wrench 20 to 40 N·m"
  text: The wheel is out of the bicycle. Renew the body when the pawls slip or the right cup is pitted.

take-apart

step skewer-out "Draw out the skewer"
  undo       skewer-nut
  remove     skewer
  text: Keep the two springs on the skewer. Their narrow ends point to the middle.

step cassette-off "Take the cassette off"
  undo       cassette-ring with ring-tool, whip
  remove     cassette
  text: Hold the largest sprocket with a chain whip while you turn the ring. Slide the sprockets off in one stack.
  photo "img/cassette.svg" "Lock ring at the centre of the cassette"
    mark     cassette-ring 0.50,0.50
    mark     cassette 0.62,0.24

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
  text: Draw the axle out to the right. Cover the left end with a cloth, so that its balls stay in their grease.

step right-balls-out "Take out the right balls"
  remove     right-seal with pick
  remove     right-balls
  text: Turn the wheel over a tray to let the nine balls fall.

step freehub-off "Take the freehub body off"
  undo       freehub-bolt with key-10
  remove     freehub
  text: Push the key through the body from the right. Turn the bolt anticlockwise.
  note: The shim stays on the shell, with its chamfer inward.
  photo "img/freehub.svg" "Section through the freehub body and its hollow bolt"
    mark     freehub-bolt 0.56,0.50
    mark     freehub 0.70,0.27

work

step renew "Take the new body"
  replace    freehub with freehub-new
  text: Turn the new body by hand. Listen for all three pawls.

step clean "Clean and measure the right balls"
  warning: Vapour of the degreaser is harmful and can catch fire. Work in moving air, away from flames.
  clean      right-balls with brush, solvent
  measure    right-balls diameter at least 6.33 mm with micrometer, else replace right-balls with balls-new
  grease     right-balls with bearing-grease

put-back
  derived

step freehub-off "Fit the new body"
  text: Engage the splines of the body with the shell. Tighten the bolt with a torque wrench.
test freewheel "The body turns freely backward and drives the shell forward"
  when       freehub-bolt tight, right-balls out
  proves     freehub

step right-balls-out "Set the right balls"
  text: Fill the new cup to half its depth with grease. Press nine balls into it.

step left-end "Set the left cone"
  text: Turn the cone down by hand until it touches the balls. Turn it back by a twelfth of a turn. Lock the nut against the spacers while you hold the cone.
test spin "The axle turns smoothly by hand, and has no play that can be felt"
  when       left-lock-nut tight, skewer out
  proves     rolling

step cassette-off "Put the cassette on"
  text: Find the one wide groove. Slide the stack on with its small sprocket outward.
test ride "The wheel drives forward and turns freely backward under a firm pull of the chain whip"
  when       cassette-ring tight, skewer out
  proves     drive
