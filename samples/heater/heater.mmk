# A wall-mounted gas room heater. Its gas way is for licensed persons alone.
device heater "Skerry 5 gas room heater"
  revision   A
  mass       19 kg

energy gas "gas supply" kind gas-supply
  feeds      valve

part back-plate "wall plate"
part cover "front cover"
  covers     valve, burner, igniter, igniter-plug, probe-nut, inlet-union, outlet-union, valve-screws
fastener cover-screws "cover screw" 4 x screw M4 x 10, cross-recess 2, pan
  holds      cover to back-plate
  torque     1.5 N.m
part knob "control knob" kind snap-cover
  blocks     cover
part valve "gas valve"
fastener valve-screws "valve screw" 2 x screw M5 x 12, hexagon 4
  holds      valve to back-plate
  torque     4 N.m
connector inlet-union "inlet union" kind gas-union
  joins      valve to back-plate
connector outlet-union "outlet union" kind gas-union
  joins      burner to valve
part burner "burner" kind plain-part 5 kW
fastener burner-screws "burner screw" 2 x screw M4 x 8, cross-recess 2, pan
  holds      burner to back-plate
  torque     1.5 N.m
part igniter "igniter"
connector igniter-plug "igniter lead" kind spade 2.8 mm
  joins      igniter to valve
part flame-probe "flame probe" in burner
fastener probe-nut "flame probe nut" 1 x nut M8, hexagon-head 13
  holds      flame-probe to valve
  torque     2 N.m

function gas-tight "No gas escapes"
  through    inlet-union, outlet-union

function flame-guard "The gas shuts off when the flame goes out"
  through    probe-nut, igniter-plug
