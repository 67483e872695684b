# Situations of shared work and of readers: the steps of another guide, work for licensed persons alone.

--- cabinet
device cabinet "Control cabinet"

part frame "frame"
part door "door"
  covers     drawer, module
fastener door-screws "door screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      door to frame
  torque     1.8 N.m
part drawer "drawer"
part module "module"
  behind     drawer

guide open-door "Take the door off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step door-off "Take the door off"
  undo       door-screws with driver-20
  remove     door

put-back
  derived

--- steps-of-another-guide
use "cabinet.mmk"
guide steps-of-another-guide "Take the module out"
  for        competent
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Open the cabinet"
  do         open-door

step module-out "Take the module out"
  remove     drawer
  remove     module

put-back
  derived

--- steps-of-another-guide-not-enough
use "cabinet.mmk"
guide steps-of-another-guide-not-enough "Take the module out"
  for        competent
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Open the cabinet"
  do         open-door

step module-out "Take the module out"
  # error 3-8 [out-of-reach] cannot be got at here
  remove     module

put-back
  derived

--- steps-of-another-guide-forgotten
use "cabinet.mmk"
guide steps-of-another-guide-forgotten "Take the module out"
  for        competent
  tool       driver-20 "hexalobular driver 20"

take-apart

step module-out "Take the module out"
  # error 3-8 [out-of-reach] cannot be got at here
  remove     drawer
  remove     module

put-back
  derived

--- do-beside-other-actions
use "cabinet.mmk"
guide do-beside-other-actions "Take the drawer out"
  for        competent

take-apart

step open "Open the cabinet"
  # error 3-4 [do-not-alone] `do` stands beside other actions in step `open`; give `do` a step of its own
  do         open-door
  remove     drawer

put-back
  derived

--- gas-heater
device gas-heater "Gas heater"

part body "body"
part valve "gas valve"
connector union "gas union" kind gas-union
  joins      valve to body
energy supply "gas supply" kind gas-supply
  feeds      valve

--- licensed-reader
use "gas-heater.mmk"
guide licensed-reader "Take the valve out"
  for        licensed "gas fitter"
  tool       spanner-24 "spanner 24"

take-apart

step out "Take the valve out"
  turn-off   supply
  undo       union with spanner-24
  remove     valve

put-back
  derived

test tight "No gas escapes at the union"
  proves     union

--- unlicensed-reader
use "gas-heater.mmk"
guide unlicensed-reader "Take the valve out"
  for        trained
  tool       spanner-24 "spanner 24"

take-apart

step out "Take the valve out"
  # error 3-10 [unlicensed-work] licensed work
  turn-off   supply
  undo       union with spanner-24
  remove     valve

put-back
  derived

--- reader-of-another-trade
use "gas-heater.mmk"
guide reader-of-another-trade "Take the valve out"
  for        licensed "welder"
  tool       spanner-24 "spanner 24"

take-apart

step out "Take the valve out"
  # error 3-10 [unlicensed-work] licensed work
  turn-off   supply
  undo       union with spanner-24
  remove     valve

put-back
  derived
