# Lines that are not in the language: what was expected there, in the language's own words.

--- nothing-wrong
device lamp "Lamp"

part base "base"

--- unclosed-text
# error 13-17 [syntax] the text that starts here has no closing `"`; close it
device lamp "Lamp

part base "base"

--- no-name
# error 6-11 [syntax] expected a name after `part`, found `"base"`; a name of one word stands before the title: `part base`
part "base"

--- keyword-as-a-name
device lamp "Lamp"

# error 6-9 [syntax] expected a name after `part`, found `with`; `with` ties the parts of a line together, and names nothing: `part-with`
part with "base"

--- unknown-word
# error 1-6 [syntax] expected a declaration, found `devise`; write `device`
devise lamp "Lamp"

--- unknown-detail
device lamp "Lamp"

part cover "cover"
  # error 3-7 [syntax] expected a detail of a part, found `cover`; write `covers`
  cover      base

part base "base"

--- detail-of-another-declaration
device lamp "Lamp"

part base "base"
  # error 3-8 [syntax] `torque` is not a detail of a part; a part takes `kind`, `in`, `carries`, `covers`, `blocks`, `feeds`, `behind`, `under`, `needs`, `limit`, `renewed as`, `lets nothing out`, `at`, `keep`, `one use`, `used again if`, `used again`, `only`, `price`, `counts as`, `authorised remotely`, and prose such as `note:`
  torque     0.8 N.m

--- detail-in-the-first-column
device lamp "Lamp"

part base "base"
# error 1-6 [syntax] `covers` is a detail of a part, and starts in the first column; indent it
covers base

--- too-deep
device lamp "Lamp"

part base "base"
  keep       order
      # error 7-10 [syntax] this line is indented deeper than the details above it, and `keep` takes none of its own; indent it as the lines above
      note: Deeper than the line above.

--- declaration-indented
device lamp "Lamp"

  # error 3-6 [syntax] `part` starts a declaration, and does not start in the first column; start it in the first column
  part base "base"

--- nothing-after-with
device lamp "Lamp"

part base "base"

guide nothing-after-with "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  # error 23-23 [syntax] expected a tool after `with`, found end of line; a line of this sort: `undo lid-screws with driver-10`
  remove     base with

put-back
  derived

--- no-unit
device lamp "Lamp"

part base "base"
part cover "cover"
fastener cover-screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base
  # error 17-17 [syntax] expected a unit, such as mm or N.m, after `0.8`, found end of line; a line of this sort: `torque 0.5 N.m`
  torque     0.8

--- range-turned-round
device lamp "Lamp"

part base "base"
part bulb "bulb"
  # error 21-24 [syntax] expected `least` or `most` after `at`, found `lest`; write `least`
  limit      gap at lest 2 mm

--- prose-without-a-colon
device lamp "Lamp"

part base "base"

guide prose-without-a-colon "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  remove     base
  # error 10-10 [syntax] expected `:` after `warning`; write `warning:`
  warning The edge is sharp.

put-back
  derived

--- unknown-prose
device lamp "Lamp"

part base "base"
  # error 3-8 [syntax] expected prose, found `warnig:`; write `warning`
  warnig: The edge is sharp.

--- joining-word-on-its-own-line
device lamp "Lamp"

part base "base"

guide joining-word-on-its-own-line "Take the base off"
  for        competent
  tool       pick "opening pick"

take-apart

step off "Take the base off"
  remove     base
  # error 3-6 [syntax] expected a verb, found `with`; `with` belongs on the line of its action
  with       pick

put-back
  derived

--- action-outside-a-step
device lamp "Lamp"

part base "base"

guide action-outside-a-step "Take the base off"
  for        competent

take-apart
  # error 3-8 [syntax] `remove` stands in no step; write `step NAME` in the first column above it
  remove     base

put-back
  derived

--- state-arrow-wrong
kind flap "flap" is part
  states     shut, open
  # error 19-19 [syntax] expected `->` and the state it leads to after `shut`, found `=`; write `->`
  open       shut => open by hand

--- words-left-over
device lamp "Lamp"

# error 18-21 [syntax] expected `in`, `kind` or the end of the line after `"base"`, found `base`; say how many there are: `4 x base`; of one alone: `kind base`
part base "base" base

--- other-scripts
device Lampe "Lampe"

part Deckel "Deckel"
part 蓋 "蓋"
  covers     Deckel

guide other-scripts "蓋を外す"
  for        competent

take-apart

step ab "Abnehmen"
  remove     蓋
  remove     Deckel

put-back
  derived

--- name-with-a-line-below
device lamp "Lamp"

part base "base"
part cover "cover"
# a name that could not be read is not told again where it is used
# error 15-21 [syntax] expected `in`, `kind` or the end of the line after `cover`, found `_screws`; a name has letters, digits and hyphens
fastener cover_screws "cover screw" 2 x screw M3 x 8, hexalobular 10, pan
  holds      cover to base

guide name-with-a-line-below "Take the cover off"
  for        competent
  # error 21-31 [syntax] expected its description in double quotes after `driver`, found `hexalobular`; write `"hexalobular driver 10"`
  tool       driver hexalobular driver 10

take-apart

step off "Take the cover off"
  undo       cover-screws with driver
  remove     cover

put-back
  derived

--- use-without-quotes
# error 5-21 [syntax] expected a path in double quotes after `use`, found `nothing-wrong.mmk`; write `"nothing-wrong.mmk"`
use nothing-wrong.mmk

guide use-without-quotes "Take the base off"
  for        competent

take-apart

step off "Take the base off"
  remove     base

put-back
  derived
