# Screws and what is said of them: torques far from the usual one, drives of another size, drivers that make do,
# and screws that must not change places. Thread, grade, friction and drive are declared here, so that the numbers do not
# hang on the parts library.

--- own-threads
form works-form "thread of the works"
  pitch line 0.649519
  root       1.226869
thread W4
  form       works-form
  diameter   4 mm
  pitch      0.7 mm
  bears on   4.5..7 mm
thread W4.5
  form       works-form
  diameter   4.5 mm
  pitch      0.75 mm
thread W5
  form       works-form
  diameter   5 mm
  pitch      0.8 mm
thread W9
  pitch      1 mm
grade works-steel "steel of the works"
  tensile    800 MPa
  yield      640 MPa
  shear      0.84
friction works-wax "waxed"
  coefficient 0.12
drive works-star "works star"
  driven by  star-driver or star-key
  size       20 across 3.86 mm for W4 "works standard"
  size       25 for W4.5, W5
  at a pinch slotted-driver 2.5 for 20
  at a pinch coin for 25
drive works-hexagon "works hexagon"
  driven by  star-driver

--- dev-torque-as-usual
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     3.1 N.m

--- torque-as-usual
use "dev-torque-as-usual.mmk"
guide torque-as-usual "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 3.1 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-torque-a-tenth-above
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     3.35 N.m

--- torque-a-tenth-above
use "dev-torque-a-tenth-above.mmk"
guide torque-a-tenth-above "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 3.35 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-torque-well-above
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     3.6 N.m

--- torque-well-above
use "dev-torque-well-above.mmk"
guide torque-well-above "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 3.6 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  # warning 3-9 [unusual-torque] more than usual
  derived

--- dev-torque-far-below
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     0.5 N.m

--- torque-far-below
use "dev-torque-far-below.mmk"
guide torque-far-below "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 0.5 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  # warning 3-9 [unusual-torque] less than a fifth of the usual
  derived

--- dev-torque-past-its-grade
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     6 N.m

--- torque-past-its-grade
use "dev-torque-past-its-grade.mmk"
guide torque-past-its-grade "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 6 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  # error 3-9 [torque-too-high] shears here
  derived

--- dev-torque-of-a-thread-without-numbers
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W9 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     40 N.m

--- torque-of-a-thread-without-numbers
use "dev-torque-of-a-thread-without-numbers.mmk"
guide torque-of-a-thread-without-numbers "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-wrench "torque wrench 40 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-torque-low-without-a-grade
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-wax
  holds      cover to base
  torque     0.3 N.m

--- torque-low-without-a-grade
use "dev-torque-low-without-a-grade.mmk"
guide torque-low-without-a-grade "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 0.3 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-drive-of-its-usual-size
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W5 x 10, works-star 25
  holds      cover to base

--- drive-of-its-usual-size
use "dev-drive-of-its-usual-size.mmk"
guide drive-of-its-usual-size "Take it off"
  for        competent
  tool       star-25 "star driver 25"

take-apart

step off "Take it off"
  undo       screws with star-25
  remove     cover

put-back
  derived

--- dev-drive-a-size-too-small
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W5 x 10, works-star 20
  holds      cover to base

--- drive-a-size-too-small
# advice elsewhere [unusual-driver] another size than usual
use "dev-drive-a-size-too-small.mmk"
guide drive-a-size-too-small "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-drive-of-a-thread-not-listed
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W9 x 10, works-star 30
  holds      cover to base

--- drive-of-a-thread-not-listed
use "dev-drive-of-a-thread-not-listed.mmk"
guide drive-of-a-thread-not-listed "Take it off"
  for        competent
  tool       star-30 "star key 30"

take-apart

step off "Take it off"
  undo       screws with star-30
  remove     cover

put-back
  derived

--- dev-blade-at-a-pinch
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20
  holds      cover to base

--- blade-at-a-pinch
use "dev-blade-at-a-pinch.mmk"
guide blade-at-a-pinch "Take it off"
  for        competent
  tool       blade "slotted driver 2.5"

take-apart

step off "Take it off"
  # advice 3-6 [stand-in-driver] not the driver for it
  undo       screws with blade
  remove     cover

put-back
  derived

--- dev-blade-of-another-size
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20
  holds      cover to base

--- blade-of-another-size
use "dev-blade-of-another-size.mmk"
guide blade-of-another-size "Take it off"
  for        competent
  tool       blade "slotted driver 4"

