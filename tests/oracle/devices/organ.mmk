# What the mains feeds is passed on by a relay in the bench, then by a switch that feeds that relay too; an adapter that
# nothing feeds is a source. A belt is driven.
device organ "House organ"

energy mains "mains cord" kind mains-cord 230 V
  feeds      bench
part chassis "chassis"
part bench "bench"
part relay "relay" kind relay in bench
  feeds      blower-switch
part blower-switch "switch" kind switch in chassis
  feeds      blower, relay, store through blower-plug
part blower "blower" kind motor in chassis
part belt "belt" kind drive-belt in chassis
part store "store capacitor" in chassis kind capacitor
connector blower-plug "plug of the blower" kind locking-tab-plug
  joins      blower to blower-switch
part adapter "lamp adapter" kind transformer in chassis
  feeds      lamp through lamp-plug
part lamp "lamp" kind lamp in chassis
connector lamp-plug "plug of the lamp" kind locking-tab-plug
  joins      lamp to adapter
part cover "cover" kind panel
  covers     store, blower
function wind "It gives wind"
  through    blower, belt

guide renew-blower "Renew the blower"
  for        competent
  spare      blower-new "blower", 1 for blower
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Open it"
  unplug     mains
  remove     belt
  remove     cover
  discharge  store with resistor
  prove      store with meter

step out "Take all of it out"
  disconnect blower-plug
  remove     blower
  disconnect lamp-plug
  remove     lamp
  remove     blower-switch

work

step renew "Take the new one"
  replace    blower with blower-new
  dispose    blower as electronic-waste

put-back

step back "Put all back"
  fit        blower-switch
  fit        lamp
  connect    lamp-plug
  fit        blower
  connect    blower-plug
  plug-in    mains
  unplug     mains
  discharge  store with resistor
  prove      store with meter
  fit        cover
  fit        belt
  plug-in    mains

test blows "It blows"
  proves     wind
