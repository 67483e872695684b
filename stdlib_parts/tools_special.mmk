# Tools for one trade or one job: what pulls, presses, heats, makes safe, lifts, drains.
# Sources: classes as in the file of bench tools; a discharge resistor, an earthing set and a
# padlock are of the order of 29 CFR 1910.147 and of common practice, no source.
# Example: tool compressor "spring compressor"

# What pulls, presses and holds

tool-kind puller "puller"
  class      available
tool-kind press "workshop press"
  class      available
tool-kind gear-puller "gear puller"
  class      available
tool-kind bearing-puller "bearing puller"
  class      available
tool-kind bearing-press "bearing press"
  class      available
tool-kind crank-puller "crank puller"
  class      available
tool-kind sprocket-puller "sprocket puller"
  class      available
tool-kind chain-tool "chain tool"
  class      available
tool-kind cotter-press "cotter press"
  class      available
tool-kind race-drift "drift for bearing races"
  class      available
tool-kind race-press "press for bearing races"
  class      available
tool-kind seal-puller "shaft seal puller"
  class      available
tool-kind seal-press "sleeve to press seals in"
  class      available
tool-kind seal-roller "seal roller"
  class      available
tool-kind packing-hook "hook for gland packing"
  class      available
tool-kind ring-clamp "piston ring clamp"
  class      available
tool-kind flange-spreader "flange spreader"
  class      available
tool-kind spring-compressor "spring compressor"
  class      available
tool-kind spring-hook "spring hook"
  class      available
tool-kind winding-bar "winding bar"
  class      available
tool-kind winding-key "winding key"
  class      available
tool-kind locking-pin "locking pin"
  class      special
tool-kind clamp "clamp"
  class      available
tool-kind hand-lifter "lifter for dial hands"
  class      available
tool-kind hand-press "press for dial hands"
  class      available
tool-kind case-press "press for case backs"
  class      available
tool-kind cap-puller "key cap puller"
  class      available
tool-kind fuse-puller "fuse puller"
  class      available
tool-kind chip-extractor "chip extractor"
  class      available
tool-kind contact-extractor "contact extractor"
  class      available
tool-kind collet-tool "release for push-fit tubes"
  class      available
tool-kind coupling-tool "release for clip-in couplings"
  class      available
tool-kind blade-sheath "blade sheath"
  class      supplied
tool-kind magnet-keeper "magnet keeper"
  class      special

# What heats and joins

tool-kind soldering-iron "soldering iron"
  class      available
tool-kind desoldering-pump "desoldering pump"
  class      available
tool-kind desoldering-wick "desoldering wick"
  class      available
tool-kind hot-air-gun "hot air gun"
  class      available
tool-kind heat-mat "heat mat"
  class      available
tool-kind heat-plate "heat plate"
  class      available
tool-kind heat-bonder "heat bonder for ribbons"
  class      available
tool-kind induction-heater "induction heater"
  class      available
tool-kind glue-gun "glue gun"
  class      available
tool-kind ultraviolet-lamp "ultraviolet lamp"
  class      available
tool-kind plastic-welder "plastic welder"
  class      available
tool-kind spot-welder "spot welder"
  class      available
tool-kind welding-set "welding set"
  class      available
tool-kind blowlamp "blowlamp"
  class      available
tool-kind brazing-torch "brazing torch"
  class      available
tool-kind wire-wrap-tool "wire wrap tool"
  class      available
tool-kind insulating-cap "insulating cap"
  class      special

# What makes safe

tool-kind discharge-resistor "discharge resistor"
  class      available
tool-kind discharge-probe "discharge probe for picture tubes"
  class      available
tool-kind shorting-lead "shorting lead"
  class      available
tool-kind earthing-set "earthing set"
  class      available
tool-kind wrist-strap "wrist strap"
  class      available
tool-kind padlock "padlock with tag"
  class      available
tool-kind warning-tag "warning tag"
  class      available

# What lifts and props

tool-kind hoist "hoist with sling"
  class      available
tool-kind jack "jack"
  class      available
tool-kind axle-stand "axle stand"
  class      available
tool-kind prop "prop"
  class      available

# What drains, fills and cleans

tool-kind drain-pan "drain pan"
  class      available
tool-kind bucket "bucket"
  class      none
tool-kind funnel "funnel"
  class      available
tool-kind acid-funnel "acid funnel"
  class      available
tool-kind measuring-jug "measuring jug"
  class      available
tool-kind hose "drain hose"
  class      available
tool-kind pump "pump"
  class      available
tool-kind hand-pump "hand pump"
  class      available
tool-kind vacuum-pump "vacuum pump"
  class      available
tool-kind oil-gun "oil gun"
  class      available
tool-kind grease-gun "grease gun"
  class      available
tool-kind sealant-gun "sealant gun"
  class      available
tool-kind hose-press "hose press"
  class      available
tool-kind recovery-unit "refrigerant recovery unit"
  class      available
tool-kind charging-scale "scale for charging refrigerant"
  class      available
tool-kind brush "brush"
  class      available
tool-kind cotton-swab "cotton swab"
  class      none
tool-kind adhesive-tape "adhesive tape"
  class      none
tool-kind vacuum-cleaner "vacuum cleaner for fine dust"
  class      available
