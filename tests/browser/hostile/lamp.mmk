# Names and words that would be markup if a form let them.
device lamp "<script>alert(1)</script> & \"lamp\" ]]>"

part body "body"

part lid "lid <img src=x onerror=alert(1)>"
  covers     board

fastener lid-screws "lid screw | *a* [b](javascript:alert(1))" 4 x screw M3 x 8, hexalobular 10
  holds      lid to body
  torque     0.5 N.m

part board "board" kind circuit-board
