# Drives with a recess: the shape that a tool enters, and the tools that fit it. The size follows
# the name: `hexalobular 6`, `cross-recess 1`, `slotted 4`.
# Sources: hexalobular ISO 10664, sizes for threads ISO 14579, 14580, 14583, 14584 and 14585 (1 to
# 5, 7, 9 and 27 are in trade use and not in the standard: from memory; 40 for M8 GB/T 2673);
# cross recess ISO 4757, sizes ISO 7045 to 7047 and 7049 to 7051; slot ISO 1207 and 1580, blade
# widths ISO 2380 (from memory); inch sizes ASME B18.6.3 (from memory). Japanese and old German
# screws differ where a line says so. External hexalobular heads DIN 34800 (from memory). What a
# bench makes do with: common practice, no source.
# Example: tool driver-6 "hexalobular driver 6"

drive hexalobular "hexalobular socket"
  driven by  hexalobular-driver or hexalobular-key or hexalobular-bit
  size       1 across 0.90 mm
  size       2 across 1.00 mm
  size       3 across 1.20 mm
  size       4 across 1.35 mm
  size       5 across 1.50 mm for M1.6
  size       6 across 1.75 mm for M2, UNC-2-56
  size       7 across 2.07 mm
  size       8 across 2.40 mm for M2.5, UNC-3-48
  size       9 across 2.58 mm
  size       10 across 2.80 mm for M3, UNC-4-40, ST2.9
  size       15 across 3.35 mm for M3.5, UNC-6-32, ST3.5
  size       20 across 3.95 mm for M4, UNC-8-32, ST4.2
  size       25 across 4.50 mm for M5, UNC-10-24, UNF-10-32, ST4.8, ST5.5
  size       27 across 5.07 mm
  size       30 across 5.60 mm for M6, UNC-1/4-20, UNF-1/4-28, ST6.3
  size       40 across 6.75 mm for M8, UNC-5/16-18 "GB/T 2673"
  size       45 across 7.93 mm for M8, M8x1, UNC-3/8-16
  size       50 across 8.95 mm for M10, M10x1.25, M10x1
  size       55 across 11.35 mm for M12, M12x1.5, M12x1.25
  size       60 across 13.45 mm for M14, M14x1.5
  size       70 across 15.70 mm for M16, M16x1.5
  size       80 across 17.75 mm for M18
  size       90 across 20.20 mm for M20
  size       100 across 22.40 mm
  at a pinch slotted-driver 1.8 for 6
  at a pinch slotted-driver 2.5 for 8
  at a pinch slotted-driver 3 for 10
  at a pinch hexagon-key 2 for 8
  at a pinch hexagon-key 2.5 for 10
  at a pinch hexagon-key 4 for 25
  at a pinch hexagon-key 5 for 30

drive hexalobular-pin "hexalobular socket with centre pin"
  driven by  bored-hexalobular-driver or bored-hexalobular-key
  size       6 across 1.75 mm for M2
  size       8 across 2.40 mm for M2.5
  size       10 across 2.80 mm for M3
  size       15 across 3.35 mm for M3.5
  size       20 across 3.95 mm for M4
  size       25 across 4.50 mm for M5
  size       27 across 5.07 mm
  size       30 across 5.60 mm for M6
  size       40 across 6.75 mm for M8
  size       45 across 7.93 mm for M8
  size       50 across 8.95 mm

drive hexalobular-external "external hexalobular head"
  driven by  external-hexalobular-socket
  size       4 across 3.86 mm for M3
  size       5 across 4.73 mm for M4
  size       6 across 5.74 mm for M5
  size       8 across 7.52 mm for M6
  size       10 across 9.42 mm for M8
  size       12 across 11.17 mm for M10
  size       14 across 12.90 mm for M12
  size       16 across 14.76 mm
  size       18 across 16.70 mm for M14

drive cross-recess "cross recess, type H"
  driven by  cross-recess-driver or cross-recess-bit
  size       000 for M1, M1.2 "makers of small screws"
  size       00 for M1.4, M1.6, S1.0 "makers of small screws"
  size       0 for M1.6, M2, ST2.2, UNC-2-56
  size       1 for M2 "DIN 7985, JIS B 1111"
  size       1 for M2.5, M3, ST2.9, UNC-4-40
  size       2 for M3 "JIS B 1111"
  size       2 for M3.5, M4, M5, ST3.5, ST3.9, ST4.2, ST4.8
  size       2 for UNC-6-32, UNC-8-32, UNC-10-24, UNF-10-32
  size       3 for M6, ST5.5, ST6.3, UNC-1/4-20
  size       3 for M8 "JIS B 1111"
  size       4 for M8, M10, ST8
  at a pinch z-recess-driver 1 for 1
  at a pinch z-recess-driver 2 for 2
  at a pinch slotted-driver 2 for 0
  at a pinch slotted-driver 3 for 1

drive cross-recess-z "cross recess, type Z"
  driven by  z-recess-driver or z-recess-bit
  size       0 for M1.6, M2, ST2.2
  size       1 for M2.5, M3, ST2.9
  size       2 for M3.5, M4, M5, ST3.5, ST4.2, ST4.8
  size       3 for M6, ST5.5, ST6.3
  size       4 for M8, M10, ST8
  at a pinch cross-recess-driver 1 for 1
  at a pinch cross-recess-driver 2 for 2

drive slotted "slot"
  driven by  slotted-driver or slotted-bit or coin
  size       1.2 across 0.25 mm for M1, M1.2
  size       1.8 across 0.40 mm for M1.6
  size       2.5 across 0.50 mm for M2
  size       3 across 0.60 mm for M2, M2.5
  size       3 across 0.80 mm for M3
  size       4 across 0.80 mm for M3
  size       5.5 across 1.20 mm for M4, M3.5
  size       5.5 across 1.20 mm for M5
  size       6 across 1.20 mm for M5
  size       6.5 across 1.20 mm for M5
  size       8 across 1.60 mm for M6
  size       10 across 1.60 mm for M6
  size       12 across 2.00 mm for M8
  size       14 across 2.50 mm for M10
  at a pinch prying-lever for 14
