# What has to come off first though no `needs` line says so: a clip before its pin, the plug of a cell before its glue.

--- splitter
device splitter "Log splitter"

part frame "frame"
part ram "ram"
fastener pin "ram pin" 1 x clevis-pin
  holds      ram to frame
fastener clip "pin clip" 1 x spring-clip-pin
  holds      pin to frame

--- pin-under-its-clip
use "splitter.mmk"
guide pin-under-its-clip "Take the ram out"
  for        competent

take-apart

step ram "Take the ram out"
  # error 3-6 [unmet-need] too early here
  draw       pin
  remove     ram

put-back
  derived

--- clip-before-its-pin
use "splitter.mmk"
guide clip-before-its-pin "Take the ram out"
  for        competent

take-apart

step ram "Take the ram out"
  draw       clip
  draw       pin
  remove     ram

put-back
  derived

--- page-reader
device page-reader "Page reader"

part base "base"
part board "board"
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  feeds      board through plug
connector plug "cell plug" kind press-fit-plug
  joins      cell to board
bond glue "cell glue" kind double-sided-tape
  joins      cell to base

--- cell-pried-before-its-plug
use "page-reader.mmk"
guide cell-pried-before-its-plug "Renew the cell"
  for        competent
  before     discharge cell below 25 %
  supply     tape "double-sided tape", 20 cm for glue
  tool       pick "opening pick"

take-apart

step pry "Pry the cell off"
  # error 3-10 [unmet-need] too early here
  separate   glue with pick
  disconnect plug
  remove     cell

put-back
  derived

--- page-reader-with-its-plug-below
device page-reader-with-its-plug-below "Page reader"

part base "base"
part board "board"
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  feeds      board through plug
connector plug "cell plug" kind press-fit-plug
  joins      cell to board
  behind     glue
bond glue "cell glue" kind double-sided-tape
  joins      cell to base

--- plug-below-the-glue
# The plug cannot be got at before: nothing is asked.
use "page-reader-with-its-plug-below.mmk"
guide plug-below-the-glue "Renew the cell"
  for        competent
  before     discharge cell below 25 %
  supply     tape "double-sided tape", 20 cm for glue
  tool       pick "opening pick"

take-apart

step pry "Pry the cell off"
  separate   glue with pick
  disconnect plug
  remove     cell

put-back
  derived

--- swapped-lines
# Two lines the wrong way round are one finding, also where the way back is derived from them.
use "splitter.mmk"
guide swapped-lines "Take the ram out"
  for        competent

take-apart

step ram "Take the ram out"
  draw       clip
  # error 3-8 [still-held] would tear what holds it
  remove     ram
  draw       pin

put-back
  derived

--- roof-hatch
device roof-hatch "Roof hatch"

part ring "ring"
part lid "lid"
bond gasket "gasket" kind o-ring
  joins      lid to ring

--- lid-before-its-seal
use "roof-hatch.mmk"
guide lid-before-its-seal "Open the hatch"
  for        competent
  supply     gasket-new "O-ring 30 mm", 1 for gasket

take-apart

step off "Take the lid off"
  lift       gasket
  remove     lid

put-back

step close "Put the lid on"
  fit        lid
  # error 3-6 [laid-too-late] too late here
  seat       gasket with gasket-new

--- lawn-robot
device lawn-robot "Lawn robot"

energy charger "charger" kind external-supply 28 V
  feeds      pack
part pack "pack" kind lithium-round-cell 25 V
  feeds      motor through plug
connector plug "pack plug" kind locking-tab-plug
  joins      pack to motor
part motor "motor" kind motor
part wheel "wheel"
function drives "It drives"
  through    pack, plug, motor, wheel

--- tried-off-its-charger
use "lawn-robot.mmk"
guide tried-off-its-charger "Renew the wheel"
  goal       replace wheel with wheel-new
  for        competent
  before     unplug charger
  before     discharge pack below 25 %
  spare      wheel-new "wheel", 1 for wheel

take-apart

step open "Take the wheel off"
  disconnect plug
  remove     wheel

work

step renew "Take the new one"
  replace    wheel with wheel-new

put-back

step back "Put the wheel on"
  fit        wheel
  connect    plug

test drives "It drives on the lawn"
  proves     wheel, drives

step charge "Put it on its charger"
  plug-in    charger

--- field-generator
device field-generator "Field generator"

part frame "frame"
part battery "battery" kind lead-acid-battery 12 V
  feeds      starter through minus-clamp
part starter "starter" kind motor in frame
connector minus-clamp "minus clamp" kind battery-clamp hexagon-head 10
  joins      battery to frame
part belt "belt" kind drive-belt in frame
part guard "belt guard" kind guard
  covers     belt
fastener guard-screws "guard screw" 2 x screw M5 x 12, hexalobular 25, pan
  holds      guard to frame
function cranks "It cranks"
  through    starter, belt

--- guard-off-with-the-battery-on
use "field-generator.mmk"
guide guard-off-with-the-battery-on "Look at the belt"
  for        competent
  tool       star-25 "hexalobular driver 25"

take-apart

step open "Take the guard off"
  # error 3-6 [unmet-need] too early here
  undo       guard-screws with star-25
  remove     guard

put-back
  derived
