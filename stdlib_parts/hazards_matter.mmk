# Hazards of heat, rays, sharp edges and matter: what burns, blinds, cuts, poisons.
# Messages and their words as in the file of hazards of energy.
# Sources: burns from 43 degC over hours, ISO 13732-1 (from memory); laser classes IEC 60825-1;
# flammable refrigerants ISO 817 (from memory); dust, germs, mercury: safety sheets and common
# practice, no source. The maker's instructions and local rules come first.
# Example: kind knife is part with hazard sharp-edge until sheathed on touch

# Heat and cold

hazard hot-surface "Hot surface"
  sign       hot-surface
  wear       heat-gloves
  order      switch-off, cool
  caution: Hot metal burns skin. Let the equipment cool before you touch it.

hazard hot-fluid "Hot fluid"
  sign       hot-surface
  wear       heat-gloves, eye-protection
  order      cool, drain
  warning: Hot fluid can scald. Let the equipment cool before you drain it.

hazard cold-burn "Deep cold"
  sign       deep-cold
  wear       cold-gloves, eye-protection
  order      thaw
  caution: Deep cold burns skin and makes metal brittle. Let the part thaw before you touch it.

# Fire and gas

hazard fire "Flammable vapour"
  sign       flammable
  order      put-out, drain
  lit by     hot-surface, fire
  danger: Fuel vapour explodes. Keep flames, sparks and switches away.

hazard gas "Flammable gas"
  sign       flammable
  order      turn-off, burn-off, recover
  lit by     hot-surface, fire
  danger: Leaking gas explodes. Keep flames away, and shut it off or recover it before you start.

hazard no-air "Lack of air"
  sign       suffocation
  order      turn-off, vent
  danger: Gas without oxygen kills unnoticed. Air the room. Measure the oxygen before you go in.

hazard poison-gas "Poisonous gas"
  sign       poison
  wear       respirator, eye-protection, chemical-gloves
  order      recover
  danger: A few breaths of the gas kill. Wear the respirator. Keep the way out clear.

# Rays, fields, noise

hazard laser "Laser"
  sign       laser
  wear       laser-glasses
  order      switch-off, lock-off
  warning: The beam can blind. Switch the laser off before you open its cover.

hazard ultraviolet "Ultraviolet light"
  sign       strong-light
  wear       ultraviolet-glasses
  order      switch-off
  warning: The light can burn eyes and skin. Switch the lamp off before you open its cover.

hazard radio-waves "Radio waves"
  sign       radio-waves
  order      switch-off
  warning: Strong radio waves can burn inside the body. Switch the transmitter off first.

hazard magnetism "Strong magnet"
  sign       magnet
  wear       work-gloves
  order      cover
  warning: The magnet can crush fingers and stop a pacemaker. Put its keeper on first.

hazard noise "Noise"
  sign       noise
  wear       ear-protection
  order      switch-off
  caution: Loud sound harms hearing. Switch it off, or wear ear protection.

# Edges and splinters

hazard sharp-edge "Sharp edge"
  sign       sharp
  wear       cut-gloves
  order      sheathe
  caution: The edge cuts skin. Wear cut-resistant gloves.

hazard splinters "Glass splinters"
  sign       flying-splinters
  wear       eye-protection, cut-gloves
  order      tape
  caution: Splinters cut skin and eyes. Cover the glass with tape before you move it.

# What burns skin, harms lungs or infects

hazard corrosive "Corrosive fluid"
  sign       corrosive
  wear       eye-protection, chemical-gloves, apron
  order      drain, rinse, wipe
  warning: The fluid can burn eyes and skin. Wear eye protection and gloves.

hazard fine-dust "Fine dust"
  sign       dust
  wear       dust-mask
  order      empty, vacuum, wet-wipe
  caution: Fine dust harms lungs. Wear a mask. Never blow the dust off.

hazard mercury "Mercury"
  sign       poison
  wear       chemical-gloves, eye-protection
  order      cool
  warning: A broken lamp gives off mercury, which poisons. Let it cool. Hold it by its cap.

hazard germs "Germs"
  sign       germs
  wear       chemical-gloves
  order      drain
  caution: Waste water infects. Wear gloves. Wash your hands when you have done.
