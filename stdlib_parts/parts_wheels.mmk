# Wheels, brakes, chains and what else a cycle workshop knows.
# Sources: torque on a wheel's bolts and its second tightening: makers' practice; dust of brakes:
# common practice, no source; the direction of a pedal's thread ISO 6696 (from memory): left-hand
# on the left.
# Example: part rear-wheel "rear wheel" kind wheel

kind wheel "wheel" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s

kind tyre "tyre" is part
  states     in, out
  lever-off  in -> out by tyre-lever or hand takes 60 s
  fit        out -> in by hand takes 90 s
  notice: A lever can pinch the tube. Put no lever in deeper than it needs.
  note: Its arrow points with the way that it rolls.

kind inner-tube "inner tube" is part
  states     in, out
  draw       in -> out by hand takes 30 s
  lay-in     out -> in by hand takes 60 s

kind spoke "spoke" is part
  states     in, out
  also       tight, slack
  slacken    tight -> slack by nipple-key takes 6 s
  tighten    slack -> tight by nipple-key takes 15 s
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 20 s
  needs      slack to remove

kind chain "chain" is part
  states     joined, open, off
  open       joined -> open by chain-tool or link-pliers takes 20 s
  join       open -> joined by chain-tool or link-pliers takes 30 s
  lift-off   open -> off by hand takes 8 s
  lay-on     off -> open by hand takes 20 s
  moves
  passes on
  notice: A joining pin that is pushed out is never pushed back. Use a new pin or link.

# A loop without a link that opens: it is slackened, and lifted off what it runs on.
kind endless-chain "endless chain" is part
  states     on, off
  lift-off   on -> off by hand takes 8 s
  lay-on     off -> on by hand takes 20 s
  moves
  passes on

kind saw-chain "saw chain" is part
  states     on, off
  lift-off   on -> off by hand takes 10 s
  lay-on     off -> on by hand takes 25 s
  moves
  passes on
  warning: The teeth cut, at rest too. Wear cut-resistant gloves.

kind sprocket "sprocket" is part
  states     in, out
  remove     in -> out by hand or sprocket-puller takes 10 s
  fit        out -> in by hand takes 12 s
  moves
  passes on

kind crank "crank" is part
  states     in, out
  pull-off   in -> out by crank-puller takes 30 s
  push-on    out -> in by hand takes 20 s
  notice: A puller that is screwed in short tears its thread. Screw it in as far as it goes.

kind pedal "pedal" is part
  states     in, out
  unscrew    in -> out by spanner or hexagon-key takes 15 s
  screw-in   out -> in by spanner or hexagon-key takes 15 s
  note: The left pedal has a left-hand thread.

kind derailleur "derailleur" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 12 s

kind control-cable "control cable" is part
  states     in, out
  draw       in -> out by hand takes 15 s
  thread-in  out -> in by hand takes 30 s
  notice: A frayed end never goes back in. Cap it before you draw it.

kind brake-pad "brake pad" is part
  states     in, out
  remove     in -> out by hand or pliers takes 10 s
  fit        out -> in by hand takes 12 s
  warning: Grease on a pad takes the brake away and can kill. Hold it by its back.
  note: Both pads of a brake are renewed together.

kind brake-caliper "brake caliper" is part
  states     on, aside, off
  swing-out  on -> aside by hand takes 10 s
  swing-in   aside -> on by hand takes 15 s
  lift-off   aside -> off by hand takes 5 s
  remove     on -> off by hand takes 15 s
  fit        off -> on by hand takes 20 s
  moves
  notice: A caliper that hangs by its hose strains it. Hang it from a wire, or lay it on something.

kind brake-disc "brake disc" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 900 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 12 s
  may end in cooled
  hazard     hot-surface until cooled on touch

kind dusty-brake "brake full of dust" is part
  states     in, out
  also       dusty, wiped
  wet-wipe   dusty -> wiped by hand takes 60 s
  ride       wiped -> dusty
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 12 s
  may end in wiped
  hazard     fine-dust until wiped on touch

kind saddle-post "saddle post" is part
  states     in, out
  draw       in -> out by hand takes 10 s
  insert     out -> in by hand takes 12 s
  warning: A post pulled out past its mark breaks. Keep the mark inside the frame.

kind headset-race "bearing race in a tube" is part
  states     in, out
  drive-out  in -> out by race-drift takes 30 s
  press-in   out -> in by race-press takes 45 s
