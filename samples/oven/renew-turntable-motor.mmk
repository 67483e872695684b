# The turntable motor is reached from below. The case stays on, and the high voltage stays closed
# in.
use "oven.mmk"

guide renew-turntable-motor "Renew the turntable motor"
  goal       replace turntable-motor with motor-new
  for        competent
  spare      motor-new "turntable motor 230 V 4 W", 1, 11.40 EUR for turntable-motor
  tool       driver-20 "hexalobular driver 20"
  tool       cross-1 "cross-recess driver 1"
  tool       meter "meter"
  tool       torque-driver "torque driver 1.2 N·m"
  text: The plate stands still, and the oven heats well. Never take the case off for this repair.

take-apart

step unplug "Unplug the oven"
  unplug     mains

step plate "Take out the plate and the coupler"
  open       door
  remove     glass-plate
  remove     roller-ring
  remove     drive-coupler
  text: Pull the coupler straight up off the motor shaft.

step base "Take off the motor cover"
  undo       base-screws
  remove     base-cover
  text: Lay the oven on its back, on a blanket.
  photo "img/base.svg" "The base, three screws"
    mark     base-screws 0.36,0.35 0.64,0.35 0.50,0.68

step motor "Take out the motor"
  disconnect motor-spades
  undo       motor-screw
  remove     turntable-motor

work

step renew "Take the new motor"
  replace    turntable-motor with motor-new
  text: Compare the voltage on the two labels.

put-back
  derived

step motor
  text: Turn the screw backwards until it drops into its old thread. Tighten it lightly.
test winding "The meter reads 8 to 14 kohm across the motor leads"
  when       mains unplugged, motor-spades connected, motor-screw tight, base-cover out
  proves     turntable-motor, turntable
  with       meter

step base
  text: Set the oven on its feet again after the last screw.

step plate
  text: Turn the coupler until its flat meets the flat of the shaft.
