# A two-stage helical gear unit with its coupling and drive motor, mounted on feet or by a flange.
use "kinds.mmk"

device gearbox "Crag 160 helical gear unit"
  revision   D
  mass       186 kg
  variant    foot, flange

face input-face 160 x 160 mm

# The drive motor stands on slide rails, and is drawn back to part the coupling

energy supply "motor supply" kind mains-isolator 400 V
  feeds      motor
part rails "slide rails"
part motor "drive motor" kind retractable-part 5.5 kW
  blocks     spider, gear-hub
  needs      guard out to draw-back
  warning: The motor weighs 38 kg and can crush a foot. Slide it on its rails, and never lift it by hand.
fastener motor-bolts "motor bolt" 4 x bolt M12 x 40, hexagon-head 18
  holds      motor to rails
  torque     70 N.m
part motor-hub "motor half of the coupling" in motor kind coupling

part guard "coupling guard"
  covers     spider, gear-hub, hub-nut, motor-hub
fastener guard-screws "guard screw" 4 x screw M6 x 16, hexagon-head 10
  holds      guard to rails
  torque     8 N.m
  needs      supply proved to undo

part spider "coupling star" kind coupling
  keep       face, order
  limit      tooth-width at least 14.5 mm when spider out
part gear-hub "gear half of the coupling" kind coupling
fastener hub-nut "hub nut" 1 x nut M20, hexagon-head 30
  holds      gear-hub to input-shaft
  behind     spider
  torque     180 N.m
bond hub-fit "tapered fit of the hub" kind taper-fit
  joins      gear-hub to input-shaft
  under      hub-nut
fastener input-key "input key" in input-shaft 1 x shaft-key
  behind     gear-hub

# Oil

part housing "gear housing"
fluid oil "gear oil" in housing 4.8 l kind sump-oil
  needs      breather out to drain
fastener breather "breather plug" 1 x screw G1/2, hexagon-head 27
  torque     30 N.m
part drain-cock "drain cock" in housing
part cock-cap "cock cap"
  covers     oil
fastener cock-ring "cap ring" 1 x ring-nut G1/2
  holds      cock-cap to drain-cock
part drain-magnet "drain magnet" in housing
part level-glass "level glass" in housing
fastener level-screws "level glass screw" in housing 4 x screw M5 x 12, hexagon 4
  holds      level-glass to housing
  torque     5 N.m
part belly-plate "belly plate" only foot
  covers     cock-ring
fastener belly-screws "belly plate screw" only foot 2 x screw M6 x 16, hexagon-head 10
  holds      belly-plate to housing
  torque     8 N.m

# Input shaft

part input-cover "input cover"
  covers     input-shims, input-shaft
  needs      oil drained to remove
fastener input-bolts "input cover bolt" 6 x bolt M10 x 30, hexagon-head 16
  holds      input-cover to housing
  behind     gear-hub
  torque     40 N.m in star, 3 passes
  at         input-face 145,80 112.5,136.3 47.5,136.3 15,80 47.5,23.7 112.5,23.7
bond input-gasket "input cover gasket" kind flat-gasket
  joins      input-cover to housing
bond input-seal "input shaft seal" kind shaft-seal
  joins      input-shaft to input-cover
  under      input-key
  needs      oil drained to pull-out
part input-shims "input shim" 3 x shim 0.10 mm, 0.20 mm, 0.50 mm
  keep       order, face
  blocks     input-shaft
part input-shaft "input shaft with pinion" kind heavy-shaft 31 kg
  limit      end-float 0.05..0.15 mm when input-bolts tight
part pinion "input pinion" in input-shaft kind gear
  renewed as input-shaft
part front-bearing "front bearing" in input-shaft kind bearing 6308
bond front-fit "front bearing fit" in input-shaft kind press-fit
  joins      front-bearing to input-shaft
  under      front-circlip
fastener front-circlip "front circlip" in input-shaft 1 x circlip 40 mm
  holds      front-bearing to input-shaft
part sleeve "spacer sleeve" in input-shaft
  behind     front-bearing
part rear-bearing "rear bearing" in input-shaft kind bearing 6307
bond rear-fit "rear bearing fit" in input-shaft kind press-fit
  joins      rear-bearing to input-shaft

# Middle shaft

part middle-shaft "middle shaft with pinion" kind shaft 22 kg
  behind     input-shaft, middle-cover
part middle-wheel "middle wheel" in middle-shaft kind gear
  renewed as middle-shaft
part middle-bearings "middle bearing" in middle-shaft 2 x bearing 6309
part middle-shims "middle shim" 2 x shim 0.20 mm, 0.50 mm
  keep       order, face
  behind     middle-cover
part middle-cover "middle cover"
  needs      oil drained to remove
fastener middle-bolts "middle cover bolt" 6 x bolt M8 x 25, hexagon-head 13
  holds      middle-cover to housing
  torque     20 N.m in star
bond middle-gasket "middle cover gasket" kind flat-gasket
  joins      middle-cover to housing

# Output shaft

part output-shaft "output shaft" kind heavy-shaft 64 kg
  behind     output-cover
part output-wheel "output wheel" in output-shaft kind gear
part output-bearings "output bearing" in output-shaft 2 x bearing 6313
fastener output-key "output key" in output-shaft 1 x shaft-key
bond output-seal "output shaft seal" kind shaft-seal
  joins      output-shaft to output-cover
part output-shims "output shim" 2 x shim 0.30 mm, 0.60 mm
  keep       order, face
  behind     output-cover
part output-cover "output cover"
  needs      oil drained to remove
fastener output-bolts "output cover bolt" 8 x bolt M12 x 35, hexagon-head 18
  holds      output-cover to housing
  torque     70 N.m in star, 3 passes
bond output-gasket "output cover gasket" kind flat-gasket
  joins      output-cover to housing

# Inspection and mounting

part inspection-cover "inspection cover"
fastener inspection-bolts "inspection cover bolt" 6 x bolt M8 x 20, hexagon-head 13
  holds      inspection-cover to housing
  torque     18 N.m in star
bond inspection-gasket "inspection cover gasket" kind flat-gasket
  joins      inspection-cover to housing
part eye-bolt "lifting eye"
part foot-plate "foot plate" only foot
fastener foot-bolts "foot bolt" only foot 4 x bolt M16 x 50, hexagon-head 24
  holds      housing to foot-plate
  torque     170 N.m
part mounting-flange "mounting flange" only flange
fastener flange-bolts "flange bolt" only flange 8 x bolt M12 x 40, hexagon-head 18
  holds      housing to mounting-flange
  torque     70 N.m in star

# What the unit does

function alignment "The coupling halves stand in line"
  through    spider, motor-bolts

function turning "The input shaft turns freely"
  through    hub-nut, input-bolts

function oil-tight "No oil leaks"
  through    input-seal, input-gasket
