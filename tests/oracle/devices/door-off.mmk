# The door goes off with all that is on it, and is worked on at the bench; the core comes out by
# the other way.
use "cabinet.mmk"

guide door-off "Take the door off"
  spare      seal-new "lid seal tape", 1 for hatch-seal
  supply     glue-new "glue", 1 for chip-glue
  tool       driver-10 "hexalobular driver 10"
  tool       pick "opening pick"
  tool       mat "heat mat"

take-apart

step power "Cut the power"
  unplug     mains
  unplug     stand-by
step door "Take the door off"
  open       door
  disconnect inner-plug
  lift-off   door
  pull       panel-clips
  remove     panel
  undo       board-screws with driver-10
  remove     board
  soften     chip-glue with mat
  oil        pads
  lift       tray
  take       pads 1
  take       pads 2, 3
step hatch "Take the hatch off"
  separate   hatch-seal with pick
  remove     hatch
  slacken    side-clips
  pull       side-clips
  disconnect lamp-plug
  remove     core

put-back

step core "Set the core in"
  fit        core
  connect    lamp-plug
  press      side-clips
  fit        hatch
  seal       hatch-seal with seal-new
  put        pads 2
  set        tray
  put        pads
step door "Hang the door"
  cure       chip-glue with glue-new
  fit        board
  fasten     board-screws with driver-10
  fit        panel
  press      panel-clips 1, 2
  press      panel-clips
  hang       door
  connect    inner-plug
  shut       door
  plug-in    mains
  plug-in    stand-by
