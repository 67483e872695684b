# Situations of work that takes the licences of two trades.

--- wall-boiler
device wall-boiler "Wall boiler"

energy circuit "circuit of the boiler" kind household-circuit
  feeds      fan
energy gas "gas supply" kind gas-supply
  feeds      valve
part frame "frame"
part cover "cover" kind panel
  covers     fan, valve
part valve "gas valve"
part fan "fan" kind fan
  behind     valve
connector union "gas union" kind gas-union
  joins      valve to frame

--- both-licences
use "wall-boiler.mmk"
guide both-licences "Take the fan out"
  for        licensed "gas fitter and electrician"
  before     turn-off gas
  before     switch-off circuit
  before     lock-off circuit with padlock
  tool       padlock "padlock"
  tool       tester "voltage tester"
  tool       spanner "spanner 24"

take-apart

step out "Take the fan out"
  remove     cover
  undo       union with spanner
  remove     valve
  prove      circuit with tester
  remove     fan

put-back
  derived
test tight "The gas union holds"
  when       union tight
  proves     union

--- one-licence
use "wall-boiler.mmk"
guide one-licence "Take the fan out"
  for        licensed "gas fitter"
  before     turn-off gas
  # error 14-23 [unlicensed-work] licensed work
  before     switch-off circuit
  before     lock-off circuit with padlock
  tool       padlock "padlock"
  tool       tester "voltage tester"
  tool       spanner "spanner 24"

take-apart

step out "Take the fan out"
  remove     cover
  undo       union with spanner
  remove     valve
  prove      circuit with tester
  remove     fan

put-back
  derived
test tight "The gas union holds"
  when       union tight
  proves     union
