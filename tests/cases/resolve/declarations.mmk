# Declarations that contradict each other: names twice, wrong roles, rings, kinds that lead nowhere, sections out of order.

--- item-twice
device lamp "Lamp"

part base "base"
# error 6-9 [duplicate-name] `base` is declared twice; give one of them another name
part base "foot"

--- item-named-as-a-kind-is-fine
device lamp "Lamp"

part screw "wing"

--- kind-of-the-library-twice
# error 6-10 [duplicate-name] `screw` is declared twice; give one of them another name
kind screw "screw" is fastener
  states     in, out
  undo       in -> out by hand
  fasten     out -> in by hand

--- tool-twice
device lamp "Lamp"

part base "base"

guide tool-twice "Take the base off"
  for        competent
  tool       pick "opening pick"
  # error 14-17 [duplicate-name] `pick` is declared twice; give one of them another name
  tool       pick "plastic pick"

take-apart

step off "Take the base off"
  remove     base with pick

put-back
  derived

--- state-twice
kind flap "flap" is part
  # error 26-29 [duplicate-name] kind `flap` has the state `shut` twice; give one of them another name
  states     shut, open, shut
  open       shut -> open by hand
  shut       open -> shut by hand

--- two-carriers
device lamp "Lamp"

part base "base"
  carries    bulb
part head "head"
  # error 14-17 [duplicate-name] `bulb` is already in `base`; leave it out of one of the two
  carries    bulb
part bulb "bulb"

--- carried-by-itself
device lamp "Lamp"

part base "base" in head
# error 21-24 [carrier-ring] `head` cannot be in `base`, which is in it; name what it goes with when that is taken out
part head "head" in base

--- part-that-holds
device lamp "Lamp"

part base "base"
part cover "cover"
  # error 3-7 [syntax] `holds` is not a detail of a part; a part takes `kind`, `in`, `carries`, `covers`, `blocks`, `feeds`, `behind`, `under`, `needs`, `limit`, `renewed as`, `lets nothing out`, `at`, `keep`, `one use`, `used again if`, `used again`, `only`, `price`, `counts as`, `authorised remotely`, and prose such as `note:`
  holds      base to cover

--- fastener-that-covers
device lamp "Lamp"

part base "base"
fastener base-screws "base screw" 2 x screw M3 x 8, hexalobular 10, pan
  # error 3-8 [syntax] `covers` is not a detail of a fastener; a fastener takes `kind`, `in`, `holds`, `behind`, `under`, `needs`, `torque`, `preload`, `depth`, `told by`, `limit`, `lets nothing out`, `at`, `keep`, `one use`, `used again if`, `used again`, `only`, `price`, `counts as`, `comes with`, and prose such as `note:`
  covers     base

--- fastener-as-a-part
device lamp "Lamp"

part base "base"
# error 35-39 [wrong-role] kind `screw` is a fastener, and `base-screws` is declared as a part; declare `base-screws` as a fastener
part base-screws "base screw" 2 x screw M3 x 8, hexalobular 10, pan

--- screw-that-holds-a-screw
device lamp "Lamp"

part base "base"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      foot-screw to base
fastener foot-screw "foot screw" 1 x screw M3 x 8, hexalobular 10, pan
  holds      base to base

--- no-kind
device lamp "Lamp"

part base "base"
# error 10-20 [unknown-kind] `base-screws` is a fastener of no kind; add `kind KIND`; `matchmark kinds` lists them
fastener base-screws "base screw"
  holds      base to base

--- member-that-is-not-there
device lamp "Lamp"

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  torque     0.8 N.m

guide member-that-is-not-there "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"

take-apart

step off "Take the cover off"
  # error 30-30 [wrong-count] `cover-screws` has 2 members, and no number 3; members are counted from 1 to 2
  undo       cover-screws 1, 3 with driver-10
  remove     cover

put-back
  derived

--- no-way-back
# error 6-14 [bad-kind] kind `glue-line`: no verb leads back from `cut`; add a verb from `cut`, or `may end in cut`
kind glue-line "glue line" is bond
  states     set, cut
  cut        set -> cut by hand

--- verb-of-the-language
kind odd-clip "odd clip" is fastener
  states     on, off
  # error 3-6 [syntax] `part` is a word of the language and cannot be a verb; give the verb another name, such as `part-on`
  part       on -> off by hand
  push       off -> on by hand

--- verb-of-the-compiler
kind odd-cell "odd cell" is part
  states     in, out
  # error 3-9 [bad-kind] `replace` is done to items of every kind; give the verb another name
  replace    in -> out by hand
  fit        out -> in by hand

