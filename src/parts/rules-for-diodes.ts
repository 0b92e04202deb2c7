/** Substitution: bridges, diodes, zeners, transistors. */
import { said } from "../messages/said.ts";
import { atLeast, atMost, same, within } from "./judges.ts";
import { pairTogether } from "./kind-judges.ts";
import type { PartRole } from "./part-role.ts";
import {
  carbideReadsHigh,
  clampVolts,
  fastStaysFast,
  recovery,
  schottkyBySchottky,
  surgeOfBridge,
  tab,
} from "./rating-judges.ts";
import { type Rule, rule } from "./rule.ts";

const SWITCHED: readonly PartRole[] = [
  "boost diode",
  "clamp diode",
  "secondary diode",
  "bootstrap diode",
  "fast diode",
];
const DIODES: readonly PartRole[] = [...SWITCHED, "mains diode", "signal diode"];
const SCREWED: readonly PartRole[] = ["bridge", "boost diode"];

/** Zeners of one nominal voltage differ by this much. From memory: 5 % types. */
const ZENER_SHARE = 0.05;
/** Forward drop that takes a rail with it. From memory. */
const MOST_DROP = 1.25;

export const DIODE_RULES: readonly Rule[] = [
  rule(
    said`reverse voltage of a diode`,
    ["bridge", ...DIODES.filter((role) => role !== "secondary diode")],
    atLeast("volts"),
    said`the peak of the mains or of the bus stands on it`,
  ),
  rule(
    said`reverse voltage`,
    ["secondary diode"],
    atLeast("volts"),
    said`output plus reflected voltage behind a transformer, with a quarter to spare`,
    {
      mark: "seen",
      source: "flyback secondary diode: Vout + Vin/n, derated by 1.25 (powerint.com, puzzler 1)",
    },
  ),
  rule(said`rectified current`, ["bridge", ...DIODES], atLeast("amps"), said`it heats with every ampere`),
  rule(
    said`surge current of a bridge`,
    ["bridge"],
    surgeOfBridge,
    said`the capacitors' first charge goes through it; in one family 15 A and 25 A parts both stand 300 A, only the 35 A part 400 A`,
    {
      mark: "seen",
      source: "GBPC15/25/35 data (dtsheet.com 2981566)",
      custom: said`a bridge of 25 A for one of 15 A cures surge failures`,
    },
  ),
  rule(said`I2t`, ["bridge"], atLeast("meltingAmps2Seconds"), said`the fuse has to blow before it`),
  rule(
    said`surge current of a mains diode`,
    ["mains diode"],
    atLeast("surgeAmps"),
    said`the capacitor's first charge`,
  ),
  rule(
    said`recovery time`,
    SWITCHED,
    recovery,
    said`each recovery is a short circuit across the switch, tens of thousands of times a second`,
  ),
  rule(
    said`fast stays fast`,
    SWITCHED,
    fastStaysFast,
    said`a mains rectifier burns within minutes there, even where one left the factory in that place`,
    { mark: "seen", source: "520101.com, 1N4007 in a supply's secondary", custom: said`1N4007 everywhere` },
  ),
  rule(
    said`Schottky by Schottky`,
    ["secondary diode", "fast diode"],
    schottkyBySchottky,
    said`an ultrafast diode drops twice as much: it runs hotter, and the rail comes out low`,
  ),
  rule(
    said`forward drop`,
    ["secondary diode"],
    atMost("dropVolts", MOST_DROP, "asks"),
    said`the drop is taken from the rail and becomes heat`,
    { mark: "from memory" },
  ),
  rule(
    said`silicon carbide`,
    ["boost diode"],
    carbideReadsHigh,
    said`the next one to measure it has to know`,
  ),
  rule(
    said`recovery of a signal diode`,
    ["signal diode"],
    atMost("recoverySeconds", 1, "asks"),
    said`fast edges pass it`,
  ),
  rule(
    said`pin order`,
    SCREWED,
    same("pinOrder"),
    said`plus, minus and the two AC pins stand in more than one order`,
  ),
  rule(
    said`package`,
    [...SCREWED, ...DIODES.slice(1)],
    same("package", "asks"),
    said`holes, pitch and screw`,
  ),
  rule(
    said`tab`,
    ["boost diode"],
    tab,
    said`the cathode is the bus, or the anode the switch, on the heatsink`,
    {
      custom: said`a metal tab is the same part, only cheaper`,
    },
  ),
  rule(
    said`a pair together`,
    SCREWED,
    pairTogether,
    said`a mismatch loads one of them with most of the current`,
    {
      custom: said`of a parallel pair change only the dead one`,
    },
  ),
  rule(
    said`clamp voltage`,
    ["gate clamp"],
    clampVolts,
    said`lower, it steals the drive; higher, the gate breaks first`,
  ),
  rule(
    said`zener voltage`,
    ["zener"],
    within("volts", 1 - ZENER_SHARE, 1 + ZENER_SHARE),
    said`it sets a level that something relies on`,
    { mark: "from memory" },
  ),
  rule(
    said`zener power`,
    ["gate clamp", "zener"],
    atLeast("watts"),
    said`it takes what comes through a broken gate`,
  ),
  rule(said`polarity`, ["transistor"], same("polarity"), said`NPN and PNP stand in one totem pole`),
  rule(
    said`collector voltage`,
    ["transistor"],
    atLeast("volts"),
    said`it blocks its supply, and the kick of a coil`,
  ),
  rule(said`collector current`, ["transistor"], atLeast("amps"), said`a gate is charged in amperes`),
  rule(
    said`pin order of a transistor`,
    ["transistor"],
    same("pinOrder"),
    said`E B C and E C B are both sold in one case`,
  ),
];
