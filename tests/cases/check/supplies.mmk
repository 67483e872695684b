# What is listed against what is used, what is declared against what is filled, and what wears by being parted.

--- boiler
device boiler "Boiler"

part tank "tank"
part lid "lid"
fluid charge in tank 1.2 l kind coolant
fastener pins "lid pin" 3 x split-pin 2 x 20
  holds      lid to tank
part brushes "brush" 2 x plain-part

--- as-much-as-there-is
use "boiler.mmk"
guide as-much-as-there-is "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1.5 l for charge

work

step change "Change it"
  drain      charge
  dispose    charge as coolant-waste
  fill       charge with charge-new

--- said-as-much
use "boiler.mmk"
guide said-as-much "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1.5 l for charge

work

step change "Change it"
  drain      charge 1.2 l
  dispose    charge as coolant-waste
  fill       charge 1.2 l with charge-new

--- said-within-a-twentieth
use "boiler.mmk"
guide said-within-a-twentieth "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1.5 l for charge

work

step change "Change it"
  drain      charge 1.15 l
  dispose    charge as coolant-waste
  fill       charge 1200 ml with charge-new

--- drained-too-little
use "boiler.mmk"
guide drained-too-little "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1.5 l for charge

work

step change "Change it"
  # warning 3-7 [wrong-amount] less than there is
  drain      charge 1.0 l
  dispose    charge as coolant-waste
  fill       charge with charge-new

--- filled-too-much
use "boiler.mmk"
guide filled-too-much "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1.5 l for charge

work

step change "Change it"
  drain      charge
  dispose    charge as coolant-waste
  # warning 3-6 [wrong-amount] more than there is
  fill       charge 1.4 l with charge-new

--- filled-more-than-is-listed
use "boiler.mmk"
guide filled-more-than-is-listed "Change the coolant"
  for        competent
  # warning 14-23 [short-supply] 200 ml more is used
  supply     charge-new "coolant", 1000 ml for charge

work

step change "Change it"
  drain      charge
  dispose    charge as coolant-waste
  fill       charge with charge-new

--- listed-by-weight
use "boiler.mmk"
guide listed-by-weight "Change the coolant"
  for        competent
  supply     charge-new "coolant", 1 kg for charge

work

step change "Change it"
  drain      charge
  dispose    charge as coolant-waste
  fill       charge with charge-new

--- filled-twice
use "boiler.mmk"
guide filled-twice "Rinse and change the coolant"
  for        competent
  # warning 14-23 [short-supply] 0.9 l more is used
  supply     charge-new "coolant", 1.5 l for charge

work

step rinse "Rinse it"
  drain      charge
  dispose    charge as coolant-waste
  fill       charge with charge-new

step change "Change it"
  drain      charge
  dispose    charge as coolant-waste
  fill       charge with charge-new

--- pins-enough
use "boiler.mmk"
guide pins-enough "Take the lid off"
  for        competent
  supply     pins-new "split pin 2 x 20", 3, 0.40 EUR for pins
  tool       pliers "pliers"

take-apart

step open "Take the lid off"
  draw       pins with pliers
  remove     lid

put-back
  derived

--- pins-one-short
use "boiler.mmk"
guide pins-one-short "Take the lid off"
  for        competent
  # warning 14-21 [short-supply] 1 more is used
  supply     pins-new "split pin 2 x 20", 2, 0.40 EUR for pins
  tool       pliers "pliers"

take-apart

step open "Take the lid off"
  draw       pins with pliers
  remove     lid

put-back
  derived

--- pins-far-short
use "boiler.mmk"
guide pins-far-short "Take the lid off"
  for        competent
  # warning 14-21 [short-supply] 2 more are used
  supply     pins-new "split pin 2 x 20", 1, 0.40 EUR for pins
  tool       pliers "pliers"

take-apart

step open "Take the lid off"
  draw       pins with pliers
  remove     lid

put-back
  derived

--- brushes-enough
use "boiler.mmk"
guide brushes-enough "Renew the brushes"
  goal       replace brushes with brushes-new
  for        competent
  spare      brushes-new "brush", 2, 2 EUR for brushes

take-apart

step out "Take them out"
  remove     brushes
  replace    brushes with brushes-new

put-back
  derived
test runs "It runs"
  proves     brushes

--- brushes-one-short
use "boiler.mmk"
guide brushes-one-short "Renew the brushes"
  goal       replace brushes with brushes-new
  for        competent
  # warning 14-24 [short-supply] 1 more is used
  spare      brushes-new "brush", 1, 2 EUR for brushes

take-apart

step out "Take them out"
  remove     brushes
  replace    brushes with brushes-new

put-back
  derived
test runs "It runs"
  proves     brushes

