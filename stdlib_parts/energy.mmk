# Energy: what keeps equipment live, and parts that store a charge, pressure or weight.
# Sources: 60 V d.c. as safe to touch, IEC 62368-1 (from memory); 50 V a.c., IEC 60364-4-41
# (from memory); the order isolate, lock, release, prove, and back: 29 CFR 1910.147(d), (e); a
# lithium cell below a quarter full before work: common practice, no source.
# Example: part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V

# Cells and batteries: parts that feed others while they are in

kind lithium-pouch-cell "lithium pouch cell" is part
  states     in, out
  also       charged, low
  discharge  charged -> low below 25 % from outside
  charge     low -> charged above 80 % from outside
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in charged, low
  hazard     lithium-fire until low on touch
  waste      battery-waste

kind lithium-round-cell "round lithium cell" is part
  states     in, out
  also       charged, low
  discharge  charged -> low below 25 % from outside
  charge     low -> charged above 80 % from outside
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in charged, low
  hazard     lithium-fire until low on touch
  waste      battery-waste

kind battery-pack "slide-out battery pack" is part
  states     in, out
  slide-out  in -> out by hand safe when live from outside takes 4 s
  slide-in   out -> in by hand safe when live from outside takes 4 s
  waste      battery-waste
  note: The pack is put aside where its contacts touch no metal.

kind coin-cell "coin cell" is part
  states     in, out
  remove     in -> out by hand or pick safe when live takes 6 s
  fit        out -> in by hand safe when live takes 6 s
  waste      battery-waste
  danger: A swallowed coin cell burns through the gullet and kills. Keep every cell away from
    children.

kind dry-cell "dry cell" is part
  states     in, out
  remove     in -> out by hand safe when live takes 4 s
  fit        out -> in by hand safe when live takes 4 s
  waste      battery-waste

kind lead-acid-battery "lead-acid battery" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s
  waste      battery-waste
  warning: A tool across the terminals can start a fire, and acid burns eyes. Wear eye
    protection.

# Stored charge

kind capacitor "capacitor" is part
  states     in, out
  also       charged, discharged, proved
  discharge  charged -> discharged by discharge-resistor takes 15 s
  prove      discharged -> proved below 60 V by meter takes 10 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in discharged, proved
  hazard     stored-charge until proved on reach

# One that is discharged at terminals outside the case is safe before the case is opened.
kind capacitor-with-test-points "capacitor with outside terminals" is part
  states     in, out
  also       charged, discharged, proved
  discharge  charged -> discharged by discharge-resistor from outside takes 15 s
  prove      discharged -> proved below 60 V by meter from outside takes 10 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in discharged, proved
  hazard     stored-charge until proved on reach

# Supplies that are not parts

kind mains-cord "mains cord" is energy
  states     plugged, unplugged
  unplug     plugged -> unplugged by hand from outside takes 5 s
  plug       unplugged -> plugged by hand from outside takes 5 s
  live in    plugged
  hazard     mains until unplugged on reach

kind mains-isolator "mains isolator" is energy
  states     switched-on, locked-off, proved
  lock-off   switched-on -> locked-off by hand or padlock from outside takes 30 s
  prove      locked-off -> proved below 50 V by voltage-tester from outside takes 30 s
  clear      proved -> locked-off by hand from outside takes 30 s
  restore    locked-off -> switched-on by hand or padlock from outside takes 20 s
  live in    switched-on
  hazard     mains until proved on reach
  note: To clear is to count tools, look the place over and call everyone away.

kind external-supply "plug-in power supply" is energy
  states     plugged, unplugged
  unplug     plugged -> unplugged by hand from outside takes 5 s
  plug       unplugged -> plugged by hand from outside takes 5 s
  live in    plugged

kind compressed-air "compressed air" is energy
  states     supplied, shut-off, vented
  shut-valve supplied -> shut-off by hand from outside takes 5 s
  vent       shut-off -> vented by hand from outside takes 20 s
  close-vent vented -> shut-off by hand from outside takes 5 s
  open-valve shut-off -> supplied by hand from outside takes 5 s
  live in    supplied, shut-off
  hazard     pressure until vented on reach

kind water-supply "water supply" is energy
  states     supplied, shut-off, relieved
  shut-valve supplied -> shut-off by hand from outside takes 5 s
  relieve    shut-off -> relieved by hand from outside takes 20 s
  close-tap  relieved -> shut-off by hand from outside takes 5 s
  open-valve shut-off -> supplied by hand from outside takes 5 s
  live in    supplied, shut-off

kind stored-pressure "stored pressure" is energy
  states     pressurised, relieved
  relieve    pressurised -> relieved by hand from outside takes 30 s
  pressurise relieved -> pressurised by hand or pump from outside takes 60 s
  hazard     pressure until relieved on reach

kind hanging-weight "hanging weight" is energy
  states     hanging, propped
  prop       hanging -> propped by hand or prop from outside takes 60 s
  unprop     propped -> hanging by hand or prop from outside takes 60 s
  hazard     falling-weight until propped on reach

kind heat "heat" is energy
  states     hot, cooled
  cool       hot -> cooled below 43 degC from outside takes 1800 s
  warm       cooled -> hot from outside
  may end in hot, cooled
  hazard     hot-surface until cooled on reach

# Gas is shut off by anyone, but its pipework is for licensed persons only (local law).
kind gas-supply "gas supply" is energy
  states     open, shut-off
  shut-valve open -> shut-off by hand from outside takes 5 s
  open-valve shut-off -> open by hand from outside takes 5 s
  hazard     gas until shut-off on reach
  licensed   "gas fitter"
