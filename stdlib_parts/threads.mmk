# Threads: ISO metric coarse threads, the pitch of each, and the torque at which a screw of
# class 8.8 breaks.
# Sources: pitches ISO 261 and ISO 262. Breaking torques ISO 898-7, class 8.8: from memory,
# recomputed from the standard's formula (pi/16 x d3min^3 x 0.84 Rm) to within 6 %. The table
# stops at M10, so larger threads have none. A breaking torque is a test value, never one to
# tighten to.
# Example: fastener lid-screws 4 x screw M2 x 6, hexalobular 6

thread M1
  pitch      0.25 mm
  breaks at  0.033 N.m
thread M1.2
  pitch      0.25 mm
  breaks at  0.075 N.m
thread M1.4
  pitch      0.30 mm
  breaks at  0.12 N.m
thread M1.6
  pitch      0.35 mm
  breaks at  0.16 N.m
thread M2
  pitch      0.40 mm
  breaks at  0.37 N.m
thread M2.5
  pitch      0.45 mm
  breaks at  0.82 N.m
thread M3
  pitch      0.50 mm
  breaks at  1.5 N.m
thread M3.5
  pitch      0.60 mm
  breaks at  2.4 N.m
thread M4
  pitch      0.70 mm
  breaks at  3.6 N.m
thread M5
  pitch      0.80 mm
  breaks at  7.6 N.m
thread M6
  pitch      1.00 mm
  breaks at  13 N.m
thread M8
  pitch      1.25 mm
  breaks at  33 N.m
thread M10
  pitch      1.50 mm
  breaks at  66 N.m
thread M12
  pitch      1.75 mm
thread M14
  pitch      2.00 mm
thread M16
  pitch      2.00 mm
thread M18
  pitch      2.50 mm
thread M20
  pitch      2.50 mm
thread M22
  pitch      2.50 mm
thread M24
  pitch      3.00 mm
