# Situations of variants: parts that only some models have, guides for some models alone.

--- convector
device convector "Room convector"
  variant    eu, uk

part body "body"
part cover "cover"
  covers     plug-eu, plug-uk, terminal-eu, terminal-uk
part plug-eu "cord set" only eu
part plug-uk "cord set" only uk
part switch-plate "switch plate"
fastener cover-screws "cover screw" only uk 2 x screw M4 x 10, cross-recess 2, pan
  holds      cover to body
  torque     1.2 N.m
fastener cover-clips "cover clip" only eu 2 x clip
  holds      cover to body
connector terminal-eu "cord terminal" only eu kind lever-terminal
  joins      plug-eu to body
connector terminal-uk "cord terminal" only uk kind lever-terminal
  joins      plug-uk to body

--- both-variants
use "convector.mmk"
guide both-variants "Take the cord set out"
  for        competent
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with cross-2
  unclip     cover-clips
  remove     cover

step cord-out "Take the cord set out"
  disconnect terminal-eu
  disconnect terminal-uk
  remove     plug-eu
  remove     plug-uk

put-back
  derived

--- one-variant-forgotten
use "convector.mmk"
guide one-variant-forgotten "Take the cover off"
  for        competent
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with cross-2
  # error 3-8 [still-held in eu] would tear what holds it
  remove     cover

put-back
  derived

--- for-one-variant-alone
use "convector.mmk"
guide for-one-variant-alone "Take the cover off"
  for        competent
  only       uk
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with cross-2
  remove     cover

put-back
  derived

--- wrong-in-both-variants
use "convector.mmk"
guide wrong-in-both-variants "Take the cord set out"
  for        competent
  tool       cross-2 "cross-recess driver 2"
  tool       torque-driver "torque driver 1.2 N·m"

take-apart

step open "Take the cover off"
  undo       cover-screws with cross-2
  unclip     cover-clips
  remove     cover
  # error 3-8 [not-put-back] comes off here
  remove     switch-plate

put-back

step close "Put the cover on"
  fit        cover
  fasten     cover-screws with cross-2
  clip       cover-clips
