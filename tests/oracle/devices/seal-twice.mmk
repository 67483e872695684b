# A seal that is renewed, parted again for a second look, and renewed again.
use "cabinet.mmk"

guide seal-twice "Look behind the hatch twice"
  spare      seal-new "lid seal tape", 2 for hatch-seal
  tool       pick "opening pick"

take-apart

step hatch "Take the hatch off"
  separate   hatch-seal with pick
  remove     hatch

put-back

step hatch "Put the hatch on"
  fit        hatch
  replace    hatch-seal with seal-new
  seal       hatch-seal
  separate   hatch-seal with pick
  remove     hatch
  fit        hatch
  seal       hatch-seal with seal-new
