/** Substitution: IGBTs, MOSFETs, power modules, off-line switches. */
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

const BIGGER = "a bigger IGBT is always better";
const ANY_IGBT = "any 600 V 40 A IGBT will do for boost and motor";
const BODY_DIODE = "an IGBT without a diode is fine, the body diode is there";
const MOSFET = "a MOSFET for an IGBT, same volts";

export const SWITCH_RULES: readonly Rule[] = [
  rule(
    "blocking voltage",
    [...SOLDERED, ...MODULE],
    atLeast("volts"),
    "it blocks the bus and the spike of every switching",
  ),
  rule("current when warm", POWER, warmCurrent, "the printed amps are those of a cold case"),
  rule(
    "not far bigger",
    POWER,
    notFarBigger,
    "1.5 to 2 times the current is the most; beyond, short-circuit time and gate differ",
    { custom: BIGGER },
  ),
  rule(
    "gate charge",
    POWER,
    atMost("gateCoulombs", MOST_GATE_CHARGE),
    "more starves driver, bootstrap and 15 V supply, and slows every edge",
    { custom: BIGGER },
  ),
  rule(
    "short-circuit rated",
    ["motor switch"],
    needs("shortCircuitSeconds", (value) => Number(value) >= SHORT_CIRCUIT_SECONDS, "5 us or more"),
    "a blocked or shorted motor is a short circuit until the driver has noticed",
    { custom: ANY_IGBT },
  ),
  rule(
    "diode inside",
    ["motor switch", "resonant switch"],
    needs("copack", (value) => value === true, "a diode inside"),
    "the motor's or the coil's current comes back through it; an IGBT has no body diode of its own",
    { custom: BODY_DIODE },
  ),
  rule(
    "diode where one was",
    ["boost switch", "small switch"],
    whereFitted("copack"),
    "some boost stages run back through it",
    { custom: BODY_DIODE },
  ),
  rule(
    "speed class of a boost switch",
    ["boost switch"],
    needs("speed", (value) => value === "high-speed", "high-speed"),
    "a motor type turns off too slowly for tens of kilohertz and overheats",
    { custom: ANY_IGBT },
  ),
  rule(
    "resonant type",
    ["resonant switch"],
    needs("speed", (value) => value === "resonant", "resonant"),
    "it is switched at zero volts with a long tail of current; other types overheat there",
  ),
  rule(
    "no MOSFET in a leg",
    ["motor switch", "resonant switch"],
    noMosfet("bars"),
    "on-resistance at full current, the slow diode in its body, another gate",
    { custom: MOSFET },
  ),
  rule(
    "MOSFET only after a check of the design",
    ["boost switch", "small switch"],
    noMosfet("asks"),
    "losses, recovery and gate drive are another design's",
    { custom: MOSFET },
  ),
  rule(
    "saturation",
    ["motor switch", "boost switch", "resonant switch"],
    atMost("dropVolts", MOST_SATURATION, "asks"),
    "each tenth of a volt is heat at full current",
    { mark: "from memory" },
  ),
  rule(
    "one type in all legs",
    ["motor switch"],
    allAlike,
    "unlike switches share heat and edges unequally, and the driver's dead time was set for one type",
  ),
  rule(
    "a pair together",
    [...POWER, ...OFF_LINE],
    pairTogether,
    "a mismatch loads the new one or the old one with most of the current",
    { custom: "of a parallel pair change only the dead one" },
  ),
  rule(
    "drain current",
    OFF_LINE,
    onlyFor("mosfet", atLeast("amps")),
    "the start of every cycle is a current peak",
  ),
  rule(
    "on-resistance",
    OFF_LINE,
    onlyFor("mosfet", atMost("ohmsOn")),
    "more is more heat, and a small case has no sink",
  ),
  rule(
    "gate charge of an off-line switch",
    OFF_LINE,
    onlyFor("mosfet", atMost("gateCoulombs", MOST_GATE_CHARGE, "asks")),
    "its controller drives little",
  ),
  rule(
    "same family of switcher",
    OFF_LINE,
    onlyFor("switcher", same("family")),
    "pins, current limit and feedback are the family's own",
  ),
  rule(
    "power of a switcher",
    OFF_LINE,
    onlyFor("switcher", within("watts", 1, 1, { above: "asks" })),
    "the next bigger sister fits once its current limit and its feedback have been compared; the smaller does not",
  ),
  rule(
    "frequency of a switcher",
    OFF_LINE,
    onlyFor("switcher", within("hertz", 1, 1)),
    "the transformer was wound for one frequency",
  ),
  rule("pin order", SOLDERED, same("pinOrder"), "crossed leads over a heatsink are the next fault"),
  rule("package", SOLDERED, same("package", "asks"), "holes, screw, clip and height on the heatsink"),
  rule(
    "tab",
    SOLDERED,
    notFor("switcher", tab),
    "a live tab puts collector or drain on the heatsink, which may be touched or may be a shorted bus",
    { custom: "a metal tab is the same part, only cheaper" },
  ),
  rule("pin map", MODULE, same("pinMap"), "modules look alike and are not"),
  rule(
    "current of a module",
    MODULE,
    moduleCurrent,
    "the shunt outside sets the trip for the original's current",
  ),
  rule("bootstrap diodes", MODULE, same("bootDiode"), "without them the upper switches have no supply"),
  rule("input logic", MODULE, same("logic"), "the wrong sense turns both switches of a leg on"),
  rule("shunt inside or outside", MODULE, same("shunt"), "the board reads the current where it was"),
  rule(
    "over-current threshold",
    MODULE,
    within("tripVolts", 1, 1, { below: "asks", above: "asks" }),
    "another threshold trips early, or too late",
  ),
  rule("temperature curve", MODULE, same("sensor", "asks"), "the controller reads the old curve"),
  rule("open emitters", MODULE, same("openEmitters"), "three shunts need three emitters"),
  rule(
    "height on the heatsink",
    MODULE,
    within("heightMm", 1, 1, { below: "asks", above: "asks" }),
    "spacers and screws were cut for one height",
  ),
];
