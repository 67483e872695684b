# Findings about words, and comments that silence a finding.

--- crate
device crate "Crate"

part base "base"
part lid "lid"
fastener lid-screws "lid screw" 2 x screw M4 x 12, hexalobular 20, pan
  holds      lid to base
  torque     1.8 N.m

--- warning-below
use "crate.mmk"
guide warning-below "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  # warning 3-10 [late-warning] read too late
  warning: The edge is sharp.

put-back
  derived

--- warning-above
use "crate.mmk"
guide warning-above "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  warning: The edge is sharp.
  undo       lid-screws with driver-20
  remove     lid
  note: The lid is heavy.

put-back
  derived

--- twenty-words
use "crate.mmk"
guide twenty-words "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  text: Lift the lid at its front edge until both of the lugs at its rear come free of the base.

put-back
  derived

--- twenty-one-words
use "crate.mmk"
guide twenty-one-words "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  # advice 16-108 [long-sentence] a sentence of 21 words; cut it in two, each of 20 words at most
  text: Go on. Lift the lid at its front edge until both of the lugs at its rear come free of the two bases.

put-back
  derived

--- two-in-one-sentence
use "crate.mmk"
guide two-in-one-sentence "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid
  # advice 9-43 [two-instructions] two instructions in one sentence; give each a sentence of its own
  text: Undo the screws and remove the lid.

put-back
  derived

--- allowed
use "crate.mmk"
guide allowed "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  fit        lid
  # warning 3-45 [unused-allowance] nothing here needs `no-torque` allowed; remove the comment
  # allow no-torque: this is for another rule
  # warning 3-34 [unused-allowance] nothing here needs `other-torque` allowed; remove the comment
  # allow other-torque: so is this
  fasten     lid-screws with driver-20

--- allowed-with-a-reason
use "crate.mmk"
guide allowed-with-a-reason "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-wrench "torque wrench 9 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  fit        lid
  # allow other-torque: class 12.9 screws, by the maker's sheet
  fasten     lid-screws with driver-20 to 9 N.m

--- allowed-without-a-reason
use "crate.mmk"
guide allowed-without-a-reason "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-wrench "torque wrench 9 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  fit        lid
  # error 3-22 [unused-allowance] `other-torque` is allowed for no reason; write `# allow other-torque: ` and the reason
  # allow other-torque
  # error 3-8 [other-torque] shears here
  fasten     lid-screws with driver-20 to 9 N.m

--- allowed-under-a-wrong-name
use "crate.mmk"
guide allowed-under-a-wrong-name "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-wrench "torque wrench 9 N·m"

take-apart

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back

step close "Put the lid on"
  fit        lid
  # warning 3-40 [unused-allowance] there is no rule `other-torqe` to allow; write `other-torque`
  # allow other-torqe: class 12.9 screws
  # error 3-8 [other-torque] shears here
  fasten     lid-screws with driver-20 to 9 N.m

--- comment-that-only-starts-so
use "crate.mmk"
guide comment-that-only-starts-so "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

step open "Take the lid off"
  # allow the glue to cool first
  undo       lid-screws with driver-20
  remove     lid

put-back
  derived

--- step-of-nothing
use "crate.mmk"
guide step-of-nothing "Take the lid off"
  for        competent
  tool       driver-20 "hexalobular driver 20"
  tool       torque-driver "torque driver 1.8 N·m"

take-apart

# warning 6-9 [empty-step] nothing is done here
step look "Look at the lid"

step open "Take the lid off"
  undo       lid-screws with driver-20
  remove     lid

put-back
  derived

step open "Put the lid on"
