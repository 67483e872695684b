# Fasteners with a thread that a driver turns: screws, bolts, studs.
# Sources: usual times from Yang and El-Haik (2003), table 10.5 (8.0 to 11.3 s a screw); locking
# patches are tried over five removals (DIN 267-28, from memory); a bolt tightened beyond yield is
# renewed (engine makers' practice); the rest is common practice, no source.
# Example: fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk

# Screws

kind screw "screw" is fastener
  states     tight, out
  undo       tight -> out by driver takes 8 s
  fasten     out -> tight by driver takes 8 s

kind self-tapping-screw "self-tapping screw" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 10 s
  notice: A second thread strips the hole. Turn the screw backwards until it drops into the
    old thread.

kind thread-forming-screw "thread-forming screw" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 10 s
  used again if "the old thread in the hole still grips"
  notice: A second thread strips the boss. Turn the screw backwards until it drops into the old
    thread.

kind wood-screw "wood screw" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 10 s

kind captive-screw "captive screw" is fastener
  states     tight, loose
  undo       tight -> loose by driver takes 8 s
  fasten     loose -> tight by driver takes 8 s
  present in tight, loose

kind keyhole-screw "keyhole screw" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 4 s
  tighten    loose -> tight by driver takes 4 s
  present in tight, loose

kind thumb-screw "thumb screw" is fastener
  states     tight, out
  undo       tight -> out by hand takes 8 s
  fasten     out -> tight by hand takes 8 s

kind quarter-turn-screw "quarter-turn screw" is fastener
  states     locked, free
  undo       locked -> free by driver takes 4 s
  fasten     free -> locked by driver takes 4 s
  present in locked, free
  note: It drops home by its spring and clicks when it locks.

kind shoulder-screw "shoulder screw" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 12 s
  notice: A bent shoulder binds the pivot. Start the thread by hand.

# A screw whose thread carries a dry or plastic locking patch.
kind patch-screw "screw with a locking patch" is fastener
  states     tight, out
  undo       tight -> out by driver takes 12 s
  fasten     out -> tight by driver takes 12 s
  good for   5 times
  used again if "the patch still drags before the head seats"

kind tamper-screw "shear-head screw" is fastener
  states     tight, out
  drill-out  tight -> out by drill or screw-extractor takes 120 s
  fasten     out -> tight by driver takes 15 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

# Set screws and screws that adjust

kind set-screw "set screw" is fastener
  states     tight, loose, out
  slacken    tight -> loose by driver takes 8 s
  tighten    loose -> tight by driver takes 8 s
  undo       tight, loose -> out by driver takes 10 s
  start      out -> loose by driver takes 6 s
  fasten     out -> tight by driver takes 10 s

kind clamping-screw "clamping screw" is fastener
  states     tight, loose, out
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 8 s
  undo       loose -> out by driver takes 8 s
  start      out -> loose by driver takes 6 s
  present in tight, loose
  asks for torque
  notice: A slit clamp cracks when it is closed on nothing. Tighten it only on its shaft.

kind adjusting-screw "adjusting screw" is fastener
  states     set, out
  undo       set -> out by driver takes 15 s
  set        out -> set by driver takes 30 s
  note: The turns from its seat are counted and written down before it comes out.

kind bleed-screw "bleed screw" is fastener
  states     shut, cracked, out
  crack      shut -> cracked by driver takes 5 s
  close      cracked -> shut by driver takes 5 s
  undo       cracked -> out by driver takes 10 s
  start      out -> cracked by hand takes 8 s
  present in shut, cracked
  notice: A bleed screw shears easily. Fit the hose over it before you turn it.

# Bolts

kind bolt "bolt" is fastener
  states     tight, loose, out
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 10 s
  undo       tight, loose -> out by driver takes 15 s
  start      out -> loose by hand takes 8 s
  fasten     out -> tight by driver takes 20 s
  binds in   tight, loose
  asks for torque

# A bolt tightened past its yield point: it has stretched, and is good for one tightening.
kind stretch-bolt "stretch bolt" is fastener
  states     tight, out
  undo       tight -> out by driver takes 15 s
  fasten     out -> tight by driver takes 30 s
  asks for torque
  one use

kind fitted-bolt "fitted bolt" is fastener
  states     tight, out
  undo       tight -> out by driver takes 30 s
  fasten     out -> tight by driver takes 40 s
  asks for torque
  note: Each fitted bolt goes back into its own hole.

kind wheel-bolt "wheel bolt" is fastener
  states     tight, loose, out
  slacken    tight -> loose by driver takes 6 s
  tighten    loose -> tight by driver takes 10 s
  undo       loose -> out by driver takes 12 s
  start      out -> loose by hand takes 8 s
  binds in   tight, loose
  asks for torque
  warning: A wheel that works loose can kill. Tighten the bolts again after the first run.

kind banjo-bolt "banjo bolt" is fastener
  states     tight, out
  undo       tight -> out by driver takes 15 s
  fasten     out -> tight by driver takes 20 s
  asks for torque
  notice: A hollow bolt shears sooner than a solid one. Keep to its own torque.

kind eye-bolt "eye bolt" is fastener
  states     tight, out
  undo       tight -> out by hand takes 10 s
  fasten     out -> tight by hand takes 10 s
  warning: An eye that is not screwed home can break and drop the load. Seat its collar on the
    face.

kind foundation-bolt "foundation bolt" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 20 s
  tighten    loose -> tight by driver takes 30 s
  present in tight, loose
  asks for torque

# Studs, posts, plugs

kind stud "stud" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 10 s

kind threaded-rod "threaded rod" is fastener
  states     tight, out
  undo       tight -> out by hand or stud-extractor takes 20 s
  fasten     out -> tight by hand or stud-extractor takes 20 s

kind threaded-post "threaded post" is fastener
  states     tight, out
  undo       tight -> out by driver takes 8 s
  fasten     out -> tight by driver takes 8 s
  notice: A post that turns with its screw tears the board. Hold the post while the screw turns.

kind drain-plug "drain plug" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 15 s
  lets out
  asks for torque

kind jack-screw "jack screw of a plug" is fastener
  states     tight, loose
  undo       tight -> loose by hand or driver takes 6 s
  fasten     loose -> tight by hand or driver takes 6 s
  present in tight, loose
