/** Rules that weigh more than one rating, or know classes that outrank each other. */
import { said } from "../messages/said.ts";
import { beside, rated, unknownOf } from "./judges.ts";
import { type Judge, judged } from "./rule.ts";

/**
 * Current that a switch carries when it is warm. Board files give one current and not at which case, so a candidate that has as
 * much at 100 degC is enough; one that has it only at 25 degC has to be compared.
 */
export const warmCurrent = judged(
  said`as much current at a case of 100 degC as the original`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    const wanted = had.hotAmps ?? had.amps;
    if (wanted === undefined) return unknownOf("hotAmps", had, has);
    if (has.hotAmps !== undefined) {
      const words = said`${rated("hotAmps", has.hotAmps)}, original ${rated(had.hotAmps === undefined ? "amps" : "hotAmps", wanted)}`;
      if (has.hotAmps >= wanted) return { says: "meets", about: "hotAmps", words };
      const byTheSame = had.hotAmps !== undefined || (has.amps ?? 0) < wanted;
      return byTheSame
        ? { says: "bars", about: "hotAmps", words }
        : { says: "asks", about: "hotAmps", words: said`${words}: compare both at 100 degC` };
    }
    if (has.amps === undefined) return unknownOf("hotAmps", { hotAmps: wanted }, has);
    const words = said`${rated("amps", has.amps)}, original ${rated("amps", wanted)}`;
    if (has.amps < wanted) return { says: "bars", about: "amps", words };
    return {
      says: "open",
      about: "hotAmps",
      unknown: "candidate",
      words: said`${words}; the candidate's current at 100 degC is not known`,
    };
  },
);

/** How far a bigger switch may go before it is another design. Common practice: 1.5 to 2 times. */
const MOST_TIMES_AMPS = 2;

export const notFarBigger = judged(
  said`no more than twice the current`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    if (had.amps === undefined || has.amps === undefined || has.amps <= had.amps * MOST_TIMES_AMPS)
      return null;
    return {
      says: "asks",
      about: "amps",
      words: said`${rated("amps", has.amps)}, over ${MOST_TIMES_AMPS} times the original's: short-circuit time and drive are another design's`,
    };
  },
);

/** A bridge with more amps and no more surge. */
export const surgeOfBridge = judged(
  said`surge current at least the original's; more current alone is no gain`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    const unknown = unknownOf("surgeAmps", had, has);
    if (unknown !== null || had.surgeAmps === undefined || has.surgeAmps === undefined) return unknown;
    const words = beside("surgeAmps", has.surgeAmps, had.surgeAmps);
    if (has.surgeAmps < had.surgeAmps) return { says: "bars", about: "surgeAmps", words };
    const moreAmps = (has.amps ?? 0) > (had.amps ?? Number.POSITIVE_INFINITY);
    if (moreAmps && has.surgeAmps <= had.surgeAmps)
      return { says: "asks", about: "surgeAmps", words: said`${words}: more current, no more surge` };
    return { says: "meets", about: "surgeAmps", words };
  },
);

/** Metal to the heatsink. */
export const tab = judged(
  said`the same tab; a live one for an isolated one only with pad, bush and test`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    const unknown = unknownOf("tab", had, has);
    if (unknown !== null) return unknown;
    if (had.tab === has.tab) return { says: "meets", about: "tab", words: rated("tab", has.tab ?? "") };
    if (has.tab === "live")
      return {
        says: "asks",
        about: "tab",
        words: said`tab live, original isolated: mica or silicone pad, bush under the screw, and over 20 Mohm to the heatsink before power`,
      };
    return {
      says: "notes",
      about: "tab",
      words: said`tab isolated, original live: it needs no pad, and runs warmer than one on a thin pad`,
    };
  },
);

