# Forces, heat and rays: what moves, hangs, presses, burns or shines.
# Sources: burn thresholds of bare metal 65 to 70 degC for 1 s, 51 degC for 1 min, 43 degC for 8 h
# (ISO 13732-1, from memory); laser classes IEC 60825-1: to open a class 1 product may bare a
# higher one; 25 kg for one person ISO 11228-1 (from memory); the waiting time of a pyrotechnic
# igniter runs from 10 s to 30 min by its maker, so none stands here and the action states it; the
# rest is common practice, no source.
# Example: energy carriage "carriage" kind hanging-weight

# Pressure

kind stored-pressure "stored pressure" is energy
  states     pressurised, relieved
  relieve    pressurised -> relieved by hand from outside takes 30 s
  build-up   relieved -> pressurised by hand or pump from outside takes 60 s
  moves
  runs out
  hazard     pressure until relieved on reach

kind hydraulic-accumulator "hydraulic accumulator" is energy
  states     pressurised, relieved, proved
  relieve    pressurised -> relieved by hand from outside takes 60 s
  prove      relieved -> proved below 1 bar by pressure-gauge from outside takes 15 s
  close-down proved -> relieved by hand from outside takes 15 s
  pressurise relieved -> pressurised by hand or pump from outside takes 60 s
  live in    pressurised, relieved
  moves
  runs out
  hazard     oil-jet until proved on reach

kind lifted-ram "raised hydraulic ram" is energy
  states     raised, lowered
  lower      raised -> lowered by hand from outside takes 30 s
  raise      lowered -> raised by hand from outside takes 30 s
  moves
  runs out
  rests on pressure
  hazard     crushing until lowered on reach

kind boiler-pressure "boiler under pressure" is energy
  states     hot, cooled, relieved
  cool       hot -> cooled below 43 degC from outside waits 3600 s
  relieve    cooled -> relieved by hand from outside takes 30 s
  close-down relieved -> cooled by hand from outside takes 15 s
  heat-up    cooled -> hot from outside waits 900 s
  may end in hot, cooled
  live in    hot, cooled
  moves
  runs out
  hazard     steam until relieved on reach

kind tyre-pressure "tyre under pressure" is energy
  states     inflated, let-out
  deflate    inflated -> let-out by hand from outside takes 30 s
  inflate    let-out -> inflated by pump from outside takes 60 s
  hazard     flying-parts until let-out on touch

# Weight and motion

kind hanging-weight "hanging weight" is energy
  states     hanging, propped
  prop       hanging -> propped by hand or prop from outside takes 60 s
  unprop     propped -> hanging by hand or prop from outside takes 60 s
  hazard     falling-weight until propped on reach

kind suspended-load "load on a hoist" is energy
  states     lifted, set-down
  set-down   lifted -> set-down by hoist from outside takes 60 s
  lift       set-down -> lifted by hoist from outside takes 60 s
  moves
  hazard     falling-weight until set-down on reach

kind jacked-vehicle "jacked vehicle" is energy
  states     standing, jacked, on-stands
  jack-up    standing -> jacked by jack from outside takes 60 s
  support    jacked -> on-stands by axle-stand from outside takes 60 s
  raise      on-stands -> jacked by jack from outside takes 60 s
  let-down   jacked -> standing by jack from outside takes 30 s
  live in    jacked
  hazard     crushing until on-stands, standing on reach

kind moving-mechanism "moving mechanism" is energy
  states     running, stopped, still
  stop       running -> stopped by hand from outside takes 5 s
  run-down   stopped -> still from outside waits 30 s
  release    still -> stopped by hand from outside takes 5 s
  start      stopped -> running by hand from outside takes 5 s
  may end in running, stopped
  live in    running, stopped
  moves
  hazard     moving-parts until still on reach

# It stands, and a turn of the shaft or a pull at the rope may start it.
kind petrol-engine "petrol engine" is energy
  states     ready, disabled
  disable    ready -> disabled by hand from outside takes 20 s
  enable     disabled -> ready by hand from outside takes 20 s
  live in    ready
  moves
  hazard     engine-start until disabled on reach

kind flywheel "flywheel" is energy
  states     turning, still, blocked
  spin-down  turning -> still from outside waits 300 s
  block      still -> blocked by locking-pin takes 15 s
  unblock    blocked -> still by locking-pin takes 15 s
  spin-up    still -> turning by hand from outside takes 30 s
  may end in turning, still
  moves
  hazard     turning-parts until still, blocked on reach

kind fan-after-run "fan that runs on" is energy
  states     turning, still
  spin-down  turning -> still from outside waits 120 s
  spin-up    still -> turning by hand from outside takes 5 s
  may end in turning, still
  hazard     turning-parts until still on reach

# Heat and cold

kind heat "heat" is energy
  states     hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 1800 s
  warm       cooled -> hot from outside
  may end in hot, cooled
  hazard     hot-surface until cooled on reach

kind flame "flame" is energy
  states     burning, out
  put-out    burning -> out by hand from outside takes 5 s
  light      out -> burning by hand from outside takes 10 s
  hazard     fire until out on reach

kind deep-cold "deep-cold part" is energy
  states     cold, thawed
  thaw       cold -> thawed above 0 degC from outside waits 7200 s
  chill      thawed -> cold from outside
  may end in cold, thawed
  hazard     cold-burn until thawed on reach

# Rays, fields, noise

kind laser-source "laser" is energy
  states     on, off, locked-off
  switch-off on -> off by hand from outside takes 5 s
  lock-off   off -> locked-off by hand or padlock from outside takes 10 s
  unlock     locked-off -> off by hand or padlock from outside takes 10 s
  switch-on  off -> on by hand from outside takes 5 s
  hazard     laser until locked-off on reach

kind ultraviolet-source "ultraviolet lamp that is lit" is energy
  states     lit, dark
  switch-off lit -> dark by hand from outside takes 5 s
  switch-on  dark -> lit by hand from outside takes 5 s
  hazard     ultraviolet until dark on reach

kind radio-source "transmitter" is energy
  states     sending, silent
  switch-off sending -> silent by hand from outside takes 5 s
  switch-on  silent -> sending by hand from outside takes 5 s
  hazard     radio-waves until silent on reach

kind strong-magnet "strong magnet" is energy
  states     bare, kept
  cover      bare -> kept by magnet-keeper takes 15 s
  uncover    kept -> bare by hand takes 15 s
  may end in bare, kept
  hazard     magnetism until kept on touch

kind loud-source "loud source" is energy
  states     sounding, silent
  switch-off sounding -> silent by hand from outside takes 5 s
  switch-on  silent -> sounding by hand from outside takes 5 s
  hazard     noise until silent on reach

# Licensed persons only

kind igniter "pyrotechnic igniter" is energy
  states     armed, dead
  disarm     armed -> dead by hand from outside takes 60 s
  arm        dead -> armed by hand from outside takes 60 s
  hazard     igniter until dead on reach
  licensed   "restraint-system technician"
  note: The maker states how long to wait after the battery is off. The action states it too.
