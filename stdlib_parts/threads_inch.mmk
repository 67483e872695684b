# Threads: unified inch threads, coarse and fine. The first number is the size, the second the
# turns to the inch: UNC-6-32, UNF-1/4-28.
# Sources: sizes and turns ASME B1.1; stress area 0.7854 (D - 0.9743 / n)^2, so the root of the
# form lies 1.299038 P below the diameter. `root at least` is worked out from the class 2A
# tolerance, 0.0015 D^(1/3) + 0.0015 D^(1/2) + 0.015 P^(2/3), and the allowance of three tenths of
# it (formulas from memory). `bears on`: holes of ASME B18.2.8, heads of ASME B18.3 (from memory).
# Example: fastener side-screws 2 x screw UNC-6-32 x 9.5, cross-recess 2, pan

form unified "unified inch thread"
  pitch line 0.649519
  root       1.299038

# Coarse

thread UNC-2-56
  form       unified
  diameter   2.184 mm
  pitch      0.454 mm
  root at least 1.525 mm
  bears on   2.591..3.556 mm
thread UNC-3-48
  form       unified
  diameter   2.515 mm
  pitch      0.529 mm
  root at least 1.751 mm
  bears on   2.946..4.089 mm
thread UNC-4-40
  form       unified
  diameter   2.845 mm
  pitch      0.635 mm
  root at least 1.937 mm
  bears on   3.251..4.648 mm
thread UNC-5-40
  form       unified
  diameter   3.175 mm
  pitch      0.635 mm
  root at least 2.265 mm
  bears on   3.658..5.207 mm
thread UNC-6-32
  form       unified
  diameter   3.505 mm
  pitch      0.794 mm
  root at least 2.381 mm
  bears on   3.962..5.74 mm
thread UNC-8-32
  form       unified
  diameter   4.166 mm
  pitch      0.794 mm
  root at least 3.038 mm
  bears on   4.572..6.858 mm
thread UNC-10-24
  form       unified
  diameter   4.826 mm
  pitch      1.058 mm
  root at least 3.342 mm
  bears on   5.232..7.925 mm
thread UNC-12-24
  form       unified
  diameter   5.486 mm
  pitch      1.058 mm
  root at least 3.999 mm
  bears on   5.613..8.712 mm
thread UNC-1/4-20
  form       unified
  diameter   6.35 mm
  pitch      1.27 mm
  root at least 4.577 mm
  bears on   7.137..9.525 mm
thread UNC-5/16-18
  form       unified
  diameter   7.938 mm
  pitch      1.411 mm
  root at least 5.971 mm
  bears on   8.738..11.913 mm
thread UNC-3/8-16
  form       unified
  diameter   9.525 mm
  pitch      1.587 mm
  root at least 7.319 mm
  bears on   10.312..14.275 mm
thread UNC-7/16-14
  form       unified
  diameter   11.112 mm
  pitch      1.814 mm
  root at least 8.600 mm
  bears on   11.913..16.662 mm
thread UNC-1/2-13
  form       unified
  diameter   12.7 mm
  pitch      1.954 mm
  root at least 9.998 mm
  bears on   14.275..19.05 mm

# Fine

thread UNF-0-80
  form       unified
  diameter   1.524 mm
  pitch      0.318 mm
  root at least 1.053 mm
  bears on   1.93..2.438 mm
thread UNF-2-64
  form       unified
  diameter   2.184 mm
  pitch      0.397 mm
  root at least 1.602 mm
  bears on   2.591..3.556 mm
thread UNF-4-48
  form       unified
  diameter   2.845 mm
  pitch      0.529 mm
  root at least 2.079 mm
  bears on   3.251..4.648 mm
thread UNF-6-40
  form       unified
  diameter   3.505 mm
  pitch      0.635 mm
  root at least 2.594 mm
  bears on   3.962..5.74 mm
thread UNF-8-36
  form       unified
  diameter   4.166 mm
  pitch      0.706 mm
  root at least 3.156 mm
  bears on   4.572..6.858 mm
thread UNF-10-32
  form       unified
  diameter   4.826 mm
  pitch      0.794 mm
  root at least 3.696 mm
  bears on   5.232..7.925 mm
thread UNF-12-28
  form       unified
  diameter   5.486 mm
  pitch      0.907 mm
  root at least 4.202 mm
  bears on   5.613..8.712 mm
thread UNF-1/4-28
  form       unified
  diameter   6.35 mm
  pitch      0.907 mm
  root at least 5.062 mm
  bears on   7.137..9.525 mm
thread UNF-5/16-24
  form       unified
  diameter   7.938 mm
  pitch      1.058 mm
  root at least 6.442 mm
  bears on   8.738..11.913 mm
thread UNF-3/8-24
  form       unified
  diameter   9.525 mm
  pitch      1.058 mm
  root at least 8.025 mm
  bears on   10.312..14.275 mm
thread UNF-7/16-20
  form       unified
  diameter   11.112 mm
  pitch      1.27 mm
  root at least 9.325 mm
  bears on   11.913..16.662 mm
thread UNF-1/2-20
  form       unified
  diameter   12.7 mm
  pitch      1.27 mm
  root at least 10.909 mm
  bears on   14.275..19.05 mm
