# Bonds that seal or fit: rings, gaskets, shaft seals, press fits, welds.
# Sources: ISO 3601 O-rings, renewed when disturbed (seal makers' practice, from memory); gland
# packing is laid with joints a third of a turn apart (common practice, no source); copper washers
# are annealed or renewed (common practice, no source); a ring heated for a shrink fit stays below
# 120 degC (bearing makers' practice, from memory).
# Example: bond lid-ring "lid O-ring" kind o-ring

# Rings and washers

kind o-ring "O-ring" is bond
  states     seated, parted
  lift       seated -> parted by hand or pick takes 8 s
  seat       parted -> seated by hand takes 15 s
  laid first
  lies loose
  one use
  notice: A scratch in the groove leaks. Lift the ring with plastic or wood, never with steel.

kind four-lobe-ring "four-lobed ring" is bond
  states     seated, parted
  lift       seated -> parted by hand or pick takes 8 s
  seat       parted -> seated by hand takes 15 s
  laid first
  lies loose
  one use
  notice: A twisted ring leaks. Let it lie flat in its groove.

kind u-ring "U-ring" is bond
  states     seated, parted
  lift       seated -> parted by hand or pick takes 10 s
  seat       parted -> seated by hand takes 20 s
  laid first
  lies loose
  one use
  note: Its open side faces the pressure.

kind sealing-washer "sealing washer" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 4 s
  seat       parted -> seated by hand takes 4 s
  laid first
  lies loose
  one use

kind crush-washer "crush washer" is bond
  states     crushed, parted
  lift       crushed -> parted by hand or pick takes 4 s
  seat       parted -> crushed by hand takes 4 s
  laid first
  lies loose
  one use

kind copper-washer "copper washer" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 4 s
  seat       parted -> seated by hand takes 4 s
  laid first
  lies loose
  used again if "it is annealed, flat and without a groove"

kind bonded-washer "washer with a bonded seal" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 4 s
  seat       parted -> seated by hand takes 4 s
  laid first
  lies loose
  used again if "the rubber is whole and stands above the metal"

kind loose-seal "reusable seal" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 6 s
  seat       parted -> seated by hand takes 8 s
  laid first
  lies loose

# Gaskets

kind flat-gasket "flat gasket" is bond
  states     seated, parted
  separate   seated -> parted by hand or scraper takes 30 s
  seat       parted -> seated by hand takes 20 s
  laid first
  lies loose
  one use

kind rubber-gasket "moulded rubber gasket" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 10 s
  seat       parted -> seated by hand takes 20 s
  laid first
  lies loose
  used again if "it is soft and has no crack and no flat"

kind metal-gasket "metal gasket" is bond
  states     seated, parted
  lift       seated -> parted by hand or scraper takes 20 s
  seat       parted -> seated by hand takes 20 s
  laid first
  lies loose
  one use
  notice: A scratch across the face leaks. Scrape with plastic or wood, never with steel.

kind spiral-gasket "spiral-wound gasket" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 20 s
  seat       parted -> seated by hand takes 20 s
  laid first
  lies loose
  one use
  caution: The edges cut. Wear cut-resistant gloves.

kind profile-seal "door or window seal" is bond
  states     seated, parted
  pull-out   seated -> parted by hand takes 20 s
  press-in   parted -> seated by hand or seal-roller takes 60 s
  used again if "it is soft, whole and not shrunk"
  note: The corners go in first.

kind shielding-gasket "shielding gasket" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 8 s
  seat       parted -> seated by hand takes 12 s
  laid first
  lies loose
  used again if "it is bright and springs back"

# Where something turns or slides

kind shaft-seal "shaft seal" is bond
  states     seated, parted
  pull-out   seated -> parted by seal-puller takes 30 s
  press-in   parted -> seated by seal-press takes 40 s
  one use
  notice: A turned lip leaks. Oil the lip. Press the seal in square.

