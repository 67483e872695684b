# Hazards: what can hurt, and the message that stands before the work. A message names the
# hazard, what it does and how to avoid it. DANGER will kill or maim, WARNING could, CAUTION is
# a minor or moderate injury, NOTICE is damage to property (ANSI Z535.6, ISO 3864-2).
# Sources: 60 V, IEC 62368-1 (from memory); burn at 43 degC after hours, ISO 13732-1 (from
# memory); 29 CFR 1910.147 for the order of isolation; the maker's instructions and local rules
# come first.
# Example: hazard stored-charge until proved on reach

hazard mains "Mains voltage"
  danger: Mains voltage kills. Unplug or lock off the supply before you open the case.

hazard stored-charge "Stored charge"
  danger: The charge can kill. Discharge it through the resistor. Prove it dead before you
    touch anything near it.

hazard lithium-fire "Lithium cell"
  warning: A bent, pierced or heated cell can burst into flame. Discharge the cell below 25 %.
    Use no metal tool on it.

hazard spring-force "Loaded spring"
  warning: A spring that lets go can break bones. Hold it with the tool before you undo
    anything.

hazard pressure "Pressure"
  warning: Escaping pressure can blind or maim. Relieve all pressure before you open a joint.

hazard hot-fluid "Hot fluid"
  warning: Hot fluid can scald. Let the equipment cool before you drain it.

hazard hot-surface "Hot surface"
  caution: Hot metal burns skin. Let the equipment cool before you touch it.

hazard fire "Flammable vapour"
  danger: Fuel vapour explodes. Keep flames, sparks and switches away.

hazard gas "Flammable gas"
  danger: Leaking gas explodes. Shut the valve before you start.

hazard falling-weight "Hanging weight"
  danger: A falling weight kills. Prop it before you go near it.

hazard sharp-edge "Sharp edge"
  caution: The edge cuts skin. Wear cut-resistant gloves.

hazard moving-parts "Moving parts"
  warning: Moving parts can crush a hand. Wait until everything stands still.

hazard laser "Laser"
  warning: The beam can blind. Switch the laser off before you open its cover.
