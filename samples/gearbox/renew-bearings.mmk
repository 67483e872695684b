# The input shaft is drawn out whole, and its bearings are changed in the press.
use "gearbox.mmk"
use "uncouple.mmk"

guide renew-bearings "Renew the bearings of the input shaft"
  goal       replace front-bearing with front-new
  goal       replace rear-bearing with rear-new
  for        trained
  spare      front-new "ball bearing 6308", 1, 24.00 EUR for front-bearing
  spare      rear-new "ball bearing 6307", 1, 19.50 EUR for rear-bearing
  spare      shims-new "set of shims 0.05 to 0.50 mm", 1, 16.00 EUR for input-shims
  supply     gasket-new "input cover gasket", 1, 3.40 EUR for input-gasket
  supply     seal-new "shaft seal 40 x 62 x 8", 1, 7.80 EUR for input-seal
  supply     circlip-new "circlip 40 mm", 1, 0.60 EUR for front-circlip
  supply     oil-new "gear oil, viscosity grade 220", 4.8 l, 38.40 EUR for oil
  tool       spanner-10 "spanner 10"
  tool       breather-spanner "spanner 27"
  tool       pan "drain pan 10 l"
  tool       funnel "funnel"
  tool       nut-wrench "socket wrench 30"
  tool       hub-puller "puller with three legs"
  tool       key-pliers "flat pliers"
  tool       seal-puller "seal puller"
  tool       press "workshop press"
  tool       seal-press "seal press sleeve 60 mm"
  tool       cover-wrench "socket wrench 16"
  tool       scraper "plastic scraper"
  tool       hoist "hoist with sling, 100 kg"
  tool       circlip-pliers "circlip pliers, outside"
  tool       dial-gauge "dial gauge 0.01 mm"
  tool       torque-wrench "torque wrench 8 to 180 N·m"
  text: Renew both bearings together. The work takes two persons about half a day.

take-apart

step uncouple "Lock off the motor and part the coupling"
  do         uncouple

step drain "Drain the oil"
  undo       belly-screws with spanner-10
  remove     belly-plate
  undo       breather with breather-spanner
  undo       cock-ring
  remove     cock-cap
  open-cock  oil
  drain      oil with pan
  text: Drain the oil while it is warm. Catch it in the pan.
  photo "img/drain.svg" "Breather at the top, drain cock at the bottom of the housing"
    mark     breather 0.30,0.12
    mark     cock-cap 0.25,0.86

step hub-off "Take the gear half of the coupling off"
  warning: The hub comes free with a jerk and can crush a hand. Keep the puller central.
  undo       hub-nut with nut-wrench
  break-out  hub-fit with hub-puller
  remove     gear-hub
  draw       input-key with key-pliers

step seal-out "Pull the shaft seal out"
  pull-out   input-seal with seal-puller
  text: Keep the hook off the shaft.

step cover-off "Take the input cover off"
  undo       input-bolts with cover-wrench
  separate   input-gasket with scraper
  remove     input-cover
  mark       input-shims
  remove     input-shims
  text: Write the order and the outer face of each shim on its edge. Measure each shim before you hang it up.
  photo "img/input-cover.svg" "Six bolts of the input cover, seen from the motor"
    mark     input-bolts 0.86,0.5 0.68,0.812 0.32,0.812 0.14,0.5 0.32,0.188 0.68,0.188

step shaft-out "Draw the input shaft out"
  remove     input-shaft with hoist
  text: Put the sling round the shaft behind the pinion. Draw the shaft out level.
  photo "img/input-shaft.svg" "The input shaft with its bearings and the circlip"
    mark     input-shaft 0.50,0.50
    mark     front-bearing 0.30,0.34
    mark     rear-bearing 0.76,0.34
    mark     front-circlip 0.24,0.36

step bearings-off "Press the bearings off"
  spread     front-circlip with circlip-pliers
  press-out  front-fit with press
  remove     front-bearing
  press-out  rear-fit with press
  remove     rear-bearing
  text: Support the inner ring of each bearing.

work

step renew "Take the new bearings"
  replace    front-bearing with front-new
  replace    rear-bearing with rear-new
  dispose    oil as waste-oil

put-back
  derived

step bearings-off "Press the new bearings on"
  text: Press on the inner ring only. Stop when the ring touches its shoulder.
test turn-by-hand "Each bearing turns smoothly and silently by hand"
  when       input-shaft out, front-circlip in, rear-fit pressed
  proves     front-bearing, rear-bearing

step shaft-out "Fit the input shaft"
  text: Guide the pinion through the bore of the housing. Turn the shaft until its teeth mesh.

step cover-off "Put the shims and the input cover on"
  text: Lay the shims in as they are marked. Oil the threads. Tighten across the cover, never round it.

step float "Measure the end-float"
  measure    input-shaft end-float 0.05..0.15 mm with dial-gauge, else replace input-shims with shims-new
  text: Set the gauge on the shaft end. Push and pull the shaft ten times.

step seal-out "Press the new seal in"
  text: Slide the seal over a sleeve that covers the keyway. Stop when the seal is flush with the cover.

step drain "Fill the oil"
  close-cock oil
  fill       oil with funnel, oil-new
  fit        cock-cap
  fasten     cock-ring
  fit        belly-plate
  fasten     belly-screws with spanner-10
  fasten     breather with breather-spanner
  text: Fill until the oil stands in the middle of the level glass. Wait ten minutes. Read the level again.
test turning-free "The input shaft turns by hand through ten turns without a tight place"
  when       hub-nut tight, spider out
  proves     turning
test leak "No oil shows at the cover, the seal or the cock after one hour"
  when       oil full, breather tight
  proves     oil-tight
