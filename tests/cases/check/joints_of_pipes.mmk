# Situations of hoses: the clamp before the hose, an empty vessel before the joint, no run without oil.

--- mower
device mower "Hedge mower"

part frame "frame"
part engine "engine"
part crankcase "crankcase cover"
fastener case-bolts "crankcase bolt" 4 x screw M5 x 20, hexagon-head 8
  holds      crankcase to engine
  torque     5 N.m
fluid oil "engine oil" in engine 0.5 l kind oil
part tank "fuel tank"
fluid fuel "fuel" in tank 1.2 l kind fuel
part carburettor "carburettor"
part fuel-hose "fuel hose" kind hose
connector tank-end "hose at the tank" kind hose-barb
  joins      fuel-hose to tank
connector carb-end "hose at the carburettor" kind hose-barb
  joins      fuel-hose to carburettor
fastener tank-clip "clip at the tank" kind spring-clamp
  holds      fuel-hose to tank
fastener carb-clip "clip at the carburettor" kind spring-clamp
  holds      fuel-hose to carburettor
part breather "breather hose" kind hose
connector breather-end "breather at the tank" kind hose-barb
  joins      breather to tank
  lets nothing out
function running "It runs"
  through    engine, crankcase, carburettor, fuel-hose

--- clamp-first
use "mower.mmk"
guide clamp-first "Renew the hose"
  for        competent
  spare      hose-new "fuel hose", 1 for fuel-hose
  tool       pliers "pliers"

take-apart

step off "Take the hose off"
  drain      fuel
  squeeze    tank-clip, carb-clip with pliers
  pull-off   tank-end, carb-end
  remove     fuel-hose

work

step renew "Take the new one"
  replace    fuel-hose with hose-new

put-back
  derived

test run "It runs"
  proves     running

--- hose-before-its-clamp
use "mower.mmk"
guide hose-before-its-clamp "Renew the hose"
  for        competent
  spare      hose-new "fuel hose", 1 for fuel-hose
  tool       pliers "pliers"

take-apart

step off "Take the hose off"
  drain      fuel
  # error 3-10 [out-of-reach] cannot be got at here
  pull-off   tank-end
  squeeze    tank-clip, carb-clip with pliers
  pull-off   carb-end
  remove     fuel-hose

work

step renew "Take the new one"
  replace    fuel-hose with hose-new

put-back

step put-on "Put the hose on"
  fit        fuel-hose
  release    tank-clip with pliers
  # error 3-9 [out-of-reach] cannot be got at here
  push-on    tank-end
  push-on    carb-end
  release    carb-clip with pliers
  fill       fuel

test run "It runs"
  proves     running

--- full-tank
use "mower.mmk"
guide full-tank "Take the hose off"
  for        competent
  tool       pliers "pliers"

take-apart

step off "Take the hose off"
  # error 3-9 [unmet-need] too early here
  squeeze    tank-clip, carb-clip with pliers
  pull-off   tank-end, carb-end
  remove     fuel-hose

put-back
  derived

--- far-end-of-a-full-tank
use "mower.mmk"
guide far-end-of-a-full-tank "Take the carburettor off"
  for        competent
  tool       pliers "pliers"

take-apart

step off "Take the carburettor off"
  # error 3-9 [unmet-need] too early here
  squeeze    carb-clip with pliers
  pull-off   carb-end
  remove     carburettor

put-back
  derived

--- breather-of-a-full-tank
use "mower.mmk"
guide breather-of-a-full-tank "Take the breather off"
  for        competent

take-apart

step off "Take the breather off"
  pull-off   breather-end
  remove     breather

put-back
  derived

--- run-dry-and-unbolted
use "mower.mmk"
guide run-dry-and-unbolted "Renew the cover"
  for        competent
  spare      cover-new "crankcase cover", 1 for crankcase
  supply     oil-new "engine oil", 0.5 l for oil
  tool       spanner-8 "spanner 8"
  tool       torque-driver "torque driver 5 N·m"

take-apart

step open "Drain and open"
  drain      oil
  undo       case-bolts with spanner-8
  remove     crankcase

work

step renew "Take the new one"
  replace    crankcase with cover-new
  dispose    oil as waste-oil

put-back

step shut "Put the cover on"
  fit        crankcase

# error 6-8 [untested] proves nothing here
test run "It runs"
  proves     running

