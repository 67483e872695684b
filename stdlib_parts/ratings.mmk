# Ratings: what each part of a code for protection means. A place that is not said is an X: `IP6X`
# is the first digit, `IPX7` the second, `IPXXB` a letter.
# Sources: IEC 60529 (digits 0 to 6 and 0 to 9, letters; partly from memory), where a second digit
# 7, 8 or 9 does not take in 5 and 6; knocks IEC 62262 (from memory). Code `IP69K` is of another
# standard (ISO 20653).
# Example: device logger "Tarn 4 field logger" with sealed IP67 by lid-seal

# First digit: solid things, and hands

rating IP0X "not protected against solid things"
rating IP1X "keeps out balls of 50 mm, and the back of a hand"
rating IP2X "keeps out balls of 12.5 mm, and fingers"
rating IP3X "keeps out wires and tools of 2.5 mm"
rating IP4X "keeps out wires of 1 mm"
rating IP5X "lets in no dust that would do harm"
rating IP6X "dust-tight"

# Second digit: water

rating IPX0 "not protected against water"
rating IPX1 "withstands drops that fall straight down"
rating IPX2 "withstands drops when tilted by 15 degrees"
rating IPX3 "withstands spray to 60 degrees from above"
rating IPX4 "withstands splashes from all sides"
rating IPX5 "withstands a jet of 12.5 l/min from a 6.3 mm nozzle"
rating IPX6 "withstands a jet of 100 l/min from a 12.5 mm nozzle"
rating IPX7 "withstands 30 min under 1 m of water"
rating IPX8 "withstands lasting immersion, as its maker states"
rating IPX9 "withstands hot jets at high pressure, 80 degC and 8 to 10 MPa"

# Letters: who can touch what is dangerous, and for what it was tried

rating IPXXA "dangerous parts are out of reach of the back of a hand"
rating IPXXB "dangerous parts are out of reach of a finger"
rating IPXXC "dangerous parts are out of reach of a tool of 2.5 mm"
rating IPXXD "dangerous parts are out of reach of a wire of 1 mm"
rating IPXXH "for high voltage"
rating IPXXM "tried in water while its parts moved"
rating IPXXS "tried in water while its parts stood still"
rating IPXXW "for weather that its maker states"

# Knocks

rating IK00 "not protected against knocks"
rating IK01 "withstands knocks of 0.14 J"
rating IK02 "withstands knocks of 0.2 J"
rating IK03 "withstands knocks of 0.35 J"
rating IK04 "withstands knocks of 0.5 J"
rating IK05 "withstands knocks of 0.7 J"
rating IK06 "withstands knocks of 1 J"
rating IK07 "withstands knocks of 2 J"
rating IK08 "withstands knocks of 5 J"
rating IK09 "withstands knocks of 10 J"
rating IK10 "withstands knocks of 20 J"
