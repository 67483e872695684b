# Parts that cover, carry or are taken hold of: lids, panels, glass, knobs, feet.
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

kind sliding-cover "sliding cover" is part
  states     in, out
  slide-off  in -> out by hand takes 4 s
  slide-on   out -> in by hand takes 4 s

kind screwed-lid "screw-on lid" is part
  states     in, out
  unscrew    in -> out by hand or strap-wrench takes 8 s
  screw-on   out -> in by hand takes 8 s

kind case-back "pressed-on case back" is part
  states     in, out
  pry-off    in -> out by case-knife or pick takes 15 s
  press-on   out -> in by case-press or hand takes 15 s
  notice: A knife that slips scratches the case. Turn it in the notch. Do not push it.

kind sliding-drawer "drawer" is part
  states     in, drawn, out
  pull-out   in -> drawn by hand takes 4 s
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

kind guard "guard" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  guards
  danger: Without its guard the machine maims. Fit the guard before it runs again.

kind shielding-can "shielding can" is part
  states     in, out
  pry-off    in -> out by pick or spudger takes 15 s
  press-on   out -> in by hand takes 8 s
  notice: A bent rim presses on the parts below. Lift it little by little all round.

kind bracket "bracket" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s

kind hinge "hinge" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s

kind rubber-foot "rubber foot" is part
  states     in, out
  peel       in -> out by pick or hand takes 6 s
  press-on   out -> in by hand takes 4 s

kind knob "knob" is part
  states     in, out
  pull-off   in -> out by hand takes 4 s
  push-on    out -> in by hand takes 4 s

kind handle "handle" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s

kind key-cap "key cap" is part
  states     in, out
  pull-off   in -> out by cap-puller or hand takes 4 s
  press-on   out -> in by hand takes 3 s

# A heavy part: two persons or a hoist above 25 kg.
kind heavy-part "heavy part" is part
  states     in, out
  also       unslung, slung
  sling      unslung -> slung by hoist takes 120 s
  unsling    slung -> unslung by hoist takes 60 s
  lift-out   in -> out by hoist takes 120 s
  set-in     out -> in by hoist takes 180 s
  needs      slung to lift-out
  needs      slung to set-in
  hazard     heavy-load until slung on touch

# Glass

kind glass-pane "glass pane" is part
  states     in, out
  remove     in -> out by suction-cup or hand takes 15 s
  fit        out -> in by suction-cup or hand takes 20 s
  caution: The edge cuts skin. Wear cut-resistant gloves.

kind cracked-glass "cracked glass" is part
  states     in, out
  also       bare, taped
  tape       bare -> taped by adhesive-tape takes 60 s
  untape     taped -> bare by hand takes 30 s
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 20 s
  may end in bare, taped
  hazard     splinters until taped on touch

kind lens "lens" is part
  states     in, out
  lift       in -> out by suction-cup or hand takes 8 s
  set-in     out -> in by suction-cup or hand takes 12 s
  notice: Skin leaves a film. Hold the lens by its edge.
  note: Which side faces outward is marked before it comes out.

kind mirror "mirror" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  caution: The edge cuts skin. Wear cut-resistant gloves.

kind dial-hand "hand of a dial" is part
  states     in, out
  lift       in -> out by hand-lifter takes 10 s
  press-on   out -> in by hand-press takes 15 s
  note: Its place on the scale is noted before it comes off.
