# Threads: tapping screws, miniature screws, bicycles, pipes.
# Sources: tapping screws ISO 1478, and ISO 2702 for the torques at which they break; miniature
# screws ISO 1501; bicycles BS 811, ISO 6696 and ISO 6697; pipe threads without sealing in the
# thread ISO 228-1. All from memory but the pipe threads' form, 55 degrees: d2 = d - 0.640327 P.
# Numbers for the torque of bicycle and pipe threads are the maker's: none is worked out here.
# Example: fastener panel-screws 6 x self-tapping-screw ST3.5 x 13, cross-recess 2, pan

form tapping "tapping screw thread"
form miniature "miniature thread"
  pitch line 0.48
  root       1.12
form cycle "bicycle thread"
  pitch line 0.5327
  root       1.0654
form pipe "pipe thread"
  pitch line 0.640327
  root       1.280654

# Tapping screws, which cut or form their thread

thread ST2.2
  form       tapping
  diameter   2.24 mm
  pitch      0.80 mm
  breaks at  0.45 N.m
thread ST2.6
  form       tapping
  diameter   2.57 mm
  pitch      0.90 mm
  breaks at  0.9 N.m
thread ST2.9
  form       tapping
  diameter   2.9 mm
  pitch      1.10 mm
  breaks at  1.5 N.m
thread ST3.3
  form       tapping
  diameter   3.3 mm
  pitch      1.30 mm
  breaks at  2 N.m
thread ST3.5
  form       tapping
  diameter   3.53 mm
  pitch      1.30 mm
  breaks at  2.7 N.m
thread ST3.9
  form       tapping
  diameter   3.91 mm
  pitch      1.30 mm
  breaks at  3.4 N.m
thread ST4.2
  form       tapping
  diameter   4.22 mm
  pitch      1.40 mm
  breaks at  4.4 N.m
thread ST4.8
  form       tapping
  diameter   4.8 mm
  pitch      1.60 mm
  breaks at  6.3 N.m
thread ST5.5
  form       tapping
  diameter   5.46 mm
  pitch      1.80 mm
  breaks at  10 N.m
thread ST6.3
  form       tapping
  diameter   6.25 mm
  pitch      1.80 mm
  breaks at  13.6 N.m
thread ST8
  form       tapping
  diameter   8 mm
  pitch      2.10 mm
  breaks at  30.5 N.m

# Miniature screws, below the metric sizes

thread S0.5
  form       miniature
  diameter   0.5 mm
  pitch      0.125 mm
thread S0.6
  form       miniature
  diameter   0.6 mm
  pitch      0.15 mm
thread S0.8
  form       miniature
  diameter   0.8 mm
  pitch      0.20 mm
thread S0.9
  form       miniature
  diameter   0.9 mm
  pitch      0.225 mm
thread S1.0
  form       miniature
  diameter   1 mm
  pitch      0.25 mm
thread S1.2
  form       miniature
  diameter   1.2 mm
  pitch      0.25 mm

# Bicycles

thread BSC-9/16-20 "pedal axle"
  form       cycle
  diameter   14.288 mm
  pitch      1.27 mm
thread BSC-1/2-20 "pedal axle of a one-piece crank"
  form       cycle
  diameter   12.7 mm
  pitch      1.27 mm
thread BSC-1.37x24 "bottom bracket and single sprocket"
  form       cycle
  diameter   34.798 mm
  pitch      1.058 mm
thread BSC-1x24 "steering tube, 1 inch"
  form       cycle
  diameter   25.4 mm
  pitch      1.058 mm
thread BSC-1.125x26 "steering tube, 1 1/8 inch"
  form       cycle
  diameter   28.575 mm
  pitch      0.977 mm
thread BSC-3/8-26 "hub axle, 3/8 inch"
  form       cycle
  diameter   9.525 mm
  pitch      0.977 mm
thread BSC-5/16-26 "hub axle, 5/16 inch"
  form       cycle
  diameter   7.938 mm
  pitch      0.977 mm
thread BSC-56 "spoke, 2 mm"
  form       cycle
  diameter   2.2 mm
  pitch      0.454 mm

# Pipes and fittings

thread G1/8 "pipe thread G1/8"
  form       pipe
  diameter   9.728 mm
  pitch      0.907 mm
thread G1/4 "pipe thread G1/4"
  form       pipe
  diameter   13.157 mm
  pitch      1.337 mm
thread G3/8 "pipe thread G3/8"
  form       pipe
  diameter   16.662 mm
  pitch      1.337 mm
thread G1/2 "pipe thread G1/2"
  form       pipe
  diameter   20.955 mm
  pitch      1.814 mm
thread G3/4 "pipe thread G3/4"
  form       pipe
  diameter   26.441 mm
  pitch      1.814 mm
thread G1 "pipe thread G1"
  form       pipe
  diameter   33.249 mm
  pitch      2.309 mm
thread G1-1/4 "pipe thread G1-1/4"
  form       pipe
  diameter   41.91 mm
  pitch      2.309 mm
thread G1-1/2 "pipe thread G1-1/2"
  form       pipe
  diameter   47.803 mm
  pitch      2.309 mm
thread G2 "pipe thread G2"
  form       pipe
  diameter   59.614 mm
  pitch      2.309 mm
