/** Substitution: IGBTs, MOSFETs, power modules, off-line switches. */
import { said } from "../messages/said.ts";
import { atLeast, atMost, needs, notFor, onlyFor, same, whereFitted, within } from "./judges.ts";
import { allAlike, noMosfet, pairTogether } from "./kind-judges.ts";
import type { PartRole } from "./part-role.ts";
import { moduleCurrent, notFarBigger, tab, warmCurrent } from "./rating-judges.ts";
import { type Rule, rule } from "./rule.ts";

const POWER: readonly PartRole[] = ["motor switch", "boost switch", "resonant switch", "small switch"];
const OFF_LINE: readonly PartRole[] = ["off-line switch"];
const SOLDERED: readonly PartRole[] = [...POWER, ...OFF_LINE];
const MODULE: readonly PartRole[] = ["power module"];

/** Short-circuit time that drives count on. Common practice: 5 to 10 us. */
const SHORT_CIRCUIT_SECONDS = 5e-6;
/** Gate charge that a driver made for the original still moves. Common practice. */
const MOST_GATE_CHARGE = 1.3;
/** Saturation may differ "a little". Common practice; the figure from memory. */
const MOST_SATURATION = 1.15;

const BIGGER = said`a bigger IGBT is always better`;
const ANY_IGBT = said`any 600 V 40 A IGBT will do for boost and motor`;
const BODY_DIODE = said`an IGBT without a diode is fine, the body diode is there`;
const MOSFET = said`a MOSFET for an IGBT, same volts`;

export const SWITCH_RULES: readonly Rule[] = [
  rule(
    said`blocking voltage`,
    [...SOLDERED, ...MODULE],
    atLeast("volts"),
    said`it blocks the bus and the spike of every switching`,
  ),
  rule(said`current when warm`, POWER, warmCurrent, said`the printed amps are those of a cold case`),
  rule(
    said`not far bigger`,
    POWER,
    notFarBigger,
    said`1.5 to 2 times the current is the most; beyond, short-circuit time and gate differ`,
    { custom: BIGGER },
  ),
  rule(
    said`gate charge`,
    POWER,
    atMost("gateCoulombs", MOST_GATE_CHARGE),
    said`more starves driver, bootstrap and 15 V supply, and slows every edge`,
    { custom: BIGGER },
  ),
  rule(
    said`short-circuit rated`,
    ["motor switch"],
    needs("shortCircuitSeconds", (value) => Number(value) >= SHORT_CIRCUIT_SECONDS, said`5 us or more`),
    said`a blocked or shorted motor is a short circuit until the driver has noticed`,
    { custom: ANY_IGBT },
  ),
  rule(
    said`diode inside`,
    ["motor switch", "resonant switch"],
    needs("copack", (value) => value === true, said`a diode inside`),
    said`the motor's or the coil's current comes back through it; an IGBT has no body diode of its own`,
    { custom: BODY_DIODE },
  ),
  rule(
    said`diode where one was`,
    ["boost switch", "small switch"],
    whereFitted("copack"),
    said`some boost stages run back through it`,
    { custom: BODY_DIODE },
  ),
  rule(
    said`speed class of a boost switch`,
    ["boost switch"],
    needs("speed", (value) => value === "high-speed", said`high-speed`),
    said`a motor type turns off too slowly for tens of kilohertz and overheats`,
    { custom: ANY_IGBT },
  ),
  rule(
    said`resonant type`,
    ["resonant switch"],
    needs("speed", (value) => value === "resonant", said`resonant`),
    said`it is switched at zero volts with a long tail of current; other types overheat there`,
  ),
  rule(
    said`no MOSFET in a leg`,
    ["motor switch", "resonant switch"],
    noMosfet("bars"),
    said`on-resistance at full current, the slow diode in its body, another gate`,
    { custom: MOSFET },
  ),
  rule(
    said`MOSFET only after a check of the design`,
    ["boost switch", "small switch"],
    noMosfet("asks"),
    said`losses, recovery and gate drive are another design's`,
    { custom: MOSFET },
  ),
  rule(
    said`saturation`,
    ["motor switch", "boost switch", "resonant switch"],
    atMost("dropVolts", MOST_SATURATION, "asks"),
    said`each tenth of a volt is heat at full current`,
    { mark: "from memory" },
  ),
  rule(
    said`one type in all legs`,
    ["motor switch"],
    allAlike,
    said`unlike switches share heat and edges unequally, and the driver's dead time was set for one type`,
  ),
  rule(
    said`a pair together`,
    [...POWER, ...OFF_LINE],
    pairTogether,
    said`a mismatch loads the new one or the old one with most of the current`,
    { custom: said`of a parallel pair change only the dead one` },
  ),
  rule(
    said`drain current`,
    OFF_LINE,
    onlyFor("mosfet", atLeast("amps")),
    said`the start of every cycle is a current peak`,
  ),
  rule(
    said`on-resistance`,
    OFF_LINE,
    onlyFor("mosfet", atMost("ohmsOn")),
    said`more is more heat, and a small case has no sink`,
  ),
  rule(
    said`gate charge of an off-line switch`,
    OFF_LINE,
    onlyFor("mosfet", atMost("gateCoulombs", MOST_GATE_CHARGE, "asks")),
    said`its controller drives little`,
  ),
  rule(
    said`same family of switcher`,
    OFF_LINE,
    onlyFor("switcher", same("family")),
    said`pins, current limit and feedback are the family's own`,
  ),
  rule(
    said`power of a switcher`,
    OFF_LINE,
    onlyFor("switcher", within("watts", 1, 1, { above: "asks" })),
    said`the next bigger sister fits once its current limit and its feedback have been compared; the smaller does not`,
  ),
  rule(
    said`frequency of a switcher`,
    OFF_LINE,
    onlyFor("switcher", within("hertz", 1, 1)),
    said`the transformer was wound for one frequency`,
  ),
  rule(said`pin order`, SOLDERED, same("pinOrder"), said`crossed leads over a heatsink are the next fault`),
  rule(said`package`, SOLDERED, same("package", "asks"), said`holes, screw, clip and height on the heatsink`),
  rule(
    said`tab`,
    SOLDERED,
    notFor("switcher", tab),
    said`a live tab puts collector or drain on the heatsink, which may be touched or may be a shorted bus`,
    { custom: said`a metal tab is the same part, only cheaper` },
  ),
  rule(said`pin map`, MODULE, same("pinMap"), said`modules look alike and are not`),
  rule(
    said`current of a module`,
    MODULE,
    moduleCurrent,
    said`the shunt outside sets the trip for the original's current`,
  ),
  rule(
    said`bootstrap diodes`,
    MODULE,
    same("bootDiode"),
    said`without them the upper switches have no supply`,
  ),
  rule(said`input logic`, MODULE, same("logic"), said`the wrong sense turns both switches of a leg on`),
  rule(said`shunt inside or outside`, MODULE, same("shunt"), said`the board reads the current where it was`),
  rule(
    said`over-current threshold`,
    MODULE,
    within("tripVolts", 1, 1, { below: "asks", above: "asks" }),
    said`another threshold trips early, or too late`,
  ),
  rule(said`temperature curve`, MODULE, same("sensor", "asks"), said`the controller reads the old curve`),
  rule(said`open emitters`, MODULE, same("openEmitters"), said`three shunts need three emitters`),
  rule(
    said`height on the heatsink`,
    MODULE,
    within("heightMm", 1, 1, { below: "asks", above: "asks" }),
    said`spacers and screws were cut for one height`,
  ),
];
