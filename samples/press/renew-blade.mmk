# The short repair: the cutter is reached from the front, and its blade is changed on the bench.
use "press.mmk"
use "open-case.mmk"

guide renew-blade "Renew the cutter blade"
  goal       replace blade with blade-new
  for        competent
  spare      blade-new "cutter blade", 1, 21.00 EUR for blade
  tool       driver-10 "hexalobular driver 10"
  tool       driver-20 "hexalobular driver 20"
  text: A blunt blade leaves paper dust and ragged edges.

take-apart

step shared "Open the case"
  do         open-case

step drawer "Draw the media drawer"
  undo       drawer-lock
  pull-out   media-drawer

step bezel-open "Drop the front bezel"
  undo       bezel-screws
  unsnap     bezel-hooks
  open       front-bezel
  photo "img/front.svg" "Two screws below, four hooks above"
    mark     bezel-screws 0.07,0.93 0.93,0.93
    mark     bezel-hooks 0.15,0.05 0.40,0.05 0.60,0.05 0.85,0.05

step bezel-off "Take the front bezel away"
  unlock     panel-ribbon
  disconnect panel-ribbon
  lift-off   front-bezel

step cutter "Take out the cutter"
  caution: The blades can cut deep. Keep the blade guard closed.
  disconnect cutter-plug
  undo       cutter-screws
  remove     cutter-module

step blade "Take the blade off"
  undo       blade-screws
  remove     blade
  text: Slide the blade off to the side, not over the fixed blade.

work

step renew "Fit the new blade"
  replace    blade with blade-new
  text: Leave the wrapper on the edge until the blade is on its seat.

put-back
  derived

step blade
  text: Pull the wrapper off the edge. Push the blade against its stop while you tighten the screws.

step cutter
  text: Set the module on its two pegs.

step bezel-off
  text: Push the ribbon in to its white line before you lock it.

step power-on "Power for the trial"
  warning: The press is open while the supply is on, and a touch can give a shock. Keep hands and
    tools out of it.
  plug-in    mains
test trial "The self-test passes, and the cutter cuts a strip of paper through"
  when       mains plugged, front-bezel open
  proves     blade, cutting, self-test

step power-off "Isolate the press again"
  unplug     mains
test labels "Ten labels come out straight, with clean edges"
  when       mains plugged, drawer-lock tight, lid shut
  proves     loading
