# The long repair. The platen lies at the bottom of the press: almost all else comes out before it.
use "press.mmk"
use "open-case.mmk"

guide renew-platen "Renew the platen roller and the drive belt"
  goal       replace platen with platen-new
  for        trained
  spare      platen-new "platen roller", 1, 38.00 EUR for platen
  spare      belt-new "drive belt, 6 mm wide", 1, 9.50 EUR for main-belt
  spare      left-bush-new "left platen bush", 1, 3.20 EUR for left-bush
  spare      right-bush-new "right platen bush", 1, 3.20 EUR for right-bush
  spare      brush-new "static brush", 1, 6.80 EUR for static-brush
  supply     circlip-new "circlip 8", 1, 0.20 EUR for left-circlip
  supply     ties-new "cable tie 100 mm", 3, 0.30 EUR for cable-ties
  tool       driver-8 "hexalobular driver 8"
  tool       driver-10 "hexalobular driver 10"
  tool       driver-20 "hexalobular driver 20"
  tool       key-small "hexagon key 1.5"
  tool       key-large "hexagon key 2.5"
  tool       spring-tool "spring compressor"
  tool       ring-pliers "circlip pliers"
  tool       cutters "side cutters"
  tool       caliper "caliper 150 mm"
  tool       meter "meter"
  text: A worn platen prints pale bands. The bushes and the belt wear with it. They are renewed
    together. Allow three hours and a clear bench.

take-apart

step shared "Open the case"
  do         open-case

step drawer "Draw the media drawer"
  undo       drawer-lock
  pull-out   media-drawer
  text: Draw the drawer forwards to its stop. Leave it there.

step rear "Take off the rear cover"
  undo       rear-screws
  remove     rear-cover
  photo "img/rear.svg" "The rear, six screws"
    mark     rear-screws 0.05,0.06 0.50,0.06 0.95,0.06 0.05,0.94 0.50,0.94 0.95,0.94

step right "Take off the right panel"
  undo       right-screws
  remove     right-panel
  text: Stand the press on its left side for the lower screws. Set it upright again.

step left "Take off the left panel"
  undo       left-screws
  disconnect left-earth
  remove     left-panel
  text: The earth lead ties the panel to the frame. Pull the terminal by its sleeve, not by its
    wire.

step bezel-open "Drop the front bezel"
  undo       bezel-screws
  unsnap     bezel-hooks
  open       front-bezel
  text: Press the four hooks from above, from left to right. Lower the bezel onto a block 60 mm
    high.
  photo "img/front.svg" "Two screws below, four hooks above"
    mark     bezel-screws 0.07,0.93 0.93,0.93
    mark     bezel-hooks 0.15,0.05 0.40,0.05 0.60,0.05 0.85,0.05

step bezel-off "Take the front bezel away"
  unlock     panel-ribbon
  disconnect panel-ribbon
  lift-off   front-bezel
  text: Slide the bezel to the left to free its hinges.

step fan "Take out the fan"
  disconnect fan-plug
  undo       fan-screws
  remove     fan
  text: Note that the label of the fan faces the inside.

step head-ribbon "Free the print head ribbon"
  unlock     head-ribbon
  disconnect head-ribbon
  text: Draw the ribbon out straight. Fold it over the front of the frame.

step ties "Cut the harness free"
  cut        cable-ties
  text: Count three ties along the top rail.

step plugs "Unplug the control board"
  mark       feed-plug, take-up-plug
  disconnect feed-plug, take-up-plug
  disconnect sensor-plug, dc-plug, cutter-plug
  text: The plugs of the two motors fit each other's sockets. Write F on the plug of the feed motor.
    Write T on the other.
  photo "img/plugs.svg" "Five plugs along the lower edge"
    mark     feed-plug 0.17,0.75
    mark     take-up-plug 0.33,0.75
    mark     sensor-plug 0.49,0.75
    mark     dc-plug 0.66,0.75
    mark     cutter-plug 0.82,0.75

step tray "Take out the board tray"
  undo       tray-screws
  remove     board-tray
  text: The four screws stay in the tray. Tilt its top edge towards you. Lift it out.

step supply "Take out the supply module"
  warning: The module holds a charge that can give a severe shock. Never open its case.
  disconnect supply-earth
  undo       supply-screws
  remove     supply-module
  photo "img/supply.svg" "The supply module from the rear"
    mark     supply-screws 0.20,0.25 0.20,0.75 0.80,0.25 0.80,0.75

step shield "Take off the head shield"
  undo       shield-screws
  remove     shield
  text: Lift the shield straight up. Its edges are folded, and are not sharp.

step springs "Hold the head springs"
  compress   head-springs with spring-tool
  text: Set the compressor on the upper cup. Wind it until the arm no longer presses on the platen.
  photo "img/springs.svg" "The two springs above the head arm"
    mark     head-springs 0.30,0.43 0.70,0.43

step clutch "Take off the take-up clutch"
  slacken    clutch-screw
  remove     take-up-clutch
  text: Turn the screw out by one turn only. Slide the clutch off its shaft.

step head-arm "Take out the head arm"
  notice: A scratched print head prints white lines. Lay the arm on foam with the head upwards.
  push-off   pivot-clips
  draw       pivot-pin
  remove     head-arm
  text: Draw the pin out to the right. Hold the arm with the other hand.

