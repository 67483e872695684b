# A cell inside feeds two boards through a plug each; a guard is held by screws over what the mains drives; a ram that is
# raised in its cylinder drives what hangs on it; a gauge and a plug close a vessel under pressure.
device winch "Boat winch"

part frame "frame"
energy mains "mains cord" kind mains-cord 230 V
  feeds      motor
part motor "motor" kind motor in frame
part chain "chain" kind chain in frame
part guard "chain guard" kind guard
  covers     chain
fastener guard-screws "guard screw" 2 x screw M5 x 12, cross-recess 2, pan
  holds      guard to frame
part jack "jack" kind cylinder in frame
  feeds      hook
energy ram "raised ram" in jack kind lifted-ram
part hook "hook" kind blade in frame
fastener hook-bolt "hook bolt" 1 x bolt M10 x 40, hexagon-head 16
  holds      hook to jack
part vessel "oil vessel" kind tank in frame
energy pressure "pressure in the vessel" in vessel kind stored-pressure 6 bar
  feeds      jack
part gauge "gauge" in vessel
fastener drain "drain plug" in vessel 1 x drain-plug G1/4, hexagon-head 17
part box "remote box"
part cell "cell" kind lithium-pouch-cell in box
  feeds      main through main-plug
  feeds      radio through radio-plug
part main "main board" kind circuit-board in box
part radio "radio board" kind circuit-board in box
connector main-plug "main plug" kind locking-tab-plug
  joins      cell to main
connector radio-plug "radio plug" kind locking-tab-plug
  joins      cell to radio
function hauls "It hauls"
  through    motor, chain
function lifts "It lifts"
  through    jack, hook

guide look "Look at all of it"
  for        competent
  tool       cross-2 "cross-recess driver 2"
  tool       spanner-16 "combination spanner 16"
  tool       spanner-17 "combination spanner 17"

take-apart

step open "Take it apart"
  unplug     mains
  undo       guard-screws with cross-2
  remove     guard
  lower      ram
  undo       hook-bolt with spanner-16
  remove     hook
  relieve    pressure
  remove     gauge
  undo       drain with spanner-17
  disconnect main-plug
  remove     main
  disconnect radio-plug
  remove     radio

put-back

step back "Put all back"
  fit        radio
  connect    radio-plug
  fit        main
  connect    main-plug
  fasten     drain with spanner-17
  fit        gauge
  build-up   pressure
  fit        hook
  fasten     hook-bolt with spanner-16
  raise      ram
  fit        guard
  fasten     guard-screws with cross-2
  plug-in    mains

test hauls "It hauls"
  proves     hauls, lifts
