# Tools that measure and prove.
# Sources: classes as in the file of bench tools; testers of voltage IEC 61243-3, leakage of
# microwave ovens IEC 60335-2-25 (50 W/m2 at 50 mm, from memory); insulation and continuity are
# measured dead: IEC 60364-6 (from memory).
# Example: tool tester "voltage tester 400 V"

tool-kind meter "multimeter"
  class      available
tool-kind voltage-tester "two-pole voltage tester"
  class      available
tool-kind high-voltage-probe "high voltage probe"
  class      available
tool-kind resistance-meter "resistance meter"
  class      available
  on dead circuits
tool-kind continuity-meter "continuity meter"
  class      available
  on dead circuits
tool-kind insulation-tester "insulation tester"
  class      available
  on dead circuits
tool-kind earth-tester "protective earth tester"
  class      available
  on dead circuits
tool-kind clamp-meter "clamp meter"
  class      available
tool-kind capacitance-meter "capacitance meter"
  class      available
  on dead circuits
tool-kind bench-supply "bench supply with a current limit"
  class      available
tool-kind steel-ruler "steel ruler"
  class      available
tool-kind straightedge "straightedge"
  class      available
tool-kind caliper "vernier caliper"
  class      available
tool-kind calliper "vernier calliper"
  class      available
tool-kind micrometer "micrometer"
  class      available
tool-kind depth-gauge "depth gauge"
  class      available
tool-kind feeler-gauge "feeler gauge"
  class      available
tool-kind thread-gauge "thread gauge"
  class      available
tool-kind dial-gauge "dial gauge"
  class      available
tool-kind bore-gauge "bore gauge"
  class      available
tool-kind chain-gauge "chain wear gauge"
  class      available
tool-kind spoke-tension-gauge "spoke tension gauge"
  class      available
tool-kind belt-tension-gauge "belt tension gauge"
  class      available
tool-kind spring-balance "spring balance"
  class      available
tool-kind scale "scale"
  class      available
tool-kind pressure-gauge "pressure gauge"
  class      available
tool-kind vacuum-gauge "vacuum gauge"
  class      available
tool-kind water-gauge "water gauge"
  class      available
tool-kind leak-tester "leak tester"
  class      available
tool-kind leak-spray "leak spray"
  class      available
tool-kind microwave-leak-meter "microwave leak meter"
  class      available
tool-kind oxygen-meter "oxygen meter"
  class      available
tool-kind gas-detector "gas detector"
  class      available
tool-kind thermometer "thermometer"
  class      available
tool-kind reference-probe "reference probe"
  class      available
tool-kind refractometer "refractometer for coolant"
  class      available
tool-kind hydrometer "hydrometer for battery acid"
  class      available
tool-kind light-meter "light meter"
  class      available
tool-kind sound-meter "sound meter"
  class      available
tool-kind tachometer "tachometer"
  class      available
tool-kind spirit-level "spirit level"
  class      available
tool-kind stopwatch "stopwatch"
  class      none
