/** Cautions and advice that leave the bench on paper. People act on them at boards that hold lethal charge: every word counts. */
export const ADVICE = {
  "caution.charged":
    "DANGER: the capacitors of this board can hold a deadly charge long after it is unplugged. Disconnect every supply, wait at least 15 minutes, then measure: bus plus to bus minus must read below 10 V before anything is touched.",
  "caution.live":
    "With power on, every part of this board is at mains potential, bus minus included and the heatsink possibly too. Touch nothing.",
  "caution.licensed":
    "Fitting, connecting and opening the unit is work for a licensed person under the local codes. This paper does not replace them, nor the maker's instructions.",
  "caution.smell":
    "Smoke, a burnt smell, a tripped breaker or a blown fuse: switch off and do not try again.",
  "advice.surge.protect":
    "Have a surge protector fitted at the supply, its earth wire short, and have the earth itself checked.",
  "advice.surge.others": "A surge may have hurt other units on the same supply: have them checked.",
  "advice.water.seal":
    "Find where water or condensation got in and stop it there: cable entries from below, sealed, with a drip loop; drain holes kept open.",
  "advice.water.later":
    "Corrosion can go on under the parts: after water a later failure stays more likely than after other causes.",
  "advice.overload.load":
    "Find out why it was overloaded before it runs again: does the motor or fan turn freely, is anything blocked, are its windings and insulation sound?",
  "advice.overload.air": "Keep the heatsink and the path of its air clean.",
  "advice.age.heat":
    "Heat ages capacitors and fans: keep the unit cool and have both checked every few years.",
  "advice.insects.mesh":
    "Close openings with fine mesh that does not stop the cooling air, and have the inside looked at once a year.",
  "advice.impact.fasten":
    "Fasten the unit so that it cannot shake, and check plugs and screws after every transport.",
  "advice.unknown.tell":
    "The cause is not known: if it happens again, tell us at once, and what happened just before.",
  "fit.off": "Switch off, unplug or lock off, and make sure that nobody can switch on again.",
  "fit.measure":
    "Wait at least 15 minutes, then measure on the highest DC range between bus plus and bus minus: below 10 V. Only then touch.",
  "fit.turns": "Do not let the motor or fan turn while it is plugged in: turning, it charges the bus.",
  "fit.never":
    "Never plug in or pull out the fan, the motor or any other plug while the unit has power. Switch off, wait, measure, then plug.",
  "fit.marks":
    "Go by the marks on the wires and by what was noted or photographed on arrival. Where neither tells, go by the maker's drawing; do not guess.",
  "fit.bus": "Bus plus and bus minus are never exchanged: exchanged, the board is destroyed at once.",
  "fit.phases":
    "The motor's phases go back in the order in which they were. If it turns the wrong way: switch off, wait, measure, then exchange two of them.",
  "fit.earth": "The protective earth is connected first and taken off last.",
  "mount.clean":
    "Clean both faces until no old paste is left; replace an insulating pad that was squeezed once.",
  "mount.film": "A thin even film of paste, no more than fills the grooves; a dry pad takes none.",
  "mount.screws": "All screws by hand first, crosswise; then the full torque, crosswise.",
  "mount.sheet":
    "The part's own data sheet wins over this table. A power module, and any case that is not in it, takes the torque of its data sheet.",
  "first.check": "Check every plug, every screw and the earth once more; close all covers.",
  "first.stand": "Stand clear and switch on at the breaker or isolator.",
  "first.watch": "Watch and listen for a few minutes: it must run evenly, without smell, smoke or trip.",
  "first.trip": "If a breaker, a residual-current breaker or a fuse opens, do not switch on again.",
  "back.board": "The whole board as it is, with its heatsink and all that is screwed to it; no fuse changed.",
  "back.motor": "The motor's readings, unplugged and proven dead: U to V, V to W, W to U, and each to earth.",
  "back.story":
    "What it did, in order: sounds, smell, display or number of blinks, which fuse or breaker opened.",
  "back.wiring": "Pictures of the wiring as it was connected.",
  "back.packed": "Before packing: proven below 10 V, dry, and padded so that nothing bends.",
} as const;
