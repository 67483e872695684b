# Names that nothing has: kinds, verbs, units, items, states and the rest, each with the nearest spelling.

--- unknown-kind
device lamp "Lamp"

part base "base"
# error 39-42 [unknown-kind] there is no kind `scrw`; write `screw`
fastener base-screws "base screw" 2 x scrw M3 x 8, hexalobular 10, pan
  holds      base to base

--- unknown-kind-far
device lamp "Lamp"

# error 23-30 [unknown-kind] there is no kind `zeppelin`; `matchmark kinds` lists them
part base "base" kind zeppelin

--- unknown-kind-like-others
device lamp "Lamp"

part base "base"
part board "board" kind circuit-board
# error 27-34 [unknown-kind] there is no kind `flat-tab`; `matchmark kinds` lists them; with a word in common: `locking-tab-plug`, `flat-gasket` (a bond)
connector lead "lead" 2 x flat-tab
  joins      board to base

--- unknown-kind-of-energy
device lamp "Lamp"

part base "base"
# error 8-12 [unknown-kind] `mains` is an energy of no kind; add `kind KIND`; `matchmark kinds` lists them
energy mains "mains"
  feeds      base

--- unknown-verb
device lamp "Lamp"

part base "base"

guide unknown-verb "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  # error 3-7 [unknown-verb] there is no `remov` for `base` (part); write `remove`
  remov      base

put-back
  derived

--- verb-of-another-kind
device lamp "Lamp"

part base "base"

guide verb-of-another-kind "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  # error 3-6 [unknown-verb] there is no `undo` for `base` (part); write one of them: as it was assembled, `remove`, and `fit` to bring it back
  undo       base

put-back
  derived

--- unknown-unit
device lamp "Lamp"
  # error 18-20 [unknown-unit] there is no unit `grm`; units are written as in `0.5 N.m`, `40 mm`, `1.2 l`, `60 V`, `65 degC`
  mass       312 grm

part base "base"

--- unknown-item
device lamp "Lamp"

part base "base"
part cover "cover"
  # error 14-16 [unknown-item] there is no item `bse`; write `base`
  covers     bse

--- unknown-item-in-a-step
device lamp "Lamp"

part base "base"

guide unknown-item-in-a-step "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  # error 14-17 [unknown-item] there is no item `baze`; write `base`
  remove     baze

put-back
  derived

--- unknown-state
device lamp "Lamp"

part base "base"
part shade "shade"
  # error 19-22 [unknown-state] there is no state of `base` (part) called `ouut`; write `out`
  needs      base ouut to remove

--- unknown-need-verb
device lamp "Lamp"

part base "base"
part shade "shade"
  # error 26-32 [unknown-verb] there is no verb of kind `plain-part` called `remoove`; write `remove`
  needs      base out to remoove

--- unknown-variant
device lamp "Lamp"
  variant    eu, uk

# error 23-24 [unknown-variant] there is no variant `us`; write `uk`
part base "base" only us

--- unknown-face
device lamp "Lamp"

face front 74 x 128 mm

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  # error 14-17 [unknown-face] there is no face `frnt`; write `front`
  at         frnt 5,5 69,5

--- unknown-hazard
kind hot-lamp "hot lamp" is part
  states     in, out
  also       hot, cool
  remove     in -> out by hand
  fit        out -> in by hand
  let-cool   hot -> cool by hand
  warm-up    cool -> hot by hand
  # error 14-24 [unknown-hazard] there is no hazard `hot-surfice`; write `hot-surface`
  hazard     hot-surfice until cool on touch

--- unknown-guide
device lamp "Lamp"

part base "base"

guide unknown-guide "Take the base off"
  for        competent

take-apart

step off "Open it"
  # error 14-21 [unknown-guide] there is no guide `opn-lamp`; name the file of guide `opn-lamp` with `use` at the top of this file
  do         opn-lamp

put-back
  derived

--- unlisted-tool
device lamp "Lamp"

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  torque     0.8 N.m

guide unlisted-tool "Take the cover off"
  for        competent
  tool       driver-10 "hexalobular driver 10"

take-apart

step off "Take the cover off"
  # error 32-40 [unlisted-tool] there is no tool, spare or supply on the list called `driver-11`; write `driver-10`
  undo       cover-screws with driver-11
  remove     cover

put-back
  derived

--- unlisted-tool-far
device lamp "Lamp"

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  torque     0.8 N.m

guide unlisted-tool-far "Take the cover off"
  for        competent

take-apart

step off "Take the cover off"
  # error 32-42 [unlisted-tool] there is no tool, spare or supply on the list called `screwdriver`; list it in the guide's head: `tool screwdriver "..."`, or `spare screwdriver`
  undo       cover-screws with screwdriver
  remove     cover

put-back
  derived

--- unknown-proven
device lamp "Lamp"

part base "base"

guide unknown-proven "Renew the base"
  goal       replace base with base-new
  for        competent
  spare      base-new "base", 1, 3 EUR for base

take-apart

step off "Take the base off"
  remove     base
  replace    base with base-new

put-back
  derived
test stands "It stands"
  # error 14-17 [unknown-item] there is no item or function `bass`; write `base`
  proves     bass

--- unknown-limit
device lamp "Lamp"

part base "base"
  limit      play at most 1 mm

guide unknown-limit "Measure the play"
  for        competent

work

step measure "Measure"
  # error 14-17 [unknown-item] there is no item, or limit of an item, `plai`; declare it in the device's file: `part plai "..."`
  measure    plai at most 1 mm

--- missing-file
# error 5-17 [missing-file] named here
use "nowhere.mmk"

guide missing-file "Open it"
  for        competent

--- unlisted-spare-named-twice
# Told once, with both places.
device torch "Torch"

part lamp "lamp"

guide unlisted-spare-named-twice "Renew the lamp"
  # error 32-39 [unlisted-tool] there is no tool, spare or supply on the list called `lamp-new`; list it in the guide's head: `tool lamp-new "..."`, or `spare lamp-new`
  goal       replace lamp with lamp-new
  for        competent

take-apart

step lamp-out "Take the lamp out"
  remove     lamp

work

step renew "Take the new one"
  replace    lamp with lamp-new

put-back
  derived

test shines "It shines"
  proves     lamp