kind face-seal "mechanical face seal" is bond
  states     seated, parted
  draw       seated -> parted by hand or puller takes 60 s
  set-in     parted -> seated by hand takes 120 s
  one use
  notice: A finger mark on the faces leaks. Touch the faces with a clean cloth only.

kind gland-packing "gland packing" is bond
  states     packed, parted
  dig-out    packed -> parted by packing-hook takes 120 s
  pack       parted -> packed by hand takes 180 s
  one use
  note: Each ring's joint lies a third of a turn past the last.

kind piston-ring "piston ring" is bond
  states     seated, parted
  spread     seated -> parted by ring-pliers or hand takes 20 s
  fit        parted -> seated by ring-pliers or hand takes 20 s
  used again if "its gap in the bore is within the book's limit"
  caution: The ring's edges cut. Wear cut-resistant gloves.

kind boot "dust boot" is bond
  states     seated, parted
  peel       seated -> parted by hand takes 10 s
  seat       parted -> seated by hand takes 15 s
  used again if "it has no crack"

kind grommet "grommet" is bond
  states     seated, parted
  push-out   seated -> parted by hand takes 6 s
  push-in    parted -> seated by hand takes 10 s
  used again if "it is soft and has no crack"
  warning: A wire on a bare edge can chafe and become live. Seat the grommet all round.

kind sealing-plug "sealing plug" is bond
  states     seated, parted
  pry-out    seated -> parted by pick takes 8 s
  press-in   parted -> seated by hand takes 6 s
  used again if "it is soft and has no crack"

kind core-plug "pressed core plug" is bond
  states     seated, parted
  pry-out    seated -> parted by drift takes 60 s
  drive-in   parted -> seated by mallet takes 60 s
  one use

# Fits

kind press-fit "press fit" is bond
  states     pressed, parted
  press-out  pressed -> parted by press or puller takes 60 s
  press-in   parted -> pressed by press takes 60 s
  warning: A part under the press can fly out and maim. Wear eye protection. Stand aside.

kind shrink-fit "shrink fit" is bond
  states     cold, hot, parted
  heat-up    cold -> hot by induction-heater or heat-plate below 120 degC takes 300 s
  draw       hot -> parted by puller or hand takes 20 s
  slide-on   parted -> hot by induction-heater or heat-plate takes 330 s
  cool-down  hot -> cold by hand takes 10 s waits 1800 s
  binds in   cold
  caution: The heated part burns skin. Wear heat-resistant gloves.
  notice: Above 120 degC a bearing loses its hardness. Measure the heat.

kind push-on-fit "push-on fit" is bond
  states     on, off
  pull-off   on -> off by hand takes 4 s
  push-on    off -> on by hand takes 4 s

kind spline-fit "splined fit" is bond
  states     on, off
  draw       on -> off by hand or puller takes 15 s
  slide-on   off -> on by hand takes 15 s

kind taper-fit "taper fit" is bond
  states     seated, parted
  break-out  seated -> parted by puller takes 30 s
  seat       parted -> seated by hand or mallet takes 15 s

kind suction-fit "suction cup" is bond
  states     stuck, off
  lift       stuck -> off by hand takes 4 s
  press-on   off -> stuck by hand takes 4 s

# Welds

kind weld "weld" is bond
  states     whole, cut
  cut        whole -> cut by saw takes 600 s
  weld-up    cut -> whole by welding-set takes 900 s
  one use
  licensed   "welder"

kind spot-weld "spot weld" is bond
  states     whole, drilled
  drill-out  whole -> drilled by drill takes 60 s
  weld-up    drilled -> whole by spot-welder takes 30 s
  one use
  licensed   "welder"

kind plastic-weld "weld in plastic" is bond
  states     whole, cut
  cut        whole -> cut by knife or saw takes 120 s
  weld-up    cut -> whole by plastic-welder takes 180 s waits 300 s
  one use
