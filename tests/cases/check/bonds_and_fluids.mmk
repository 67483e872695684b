# Situations of glue, seals and fluids: a bond that is heated first, a fluid drained and filled, what is good for one use.

--- tablet
device tablet "Pocket display"

part frame "frame"
part back "back"
bond back-glue "back glue" kind heat-softened-glue 80 degC, 5 min
  joins      back to frame

--- heated-first
use "tablet.mmk"
guide heated-first "Take the back off"
  for        competent
  supply     glue-new "back glue", 1 for back-glue
  tool       heat-mat "heat mat"
  tool       pick "opening pick"

take-apart

step off "Take the back off"
  soften     back-glue with heat-mat
  separate   back-glue with pick
  remove     back

put-back
  derived

--- not-heated
use "tablet.mmk"
guide not-heated "Take the back off"
  for        competent
  supply     glue-new "back glue", 1 for back-glue
  tool       heat-mat "heat mat"
  tool       pick "opening pick"

take-apart

step off "Take the back off"
  # error 3-10 [wrong-state] `separate` starts from `soft`
  separate   back-glue with pick
  remove     back

put-back
  derived

--- still-glued
use "tablet.mmk"
guide still-glued "Take the back off"
  for        competent
  supply     glue-new "back glue", 1 for back-glue
  tool       heat-mat "heat mat"
  tool       pick "opening pick"

take-apart

step off "Take the back off"
  soften     back-glue with heat-mat
  # error 3-8 [still-held] would tear what holds it
  remove     back

put-back
  derived

--- glued-with-the-old-glue
use "tablet.mmk"
guide glued-with-the-old-glue "Take the back off"
  for        competent
  tool       heat-mat "heat mat"
  tool       pick "opening pick"

take-apart

step off "Take the back off"
  soften     back-glue with heat-mat
  separate   back-glue with pick
  remove     back

put-back
  # error 3-9 [used-twice] renewed by nothing here
  derived

--- radiator
device unit "Cooling unit"

part radiator "radiator"
part lower-hose "lower hose" kind hose
fluid coolant in radiator 1.2 l kind coolant
fastener lower-clamp "lower clamp" kind hose-clamp 20..32 mm, slotted 6
  holds      lower-hose to radiator
  needs      coolant drained to slacken

--- drained-and-filled
use "radiator.mmk"
guide drained-and-filled "Take the lower hose off"
  for        competent
  supply     coolant-new "coolant", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  drain      coolant
  dispose    coolant as coolant-waste
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back
  derived

--- water-for-coolant
use "radiator.mmk"
guide water-for-coolant "Take the lower hose off"
  for        competent
  # warning 14-24 [other-fluid] another fluid
  supply     coolant-new "water from the tap", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  drain      coolant
  dispose    coolant as coolant-waste
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back
  derived

--- not-drained
use "radiator.mmk"
guide not-drained "Take the lower hose off"
  for        competent
  supply     coolant-new "coolant", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  # error 3-9 [unmet-need] too early here
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back
  derived

--- not-filled-again
use "radiator.mmk"
guide not-filled-again "Take the lower hose off"
  for        competent
  supply     coolant-new "coolant", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  # error 3-7 [not-put-back] so from here on
  drain      coolant
  dispose    coolant as coolant-waste
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back

step hose-on "Put the hose on"
  fit        lower-hose
  tighten    lower-clamp with blade-6

--- old-coolant-poured-away
use "radiator.mmk"
guide old-coolant-poured-away "Take the lower hose off"
  for        competent
  supply     coolant-new "coolant", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  # error 3-7 [not-disposed] taken out of service here
  drain      coolant
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back
  derived

--- filled-too-soon
use "radiator.mmk"
guide filled-too-soon "Take the lower hose off"
  for        competent
  supply     coolant-new "coolant", 1.2 l for coolant
  tool       blade-6 "slotted driver 6"

take-apart

step hose-off "Take the hose off"
  drain      coolant
  dispose    coolant as coolant-waste
  slacken    lower-clamp with blade-6
  remove     lower-hose

put-back

step hose-on "Put the hose on"
  fill       coolant with coolant-new
  fit        lower-hose
  # error 3-9 [unmet-need] too early here
  tighten    lower-clamp with blade-6

--- one-use-pin
device hinge "Gate hinge"

part post "post"
part leaf "leaf"
fastener pin "split pin" 1 x split-pin 3 mm x 20
  holds      leaf to post

guide one-use-pin "Take the leaf off"
  for        competent
  tool       pliers "flat pliers"

take-apart

step off "Take the leaf off"
  draw       pin with pliers
  remove     leaf

put-back

step close "Put the leaf on"
  fit        leaf
  # error 3-8 [used-twice] renewed by nothing here
  insert     pin with pliers

--- used-again-pin
device hinge "Gate hinge"

part post "post"
part leaf "leaf"
fastener pin "split pin" 1 x split-pin 3 mm x 20
  holds      leaf to post
  used again

guide used-again-pin "Take the leaf off"
  for        competent
  tool       pliers "flat pliers"

take-apart

step off "Take the leaf off"
  draw       pin with pliers
  remove     leaf

put-back
  derived

--- one-use-on-the-item
device hatch "Roof hatch"

part ring "ring"
part hatch-lid "hatch lid"
bond gasket "gasket" kind loose-seal
  joins      hatch-lid to ring
  one use

guide one-use-on-the-item "Open the hatch"
  for        competent

take-apart

step off "Take the lid off"
  lift       gasket
  remove     hatch-lid

put-back
  # error 3-9 [used-twice] renewed by nothing here
  derived

--- supply-not-named
device hatch "Roof hatch"

part ring "ring"
part hatch-lid "hatch lid"
bond gasket "gasket" kind o-ring
  joins      hatch-lid to ring

guide supply-not-named "Open the hatch"
  for        competent
  supply     gasket-new "O-ring 30 mm", 1 for gasket

take-apart

step off "Take the lid off"
  lift       gasket
  remove     hatch-lid

put-back

step close "Put the lid on"
  seat       gasket
  fit        hatch-lid
