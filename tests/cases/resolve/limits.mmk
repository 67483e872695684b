# Guides done inside themselves.

--- guides-in-a-ring
device cabinet "Cabinet"
part frame "frame"
part door "door"

guide open-door "Open the door"
  for        competent

take-apart

step door-off "Take the door off"
  do         open-frame

put-back
  derived

guide open-frame "Open the frame"
  for        competent

take-apart

step frame-off "Take the frame off"
  # error 3-4 [done-in-itself] in guide `open-frame`, which is done in it
  do         open-door

put-back
  derived
