# Threads: ISO metric fine threads.
# Sources: pitches ISO 262; those of the last section ISO 261 or bearing and axle makers' practice
# (from memory). Roots and bearing faces as in the file of coarse threads. A name without a pitch
# means the coarse thread (ISO 965-1).
# Example: fastener axle-nut kind nut M10x1, hexagon-head 16

# Usual on machines

thread M8x1
  form       metric
  diameter   8 mm
  pitch      1.00 mm
  root at least 6.598 mm
  bears on   9..12.33 mm
thread M10x1.25
  form       metric
  diameter   10 mm
  pitch      1.25 mm
  root at least 8.268 mm
  bears on   11..15.33 mm
thread M10x1
  form       metric
  diameter   10 mm
  pitch      1.00 mm
  root at least 8.598 mm
  bears on   11..15.33 mm
thread M12x1.5
  form       metric
  diameter   12 mm
  pitch      1.50 mm
  root at least 9.931 mm
  bears on   13.5..17.23 mm
thread M12x1.25
  form       metric
  diameter   12 mm
  pitch      1.25 mm
  root at least 10.260 mm
  bears on   13.5..17.23 mm
thread M14x1.5
  form       metric
  diameter   14 mm
  pitch      1.50 mm
  root at least 11.931 mm
  bears on   15.5..20.17 mm
thread M16x1.5
  form       metric
  diameter   16 mm
  pitch      1.50 mm
  root at least 13.931 mm
  bears on   17.5..23.17 mm
thread M18x2
  form       metric
  diameter   18 mm
  pitch      2.00 mm
  root at least 15.275 mm
  bears on   20..25.87 mm
thread M18x1.5
  form       metric
  diameter   18 mm
  pitch      1.50 mm
  root at least 15.931 mm
  bears on   20..25.87 mm
thread M20x2
  form       metric
  diameter   20 mm
  pitch      2.00 mm
  root at least 17.275 mm
  bears on   22..28.87 mm
thread M20x1.5
  form       metric
  diameter   20 mm
  pitch      1.50 mm
  root at least 17.931 mm
  bears on   22..28.87 mm
thread M22x2
  form       metric
  diameter   22 mm
  pitch      2.00 mm
  root at least 19.275 mm
  bears on   24..31.81 mm
thread M22x1.5
  form       metric
  diameter   22 mm
  pitch      1.50 mm
  root at least 19.931 mm
  bears on   24..31.81 mm
thread M24x2
  form       metric
  diameter   24 mm
  pitch      2.00 mm
  root at least 21.264 mm
  bears on   26..34.81 mm
thread M24x1.5
  form       metric
  diameter   24 mm
  pitch      1.50 mm
  root at least 21.921 mm
  bears on   26..34.81 mm

# Usual on instruments, axles, sensors and bearings

thread M3x0.35
  form       metric
  diameter   3 mm
  pitch      0.35 mm
  root at least 2.470 mm
thread M4x0.5
  form       metric
  diameter   4 mm
  pitch      0.50 mm
  root at least 3.268 mm
thread M5x0.5
  form       metric
  diameter   5 mm
  pitch      0.50 mm
  root at least 4.268 mm
thread M6x0.75
  form       metric
  diameter   6 mm
  pitch      0.75 mm
  root at least 4.929 mm
thread M9x1
  form       metric
  diameter   9 mm
  pitch      1.00 mm
  root at least 7.598 mm
thread M12x1
  form       metric
  diameter   12 mm
  pitch      1.00 mm
  root at least 10.590 mm
thread M15x1
  form       metric
  diameter   15 mm
  pitch      1.00 mm
  root at least 13.590 mm
thread M30x1.5
  form       metric
  diameter   30 mm
  pitch      1.50 mm
  root at least 27.921 mm