take-apart

step off "Take it off"
  # error 3-6 [wrong-driver] wrong tool
  undo       screws with blade
  remove     cover

put-back
  derived

--- dev-coin-at-a-pinch
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W5 x 10, works-star 25
  holds      cover to base

--- coin-at-a-pinch
use "dev-coin-at-a-pinch.mmk"
guide coin-at-a-pinch "Take it off"
  for        competent
  tool       coin "coin"

take-apart

step off "Take it off"
  # advice 3-6 [stand-in-driver] not the driver for it
  undo       screws with coin
  remove     cover

put-back
  derived

--- blade-beside-the-right-driver
use "dev-blade-at-a-pinch.mmk"
guide blade-beside-the-right-driver "Take it off"
  for        competent
  tool       star-20 "star driver 20"
  tool       blade "slotted driver 2.5"

take-apart

step off "Take it off"
  undo       screws with star-20, blade
  remove     cover

put-back
  derived

--- blade-not-named
use "dev-blade-at-a-pinch.mmk"
guide blade-not-named "Take it off"
  for        competent
  tool       blade "slotted driver 2.5"

take-apart

step off "Take it off"
  # advice 3-6 [stand-in-driver] not the driver for it
  undo       screws
  remove     cover

put-back
  derived

--- dev-next-thread
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W4 x 10, works-hexagon 20, pan
  holds      cover to base
fastener rear "rear screw" 2 x screw W4.5 x 10, works-hexagon 20, pan
  holds      cover to base

--- next-thread
# warning elsewhere [look-alikes] W4.5 10 mm
use "dev-next-thread.mmk"
guide next-thread "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-thread-but-one
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W4 x 10, works-hexagon 20, pan
  holds      cover to base
fastener rear "rear screw" 2 x screw W5 x 10, works-hexagon 20, pan
  holds      cover to base

--- thread-but-one
use "dev-thread-but-one.mmk"
guide thread-but-one "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-next-thread-told
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W4 x 10, works-hexagon 20, pan
  holds      cover to base
fastener rear "rear screw" 2 x screw W4.5 x 10, works-hexagon 20, pan
  holds      cover to base
  told by    "the black head"

--- next-thread-told
use "dev-next-thread-told.mmk"
guide next-thread-told "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-next-thread-other-head
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W4 x 10, works-hexagon 20, pan
  holds      cover to base
fastener rear "rear screw" 2 x screw W4.5 x 10, works-hexagon 20, countersunk
  holds      cover to base

--- next-thread-other-head
use "dev-next-thread-other-head.mmk"
guide next-thread-other-head "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-half-a-millimetre
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 10, works-star 20
  holds      cover to base
fastener rear "rear screw" 2 x screw W9 x 10.5, works-star 20
  holds      cover to base

--- half-a-millimetre
# warning elsewhere [look-alikes] W9 10.5 mm
use "dev-half-a-millimetre.mmk"
guide half-a-millimetre "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-three-quarters-of-a-millimetre
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 10, works-star 20
  holds      cover to base
fastener rear "rear screw" 2 x screw W9 x 10.75, works-star 20
  holds      cover to base

--- three-quarters-of-a-millimetre
# warning elsewhere [look-alikes] W9 10.75 mm
use "dev-three-quarters-of-a-millimetre.mmk"
guide three-quarters-of-a-millimetre "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-in-the-other-hole
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 6, works-star 20
  holds      cover to base
  depth      6.5 mm above cell
fastener rear "rear screw" 2 x screw W9 x 8, works-star 20
  holds      cover to base

--- longer-in-the-other-hole
# error elsewhere [too-deep] 8 mm long
use "dev-longer-in-the-other-hole.mmk"
guide longer-in-the-other-hole "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-in-a-deep-hole
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 6, works-star 20
  holds      cover to base
  depth      8 mm above cell
fastener rear "rear screw" 2 x screw W9 x 8, works-star 20
  holds      cover to base

--- longer-in-a-deep-hole
use "dev-longer-in-a-deep-hole.mmk"
guide longer-in-a-deep-hole "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-but-told
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 6, works-star 20
  holds      cover to base
  depth      6.5 mm above cell
fastener rear "rear screw" 2 x screw W9 x 8, works-star 20
  holds      cover to base
  told by    "the blue patch"

