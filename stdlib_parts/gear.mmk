# What is worn, and the sign that says so.
# Sources: ISO 7010 for the signs; eyes ISO 16321 and EN 166, gloves EN 388, 407, 374, 511 and IEC
# 60903, shoes ISO 20345, ears EN 352, masks EN 149, laser glasses EN 207 (all from memory);
# wrist strap IEC 61340-5-1, 1 Mohm in its cord.
# Example: hazard sharp-edge with wear cut-gloves

gear eye-protection "eye protection"
  sign       wear-eye-protection
gear face-shield "a face shield"
  sign       wear-face-shield
gear laser-glasses "glasses for this laser's wavelength"
  sign       wear-dark-glasses
gear ultraviolet-glasses "glasses against ultraviolet light"
  sign       wear-dark-glasses
gear ear-protection "ear protection"
  sign       wear-ear-protection
gear work-gloves "work gloves"
  sign       wear-gloves
gear cut-gloves "cut-resistant gloves"
  sign       wear-gloves
gear heat-gloves "heat-resistant gloves"
  sign       wear-gloves
gear cold-gloves "gloves against cold"
  sign       wear-gloves
gear chemical-gloves "chemical-resistant gloves"
  sign       wear-gloves
gear insulating-gloves "insulating gloves"
  sign       wear-gloves
gear safety-shoes "safety shoes"
  sign       wear-safety-shoes
gear helmet "a helmet"
  sign       wear-helmet
gear dust-mask "a dust mask, class 2 or better"
  sign       wear-mask
gear respirator "a respirator with the right filter"
  sign       wear-respirator
gear apron "an apron that keeps fluid out"
  sign       wear-apron
gear arc-clothing "clothing tested against arcs"
  sign       wear-protective-clothing
gear close-clothing "close-fitting clothes, hair tied back"
  sign       wear-protective-clothing
gear wrist-strap "an earthed wrist strap"
  sign       earth-yourself
