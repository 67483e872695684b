# A rear bicycle hub with cup and cone bearings and a freehub body, for rim or disc brakes.
use "kinds.mmk"

device hub "Fell 36 rear hub"
  revision   C
  mass       412 g
  variant    rim, disc

face rotor-face 60 x 60 mm

# The shell and what is pressed into it

part shell "hub shell"
part left-cup "left bearing cup" in shell
  renewed as shell

# The axle, which comes out to the right with the right cone still set on it

part axle "axle" kind shaft
fastener right-cone "right cone" in axle 1 x cone-nut
part right-spacers "right spacer" in axle 2 x shim 1.0 mm, 4.5 mm
  keep       order, face
  covers     right-cone
fastener right-lock-nut "right lock nut" in axle 1 x nut M10, hexagon-head 17
  holds      right-spacers to axle
  torque     20 N.m

fastener left-lock-nut "left lock nut" 1 x nut M10, hexagon-head 17
  holds      left-spacers to axle
  torque     20 N.m
  behind     skewer
part left-spacers "left spacer" 2 x shim 1.0 mm, 2.5 mm
  keep       order, face
  covers     left-cone
fastener left-cone "left cone" 1 x cone-nut
  holds      axle to shell

# Bearings: loose balls of 6.35 mm

part left-seal "left dust seal"
  behind     axle
  covers     left-balls
part left-balls "left ball" 9 x bearing 6.35 mm
  limit      diameter at least 6.33 mm when left-balls out
  needs      left-balls out to clean
  needs      rotor out to clean
  caution: Balls roll away and are lost. Work over a tray with a rim.
part right-seal "right dust seal"
  behind     axle
  covers     right-balls
part right-balls "right ball" 9 x bearing 6.35 mm
  limit      diameter at least 6.33 mm when right-balls out
  needs      right-balls out to clean
  caution: Balls roll away and are lost. Work over a tray with a rim.

# The skewer that clamps the hub in the frame

part skewer "quick-release skewer"
part skewer-springs "skewer spring" in skewer 2 x small-spring conical
fastener skewer-nut "skewer nut" 1 x ring-nut M5
  holds      skewer to axle

# The drive side

part freehub "freehub body"
part right-cup "right bearing cup" in freehub
  renewed as freehub
part pawls "pawl" in freehub 3 x plain-part
  renewed as freehub
part pawl-spring "pawl spring" in freehub kind small-spring
  renewed as freehub
part freehub-seal "freehub seal" in freehub
  renewed as freehub
part freehub-shim "freehub shim" kind shim 0.5 mm
  behind     freehub
fastener freehub-bolt "hollow freehub bolt" 1 x bolt M14 x 20, hexagon 10
  holds      freehub to shell
  behind     axle, right-balls
  torque     40 N.m
part cassette "sprocket cassette"
  blocks     freehub
  caution: The teeth cut skin. Hold the cassette with gloves or a cloth.
part spoke-guard "spoke guard disc"
  behind     cassette
fastener cassette-ring "cassette lock ring" 1 x splined-ring
  holds      cassette to freehub
  behind     skewer
  torque     40 N.m

# The brake rotor

part rotor "brake rotor" only disc
  warning: Grease on the rotor makes the brake fail. Hold the rotor by its centre.
fastener rotor-screws "rotor screw" only disc 6 x screw M5 x 10, hexalobular 25, button
  holds      rotor to shell
  torque     6 N.m in star
  at         rotor-face 52,30 41,49.1 19,49.1 8,30 19,10.9 41,10.9

# What the hub does

function rolling "The wheel turns freely, without play"
  through    left-cone, left-lock-nut, left-balls, right-balls

function drive "The wheel drives forward and turns freely backward"
  through    freehub-bolt, cassette-ring
