# Shared by every guide that works at the input end: the motor is locked off and drawn back.
use "gearbox.mmk"

guide uncouple "Lock off the motor and part the coupling"
  goal       remove spider
  for        trained
  spare      spider-new "coupling star 55 mm", 1, 12.30 EUR for spider
  tool       padlock "padlock with tag"
  tool       voltage-tester "voltage tester, two poles"
  tool       spanner-10 "spanner 10"
  tool       spanner-18 "spanner 18"
  tool       calliper "calliper"
  tool       straightedge "straightedge 300 mm"
  tool       torque-wrench "torque wrench 8 to 70 N·m"

take-apart

step lock-out "Lock off the motor supply"
  lock-off   supply with padlock
  prove      supply with voltage-tester
  text: Follow the lock-out rules of the site. Try the start button. Check that nothing turns.

step guard-off "Take the guard off"
  undo       guard-screws with spanner-10
  remove     guard

step motor-back "Draw the motor back"
  mark       spider across motor-hub, gear-hub
  undo       motor-bolts with spanner-18
  draw-back  motor
  text: Scribe one line across both halves and the star. Keep the thin plates from under the motor feet in pairs.
  photo "img/coupling.svg" "Coupling between motor and gear unit, with the match mark"
    mark     spider 0.50,0.42
    mark     motor-bolts 0.10,0.83 0.17,0.83 0.27,0.83 0.34,0.83

step star-out "Take the coupling star out"
  remove     spider

work

step check-star "Measure the coupling star"
  measure    spider tooth-width at least 14.5 mm with calliper, else replace spider with spider-new

put-back
  derived

step star-out "Put the coupling star in"
  text: Bring the three marks into one line.

step motor-back "Bring the motor up"
  text: Leave a gap of 2 mm between the halves of the coupling. Put each plate back under its foot.

step lock-out "Give the supply back"
  text: Count the tools first. Follow the rules of the site to take the lock off.
test line "A straightedge across both halves shows a gap of 0.2 mm at most, all round"
  when       motor-bolts tight, guard out
  proves     alignment
  with       straightedge
