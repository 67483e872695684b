# Kinds that only this pump needs.

kind ball-valve "ball valve" is part
  states     open, closed
  close      open -> closed by hand from outside takes 5 s
  open       closed -> open by hand from outside takes 5 s
  present in open, closed
