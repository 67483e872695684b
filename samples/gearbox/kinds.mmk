# Kinds that only heavy machines have.
# Source: 25 kg, reference mass for one person, ISO 11228-1 (from memory).

kind heavy-shaft "shaft for the hoist" is part
  states     in, out
  remove     in -> out by hoist takes 120 s
  fit        out -> in by hoist takes 180 s
  warning: The shaft is heavier than 25 kg and can crush a hand. Lift it with the hoist, and keep hands from under it.

# Oil in a housing with a drain cock. The cock is open to drain, and closed before the oil is filled.
kind sump-oil "oil in a sump with a drain cock" is fluid
  states     full, drained
  also       cock-closed, cock-open
  open-cock  cock-closed -> cock-open by hand takes 5 s
  close-cock cock-open -> cock-closed by hand takes 5 s
  drain      full -> drained by drain-pan takes 900 s
  fill       drained -> full by funnel takes 300 s
  needs      cock-open to drain
  needs      cock-closed to fill
  one use
  waste      waste-oil
  notice: Oil harms soil and water. Catch every drop in a pan.
