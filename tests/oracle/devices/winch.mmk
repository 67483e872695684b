# A supply that is on again charges what it feeds: a capacitor in a board, one with its terminals joined, one aside.
device winch "Winch"

energy mains "mains cord" kind mains-cord 230 V
  feeds      board, motor through inlet
part frame "frame"
part cover "cover" kind panel
  covers     board, motor, inlet, spare-store
connector inlet "inlet plug" kind locking-tab-plug
  joins      board to frame
part board "board"
part store "store capacitor" in board kind capacitor
part bank "capacitor bank" in board kind capacitor-bank
part spare-store "capacitor that nothing feeds" kind capacitor
part motor "motor"

guide look-twice "Look at the winch, try it, and look again"
  for        competent
  tool       resistor "discharge resistor"
  tool       lead "shorting lead"
  tool       meter "multimeter"

take-apart

step open "Open it"
  unplug     mains
  remove     cover
  discharge  spare-store with resistor
  prove      spare-store with meter
  discharge  store with resistor
  prove      store with meter
  discharge  bank with resistor
  prove      bank with meter
  join       bank with lead
  disconnect inlet

put-back

step try "Try it"
  connect    inlet
  plug       mains
  unplug     mains
  discharge  store with resistor
  prove      store with meter
  unjoin     bank
  plug       mains
  unplug     mains
  discharge  bank with resistor
  prove      bank with meter

step close "Close it"
  fit        cover
  plug       mains
