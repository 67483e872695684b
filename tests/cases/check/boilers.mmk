# A boiler under steam: full up to its seals, heated and not driven, its supply proved dead at the element. A pack that
# hangs on its own plug.

--- steam-boiler
device steam-boiler "Steam boiler"

energy mains "mains" kind mains-isolator 230 V
  feeds      element
part frame "frame"
part board "board" kind circuit-board
part lid "terminal lid" kind snap-cover
  covers     element, leads, bolts
part boiler "boiler" kind tank
  carries    element, valve
energy steam "steam in the boiler" in boiler kind boiler-pressure 1.2 bar
fluid water "boiler water" in boiler 6 l kind water
  needs      steam relieved to drain alone
part element "heating element" kind heating-element 2000 W
connector leads "element lead" 2 x spade
  joins      board to element
fastener bolts "flange bolt" 6 x bolt M6 x 20, hexagon-head 10
  holds      element to boiler
  torque     9 N.m
bond gasket "flange gasket" kind flat-gasket
  joins      element to boiler
part valve "safety valve" kind safety-valve
connector thread "valve thread" kind tapered-pipe-thread
  joins      valve to boiler
  lets nothing out
  needs      steam relieved to undo alone
function heating "The boiler heats and holds steam"
  through    boiler, thread, valve, element, leads

--- valve-off-a-cold-boiler
use "steam-boiler.mmk"
# The boiler is heated, not driven: nobody takes the lid off to prove the supply for the sake of a valve.
guide valve-off-a-cold-boiler "Renew the safety valve"
  goal       replace valve with valve-new
  for        trained
  spare      valve-new "safety valve", 1 for valve
  tool       lock "padlock"
  tool       wrench "pipe wrench"

take-apart

step off "Take the valve off"
  lock-off   mains with lock
  cool       steam
  relieve    steam
  undo       thread with wrench
  remove     valve

work

step renew "Take the new valve"
  replace    valve with valve-new

put-back
  derived

test holds "It heats to 1.2 bar and holds"
  proves     valve, heating

--- proved-with-the-lid-on
use "steam-boiler.mmk"
guide proved-with-the-lid-on "Look at the element"
  for        trained
  tool       lock "padlock"
  tool       tester "voltage tester"

take-apart

step off "Take the lid off"
  lock-off   mains with lock
  # error 3-7 [out-of-reach] cannot be got at here
  prove      mains below 50 V with tester
  remove     lid

put-back
  derived

--- full-boiler-opened
use "steam-boiler.mmk"
guide full-boiler-opened "Renew the gasket"
  goal       replace gasket with gasket-new
  for        trained
  spare      gasket-new "flange gasket", 1 for gasket
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       spanner "spanner 10"
  tool       wrench "torque wrench 5 to 15 N·m"

take-apart

step off "Take the element out"
  lock-off   mains with lock
  cool       steam, element
  relieve    steam
  remove     lid
  prove      mains below 50 V with tester
  disconnect leads
  # error 3-6 [unmet-need] too early here
  undo       bolts with spanner
  remove     element
  separate   gasket

work

step renew "Take the new gasket"
  replace    gasket with gasket-new

put-back
  derived

test holds "It heats to 1.2 bar and holds"
  proves     gasket, heating

--- dry-boiler-heated
use "steam-boiler.mmk"
guide dry-boiler-heated "Let the water out"
  goal       drain water
  for        trained
  tool       lock "padlock"

take-apart

step off "Let it out"
  lock-off   mains with lock
  cool       steam
  relieve    steam
  drain      water

put-back

step back "Heat it"
  # error 3-9 [on-over-joined] live from here
  # warning 3-9 [started-dry] runs dry
  restore    mains
  fill       water
  close-down steam

--- key-locked-pack
device key-locked-pack "Cargo bike"

part frame "frame"
part pack "traction pack" kind battery-pack 48 V
  feeds      controller through pack-plug
connector pack-plug "pack plug" kind locking-tab-plug
  joins      pack to controller
part controller "controller" kind controller
fastener screws "controller screw" 2 x screw M5 x 12, hexagon 4, cap
  holds      controller to frame
  torque     4 N.m
function drive "It drives"
  through    controller, pack-plug

--- pack-unplugged-and-out
use "key-locked-pack.mmk"
guide pack-unplugged-and-out "Renew the controller"
  goal       replace controller with controller-new
  for        competent
  spare      controller-new "controller", 1 for controller
  tool       key-4 "hexagon key 4"
  tool       torque-driver "torque driver 1 to 6 N·m"

take-apart

step off "Take the controller out"
  disconnect pack-plug
  slide-out  pack
  undo       screws with key-4
  remove     controller

work

step renew "Take the new controller"
  replace    controller with controller-new
  dispose    controller as electronic-waste

put-back
  derived

test drives "It drives"
  proves     controller, drive
