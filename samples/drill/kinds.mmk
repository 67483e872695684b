# Kinds that only a cordless power tool has.

# A small wound spring that presses a brush on the commutator. Its end is lifted, and rests beside the brush.
kind brush-spring "brush spring" is part
  states     in, out
  also       loaded, held
  lift       loaded -> held by spring-hook takes 10 s
  let-down   held -> loaded by spring-hook takes 10 s
  remove     in -> out by spring-hook takes 10 s
  fit        out -> in by spring-hook takes 20 s
  caution: The spring can fly into an eye. Wear eye protection, and guide the spring with the hook.

# A chuck on a right-hand thread; a hexagon key in its jaws turns it.
kind threaded-chuck "keyless chuck" is part
  states     in, out
  unscrew    in -> out by hexagon-key takes 40 s
  screw-on   out -> in by hexagon-key takes 30 s
