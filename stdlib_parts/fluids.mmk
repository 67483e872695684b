# Fluids: what is drained before the work and filled after it. A fluid that is renewed is one
# use.
# Sources: common practice, no source; refrigerants by licensed persons only (40 CFR 82.161; EU
# 2024/573).
# Example: fluid coolant in radiator 1.2 l kind coolant

kind coolant "coolant" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 120 s
  fill       drained -> full by hand or funnel takes 120 s
  one use
  waste      coolant-waste
  hazard     hot-fluid until drained on touch

kind oil "oil" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 60 s
  one use
  waste      waste-oil
  notice: Oil harms soil and water. Catch every drop in a pan.

kind hydraulic-oil "hydraulic oil" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 120 s
  one use
  waste      waste-oil
  notice: Dirt wears valves and pumps. Keep every opening covered.

kind brake-fluid "brake fluid" is fluid
  states     full, drained
  drain      full -> drained by hand or drain-pan takes 180 s
  fill       drained -> full by hand or funnel takes 120 s
  one use
  waste      brake-fluid-waste
  caution: Brake fluid irritates eyes and strips paint. Wear gloves and eye protection.

kind fuel "fuel" is fluid
  states     full, drained
  drain      full -> drained by hand or hand-pump takes 180 s
  fill       drained -> full by hand or funnel takes 60 s
  hazard     fire until drained on touch

kind water "water" is fluid
  states     full, drained
  drain      full -> drained by hand or bucket takes 60 s
  fill       drained -> full by hand takes 60 s

kind grease "grease" is fluid
  states     packed, cleaned
  clean      packed -> cleaned by hand or brush takes 60 s
  pack       cleaned -> packed by hand or grease-gun takes 30 s
  one use

kind lubricant-film "film of oil" is fluid
  states     laid, wiped
  wipe       laid -> wiped by hand takes 10 s
  lay        wiped -> laid by hand takes 10 s
  one use

kind refrigerant "refrigerant" is fluid
  states     full, recovered
  recover    full -> recovered by recovery-unit takes 900 s
  charge     recovered -> full by charging-scale takes 600 s
  one use
  waste      refrigerant-waste
  licensed   "refrigeration technician"
