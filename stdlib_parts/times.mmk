# How long handling takes, by published methods. One is usual; a timing of yours with `usual` stands
# before it.
# Sources: `handbook`: Yang and El-Haik, Design for Six Sigma (2003), table 10.5 and equation 10.4
# (a screw out in 8.0 or 11.3 s, which of the two is our choice; a part off in 2.4 s, on in 3.8 s; a
# snap in 3.6 and 2.2 s, a plug out in 6.4 s); screws are taken to go in as fast as out (no source).
# `maynard`: the ease of disassembly metric of Vanegas and others, Resources, Conservation and
# Recycling 135 (2018), after the Maynard operation sequence technique, all figures from memory;
# what is hidden (3.6 s to identify) counts as seen, what the paper sets aside once a row counts for
# each member, and which plug or snap is light, usual or heavy is our choice.
# Example: timing our-bench "Our bench"

timing handbook "Handbook of design for service"
  tool-change 4.2 s
  set-aside  1.4 s
  turn       4.5 s
  act        undo screw, captive-screw, threaded-post 8.0 s
  act        fasten screw, captive-screw, threaded-post 8.0 s
  act        slacken set-screw 8.0 s
  act        tighten set-screw 8.0 s
  act        undo self-tapping-screw, thread-forming-screw, wood-screw 11.3 s
  act        undo shoulder-screw, patch-screw 11.3 s
  act        fasten self-tapping-screw, thread-forming-screw, wood-screw 11.3 s
  act        fasten shoulder-screw, patch-screw 11.3 s
  act        disconnect press-fit-plug, board-to-board-plug, locking-tab-plug, latched-header 6.4 s
  act        remove plain-part, panel, bracket, handle, circuit-board, static-sensitive-board 2.4 s
  act        fit plain-part, panel, bracket, handle, circuit-board, static-sensitive-board 3.8 s
  act        remove display-module, switch, lead 2.4 s
  act        fit display-module, switch, lead 3.8 s
  act        pull-off knob, key-cap 2.4 s
  act        push-on knob 3.8 s
  act        press-on key-cap 3.8 s
  act        remove snap-cover 3.6 s
  act        fit snap-cover 2.2 s
  act        unclip clip, cable-clip 3.6 s
  act        clip clip, cable-clip 2.2 s
  act        unsnap snap-hook 3.6 s
  act        snap snap-hook 2.2 s
  usual

timing maynard "Ease of disassembly metric"
  tool-change 1.4 s
  handle     1.8 s
  position   1.4 s
  set-aside  1.4 s
  act        undo screw, self-tapping-screw, thread-forming-screw 3.6 s
  act        undo captive-screw, threaded-post 3.6 s
  act        fasten screw, self-tapping-screw, thread-forming-screw 3.6 s
  act        fasten captive-screw, threaded-post 3.6 s
  act        slacken set-screw, clamping-screw 3.6 s
  act        tighten set-screw, clamping-screw 3.6 s
  act        disconnect magnetic-plug, plug-and-jack, data-socket, usb-socket 1.1 s
  act        connect magnetic-plug, plug-and-jack, data-socket, usb-socket 1.1 s
  act        disconnect friction-plug, friction-ribbon, press-fit-plug, appliance-inlet 2.2 s
  act        connect friction-plug, friction-ribbon, press-fit-plug, appliance-inlet 2.2 s
  act        disconnect board-to-board-plug, locking-tab-plug, latched-header, locking-spade 3.6 s
  act        connect board-to-board-plug, locking-tab-plug, latched-header, locking-spade 3.6 s
  act        unlatch latch 1.1 s
  act        latch latch 1.1 s
  act        unclip clip, cable-clip 2.2 s
  act        clip clip, cable-clip 2.2 s
  act        unsnap snap-hook 3.6 s
  act        snap snap-hook 3.6 s
  act        remove snap-cover 3.6 s
  act        fit snap-cover 3.6 s
  act        remove plain-part, panel, bracket, handle, circuit-board, static-sensitive-board 0 s
  act        fit plain-part, panel, bracket, handle, circuit-board, static-sensitive-board 0 s
  act        remove display-module, switch, lead 0 s
  act        fit display-module, switch, lead 0 s
  act        pull-off knob, key-cap 0 s
  act        push-on knob 0 s
  act        press-on key-cap 0 s