--- longer-but-told
use "dev-longer-but-told.mmk"
guide longer-but-told "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-of-another-thread
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 6, works-star 20
  holds      cover to base
  depth      6.5 mm above cell
fastener rear "rear screw" 2 x screw W4 x 8, works-star 20
  holds      cover to base

--- longer-of-another-thread
use "dev-longer-of-another-thread.mmk"
guide longer-of-another-thread "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-and-hardly-seen
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener front "front screw" 2 x screw W9 x 6, works-star 20
  holds      cover to base
  depth      6.2 mm above cell
fastener rear "rear screw" 2 x screw W9 x 6.5, works-star 20
  holds      cover to base

--- longer-and-hardly-seen
# error elsewhere [too-deep] 6.5 mm long
use "dev-longer-and-hardly-seen.mmk"
guide longer-and-hardly-seen "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front, rear with star-20
  remove     cover

put-back
  derived

--- dev-longer-than-its-hole
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20
  holds      cover to base
  depth      9.5 mm above cell

--- longer-than-its-hole
# error elsewhere [too-deep] 10 mm long
use "dev-longer-than-its-hole.mmk"
guide longer-than-its-hole "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-longer-than-its-hole-above-nothing-named
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20
  holds      cover to base
  depth      9.5 mm
  told by    "the red head"

--- longer-than-its-hole-above-nothing-named
# error elsewhere [too-deep] 10 mm long
use "dev-longer-than-its-hole-above-nothing-named.mmk"
guide longer-than-its-hole-above-nothing-named "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-as-long-as-its-hole
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20
  holds      cover to base
  depth      10 mm above cell

--- as-long-as-its-hole
use "dev-as-long-as-its-hole.mmk"
guide as-long-as-its-hole "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- torque-of-a-screw-left-alone
use "own-threads.mmk"
device box "Box"

part base "base"
part cell "cell"
part cover "cover"
fastener screws "cover screw" 2 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cover to base
  torque     3.1 N.m
fastener cell-screw "cell screw" 1 x screw W4 x 10, works-star 20, works-steel, works-wax
  holds      cell to base
  # error 3-19 [torque-too-high] would shear
  torque     31 N.m

guide torque-of-a-screw-left-alone "Take the cover off"
  for        competent
  tool       star-20 "star driver 20"
  tool       torque-driver "torque driver 3.1 N·m"

take-apart

step off "Take it off"
  undo       screws with star-20
  remove     cover

put-back
  derived

--- dev-drive-of-nobody
use "own-threads.mmk"
device box "Box"

part base "base"
part cover "cover"
fastener front "front screw" 2 x screw W4 x 10, pan
  holds      cover to base

--- drive-of-nobody
# advice elsewhere [no-drive] any tool would do
use "dev-drive-of-nobody.mmk"
guide drive-of-nobody "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front with star-20
  remove     cover

put-back
  derived

--- dev-drive-misnamed
device drive-misnamed "Drive misnamed"
part base "base"
part cover "cover"
fastener front "front screw" 2 x screw M6 x 20, hex-socket 5
  holds      cover to base

--- drive-misnamed
# advice elsewhere [no-drive] any tool would do
use "dev-drive-misnamed.mmk"
guide drive-misnamed "Take it off"
  for        competent
  tool       driver "driver"

take-apart

step off "Take it off"
  undo       front with driver
  remove     cover

put-back
  derived

--- drive-of-nobody-and-no-tool
# advice elsewhere [no-drive] any tool would do
use "dev-drive-of-nobody.mmk"
guide drive-of-nobody-and-no-tool "Take it off"
  for        competent
  tool       star-20 "star driver 20"

take-apart

step off "Take it off"
  undo       front
  remove     cover

put-back
  derived

--- tool-box
device tool-box "Tool box"

part case "case"
part lid "lid"
fastener screws "lid screw" 4 x screw M4 x 10, hexalobular 20
  holds      lid to case
  torque     1.2 N.m

--- listed-in-another-size
use "tool-box.mmk"
guide listed-in-another-size "Lid off and on"
  for        trained
  tool       t20 "hexalobular driver 25"
  tool       torque "torque driver 1 to 2 N·m"

take-apart

step off "Off"
  # error 3-6 [wrong-driver] with what?
  undo       screws
  remove     lid

put-back

step lid-on "On"
  fit        lid
  fasten     screws to 1.2 N.m
