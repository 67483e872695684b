# Fasteners: what is undone and done up again, with or without a thread.
# Sources: usual times from Yang and El-Haik (2003), table 10.5 (8.0 to 11.3 s a screw). Whether
# a pin, ring or nut is used again: ISO 1234 split pins are renewed on each use (maintenance
# practice); ISO 2320 tries locking nuts over five removals; ISO 8752 spring pins may be used
# again while they grip. Sources differ on retaining rings: one use here, and an item may say
# `used again`.
# Example: fastener lid-screws "lid screw" 4 x screw M2 x 6, hexalobular 6, countersunk

# With a thread

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

kind set-screw "set screw" is fastener
  states     tight, loose, out
  slacken    tight -> loose by driver takes 8 s
  tighten    loose -> tight by driver takes 8 s
  undo       tight, loose -> out by driver takes 10 s
  start      out -> loose by driver takes 6 s
  fasten     out -> tight by driver takes 10 s

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

kind ring-nut "ring nut" is fastener
  states     tight, off
  undo       tight -> off by hand or pin-spanner takes 15 s
  fasten     off -> tight by hand or pin-spanner takes 15 s

kind cone-nut "bearing cone" is fastener
  states     tight, loose, off
  slacken    tight -> loose by cone-spanner takes 8 s
  tighten    loose -> tight by cone-spanner takes 20 s
  undo       tight, loose -> off by cone-spanner takes 15 s
  start      off -> loose by hand takes 8 s
  fasten     off -> tight by cone-spanner takes 30 s
  binds in   tight, loose
  note: The wheel turns freely and has no play when the cone is set.

kind stud "stud" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 10 s

kind threaded-rod "threaded rod" is fastener
  states     tight, out
  undo       tight -> out by hand or stud-extractor takes 20 s
  fasten     out -> tight by hand or stud-extractor takes 20 s

kind drain-plug "drain plug" is fastener
  states     tight, out
  undo       tight -> out by driver takes 10 s
  fasten     out -> tight by driver takes 15 s
  asks for torque

kind hose-clamp "hose clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose

# Rings, pins and keys

kind circlip "circlip" is fastener
  states     in, out
  spread     in -> out by circlip-pliers takes 15 s
  fit        out -> in by circlip-pliers takes 20 s
  one use
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind grip-ring "slide-on ring" is fastener
  states     in, out
  push-off   in -> out by hand or slotted-driver takes 10 s
  push-on    out -> in by hand or pliers takes 10 s
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind split-pin "split pin" is fastener
  states     in, out
  draw       in -> out by pliers takes 20 s
  insert     out -> in by pliers takes 20 s
  one use
  caution: The cut ends are sharp. Bend them flat against the part.

kind spring-pin "spring pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 20 s
  drive-in   out -> in by pin-punch takes 20 s
  note: The slit of the pin points away from the load.

kind dowel "dowel" is fastener
  states     in, out
  draw       in -> out by hand or pliers takes 10 s
  insert     out -> in by hand or mallet takes 10 s

kind shaft-key "key" is fastener
  states     in, out
  draw       in -> out by hand or pliers takes 10 s
  insert     out -> in by hand or mallet takes 10 s

kind wedge "wedge" is fastener
  states     in, out
  drive-out  in -> out by mallet takes 15 s
  drive-in   out -> in by mallet takes 15 s

kind rivet "blind rivet" is fastener
  states     set, out
  drill-out  set -> out by drill takes 60 s
  rivet      out -> set by rivet-pliers takes 20 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

# Clips and ties

kind clip "clip" is fastener
  states     shut, open
  unclip     shut -> open by hand or pick takes 4 s
  clip       open -> shut by hand takes 3 s
  present in shut, open

kind snap-hook "snap hook" is fastener
  states     shut, open
  unsnap     shut -> open by hand or pick takes 4 s
  snap       open -> shut by hand takes 3 s
  present in shut, open
  notice: A bent hook turns white and breaks. Press each hook only as far as it frees.

kind latch "latch" is fastener
  states     shut, open
  unlatch    shut -> open by hand takes 3 s
  latch      open -> shut by hand takes 3 s
  present in shut, open

kind cable-tie "cable tie" is fastener
  states     tight, cut
  cut        tight -> cut by side-cutters takes 6 s
  tie        cut -> tight by hand takes 10 s
  one use
  notice: A nick in the insulation fails later. Cut at the head of the tie, away from the wires.

kind strain-clamp "strain-relief clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose
  warning: A loose mains cord can pull out and give a shock. The clamp grips the sheath, not
    the cores.
