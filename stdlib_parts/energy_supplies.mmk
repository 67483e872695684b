# Supplies that are not parts: mains, gas, air, water, and the order in which each is made safe.
# Sources: prepare, shut down, isolate, lock and tag, release, prove, and the way back: 29 CFR
# 1910.147(d), (e); a plug in one's own hand needs no lock: (a)(2)(iii)(A) (from memory); 50 V
# a.c., IEC 60364-4-41 (from memory); 60 V d.c., IEC 62368-1 (from memory); gas by licensed
# persons only (local law). Opened when locked off, proved dead at the terminals behind the cover:
# EN 50110-1, 6.2.4 (from memory).
# Example: energy supply "mains" kind mains-cord

# Electricity

kind mains-cord "mains cord" is energy
  states     plugged, unplugged
  unplug     plugged -> unplugged by hand from outside takes 5 s
  plug-in    unplugged -> plugged by hand from outside takes 5 s
  live in    plugged
  hazard     mains until unplugged on reach

kind mains-isolator "mains isolator" is energy
  states     switched-on, locked-off, proved
  lock-off   switched-on -> locked-off by padlock from outside takes 30 s
  prove      locked-off -> proved below 50 V by voltage-tester takes 30 s
  hand-back  proved -> locked-off by hand from outside takes 30 s
  restore    locked-off -> switched-on by hand or padlock from outside takes 20 s
  live in    switched-on
  hazard     mains until locked-off, proved on reach
  hazard     unproved until proved
  note: To hand back is to count tools, look the place over and call everyone away.

# A machine with every step of the lock-out in its order, and of the way back.
kind machine-supply "supply of a machine" is energy
  states     running, shut-down, isolated, locked-off, discharged, proved
  shut-down  running -> shut-down by hand from outside takes 30 s
  isolate    shut-down -> isolated by hand from outside takes 20 s
  lock-off   isolated -> locked-off by padlock from outside takes 30 s
  discharge  locked-off -> discharged by hand from outside takes 120 s
  prove      discharged -> proved below 50 V by voltage-tester takes 60 s
  hand-back  proved -> discharged by hand from outside takes 60 s
  make-good  discharged -> locked-off by hand from outside takes 60 s
  unlock     locked-off -> isolated by hand or padlock from outside takes 30 s
  reconnect  isolated -> shut-down by hand from outside takes 20 s
  start-up   shut-down -> running by hand from outside takes 30 s
  live in    running, shut-down
  hazard     mains until discharged, proved on reach
  hazard     unproved until proved
  note: To discharge is to let out all that the machine still stores: charge, pressure, springs,
    what is raised.
  note: To prove is to measure, and then to press start: nothing may move.
  note: To hand back is to count tools, look the place over and call everyone away.
  note: Only the person who hung a lock takes it off.

# A machine whose lock-out ends with a try of its start button.
kind motor-supply "supply of a motor" is energy
  states     running, stopped, locked-off, proved
  shut-down  running -> stopped by hand from outside takes 15 s
  lock-off   stopped -> locked-off by padlock from outside takes 30 s
  prove      locked-off -> proved by hand from outside takes 15 s
  hand-back  proved -> locked-off by hand from outside takes 30 s
  unlock     locked-off -> stopped by hand or padlock from outside takes 20 s
  start-up   stopped -> running by hand from outside takes 10 s
  live in    running, stopped
  hazard     unexpected-start until proved on reach

kind household-circuit "circuit of a building" is energy
  states     switched-on, switched-off, secured, proved
  switch-off switched-on -> switched-off by hand from outside takes 15 s
  lock-off   switched-off -> secured by padlock or warning-tag from outside takes 30 s
  prove      secured -> proved below 50 V by voltage-tester takes 30 s
  hand-back  proved -> secured by hand from outside takes 20 s
  unlock     secured -> switched-off by hand from outside takes 15 s
  switch-on  switched-off -> switched-on by hand from outside takes 10 s
  live in    switched-on
  hazard     mains until secured, proved on reach
  hazard     unproved until proved
  licensed   "electrician"

kind switchboard "switchboard" is energy
  states     live, isolated, locked-off, proved, earthed
  isolate    live -> isolated by hand from outside takes 60 s
  lock-off   isolated -> locked-off by padlock from outside takes 30 s
  prove      locked-off -> proved below 50 V by voltage-tester takes 60 s
  earth      proved -> earthed by earthing-set takes 120 s
  unearth    earthed -> proved by earthing-set takes 120 s
  hand-back  proved -> locked-off by hand from outside takes 60 s
  unlock     locked-off -> isolated by hand or padlock from outside takes 30 s
  reconnect  isolated -> live by hand from outside takes 60 s
  live in    live
  hazard     mains until locked-off, proved, earthed on reach
  hazard     arc-flash until earthed
  licensed   "electrician"

kind external-supply "plug-in power supply" is energy
  states     plugged, unplugged
  unplug     plugged -> unplugged by hand from outside takes 5 s
  plug-in    unplugged -> plugged by hand from outside takes 5 s
  live in    plugged

