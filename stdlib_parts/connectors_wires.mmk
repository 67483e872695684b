# Connectors of wires: terminals, joints, plugs in cables and at the mains.
# Sources: flat quick-connect terminals IEC 61210, tried over six withdrawals by a maker's
# specification; screw terminals IEC 60999-1, tried five times, and their torques (M2.5 0.4 N.m, M3
# 0.5, M3.5 0.8, M4 1.2, M5 2.0) IEC 60947-1, table 4 (from memory); crimps are made once
# (IPC/WHMA-A-620, from memory); solder J-STD-001; bayonets IEC 61169-8, 500 times (from memory);
# lamp caps IEC 60061; round connectors IEC 61076-2-101 (from memory).
# Example: connector motor-lead kind spade

# Terminals

kind spade "push-on blade terminal" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pliers takes 5 s
  connect    apart -> connected by hand or pliers takes 5 s
  bare
  good for   6 times

kind locking-spade "blade terminal with a lock" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick takes 6 s
  connect    apart -> connected by hand takes 4 s
  bare
  good for   6 times
  notice: A pull on the wire tears it from the crimp. Press the lock. Then pull the sleeve.

kind ring-terminal "ring terminal" is connector
  states     tight, loose, apart
  slacken    tight -> loose by driver takes 8 s
  take-off   loose -> apart by driver takes 6 s
  put-on     apart -> loose by driver takes 8 s
  tighten    loose -> tight by driver takes 8 s
  bare
  binds in   tight, loose
  warning: A loose terminal can overheat and start a fire. Hold the wire still while you tighten.

kind earth-terminal "protective earth terminal" is connector
  states     tight, apart
  undo       tight -> apart by driver takes 10 s
  do-up      apart -> tight by driver takes 12 s
  parted last
  asks for test
  danger: Without its earth the case can become live and kill. Part it last and join it first.

kind screw-terminal "screw terminal" is connector
  states     tight, loose, apart
  slacken    tight -> loose by driver takes 6 s
  disconnect loose -> apart by hand takes 3 s
  connect    apart -> loose by hand takes 6 s
  tighten    loose -> tight by driver takes 8 s
  bare
  binds in   tight, loose
  warning: A strand outside the terminal can cause shock or fire. Twist the strands before
    they go in.

kind lever-terminal "lever terminal" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 4 s
  connect    apart -> connected by hand takes 6 s

kind terminal-block "push-wire terminal" is connector
  states     connected, apart
  disconnect connected -> apart by slotted-driver takes 6 s
  connect    apart -> connected by hand takes 5 s

kind twist-on-joint "twist-on wire joint" is connector
  states     twisted, apart
  untwist    twisted -> apart by hand takes 8 s
  twist-on   apart -> twisted by hand takes 15 s
  warning: A loose joint can overheat and start a fire. Pull at each wire to prove it.

kind battery-clamp "battery clamp" is connector
  states     tight, loose, apart
  slacken    tight -> loose by driver takes 8 s
  lift-off   loose -> apart by hand takes 4 s
  set-on     apart -> loose by hand takes 4 s
  tighten    loose -> tight by driver takes 10 s
  bare
  binds in   tight, loose
  warning: A spanner between clamp and frame can burn a hand. Take the earth clamp off first.

# Joints that are cut or melted

kind solder-joint "soldered joint" is connector
  states     soldered, apart
  unsolder   soldered -> apart by soldering-iron takes 20 s
  solder     apart -> soldered by soldering-iron takes 20 s
  bare
  caution: Hot solder burns skin, and its fumes irritate. Wear eye protection. Keep the air
    moving.

kind through-hole-joint "row of soldered pins" is connector
  states     soldered, cleared, apart
  desolder   soldered -> cleared by desoldering-pump or desoldering-wick takes 60 s
  lift       cleared -> apart by hand takes 5 s
  set-in     apart -> cleared by hand takes 15 s
  solder     cleared -> soldered by soldering-iron takes 60 s
  bare
  binds in   soldered, cleared
  caution: Hot solder burns skin, and its fumes irritate. Wear eye protection. Keep the air
    moving.

kind hot-air-joint "surface-soldered part" is connector
  states     soldered, apart
  unsolder   soldered -> apart by hot-air-gun takes 60 s
  solder     apart -> soldered by hot-air-gun or soldering-iron takes 60 s
  caution: Hot air burns skin. Keep the nozzle away from hands.
  notice: Heat loosens the parts beside it. Shield them with foil.

kind crimp-joint "crimped joint" is connector
  states     crimped, apart
  cut        crimped -> apart by side-cutters takes 6 s
  crimp      apart -> crimped by crimping-pliers takes 30 s
  one use

kind crimp-contact "crimped contact in a housing" is connector
  states     home, apart
  push-out   home -> apart by contact-extractor takes 15 s
  push-in    apart -> home by hand takes 8 s
  used again if "its barb stands out and holds against a pull"

kind piercing-joint "insulation-piercing joint" is connector
  states     pressed, apart
  pull-off   pressed -> apart by hand or pliers takes 6 s
  press-on   apart -> pressed by pliers takes 10 s
  one use

kind wrapped-joint "wrapped joint" is connector
  states     wrapped, apart
  unwrap     wrapped -> apart by wire-wrap-tool takes 15 s
  wrap       apart -> wrapped by wire-wrap-tool takes 20 s
  bare
  one use

# Plugs in cables

kind bayonet "bayonet connector" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 4 s
  connect    apart -> connected by hand takes 4 s
  good for   500 times

kind ring-locked-plug "round plug with a threaded ring" is connector
  states     tight, apart
  unscrew    tight -> apart by hand takes 8 s
  screw-on   apart -> tight by hand takes 8 s
  note: Its rating against water holds only with the ring tight and the seal inside.

kind screwed-plug "plug held by two screws" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 5 s
  note: Its jack screws come loose first, and go tight last.

kind sealed-plug "sealed plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 5 s
  notice: A folded seal lets water in. Look at the seal before you push the plug home.

kind plug-and-jack "plug in a jack" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s

kind appliance-inlet "appliance inlet" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s

kind fuse-holder-cap "cap of a fuse holder" is connector
  states     shut, apart
  unscrew    shut -> apart by hand or slotted-driver takes 5 s
  screw-in   apart -> shut by hand or slotted-driver takes 5 s

# Lamps

kind lamp-bayonet "bayonet lamp holder" is connector
  states     connected, apart
  turn-out   connected -> apart by hand takes 4 s
  turn-in    apart -> connected by hand takes 4 s

kind lamp-thread "threaded lamp holder" is connector
  states     connected, apart
  unscrew    connected -> apart by hand takes 6 s
  screw-in   apart -> connected by hand takes 6 s

kind lamp-pins "two-pin lamp holder" is connector
  states     connected, apart
  pull-out   connected -> apart by hand takes 4 s
  push-in    apart -> connected by hand takes 5 s
  notice: Grease from skin makes hot glass crack. Hold the lamp in a clean cloth.
