# Fasteners without a thread: rings, pins, keys, rivets.
# Sources: rings DIN 471, 472, 6799; split pins ISO 1234, new at each use (maintenance practice);
# slotted spring pins ISO 8752 and coiled pins ISO 8750, used again while they grip (makers'
# data); rivets ISO 14588. The standards of rings say nothing of using one again, and practice
# differs: `circlip` is for one use, and the kinds for shaft and bore are looked at. An item may
# say otherwise. The rest is common practice, no source.
# Example: fastener bearing-ring kind internal-circlip

# Rings

kind circlip "circlip" is fastener
  states     in, out
  spread     in -> out by circlip-pliers takes 15 s
  fit        out -> in by circlip-pliers takes 20 s
  one use
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind external-circlip "circlip on a shaft" is fastener
  states     in, out
  spread     in -> out by circlip-pliers takes 15 s
  fit        out -> in by circlip-pliers takes 20 s
  used again if "it lies flat and grips the groove without play"
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.
  note: The sharp edge of the ring faces away from the part that it holds.

kind internal-circlip "circlip in a bore" is fastener
  states     in, out
  squeeze    in -> out by circlip-pliers takes 15 s
  fit        out -> in by circlip-pliers takes 20 s
  used again if "it lies flat and grips the groove without play"
  warning: The ring can fly out and blind an eye. Wear eye protection. Hold a cloth over the
    ring.
  note: The sharp edge of the ring faces away from the part that it holds.

kind e-ring "E-ring" is fastener
  states     in, out
  push-off   in -> out by hand or slotted-driver takes 10 s
  push-on    out -> in by pliers or e-ring-fork takes 10 s
  used again if "its three lugs touch the groove"
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind grip-ring "slide-on ring" is fastener
  states     in, out
  push-off   in -> out by hand or slotted-driver takes 10 s
  push-on    out -> in by hand or pliers takes 10 s
  warning: The ring can fly off and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind wire-ring "round-wire snap ring" is fastener
  states     in, out
  pry-out    in -> out by pick takes 15 s
  press-in   out -> in by hand or pliers takes 15 s
  used again if "it is round and springs back into the groove"
  warning: The ring can fly out and blind an eye. Wear eye protection. Hold a cloth over the
    ring.

kind spiral-ring "spiral ring" is fastener
  states     in, out
  unwind     in -> out by pick takes 20 s
  wind-in    out -> in by hand takes 25 s
  used again if "its turns lie flat on each other"

kind push-on-cap "push-on shaft cap" is fastener
  states     on, off
  pry-off    on -> off by slotted-driver or pliers takes 10 s
  push-on    off -> on by hand or mallet takes 8 s
  one use

# Pins

kind split-pin "split pin" is fastener
  states     in, out
  draw       in -> out by pliers takes 20 s
  insert     out -> in by pliers takes 20 s
  one use
  caution: The cut ends are sharp. Bend them flat against the part.

kind spring-clip-pin "spring cotter" is fastener
  states     in, out
  draw       in -> out by hand or pliers takes 6 s
  insert     out -> in by hand or pliers takes 6 s
  used again if "its leg springs back"

kind spring-pin "spring pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 20 s
  drive-in   out -> in by pin-punch takes 20 s
  used again if "it is still wider than its hole"
  note: The slit of the pin points away from the load.

kind coiled-pin "coiled pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 20 s
  drive-in   out -> in by pin-punch takes 20 s
  used again if "it is still wider than its hole"

kind taper-pin "taper pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 20 s
  drive-in   out -> in by pin-punch or mallet takes 20 s
  notice: Blows on the thick end tighten the pin. Find the thin end first.

kind grooved-pin "grooved pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 20 s
  drive-in   out -> in by pin-punch takes 20 s
  used again if "it grips its hole"

kind clevis-pin "clevis pin" is fastener
  states     in, out
  draw       in -> out by hand takes 6 s
  insert     out -> in by hand takes 8 s

kind ball-lock-pin "ball-lock pin" is fastener
  states     in, out
  draw       in -> out by hand takes 4 s
  insert     out -> in by hand takes 4 s
  note: The balls stand out again when the button is let go.

kind dowel "dowel" is fastener
  states     in, out
  draw       in -> out by hand or pliers takes 10 s
  insert     out -> in by hand or mallet takes 10 s

kind hinge-pin "hinge pin" is fastener
  states     in, out
  drive-out  in -> out by pin-punch takes 15 s
  drive-in   out -> in by pin-punch or mallet takes 15 s

# Keys and wedges

kind shaft-key "key" is fastener
  states     in, out
  draw       in -> out by hand or pliers takes 10 s
  insert     out -> in by hand or mallet takes 10 s

kind half-round-key "half-round key" is fastener
  states     in, out
  tip-out    in -> out by hand or pliers takes 10 s
  insert     out -> in by hand or mallet takes 10 s

kind taper-key "taper key" is fastener
  states     in, out
  drive-out  in -> out by key-drift takes 20 s
  drive-in   out -> in by mallet takes 20 s

kind wedge "wedge" is fastener
  states     in, out
  drive-out  in -> out by mallet takes 15 s
  drive-in   out -> in by mallet takes 15 s

kind cotter "crank cotter" is fastener
  states     in, out
  press-out  in -> out by cotter-press takes 30 s
  press-in   out -> in by cotter-press takes 30 s
  used again if "its flat is not dented"
  note: Both cotters of an axle go in from opposite sides.

# Two tapered halves that screws draw onto a shaft.
kind taper-bush "taper bush" is fastener
  states     tight, loose, out
  free       tight -> loose by driver takes 40 s
  draw       loose -> out by hand takes 10 s
  insert     out -> loose by hand takes 15 s
  tighten    loose -> tight by driver takes 60 s
  asks for torque
  notice: Oil lets the bush slip. Clean shaft, bush and bore before it goes in.

# Rivets

kind rivet "blind rivet" is fastener
  states     set, out
  drill-out  set -> out by drill takes 60 s
  rivet      out -> set by rivet-pliers takes 20 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

kind solid-rivet "solid rivet" is fastener
  states     set, out
  drill-out  set -> out by drill takes 90 s
  rivet      out -> set by hammer takes 60 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

kind tubular-rivet "tubular rivet" is fastener
  states     set, out
  drill-out  set -> out by drill takes 60 s
  rivet      out -> set by rivet-punch takes 30 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

kind push-rivet "plastic push rivet" is fastener
  states     locked, out
  pull-out   locked -> out by pick or prying-lever takes 8 s
  push-in    out -> locked by hand takes 4 s
  used again if "its legs are whole and not white"

kind blind-rivet-nut "rivet nut" is fastener
  states     set, out
  drill-out  set -> out by drill takes 90 s
  set        out -> set by rivet-nut-pliers takes 30 s
  one use
  warning: Drilling throws chips that can blind. Wear eye protection.

kind eyelet "eyelet" is fastener
  states     set, out
  cut        set -> out by side-cutters takes 30 s
  set        out -> set by eyelet-pliers takes 15 s
  one use

kind nail "nail or staple" is fastener
  states     in, out
  pull-out   in -> out by pliers or prying-lever takes 10 s
  drive-in   out -> in by hammer takes 6 s
  one use
  caution: The point pierces skin. Wear gloves.