/** Recovery; silicon carbide has none to speak of. */
export const recovery = judged(
  said`recovery no slower; silicon carbide will do`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    if (has.type === "sic" || has.type === "schottky")
      return {
        says: "meets",
        about: "recoverySeconds",
        words: has.type === "sic" ? said`silicon carbide: no recovery` : said`Schottky: no recovery`,
      };
    if (had.type === "sic")
      return {
        says: "bars",
        about: "recoverySeconds",
        words: said`a silicon diode where silicon carbide was`,
      };
    const unknown = unknownOf("recoverySeconds", had, has);
    if (unknown !== null || had.recoverySeconds === undefined || has.recoverySeconds === undefined)
      return unknown;
    const words = beside("recoverySeconds", has.recoverySeconds, had.recoverySeconds);
    return {
      says: has.recoverySeconds <= had.recoverySeconds ? "meets" : "bars",
      about: "recoverySeconds",
      words,
    };
  },
);

/** A diode made for the mains where something switches. */
export const fastStaysFast = judged(
  said`a fast, ultrafast or Schottky diode, never a mains rectifier`,
  (_, { type: { ratings: has } }) => {
    if (has.type === undefined)
      return {
        says: "open",
        about: "type",
        unknown: "candidate",
        words: said`fast or not: the candidate's type is not known`,
      };
    return has.type === "rectifier"
      ? { says: "bars", about: "type", words: said`a mains rectifier where a fast diode belongs` }
      : { says: "meets", about: "type", words: rated("type", has.type) };
  },
);

export const schottkyBySchottky = judged(
  said`Schottky by Schottky`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    if (had.type !== "schottky" || has.type === undefined) return null;
    return has.type === "schottky"
      ? { says: "meets", about: "type", words: rated("type", "schottky") }
      : { says: "bars", about: "type", words: said`${rated("type", has.type)} where a Schottky was` };
  },
);

export const carbideReadsHigh = judged(
  said`silicon carbide will do for ultrafast`,
  ({ ratings: had }, { type: { ratings: has } }) =>
    has.type === "sic" && had.type !== "sic"
      ? {
          says: "notes",
          about: "type",
          words: said`silicon carbide for ultrafast: it reads 0.75 to 0.85 V in diode mode and is not bad`,
        }
      : null,
);

/** Safety classes that a class may stand in for. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = {
  X1: ["X1", "X2"],
  X2: ["X2"],
  Y1: ["Y1", "Y2"],
  Y2: ["Y2"],
};

/** X or Y, and not below the original's class; where that is not known, the milder class of its letter is the least. */
export function safetyClass(letter: "X" | "Y"): Judge {
  return judged(
    said`class ${`${letter}1`} for ${`${letter}2`} will do, never the other way`,
    ({ ratings: had }, { type: { ratings: has } }) => {
      const wanted = had.safety ?? `${letter}2`;
      if (has.safety === undefined)
        return { says: "bars", about: "safety", words: said`no safety class where ${wanted} belongs` };
      if (STANDS_FOR[has.safety]?.includes(wanted) !== true)
        return { says: "bars", about: "safety", words: said`class ${has.safety} where ${wanted} belongs` };
      if (had.safety === undefined)
        return {
          says: "open",
          about: "safety",
          unknown: "original",
          words: said`class ${has.safety}; the original's class is not known, read it off the part`,
        };
      return { says: "meets", about: "safety", words: said`class ${has.safety}, original ${had.safety}` };
    },
  );
}

/** A bigger sister of a module trips at another current where the shunt is not hers. */
export const moduleCurrent = judged(
  said`the same current; more only if the trip stays right`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    const unknown = unknownOf("amps", had, has);
    if (unknown !== null || had.amps === undefined || has.amps === undefined) return unknown;
    const words = beside("amps", has.amps, had.amps);
    if (has.amps < had.amps) return { says: "bars", about: "amps", words };
    if (has.amps === had.amps) return { says: "meets", about: "amps", words };
    return {
      says: "asks",
      about: "amps",
      words: said`${words}: only if the trip that the shunt sets stays right`,
    };
  },
);

/** Zener of a gate: within a volt. */
const CLAMP_VOLTS = 1;

export const clampVolts = judged(
  said`the same voltage within 1 V`,
  ({ ratings: had }, { type: { ratings: has } }) => {
    const unknown = unknownOf("volts", had, has);
    if (unknown !== null || had.volts === undefined || has.volts === undefined) return unknown;
    const words = beside("volts", has.volts, had.volts);
    const near = Math.abs(has.volts - had.volts) <= CLAMP_VOLTS;
    return { says: near ? "meets" : "bars", about: "volts", words };
  },
);
