# Situations of guards: what they cover is driven by whatever feeds its function, and they go back.

--- dough-mixer
device dough-mixer "Dough mixer"

energy supply "three-phase supply" kind motor-supply 400 V
  feeds      motor
part frame "frame"
part motor "motor" in frame
part bowl-guard "bowl guard" kind guard
  covers     hook
fastener guard-bolts "guard bolt" 2 x bolt M8 x 30, hexagon-head 13
  holds      bowl-guard to frame
  torque     20 N.m
part hook "dough hook" in frame
function mixing "It mixes without a knock"
  through    motor, hook

--- guard-off-with-the-supply-on
use "dough-mixer.mmk"
guide guard-off-with-the-supply-on "Renew the hook"
  goal       replace hook with hook-new
  for        competent
  spare      hook-new "dough hook", 1, 80.00 EUR for hook
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench, hexagon socket 13"

take-apart

step open "Take the guard off"
  # error 3-6 [still-live] under power here
  undo       guard-bolts with spanner-13
  remove     bowl-guard
  remove     hook

work

step renew "Take the new one"
  replace    hook with hook-new

put-back
  derived

test mixing "It mixes without a knock"
  proves     mixing

--- guard-left-off
use "dough-mixer.mmk"
guide guard-left-off "Look at the hook"
  for        competent
  before     shut-down supply
  before     lock-off supply with padlock
  before     prove supply
  tool       padlock "padlock"
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step open "Take the guard off"
  undo       guard-bolts with spanner-13
  remove     bowl-guard

put-back
  derived
step leave "Leave the guard off"
  scrap      guard-bolts
  # error 14-23 [guard-left-off] keeps hands off no more
  leave-off  bowl-guard

--- tea-urn
device tea-urn "Tea urn"

part shell "shell"
part vessel "vessel" in shell
part valve "safety valve" in vessel kind safety-valve
part cutout "cut-out" in vessel kind thermal-cutout

--- cutout-left-off
use "tea-urn.mmk"
guide cutout-left-off "Get it going"
  for        competent

take-apart

step off "Take the cut-out out"
  remove     cutout, valve

put-back

step leave "Leave it off"
  # error 14-19 [guard-left-off] protects nobody any more
  leave-off  cutout
  fit        valve

--- bench-saw
device bench-saw "Bench saw"

energy mains "mains lead" kind mains-cord 230 V
  feeds      saw-motor
part base "base frame"
part belt-cover "belt cover" kind panel
  covers     belt
part belt "drive belt" kind drive-belt
part blade-cover "blade cover" kind panel
  covers     saw-blade
part saw-blade "saw blade" kind blade
part saw-motor "motor" kind motor
function cut "The blade turns"
  through    belt, saw-blade
function drive "The belt runs"
  through    saw-motor, belt

--- belt-renewed-with-the-plug-in
use "bench-saw.mmk"
guide belt-renewed-with-the-plug-in "Renew the belt"
  goal       replace belt with belt-new
  for        competent
  spare      belt-new "drive belt", 1, 9.00 EUR for belt

take-apart

step open "Take the belt off"
  # error 3-8 [hazard-not-cleared] lays open what it feeds
  remove     belt-cover
  remove     belt

work

step renew "Take the new one"
  replace    belt with belt-new

put-back
  derived

test cut "The blade turns"
  proves     cut, drive

--- blade-laid-open-with-the-plug-in
use "bench-saw.mmk"
guide blade-laid-open-with-the-plug-in "Look at the blade"
  for        competent

take-apart

step open "Take the cover off"
  # error 3-8 [hazard-not-cleared] lays open what it feeds
  remove     blade-cover

put-back
  derived

--- log-splitter
device log-splitter "Log splitter"

energy mains "mains lead" kind mains-cord 230 V
  feeds      motor
part frame "frame"
part motor "motor" in frame
part pump "gear pump" in frame
part cylinder "cylinder" in frame
part gland "gland" in cylinder
fastener gland-screws "gland screw" 4 x screw M8 x 25, hexagon-socket 6
  holds      gland to cylinder
  torque     20 N.m
part rod "rod" in cylinder
  behind     gland
bond rod-seal "rod seal" kind o-ring
  joins      rod to cylinder
energy pressure "oil under pressure" kind hydraulic-accumulator
  feeds      cylinder
function splits "It splits a log, and no oil comes out at the rod"
  through    motor, pump, cylinder, rod-seal, rod

--- pressure-let-out-and-its-pump-plugged-in
use "log-splitter.mmk"
guide pressure-let-out-and-its-pump-plugged-in "Renew the rod seal"
  for        competent
  before     relieve pressure
  before     prove pressure with gauge
  supply     rod-seal-new "rod seal", 1 for rod-seal
  tool       gauge "pressure gauge"
  tool       key-6 "hexagon key 6"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step open "Take the gland off"
  undo       gland-screws with key-6
  # error 3-8 [still-live] under power here
  remove     gland
  lift       rod-seal

put-back
  derived

test try-splits "It splits a log, and no oil comes out at the rod"
  when       rod-seal seated
  proves     splits

--- seal-lifted-from-behind-the-gland
use "log-splitter.mmk"
guide seal-lifted-from-behind-the-gland "Renew the rod seal"
  for        competent
  before     unplug mains
  before     relieve pressure
  before     prove pressure with gauge
  supply     rod-seal-new "rod seal", 1 for rod-seal
  tool       gauge "pressure gauge"

