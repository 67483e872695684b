# A supply that is on again charges and heats what it comes to: a capacitor in a board, one with its terminals joined, a
# heater behind a plug, heat; and not one aside. A new spring comes relaxed.
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
energy motor-heat "heat of the motor" in motor kind heat
energy room-heat "heat inside" kind heat
part heater "heater" kind heating-element
connector heater-plug "heater plug" kind locking-tab-plug
  joins      heater to board
part spring "brake spring" kind compression-spring
part far-heater "far heater" kind heating-element
connector far-plug "plug of the far heater" kind locking-tab-plug
  joins      far-heater to heater

guide look-twice "Look at the winch, try it, and look again"
  for        competent
  spare      spring-new "brake spring", 1 for spring
  tool       compressor "spring compressor"
  tool       resistor "discharge resistor"
  tool       lead "shorting lead"
  tool       meter "multimeter"

take-apart

step open "Open it"
  unplug     mains
  cool       motor-heat
  cool       room-heat
  cool       heater
  cool       far-heater
  remove     cover
  discharge  spare-store with resistor
  prove      spare-store with meter
  discharge  store with resistor
  prove      store with meter
  discharge  bank with resistor
  prove      bank with meter
  link       bank with lead
  disconnect inlet
  disconnect far-plug

step renew "Renew the brake spring"
  compress   spring with compressor
  remove     spring
  replace    spring with spring-new
  load       spring with compressor

put-back

step spring "Put the brake spring in"
  fit        spring
  ease       spring with compressor

step try "Try it"
  connect    inlet
  plug-in    mains
  unplug     mains
  cool       motor-heat
  cool       room-heat
  cool       heater
  discharge  store with resistor
  prove      store with meter
  unlink     bank
  connect    far-plug
  plug-in    mains
  unplug     mains
  cool       room-heat
  cool       far-heater
  discharge  bank with resistor
  prove      bank with meter

step close "Close it"
  fit        cover
  plug-in    mains

test brake "The brake holds"
  proves     spring
