# Clips, clamps, ties and latches.
# Sources: common practice, no source. How often a plastic hook bears bending: 10 to 50 times by
# its makers (from memory), so it is looked at and not counted; hose clamps DIN 3017 (from
# memory).
# Example: fastener hose-clip "clamp" kind worm-clamp 20..32 mm, hexagon-head 7

# Clips and latches

kind clip "clip" is fastener
  states     shut, open
  unclip     shut -> open by hand or pick takes 4 s
  clip       open -> shut by hand takes 3 s
  present in shut, open

kind snap-hook "snap hook" is fastener
  states     shut, open
  unsnap     shut -> open by hand or pick or spudger takes 4 s
  snap       open -> shut by hand takes 3 s
  present in shut, open
  notice: A bent hook turns white and breaks. Press each hook only as far as it frees.

kind ring-snap "snap-in ring of hooks" is fastener
  states     shut, open
  unsnap     shut -> open by pick or spudger takes 15 s
  snap       open -> shut by hand takes 4 s
  present in shut, open
  used again if "no hook is white or cracked"
  notice: A hook that is bent too far breaks. Free the hooks one after another.

kind latch "latch" is fastener
  states     shut, open
  unlatch    shut -> open by hand takes 3 s
  latch      open -> shut by hand takes 3 s
  present in shut, open

kind toggle-latch "over-centre latch" is fastener
  states     shut, open
  unlatch    shut -> open by hand takes 4 s
  latch      open -> shut by hand takes 4 s
  present in shut, open
  caution: The lever snaps over and crushes fingers. Press it with the flat hand.

kind magnet-catch "magnetic catch" is fastener
  states     shut, open
  pull-off   shut -> open by hand takes 3 s
  press      open -> shut by hand takes 3 s
  present in shut, open

kind retaining-clip "retaining clip of wire or sheet" is fastener
  states     on, off
  pull-off   on -> off by hand or pick takes 6 s
  push-on    off -> on by hand or pliers takes 6 s
  used again if "it springs back"
  caution: The clip can fly into an eye. Wear eye protection.

kind panel-clip "panel clip" is fastener
  states     in, out
  pry-out    in -> out by clip-lever or prying-lever takes 8 s
  push-in    out -> in by hand takes 3 s
  used again if "its barbs are whole"

kind edge-clip "edge clip" is fastener
  states     on, off
  pull-off   on -> off by hand takes 6 s
  push-on    off -> on by hand takes 4 s

kind heat-stake "heat-formed plastic stake" is fastener
  states     formed, cut
  cut        formed -> cut by knife takes 30 s
  form       cut -> formed by soldering-iron takes 60 s waits 60 s
  caution: Molten plastic burns skin. Do not touch the stake before it is hard.

kind bent-tab "bent metal tab" is fastener
  states     bent, straight
  straighten bent -> straight by pliers takes 8 s
  bend       straight -> bent by pliers takes 8 s
  present in bent, straight
  good for   2 times
  notice: A tab that is bent often breaks off. Twist it no further than it needs.

# Clamps for hoses and pipes

kind hose-clamp "hose clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose

kind worm-clamp "worm-drive hose clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose
  used again if "the worm turns freely and the band is whole"
  note: The clamp goes back into its old mark on the hose.

kind spring-clamp "spring hose clamp" is fastener
  states     tight, loose
  squeeze    tight -> loose by hose-clamp-pliers or pliers takes 8 s
  release    loose -> tight by hose-clamp-pliers or pliers takes 8 s
  present in tight, loose
  caution: The clamp can slip from the pliers and fly off. Wear eye protection.

kind ear-clamp "ear clamp" is fastener
  states     crimped, cut
  cut        crimped -> cut by side-cutters takes 15 s
  crimp      cut -> crimped by pincers takes 15 s
  one use
  notice: A nick in the hose leaks. Cut the ear, never the band.

kind bolt-clamp "T-bolt clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 12 s
  tighten    loose -> tight by driver takes 15 s
  present in tight, loose
  asks for torque

kind v-clamp "V-band clamp" is fastener
  states     tight, loose, off
  slacken    tight -> loose by driver takes 15 s
  tighten    loose -> tight by driver takes 20 s
  take-off   loose -> off by hand takes 6 s
  put-on     off -> loose by hand takes 10 s
  present in tight, loose
  asks for torque

kind pipe-clip "pipe clip" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 8 s
  tighten    loose -> tight by driver takes 8 s
  present in tight, loose

kind strain-clamp "strain-relief clamp" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose
  warning: A loose mains cord can pull out and give a shock. The clamp grips the sheath, not
    the cores.

kind cable-gland "cable gland" is fastener
  states     tight, loose
  slacken    tight -> loose by driver takes 10 s
  tighten    loose -> tight by driver takes 10 s
  present in tight, loose
  note: The gland upholds the enclosure's rating only on the cable that fills it.

# Ties and straps

kind cable-tie "cable tie" is fastener
  states     tight, cut
  cut        tight -> cut by side-cutters takes 6 s
  tie        cut -> tight by hand takes 10 s
  one use
  notice: A nick in the insulation fails later. Cut at the head of the tie, away from the wires.

kind releasable-tie "releasable cable tie" is fastener
  states     tight, open
  release    tight -> open by hand or pick takes 6 s
  tie        open -> tight by hand takes 8 s

kind cable-clip "cable clip" is fastener
  states     shut, open
  unclip     shut -> open by hand takes 3 s
  clip       open -> shut by hand takes 3 s
  present in shut, open

kind strap "strap" is fastener
  states     tight, open
  release    tight -> open by hand takes 6 s
  tighten    open -> tight by hand takes 10 s
  present in tight, open

kind seal-wire "seal with wire" is fastener
  states     sealed, cut
  cut        sealed -> cut by side-cutters takes 6 s
  seal       cut -> sealed by sealing-pliers takes 20 s
  one use
  note: Only the person whose mark the seal bears may renew it.

kind quick-release "quick-release axle" is fastener
  states     tight, open, out
  release    tight -> open by hand takes 4 s
  tighten    open -> tight by hand takes 8 s
  draw       open -> out by hand takes 6 s
  insert     out -> open by hand takes 8 s
  binds in   tight, open
  warning: A wheel that drops out can kill. Close the lever so hard that it marks the palm.
