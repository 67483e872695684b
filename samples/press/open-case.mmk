# The steps that every repair inside the press begins with.
use "press.mmk"

guide open-case "Open the case"
  goal       remove top-cover
  for        competent
  tool       driver-10 "hexalobular driver 10"
  tool       torque-driver "torque driver 0.25 to 1.2 N·m"
  text: Other guides use these steps to get inside.

take-apart

step unplug "Isolate the press"
  unplug     mains
  text: Switch the press off. Pull the supply cord out of the rear of the press. Keep the plug
    beside you while you work.

step cassette "Take out the ink ribbon cassette"
  open       lid
  remove     ink-cassette
  text: Lift the lid until its stay locks. Lift the cassette by its two grips.

step top "Take off the top cover"
  undo       top-inner-screws
  undo       top-screws
  remove     top-cover
  text: The two inner screws are longer. Keep them apart from the outer four. Lift the cover
    straight up.
  photo "img/top.svg" "The press from above, lid open"
    mark     top-screws 0.09,0.09 0.91,0.09 0.09,0.91 0.91,0.91
    mark     top-inner-screws 0.27,0.56 0.73,0.56

put-back
  derived

step top
  text: Lower the rear edge first. Start all six screws by hand before you tighten one.

step cassette
  text: Press the cassette down until both grips click. Close the lid gently.

step unplug
  text: Push the plug fully home.
