# Drives with a hexagon socket, with a head to grip, and those meant to keep hands out.
# Sources: hexagon sockets ISO 4762 (cap), 10642 (countersunk), 7380-1 (button) and 4026 (set
# screw); widths across flats ISO 272, 4014, 4017 and 4032, and where a line says so DIN 933 and
# 934; inch sizes ASME B18.3 and B18.2.1 (from memory), by their width in mm; square recess ASME
# B18.6.3, square heads DIN 479, twelve-point sockets by the number on the tool (all from memory);
# the freehub's hollow bolt: cycle makers' practice. 17 mm of wheel bolts, and what a bench makes do
# with: common practice, no source.
# Example: fastener cover-bolts 6 x bolt M8 x 25, hexagon-head 13, class 8.8

drive hexagon "hexagon socket"
  driven by  hexagon-key or hexagon-driver or hexagon-bit
  size       0.7 across 0.7 mm for M1.6 "set screw, ISO 4026"
  size       0.9 across 0.9 mm for M2 "set screw, ISO 4026"
  size       1.3 across 1.3 mm for M2.5 "set screw, ISO 4026"
  size       1.5 across 1.5 mm for M1.6, M2 "cap, ISO 4762"
  size       1.5 across 1.5 mm for M3 "set screw, ISO 4026"
  size       2 across 2 mm for M2.5 "cap, ISO 4762"
  size       2 across 2 mm for M3 "countersunk or button, ISO 10642, 7380"
  size       2 across 2 mm for M4 "set screw, ISO 4026"
  size       2.5 across 2.5 mm for M3 "cap, ISO 4762"
  size       2.5 across 2.5 mm for M4 "countersunk or button, ISO 10642, 7380"
  size       2.5 across 2.5 mm for M5 "set screw, ISO 4026"
  size       3 across 3 mm for M4 "cap, ISO 4762"
  size       3 across 3 mm for M5 "countersunk or button, ISO 10642, 7380"
  size       3 across 3 mm for M6 "set screw, ISO 4026"
  size       4 across 4 mm for M5 "cap, ISO 4762"
  size       4 across 4 mm for M6 "countersunk or button, ISO 10642, 7380"
  size       4 across 4 mm for M8 "set screw, ISO 4026"
  size       5 across 5 mm for M6 "cap, ISO 4762"
  size       5 across 5 mm for M8 "countersunk or button, ISO 10642, 7380"
  size       5 across 5 mm for M10 "set screw, ISO 4026"
  size       6 across 6 mm for M8, M8x1 "cap, ISO 4762"
  size       6 across 6 mm for M10 "countersunk or button, ISO 10642, 7380"
  size       6 across 6 mm for M12 "set screw, ISO 4026"
  size       8 across 8 mm for M10, M10x1.25, M10x1 "cap, ISO 4762"
  size       8 across 8 mm for M12 "countersunk or button, ISO 10642, 7380"
  size       8 across 8 mm for M16 "set screw, ISO 4026"
  size       10 across 10 mm for M12, M12x1.5, M12x1.25 "cap, ISO 4762"
  size       10 across 10 mm for M16 "countersunk or button, ISO 10642, 7380"
  size       10 across 10 mm for M20 "set screw, ISO 4026"
  size       10 across 10 mm for M14 "freehub bolt"
  size       12 across 12 mm for M14, M14x1.5 "cap, ISO 4762"
  size       12 across 12 mm for M20 "countersunk, ISO 10642"
  size       12 across 12 mm for M24 "set screw, ISO 4026"
  size       14 across 14 mm for M16, M16x1.5 "cap, ISO 4762"
  size       17 across 17 mm for M20, M20x2, M20x1.5 "cap, ISO 4762"
  size       19 across 19 mm for M24, M24x2 "cap, ISO 4762"
  size       1.98 across 1.98 mm for UNC-2-56, UNC-3-48 "cap, ASME B18.3"
  size       2.38 across 2.38 mm for UNC-4-40, UNC-5-40 "cap, ASME B18.3"
  size       2.78 across 2.78 mm for UNC-6-32 "cap, ASME B18.3"
  size       3.57 across 3.57 mm for UNC-8-32 "cap, ASME B18.3"
  size       3.97 across 3.97 mm for UNC-10-24, UNF-10-32 "cap, ASME B18.3"
  size       4.76 across 4.76 mm for UNC-1/4-20, UNF-1/4-28 "cap, ASME B18.3"
  size       6.35 across 6.35 mm for UNC-5/16-18, UNF-5/16-24 "cap, ASME B18.3"
  size       7.94 across 7.94 mm for UNC-3/8-16, UNF-3/8-24 "cap, ASME B18.3"
  at a pinch hexalobular-driver 8 for 2
  at a pinch hexalobular-driver 10 for 2.5
  at a pinch hexalobular-driver 15 for 3
  at a pinch hexalobular-driver 25 for 4
  at a pinch hexalobular-driver 30 for 5
  at a pinch hexagon-key 4 for 3.97
  at a pinch hexagon-key 8 for 7.94

drive hexagon-pin "hexagon socket with centre pin"
  driven by  bored-hexagon-key or bored-hexagon-driver
  size       2 across 2 mm for M3
  size       2.5 across 2.5 mm for M4
  size       3 across 3 mm for M5
  size       4 across 4 mm for M6
  size       5 across 5 mm for M8
  size       6 across 6 mm for M10
  size       8 across 8 mm for M12