step cutter "Take out the cutter"
  caution: The blades can cut deep. Keep the blade guard closed.
  undo       cutter-screws
  remove     cutter-module

step peel-bar "Take off the peel bar"
  undo       peel-screws
  remove     peel-bar
  text: Lift the bar at its left end first. A label edge may stick to it.

step brush "Take out the static brush"
  undo       brush-screws
  remove     static-brush
  text: Hold the brush by its holder, not by its bristles.

step guide-plate "Take out the guide plate"
  undo       guide-screws
  remove     guide-plate
  text: Tilt the plate forwards to clear the two pins.

step sensor "Take out the label sensor"
  unsnap     sensor-hooks
  remove     sensor-bracket
  text: Feed the lead through its hole with the bracket.

step gear-cover "Take off the gear cover"
  undo       gear-cover-screws
  remove     gear-cover
  photo "img/right.svg" "The gear cover, three screws"
    mark     gear-cover-screws 0.19,0.29 0.56,0.29 0.38,0.71

step slacken-belt "Slacken the drive belt"
  remove     tension-spring
  undo       tension-screw
  text: Hook the spring off the frame first.
  photo "img/belt.svg" "The belt, its idler gear and the tensioner"
    mark     tension-screw 0.45,0.70
    mark     tension-spring 0.58,0.87
    mark     main-belt 0.39,0.43

step belt "Take off the drive belt"
  remove     main-belt
  text: Roll the belt off the idler gear towards you.

step idler "Take off the idler gear and its shims"
  push-off   idler-clip
  remove     idler-gear
  mark       idler-shims
  remove     idler-shims
  text: Thread the shims on a wire in the order in which they come off.

step platen-gear "Take off the platen gear"
  mark       platen-gear
  push-off   gear-clip
  remove     platen-gear
  text: Put a dot of paint on the face that you see.

step motor "Take out the feed motor"
  undo       motor-screws
  remove     feed-motor
  text: Support the motor while you undo the second screw.

step motor-plate "Take off the motor plate"
  undo       motor-plate-screws
  remove     motor-plate
  photo "img/motor-plate.svg" "The motor plate, four screws"
    mark     motor-plate-screws 0.15,0.20 0.15,0.80 0.85,0.20 0.85,0.80

step right-bush "Take out the right bush"
  undo       right-bush-screws
  remove     right-bush
  text: Turn the bush a little to break its grip. Draw it off along the shaft.

step left-bush "Take out the left bush"
  spread     left-circlip
  remove     left-bush

step platen "Lift the platen out"
  remove     platen
  text: Lift the right end first. Do not touch the rubber with a greasy hand.

work

step check-brush "Measure the static brush"
  measure    static-brush length with caliper, else replace static-brush with brush-new
  text: Measure the shortest bristles, at three places.

step renew "Renew the worn parts"
  replace    platen with platen-new
  replace    left-bush with left-bush-new
  replace    right-bush with right-bush-new
  replace    main-belt with belt-new
  text: Compare each new part with the old one. Wipe the new platen with a dry lint-free cloth.

put-back
  derived

step platen
  text: Lower the left end first. The flat of the shaft faces the right side.

step left-bush
  text: Push the bush in until the groove shows all round. Seat the new circlip with its sharp edge
    outward.

step right-bush
  text: Turn the bush until its flat is level.
test roller "The platen turns freely and has no play"
  when       left-circlip in, right-bush-screws tight, motor-plate out
  proves     platen, left-bush, right-bush

step motor-plate
  text: Tighten the screws in diagonal order.

step idler
  text: Slide the shims off the wire in reverse order. Push the clip on until it snaps.

step belt
  text: Lay the belt round the motor pulley first. Roll it onto the idler gear without a tool.

step slacken-belt
  text: Tighten the screw before you hook the spring.
test drive "The motor pulley turns the platen without a slip"
  when       tension-spring in, gear-cover out, mains unplugged
  proves     main-belt, feeding

step head-arm
  text: Hold the arm level. Push the pin in from the right until both grooves show.

step springs
  text: Wind the compressor back slowly. Check that both springs sit in their cups.

step ties
  text: Lay the harness along the top rail. Cut the ends of the new ties flush.

step bezel-off
  text: Set the left hinge in first. Push the ribbon in to its white line before you lock it.

step power-on "Power for the trial"
  warning: The press is open while the supply is on, and a touch can give a shock. Keep hands and
    tools out of it.
  plug-in    mains
test trial "The self-test reports every module, the fan turns, and the cutter cycles"
  when       mains plugged, front-bezel open, left-panel out
  proves     self-test, cooling, cutting

step power-off "Isolate the press again"
  unplug     mains

step bezel-open
  text: Press the bezel home until all four hooks click.

step left
  text: Push the earth terminal on until it stops. Tuck its lead behind the rail.
test earth "Less than 0.1 ohm from the earth pin to the left panel and to the supply module"
  when       left-earth connected, supply-earth connected, rear-cover out, top-cover out
  when       mains unplugged
  proves     protective-earth
  with       meter
test labels "Ten labels come out straight"
  when       mains plugged, drawer-lock tight, lid shut
  proves     loading
