# Proved dead where something of it lies open: the terminals behind the lid of a motor, a board behind
# a door, the plug between both.
device booster "Pressure booster"
  variant    plain, timed

energy mains "mains" kind mains-isolator 230 V
  feeds      board
  feeds      motor through motor-lead
part frame "frame"
part door "door"
  covers     board, motor-lead
fastener door-screws "door screw" 2 x screw M5 x 12, hexalobular 25
  holds      door to frame
part board "control board" kind circuit-board
fastener board-screws "board screw" 4 x screw M4 x 8, hexalobular 20
  holds      board to frame
  behind     timer
part timer "timer" in board
  only       timed
  covers     board-screws
part motor "motor" kind motor
part lid "terminal lid" in motor
  covers     motor-ends
fastener lid-screws "lid screw" 2 x screw M4 x 10, hexalobular 20
  holds      lid to motor
connector motor-ends "motor terminals" kind screw-terminal
  joins      motor to frame
connector motor-lead "motor plug" kind locking-tab-plug
  joins      board to motor
fastener motor-bolts "motor bolt" 4 x screw M8 x 25, hexagon-head 13
  holds      motor to frame
function running "It holds the pressure"
  through    mains, board, motor

guide motor-out "Take the motor out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       driver-20 "hexalobular driver 20"
  tool       driver-25 "hexalobular driver 25"
  tool       spanner-13 "spanner 13"

take-apart

step dead "Make it dead at the motor"
  lock-off   mains with lock
  undo       lid-screws with driver-20
  remove     lid
  prove      mains with tester
  slacken    motor-ends with driver-20
  disconnect motor-ends

step open "Open the door"
  undo       door-screws with driver-25
  remove     door
  disconnect motor-lead

step out "Take the motor out"
  undo       motor-bolts with spanner-13
  remove     motor

put-back
  derived

test run "It runs, and holds the pressure"
  proves     running

guide board-out "Take the board out"
  for        licensed "electrician"
  tool       lock "padlock"
  tool       tester "voltage tester"
  tool       driver-20 "hexalobular driver 20"
  tool       driver-25 "hexalobular driver 25"

take-apart

step open "Open the door and prove it dead"
  lock-off   mains with lock
  undo       door-screws with driver-25
  remove     door
  prove      mains with tester

step out "Take the board out"
  remove     timer
  disconnect motor-lead
  undo       board-screws with driver-20
  remove     board

put-back
  derived

test run "It runs, and holds the pressure"
  proves     running
