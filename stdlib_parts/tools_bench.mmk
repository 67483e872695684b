# Tools that a bench has: drivers, spanners, pliers, levers, blades. A tool of a guide is of the
# kind whose words its description has; of several, of the one with the longest name.
# Sources: `basic` is the list of Commission Regulation (EU) 2023/1670, annex I, point 50; heat,
# solvent, suction cup and soldering iron are not on it. The other classes follow the idea of EN
# 45554; which is whose is our own judgement. A tool special to one product, or supplied with it,
# says so where the guide lists it.
# Example: tool driver-6 "hexalobular driver 6"

# Drivers and keys

tool-kind slotted-driver "slotted driver"
  class      basic
tool-kind cross-recess-driver "cross-recess driver, type H"
  class      basic
tool-kind z-recess-driver "cross-recess driver, type Z"
  class      basic
tool-kind hexalobular-driver "hexalobular driver"
  class      basic
tool-kind hexalobular-key "hexalobular key"
  class      available
tool-kind bored-hexalobular-driver "hexalobular driver with a hole for the pin"
  class      available
tool-kind bored-hexalobular-key "hexalobular key with a hole for the pin"
  class      available
tool-kind external-hexalobular-socket "socket for external hexalobular heads"
  class      available
tool-kind hexagon-key "hexagon key"
  class      basic
tool-kind hexagon-driver "hexagon driver"
  class      available
tool-kind bored-hexagon-key "hexagon key with a hole for the pin"
  class      available
tool-kind bored-hexagon-driver "hexagon driver with a hole for the pin"
  class      available
tool-kind bi-hexagon-key "twelve-point key"
  class      available
tool-kind square-driver "square driver"
  class      available
tool-kind three-wing-driver "three wing driver"
  class      available
tool-kind five-lobe-driver "five lobe driver"
  class      available
tool-kind triangle-driver "triangle driver"
  class      available
tool-kind two-hole-driver "two hole driver"
  class      available
tool-kind clutch-driver "clutch driver"
  class      available
tool-kind slotted-nut-driver "driver for slotted round nuts"
  class      available
tool-kind nut-driver "nut driver"
  class      available
tool-kind one-way-extractor "extractor for one-way screws"
  class      available
tool-kind screw-extractor "screw extractor"
  class      available

# Bits

tool-kind slotted-bit "slotted bit"
  class      available
tool-kind cross-recess-bit "cross-recess bit, type H"
  class      available
tool-kind z-recess-bit "cross-recess bit, type Z"
  class      available
tool-kind hexalobular-bit "hexalobular bit"
  class      available
tool-kind hexagon-bit "hexagon bit"
  class      available
tool-kind bi-hexagon-bit "twelve-point bit"
  class      available
tool-kind square-bit "square bit"
  class      available
tool-kind three-wing-bit "three-wing bit"
  class      available
tool-kind five-lobe-bit "five-lobe bit"
  class      available
tool-kind triangle-bit "triangle bit"
  class      available
tool-kind clutch-bit "clutch bit"
  class      available
tool-kind spline-bit "splined bit"
  class      available

# Spanners and wrenches

tool-kind spanner "combination spanner"
  class      basic
tool-kind ring-spanner "ring spanner"
  class      basic
tool-kind adjustable-spanner "adjustable spanner"
  class      available
tool-kind socket "socket"
  class      available
tool-kind socket-wrench "socket wrench"
  class      available
tool-kind ratchet "ratchet"
  class      available
tool-kind wheel-brace "wheel brace"
  class      available
tool-kind impact-wrench "impact wrench"
  class      available
# Common practice, no source: small screws by a driver, all others by a wrench.
tool-kind torque-driver "torque driver"
  class      available
  sets torque 0.05..10 N.m
tool-kind torque-wrench "torque wrench"
  class      available
  sets torque 2..1500 N.m
tool-kind cone-spanner "cone spanner"
  class      available
tool-kind hook-spanner "hook spanner"
  class      available
tool-kind pin-spanner "pin spanner"
  class      available
tool-kind flare-spanner "open ring spanner for flare nuts"
  class      available
tool-kind pipe-wrench "pipe wrench"
  class      available
tool-kind strap-wrench "strap wrench"
  class      available
tool-kind filter-wrench "oil filter wrench"
  class      available
tool-kind plug-wrench "sparking plug wrench"
  class      available
tool-kind nipple-key "spoke nipple key"
  class      available
tool-kind spline-tool "splined socket for lock rings"
  class      available
tool-kind stud-extractor "stud extractor"
  class      available

# Pliers

tool-kind pliers "combination pliers"
  class      basic
tool-kind combination-pliers "combination pliers"
  class      basic
tool-kind half-round-nose-pliers "half round nose pliers"
  class      basic
tool-kind multigrip-pliers "multigrip pliers"
  class      basic
tool-kind locking-pliers "locking pliers"
  class      basic
tool-kind side-cutters "diagonal cutters"
  class      basic
tool-kind wire-stripping-pliers "wire stripping pliers"
  class      basic
tool-kind crimping-pliers "pliers for crimping terminals"
  class      basic
tool-kind flat-pliers "flat-nose pliers"
  class      available
tool-kind pincers "pincers"
  class      available
tool-kind circlip-pliers "circlip pliers"
  class      available
tool-kind e-ring-fork "fork for E-rings"
  class      available
tool-kind hose-pliers "hose pliers"
  class      available
tool-kind hose-clamp-pliers "hose clamp pliers"
  class      available
tool-kind ring-pliers "piston ring pliers"
  class      available
tool-kind link-pliers "chain link pliers"
  class      available
tool-kind rivet-pliers "rivet pliers"
  class      available
tool-kind rivet-nut-pliers "rivet nut pliers"
  class      available
tool-kind eyelet-pliers "eyelet pliers"
  class      available
tool-kind sealing-pliers "sealing pliers"
  class      available
tool-kind wire-twisting-pliers "wire twisting pliers"
  class      available

# Levers and small things

tool-kind pick "opening pick"
  class      basic
tool-kind spudger "spudger"
  class      basic
tool-kind prying-lever "prying lever"
  class      basic
tool-kind tweezers "tweezers"
  class      basic
tool-kind magnifying-glass "magnifying glass"
  class      basic
tool-kind clip-lever "lever for panel clips"
  class      available
tool-kind tyre-lever "tyre lever"
  class      available
tool-kind case-knife "knife for case backs"
  class      available
tool-kind scraper "scraper"
  class      available
tool-kind suction-cup "suction cup"
  class      available
tool-kind tray-pin "pin for card trays"
  class      supplied
tool-kind coin "coin"
  class      none

# What cuts and strikes

tool-kind knife "knife"
  class      available
tool-kind saw "saw"
  class      available
tool-kind chisel "chisel"
  class      available
tool-kind drill "drill"
  class      available
tool-kind cutting-wire "cutting wire"
  class      available
tool-kind pipe-cutter "pipe cutter"
  class      available
tool-kind hammer "hammer"
  class      available
tool-kind mallet "mallet"
  class      available
tool-kind drift "drift"
  class      available
tool-kind pin-punch "pin punch"
  class      available
tool-kind rivet-punch "rivet punch"
  class      available
tool-kind key-drift "drift for taper keys"
  class      available
