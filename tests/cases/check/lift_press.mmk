# A press whose ram stands raised on the charge of an accumulator, which a pump fills. What comes down with a pressure is
# set down before it is let off, and the pump is off by then.

--- lift-press
device lift-press "Lift press"

energy supply "supply" kind motor-supply 400 V
  feeds      motor
part bed "bed"
part motor "motor" kind motor
  feeds      pump
part pump "pump" kind pump
  feeds      valve-block
part valve-block "valve block" kind valve
  feeds      accumulator, cylinder
part accumulator "accumulator"
connector acc-union "accumulator union" kind face-seal-joint
  joins      accumulator to valve-block
energy charge "charge of the accumulator" in accumulator kind hydraulic-accumulator 180 bar
part cylinder "cylinder" kind cylinder
  feeds      table
energy ram "raised table" in cylinder kind lifted-ram
part table "table" kind blade
part hose "lift hose" kind hose
connector cylinder-end "cylinder end" kind face-seal-joint
  joins      hose to cylinder
connector valve-end "valve end" kind face-seal-joint
  joins      hose to valve-block

--- let-off-under-the-table
use "lift-press.mmk"
guide let-off-under-the-table "Hose off, table up"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "lift hose", 1 for hose
  tool       lock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       spanner "spanner"

take-apart

step safe "Make it safe"
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  # error 3-9 [unmet-need] too early here
  relieve    charge
  prove      charge with gauge
  lower      ram

step off "Hose off"
  undo       valve-end, cylinder-end with spanner
  remove     hose

work

step renew "Take the new one"
  replace    hose with hose-new

put-back
  derived

test holds "It holds"
  proves     hose

--- let-off-while-the-pump-runs
use "lift-press.mmk"
guide let-off-while-the-pump-runs "Hose off, pump on"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "lift hose", 1 for hose
  tool       lock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       spanner "spanner"

take-apart

step safe "Make it safe"
  lower      ram
  # error 3-9 [unmet-need] too early here
  relieve    charge
  prove      charge with gauge
  shut-down  supply
  lock-off   supply with lock
  prove      supply

step off "Hose off"
  undo       valve-end, cylinder-end with spanner
  remove     hose

work

step renew "Take the new one"
  replace    hose with hose-new

put-back
  derived

test holds "It holds"
  proves     hose

--- table-down-and-pump-off-first
use "lift-press.mmk"
guide table-down-and-pump-off-first "Hose off in good order"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "lift hose", 1 for hose
  tool       lock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       spanner "spanner"

take-apart

step safe "Make it safe"
  lower      ram
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  relieve    charge
  prove      charge with gauge

step off "Hose off"
  undo       valve-end, cylinder-end with spanner
  remove     hose

work

step renew "Take the new one"
  replace    hose with hose-new

put-back

step fit "Hose on"
  fit        hose
  do-up      cylinder-end, valve-end with spanner

step run "Pressure and table up"
  close-down charge
  hand-back  supply
  unlock     supply
  start-up   supply
  pressurise charge
  raise      ram

test holds "It holds"
  proves     hose

--- hose-tried-without-pressure
use "lift-press.mmk"
guide hose-tried-without-pressure "Hose tried with no pressure"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "lift hose", 1 for hose
  tool       lock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       spanner "spanner"

take-apart

step safe "Make it safe"
  lower      ram
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  relieve    charge
  prove      charge with gauge

step off "Hose off"
  undo       valve-end, cylinder-end with spanner
  remove     hose

work

step renew "Take the new one"
  replace    hose with hose-new

put-back

step fit "Hose on"
  fit        hose
  do-up      cylinder-end, valve-end with spanner

# error 6-10 [dead-test] no supply here
test holds "It holds"
  proves     hose

step run "Pressure and table up"
  close-down charge
  hand-back  supply
  unlock     supply
  start-up   supply
  pressurise charge
  raise      ram

--- raised-before-there-is-pressure
use "lift-press.mmk"
guide raised-before-there-is-pressure "Table up on nothing"
  goal       replace hose with hose-new
  for        trained
  spare      hose-new "lift hose", 1 for hose
  tool       lock "padlock"
  tool       gauge "pressure gauge 250 bar"
  tool       spanner "spanner"

take-apart

step safe "Make it safe"
  lower      ram
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  relieve    charge
  prove      charge with gauge

step off "Hose off"
  undo       valve-end, cylinder-end with spanner
  remove     hose

work

step renew "Take the new one"
  replace    hose with hose-new

put-back

step fit "Hose on"
  fit        hose
  do-up      cylinder-end, valve-end with spanner

step run "Pressure and table up"
  close-down charge
  hand-back  supply
  unlock     supply
  start-up   supply
  raise      ram
  # error 3-12 [unmet-need] too early here
  pressurise charge

test holds "It holds"
  proves     hose

--- oil-heater
device oil-heater "Oil bath"

energy supply "supply" kind motor-supply 400 V
  feeds      motor, element
part bath "bath" kind tank
fluid oil "bath oil" in bath 9 l kind hydraulic-oil
part element "element"
part motor "motor" kind motor
  feeds      pump
part pump "pump" kind pump
part pipe "suction pipe" kind hose
connector near "near union" kind face-seal-joint
  joins      pipe to pump
connector far "far union" kind face-seal-joint
  joins      pipe to bath

--- set-going-dry
use "oil-heater.mmk"
guide set-going-dry "Change the oil, pump first"
  goal       drain oil
  for        trained
  supply     new-oil "hydraulic oil 46, 9 l", 9 l for oil
  tool       pan "drain pan"
  tool       lock "padlock"

take-apart

step drain "Drain it"
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  drain      oil with pan
  dispose    oil as waste-oil

put-back

step power "On again"
  hand-back  supply
  unlock     supply
  # warning 3-10 [started-dry] runs dry
  start-up   supply

step fill "Fill it"
  fill       oil with new-oil

--- filled-before-it-is-set-going
use "oil-heater.mmk"
guide filled-before-it-is-set-going "Change the oil"
  goal       drain oil
  for        trained
  supply     new-oil "hydraulic oil 46, 9 l", 9 l for oil
  tool       pan "drain pan"
  tool       lock "padlock"

take-apart

step drain "Drain it"
  shut-down  supply
  lock-off   supply with lock
  prove      supply
  drain      oil with pan
  dispose    oil as waste-oil

put-back

step fill "Fill it"
  fill       oil with new-oil

step power "On again"
  hand-back  supply
  unlock     supply
  start-up   supply