drive hexagon-head "hexagon head"
  driven by  spanner or socket or socket-wrench or nut-driver or ring-spanner or ratchet or wheel-brace or impact-wrench
  size       3.2 across 3.2 mm for M1.6 "ISO 272"
  size       4 across 4 mm for M2 "ISO 272"
  size       5 across 5 mm for M2.5 "ISO 272"
  size       5.5 across 5.5 mm for M3 "ISO 272"
  size       6 across 6 mm for M3.5 "ISO 272"
  size       7 across 7 mm for M4 "ISO 272"
  size       8 across 8 mm for M5 "ISO 272"
  size       10 across 10 mm for M6 "ISO 272"
  size       11 across 11 mm for M7 "ISO 272"
  size       13 across 13 mm for M8, M8x1 "ISO 272"
  size       16 across 16 mm for M10, M10x1.25, M10x1 "ISO 272"
  size       17 across 17 mm for M10, M10x1.25, M10x1 "old DIN 933, 934"
  size       15 across 15 mm for M10, M10x1.25, M10x1 "flange, ISO 15071"
  size       18 across 18 mm for M12, M12x1.5, M12x1.25 "ISO 272"
  size       19 across 19 mm for M12, M12x1.5, M12x1.25 "old DIN 933, 934"
  size       16 across 16 mm for M12, M12x1.5, M12x1.25 "flange, ISO 15071"
  size       17 across 17 mm for M12x1.5, M14x1.5 "wheel bolts"
  size       21 across 21 mm for M14, M14x1.5 "ISO 272"
  size       22 across 22 mm for M14, M14x1.5 "old DIN 933, 934"
  size       24 across 24 mm for M16, M16x1.5 "ISO 272"
  size       27 across 27 mm for M18, M18x2, M18x1.5 "ISO 272"
  size       30 across 30 mm for M20, M20x2, M20x1.5 "ISO 272"
  size       34 across 34 mm for M22, M22x2, M22x1.5 "ISO 272"
  size       32 across 32 mm for M22, M22x2, M22x1.5 "old DIN 933, 934"
  size       36 across 36 mm for M24, M24x2, M24x1.5 "ISO 272"
  size       3.2 across 3.2 mm for ST2.2 "tapping, ISO 1479"
  size       5 across 5 mm for ST2.9 "tapping, ISO 1479"
  size       5.5 across 5.5 mm for ST3.5 "tapping, ISO 1479"
  size       7 across 7 mm for ST4.2 "tapping, ISO 1479"
  size       8 across 8 mm for ST4.8, ST5.5 "tapping, ISO 1479"
  size       10 across 10 mm for ST6.3 "tapping, ISO 1479"
  size       13 across 13 mm for ST8 "tapping, ISO 1479"
  size       6.35 across 6.35 mm for UNC-4-40 "inch"
  size       7.94 across 7.94 mm for UNC-6-32 "inch"
  size       8.73 across 8.73 mm for UNC-8-32 "inch"
  size       9.53 across 9.53 mm for UNC-10-24, UNF-10-32 "inch"
  size       11.11 across 11.11 mm for UNC-1/4-20, UNF-1/4-28 "inch"
  size       12.7 across 12.7 mm for UNC-5/16-18, UNF-5/16-24 "inch"
  size       14.29 across 14.29 mm for UNC-3/8-16, UNF-3/8-24 "inch"
  size       19.05 across 19.05 mm for UNC-1/2-13, UNF-1/2-20 "inch"
  at a pinch adjustable-spanner for 10
  at a pinch adjustable-spanner for 13
  at a pinch adjustable-spanner for 16
  at a pinch adjustable-spanner for 17
  at a pinch spanner 8 for 7.94
  at a pinch spanner 11 for 11.11
  at a pinch spanner 19 for 19.05

drive bi-hexagon "twelve-point socket"
  driven by  bi-hexagon-key or bi-hexagon-bit
  size       5 across 5 mm for M5
  size       6 across 6 mm for M6
  size       8 across 8 mm for M8
  size       10 across 10 mm for M10
  size       12 across 12 mm for M12
  size       14 across 14 mm for M14

drive bi-hexagon-head "twelve-point head"
  driven by  ring-spanner or socket or socket-wrench
drive splined "splined socket"
  driven by  spline-bit or spline-tool
drive square-head "square head"
  driven by  spanner or socket or socket-wrench
  size       5 across 5 mm for M5
  size       6 across 6 mm for M6
  size       8 across 8 mm for M8
  size       10 across 10 mm for M10
  at a pinch adjustable-spanner for 8
drive square-recess "square recess"
  driven by  square-driver or square-bit
  size       0 across 2.29 mm for ST2.9
  size       1 across 2.82 mm for ST3.5, ST3.9
  size       2 across 3.34 mm for ST4.2, ST4.8
  size       3 across 4.83 mm for ST5.5, ST6.3
drive wing "wing"
  driven by  pliers
drive knurled "knurled head"
  driven by  pliers
drive coin-slot "coin slot"
  driven by  coin or slotted-driver

# Meant to keep hands out. No open standard covers them; the sizes are those on the tools.

drive three-wing "three-wing recess"
  driven by  three-wing-driver or three-wing-bit
drive five-lobe "five-lobe recess"
  driven by  five-lobe-driver or five-lobe-bit
drive triangle "triangular recess"
  driven by  triangle-driver or triangle-bit
drive two-hole "two-hole head"
  driven by  two-hole-driver or pin-spanner
drive clutch "clutch recess"
  driven by  clutch-driver or clutch-bit
drive one-way "one-way slot"
  driven by  one-way-extractor
drive slotted-nut "slotted round nut"
  driven by  slotted-nut-driver or hook-spanner
drive hook "round nut with slots on the rim"
  driven by  hook-spanner
drive shear-head "head that shears off"
  driven by  screw-extractor
