# Mechanical parts: what turns, runs, pumps, filters and cuts.
# Sources: the rest of a bearing's seat, dust of brakes and belts: common practice, no source.
# Example: part spindle-bearing "spindle bearing" kind bearing

kind shim "shim" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  note: Shims go back in the same order and with the same face outward.

kind bearing "bearing" is part
  states     in, out
  also       greased, cleaned
  remove     in -> out by hand or bearing-puller takes 20 s
  fit        out -> in by hand or bearing-press takes 30 s
  clean      greased -> cleaned by hand or brush takes 60 s
  grease     cleaned -> greased by hand or grease-gun takes 30 s
  notice: Force through the balls dents the races. Press only on the ring that is tight.

kind plain-bush "plain bearing bush" is part
  states     in, out
  press-out  in -> out by press or drift takes 60 s
  press-in   out -> in by press takes 60 s
  note: Its oil hole lines up with the hole in the housing.

kind loose-balls "loose bearing balls" is part
  states     in, out
  take-out   in -> out by hand or tweezers takes 30 s
  set-in     out -> in by hand or tweezers takes 60 s
  one use
  note: They are counted as they come out, and set in grease.

kind shaft "shaft" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  moves
  passes on

kind gear "gear" is part
  states     in, out
  remove     in -> out by hand or gear-puller takes 10 s
  fit        out -> in by hand takes 10 s
  moves
  passes on

kind worm-gear "worm" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s
  moves
  passes on

kind pulley "pulley" is part
  states     in, out
  remove     in -> out by hand or gear-puller takes 10 s
  fit        out -> in by hand takes 10 s
  moves
  passes on

kind coupling "coupling" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  moves
  passes on

kind coupling-spider "coupling spider" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s

kind drive-belt "drive belt" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s
  moves
  passes on
  caution: Fingers are crushed between belt and pulley. Turn the pulley by its rim, never by
    the belt.

kind toothed-belt "toothed belt" is part
  states     in, out
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 30 s
  moves
  passes on
  notice: Where it keeps time, one tooth out ruins the machine. Turn it twice by hand before it runs.
  note: It goes back with its arrow in the same direction.

kind belt-tensioner "belt tensioner" is part
  states     in, out
  also       tight, slack
  slacken    tight -> slack by spanner or driver takes 15 s
  tighten    slack -> tight by spanner or driver takes 20 s
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  hazard     crushed-fingers until slack on touch

kind clutch-plate "clutch or brake plate" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  passes on
  notice: Oil on the lining slips. Hold the plate by its edge.

# Pumps, engines

kind impeller "impeller" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  moves

kind pump "pump" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 12 s
  passes on

kind valve "valve" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  passes on

kind non-return-valve "non-return valve" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  passes on
  note: Its arrow points with the flow.

kind safety-valve "safety valve" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  passes on
  protects
  warning: A vessel without its safety valve can burst and kill. Fit one that opens at the same
    pressure.

kind diaphragm "diaphragm" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 12 s
  used again if "it is soft and has no crack or fold"

kind piston "piston" is part
  states     in, out
  draw       in -> out by hand takes 15 s
  insert     out -> in by hand or ring-clamp takes 30 s
  note: The mark on its crown shows which way it faces.

kind sparking-plug "sparking plug" is part
  states     in, out
  unscrew    in -> out by plug-wrench takes 15 s
  screw-in   out -> in by plug-wrench takes 20 s

kind exhaust "exhaust" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 3600 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 30 s
  fit        out -> in by hand takes 45 s
  may end in cooled
  hazard     hot-surface until cooled on touch

kind hermetic-compressor "sealed compressor" is part
  states     in, out
  remove     in -> out by hand takes 120 s
  fit        out -> in by hand takes 180 s
  waste      refrigerant-waste
  licensed   "refrigeration technician"

kind radiator "radiator" is part
  states     in, out
  remove     in -> out by hand takes 20 s
  fit        out -> in by hand takes 25 s
  notice: Its fins bend at a touch. Lay card over both faces.

kind tank "tank" is part
  states     in, out
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 15 s

# Its gas stays in it when the oil is let off; the pressure of the oil is an energy of its own.
kind gas-charged-vessel "vessel with a gas charge" is part
  states     in, out
  remove     in -> out by hand takes 20 s
  fit        out -> in by hand takes 20 s
  danger: Its gas stays under pressure when all else is let off, and a vessel that bursts kills.
    Leave its gas valve shut, and never drill, weld or open it.

kind hose "hose" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  passes on

# Filters and dust

kind filter "filter" is part
  states     in, out
  also       ready, cleaned
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  clean      ready -> cleaned by hand or brush takes 60 s
  passes on
  may end in ready, cleaned

kind spin-on-filter "spin-on filter" is part
  states     in, out
  unscrew    in -> out by filter-wrench takes 30 s
  screw-on   out -> in by hand takes 30 s
  one use
  waste      oil-filter-waste
  note: Its ring is oiled. From the first touch it is turned three quarters of a turn by hand.

kind dust-bag "dust bag" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  one use

kind dusty-inside "housing full of dust" is part
  states     in, out
  also       dusty, vacuumed
  vacuum     dusty -> vacuumed by vacuum-cleaner takes 120 s
  settle     vacuumed -> dusty
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 8 s
  may end in vacuumed
  hazard     fine-dust until vacuumed on touch

# What cuts

kind blade "blade" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  moves
  warning: The edge can cut to the bone. Wear cut-resistant gloves.

kind guarded-blade "blade with a sheath" is part
  states     in, out
  also       bare, sheathed
  sheathe    bare -> sheathed by blade-sheath takes 10 s
  unsheathe  sheathed -> bare by hand takes 6 s
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  moves
  may end in bare, sheathed
  hazard     sharp-edge until sheathed on touch

# The pressure in it is an energy of its own.
kind cylinder "cylinder" is part
  states     in, out
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 15 s
  passes on