step fill "Bolts and oil"
  fasten     case-bolts with spanner-8 to 5 N.m
  fill       oil with oil-new

--- workshop-receiver
device workshop-receiver "Workshop receiver"

part receiver "receiver" kind tank
energy air "air in the receiver" in receiver kind stored-pressure 8 bar
part outlet "outlet valve" in receiver kind valve
part pipe "delivery pipe" kind hose
part block "pump block"
connector pipe-end "pipe at the receiver" kind compression-joint
  joins      pipe to outlet
connector pipe-joint "pipe at the block" kind compression-joint
  joins      pipe to block

--- pipe-parted-at-a-valve-in-the-vessel
use "workshop-receiver.mmk"
guide pipe-parted-at-a-valve-in-the-vessel "Take the pipe off"
  goal       remove pipe
  for        competent
  tool       spanner "spanner 22"

take-apart

step off "Take it off"
  # error 3-6 [unmet-need] too early here
  undo       pipe-end with spanner
  undo       pipe-joint with spanner
  remove     pipe

put-back
  derived

--- motor-cooler
device motor-cooler "Oil cooler"

part block "block"
part feed "feed pipe"
connector eye "feed eye" 1 x banjo-joint M12, hexagon-head 19
  joins      feed to block
bond eye-washers "eye washer" 2 x copper-washer
  joins      feed to block

--- washers-under-a-tight-joint
use "motor-cooler.mmk"
guide washers-under-a-tight-joint "Renew the washers"
  goal       replace eye-washers with washers-new
  for        competent
  spare      washers-new "copper washer 12 mm", 2 for eye-washers
  tool       spanner "spanner 19"

take-apart

step off "Take the washers off"
  # error 3-6 [out-of-reach] cannot be got at here
  lift       eye-washers
  # warning 3-6 [nothing-behind] opened with what is in it
  undo       eye with spanner
  remove     feed

work

step new "Take new ones"
  replace    eye-washers with washers-new

put-back

step join "Join the pipe"
  seat       eye-washers with washers-new
  fit        feed
  do-up      eye with spanner

--- washers-behind-an-open-joint
use "motor-cooler.mmk"
guide washers-behind-an-open-joint "Renew the washers"
  goal       replace eye-washers with washers-new
  for        competent
  spare      washers-new "copper washer 12 mm", 2 for eye-washers
  tool       spanner "spanner 19"

take-apart

step off "Take the washers off"
  # warning 3-6 [nothing-behind] opened with what is in it
  undo       eye with spanner
  lift       eye-washers

work

step new "Take new ones"
  replace    eye-washers with washers-new

put-back

step join "Join the pipe"
  seat       eye-washers with washers-new
  do-up      eye with spanner

--- brake-without-its-fluid
device brake-without-its-fluid "Cargo bike's brake"

part frame "frame"
part lever "brake lever"
  carries    reservoir
part reservoir "reservoir" kind tank
fluid dot "brake fluid" in reservoir 20 ml kind brake-fluid
part caliper "brake caliper"
part hose "brake hose" kind hose
connector nut "hose nut" kind compression-joint
  joins      hose to lever
connector banjo "hose end" kind face-seal-joint
  joins      hose to caliper
part pipe "spare stub" kind hose
connector stub "stub union" kind face-seal-joint
  joins      pipe to frame
  lets nothing out

--- brake-opened-with-its-fluid
use "brake-without-its-fluid.mmk"
# The fluid of a tank that the lever carries is no fluid of the lever. The other end of the hose is not told again.
guide brake-opened-with-its-fluid "Hose off"
  goal       remove hose
  for        competent
  tool       spanner "spanner"

take-apart

step off "Hose off"
  undo       banjo with spanner
  # warning 3-6 [nothing-behind] opened with what is in it
  undo       nut with spanner
  remove     hose
  undo       stub with spanner

put-back
  derived

test holds "It holds"
  proves     banjo, nut, stub

--- joint-that-joins-nothing
device joint-that-joins-nothing "Pipe stub"

part frame "frame"
connector union "union" kind face-seal-joint

--- opens-what-joins-nothing
use "joint-that-joins-nothing.mmk"
guide opens-what-joins-nothing "Union off"
  for        competent
  tool       spanner "spanner"

take-apart

step off "Union off"
  undo       union with spanner

put-back
  derived

test holds "It holds"
  proves     union
