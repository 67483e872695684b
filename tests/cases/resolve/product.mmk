# What a device says for an index of repair, with a word that no index knows.

--- index-part-misspelt
device phone "Phone"
  product    smartphone

part cell "cell"
  # error 14-19 [unknown-index-part] there is no part of an index `batery`; write `battery`
  counts as  batery

--- index-part-of-our-own
device phone "Phone"
  product    smartphone

part tray "card tray"
  # error 14-22 [unknown-index-part] there is no part of an index `card-tray`; write one of them
  counts as  card-tray

--- spares-misspelt
device phone "Phone"
  product    smartphone
  # error 23-33 [unknown-index-part] there is no part of an index `back-covers`; write `back-cover`
  spares     battery, back-covers

part cell "cell"

--- product-unknown
device kettle "Kettle"
  # error 14-20 [unknown-product] there is no sort of product `toaster`; write one of them
  product    toaster

part pot "pot"

--- information-unknown
device phone "Phone"
  # error 15-22 [unknown-product] there is no sort of reader `end-user`; write `end-users`
  information end-user

part cell "cell"

--- supplied-with-unknown
device phone "Phone"
  # error 32-37 [unknown-product] there is no way of supply `spares`; write `spare`
  supplied   opening-pick with spares

part cell "cell"

--- supplied-tool-unknown
device phone "Phone"
  # error 14-25 [unknown-tool] there is no tool-kind for `wobble-stick`; `matchmark kinds tool-kinds` lists them
  supplied   wobble-stick with product

part cell "cell"

--- all-words-known
device phone "Phone"
  product    slate-tablet, folding
  updates    7 years
  information paid
  spares     display-assembly, folding-mechanism
  supplied   hexalobular-driver 5 with product

part cell "cell"
  counts as  battery
