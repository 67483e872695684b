# What the parts library and authors' files say of threads, drives, signs, gear, hazards and ratings: names that
# nothing has, and numbers from which nothing can be worked out.

--- unknown-pattern
device pump "Pump"

part casing "casing"
part flange "flange"
fastener bolts "flange bolt" 4 x bolt M8 x 25, hexagon-head 13
  holds      flange to casing
  # error 24-28 [unknown-pattern] there is no pattern `stars`; write `star`
  torque     24 N.m in stars

--- unknown-pattern-in-a-line
device pump "Pump"

part casing "casing"
part flange "flange"
fastener bolts "flange bolt" 4 x bolt M8 x 25, hexagon-head 13
  holds      flange to casing

guide unknown-pattern-in-a-line "Settle the flange"
  for        competent
  tool       spanner-13 "spanner 13"

work

step settle "Settle it"
  slacken    bolts with spanner-13
  # error 49-54 [unknown-pattern] there is no pattern `zigzag`; write `star` or `spiral`
  tighten    bolts with spanner-13 to 24 N.m in zigzag, 2 passes

--- preload-without-a-thread
device pump "Pump"

part casing "casing"
part flange "flange"
fastener bolts "flange bolt" 4 x bolt, hexagon-head 13
  holds      flange to casing
  # error 3-18 [bad-preload] no torque can be worked out for `bolts`; name its thread, or state the torque
  preload    10 kN

--- preload-of-a-known-thread
form works-profile "thread of the works"
  pitch line 0.649519
  root       1.226869
thread P8
  form       works-profile
  diameter   8 mm
  pitch      1.25 mm
  bears on   9..13 mm
friction works-oil "oiled"
  coefficient 0.12

device pump "Pump"

part casing "casing"
part flange "flange"
fastener bolts "flange bolt" 4 x bolt P8 x 25, hexagon-head 13, works-oil
  holds      flange to casing
  preload    15 kN in star, 2 passes

guide preload-of-a-known-thread "Settle the flange"
  for        competent
  tool       spanner-13 "spanner 13"
  tool       torque-wrench "torque wrench 20 N·m"

work

step settle "Settle it"
  slacken    bolts with spanner-13
  tighten    bolts with spanner-13

--- preload-in-newton-metres
device pump "Pump"

part casing "casing"
part flange "flange"
fastener bolts "flange bolt" 4 x bolt M8 x 25, hexagon-head 13
  holds      flange to casing
  # error 14-19 [mixed-units] expected a force
  preload    10 N.m

--- rating-of-nothing
device logger "Logger"
  # error 14-17 [bad-rating] nothing is said to uphold `IP67`; add `by` and its seals: `sealed IP67 by ...`
  sealed     IP67

part shell "shell"

--- rating-with-its-seal
device logger "Logger"
  sealed     IP67 by ring

part shell "shell"
part lid "lid"
bond ring "ring" kind o-ring
  joins      lid to shell

--- rating-that-is-none
rating QX7X "tried in the works"
rating QXX7 "tried in the yard"

device logger "Logger"
  # error 14-17 [bad-rating] `QX79` is no rating: its `9` means nothing there; `matchmark kinds rating` lists what the parts of a rating mean
  sealed     QX79 by ring

part shell "shell"
part lid "lid"
bond ring "ring" kind o-ring
  joins      lid to shell

--- rating-of-declared-parts
rating QX7X "tried in the works"
rating QXX7 "tried in the yard"

device logger "Logger"
  sealed     QX77 by ring

part shell "shell"
part lid "lid"
bond ring "ring" kind o-ring
  joins      lid to shell

--- size-for-an-unknown-thread
thread P6
  pitch      1 mm
drive works-key "works key"
  driven by  works-spanner
  # error 38-40 [unknown-thread] there is no thread `P66`; write `P6`
  size       10 across 10 mm for P6, P66

--- form-that-is-not-there
form works-round "round thread"
  pitch line 0.5
  root       1
thread P12
  # error 14-23 [unknown-form] there is no form of thread `works-rond`; write `works-round`
  form       works-rond
  pitch      1.75 mm

--- sign-of-a-hazard-that-is-not-there
sign works-noise "Noise"
  number     W999
  warns
  outline    "M10 90 L50 10 L90 90 Z"
hazard works-din "Noise"
  # error 14-23 [unknown-sign] there is no sign `works-nois`; write `works-noise`
  sign       works-nois
  warning: The noise can deafen. Wear ear protection.

--- sign-of-gear-that-is-not-there
gear works-apron "apron"
  # error 14-29 [unknown-sign] there is no sign `wear-works-apron`; `matchmark kinds signs` lists them
  sign       wear-works-apron

--- gear-that-is-not-there
gear works-mask "mask"
hazard works-dust "Dust"
  # error 26-35 [unknown-gear] there is no protective gear `works-hood`; declare it: `gear works-hood "..."`
  wear       works-mask, works-hood
  warning: Dust can harm the lungs. Wear the mask.

--- outline-that-cannot-be-drawn
sign works-arc "Arc"
  warns
  # error 14-42 [bad-outline] the outline of sign `works-arc` cannot be drawn; write it as `"M58 8 L30 55 L47 55 Z"`, in a square of 100
  outline    "M10 90 A50 10 0 0 1 90 90 Z"

--- outline-of-script
sign works-script "Script"
  warns
  # error 14-23 [bad-outline] the outline of sign `works-script` cannot be drawn; write it as `"M58 8 L30 55 L47 55 Z"`, in a square of 100
  outline    "<script>"

--- outline-in-two-lines
sign works-lines "Lines"
  forbids
  outline    "M10 90 L50 10"
  outline    "M20 90 L50 30 Z"

--- hazard-order-kept
hazard works-press "Press"
  order      shut-down, hang-lock, try-out
  danger: The press crushes. Lock it and try it before you reach in.
kind works-press-drive "press drive" is energy
  states     runs, stands, locked, tried
  shut-down  runs -> stands by hand from outside
  hang-lock  stands -> locked by hand from outside
  try-out    locked -> tried by hand from outside
  give-back  tried, locked, stands -> runs by hand from outside
  hazard     works-press until tried on reach

--- hazard-order-broken
hazard works-press "Press"
  order      shut-down, hang-lock, try-out
  danger: The press crushes. Lock it and try it before you reach in.
kind works-press-drive "press drive" is energy
  states     runs, stands, tried, locked
  shut-down  runs -> stands by hand from outside
  # error 3-9 [bad-kind] kind `works-press-drive`: `try-out` comes before `hang-lock`; let `try-out` start from the state to which `hang-lock` leads
  try-out    stands -> tried by hand from outside
  hang-lock  tried -> locked by hand from outside
  give-back  locked, tried, stands -> runs by hand from outside
  hazard     works-press until locked on reach

--- class-of-no-tool
tool-kind works-puller "puller"
  # error 14-17 [syntax] expected a class: `none`, `basic`, `supplied`, `available` or `special` after `class`, found `rare`; a line of this sort: `class basic`
  class      rare

--- good-for-no-number
kind works-hook "hook" is fastener
  states     shut, open
  unhook     shut -> open by hand
  hook       open -> shut by hand
  # error 12-15 [syntax] expected a count after `good for`, found `many`; a line of this sort: `good for 30 times`
  good for many times
