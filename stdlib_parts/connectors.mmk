# Connectors: what plugs together, from ribbon sockets to pipe unions.
# Sources: the way each is released and made again after trade guides and makers' data as
# gathered in common practice; ISO 14743 push-in tube fittings, ISO 7241 quick-action couplings,
# IEC 61210 flat quick-connect terminals, IEC 60061 bayonet caps; unplugging 6.4 s from Yang and
# El-Haik (2003), table 10.5.
# Example: connector lid-ribbon "display ribbon" kind flip-lock-ribbon

# On circuit boards

kind press-fit-plug "press-fit plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick takes 6 s
  connect    apart -> connected by hand takes 4 s
  notice: Side force breaks the socket off the board. Lift the plug straight up.

kind locking-tab-plug "plug with a locking tab" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick takes 6 s
  connect    apart -> connected by hand takes 4 s
  notice: A pull on the wires draws out the contacts. Press the tab. Then pull the housing.

kind friction-plug "friction plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 4 s

kind flip-lock-ribbon "flip-lock ribbon socket" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand or pick takes 3 s
  disconnect unlocked -> apart by hand takes 4 s
  connect    apart -> unlocked by hand takes 8 s
  lock       unlocked -> locked by hand or pick takes 3 s
  binds in   locked, unlocked
  caution: Lift the flap, not the socket.

kind slide-lock-ribbon "slide-lock ribbon socket" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand or pick takes 4 s
  disconnect unlocked -> apart by hand takes 4 s
  connect    apart -> unlocked by hand takes 8 s
  lock       unlocked -> locked by hand or pick takes 4 s
  binds in   locked, unlocked
  notice: A slider that is pulled at one side breaks. Move both of its ends together.

kind friction-ribbon "friction ribbon socket" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 4 s
  connect    apart -> connected by hand takes 8 s
  notice: A ribbon that is pulled askew tears. Pull it straight out of the socket.

kind snap-coax "snap-on aerial connector" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick takes 6 s
  connect    apart -> connected by hand takes 8 s
  notice: A pull on the lead breaks the connector. Lift the metal ring straight up.

# On wires

kind spade "push-on blade terminal" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pliers takes 5 s
  connect    apart -> connected by hand or pliers takes 5 s

kind screw-terminal "screw terminal" is connector
  states     tight, loose, apart
  slacken    tight -> loose by driver takes 6 s
  disconnect loose -> apart by hand takes 3 s
  connect    apart -> loose by hand takes 6 s
  tighten    loose -> tight by driver takes 8 s
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

kind solder-joint "soldered joint" is connector
  states     soldered, apart
  unsolder   soldered -> apart by soldering-iron takes 20 s
  solder     apart -> soldered by soldering-iron takes 20 s
  caution: Hot solder burns skin, and its fumes irritate. Wear eye protection. Keep the air
    moving.

kind crimp-joint "crimped joint" is connector
  states     crimped, apart
  cut        crimped -> apart by side-cutters takes 6 s
  crimp      apart -> crimped by crimping-pliers takes 30 s
  one use

kind bayonet "bayonet connector" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 4 s
  connect    apart -> connected by hand takes 4 s

kind threaded-coax "threaded aerial connector" is connector
  states     tight, apart
  unscrew    tight -> apart by hand or spanner takes 10 s
  screw-on   apart -> tight by hand or spanner takes 10 s

kind appliance-inlet "appliance inlet" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s

kind usb-socket "data socket" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s

# On pipes and hoses

kind hose-barb "hose on a barb" is connector
  states     connected, apart
  pull-off   connected -> apart by hand or hose-pliers takes 10 s
  push-on    apart -> connected by hand takes 10 s

kind quick-coupler "quick coupler" is connector
  states     connected, apart
  uncouple   connected -> apart by hand takes 5 s
  couple     apart -> connected by hand takes 5 s

kind push-fit-tube "push-fit tube" is connector
  states     connected, apart
  release    connected -> apart by hand or collet-tool takes 6 s
  push-in    apart -> connected by hand takes 6 s
  note: The end of the tube is cut square and has no scratch.

kind pipe-union "pipe union" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 20 s
  do-up      apart -> tight by spanner takes 20 s

kind compression-joint "compression joint" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 20 s
  do-up      apart -> tight by spanner takes 20 s

# Gas joints are opened by licensed persons only (local law).
kind gas-union "gas union" is connector
  states     tight, apart
  undo       tight -> apart by spanner takes 30 s
  do-up      apart -> tight by spanner takes 30 s
  licensed   "gas fitter"
