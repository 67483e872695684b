# Situations of proving dead: at the terminals, once they lie open, and not before the cover.

--- fan-hood
device fan-hood "Fan hood"

energy circuit "circuit of the hood" kind household-circuit
  feeds      fan-motor, glow-lamp
part shell "shell"
part hood-panel "front panel" kind panel
  covers     fan-motor, motor-lid
part motor-lid "lid of the motor" in fan-motor
  covers     motor-ends
part fan-motor "fan motor" kind motor
connector motor-ends "motor terminals" kind screw-terminal, cross-recess 2
  joins      fan-motor to shell
part glow-lamp "glow lamp"
  behind     fan-motor

--- proved-before-the-cover
use "fan-hood.mmk"
guide proved-before-the-cover "Take the motor out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       cross-2 "cross-recess driver 2"

take-apart

step dead "Make it dead"
  switch-off circuit
  lock-off   circuit with lock
  # error 3-7 [out-of-reach] cannot be got at here
  prove      circuit with tester

step out "Take the motor out"
  remove     hood-panel
  remove     motor-lid
  slacken    motor-ends with cross-2
  disconnect motor-ends
  remove     fan-motor

put-back
  derived

--- proved-before-the-lid
use "fan-hood.mmk"
guide proved-before-the-lid "Take the motor out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       cross-2 "cross-recess driver 2"

take-apart

step out "Take the motor out"
  switch-off circuit
  lock-off   circuit with lock
  remove     hood-panel
  # error 3-7 [out-of-reach] cannot be got at here
  prove      circuit with tester
  remove     motor-lid
  slacken    motor-ends with cross-2
  disconnect motor-ends
  remove     fan-motor

put-back
  derived

--- proved-behind-the-lid
use "fan-hood.mmk"
guide proved-behind-the-lid "Take the motor out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       cross-2 "cross-recess driver 2"

take-apart

step out "Take the motor out"
  switch-off circuit
  lock-off   circuit with lock
  remove     hood-panel
  remove     motor-lid
  prove      circuit with tester
  slacken    motor-ends with cross-2
  disconnect motor-ends
  remove     fan-motor

put-back
  derived

--- porch-lantern
device porch-lantern "Wall lamp"

energy circuit "circuit of the lamp" kind household-circuit
  feeds      lantern
part wall "wall plate"
part lantern "lantern"
  covers     lamp-ends
# warning 11-19 [closed-in] can only be reached when that is off
connector lamp-ends "lamp terminals" kind screw-terminal, cross-recess 1
  joins      lantern to wall
fastener lamp-nut "lamp nut" 1 x nut M6, hexagon-head 10
  holds      lantern to wall

--- hides-its-own-terminals
# warning elsewhere [closed-in] can only be reached when that is off
use "porch-lantern.mmk"
# What hangs before its own terminals is proved dead before it is let go.
guide hides-its-own-terminals "Let the lantern down"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       socket-10 "socket 10"

take-apart

step down "Take the nut off"
  switch-off circuit
  lock-off   circuit with lock
  prove      circuit with tester
  undo       lamp-nut with socket-10

put-back
  derived

--- motor-cabinet
device motor-cabinet "Motor cabinet"

energy supply "supply of the cabinet" kind switchboard
  feeds      busbar
part box "box"
part door "door" kind panel
  covers     busbar
part busbar "busbar"

--- earthed-and-back-in-turn
use "motor-cabinet.mmk"
# The earth comes off while the busbar lies open, the supply is on again when all is shut.
guide earthed-and-back-in-turn "Take the busbar out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       earth "earthing set"

take-apart

step out "Take the busbar out"
  isolate    supply
  lock-off   supply with lock
  remove     door
  prove      supply with tester
  earth      supply with earth
  remove     busbar

put-back
  derived
