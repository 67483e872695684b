# Bonds that stick: tapes, glues, thread locks, heat paths, joints that are cut.
# Sources: stretch-release strips are pulled almost flat and are good for one use (patents);
# tapes and gasket adhesive soften at 60 to 80 degC (common practice, no source); medium thread
# lock parts with hand tools, high-strength with about 250 degC while hot, both cure in 24 h
# (makers' data, partly from memory); silicone cures about 2 mm in 24 h, epoxy in 24 h at room
# temperature, heat shrink closes at 90 to 120 degC (makers' data, from memory). The maker's sheet
# comes first. Surfaces: common practice, no source.
# Example: bond lid-seal "lid seal" kind seal-tape

# Tapes and strips

kind seal-tape "seal tape" is bond
  states     sealed, parted
  separate   sealed -> parted by pick takes 60 s
  seal       parted -> sealed by hand takes 90 s
  laid first
  one use
  note: The old tape is off, and both faces are clean and dry, before the new tape is laid.

kind gasket-adhesive "cut gasket of adhesive" is bond
  states     set, soft, parted
  soften     set -> soft by heat-mat or hot-air-gun 60..80 degC takes 180 s
  separate   soft -> parted by pick takes 120 s
  stick      parted -> soft by hand takes 90 s
  press      soft -> set by hand or clamp takes 30 s waits 600 s
  binds in   set, soft
  laid first
  one use
  caution: The heated part burns skin. Wear heat-resistant gloves.
  note: Both faces are freed of the old adhesive with alcohol and are dry.

kind stretch-release-strip "stretch-release strip" is bond
  states     stuck, parted
  release    stuck -> parted by hand takes 20 s
  stick      parted -> stuck by hand takes 20 s
  laid first
  one use
  notice: A strip that is pulled steeply tears. Pull it slowly and almost flat along the bond.

kind double-sided-tape "double-sided tape" is bond
  states     stuck, parted
  separate   stuck -> parted by pick takes 30 s
  stick      parted -> stuck by hand takes 30 s
  laid first
  one use

kind foam-tape "foam tape" is bond
  states     stuck, parted
  separate   stuck -> parted by pick or knife takes 30 s
  stick      parted -> stuck by hand takes 30 s
  laid first
  one use
  note: The faces are clean, dry and above 15 degC when the tape is laid.

kind conductive-tape "conductive tape" is bond
  states     stuck, parted
  peel       stuck -> parted by hand or pick takes 8 s
  stick      parted -> stuck by hand takes 8 s
  laid first
  one use
  note: The metal below is bare.

kind light-tape "light tape" is bond
  states     stuck, parted
  lift       stuck -> parted by hand or pick takes 6 s
  stick      parted -> stuck by hand takes 6 s

kind hook-and-loop "hook-and-loop tape" is bond
  states     stuck, parted
  peel       stuck -> parted by hand takes 4 s
  press      parted -> stuck by hand takes 4 s

kind label-seal "label" is bond
  states     stuck, parted
  peel       stuck -> parted by hand or pick takes 10 s
  stick      parted -> stuck by hand takes 6 s
  one use

# Glues

kind heat-softened-glue "heat-softened glue" is bond
  states     set, soft, parted
  soften     set -> soft by heat-mat or hot-air-gun 60..80 degC takes 300 s
  separate   soft -> parted by pick takes 60 s
  stick      parted -> soft by hand takes 90 s
  cure       soft -> set by hand or clamp takes 10 s waits 1800 s
  binds in   set, soft
  laid first
  one use
  caution: The heated part burns skin. Wear heat-resistant gloves.

kind hot-melt "hot-melt glue" is bond
  states     set, parted
  pry-off    set -> parted by pick or knife takes 30 s
  melt-on    parted -> set by glue-gun takes 30 s waits 120 s
  one use
  caution: Molten glue sticks and burns. Keep fingers away until it is dull.

kind contact-glue "contact adhesive" is bond
  states     set, parted
  peel       set -> parted by hand or hot-air-gun takes 60 s
  stick      parted -> set by hand takes 90 s waits 600 s
  laid first
  one use
  caution: The solvent's vapour numbs and burns. Open a window. Keep flames away.
  note: Both faces are coated, and are touch-dry before they meet.

kind instant-glue "instant adhesive" is bond
  states     set, parted
  break      set -> parted by knife or hand takes 30 s
  stick      parted -> set by hand takes 15 s waits 300 s
  laid first
  one use
  caution: It sticks skin and eyelids together. Wear eye protection.

kind epoxy "epoxy resin" is bond
  states     set, parted
  break      set -> parted by hot-air-gun or knife takes 120 s
  apply      parted -> set by hand or clamp takes 120 s waits 24 h
  laid first
  one use
  caution: The resin makes skin allergic. Wear chemical-resistant gloves.
  note: Both faces are roughened and free of grease.

