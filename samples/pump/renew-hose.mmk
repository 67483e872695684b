# A cracked delivery hose: the same isolation, and a short job.
use "pump.mmk"

guide renew-hose "Renew the delivery hose"
  goal       replace delivery-hose with hose-new
  for        competent
  spare      hose-new "delivery hose 38 mm, 400 mm", 1, 19.00 EUR for delivery-hose
  supply     glycol "water with 30 % glycol", 2.6 l, 11.00 EUR for coolant
  tool       lock "padlock with tag"
  tool       tester "voltage tester"
  tool       nut-driver-7 "nut driver 7"
  tool       pan "drain pan 5 l"
  tool       torque-driver "torque driver 3 N·m"
  text: Renew a hose that is cracked, swollen or soft.

take-apart

step isolate "Lock the supply off"
  lock-off   supply with lock
  prove      supply below 50 V with tester
  text: Stop the pump. Hang your own lock on the isolator.

step valves "Close the valves and let the pressure off"
  close      suction-valve, delivery-valve
  relieve    circuit-pressure
  text: Open the vent cock slowly. Wait until the gauge reads zero.

step drain "Drain the volute"
  drain      coolant with pan
  text: Put the pan under the drain cock. Open the cock.

step hose "Take off the hose"
  slacken    upper-clamp, lower-clamp
  pull-off   delivery-end, delivery-joint
  remove     delivery-hose
  text: Twist the hose to free it. Never cut it on the spigot.

work

step renew "Take the new hose"
  replace    delivery-hose with hose-new
  dispose    coolant as coolant-waste

put-back
  derived

step hose
  text: Push each end on until it meets the shoulder. Set each clamp 5 mm from the end.

step drain
  text: Close the drain cock. Fill through the vent cock until no bubble comes.

step valves "Open the valves"
  open       suction-valve, delivery-valve
  build-up   circuit-pressure
  text: Close the vent cock. Open the suction valve first. Let the gauge rise slowly to 1.5 bar.
test leak "Both ends stay dry for ten minutes at 1.5 bar"
  when       coolant full, circuit-pressure pressurised, suction-valve open, delivery-valve open
  when       supply proved
  proves     delivery-hose, tightness
