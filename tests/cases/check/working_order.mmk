# What a fitter does in another order than the way in reversed: seals are laid before their covers, supplies restored
# last; and what may not be done under power or under pressing screws.

--- tank
device tank "Tank"

part body "body"
part cover "cover"
  covers     heater
fastener cover-bolts "cover bolt" 4 x screw M6 x 20, hexagon-head 10
  holds      cover to body
  torque     8 N.m
bond gasket "cover gasket" kind flat-gasket
  joins      cover to body
part heater "heater"
part fuse "fuse" in heater kind fuse-link
energy mains "24 V supply" kind external-supply
  feeds      heater

--- gasket-laid-before-its-cover
use "tank.mmk"
guide gasket-laid-before-its-cover "Look at the heater"
  for        competent
  before     unplug mains
  supply     gasket-new "cover gasket", 1 for gasket
  tool       spanner-10 "spanner 10"
  tool       torque-wrench "torque wrench 8 N·m"

take-apart

step off "Take the cover off"
  undo       cover-bolts with spanner-10
  separate   gasket
  remove     cover

put-back

step off "Put the cover back"
  seat       gasket with gasket-new
  fit        cover
  fasten     cover-bolts with spanner-10 to 8 N.m

step plug-in "Plug it in"
  plug-in    mains

--- gasket-under-its-bolts
use "tank.mmk"
guide gasket-under-its-bolts "Look at the heater"
  for        competent
  before     unplug mains
  supply     gasket-new "cover gasket", 1 for gasket
  tool       spanner-10 "spanner 10"
  tool       torque-wrench "torque wrench 8 N·m"

take-apart

step off "Take the cover off"
  # error 3-10 [out-of-reach] cannot be got at here
  separate   gasket
  undo       cover-bolts with spanner-10
  remove     cover

put-back
  derived

--- fuse-in-a-live-heater
use "tank.mmk"
guide fuse-in-a-live-heater "Renew the fuse"
  for        competent
  goal       replace fuse with fuse-new
  spare      fuse-new "fuse", 1
  supply     gasket-new "cover gasket", 1 for gasket
  tool       spanner-10 "spanner 10"
  tool       torque-wrench "torque wrench 8 N·m"

take-apart

step off "Take the cover off"
  undo       cover-bolts with spanner-10
  separate   gasket
  remove     cover

step fuse "Take the fuse out"
  # error 3-8 [still-live] under power here
  remove     fuse

work

step renew "Renew it"
  replace    fuse with fuse-new
  # advice 3-9 [asked-by-nothing] nothing declared asks to dispose `fuse`; add `waste` to a kind of its own for `fuse`
  dispose    fuse as electronic-waste

put-back
  derived

test heats "It heats"
  when       mains plugged

--- cellar-pump
device cellar-pump "Cellar pump"

energy power "mains" kind mains-cord 230 V
  feeds      motor
energy tap "inlet tap" kind water-supply
  feeds      housing, rotor
part base "base"
part motor "motor" in base
part housing "pump housing" in base
part lid "housing lid"
  covers     rotor
fastener lid-screws "lid screw" 4 x screw M5 x 16, hexalobular 25, pan
  holds      lid to housing
part rotor "rotor" kind impeller
  needs      sump drained to remove
fastener rotor-nut "rotor nut" 1 x nut M8, hexagon-head 13
  holds      rotor to base
fluid sump "water in the housing" in housing 2 l kind water
  needs      tap shut-off to drain
function pump "It pumps"
  through    motor, rotor

--- tap-shut-and-not-drained-while-it-is-filled
use "cellar-pump.mmk"

guide tap-shut-and-not-drained-while-it-is-filled "Replace the rotor"
  goal       replace rotor with rotor-new
  for        competent
  before     unplug power
  before     turn-off tap
  spare      rotor-new "rotor", 1 for rotor
  tool       hexalobular-driver-25 "hexalobular driver 25"
  tool       spanner-13 "spanner 13"
  text: The pump turns and no water comes.

take-apart

step remove-lid "Remove the housing lid"
  drain      sump
  undo       lid-screws with hexalobular-driver-25
  remove     lid

