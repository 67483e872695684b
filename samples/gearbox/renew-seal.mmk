# The seal is changed from outside; the input cover and its shims stay in place.
use "gearbox.mmk"
use "uncouple.mmk"

guide renew-seal "Renew the input shaft seal"
  goal       press-in input-seal
  for        trained
  supply     seal-new "shaft seal 40 x 62 x 8", 1, 7.80 EUR for input-seal
  supply     oil-new "gear oil, viscosity grade 220", 4.8 l, 38.40 EUR for oil
  tool       spanner-10 "spanner 10"
  tool       breather-spanner "spanner 27"
  tool       pan "drain pan 10 l"
  tool       funnel "funnel"
  tool       nut-wrench "socket wrench 30"
  tool       hub-puller "puller with three legs"
  tool       key-pliers "flat pliers"
  tool       seal-puller "seal puller"
  tool       seal-press "seal press sleeve 60 mm"
  tool       torque-wrench "torque wrench 8 to 180 N·m"
  text: Renew the seal when oil drips from the input shaft. Look at the breather first: a blocked breather makes a good seal leak.

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
  text: Keep the hook off the shaft. Look for a groove that the lip has worn in the shaft.
  photo "img/seal.svg" "Section through the shaft seal in the input cover"
    mark     input-seal 0.50,0.36

work

step oil-away "Hand the old oil in"
  dispose    oil as waste-oil

put-back
  derived

step seal-out "Press the new seal in"
  text: Slide the seal over a sleeve that covers the keyway. Stop when the seal is flush with the cover.

step hub-off "Put the gear half of the coupling on"
  text: Wipe both tapers dry. Turn the nut with the hub held, not the gears.

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
test leak "No oil shows at the seal or the cock after one hour"
  when       oil full, breather tight
  proves     oil-tight