take-apart

step open "Lift the seal"
  # error 3-6 [out-of-reach] cannot be got at here
  lift       rod-seal

put-back
  derived

test try-splits "It splits a log, and no oil comes out at the rod"
  when       rod-seal seated
  proves     splits

--- chain-saw
device chain-saw "Chain saw"

part body "body"
part chain "saw chain" kind chain
part cover "sprocket cover" kind guard
  covers     chain
fastener cover-nuts "cover nut" 2 x nut M8, hexagon-head 13
  holds      cover to body
  torque     20 N.m
function cutting "The chain cuts"
  through    body, chain

--- guarded-and-driven-by-nothing
# warning elsewhere [driven-by-nothing] by what?
use "chain-saw.mmk"
guide guarded-and-driven-by-nothing "Look at the chain"
  for        competent
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step open "Take the cover off"
  undo       cover-nuts with spanner-13
  remove     cover

put-back
  derived

--- verge-mower
device verge-mower "Verge mower"

energy mains "mains" kind mains-cord 230 V
  feeds      motor
part deck "deck"
part motor "motor" in deck kind motor
part spindle "spindle" in deck kind shaft
# It lies open, below the deck: no guard, no lid.
part cutter "cutter" kind blade
fastener cutter-bolt "cutter bolt" 1 x bolt M10, hexagon-head 16
  holds      cutter to spindle
part handle "handle"
fastener handle-bolts "handle bolt" 2 x bolt M8, hexagon-head 13
  holds      handle to deck
function mow "It mows"
  through    motor, spindle, cutter

--- the-bolt-of-a-blade-while-plugged
use "verge-mower.mmk"
guide the-bolt-of-a-blade-while-plugged "Take the cutter off"
  goal       remove cutter
  for        competent
  tool       spanner-16 "spanner 16"
  tool       spanner-13 "spanner 13"
  tool       gloves "cut gloves"

take-apart

step off "Take it off"
  undo       handle-bolts with spanner-13
  # error 3-6 [still-live] under power here
  undo       cutter-bolt with spanner-16
  unplug     mains
  remove     cutter

put-back
  # error 3-9 [no-torque] how tight?
  # error 3-9 [no-torque] how tight?
  derived

test mows "It mows"
  proves     mow

--- the-bolt-of-a-blade-on-the-bench
use "verge-mower.mmk"
guide the-bolt-of-a-blade-on-the-bench "Take the cutter off"
  goal       remove cutter
  for        competent
  before     unplug mains
  tool       spanner-16 "spanner 16"

take-apart

step off "Take it off"
  undo       cutter-bolt with spanner-16
  remove     cutter

put-back
  # error 3-9 [no-torque] how tight?
  derived

test mows "It mows"
  proves     mow

--- plugged-in-before-the-guard-is-held
use "dough-mixer-on-a-lead.mmk"
guide plugged-in-before-the-guard-is-held "Renew the hook"
  for        competent
  spare      hook-new "dough hook", 1, 80.00 EUR for hook
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench, hexagon socket 13"

take-apart

step open "Take the guard off"
  unplug     lead
  undo       guard-bolts with spanner-13
  remove     bowl-guard
  remove     hook

work

step renew "Take the new one"
  replace    hook with hook-new

put-back

step hook "Fit the hook"
  fit        hook

step guard "Fit the guard"
  fit        bowl-guard
  plug-in    lead
  # error 3-8 [still-live] under power here
  fasten     guard-bolts with spanner-13 to 20 N.m

test mixing "It mixes without a knock"
  proves     mixing

--- dough-mixer-on-a-lead
device dough-mixer "Dough mixer"

energy lead "mains lead" kind mains-cord 230 V
  feeds      motor
part frame "frame"
part motor "motor" in frame
part bowl-guard "bowl guard" kind guard
  covers     hook
fastener guard-bolts "guard bolt" 2 x bolt M8 x 30, hexagon-head 13
  holds      bowl-guard to frame
  torque     20 N.m
part hook "dough hook" in frame
function mixing "It mixes without a knock"
  through    motor, hook

--- spin-dryer
device spin-dryer "Spin dryer"

energy mains "mains" kind mains-cord 230 V
  feeds      motor
part base "base"
part side "side panel" kind panel
  covers     motor, belt, tensioner, valve, valve-screw
part motor "motor" kind motor in base
  feeds      belt
part belt "belt" kind drive-belt
  needs      tensioner slack to remove
part tensioner "belt tensioner" kind belt-tensioner hexagon-head 13 in base
part valve "float switch"
fastener valve-screw "float switch screw" 1 x screw M4 x 10, hexalobular 20
  holds      valve to base
function turns "It turns"
  through    motor, belt
function floats "The float switch cuts"
  through    valve

--- beside-the-tensioner
use "spin-dryer.mmk"
guide beside-the-tensioner "Renew the float switch"
  goal       replace valve with valve-new
  for        trained
  spare      valve-new "float switch", 1, 9 EUR for valve
  tool       t20 "hexalobular driver 20"

take-apart

step out "Out"
  unplug     mains
  remove     side
  undo       valve-screw
  remove     valve

work

step take "Take the new one"
  replace    valve with valve-new

put-back
  derived

test float "It cuts"
  when       mains plugged
  proves     valve, floats