kind standby-supply "uninterruptible supply" is energy
  states     running, switched-off, isolated, proved
  shut-down  running -> switched-off by hand from outside takes 30 s
  isolate    switched-off -> isolated by hand from outside takes 30 s
  prove      isolated -> proved below 50 V by voltage-tester takes 30 s
  hand-back  proved -> isolated by hand from outside takes 15 s
  reconnect  isolated -> switched-off by hand from outside takes 30 s
  start-up   switched-off -> running by hand from outside takes 30 s
  live in    running, switched-off
  hazard     second-supply until isolated, proved on reach
  hazard     unproved until proved
  note: It feeds on from its own battery when the mains are off.

kind solar-panel "solar panel" is energy
  states     lit, isolated, proved
  isolate    lit -> isolated by hand from outside takes 30 s
  prove      isolated -> proved below 60 V by voltage-tester takes 30 s
  hand-back  proved -> isolated by hand from outside takes 15 s
  reconnect  isolated -> lit by hand from outside takes 30 s
  live in    lit
  hazard     second-supply until isolated, proved on reach
  hazard     unproved until proved
  note: A plug that is drawn under load burns on in an arc. The isolator breaks the current.

# What lies between the panels and their isolator: no switch makes it dead by day.
kind daylight "panels in daylight" is energy
  states     lit, covered
  cover      lit -> covered by hand from outside takes 300 s
  uncover    covered -> lit by hand from outside takes 120 s
  live in    lit
  hazard     second-supply until covered on reach
  note: By day the leads up to the isolator stay live, whatever is switched off.

# Air, water, steam, vacuum

kind compressed-air "compressed air" is energy
  states     supplied, shut-off, vented
  turn-off   supplied -> shut-off by hand from outside takes 5 s
  vent       shut-off -> vented by hand from outside takes 20 s
  stop-venting vented -> shut-off by hand from outside takes 5 s
  turn-on    shut-off -> supplied by hand from outside takes 5 s
  live in    supplied, shut-off
  hazard     pressure until vented on reach

# Air of a machine, locked and proved.
kind machine-air "air supply of a machine" is energy
  states     supplied, shut-off, locked-off, vented, proved
  turn-off   supplied -> shut-off by hand from outside takes 5 s
  lock-off   shut-off -> locked-off by padlock from outside takes 20 s
  vent       locked-off -> vented by hand from outside takes 30 s
  prove      vented -> proved below 0.1 bar by pressure-gauge from outside takes 15 s
  hand-back  proved -> vented by hand from outside takes 30 s
  stop-venting vented -> locked-off by hand from outside takes 10 s
  unlock     locked-off -> shut-off by hand or padlock from outside takes 15 s
  turn-on    shut-off -> supplied by hand from outside takes 5 s
  live in    supplied, shut-off, locked-off
  hazard     pressure until proved on reach

kind water-supply "water supply" is energy
  states     supplied, shut-off, relieved
  turn-off   supplied -> shut-off by hand from outside takes 5 s
  drain      shut-off -> relieved by hand from outside takes 20 s
  stop-draining relieved -> shut-off by hand from outside takes 5 s
  turn-on    shut-off -> supplied by hand from outside takes 5 s
  live in    supplied
  runs out

kind steam-supply "steam supply" is energy
  states     supplied, shut-off, locked-off, vented, cold
  turn-off   supplied -> shut-off by hand from outside takes 10 s
  lock-off   shut-off -> locked-off by padlock from outside takes 20 s
  vent       locked-off -> vented by hand from outside takes 60 s
  cool       vented -> cold below 43 degC from outside waits 3600 s
  warm       cold -> vented from outside
  stop-venting vented -> locked-off by hand from outside takes 10 s
  unlock     locked-off -> shut-off by hand or padlock from outside takes 15 s
  turn-on    shut-off -> supplied by hand from outside takes 10 s
  live in    supplied, shut-off, locked-off, vented
  hazard     steam until cold on reach

kind vacuum "vacuum" is energy
  states     evacuated, aired
  break      evacuated -> aired by hand from outside takes 15 s
  build-up   aired -> evacuated by hand or vacuum-pump from outside takes 120 s
  moves
  hazard     implosion until aired on reach

# Gas is shut off by anyone, but its pipework is for licensed persons only (local law).

kind gas-supply "gas supply" is energy
  states     open, shut-off
  turn-off   open -> shut-off by hand from outside takes 5 s
  turn-on    shut-off -> open by hand from outside takes 5 s
  hazard     gas until shut-off on reach
  licensed   "gas fitter"

kind gas-bottle "bottled gas" is energy
  states     open, shut-off, burnt-off
  turn-off   open -> shut-off by hand from outside takes 5 s
  burn-off   shut-off -> burnt-off by hand from outside takes 60 s
  stop-burning-off burnt-off -> shut-off by hand from outside takes 5 s
  turn-on    shut-off -> open by hand from outside takes 5 s
  hazard     gas until burnt-off on reach

kind inert-gas "inert gas" is energy
  states     open, shut-off, aired
  turn-off   open -> shut-off by hand from outside takes 5 s
  vent       shut-off -> aired by oxygen-meter from outside takes 60 s waits 600 s
  stop-venting aired -> shut-off by hand from outside takes 5 s
  turn-on    shut-off -> open by hand from outside takes 5 s
  hazard     no-air until aired on reach
