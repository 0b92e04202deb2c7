/** Substitution: what stands in the mains path, resistors, and the small parts of supply and control. */
import { atLeast, atMost, needs, same, whereFitted, within } from "./judges.ts";
import { noWire, sameType } from "./kind-judges.ts";
import { type Rule, rule } from "./rule.ts";

/** Values that say the same: two per cent, one for a shunt. From memory. */
const NEARLY = { low: 0.98, high: 1.02 };
const SHUNT = { low: 0.99, high: 1.01 };
/** Cold ohms of inrush parts scatter this much. Common practice: marked value, 20 % either way. */
const INRUSH = { low: 0.8, high: 1.2 };
/** Varistors of one number scatter by a tenth; another number starts beyond. From memory. */
const VARISTOR = { low: 0.95, high: 1.05 };
/** How much more current a relay's coil may ask of the array that pulls it. From memory. */
const LEAST_COIL_OHMS = 0.8;

const OTHER_FUSE = "a fuse one size up, or slow instead of quick";

const MAINS_RULES: readonly Rule[] = [
  rule(
    "no wire for a fuse",
    ["fuse", "fuse resistor"],
    noWire,
    "the tracks become the fuse; a repairable board burns. Lamp and cold checks tell the same",
    {
      mark: "seen",
      source: "washer board after an outage (forum thread); washer motor board t75827",
      custom: "bridge the blown fuse to test",
    },
  ),
  rule(
    "no wire for an inrush part",
    ["inrush part"],
    noWire,
    "the inrush welds the relay and kills the bridge",
    { custom: "a wire instead of the NTC" },
  ),
  rule(
    "no wire",
    ["varistor", "shunt", "high-voltage resistor", "resistor"],
    noWire,
    "a part was there for a reason",
  ),
  rule("fuse current", ["fuse"], within("amps", 1, 1), "exactly the original's", { custom: OTHER_FUSE }),
  rule("fuse voltage", ["fuse"], atLeast("volts"), "below it the arc does not go out"),
  rule("quick or slow", ["fuse"], same("blow"), "quick saves the bridge, slow outlives the inrush", {
    custom: OTHER_FUSE,
  }),
  rule("breaking capacity", ["fuse"], atLeast("breakingAmps"), "on the mains a low one bursts"),
  rule(
    "ceramic on the mains",
    ["fuse"],
    needs("body", (value) => value === "ceramic", "a ceramic body of high breaking capacity", "asks"),
    "glass is for where the current is already limited",
  ),
  rule("fuse size", ["fuse"], same("package"), "it has to sit in its clips"),
  rule(
    "varistor voltage",
    ["varistor"],
    within("volts", VARISTOR.low, VARISTOR.high),
    "higher protects nothing, lower dies of the mains",
    { mark: "from memory" },
  ),
  rule(
    "continuous AC voltage",
    ["varistor"],
    within("acVolts", 1, 1),
    "275, 300 and 320 V are three varistors: what stands on it for ever is not a matter of a tenth",
  ),
  rule("disc of a varistor", ["varistor"], atLeast("discMm"), "the disc is the energy it takes"),
  rule("thermal cut-out", ["varistor"], whereFitted("cutout"), "a worn varistor burns without it"),
  rule(
    "cold resistance",
    ["inrush part"],
    within("ohms", INRUSH.low, INRUSH.high),
    "it sets the first current, and how long the bus takes",
  ),
  rule("current of an inrush part", ["inrush part"], atLeast("amps"), "an NTC carries the load for ever"),
  rule("energy of an inrush part", ["inrush part"], atLeast("joules"), "it takes as much as the bus stores"),
  rule(
    "coil voltage",
    ["relay"],
    within("coilVolts", NEARLY.low, NEARLY.high),
    "it pulls in, or it does not",
    { mark: "from memory" },
  ),
  rule(
    "coil current",
    ["relay"],
    within("coilOhms", LEAST_COIL_OHMS, Number.POSITIVE_INFINITY),
    "the array that pulls it has a limit",
    { mark: "from memory" },
  ),
  rule("contact current", ["relay"], atLeast("amps"), "contacts weld"),
  rule("pins of a relay", ["relay"], same("pinMap"), "coil and contact stand in more than one order"),
];

const RESISTOR_RULES: readonly Rule[] = [
  rule(
    "shunt value",
    ["shunt"],
    within("ohms", SHUNT.low, SHUNT.high),
    "trip and current sense are scaled by it; two in parallel will do",
    { mark: "from memory" },
  ),
  rule(
    "drift of a shunt",
    ["shunt"],
    atMost("kelvinDrift", 1, "asks"),
    "it runs hot, and the trip moves with it",
  ),
  rule("four terminals", ["shunt"], same("fourTerminal"), "the sense pair reads no solder joint"),
  rule(
    "resistor value",
    ["high-voltage resistor", "resistor", "fuse resistor"],
    within("ohms", NEARLY.low, NEARLY.high),
    "a divider or a time rests on it",
    { mark: "from memory" },
  ),
  rule(
    "power of a resistor",
    ["shunt", "high-voltage resistor", "resistor", "fuse resistor"],
    atLeast("watts"),
    "it drifts where it runs hot",
  ),
  rule(
    "voltage of a resistor",
    ["high-voltage resistor"],
    atLeast("volts"),
    "a row of several shares the voltage: not one chip where three were",
    { custom: "one resistor of the sum will do" },
  ),
  rule(
    "fusible",
    ["fuse resistor"],
    needs("fusible", (value) => value === true, "fusible and flameproof"),
    "it is the small supply's fuse, and must open without a flame",
    { custom: "any resistor of the value will do" },
  ),
];

const SMALL_RULES: readonly Rule[] = [
  rule(
    "use of an optocoupler",
    ["optocoupler"],
    same("use"),
    "one that drives a gate has a driver inside and is fast; one for feedback is neither",
  ),
  rule(
    "lowest transfer ratio",
    ["optocoupler"],
    atLeast("transferLow"),
    "below it the loop has no grip, or the input is not seen",
  ),
  rule(
    "highest transfer ratio",
    ["optocoupler"],
    atMost("transferHigh", 1, "asks"),
    "above it the loop may swing",
  ),
  rule("isolation", ["optocoupler"], atLeast("isolationVolts"), "it stands between mains and hand"),
  rule(
    "speed of an optocoupler",
    ["optocoupler"],
    atMost("recoverySeconds", 1, "asks"),
    "dead time and data were set for the original",
  ),
  rule(
    "regulated voltage",
    ["regulator", "shunt reference"],
    within("volts", NEARLY.low, NEARLY.high),
    "a rail's chips stand little more than it",
    { mark: "from memory" },
  ),
  rule("current of a regulator", ["regulator"], atLeast("amps"), "it shuts down warm otherwise"),
  rule("tab and pins", ["regulator", "shunt reference"], same("pinOrder"), "two orders are sold in one case"),
  rule("package", ["regulator", "optocoupler"], same("package", "asks"), "holes, pitch and heat"),
  rule(
    "program",
    ["controller"],
    same("program"),
    "an empty chip does nothing; only one from the same board number carries this program",
  ),
  rule("identical chip", ["controller"], sameType("bars"), "its pins are what its program makes of them"),
  rule("same chip", ["chip"], sameType("asks"), "compare pins, supply and logic on both data sheets"),
];

export const MAINS_AND_SMALL_RULES: readonly Rule[] = [...MAINS_RULES, ...RESISTOR_RULES, ...SMALL_RULES];
