# The shaft seal is renewed with the volute in place: the rotating unit is drawn out backwards.
use "pump.mmk"

guide renew-seal "Renew the shaft seal"
  goal       replace shaft-seal with seal-new
  for        trained
  spare      seal-new "shaft seal 24 mm", 1, 46.00 EUR for shaft-seal
  spare      sleeve-new "shaft sleeve 24 mm", 1, 28.00 EUR for shaft-sleeve
  supply     gasket-new "volute gasket", 1, 7.40 EUR for volute-gasket
  supply     ring-new "impeller O-ring", 1, 1.10 EUR for impeller-ring
  supply     glycol "water with 30 % glycol", 2.6 l, 11.00 EUR for coolant
  tool       lock "padlock with tag"
  tool       tester "voltage tester"
  tool       key-4 "hexagon key 4"
  tool       key-5 "hexagon key 5"
  tool       wrench-13 "socket wrench 13"
  tool       wrench-16 "socket wrench 16"
  tool       pan "drain pan 5 l"
  tool       puller "seal puller"
  tool       press "seal press"
  tool       micrometer "micrometer 25 mm"
  tool       torque-wrench "torque wrench 4 to 30 N·m"
  text: A drip below the back plate means a worn shaft seal. Follow the maker's instructions and the
    rules of your site for lock-out.

take-apart

step isolate "Lock the supply off"
  lock-off   supply with lock
  prove      supply below 50 V with tester
  text: Stop the pump. Hang your own lock on the isolator. Try the tester on a live point before and
    after.

step valves "Close the valves and let the pressure off"
  close      suction-valve, delivery-valve
  relieve    circuit-pressure
  text: Open the vent cock slowly. Wait until the gauge reads zero.

step drain "Drain the volute"
  drain      coolant with pan
  text: Put the pan under the drain cock. Open the cock. Expect 2.6 litres.

step guard "Take off the coupling guard"
  undo       guard-screws
  remove     guard
  photo "img/guard.svg" "The coupling guard, four screws"
    mark     guard-screws 0.06,0.11 0.94,0.11 0.06,0.89 0.94,0.89

step spacer "Take out the coupling spacer"
  mark       spacer across motor-hub, pump-hub
  undo       spacer-bolts
  remove     spacer
  text: Scribe one line over all three pieces. Support the spacer with one hand.

step draw-out "Draw out the rotating unit"
  caution: The unit weighs 14 kg, and can crush a foot. Grip it with both hands.
  undo       foot-bolt
  undo       volute-bolts
  separate   volute-gasket
  remove     bracket
  text: Undo the eight bolts in turn, half a turn each. Draw the unit straight back onto a bench.
  photo "img/flange.svg" "The rear flange, eight bolts"
    mark     volute-bolts 0.50,0.07 0.80,0.20 0.93,0.50 0.80,0.80 0.50,0.93 0.20,0.80 0.07,0.50 0.20,0.20

step impeller "Take off the impeller"
  undo       impeller-nut
  draw       impeller-key
  lift       impeller-ring
  remove     impeller
  text: Hold the pump hub in soft jaws. Slide the impeller off by hand.

step shims "Take off the shims"
  mark       impeller-shims
  remove     impeller-shims
  text: Thread the shims on a wire in their order.

step seal "Pull the shaft seal"
  pull-out   shaft-seal with puller
  text: Note the depth of the seal below the face.

work

step check-sleeve "Measure the sleeve"
  measure    shaft-sleeve diameter with micrometer, else replace shaft-sleeve with sleeve-new
  text: Measure at the seal's track, in two directions. Slide a worn sleeve off the shaft. Push the
    new sleeve against its shoulder.

step renew "Take the new seal"
  replace    shaft-seal with seal-new
  dispose    coolant as coolant-waste
  text: Keep the new seal in its wrapper until you need it. Never touch its faces.

put-back
  derived

step seal
  text: Wet the lip with clean coolant. Press the seal in square to the depth that you noted.

step shims
  text: Slide the shims off the wire in their old order.

step impeller
  text: Seat the new O-ring under the nut. Hold the pump hub while you tighten the nut.
test turn "The hub turns the impeller without a knock"
  when       impeller-nut tight, bracket out
  proves     rotor

step draw-out
  text: Lay the new gasket on dry faces. Enter the impeller without force. Start all bolts by hand.

step spacer
  text: Turn the hubs until the scribed lines meet.
test coupling "The coupling turns freely by hand through one turn"
  when       spacer-bolts tight, guard out
  proves     drive

step drain
  text: Close the drain cock. Fill through the vent cock until no bubble comes.

step valves "Open the valves"
  open       suction-valve, delivery-valve
  build-up   circuit-pressure
  text: Close the vent cock. Open the suction valve first. Let the gauge rise slowly to 1.5 bar.
test leak "No drop leaves the seal or the flange in ten minutes at 1.5 bar"
  when       coolant full, circuit-pressure pressurised, suction-valve open, delivery-valve open
  when       supply proved
  proves     shaft-seal, tightness

step isolate
  text: Look round the pump for tools and people. Take your own lock off.
