/** Substitution: capacitors, by what they do. */
import { said } from "../messages/said.ts";
import { atLeast, atMost, needs, same, within } from "./judges.ts";
import { allAlike } from "./kind-judges.ts";
import type { PartRole } from "./part-role.ts";
import { safetyClass } from "./rating-judges.ts";
import { judged, type Rule, rule } from "./rule.ts";

const WET: readonly PartRole[] = ["bus capacitor", "rail capacitor", "supply pin capacitor"];
const FILM: readonly PartRole[] = ["film capacitor", "resonant capacitor"];

/** Bus capacitors: no less, and a fifth more at most. Common practice. */
const BUS_MOST = 1.2;
/** Rail capacitors may be half as large again. Common practice. */
const RAIL_MOST = 1.5;
/** The controller's own supply pin: not much bigger. The figure from memory. */
const PIN_MOST = 1.2;
const MOST_TIMES_VOLTS = 2;
const HOT_DEGC = 105;
const ANY_ESR = said`a higher voltage is harmless, whatever the ESR`;

export const CAPACITOR_RULES: readonly Rule[] = [
  rule(
    said`capacitor type`,
    [...WET, ...FILM, "ceramic"],
    same("type"),
    said`each type has its own losses, leakage and way of dying`,
  ),
  rule(said`voltage of a dry capacitor`, [...FILM, "ceramic"], atLeast("volts"), said`it stands it for life`),
  rule(
    said`capacitor voltage`,
    WET,
    atLeast("volts"),
    said`450 V for 400 V is welcome; a surge of more than 1.15 times the rating is not borne`,
    { mark: "seen", source: "surge 1.15 times: 038 RSU data sheet, doc 28309" },
  ),
  rule(
    said`not far above in voltage`,
    ["rail capacitor", "supply pin capacitor"],
    judged(said`at most twice the voltage`, (wanted, candidate) => {
      const speech = atMost("volts", MOST_TIMES_VOLTS, "asks").hear(wanted, candidate);
      return speech?.says === "asks" ? speech : null;
    }),
    said`over twice the voltage it is another part: taller, of other ESR`,
    { custom: ANY_ESR },
  ),
  rule(
    said`bus capacitance`,
    ["bus capacitor"],
    within("farads", 1, BUS_MOST),
    said`less is more ripple; more is more inrush through PTC, relay and bridge`,
    { custom: said`a bigger bus capacitor is better` },
  ),
  rule(
    said`rail capacitance`,
    ["rail capacitor"],
    within("farads", 1, RAIL_MOST, { above: "asks" }),
    said`less is ripple; far more upsets the supply's start`,
  ),
  rule(
    said`capacitance at a supply pin`,
    ["supply pin capacitor"],
    within("farads", 1, PIN_MOST),
    said`it sets the start-up time: too large, and the supply tries for ever`,
    { mark: "from memory", custom: said`a bigger capacitor is better` },
  ),
  rule(
    said`ripple current`,
    ["bus capacitor"],
    atLeast("rippleAmps"),
    said`ripple is what heats and dries it`,
    {
      custom: ANY_ESR,
    },
  ),
  rule(
    said`ESR`,
    ["rail capacitor", "supply pin capacitor"],
    atMost("esrOhms"),
    said`behind a switching supply a general-purpose type boils`,
    { custom: ANY_ESR },
  ),
  rule(
    said`105 degC`,
    WET,
    needs("degC", (value) => Number(value) >= HOT_DEGC, "105 degC"),
    said`ten degrees are half of its life`,
    { mark: "seen", source: "10-degree rule, capacitor makers' pages" },
  ),
  rule(
    said`height`,
    ["bus capacitor"],
    atMost("heightMm", 1, "asks"),
    said`a cover or a housing stands over it`,
  ),
  rule(
    said`pin pitch`,
    ["bus capacitor", "X capacitor"],
    within("pitchMm", 1, 1, { below: "asks", above: "asks" }),
    said`snap-in legs do not bend, and bent legs shorten the creepage`,
  ),
  rule(said`one type in the bank`, ["bus capacitor"], allAlike, said`the newest takes most of the ripple`),
  rule(
    said`class of an X capacitor`,
    ["X capacitor"],
    safetyClass("X"),
    said`it stands across the mains for life and must not burn: X1 for X2 will do, a plain film never`,
    { custom: said`any film capacitor of the voltage will do` },
  ),
  rule(
    said`class of a Y capacitor`,
    ["Y capacitor"],
    safetyClass("Y"),
    said`only it stands between mains and a touchable earth: it must fail open`,
    { custom: said`any ceramic of the voltage will do` },
  ),
  rule(
    said`mains voltage of a safety capacitor`,
    ["X capacitor", "Y capacitor"],
    atLeast("volts"),
    said`for life`,
  ),
  rule(
    said`capacitance of an X capacitor`,
    ["X capacitor"],
    within("farads", 0.8, 1.2),
    said`less filters less; more outlasts the bleeder at the plug`,
    { mark: "from memory" },
  ),
  rule(
    said`capacitance of a Y capacitor`,
    ["Y capacitor"],
    within("farads", 0.5, 1),
    said`more is more current in the earth wire, and trips the residual-current breaker`,
    { mark: "from memory" },
  ),
  rule(
    said`resonant capacitance`,
    ["resonant capacitor"],
    within("farads", 0.95, 1.05),
    said`it sets the frequency and the peak at the switch`,
    { mark: "from memory" },
  ),
  rule(
    said`current of a resonant capacitor`,
    ["resonant capacitor"],
    atLeast("rippleAmps"),
    said`the whole coil current runs through it`,
  ),
  rule(
    said`film capacitance`,
    ["film capacitor"],
    within("farads", 1, BUS_MOST),
    said`it takes the edges off the bus`,
    { mark: "from memory" },
  ),
  rule(
    said`ceramic capacitance`,
    ["ceramic"],
    within("farads", 0.8, 1.5),
    said`a timing or a filter may rest on it`,
    { mark: "from memory" },
  ),
];
