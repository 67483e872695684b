# Kinds that only this press needs.

# A front that drops open on its hinges. While it hangs, it still stands in the way of what comes
# out forwards.
kind drop-front "drop-down front" is part
  states     shut, open, off
  open       shut -> open by hand takes 4 s
  shut       open -> shut by hand takes 4 s
  lift-off   open -> off by hand takes 4 s
  hang       off -> open by hand takes 6 s
  blocks in  shut, open
  notice: A front that drops breaks its hinges. Lower it by hand.
