# Fluids: what is drained before the work and filled after it. A fluid that is renewed is for one
# use.
# Sources: common practice, no source; refrigerants by licensed persons only (40 CFR 82.161; EU
# 2024/573), and they are never let off (40 CFR 82.154, from memory); burns from 43 degC on for
# hours (ISO 13732-1, from memory); glycol, acid and brake fluid after their makers' safety sheets
# (from memory).
# Example: fluid coolant in radiator 1.2 l kind coolant

# In engines and machines

kind coolant "coolant" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 120 s
  fill       drained -> full by hand or funnel takes 120 s
  runs out
  one use
  waste      coolant-waste
  hazard     hot-fluid until drained on touch

# Coolant under a cap: it is cooled before the cap is opened.
kind pressurised-coolant "coolant under pressure" is fluid
  states     full, drained
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 3600 s
  warm       cooled -> hot from outside
  drain      full -> drained by hand or drain-pan takes 120 s
  fill       drained -> full by hand or funnel takes 120 s
  runs out
  needs      cooled to drain
  may end in hot, cooled
  one use
  waste      coolant-waste
  hazard     hot-fluid until cooled on touch

kind oil "oil" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 60 s
  runs out
  one use
  waste      waste-oil
  notice: Oil harms soil and water. Catch every drop in a pan.

kind hot-engine-oil "hot engine oil" is fluid
  states     full, drained
  also       hot, warm
  cool       hot -> warm below 60 degC from outside waits 1200 s
  heat-up    warm -> hot from outside
  drain      full -> drained by drain-pan takes 300 s waits 300 s
  fill       drained -> full by hand or funnel takes 90 s
  runs out
  may end in hot, warm
  one use
  waste      waste-oil
  hazard     hot-fluid until warm on touch
  caution: Used oil harms skin. Wear chemical-resistant gloves.

kind gear-oil "gear oil" is fluid
  states     full, drained
  drain      full -> drained by drain-pan takes 180 s waits 600 s
  fill       drained -> full by oil-gun or funnel takes 120 s
  runs out
  one use
  waste      waste-oil
  note: The filler plug comes out before the drain plug: what is drained can then be filled.

kind hydraulic-oil "hydraulic oil" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 120 s
  runs out
  one use
  waste      waste-oil
  notice: Dirt wears valves and pumps. Keep every opening covered.

kind fork-oil "damper oil" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 120 s waits 600 s
  fill       drained -> full by measuring-jug takes 60 s
  runs out
  one use
  waste      waste-oil

kind compressor-oil "compressor oil" is fluid
  states     full, drained
  drain      full -> drained by drain-pan takes 120 s
  fill       drained -> full by funnel takes 60 s
  one use
  waste      waste-oil

kind transformer-oil "insulating oil" is fluid
  states     full, drained
  drain      full -> drained by hand-pump takes 600 s
  fill       drained -> full by hand-pump takes 600 s
  runs out
  one use
  waste      waste-oil
  licensed   "electrician"
  warning: Oil from old transformers can hold poisons. Have it tested before it is drained.

kind brake-fluid "brake fluid" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 120 s
  runs out
  one use
  waste      brake-fluid-waste
  caution: Brake fluid irritates eyes and strips paint. Wear gloves and eye protection.
  warning: Air in the fluid lets the brake fail. Bleed it after filling, as its maker says, before any test.

kind screen-wash "washer fluid" is fluid
  states     full, drained
  drain      full -> drained by hand or hand-pump takes 60 s
  fill       drained -> full by hand or funnel takes 60 s
  runs out

# Fuels

kind fuel "fuel" is fluid
  states     full, drained
  drain      full -> drained by hand or hand-pump takes 180 s
  fill       drained -> full by hand or funnel takes 60 s
  runs out
  hazard     fire until drained on touch

kind heating-oil "heating oil" is fluid
  states     full, drained
  drain      full -> drained by hand-pump or drain-pan takes 300 s
  fill       drained -> full by hand-pump takes 300 s
  runs out
  hazard     fire until drained on touch

# Water and what is in it

kind water "water" is fluid
  states     full, drained
  drain      full -> drained by hand or bucket takes 60 s
  fill       drained -> full by hand takes 60 s
  runs out

kind heating-water "water of a heating circuit" is fluid
  states     full, drained
  drain      full -> drained by hose takes 600 s
  fill       drained -> full by hose takes 600 s
  runs out
  hazard     hot-fluid until drained on touch
  note: The circuit is bled of air after it is filled.

kind waste-water "waste water" is fluid
  states     full, drained
  drain      full -> drained by bucket or hand takes 120 s
  fill       drained -> full by hand takes 30 s
  runs out
  may end in drained
  hazard     germs until drained on touch

kind descaler "descaler" is fluid
  states     rinsed, full
  fill       rinsed -> full by hand takes 30 s waits 1800 s
  rinse      full -> rinsed by hand takes 300 s
  present in full
  hazard     corrosive until rinsed on touch

kind battery-acid "battery acid" is fluid
  states     full, drained
  drain      full -> drained by hand-pump takes 180 s
  fill       drained -> full by acid-funnel takes 120 s
  one use
  waste      acid-waste
  hazard     corrosive until drained on touch

kind ink "ink or toner" is fluid
  states     full, emptied
  empty      full -> emptied by hand takes 30 s
  fill       emptied -> full by hand takes 60 s
  waste      toner-waste
  hazard     fine-dust until emptied on touch

# Lubricants that stay where they are laid

kind grease "grease" is fluid
  states     packed, cleaned
  clean      packed -> cleaned by hand or brush takes 60 s
  pack       cleaned -> packed by hand or grease-gun takes 30 s
  one use

kind lubricant-film "film of oil" is fluid
  states     laid, wiped
  wipe       laid -> wiped by hand takes 10 s
  apply      wiped -> laid by hand takes 10 s
  one use

kind assembly-paste "assembly paste" is fluid
  states     laid, wiped
  wipe       laid -> wiped by hand takes 15 s
  apply      wiped -> laid by hand or brush takes 15 s
  one use

# Licensed persons only

kind refrigerant "refrigerant" is fluid
  states     full, recovered
  recover    full -> recovered by recovery-unit takes 900 s
  charge     recovered -> full by charging-scale takes 600 s
  runs out
  one use
  waste      refrigerant-waste
  licensed   "refrigeration technician"

kind flammable-refrigerant "flammable refrigerant" is fluid
  states     full, recovered
  recover    full -> recovered by recovery-unit takes 900 s
  charge     recovered -> full by charging-scale takes 600 s
  runs out
  one use
  waste      refrigerant-waste
  licensed   "refrigeration technician"
  hazard     gas until recovered on touch

kind ammonia "ammonia" is fluid
  states     full, recovered
  recover    full -> recovered by recovery-unit takes 1800 s
  charge     recovered -> full by charging-scale takes 900 s
  runs out
  one use
  waste      refrigerant-waste
  licensed   "refrigeration technician"
  hazard     poison-gas until recovered on touch
