/** Substitution: what stands in the mains path, resistors, and the small parts of supply and control. */
import { said } from "../messages/said.ts";
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

const OTHER_FUSE = said`a fuse one size up, or slow instead of quick`;

const MAINS_RULES: readonly Rule[] = [
  rule(
    said`no wire for a fuse`,
    ["fuse", "fuse resistor"],
    noWire,
    said`the tracks become the fuse; a repairable board burns. Lamp and cold checks tell the same`,
    {
      mark: "seen",
      source: "washer board after an outage (forum thread); washer motor board t75827",
      custom: said`bridge the blown fuse to test`,
    },
  ),
  rule(
    said`no wire for an inrush part`,
    ["inrush part"],
    noWire,
    said`the inrush welds the relay and kills the bridge`,
    { custom: said`a wire instead of the NTC` },
  ),
  rule(
    said`a varistor has to stand there`,
    ["varistor"],
    noWire,
    said`left out, the next surge goes to the bridge; a wire in its place shorts the mains`,
    { custom: said`it runs without a varistor, so none is needed` },
  ),
  rule(
    said`no wire`,
    ["shunt", "high-voltage resistor", "resistor"],
    noWire,
    said`a part was there for a reason`,
  ),
  rule(said`fuse current`, ["fuse"], within("amps", 1, 1), said`exactly the original's`, {
    custom: OTHER_FUSE,
  }),
  rule(said`fuse voltage`, ["fuse"], atLeast("volts"), said`below it the arc does not go out`),
  rule(said`quick or slow`, ["fuse"], same("blow"), said`quick saves the bridge, slow outlives the inrush`, {
    custom: OTHER_FUSE,
  }),
  rule(said`breaking capacity`, ["fuse"], atLeast("breakingAmps"), said`on the mains a low one bursts`),
  rule(
    said`ceramic on the mains`,
    ["fuse"],
    needs("body", (value) => value === "ceramic", said`a ceramic body of high breaking capacity`, "asks"),
    said`glass is for where the current is already limited`,
  ),
  rule(said`fuse size`, ["fuse"], same("package"), said`it has to sit in its clips`),
  rule(
    said`varistor voltage`,
    ["varistor"],
    within("volts", VARISTOR.low, VARISTOR.high),
    said`higher protects nothing, lower dies of the mains`,
    { mark: "from memory" },
  ),
  rule(
    said`continuous AC voltage`,
    ["varistor"],
    within("acVolts", 1, 1),
    said`275, 300 and 320 V are three varistors: what stands on it for ever is not a matter of a tenth`,
  ),
  rule(said`disc of a varistor`, ["varistor"], atLeast("discMm"), said`the disc is the energy it takes`),
  rule(said`thermal cut-out`, ["varistor"], whereFitted("cutout"), said`a worn varistor burns without it`),
  rule(
    said`cold resistance`,
    ["inrush part"],
    within("ohms", INRUSH.low, INRUSH.high),
    said`it sets the first current, and how long the bus takes`,
  ),
  rule(
    said`current of an inrush part`,
    ["inrush part"],
    atLeast("amps"),
    said`an NTC carries the load for ever`,
  ),
  rule(
    said`energy of an inrush part`,
    ["inrush part"],
    atLeast("joules"),
    said`it takes as much as the bus stores`,
  ),
  rule(
    said`coil voltage`,
    ["relay"],
    within("coilVolts", NEARLY.low, NEARLY.high),
    said`it pulls in, or it does not`,
    { mark: "from memory" },
  ),
  rule(
    said`coil current`,
    ["relay"],
    within("coilOhms", LEAST_COIL_OHMS, Number.POSITIVE_INFINITY),
    said`the array that pulls it has a limit`,
    { mark: "from memory" },
  ),
  rule(said`contact current`, ["relay"], atLeast("amps"), said`contacts weld`),
  rule(said`pins of a relay`, ["relay"], same("pinMap"), said`coil and contact stand in more than one order`),
];

const RESISTOR_RULES: readonly Rule[] = [
  rule(
    said`shunt value`,
    ["shunt"],
    within("ohms", SHUNT.low, SHUNT.high),
    said`trip and current sense are scaled by it; two in parallel will do`,
    { mark: "from memory" },
  ),
  rule(
    said`drift of a shunt`,
    ["shunt"],
    atMost("kelvinDrift", 1, "asks"),
    said`it runs hot, and the trip moves with it`,
  ),
  rule(said`four terminals`, ["shunt"], same("fourTerminal"), said`the sense pair reads no solder joint`),
  rule(
    said`resistor value`,
    ["high-voltage resistor", "resistor", "fuse resistor"],
    within("ohms", NEARLY.low, NEARLY.high),
    said`a divider or a time rests on it`,
    { mark: "from memory" },
  ),
  rule(
    said`power of a resistor`,
    ["shunt", "high-voltage resistor", "resistor", "fuse resistor"],
    atLeast("watts"),
    said`it drifts where it runs hot`,
  ),
  rule(
    said`voltage of a resistor`,
    ["high-voltage resistor"],
    atLeast("volts"),
    said`a row of several shares the voltage: not one chip where three were`,
    { custom: said`one resistor of the sum will do` },
  ),
  rule(
    said`fusible`,
    ["fuse resistor"],
    needs("fusible", (value) => value === true, said`fusible and flameproof`),
    said`it is the small supply's fuse, and must open without a flame`,
    { custom: said`any resistor of the value will do` },
  ),
];

const SMALL_RULES: readonly Rule[] = [
  rule(
    said`use of an optocoupler`,
    ["optocoupler"],
    same("use"),
    said`one that drives a gate has a driver inside and is fast; one for feedback is neither`,
  ),
  rule(
    said`lowest transfer ratio`,
    ["optocoupler"],
    atLeast("transferLow"),
    said`below it the loop has no grip, or the input is not seen`,
  ),
  rule(
    said`highest transfer ratio`,
    ["optocoupler"],
    atMost("transferHigh", 1, "asks"),
    said`above it the loop may swing`,
  ),
  rule(said`isolation`, ["optocoupler"], atLeast("isolationVolts"), said`it stands between mains and hand`),
  rule(
    said`speed of an optocoupler`,
    ["optocoupler"],
    atMost("recoverySeconds", 1, "asks"),
    said`dead time and data were set for the original`,
  ),
  rule(
    said`regulated voltage`,
    ["regulator", "shunt reference"],
    within("volts", NEARLY.low, NEARLY.high),
    said`a rail's chips stand little more than it`,
    { mark: "from memory" },
  ),
  rule(said`current of a regulator`, ["regulator"], atLeast("amps"), said`it shuts down warm otherwise`),
  rule(
    said`tab and pins`,
    ["regulator", "shunt reference"],
    same("pinOrder"),
    said`two orders are sold in one case`,
  ),
  rule(said`package`, ["regulator", "optocoupler"], same("package", "asks"), said`holes, pitch and heat`),
  rule(
    said`program`,
    ["controller"],
    same("program"),
    said`an empty chip does nothing; only one from the same board number carries this program`,
  ),
  rule(
    said`identical chip`,
    ["controller"],
    sameType("bars"),
    said`its pins are what its program makes of them`,
  ),
  rule(said`same chip`, ["chip"], sameType("asks"), said`compare pins, supply and logic on both data sheets`),
];

export const MAINS_AND_SMALL_RULES: readonly Rule[] = [...MAINS_RULES, ...RESISTOR_RULES, ...SMALL_RULES];
