# Nuts, washers and what keeps them from turning.
# Sources: ISO 2320 and ISO 7040 try locking nuts over five removals (a nylon insert bears -50 to
# 120 degC, an all-metal nut to 150 degC); split pins and lock wire are new at each use (NAVEDTRA
# 14014 and maintenance manuals); tab washers are bent once (common practice, no source).
# Example: fastener axle-nut kind nylon-insert-nut M8, hexagon-head 13

kind nut "nut" is fastener
  states     tight, loose, off
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 8 s
  undo       tight, loose -> off by driver takes 15 s
  start      off -> loose by hand takes 8 s
  fasten     off -> tight by driver takes 15 s
  binds in   tight, loose

kind locking-nut "locking nut" is fastener
  states     tight, off
  undo       tight -> off by driver takes 20 s
  fasten     off -> tight by driver takes 20 s
  asks for torque
  note: A nut that runs down the thread by hand no longer locks. Renew such a nut.

kind nylon-insert-nut "nut with a nylon insert" is fastener
  states     tight, off
  undo       tight -> off by driver takes 20 s
  fasten     off -> tight by driver takes 20 s
  asks for torque
  good for   5 times
  used again if "it cannot be run down the thread by hand"
  notice: Heat above 120 degC ruins the insert. Renew a nut that was heated.

kind all-metal-lock-nut "all-metal locking nut" is fastener
  states     tight, off
  undo       tight -> off by driver takes 20 s
  fasten     off -> tight by driver takes 20 s
  asks for torque
  good for   5 times
  used again if "it cannot be run down the thread by hand"

kind castle-nut "castle nut" is fastener
  states     tight, loose, off
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 12 s
  undo       tight, loose -> off by driver takes 15 s
  start      off -> loose by hand takes 8 s
  fasten     off -> tight by driver takes 20 s
  binds in   tight, loose
  asks for torque
  note: To line a slot up with the hole, the nut is tightened further, never slackened.

kind counter-nut "counter nut" is fastener
  states     tight, loose, off
  slacken    tight -> loose by driver takes 8 s
  tighten    loose -> tight by driver takes 10 s
  undo       loose -> off by driver takes 15 s
  start      off -> loose by hand takes 8 s
  binds in   tight, loose
  note: The adjusted part is held still while the counter nut is tightened against it.

kind flange-nut "flange nut" is fastener
  states     tight, off
  undo       tight -> off by driver takes 15 s
  fasten     off -> tight by driver takes 15 s

kind domed-nut "domed nut" is fastener
  states     tight, off
  undo       tight -> off by driver takes 12 s
  fasten     off -> tight by driver takes 12 s
  notice: A long bolt bursts the dome before it clamps. Check the length of the thread.

kind wing-nut "wing nut" is fastener
  states     tight, off
  undo       tight -> off by hand takes 8 s
  fasten     off -> tight by hand takes 8 s

kind cage-nut "cage nut" is fastener
  states     in, out
  squeeze    in -> out by pliers or slotted-driver takes 15 s
  insert     out -> in by pliers or slotted-driver takes 15 s
  caution: The cage is sharp and can spring off. Wear gloves.

kind sheet-nut "sheet-metal nut" is fastener
  states     on, off
  pull-off   on -> off by pliers takes 8 s
  push-on    off -> on by hand takes 6 s

kind wheel-nut "wheel nut" is fastener
  states     tight, loose, off
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 10 s
  undo       loose -> off by driver takes 12 s
  start      off -> loose by hand takes 8 s
  binds in   tight, loose
  asks for torque
  warning: A wheel that works loose can kill. Tighten the nuts again after the first run.

kind ring-nut "ring nut" is fastener
  states     tight, off
  undo       tight -> off by hand or pin-spanner takes 15 s
  fasten     off -> tight by hand or pin-spanner takes 15 s

kind shaft-nut "slotted shaft nut" is fastener
  states     tight, off
  undo       tight -> off by hook-spanner takes 20 s
  fasten     off -> tight by hook-spanner takes 25 s
  asks for torque

kind cone-nut "bearing cone" is fastener
  states     tight, loose, off
  slacken    tight -> loose by cone-spanner takes 8 s
  tighten    loose -> tight by cone-spanner takes 20 s
  undo       tight, loose -> off by cone-spanner takes 15 s
  start      off -> loose by hand takes 8 s
  fasten     off -> tight by cone-spanner takes 30 s
  binds in   tight, loose
  note: The wheel turns freely and has no play when the cone is set.

kind union-nut "union nut" is fastener
  states     tight, off
  undo       tight -> off by driver takes 15 s
  fasten     off -> tight by driver takes 15 s

# Washers that lock, and wire

kind tab-washer "tab washer" is fastener
  states     bent, straight, off
  straighten bent -> straight by chisel or flat-pliers takes 20 s
  bend       straight -> bent by chisel or flat-pliers takes 20 s
  remove     straight -> off by hand takes 4 s
  fit        off -> straight by hand takes 6 s
  present in bent, straight
  one use
  notice: A tab that is bent twice breaks off. Bend only an unused tab.

kind wedge-lock-washer "pair of wedge-locking washers" is fastener
  states     on, off
  remove     on -> off by hand takes 4 s
  fit        off -> on by hand takes 6 s
  used again if "the wedges are sharp and the two halves rock freely"
  note: The two washers lie with their wedge faces together.

kind lock-wire "lock wire" is fastener
  states     twisted, cut
  cut        twisted -> cut by side-cutters takes 10 s
  twist      cut -> twisted by wire-twisting-pliers or pliers takes 60 s
  one use
  caution: Cut wire ends pierce skin. Turn each end back on itself.
  note: The wire pulls each head in the direction that tightens it.

# Washers that only lie below a head. They hold nothing, so they are parts.

kind plain-washer "plain washer" is part
  states     in, out
  remove     in -> out by hand takes 3 s
  fit        out -> in by hand takes 4 s

kind spring-washer "spring washer" is part
  states     in, out
  remove     in -> out by hand takes 3 s
  fit        out -> in by hand takes 4 s
  used again if "its ends still stand apart by their own thickness"

kind toothed-washer "toothed washer" is part
  states     in, out
  remove     in -> out by hand takes 3 s
  fit        out -> in by hand takes 4 s
  used again if "its teeth are sharp"
  note: An earth joint needs its teeth to cut through paint to bare metal.

kind disc-spring "disc spring" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  note: How the discs are stacked sets the force. Their order and faces are written down.

kind wave-washer "wave washer" is part
  states     in, out
  remove     in -> out by hand takes 3 s
  fit        out -> in by hand takes 5 s

kind thrust-washer "thrust washer" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  note: The face with the oil grooves goes towards the part that turns.

kind insulating-bush "insulating bush" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  warning: Without the bush the case can become live. Fit it before the screw goes in.
