# Connectors on circuit boards: plugs, ribbon sockets, aerial leads, sockets for cards.
# Sources: how often each may be parted, from makers' data as trade guides restate it: board to
# board 30, flip-lock ribbon 20, slide-lock 10 (from memory), plain ribbon 50, small crimped
# housing 30, small coaxial snap 30; the least of each range stands here, and the maker's own
# figure comes first. Unplugging 6.4 s from Yang and El-Haik (2003), table 10.5. The way each is
# released: common practice, no source.
# Example: connector lid-ribbon "display ribbon" kind flip-lock-ribbon

# Plugs

kind press-fit-plug "press-fit plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick or spudger takes 6 s
  connect    apart -> connected by hand takes 4 s
  good for   30 times
  notice: Side force breaks the socket off the board. Lift the plug straight up.

kind board-to-board-plug "board-to-board plug" is connector
  states     connected, apart
  disconnect connected -> apart by spudger or pick takes 6 s
  connect    apart -> connected by hand takes 6 s
  good for   30 times
  notice: A plug that is pressed askew crushes its contacts. Line up both ends. Then press until
    it clicks.

kind board-stack-header "pin header between boards" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 8 s
  connect    apart -> connected by hand takes 8 s
  notice: A board that is tipped bends the pins. Lift it evenly at both ends.

kind locking-tab-plug "plug with a locking tab" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick takes 6 s
  connect    apart -> connected by hand takes 4 s
  good for   30 times
  notice: A pull on the wires draws out the contacts. Press the tab. Then pull the housing.

kind double-locked-plug "plug with a second lock" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand or pick takes 3 s
  disconnect unlocked -> apart by hand takes 5 s
  connect    apart -> unlocked by hand takes 5 s
  lock       unlocked -> locked by hand takes 3 s
  binds in   locked, unlocked
  note: The second lock closes only on a plug that is home.

kind lever-plug "plug with a lever" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand takes 4 s
  disconnect unlocked -> apart by hand takes 4 s
  connect    apart -> unlocked by hand takes 5 s
  lock       unlocked -> locked by hand takes 4 s
  binds in   locked, unlocked
  notice: Force on the lever bends the contacts. Close it only while it moves easily.

kind friction-plug "friction plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 4 s
  good for   30 times

kind latched-header "ribbon-cable plug with ejectors" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 5 s
  note: The two ejectors are pressed outwards together. The marked wire lies at contact one.

kind magnetic-plug "magnetic plug" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 2 s
  connect    apart -> connected by hand safe when live takes 2 s

# Ribbons

kind flip-lock-ribbon "flip-lock ribbon socket" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand or pick or spudger takes 3 s
  disconnect unlocked -> apart by hand takes 4 s
  connect    apart -> unlocked by hand takes 8 s
  lock       unlocked -> locked by hand or pick or spudger takes 3 s
  binds in   locked, unlocked
  good for   20 times
  caution: Lift the flap, not the socket.

kind slide-lock-ribbon "slide-lock ribbon socket" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand or pick takes 4 s
  disconnect unlocked -> apart by hand takes 4 s
  connect    apart -> unlocked by hand takes 8 s
  lock       unlocked -> locked by hand or pick takes 4 s
  binds in   locked, unlocked
  good for   10 times
  notice: A slider that is pulled at one side breaks. Move both of its ends together.

kind friction-ribbon "friction ribbon socket" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 4 s
  connect    apart -> connected by hand takes 8 s
  good for   50 times
  notice: A ribbon that is pulled askew tears. Pull it straight out of the socket.

kind heat-bonded-ribbon "heat-bonded ribbon" is connector
  states     bonded, apart
  peel       bonded -> apart by hot-air-gun takes 60 s
  rebond     apart -> bonded by heat-bonder takes 60 s
  one use
  notice: A crease cuts the tracks. Peel the ribbon flat and slowly.

kind elastomer-strip "elastomer contact strip" is connector
  states     pressed, apart
  lift       pressed -> apart by hand or tweezers takes 6 s
  seat       apart -> pressed by hand or tweezers takes 15 s
  note: Strip and pads are wiped clean, and the strip stands upright.

# Aerials and light

kind snap-coax "snap-on aerial connector" is connector
  states     connected, apart
  disconnect connected -> apart by hand or pick or spudger takes 6 s
  connect    apart -> connected by hand takes 8 s
  good for   30 times
  notice: A pull on the lead breaks the connector. Lift the metal ring straight up.

kind threaded-coax "threaded aerial connector" is connector
  states     tight, apart
  unscrew    tight -> apart by hand or spanner takes 10 s
  screw-on   apart -> tight by hand or spanner takes 10 s
  good for   500 times

kind light-guide-plug "plug of an optical fibre" is connector
  states     connected, apart
  disconnect connected -> apart by hand takes 5 s
  connect    apart -> connected by hand takes 6 s
  caution: Light from a fibre can harm an eye. Never look into the end.
  note: A dust cap covers each end while it is apart.

# Cards, chips, cells

kind card-edge-slot "card slot" is connector
  states     connected, apart
  release    connected -> apart by hand takes 6 s
  press-in   apart -> connected by hand takes 6 s
  notice: Skin leaves grease on the contacts. Hold the card by its edges.

kind card-tray "card tray" is connector
  states     connected, apart
  eject      connected -> apart by hand or tray-pin safe when live takes 4 s
  push-in    apart -> connected by hand safe when live takes 4 s

kind chip-socket "chip socket" is connector
  states     connected, apart
  lift       connected -> apart by chip-extractor takes 15 s
  press-in   apart -> connected by hand takes 15 s
  notice: A turned chip is destroyed at switch-on. Match the notch to the mark.

kind lever-chip-socket "chip socket with a lever" is connector
  states     locked, unlocked, apart
  unlock     locked -> unlocked by hand takes 4 s
  lift       unlocked -> apart by hand takes 4 s
  set-in     apart -> unlocked by hand takes 8 s
  lock       unlocked -> locked by hand takes 4 s
  binds in   locked, unlocked
  notice: A dropped chip bends pins. Lower it straight in, without force.

kind spring-contacts "spring contacts" is connector
  states     touching, apart
  separate   touching -> apart by hand takes 3 s
  press-on   apart -> touching by hand takes 4 s
  note: Contacts are wiped with a dry cloth that leaves no threads.

kind data-socket "data plug with a latch" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s

kind usb-socket "data socket" is connector
  states     connected, apart
  disconnect connected -> apart by hand safe when live takes 3 s
  connect    apart -> connected by hand safe when live takes 3 s