step remove-rotor "Remove the rotor"
  drain      tap
  undo       rotor-nut with spanner-13
  remove     rotor

work

step renew "Take the new one"
  replace    rotor with rotor-new

put-back
  derived

test try-pump "It pumps"
  proves     pump

--- twin-pump
device twin-pump "Pump with two inlets"

energy power "mains" kind mains-cord 230 V
  feeds      motor
energy tap "inlet tap" kind water-supply
  feeds      housing, rotor
energy tap-2 "second inlet tap" kind water-supply
  feeds      housing, rotor
part base "base"
part motor "motor" in base
part housing "pump housing" in base
part lid "housing lid"
  covers     rotor
fastener lid-screws "lid screw" 4 x screw M5 x 16, hexalobular 25, pan
  holds      lid to housing
part rotor "rotor" kind impeller
  needs      sump drained to remove
fastener rotor-nut "rotor nut" 1 x nut M8, hexagon-head 13
  holds      rotor to base
fluid sump "water in the housing" in housing 2 l kind water
  needs      tap shut-off to drain
  needs      tap-2 shut-off to drain
function pump "It pumps"
  through    motor, rotor

--- two-taps-shut-and-not-drained-while-it-is-filled
use "twin-pump.mmk"

guide two-taps-shut-and-not-drained-while-it-is-filled "Replace the rotor"
  goal       replace rotor with rotor-new
  for        competent
  before     unplug power
  before     turn-off tap
  before     turn-off tap-2
  spare      rotor-new "rotor", 1 for rotor
  tool       hexalobular-driver-25 "hexalobular driver 25"
  tool       spanner-13 "spanner 13"
  text: The pump turns and no water comes.

take-apart

step remove-lid "Remove the housing lid"
  drain      sump
  undo       lid-screws with hexalobular-driver-25
  remove     lid

step remove-rotor "Remove the rotor"
  drain      tap
  drain      tap-2
  undo       rotor-nut with spanner-13
  remove     rotor

work

step renew "Take the new one"
  replace    rotor with rotor-new

put-back
  derived

test try-pump "It pumps"
  proves     pump

--- small-heater
device small-heater "Small heater"

part body "body"
part heater "heater" in body
connector leads "heater lead" 2 x spade
  joins      heater to body

--- fitted-before-it-is-replaced
# Two lines the wrong way round are one finding.
use "small-heater.mmk"
guide fitted-before-it-is-replaced "Renew the heater"
  goal       replace heater with heater-new
  for        competent
  spare      heater-new "heater", 1 for heater

take-apart

step heater-out "Take the heater out"
  disconnect leads
  remove     heater

put-back

step heater-back "Fit the new one"
  fit        heater
  # error 3-9 [still-in-place] the old one is still in
  replace    heater with heater-new
  connect    leads

test hot "It gets warm"
  proves     heater

--- garden-pump
device garden-pump "Garden pump"

energy tap "garden tap" kind water-supply
  feeds      pump
part pump "pump"
part hose "hose" kind hose
connector union "union" kind face-seal-joint G3/8, hexagon-head 22
  joins      hose to pump

--- union-made-after-the-drain-is-shut
# The tap is shut still: nothing runs.
use "garden-pump.mmk"
guide union-made-after-the-drain-is-shut "Take the hose off"
  for        competent
  tool       spanner "spanner 22"

take-apart

step off "Take the hose off"
  turn-off   tap
  drain      tap
  undo       union with spanner
  remove     hose

put-back

step back "Put the hose on"
  fit        hose
  stop-draining tap
  do-up      union with spanner
  turn-on    tap

--- union-made-with-the-tap-on
# What stands in its way goes on from there: it is the line of the union that moves.
use "garden-pump.mmk"
guide union-made-with-the-tap-on "Take the hose off"
  for        competent
  tool       spanner "spanner 22"

take-apart

step off "Take the hose off"
  turn-off   tap
  drain      tap
  undo       union with spanner
  remove     hose

put-back

step back "Put the hose on"
  fit        hose
  stop-draining tap
  turn-on    tap
  # error 3-7 [still-live] under power here
  do-up      union with spanner