kind ultraviolet-glue "light-cured adhesive" is bond
  states     set, parted
  separate   set -> parted by cutting-wire or hot-air-gun takes 300 s
  apply      parted -> set by ultraviolet-lamp takes 180 s
  one use
  caution: The lamp harms eyes. Wear the spectacles that belong to it.

kind silicone-bead "silicone bead" is bond
  states     set, parted
  cut        set -> parted by knife takes 60 s
  lay        parted -> set by hand or sealant-gun takes 120 s waits 24 h
  one use
  caution: The knife can slip and cut a hand. Cut away from the body.
  note: Old silicone is off to the last film: new does not stick to it.

kind liquid-gasket "liquid gasket" is bond
  states     set, parted
  break      set -> parted by mallet or scraper takes 60 s
  apply      parted -> set by hand or sealant-gun takes 120 s waits 24 h
  laid first
  one use
  note: The faces are free of oil. The bead runs unbroken and inside of every bolt hole.

kind potting "potting compound" is bond
  states     set, parted
  dig-out    set -> parted by pick or hot-air-gun takes 600 s
  pour       parted -> set by hand takes 120 s waits 24 h
  one use
  caution: Heated resin gives off harmful fumes. Keep the air moving.

kind protective-lacquer "protective lacquer" is bond
  states     coated, bare
  strip      coated -> bare by brush takes 120 s
  coat       bare -> coated by brush takes 60 s waits 1800 s
  one use
  caution: The solvent's vapour numbs and burns. Open a window. Keep flames away.

# On threads and in bores

kind thread-lock "thread lock" is bond
  states     set, broken
  break      set -> broken by hand or spanner takes 10 s
  apply      broken -> set by hand takes 15 s waits 24 h
  one use

kind medium-thread-lock "thread lock, medium" is bond
  states     set, broken
  break      set -> broken by hand or spanner takes 10 s
  apply      broken -> set by hand takes 15 s waits 24 h
  one use
  note: Both threads are brushed clean and free of oil.

kind strong-thread-lock "thread lock, strong" is bond
  states     set, soft, broken
  soften     set -> soft by hot-air-gun or blowlamp above 250 degC takes 180 s
  break      soft -> broken by hand or spanner takes 15 s
  apply      broken -> soft by hand takes 15 s
  cure       soft -> set by hand waits 24 h
  binds in   set, soft
  one use
  warning: Metal at 250 degC burns to the bone. Wear heat-resistant gloves.
  note: Both threads are brushed clean and free of oil.

kind retaining-compound "retaining compound" is bond
  states     set, soft, parted
  soften     set -> soft by hot-air-gun or blowlamp above 250 degC takes 240 s
  press-out  soft -> parted by press or puller takes 60 s
  apply      parted -> soft by hand takes 20 s
  cure       soft -> set by hand waits 24 h
  binds in   set, soft
  laid first
  one use
  warning: Metal at 250 degC burns to the bone. Wear heat-resistant gloves.
  note: Shaft and bore are free of oil and old compound.

kind thread-tape "thread seal tape" is bond
  states     wound, off
  pick-off   wound -> off by hand or pick or brush takes 20 s
  wind       off -> wound by hand takes 20 s
  laid first
  lies loose
  one use
  note: The tape is wound in the direction in which the joint is screwed in.

# Heat paths and sleeves

kind thermal-paste "thermal paste" is bond
  states     spread, parted
  separate   spread -> parted by hand takes 15 s
  spread     parted -> spread by hand takes 60 s
  laid first
  one use
  note: Both faces are wiped clean before new paste is spread.

kind thermal-pad "thermal pad" is bond
  states     laid, parted
  lift       laid -> parted by hand or pick takes 6 s
  lay        parted -> laid by hand takes 6 s
  laid first

kind phase-change-pad "phase-change pad" is bond
  states     laid, parted
  separate   laid -> parted by hand or pick takes 20 s
  lay        parted -> laid by hand takes 20 s
  laid first
  one use
  note: Both faces are wiped with alcohol. The pad melts into place at its first heat.

kind thermal-glue "thermal adhesive" is bond
  states     set, parted
  pry-off    set -> parted by pick or hot-air-gun takes 120 s
  spread     parted -> set by hand or clamp takes 60 s waits 4 h
  laid first
  one use

kind heat-shrink "heat-shrink sleeve" is bond
  states     shrunk, cut
  slit       shrunk -> cut by knife takes 15 s
  shrink     cut -> shrunk by hot-air-gun above 90 degC takes 20 s waits 60 s
  one use
  caution: The knife can slip and cut a hand. Cut away from the body.
  note: The new sleeve is pushed over the wire before the wire is joined.
