# Threads: ISO metric coarse threads.
# Sources: pitches ISO 261 and ISO 262; form ISO 68-1 and ISO 724 (d2 = d - 0.649519 P, d3 = d -
# 1.226869 P). `root at least` is worked out from the tolerances of ISO 965-1: d - 0.649519 P - es
# - Td2 - 0.616025 P, with es of position g (15 + 11 P micrometres; nothing up to M1.4) and Td2 of
# grade 6 (90 P^0.4 d^0.1; four fifths of that up to M1.4), the root rounded to 0.125 P. `bears
# on` runs from the medium hole of ISO 273 to the bearing face of an ISO 4762 head (from memory;
# up to M1.4 and for M3.5 the head of ISO 1207, for M7 the washer face of a hexagon head).
# Checked: the torques at which class 8.8 breaks are within 6 % of ISO 898-7 up to M1.4, and
# within 3 % from there to M10.
# Example: fastener lid-screws 4 x screw M2 x 6, hexalobular 6

form metric "ISO metric thread"
  pitch line 0.649519
  root       1.226869

thread M1
  form       metric
  diameter   1 mm
  pitch      0.25 mm
  root at least 0.642 mm
  bears on   1.2..2 mm
thread M1.2
  form       metric
  diameter   1.2 mm
  pitch      0.25 mm
  root at least 0.842 mm
  bears on   1.4..2.3 mm
thread M1.4
  form       metric
  diameter   1.4 mm
  pitch      0.30 mm
  root at least 0.975 mm
  bears on   1.6..2.6 mm
thread M1.6
  form       metric
  diameter   1.6 mm
  pitch      0.35 mm
  root at least 1.075 mm
  bears on   1.8..2.72 mm
thread M2
  form       metric
  diameter   2 mm
  pitch      0.40 mm
  root at least 1.408 mm
  bears on   2.4..3.48 mm
thread M2.5
  form       metric
  diameter   2.5 mm
  pitch      0.45 mm
  root at least 1.840 mm
  bears on   2.9..4.18 mm
thread M3
  form       metric
  diameter   3 mm
  pitch      0.50 mm
  root at least 2.268 mm
  bears on   3.4..5.07 mm
thread M3.5
  form       metric
  diameter   3.5 mm
  pitch      0.60 mm
  root at least 2.635 mm
  bears on   3.9..6 mm
thread M4
  form       metric
  diameter   4 mm
  pitch      0.70 mm
  root at least 3.002 mm
  bears on   4.5..6.53 mm
thread M5
  form       metric
  diameter   5 mm
  pitch      0.80 mm
  root at least 3.869 mm
  bears on   5.5..8.03 mm
thread M6
  form       metric
  diameter   6 mm
  pitch      1.00 mm
  root at least 4.598 mm
  bears on   6.6..9.38 mm
thread M7
  form       metric
  diameter   7 mm
  pitch      1.00 mm
  root at least 5.598 mm
  bears on   7.6..9.63 mm
thread M8
  form       metric
  diameter   8 mm
  pitch      1.25 mm
  root at least 6.268 mm
  bears on   9..12.33 mm
thread M10
  form       metric
  diameter   10 mm
  pitch      1.50 mm
  root at least 7.940 mm
  bears on   11..15.33 mm
thread M12
  form       metric
  diameter   12 mm
  pitch      1.75 mm
  root at least 9.603 mm
  bears on   13.5..17.23 mm
thread M14
  form       metric
  diameter   14 mm
  pitch      2.00 mm
  root at least 11.275 mm
  bears on   15.5..20.17 mm
thread M16
  form       metric
  diameter   16 mm
  pitch      2.00 mm
  root at least 13.275 mm
  bears on   17.5..23.17 mm
thread M18
  form       metric
  diameter   18 mm
  pitch      2.50 mm
  root at least 14.622 mm
  bears on   20..25.87 mm
thread M20
  form       metric
  diameter   20 mm
  pitch      2.50 mm
  root at least 16.622 mm
  bears on   22..28.87 mm
thread M22
  form       metric
  diameter   22 mm
  pitch      2.50 mm
  root at least 18.622 mm
  bears on   24..31.81 mm
thread M24
  form       metric
  diameter   24 mm
  pitch      3.00 mm
  root at least 19.958 mm
  bears on   26..34.81 mm
