# Hazards of stored and supplied energy: electricity, pressure, weight, springs, motion. Each says
# the sign that stands for it, what is worn, and the order of the verbs that make it safe.
# A message names the hazard, what it does and how to avoid it. DANGER will kill or maim, WARNING
# could, CAUTION is a minor or moderate injury, NOTICE is damage to property (ANSI Z535.6, ISO
# 3864-2). Sentences: one instruction each, 20 words at most (IEC/IEEE 82079-1 principles).
# Sources: 29 CFR 1910.147(d) for the order of isolation; 60 V, IEC 62368-1 (from memory); shorted
# terminals DOE-HDBK-1092; 1 Mohm and 35 Mohm IEC 61340-5-1. The maker's instructions and local
# rules come first.
# Example: kind store is part with hazard stored-charge until proved on reach

# Electricity

hazard mains "Mains voltage"
  sign       electricity
  order      shut-down, switch-off, unplug, isolate, lock-off, discharge, prove
  danger: Mains voltage kills. Unplug or lock off the supply before you open the case.

# Proved dead at the place of work, before the work: EN 50110-1, 6.2.4 (from memory).
hazard unproved "Supply not proved dead"
  sign       electricity
  order      isolate, lock-off, discharge, prove
  danger: The wrong switch may be off, and the terminals can kill. Prove the supply dead at them
    before you touch them. Try the tester on a live point before and after.

hazard second-supply "Second supply"
  sign       electricity
  order      shut-down, isolate, lock-off, prove
  danger: A second source keeps wires live and kills. Isolate both sources and prove both dead.

hazard arc-flash "Arc flash"
  sign       arc-flash
  wear       face-shield, arc-clothing, insulating-gloves
  order      isolate, lock-off, prove, earth
  danger: An arc burns and kills. Stand aside from the switch. Prove the bars dead before you
    earth them.

hazard stored-charge "Stored charge"
  sign       electricity
  wear       insulating-gloves
  order      isolate, bleed-down, discharge, prove, link
  danger: The charge can kill. Discharge it through the resistor. Prove it dead before you
    touch anything near it.

hazard high-voltage "High voltage"
  sign       electricity
  wear       insulating-gloves
  order      isolate, discharge, prove
  danger: Thousands of volts stay after the plug is out, and kill. Keep one hand in your pocket.
    Discharge it first.

hazard short-circuit "Short circuit"
  sign       electricity
  wear       insulating-gloves, eye-protection
  order      cover
  warning: Metal across the terminals melts and burns hands. Take off rings. Cover the bare
    terminals.

hazard static "Static charge"
  sign       earth-yourself
  wear       wrist-strap
  order      earth
  notice: A spark too small to feel destroys circuits. Wear an earthed wrist strap.

# Cells

hazard lithium-fire "Lithium cell"
  sign       battery
  wear       eye-protection
  order      discharge
  warning: A bent, pierced or heated cell can burst into flame. Discharge the cell below 25 %.
    Use no metal tool on it.

hazard explosive-gas "Explosive gas"
  sign       explosive
  wear       eye-protection
  order      rest
  danger: Gas over the cells explodes at a spark. Let the battery rest. Air the room.

# Pressure and vacuum

hazard pressure "Pressure"
  sign       pressure
  wear       eye-protection
  order      turn-off, lock-off, relieve, vent, prove
  warning: Escaping pressure can blind or maim. Relieve all pressure before you open a joint.

hazard oil-jet "Oil under pressure"
  sign       pressure
  wear       eye-protection, chemical-gloves
  order      turn-off, relieve, prove
  danger: A jet of oil pierces skin and can kill. Relieve the pressure. Never feel for a leak by
    hand.

hazard steam "Steam"
  sign       hot-surface
  wear       heat-gloves, face-shield
  order      turn-off, lock-off, vent, cool, relieve
  danger: Steam scalds and kills. Shut and vent the line. Wait until it is cold.

hazard implosion "Vacuum"
  sign       general-warning
  wear       eye-protection
  order      break
  warning: A vessel under vacuum can collapse and throw splinters. Let air in before you touch it.

hazard bursting-glass "Lamp under pressure"
  sign       flying-splinters
  wear       face-shield, cut-gloves
  order      cool
  danger: A lamp under pressure bursts and blinds. Let it cool. Wear a face shield.

# Weight, springs, motion

hazard spring-force "Loaded spring"
  sign       general-warning
  wear       eye-protection
  order      relieve, compress, hold, pin, unhook
  warning: A spring that lets go can break bones. Hold it with the tool before you undo
    anything.

hazard flying-parts "Parts that fly off"
  sign       flying-splinters
  wear       eye-protection
  order      deflate, let-down, catch
  warning: A part under tension can fly off and blind an eye. Let the tension off first.

hazard falling-weight "Hanging weight"
  sign       hanging-load
  wear       safety-shoes, helmet
  order      set-down, prop
  danger: A falling weight kills. Prop it before you go near it.

hazard heavy-load "Heavy load"
  sign       hanging-load
  wear       safety-shoes, work-gloves
  order      sling
  warning: A load above 25 kg can harm a back. Sling it and use the hoist.

hazard crushing "Crushing"
  sign       crushing
  wear       safety-shoes
  order      jack-up, support, lower, prop
  danger: What sinks crushes and kills. Lower it or prop it before you reach below.

hazard crushed-fingers "Crushed fingers"
  sign       hand-crushing
  wear       work-gloves
  order      slacken
  warning: A part under tension can crush fingers. Slacken it before you reach in.

hazard moving-parts "Moving parts"
  sign       hand-crushing
  order      shut-down, stop, run-down
  warning: Moving parts can crush a hand. Wait until everything stands still.

hazard turning-parts "Turning parts"
  sign       drawn-in
  wear       close-clothing
  order      switch-off, spin-down, block
  danger: Turning parts draw in hair and sleeves and maim. Tie hair back. Wait until all stands
    still.

hazard unexpected-start "Unexpected start"
  sign       automatic-start
  order      shut-down, lock-off, prove
  danger: A machine that starts by itself kills. Lock it off. Press start to prove it dead.

hazard engine-start "Engine that can start"
  sign       automatic-start
  order      disable
  danger: An engine that fires while hands are in it maims. Pull the cap off the sparking plug and
    tie it back.

hazard igniter "Pyrotechnic igniter"
  sign       explosive
  wear       eye-protection, ear-protection
  order      disarm
  danger: It fires in a thousandth of a second and kills. Disconnect the battery. Wait as long as
    the maker says.