--- no-way-there
# error 6-9 [bad-kind] kind `trap`: no verb leads to `ajar`; add a verb, `VERB in -> ajar`, or leave the state out
kind trap "trap" is part
  states     in, ajar, out
  remove     in -> out by hand
  fit        out -> in by hand
  close      ajar -> in by hand

--- no-states
# error 6-10 [bad-kind] kind `thing` has no states; add `states` with the assembled one first
kind thing "thing" is part
  remove     in -> out by hand

--- verb-between-sets
kind jar "jar" is part
  states     in, out
  also       full, empty
  remove     in -> out by hand
  fit        out -> in by hand
  # error 3-6 [bad-kind] `pour` leads from `full` to `out`, which belong to different sets of states; let it lead to a state of the same line, `states` or `also`
  pour       full -> out by hand
  fill       empty -> full by hand
  drain      full -> empty by hand

--- about-no-device
# error 7-21 [no-device] guide `about-no-device` is about no device; add `use "DEVICE.mmk"` at the top of the file
guide about-no-device "Open it"
  for        competent

--- sections-out-of-order
device lamp "Lamp"

part base "base"

guide sections-out-of-order "Take the base off"
  for        competent

put-back

step close "Put the base on"
  fit        base

# error 1-10 [section-order] `take-apart` stands after a later section; keep the order `before`, `take-apart`, `work`, `put-back`
take-apart

step open "Take the base off"
  remove     base

--- step-before-any-section
device lamp "Lamp"

part base "base"

guide step-before-any-section "Take the base off"
  for        competent

# error 1-4 [section-order] this step stands before any section; write `take-apart` on a line of its own above it
step open "Take the base off"
  remove     base

put-back
  derived

--- several-in-one-run
device lamp "Lamp"

# error 23-31 [unknown-kind] there is no kind `plain-prt`; write `plain-part`
part base "base" kind plain-prt
part cover "cover"
  # error 14-16 [unknown-item] there is no item `bse`; write `base`
  covers     bse
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  # error 14-19 [mixed-units] expected a torque
  torque     0.8 mm

--- seal-that-lies-at-itself
device hatch "Roof hatch"

part base "base"
part shade "shade"
part lid "lid"
  behind     shade
bond ring "ring" kind o-ring
  joins      lid, ring to base

--- cover-over-its-own-plug
device hand-dryer "Hand dryer"

part body "body"
part motor "motor" kind motor in body
part hood "hood"
  covers     motor, plug, screws
# warning 10-15 [closed-in] can only be reached when that is off
fastener screws "hood screw" 2 x screw M3 x 8, hexalobular 10
  holds      hood to body
  torque     0.5 N.m
# warning 11-14 [closed-in] can only be reached when that is off
connector plug "switch plug" kind locking-tab-plug
  joins      motor to hood

--- cover-that-opens-over-its-plug
device hand-dryer-2 "Hand dryer that opens"

part body "body"
part motor "motor" kind motor in body
part hood "hood" kind hinged-cover
  covers     motor, plug
connector plug "switch plug" kind locking-tab-plug
  joins      motor to hood
part flap "flap"
part lid "lid"
connector earth "earth lead" kind locking-tab-plug
  joins      lid to body
  behind     lid or flap

--- told-otherwise-than-meant
device wall-clock "Wall clock"

face back 74 x 128 mm
part case "case"
# error 21-26 [unknown-kind] there is no kind `hinged`; write `hinged-cover`
part lid "lid" kind hinged cover
fastener screws "lid screw" 4 x screw M3 x 8, hexagon 2.5
  holds      lid to case
  torque     0.5 N.m
  # error 3-20 [duplicate-name] a torque is told of `screws` twice; leave one of them out
  torque     0.6 N.m
  # warning 3-39 [off-face] 75,129 lies off `back`, which is 74 x 128 mm; places count in millimetres from the top left corner of the face
  at         back 5,5 69,5 5,123 75,129

--- torque-told-without-to
device desk-clock "Desk clock"

part case "case"
part lid "lid"
fastener screws "lid screw" 4 x screw M3 x 8, hexagon 2.5
  holds      lid to case
  torque     0.5 N.m
guide open-desk-clock "Open the clock"
  for        competent
  tool       key "hexagon key 2.5"
  tool       torque-driver "torque driver 0.3 to 1 N·m"

take-apart

step open "Open it"
  undo       screws with key
  remove     lid

put-back

step shut "Shut it"
  fit        lid
  # error 21-23 [mixed-units] taken for an amount
  fasten     screws 0.5 N.m
