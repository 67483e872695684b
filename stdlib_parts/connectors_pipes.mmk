# Connectors of pipes and hoses.
# Sources: ISO 14743 push-in tube fittings; ISO 7241 quick-action couplings; SAE J2044 fuel
# couplings; ISO 8434-1 compression joints, tightened again by a quarter turn past hand-tight
# (makers' practice); taper threads ISO 7-1, sealed anew each time; soft washers are renewed or,
# of copper, annealed (common practice, no source); refrigerant and gas joints by licensed persons
# only (40 CFR 82.161; EU 2024/573; local law), and tested for leaks once they are made again, as
# fuel joints are (common practice, no source).
# Example: connector inlet-hose "inlet hose" kind hose-barb

# Hoses and tubes

kind hose-barb "hose on a barb" is connector
  states     connected, apart
  pull-off   connected -> apart by hand or hose-pliers takes 10 s
  push-on    apart -> connected by hand takes 10 s
  clamped
  lets out

kind quick-coupler "quick coupler" is connector
  states     connected, apart
  uncouple   connected -> apart by hand takes 5 s
  couple     apart -> connected by hand takes 5 s

kind clip-coupler "clip-in coupling" is connector
  states     connected, apart
  uncouple   connected -> apart by hand or coupling-tool takes 10 s
  couple     apart -> connected by hand takes 6 s
  lets out
  used again if "its ring is whole and it holds against a pull"
  asks for test

kind push-fit-tube "push-fit tube" is connector
  states     connected, apart
  release    connected -> apart by hand or collet-tool takes 6 s
  push-in    apart -> connected by hand takes 6 s
  lets out
  used again if "the end of the tube is square and has no scratch"
  note: The end of the tube is cut square and has no scratch.

kind crimped-hose "crimped hose end" is connector
  states     crimped, cut
  cut        crimped -> cut by saw takes 60 s
  crimp      cut -> crimped by hose-press takes 60 s
  lets out
  one use

kind waste-pipe-joint "push-fit waste pipe" is connector
  states     connected, apart
  pull-off   connected -> apart by hand takes 10 s
  push-on    apart -> connected by hand takes 10 s
  lets out
  note: The rubber ring lies in its groove and is wet with soapy water.

kind bellows-hose "bellows on two necks" is connector
  states     connected, apart
  pull-off   connected -> apart by hand takes 10 s
  push-on    apart -> connected by hand takes 15 s
  clamped
  lets out

# Pipes

kind pipe-union "pipe union" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 20 s
  do-up      apart -> tight by spanner takes 20 s
  lets out

kind compression-joint "compression joint" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 20 s
  do-up      apart -> tight by spanner takes 20 s
  lets out

kind flared-joint "flared joint" is connector
  states     tight, apart
  undo       tight -> apart by flare-spanner or spanner takes 20 s
  do-up      apart -> tight by flare-spanner or spanner takes 20 s
  lets out
  used again if "the flare has no crack and no groove"

kind banjo-joint "banjo joint" is connector
  states     tight, apart
  undo       tight -> apart by driver takes 15 s
  do-up      apart -> tight by driver takes 20 s
  lets out
  note: A new washer lies on each side of the eye.

kind face-seal-joint "joint with an O-ring in its face" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 20 s
  do-up      apart -> tight by spanner takes 20 s
  lets out

kind tapered-pipe-thread "tapered pipe thread" is connector
  states     tight, apart
  undo       tight -> apart by pipe-wrench or spanner takes 30 s
  do-up      apart -> tight by pipe-wrench or spanner takes 40 s
  lets out
  notice: A joint that is turned back leaks. Turn it on until it points right.
  note: Old sealant is brushed out of both threads before new is laid.

kind flange-joint "flange joint" is connector
  states     together, apart
  spread     together -> apart by hand or flange-spreader takes 30 s
  close-up   apart -> together by hand takes 30 s
  clamped
  lets out

kind soldered-pipe "soldered pipe" is connector
  states     soldered, apart
  cut        soldered -> apart by pipe-cutter takes 60 s
  solder     apart -> soldered by blowlamp takes 180 s waits 300 s
  lets out
  one use
  warning: The flame can set a wall alight. Keep a fire extinguisher ready.

kind solvent-welded-pipe "solvent-welded pipe" is connector
  states     welded, cut
  cut        welded -> cut by saw takes 60 s
  weld       cut -> welded by hand takes 60 s waits 24 h
  lets out
  one use
  caution: The solvent's vapour numbs. Open a window.

# Licensed persons only

kind gas-union "gas union" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 30 s
  do-up      apart -> tight by spanner takes 30 s
  asks for test
  licensed   "gas fitter"

kind gas-hose-coupling "coupling of a gas hose" is connector
  states     tight, apart
  undo       tight -> apart by hand or spanner takes 15 s
  do-up      apart -> tight by hand or spanner takes 15 s
  asks for test
  licensed   "gas fitter"
  note: The joint is proved with leak spray after every do-up.

kind refrigerant-joint "refrigerant joint" is connector
  states     tight, apart
  undo       tight -> apart by flare-spanner or spanner takes 30 s
  do-up      apart -> tight by flare-spanner or spanner takes 30 s
  lets out
  asks for test
  licensed   "refrigeration technician"

kind brazed-joint "brazed joint" is connector
  states     brazed, apart
  unbraze    brazed -> apart by brazing-torch takes 180 s
  braze      apart -> brazed by brazing-torch takes 300 s waits 600 s
  lets out
  one use
  asks for test
  licensed   "refrigeration technician"

kind hydraulic-coupling "hydraulic coupling" is connector
  states     coupled, apart
  uncouple   coupled -> apart by hand takes 8 s
  couple     apart -> coupled by hand takes 8 s
  notice: Dirt wears valves and pumps. Cap both halves at once.
