# Kinds that only a bicycle hub has.

kind splined-ring "splined lock ring" is fastener
  states     tight, off
  undo       tight -> off by spline-tool or chain-whip takes 20 s
  fasten     off -> tight by spline-tool or chain-whip takes 25 s
  asks for torque
  caution: The tool slips under load and cuts knuckles. Press it home before you turn it.
