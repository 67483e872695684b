# Cells, batteries and parts that hold a charge. They are parts that feed others while they are in.
# Sources: 60 V d.c. as safe to touch, IEC 62368-1 (from memory); a charge falls as V0 e^(-t / RC);
# after the discharge the terminals stay joined, for a charge comes back (DOE-HDBK-1092); a lithium
# cell below a quarter full before work: common practice, no source; swollen or damaged cells:
# common practice, no source; 20 Wh a cell and 100 Wh a battery travel under the lighter rules
# (IATA packing instructions 965 to 967).
# Example: part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V

# Cells and batteries

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
  warning: A cell that is bent or pierced burns, also when it is nearly empty. Pry it off with
    plastic, and keep it flat.

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

# A pack of many cells: its terminals are covered before anything conducting comes near.
kind traction-battery "traction battery" is part
  states     in, out
  also       bare, covered
  cover      bare -> covered by insulating-cap takes 30 s
  uncover    covered -> bare by hand takes 15 s
  remove     in -> out by hand takes 60 s
  fit        out -> in by hand takes 90 s
  may end in covered
  hazard     short-circuit until covered on touch
  waste      battery-waste
  licensed   "high-voltage technician"

kind swollen-cell "swollen lithium cell" is part
  states     in, out
  also       charged, low
  discharge  charged -> low below 5 % from outside
  charge     low -> charged above 10 % from outside
  remove     in -> out by hand takes 60 s
  fit        out -> in by hand takes 10 s
  may end in charged, low
  hazard     lithium-fire until low on touch
  waste      damaged-battery-waste
  danger: A swollen cell bursts into flame and can kill. Work outdoors. Keep a box of sand beside
    you.
  notice: It may not travel by air. Ask the waste site before you bring it.

kind battery-pack "slide-out battery pack" is part
  states     in, out
  slide-out  in -> out by hand safe when live from outside takes 4 s
  slide-in   out -> in by hand safe when live from outside takes 4 s
  waste      battery-waste
  note: The pack is put aside where its contacts touch no metal.

kind nickel-pack "nickel-metal-hydride pack" is part
  states     in, out
  remove     in -> out by hand safe when live takes 6 s
  fit        out -> in by hand safe when live takes 8 s
  waste      battery-waste

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

kind leaking-cell "leaking cell" is part
  states     in, out
  also       wet, wiped
  wipe       wet -> wiped by cotton-swab or hand takes 60 s
  spill      wiped -> wet by hand
  remove     in -> out by hand safe when live takes 15 s
  fit        out -> in by hand safe when live takes 4 s
  may end in wiped
  hazard     corrosive until wiped on touch
  waste      battery-waste

kind lead-acid-battery "lead-acid battery" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 15 s
  waste      battery-waste
  warning: A tool across the terminals can start a fire, and acid burns eyes. Wear eye
    protection.

kind vented-battery "battery that gives off gas" is part
  states     in, out
  also       gassing, rested
  rest       gassing -> rested from outside waits 1800 s
  charge     rested -> gassing from outside
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 15 s
  may end in rested
  hazard     explosive-gas until rested on touch
  waste      battery-waste

# Stored charge

kind capacitor "capacitor" is part
  states     in, out
  also       charged, discharged, proved
  discharge  charged -> discharged by discharge-resistor takes 15 s decays
  prove      discharged -> proved below 60 V by meter takes 10 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in discharged, proved
  hazard     stored-charge until proved on reach
  waste      electronic-waste

# One that is discharged at terminals outside the case is safe before the case is opened.
kind capacitor-with-test-points "capacitor with outside terminals" is part
  states     in, out
  also       charged, discharged, proved
  discharge  charged -> discharged by discharge-resistor from outside takes 15 s decays
  prove      discharged -> proved below 60 V by meter from outside takes 10 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in discharged, proved
  hazard     stored-charge until proved on reach
  waste      electronic-waste

# One so large that a charge comes back: its terminals stay joined while it is worked on.
kind capacitor-bank "capacitor bank" is part
  states     in, out
  also       charged, discharged, proved, joined
  discharge  charged -> discharged by discharge-resistor takes 30 s decays
  prove      discharged -> proved below 60 V by meter takes 15 s
  link       proved -> joined by shorting-lead takes 15 s
  unlink     joined -> proved by hand takes 15 s
  remove     in -> out by hand takes 60 s
  fit        out -> in by hand takes 60 s
  needs      joined to remove
  may end in discharged, proved
  hazard     stored-charge until proved, joined on reach
  waste      electronic-waste

# One that a resistor of its own runs down: nothing to do but wait, and then prove it at terminals
# that the closed case leaves free.
kind self-discharging-capacitor "capacitor with its own resistor" is part
  states     in, out
  also       charged, run-down, proved
  bleed-down charged -> run-down from outside takes 5 s waits 300 s
  discharge  charged -> run-down by discharge-resistor takes 15 s decays
  prove      run-down -> proved below 60 V by meter takes 10 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  may end in run-down, proved
  waste      electronic-waste
  hazard     stored-charge until run-down, proved on reach
  hazard     stored-charge until proved

kind high-voltage-capacitor "high-voltage capacitor" is part
  states     in, out
  also       charged, discharged, proved
  discharge  charged -> discharged by discharge-resistor takes 30 s decays
  prove      discharged -> proved below 60 V by high-voltage-probe takes 15 s
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 8 s
  may end in discharged, proved
  hazard     high-voltage until proved on reach

kind picture-tube "picture tube" is part
  states     in, out
  also       charged, discharged
  discharge  charged -> discharged by discharge-probe takes 30 s
  remove     in -> out by hand takes 120 s
  fit        out -> in by hand takes 180 s
  may end in discharged
  hazard     high-voltage until discharged on reach
  waste      picture-tube-waste
  warning: Its glass implodes and can blind. Wear a face shield. Never lift it by its neck.
