# The case stays shut: the chuck comes off from the front.
use "drill.mmk"

guide renew-chuck "Renew the chuck"
  goal       replace chuck with chuck-new
  for        competent
  spare      chuck-new "keyless chuck 13 mm", 1, 21.50 EUR for chuck
  tool       driver-30 "hexalobular driver 30"
  tool       key-10 "hexagon key 10"
  tool       torque-driver "torque driver 6 N·m"

take-apart

step pack-off "Slide the battery pack off"
  slide-out  pack
  text: Press both catches. Slide the pack forward off its rails.

step chuck-off "Take the chuck off"
  undo       chuck-screw with driver-30
  unscrew    chuck with key-10
  text: Open the jaws to reach the screw. Turn the screw clockwise, because its thread is left-hand. Clamp the key in the jaws. Turn the chuck anticlockwise with the key.
  photo "img/chuck.svg" "The left-hand screw at the bottom of the open chuck"
    mark     chuck-screw 0.50,0.50

work

step renew "Take the new chuck"
  replace    chuck with chuck-new

put-back
  derived

step chuck-off "Fit the new chuck"
  text: Turn the chuck on until it stops. Turn the chuck screw anticlockwise to tighten it.

step pack-off "Slide the battery pack on"
test true "A drill bit in the chuck runs true in both directions"
  when       pack in
  proves     chuck
