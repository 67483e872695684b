# Drives: the shape that a tool enters or grips, and the tools that fit it. The size follows the
# name: `hexalobular 6`, `hexagon 2.5`, `hexagon-head 13`.
# Sources: hexalobular ISO 10664; cross recess types H and Z ISO 4757; hexagon socket ISO 4762;
# widths across flats ISO 272; slot ISO 1207. No open standard covers three-wing and five-lobe
# recesses.
# Example: tool driver-6 "hexalobular driver 6"

drive hexalobular "hexalobular socket"
  driven by  hexalobular-driver or hexalobular-key or hexalobular-bit

drive hexalobular-pin "hexalobular socket with centre pin"
  driven by  bored-hexalobular-driver or bored-hexalobular-key

drive cross-recess "cross recess, type H"
  driven by  cross-recess-driver or cross-recess-bit

drive cross-recess-z "cross recess, type Z"
  driven by  z-recess-driver or z-recess-bit

drive slotted "slot"
  driven by  slotted-driver or slotted-bit or coin

drive hexagon "hexagon socket"
  driven by  hexagon-key or hexagon-driver or hexagon-bit

drive hexagon-pin "hexagon socket with centre pin"
  driven by  bored-hexagon-key or bored-hexagon-driver

drive hexagon-head "hexagon head"
  driven by  spanner or socket-wrench or nut-driver

drive square-head "square head"
  driven by  spanner or socket-wrench

drive square-recess "square recess"
  driven by  square-driver or square-bit

drive three-wing "three-wing recess"
  driven by  three-wing-driver or three-wing-bit

drive five-lobe "five-lobe recess"
  driven by  five-lobe-driver or five-lobe-bit

drive two-hole "two-hole head"
  driven by  two-hole-driver or pin-spanner

drive one-way "one-way slot"
  driven by  one-way-extractor
