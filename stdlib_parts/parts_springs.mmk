# Springs, and parts under load. A spring is dangerous until it is held by a tool or has run free.
# Sources: common practice, no source.
# Example: part strut-spring "strut spring" kind compression-spring

kind compression-spring "compression spring" is part
  states     in, out
  also       loaded, held, free
  compress   loaded -> held by spring-compressor takes 60 s
  ease       held -> loaded by spring-compressor takes 60 s
  let-down   held -> free by spring-compressor takes 60 s
  load       free -> held by spring-compressor takes 60 s
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  hazard     spring-force until held, free on touch

kind torsion-spring "torsion spring" is part
  states     in, out
  also       loaded, held, free
  pin        loaded -> held by locking-pin takes 30 s
  unpin      held -> loaded by locking-pin takes 30 s
  let-down   held -> free by winding-bar takes 30 s
  wind-up    free -> held by winding-bar takes 30 s
  remove     in -> out by hand takes 6 s
  fit        out -> in by hand takes 10 s
  needs      free to remove
  needs      free to fit
  hazard     spring-force until free on touch

kind extension-spring "extension spring" is part
  states     in, out
  also       stretched, held
  unhook     stretched -> held by spring-hook takes 20 s
  hook-on    held -> stretched by spring-hook takes 20 s
  remove     in -> out by hand takes 4 s
  fit        out -> in by hand takes 6 s
  hazard     spring-force until held on touch

kind spring-barrel "wound spring in a barrel" is part
  states     in, out
  also       wound, let-down
  let-down   wound -> let-down by winding-key or hand from outside takes 60 s
  wind-up    let-down -> wound by winding-key or hand from outside takes 60 s
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 20 s
  hazard     spring-force until let-down on touch

# Bolted off as a whole it hurts nobody: its spring is a part of its own, `in` the starter.
kind recoil-starter "recoil starter" is part
  states     in, out
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  warning: The spring in it flies out when its reel is lifted. Let the spring down before that.

# It is let down and wound up by its reel, which lies over it, and by the rope.
kind recoil-spring "recoil spring" is part
  states     in, out
  also       wound, run-out
  let-down   wound -> run-out by hand from outside takes 30 s
  wind-up    run-out -> wound by hand from outside takes 30 s
  remove     in -> out by hand takes 10 s
  fit        out -> in by hand takes 10 s
  hazard     flying-parts until run-out on reach

# A spring of gas never runs free: the part that it lifts is propped.
kind gas-spring "gas spring" is part
  states     in, out
  also       pressing, propped
  prop       pressing -> propped by prop takes 20 s
  unprop     propped -> pressing by prop takes 10 s
  remove     in -> out by hand takes 15 s
  fit        out -> in by hand takes 15 s
  hazard     crushing until propped on touch
  danger: Heat or a cut bursts it and kills. Never open, drill or burn it.

kind leaf-spring "leaf spring" is part
  states     in, out
  also       loaded, relieved
  relieve    loaded -> relieved by jack takes 60 s
  load       relieved -> loaded by jack takes 60 s
  remove     in -> out by hand takes 30 s
  fit        out -> in by hand takes 45 s
  hazard     spring-force until relieved on touch

kind disc-spring-stack "loaded stack of disc springs" is part
  states     in, out
  also       loaded, held
  hold       loaded -> held by press takes 60 s
  release    held -> loaded by press takes 60 s
  remove     in -> out by hand takes 20 s
  fit        out -> in by hand takes 30 s
  hazard     spring-force until held on touch

kind small-spring "small spring" is part
  states     in, out
  remove     in -> out by hand or tweezers takes 4 s
  fit        out -> in by hand or tweezers takes 10 s
  caution: A small spring can fly into an eye. Wear eye protection. Cover the spring with a
    finger.

# Detent balls and plungers, which jump out when what holds them goes.
kind spring-plunger "spring plunger or detent ball" is part
  states     in, out
  also       pressed, caught
  catch      pressed -> caught by hand takes 8 s
  release    caught -> pressed by hand takes 6 s
  remove     in -> out by hand takes 5 s
  fit        out -> in by hand takes 12 s
  hazard     flying-parts until caught on touch
