# Lines that nobody has looked at are listed once for the device that declares them.

--- a-line-that-is-assumed

device radio "Radio"

part case "case"
part cover "cover"
part board "board"
  # advice 3-26 [assumed] nobody has seen that it is so
  under      cover assumed

--- several-lines-make-one-finding

device radio "Radio"

part case "case"
part cover "cover"
fastener screws "screw" 2 x screw M3 x 6, hexalobular 10
  # advice 3-34 [assumed] nobody has seen that it is so
  holds      cover to case assumed
part board "board"
  under      cover assumed

--- looked-at

device radio "Radio"

part case "case"
part cover "cover"
part board "board"
  under      cover

--- an-assumption-allowed-with-a-reason

device radio "Radio"

part cover "cover"
part board "board"
# allow assumed: the radio is at the customer's
  under      cover assumed
