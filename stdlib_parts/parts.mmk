# Parts: what is taken out, opened, drawn or moved aside, and the verbs that do it.
# Sources: usual times from Yang and El-Haik, Design for Six Sigma (2003), table 10.5 (2.4 s to
# lift a part away, 1.4 s to set it aside); the rest is common practice, no source.
# Example: part lid "display lid" kind hinged-cover

kind plain-part "part" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s

# Covers and things that move

kind hinged-cover "hinged cover" is part
  states     shut, open, off
  open       shut -> open by hand takes 4 s
  shut       open -> shut by hand takes 4 s
  lift-off   open -> off by hand takes 4 s
  hang       off -> open by hand takes 6 s

kind snap-cover "snap-on cover" is part
  states     in, out
  remove     in -> out by hand or pick takes 6 s
  fit        out -> in by hand takes 4 s
  notice: A bent hook turns white and breaks. Press each hook only as far as it frees.

kind sliding-drawer "drawer" is part
  states     in, drawn, out
  draw       in -> drawn by hand takes 4 s
  push-in    drawn -> in by hand takes 4 s
  lift-out   drawn -> out by hand takes 4 s
  set-in     out -> drawn by hand takes 6 s

kind swing-bracket "swinging bracket" is part
  states     in, aside, out
  swing-out  in -> aside by hand takes 4 s
  swing-in   aside -> in by hand takes 4 s
  remove     aside -> out by hand takes 4 s
  fit        out -> aside by hand takes 6 s

kind retractable-part "retractable part" is part
  states     extended, drawn-back, off
  draw-back  extended -> drawn-back by hand takes 4 s
  run-out    drawn-back -> extended by hand takes 4 s
  remove     drawn-back -> off by hand takes 4 s
  fit        off -> drawn-back by hand takes 6 s

kind panel "panel" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s

# Electrical parts

kind circuit-board "circuit board" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  waste      electronic-waste
  notice: Static charge destroys circuits without a sign. Wear an earthed wrist strap. Hold
    the board by its edges.

kind display-module "display module" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  waste      electronic-waste
  caution: Broken glass cuts skin. Keep the glass flat. Press on its frame only.

kind switch "switch" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  waste      electronic-waste

kind lead "lead" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 8 s
  notice: A sharp bend breaks the conductor inside. Lay the lead back along its old way.

kind cable "cable" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  notice: A sharp bend breaks the conductor inside. Lay the cable back along its old way.

kind fuse-link "fuse link" is part
  states     in, out
  remove     in -> out by hand or fuse-puller takes 4 s
  fit        out -> in by hand or fuse-puller takes 4 s
  warning: A larger fuse lets a fault start a fire. Use only the rating that is printed beside
    the holder.

kind lamp "lamp" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  caution: A lamp that was alight burns skin. Let it cool before you touch it.

# Mechanical parts

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

kind shaft "shaft" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s

kind gear "gear" is part
  states     in, out
  remove     in -> out by hand or gear-puller takes 10 s
  fit        out -> in by hand takes 10 s

kind impeller "impeller" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s

kind coupling "coupling" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s

kind drive-belt "drive belt" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s
  caution: Fingers are crushed between belt and pulley. Turn the pulley by its rim, never by
    the belt.

kind filter "filter" is part
  states     in, out
  also       ready, cleaned
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  clean      ready -> cleaned by hand or brush takes 60 s
  may end in ready, cleaned

kind hose "hose" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s

kind blade "blade" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  warning: The edge can cut to the bone. Wear cut-resistant gloves.

# Springs. A spring under load is dangerous until it is held by a tool or has run free.

kind compression-spring "compression spring" is part
  states     in, out
  also       loaded, held, free
  compress   loaded -> held by spring-compressor takes 60 s
  ease       held -> loaded by spring-compressor takes 60 s
  let-down   held -> free by spring-compressor takes 60 s
  load       free -> held by spring-compressor takes 60 s
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  hazard     spring-force until held, free on touch

kind torsion-spring "torsion spring" is part
  states     in, out
  also       loaded, held, free
  pin        loaded -> held by locking-pin takes 30 s
  unpin      held -> loaded by locking-pin takes 30 s
  let-down   held -> free by hand or winding-bar takes 30 s
  wind-up    free -> held by hand or winding-bar takes 30 s
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  hazard     spring-force until held, free on touch

kind small-spring "small spring" is part
  states     in, out
  remove     in -> out by hand or tweezers takes 4 s
  fit        out -> in by hand or tweezers takes 10 s
  caution: A small spring can fly into an eye. Wear eye protection. Cover the spring with a
    finger.
