# Electrical parts: boards, displays, lamps, motors, what heats, what makes high voltage.
# Sources: static charge IEC 61340-5-1 (a strap of 1 Mohm, under 35 Mohm to earth); mercury and
# electronic waste: local law; fuses IEC 60127; a microwave oven's supply holds kilovolts
# (makers' warnings, no source); the rest is common practice, no source.
# Example: part board "main board" kind circuit-board

kind circuit-board "circuit board" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  passes on
  waste      electronic-waste
  notice: Static charge destroys circuits without a sign. Wear an earthed wrist strap. Hold
    the board by its edges.

# A board that is touched only by a person joined to earth.
kind static-sensitive-board "board sensitive to static charge" is part
  states     in, out
  also       open-to-charge, earthed
  earth      open-to-charge -> earthed by wrist-strap safe when live from outside takes 15 s
  unearth    earthed -> open-to-charge by hand safe when live from outside takes 5 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  passes on
  may end in earthed
  hazard     static until earthed on touch
  waste      electronic-waste

kind plug-in-card "plug-in card" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  passes on
  waste      electronic-waste

kind memory-module "memory module" is part
  states     in, out
  release    in -> out by hand takes 6 s
  press-in   out -> in by hand takes 6 s
  waste      electronic-waste
  note: The notch in its edge meets the bar in the slot.

kind data-drive "data drive" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 8 s
  waste      electronic-waste
  notice: What it holds may belong to someone. Ask before you take it away.

kind display-module "display module" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  waste      electronic-waste
  caution: Broken glass cuts skin. Keep the glass flat. Press on its frame only.

kind keyboard "keyboard" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  waste      electronic-waste

kind button "button" is part
  states     in, out
  remove     in -> out by hand or tweezers takes 5 s
  fit        out -> in by hand or tweezers takes 8 s

kind camera-module "camera module" is part
  states     in, out
  remove     in -> out by hand or tweezers takes 6 s
  fit        out -> in by hand or tweezers takes 8 s
  waste      electronic-waste
  notice: Dust shows in every picture. Cover the lens while it is out.

kind loudspeaker "loudspeaker" is part
  states     in, out
  remove     in -> out by hand takes 5 s
  fit        out -> in by hand takes 5 s
  waste      electronic-waste
  notice: Its magnet draws screws through the cone. Keep steel away.

kind microphone "microphone" is part
  states     in, out
  remove     in -> out by hand or tweezers takes 5 s
  fit        out -> in by hand or tweezers takes 8 s

kind vibrator "vibration motor" is part
  states     in, out
  remove     in -> out by hand or pick takes 5 s
  fit        out -> in by hand takes 5 s
  waste      electronic-waste

kind aerial "aerial" is part
  states     in, out
  remove     in -> out by hand or pick takes 6 s
  fit        out -> in by hand takes 8 s

kind switch "switch" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 4 s
  passes on
  waste      electronic-waste

kind sensor "sensor" is part
  states     in, out
  remove     in -> out by hand takes 5 s
  fit        out -> in by hand takes 6 s
  passes on
  waste      electronic-waste

kind relay "relay" is part
  states     in, out
  pull-out   in -> out by hand takes 5 s
  plug-in    out -> in by hand takes 5 s
  passes on
  waste      electronic-waste

kind lead "lead" is part
  states     in, out
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 8 s
  passes on
  notice: A sharp bend breaks the conductor inside. Lay the lead back along its old way.

kind cable "cable" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  passes on
  notice: A sharp bend breaks the conductor inside. Lay the cable back along its old way.

kind wiring-loom "wiring loom" is part
  states     in, out
  remove     in -> out by hand takes 30 s
  fit        out -> in by hand takes 60 s
  passes on
  notice: A wire across an edge chafes. Lay the loom back into every clip.

kind fuse-link "fuse link" is part
  states     in, out
  remove     in -> out by hand or fuse-puller takes 4 s
  fit        out -> in by hand or fuse-puller takes 4 s
  passes on
  protects
  warning: A larger fuse lets a fault start a fire. Use only the rating that is printed beside
    the holder.

kind thermal-cutout "thermal cut-out" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  passes on
  protects
  one use
  warning: A bridged cut-out lets a fault start a fire. Fit one of the same temperature.

kind door-switch "door switch" is part
  states     in, out
  remove     in -> out by hand takes 8 s
  fit        out -> in by hand takes 10 s
  passes on
  protects
  warning: A bridged door switch lets the machine run open, and it can maim. Fit it as it was.

kind thermostat "thermostat" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  passes on
  waste      electronic-waste

kind heating-element "heating element" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 1800 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 12 s
  may end in cooled
  hazard     hot-surface until cooled on touch

kind heat-sink "heat sink" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 8 s
  caution: Its fins cut skin. Hold it by its sides.

kind fan "fan" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  moves
  waste      electronic-waste
  note: The arrow on its frame shows which way the air goes.

# Lamps

kind lamp "lamp" is part
  states     in, out
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 6 s
  caution: A lamp that was alight burns skin. Let it cool before you touch it.

kind mercury-lamp "lamp that holds mercury" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 900 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  may end in cooled
  hazard     mercury until cooled on touch
  waste      mercury-waste

kind high-pressure-lamp "high-pressure lamp" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 1800 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 30 s
  fit        out -> in by hand takes 40 s
  may end in cooled
  hazard     bursting-glass until cooled on reach
  waste      electronic-waste

# Motors and high voltage

kind motor "electric motor" is part
  states     in, out
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 20 s
  moves
  passes on
  waste      electronic-waste

kind carbon-brush "carbon brush" is part
  states     in, out
  remove     in -> out by hand or pick takes 8 s
  fit        out -> in by hand takes 8 s
  note: A brush that was used goes back into its own holder, the same way round.

kind transformer "transformer" is part
  states     in, out
  remove     in -> out by hand takes 20 s
  fit        out -> in by hand takes 20 s
  passes on
  waste      electronic-waste

kind magnetron "microwave generator" is part
  states     in, out
  remove     in -> out by hand takes 20 s
  fit        out -> in by hand takes 30 s
  waste      electronic-waste
  licensed   "microwave technician"
  danger: Microwaves burn inside the body. Measure for leaks before the oven is used.
  caution: Dust of its ceramic can harm lungs. Never break or file it.

kind printhead "print head" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  notice: A finger mark blocks its nozzles. Hold it by its sides.

kind fuser "toner fuser" is part
  states     in, out
  also       hot, cooled
  cool       hot -> cooled below 43 degC from outside waits 1800 s
  warm       cooled -> hot from outside
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 15 s
  may end in cooled
  hazard     hot-surface until cooled on touch

# Its cells and capacitors, if it has any, are parts of their own.
kind controller "controller" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  passes on
  waste      electronic-waste