--- frail-kinds
kind frail-plug "frail plug" is connector
  states     plugged, free
  pull-plug  plugged -> free by hand
  plug-in    free -> plugged by hand
  good for 2 times
kind frail-tie "frail tie" is bond
  states     set, free
  pull-off   set -> free by hand
  stick      free -> set by hand
  good for 1 times
  one use

device lead "Lead"

part base "base"
part board "board"
connector plug "plug" kind frail-plug
  joins      base to board
bond tie "tie" kind frail-tie
  joins      base to board

--- parted-twice
use "frail-kinds.mmk"
guide parted-twice "Try the lead"
  for        competent

work

step time-1 "Part it and make it again"
  pull-plug  plug
  plug-in    plug

step time-2 "Part it and make it again"
  pull-plug  plug
  plug-in    plug

--- parted-three-times
use "frail-kinds.mmk"
guide parted-three-times "Try the lead"
  for        competent

work

step time-1 "Part it and make it again"
  pull-plug  plug
  plug-in    plug

step time-2 "Part it and make it again"
  pull-plug  plug
  plug-in    plug

step time-3 "Part it and make it again"
  pull-plug  plug
  # warning 3-9 [worn-out] once too often
  plug-in    plug

--- renewed-each-time
use "frail-kinds.mmk"
guide renewed-each-time "Try the tie"
  for        competent
  supply     tie-new "frail tie", 2 for tie

work

step one "Part it"
  pull-off   tie
  stick      tie with tie-new

step two "Part it again"
  pull-off   tie
  stick      tie with tie-new

--- lark-brake
device lark-brake "Lark brake"
part caliper "brake caliper"
fluid brake-oil "brake fluid" in caliper 40 ml kind brake-fluid
bond ring "caliper ring" kind o-ring
  joins      hose-end to caliper
part hose-end "hose end"
fastener eye "eye bolt" 1 x banjo-bolt M10 x 20, hexagon-head 16
  holds      hose-end to caliper
  torque     20 N.m
function braking "The lever holds"
  through    caliper, brake-oil, eye

--- sealed-with-the-fluid
use "lark-brake.mmk"
guide sealed-with-the-fluid "Renew the ring"
  for        competent
  supply     ring-new "ring for brake fluid", 1 for ring
  supply     fluid-new "brake fluid", 40 ml for brake-oil

  tool       pan "drain pan"
  tool       spanner-16 "spanner 16"
  tool       torque-wrench "torque wrench 20 N·m"

take-apart

step open "Open the eye"
  drain      brake-oil with pan
  undo       eye with spanner-16
  remove     hose-end
  lift       ring

work

step clean "Clean the faces"
  text: With alcohol.
  dispose    brake-oil as brake-fluid-waste

put-back

step close "Close the eye"
  # error 3-6 [wrong-spare] not what is for it
  seat       ring with fluid-new
  fit        hose-end
  fasten     eye with spanner-16 to 20 N.m
  fill       brake-oil with fluid-new

test brakes "The lever holds"
  proves     braking

--- oil-pipe
device oil-pipe "Oil pipe"

part block "block"
part hose "hose" kind hose
connector eye "eye joint" 1 x banjo-joint M10, hexagon-head 16
  joins      hose to block
bond washers "copper washer" 2 x copper-washer
  joins      hose to block

--- bought-and-laid
use "oil-pipe.mmk"
guide bought-and-laid "Hose off"
  for        competent
  tool       s16 "spanner 16"
  supply     ring "copper washer", 2 for washers

take-apart

step out "Out"
  # warning 3-6 [nothing-behind] opened with what is in it
  undo       eye with s16
  lift       washers
  remove     hose

put-back
  derived

--- two-rings
device two-rings "Camera"

part body "body"
part back "back cover"
part door "door"
part cap "cap"
bond back-ring "back ring" kind o-ring 96 x 1.2
  joins      back to body
bond door-ring "door ring" kind o-ring 30 x 1
  joins      door to body
bond cap-ring "cap ring" kind o-ring 30 x 1
  joins      cap to body

--- one-kit-of-two-rings
use "two-rings.mmk"
guide one-kit-of-two-rings "Renew the rings"
  goal       lift back-ring, door-ring
  for        trained
  supply     kit "seal kit, both rings", 1 for back-ring, door-ring

take-apart

step open "Open it"
  remove     back
  lift       back-ring
  remove     door
  lift       door-ring

put-back
  derived

--- one-ring-for-two
use "two-rings.mmk"
guide one-ring-for-two "Renew the rings of one size"
  goal       lift cap-ring, door-ring
  for        trained
  # warning 14-17 [short-supply] 1 more is used
  supply     ring "O-ring 30 x 1", 1 for cap-ring, door-ring

take-apart

step open "Open it"
  remove     cap
  lift       cap-ring
  remove     door
  lift       door-ring

put-back
  derived
