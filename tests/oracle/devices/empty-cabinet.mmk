# Every part out and in again.
use "cabinet.mmk"

guide empty-cabinet "Empty the cabinet"
  spare      seal-new "lid seal tape", 1 for hatch-seal
  supply     glue-new "glue", 1 for chip-glue
  supply     oil-new "oil", 1 for oil
  supply     paste-new "paste", 1 for sink-paste
  tool       driver-10 "hexalobular driver 10"
  tool       pick "opening pick"
  tool       mat "heat mat"

take-apart

step power "Cut the power"
  unplug     mains, stand-by
step hatch "Take the hatch off"
  separate   hatch-seal with pick
  remove     hatch
  disconnect lamp-plug
  drain      oil
step door "Open the door"
  open       door
  disconnect inner-plug
  oil        pads
  take       pads 2
  take       pads
  tip        tray
  lift       tray
step panel "Take the panel off"
  slacken    panel-clips 1, 2
  pull       panel-clips 2
  pull       panel-clips
  remove     panel
  undo       board-screws 1 with driver-10
  undo       board-screws with driver-10
  remove     board
step chip "Part the chip"
  separate   sink-paste
  remove     heat-sink
  soften     chip-glue with mat
  separate   chip-glue with pick
  remove     chip
step core "Take the core out"
  slacken    side-clips
  pull       side-clips
  remove     lamp
  remove     core

put-back

step core "Set the core in"
  fit        core
  fit        lamp
  push       side-clips 1
  press      side-clips
  fill       oil with oil-new
step chip "Stick the chip on"
  fit        chip
  stick      chip-glue
  cure       chip-glue with glue-new
  fit        heat-sink
  spread     sink-paste with paste-new
step panel "Put the panel on"
  fit        board
  fasten     board-screws with driver-10
  fit        panel
  push       panel-clips 1, 3
  press      panel-clips
  set        tray
  put        pads
  wash       pads 1
  connect    inner-plug
  shut       door
step hatch "Put the hatch on"
  connect    lamp-plug
  fit        hatch
  replace    hatch-seal with seal-new
  seal       hatch-seal
  plug-in    mains, stand-by
