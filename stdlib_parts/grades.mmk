# Grades: what screws are made of; and how they turn.
# Sources: property classes ISO 898-1, table 3 (nominal tensile strength; yield or 0.2 % proof;
# from memory, 8.8 and its tensile loads seen); the shear ratio of 8.8 to 12.9 ISO 898-7 (from
# memory); stainless steel ISO 3506-1; inch grades SAE J429 (proof of 85, 120 thousand psi and so
# on, in MPa); frictions VDI 2230-1, table A5 (all from memory). Brass, aluminium and plastic:
# ISO 8839 and makers' data, from memory. A grade without `shear` has no published ratio, so its
# breaking torque is not worked out.
# Example: fastener head-bolts 4 x bolt M8 x 40, hexagon-head 13, class 10.9, oiled

# Steel, by property class: the first number a hundredth of its tensile strength, the second the
# part of it at which it yields

grade class-4.6 "steel of property class 4.6"
  tensile    400 MPa
  yield      240 MPa
grade class-4.8 "steel of property class 4.8"
  tensile    420 MPa
  yield      340 MPa
grade class-5.6 "steel of property class 5.6"
  tensile    500 MPa
  yield      300 MPa
grade class-5.8 "steel of property class 5.8"
  tensile    520 MPa
  yield      420 MPa
grade class-6.8 "steel of property class 6.8"
  tensile    600 MPa
  yield      480 MPa
grade class-8.8 "steel of property class 8.8"
  tensile    800 MPa
  tensile    830 MPa above 16 mm
  yield      640 MPa
  yield      660 MPa above 16 mm
  shear      0.84
  usual
grade class-9.8 "steel of property class 9.8"
  tensile    900 MPa
  yield      720 MPa
  shear      0.815
grade class-10.9 "steel of property class 10.9"
  tensile    1040 MPa
  yield      940 MPa
  shear      0.79
grade class-12.9 "steel of property class 12.9"
  tensile    1220 MPa
  yield      1100 MPa
  shear      0.75

# Stainless steel

grade A1-50 "free-cutting stainless steel A1-50"
  tensile    500 MPa
  yield      210 MPa
grade A2-50 "stainless steel A2-50"
  tensile    500 MPa
  yield      210 MPa
grade A2-70 "stainless steel A2-70"
  tensile    700 MPa
  yield      450 MPa
grade A2-80 "stainless steel A2-80"
  tensile    800 MPa
  yield      600 MPa
grade A4-50 "acid-proof stainless steel A4-50"
  tensile    500 MPa
  yield      210 MPa
grade A4-70 "acid-proof stainless steel A4-70"
  tensile    700 MPa
  yield      450 MPa
grade A4-80 "acid-proof stainless steel A4-80"
  tensile    800 MPa
  yield      600 MPa
grade C1-70 "hardened stainless steel C1-70"
  tensile    700 MPa
  yield      410 MPa
grade F1-60 "magnetic stainless steel F1-60"
  tensile    600 MPa
  yield      410 MPa

# Inch grades

grade SAE-1 "steel of SAE grade 1"
  tensile    414 MPa
  yield      248 MPa
grade SAE-2 "steel of SAE grade 2"
  tensile    510 MPa
  tensile    414 MPa above 19.05 mm
  yield      393 MPa
  yield      248 MPa above 19.05 mm
grade SAE-5 "steel of SAE grade 5"
  tensile    827 MPa
  tensile    724 MPa above 25.4 mm
  yield      634 MPa
  yield      558 MPa above 25.4 mm
grade SAE-8 "steel of SAE grade 8"
  tensile    1034 MPa
  yield      896 MPa

# Light metal, copper alloys and plastic

grade brass "brass, CU2"
  tensile    440 MPa
  yield      340 MPa
grade bronze "bronze, CU4"
  tensile    470 MPa
  yield      340 MPa
grade aluminium "aluminium alloy, AL4"
  tensile    420 MPa
  yield      290 MPa
grade titanium "titanium alloy, 6 Al 4 V"
  tensile    895 MPa
  yield      828 MPa
grade nylon "nylon, PA 6.6"
  tensile    80 MPa
  yield      60 MPa
grade acetal "acetal, POM"
  tensile    65 MPa
  yield      60 MPa

# Friction, of thread and head alike. Published figures for one state of the surface differ by a
# third, and so do the preloads that one torque gives.

friction as-delivered "as delivered, lightly oiled"
  coefficient 0.12
  usual
friction oiled "oiled"
  coefficient 0.12
friction lightly-oiled "lightly oiled"
  coefficient 0.12
friction greased "greased"
  coefficient 0.10
friction waxed "waxed"
  coefficient 0.09
friction paste "with assembly paste"
  coefficient 0.08
friction molybdenum-paste "with molybdenum disulphide paste"
  coefficient 0.08
friction dry "dry and plain"
  coefficient 0.20
friction degreased "cleaned of all oil"
  coefficient 0.20
friction zinc-plated "zinc plated, dry"
  coefficient 0.16
friction phosphated "phosphated and oiled"
  coefficient 0.12
friction zinc-flake "zinc flake coated"
  coefficient 0.12
friction stainless-dry "stainless steel, dry"
  coefficient 0.30
friction stainless-paste "stainless steel, with paste"
  coefficient 0.14
friction thread-locked "with liquid thread lock"
  coefficient 0.16
friction patch-locked "with a locking patch"
  coefficient 0.16
