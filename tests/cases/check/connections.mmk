# Situations of connectors and sources: isolated first and restored last, a lock on a ribbon, a lead stuck down.

--- recorder
device recorder "Field recorder"

part back "back shell"
part lid "lid"
  covers     cell, cell-plug, board, board-plug
part cell "cell" kind lithium-pouch-cell 3000 mAh 3.85 V
  feeds      board through cell-plug
connector cell-plug "cell plug" kind press-fit-plug
  joins      cell to board
part board "board"
connector board-plug "board plug" kind press-fit-plug
  joins      board to back

--- isolated-first
use "recorder.mmk"
guide isolated-first "Take the board out"
  for        competent
  before     discharge cell below 25 %

take-apart

step open "Take the lid off"
  remove     lid
  disconnect cell-plug
  disconnect board-plug
  remove     board

put-back
  derived

--- not-isolated
use "recorder.mmk"
guide not-isolated "Unplug the board"
  for        competent
  before     discharge cell below 25 %

take-apart

step open "Take the lid off"
  remove     lid
  # error 3-12 [still-live] under power here
  disconnect board-plug

put-back
  derived

--- restored-too-soon
use "recorder.mmk"
guide restored-too-soon "Take the board out"
  for        competent
  before     discharge cell below 25 %

take-apart

step open "Take the lid off"
  remove     lid
  disconnect cell-plug
  disconnect board-plug

put-back

step close "Put it together"
  connect    cell-plug
  # error 3-9 [still-live] under power here
  connect    board-plug
  fit        lid

--- cell-not-discharged
use "recorder.mmk"
guide cell-not-discharged "Take the board out"
  for        competent

take-apart

step open "Take the lid off"
  remove     lid
  # error 3-12 [hazard-not-cleared] works near it
  disconnect cell-plug

put-back
  derived

--- phone
device phone "Desk phone"

part body "body"
part front "front"
connector ribbon "front ribbon" kind flip-lock-ribbon
  joins      front to body
part lead "aerial lead" in front kind lead
bond lead-tape "lead tape" kind light-tape
  joins      lead to front
fastener lead-clamp "lead clamp screw" 1 x screw M1.6 x 4, cross-recess 0, pan
  holds      lead to front

--- locked-ribbon
use "phone.mmk"
guide locked-ribbon "Take the front off"
  for        competent

take-apart

step off "Take the front off"
  unlock     ribbon
  disconnect ribbon
  remove     front

put-back
  derived

--- ribbon-still-locked
use "phone.mmk"
guide ribbon-still-locked "Take the front off"
  for        competent

take-apart

step off "Take the front off"
  # error 3-12 [wrong-state] `disconnect` starts from `unlocked`
  disconnect ribbon
  remove     front

put-back
  derived

--- ribbon-not-locked-again
use "phone.mmk"
guide ribbon-not-locked-again "Take the front off"
  for        competent

take-apart

step off "Take the front off"
  unlock     ribbon
  disconnect ribbon
  remove     front

put-back

step close "Put the front on"
  fit        front
  # error 3-9 [not-put-back] so from here on
  connect    ribbon

--- plugged-before-it-is-there
use "phone.mmk"
guide plugged-before-it-is-there "Take the front off"
  for        competent

take-apart

step off "Take the front off"
  unlock     ribbon
  disconnect ribbon
  remove     front

put-back

step close "Put the front on"
  # error 3-9 [not-seated] ties what is not there yet
  connect    ribbon
  lock       ribbon
  fit        front

--- stuck-along-its-way
use "phone.mmk"
guide stuck-along-its-way "Take the lead off"
  for        competent
  tool       cross-0 "cross-recess driver 0"

take-apart

step off "Take the lead off"
  undo       lead-clamp with cross-0
  lift       lead-tape
  remove     lead

put-back
  derived

--- still-stuck-along-its-way
use "phone.mmk"
guide still-stuck-along-its-way "Take the lead off"
  for        competent
  tool       cross-0 "cross-recess driver 0"

take-apart

step off "Take the lead off"
  undo       lead-clamp with cross-0
  # error 3-8 [still-held] would tear what holds it
  remove     lead

put-back
  derived

