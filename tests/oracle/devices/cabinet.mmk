# A device for the comparison alone: it has what the samples seldom have. Groups of parts, verbs
# with two from-states, glue in two stages, ways in with alternatives, a carrier on a carrier on a
# door, sources through two connectors, members by number, needs both ways.

kind slide-clip "sliding clip" is fastener
  states     tight, loose, out
  slacken    tight -> loose by hand
  pull       tight, loose -> out by hand
  push       out -> loose by hand
  press      loose, out -> tight by hand
  binds in   tight, loose

kind tipping-tray "tipping tray" is part
  states     in, tipped, out
  tip        in -> tipped by hand
  right      tipped -> in by hand
  lift       in, tipped -> out by hand
  set        out -> in by hand
  blocks in  in, tipped

kind filter-pad "filter pad" is part
  states     in, out
  also       dry, oiled
  oil        dry -> oiled by hand
  wash       oiled -> dry by hand
  take       in -> out by hand
  put        out -> in by hand
  needs      oiled to take
  may end in oiled

device cabinet "Practice cabinet"
  variant    plain, full

part frame "frame"
part door "door" in frame kind hinged-cover
  covers     tray, pads, inner-plug, side-clips
part panel "panel" in door kind panel
  covers     board-screws
part board "board" in panel kind circuit-board
part chip "chip" in board
part heat-sink "heat sink" in board only full
part tray "tray" in frame kind tipping-tray
  blocks     core
part pads "pad" in tray 3 x filter-pad
part hatch "hatch" in frame kind snap-cover
part core "core" in frame
  behind     door or hatch
part lamp "lamp" in core kind panel
fluid oil "oil" in core 0.5 l kind drained-oil

kind drained-oil "oil" is fluid
  states     full, empty
  drain      full -> empty by hand
  fill       empty -> full by hand
  one use

fastener panel-clips "panel clip" 4 x slide-clip
  holds      panel to door
fastener board-screws "board screw" 2 x screw M3 x 6, hexalobular 10, pan
  holds      board to panel
fastener side-clips "side clip" 2 x slide-clip
  holds      core to frame
  under      panel-clips 2
  needs      hatch out to slacken
bond chip-glue "chip glue" kind heat-softened-glue
  joins      chip to board
bond sink-paste "paste" kind thermal-paste only full
  joins      heat-sink to chip
bond hatch-seal "hatch seal" kind seal-tape
  joins      hatch to frame
connector inner-plug "inner plug" kind friction-plug
  joins      board to frame
connector lamp-plug "lamp plug" kind friction-plug
  joins      lamp to core
  behind     hatch
energy mains "mains" kind mains-cord
  feeds      board, lamp, chip through inner-plug
energy stand-by "stand-by supply" kind external-supply
  feeds      core
