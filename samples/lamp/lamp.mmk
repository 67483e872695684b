# A desk lamp with a metal foot: an invented device, built as such lamps are.

device lamp "Skarv desk lamp"
  revision   A
  mass       1.4 kg
  note: The lamp has double insulation and a two-core mains lead.

face bottom 140 x 140 mm, corner 70 mm

part foot "foot"
part bottom-plate "bottom plate"
  covers     block, switch-hooks, switch-tabs, cord-terminals, cord-clamp
part arm "arm" in foot
part head "lamp head" in arm
part bulb "lamp" in head kind lamp
part block "terminal block" in foot
part switch "rocker switch" kind switch
part cord "mains lead" kind cable

fastener plate-screws "plate screw" 3 x screw M3 x 8, cross-recess 1, countersunk
  holds      bottom-plate to foot
  at         bottom 70,12 120.2,99 19.8,99
fastener switch-hooks "switch hook" 2 x snap-hook
  holds      switch to foot
fastener cord-clamp "lead clamp" 1 x strain-clamp slotted 4
  holds      cord to foot

connector switch-tabs "switch terminal" 2 x spade
  joins      switch to block
connector cord-terminals "lead terminal" 2 x screw-terminal slotted 3
  joins      cord to block
  keep       order

energy mains "mains supply" kind mains-cord
  feeds      cord, block, switch

function switching "The switch makes and breaks the circuit"
  through    cord, cord-terminals, switch-tabs, switch

caution tab-strain on switch-tabs
  The cores are short. Hold the switch near its opening.