--- safe-when-live
device terminal "Bench terminal"

part base "base"
part probe "probe"
energy adapter "supply" kind external-supply
  feeds      base, probe
connector probe-socket "probe plug" kind friction-plug
  joins      probe to base
  safe when live

guide safe-when-live "Unplug the probe"
  for        competent

take-apart

step off "Unplug the probe"
  disconnect probe-socket

put-back
  derived

--- isolated-from-outside
device station "Weather station"

part base "base"
part sensor "sensor"
energy adapter "supply" kind external-supply
  feeds      base, sensor
connector sensor-plug "sensor plug" kind friction-plug
  joins      sensor to base

guide isolated-from-outside "Unplug the sensor"
  for        competent

before

step off "Pull the plug"
  unplug     adapter

take-apart

step sensor-off "Unplug the sensor"
  disconnect sensor-plug

put-back
  derived

--- grinder
device grinder "Coffee grinder"

part chassis "chassis"
energy mains "mains supply" kind mains-cord
  feeds      motor through motor-plug
part burr "upper burr"
part motor "grinding motor" kind motor
  behind     burr
connector motor-plug "motor plug" kind locking-tab-plug
  joins      motor to chassis

--- mains-cut-outside
use "grinder.mmk"
guide mains-cut-outside "Part the motor plug"
  for        competent
  before     unplug mains

take-apart

step part-it "Part the plug"
  disconnect motor-plug

put-back
  derived

--- plug-inside-isolates-nothing
use "grinder.mmk"
guide plug-inside-isolates-nothing "Part the motor plug"
  for        competent

take-apart

step part-it "Part the plug"
  # error 3-12 [still-live] under power here
  disconnect motor-plug

put-back
  derived

--- mains-back-before-the-plug
use "grinder.mmk"
guide mains-back-before-the-plug "Part the motor plug"
  for        competent
  before     unplug mains

take-apart

step part-it "Part the plug"
  disconnect motor-plug

put-back

step join-it "Join the plug"
  plug-in    mains
  # error 3-9 [still-live] under power here
  connect    motor-plug

--- fan-heater
device fan-heater "Fan heater"

energy mains "mains cord" kind mains-cord 230 V
  feeds      element
part case "case"
part element "element"
connector leads "element lead" 2 x spade
  joins      element to case
connector earth "earth lead" kind earth-terminal M4, hexalobular 20
  joins      element to case

--- earth-parted-first
use "fan-heater.mmk"
guide earth-parted-first "Take the element out"
  for        trained
  before     unplug mains
  tool       driver-20 "hexalobular driver 20"
  tool       tester "protective earth tester"

take-apart

step out "Take the element out"
  # warning 3-6 [parted-early] too early here
  undo       earth with driver-20
  disconnect leads
  remove     element

put-back
  derived
test earthed "The earth lead reads below 0.1 ohm"
  when       mains unplugged
  proves     earth
  with       tester

--- earth-joined-last
use "fan-heater.mmk"
guide earth-joined-last "Take the element out"
  for        trained
  before     unplug mains
  tool       driver-20 "hexalobular driver 20"
  tool       tester "protective earth tester"

take-apart

step out "Take the element out"
  disconnect leads
  undo       earth with driver-20
  remove     element

put-back

step back "Put the element back"
  fit        element
  connect    leads
  # warning 3-7 [parted-early] too late here
  do-up      earth with driver-20
test earthed "The earth lead reads below 0.1 ohm"
  when       mains unplugged
  proves     earth
  with       tester

step power "Plug it in"
  plug-in    mains

--- earth-last-and-first
use "fan-heater.mmk"
guide earth-last-and-first "Take the element out"
  for        trained
  before     unplug mains
  tool       driver-20 "hexalobular driver 20"
  tool       tester "protective earth tester"

take-apart

step out "Take the element out"
  disconnect leads
  undo       earth with driver-20
  remove     element

put-back

step back "Put the element back"
  fit        element
  do-up      earth with driver-20
  connect    leads
test earthed "The earth lead reads below 0.1 ohm"
  when       mains unplugged
  proves     earth
  with       tester

step power "Plug it in"
  plug-in    mains
