# Bonds: glue, tapes, seals and fits that are parted and made again.
# Sources: ISO 3601 O-rings, renewed when disturbed (seal makers' practice); stretch-release
# strips are good for one use (patents); tapes soften at 60 to 80 degC (common practice, no
# source); the rest is common practice, no source.
# Example: bond lid-seal "lid seal" kind seal-tape

# Tapes and glues

kind seal-tape "seal tape" is bond
  states     sealed, parted
  separate   sealed -> parted by pick takes 60 s
  seal       parted -> sealed by hand takes 90 s
  one use
  note: The old tape is off, and both faces are clean and dry, before the new tape is laid.

kind stretch-release-strip "stretch-release strip" is bond
  states     stuck, parted
  release    stuck -> parted by hand takes 20 s
  stick      parted -> stuck by hand takes 20 s
  one use
  notice: A strip that is pulled steeply tears. Pull it slowly and almost flat along the bond.

kind heat-softened-glue "heat-softened glue" is bond
  states     set, soft, parted
  soften     set -> soft by heat-mat or hot-air-gun takes 300 s
  separate   soft -> parted by pick takes 60 s
  stick      parted -> soft by hand takes 90 s
  cure       soft -> set by hand or clamp takes 1800 s
  binds in   set, soft
  one use
  caution: The heated part burns skin. Wear heat-resistant gloves.

kind double-sided-tape "double-sided tape" is bond
  states     stuck, parted
  separate   stuck -> parted by pick takes 30 s
  stick      parted -> stuck by hand takes 30 s
  one use

kind light-tape "light tape" is bond
  states     stuck, parted
  lift       stuck -> parted by hand or pick takes 6 s
  stick      parted -> stuck by hand takes 6 s

kind hook-and-loop "hook-and-loop tape" is bond
  states     stuck, parted
  peel       stuck -> parted by hand takes 4 s
  press      parted -> stuck by hand takes 4 s

kind silicone-bead "silicone bead" is bond
  states     set, parted
  cut        set -> parted by knife takes 60 s
  lay        parted -> set by hand or sealant-gun takes 120 s
  one use
  caution: The knife can slip and cut a hand. Cut away from the body.

kind thread-lock "thread lock" is bond
  states     set, broken
  break      set -> broken by hand or spanner takes 10 s
  apply      broken -> set by hand takes 15 s
  one use

kind label-seal "label" is bond
  states     stuck, parted
  peel       stuck -> parted by hand or pick takes 10 s
  stick      parted -> stuck by hand takes 6 s
  one use

# Heat paths

kind thermal-paste "thermal paste" is bond
  states     spread, parted
  separate   spread -> parted by hand takes 15 s
  spread     parted -> spread by hand takes 60 s
  one use
  note: Both faces are wiped clean before new paste is spread.

kind thermal-pad "thermal pad" is bond
  states     laid, parted
  lift       laid -> parted by hand or pick takes 6 s
  lay        parted -> laid by hand takes 6 s

# Seals

kind o-ring "O-ring" is bond
  states     seated, parted
  lift       seated -> parted by hand or pick takes 8 s
  seat       parted -> seated by hand takes 15 s
  one use
  notice: A scratch in the groove leaks. Lift the ring with plastic or wood, never with steel.

kind flat-gasket "flat gasket" is bond
  states     seated, parted
  separate   seated -> parted by hand or scraper takes 30 s
  seat       parted -> seated by hand takes 20 s
  one use

kind sealing-washer "sealing washer" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 4 s
  seat       parted -> seated by hand takes 4 s
  one use

kind shaft-seal "shaft seal" is bond
  states     seated, parted
  pull-out   seated -> parted by seal-puller takes 30 s
  press-in   parted -> seated by seal-press takes 40 s
  one use
  notice: A turned lip leaks. Oil the lip. Press the seal in square.

kind loose-seal "reusable seal" is bond
  states     seated, parted
  lift       seated -> parted by hand takes 6 s
  seat       parted -> seated by hand takes 8 s

# Fits

kind press-fit "press fit" is bond
  states     pressed, parted
  press-out  pressed -> parted by press or puller takes 60 s
  press-in   parted -> pressed by press takes 60 s
  warning: A part under the press can fly out and maim. Wear eye protection. Stand aside.

kind push-on-fit "push-on fit" is bond
  states     on, off
  pull-off   on -> off by hand takes 4 s
  push-on    off -> on by hand takes 4 s

kind taper-fit "taper fit" is bond
  states     seated, parted
  break-out  seated -> parted by puller takes 30 s
  seat       parted -> seated by hand or mallet takes 15 s

kind weld "weld" is bond
  states     whole, cut
  cut        whole -> cut by saw takes 600 s
  weld-up    cut -> whole by welding-set takes 900 s
  one use
  licensed   "welder"
