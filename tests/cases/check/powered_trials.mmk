# Situations of tests under power: what is fed is tried with its supply on, and closed; a dead or an open test says so.

--- winch
device winch "Winch"

energy mains "mains cord" kind mains-cord 230 V
  feeds      motor, board
part frame "frame"
part cover "cover" kind panel
  covers     motor, board, motor-plug
part motor "motor"
part board "board"
part store "store capacitor" in board kind capacitor
  behind     cover
connector motor-plug "motor plug" kind locking-tab-plug
  joins      motor to board
function haul "It hauls"
  through    motor, motor-plug

--- placed-by-itself
use "winch.mmk"
guide placed-by-itself "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test haul "It hauls"
  proves     haul

--- wants-the-cover-off
use "winch.mmk"
guide wants-the-cover-off "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
# error 6-9 [dead-test] no supply here
test haul "It hauls"
  when       cover out
  proves     haul

--- dead-by-its-word
use "winch.mmk"
guide dead-by-its-word "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back
  derived
test coil "The meter reads 20 to 30 ohm across the motor"
  when       mains unplugged, cover out
  proves     haul
  with       meter

--- before-the-plug
use "winch.mmk"
guide before-the-plug "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug

# error 6-9 [dead-test] no supply here
test haul "It hauls"
  proves     haul

step close "Close the winch"
  fit        cover
  plug       mains

--- plug-left-out
use "winch.mmk"
guide plug-left-out "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  # error 14-19 [not-put-back] comes off here
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  fit        cover

test haul "It hauls"
  proves     haul

--- open-and-live
use "winch.mmk"
guide open-and-live "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug       mains

# error 6-9 [live-test] hazard `mains` here
test haul "It hauls"
  proves     haul

step isolate "Unplug it again"
  unplug     mains
  discharge  store with resistor
  prove      store with meter

step close "Close the winch"
  fit        cover
  plug       mains

--- open-and-live-is-meant
use "winch.mmk"
guide open-and-live-is-meant "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug       mains

test haul "It hauls"
  when       mains plugged, cover out
  proves     haul

step isolate "Unplug it again"
  unplug     mains
  discharge  store with resistor
  prove      store with meter

step close "Close the winch"
  fit        cover
  plug       mains

--- charged-again
use "winch.mmk"
guide charged-again "Renew the motor"
  goal       replace motor with motor-new
  for        competent
  before     unplug mains
  spare      motor-new "motor", 1, 80.00 EUR for motor
  tool       resistor "discharge resistor"
  tool       meter "multimeter"

take-apart

step open "Take the motor out"
  remove     cover
  discharge  store with resistor
  prove      store with meter
  disconnect motor-plug
  remove     motor

work

step renew "Take the new one"
  replace    motor with motor-new

put-back

step motor-in "Put the motor in"
  fit        motor
  connect    motor-plug
  plug       mains

test haul "It hauls"
  when       mains plugged, cover out
  proves     haul

step close "Close the winch"
  unplug     mains
  # error 3-5 [hazard-not-cleared] works near it
  fit        cover
  plug       mains
