/**
 * The customary fixed walk: fuses, bridge, boost, module, bus capacitors, then the small supply, the low side last. What each
 * check is, when it counts as bad, and when the walk stops. Common practice; written down before the first figure was computed
 * and not tuned since.
 */
import type { ColdMode, Reading } from "../../src/bench/event.ts";
import type { Board, Part } from "../../src/board/board.ts";
import { faultSites } from "../../src/board/fault-sites.ts";
import { junctionPins } from "../../src/planning/junction-pins.ts";
import { type SwitchSite, viewOf } from "../../src/priors/circuit-view.ts";

export const WALK_RULES = {
  /** diode mode: below this both ways, or the blocking way, is a short (volts) */
  shortVolts: 0.1,
  /** a fuse, a link or a winding of more is open (ohms) */
  openOhms: 20,
  /** the bus, or a gate, of less is shorted (ohms) */
  busOhms: 1000,
  gateOhms: 500,
  /** parts lifted for one short before the walk gives it up */
  mostLifts: 6,
  /** power-ups, and rounds of the walk, before the board is given up */
  mostPowerUps: 4,
  mostRounds: 3,
} as const;

/** A place where the meter goes, and the part it is held against. */
export interface WalkCheck {
  readonly part: string;
  readonly mode: ColdMode;
  readonly red: string;
  readonly black: string;
  readonly bad: "short" | "open";
}

const R = WALK_RULES;

/** Is the reading bad in the way this check looks for? */
export function isBad({ mode, bad, part }: WalkCheck, reading: Reading): boolean {
  if (bad === "open")
    return reading === "OL" || (mode === "ohms" && typeof reading === "number" && reading > R.openOhms);
  if (typeof reading !== "number") return reading === "beep" || reading === "zero";
  if (mode === "diode") return reading < R.shortVolts;
  return reading < (part === "" ? R.busOhms : R.gateOhms);
}

function across(part: Part, junction: string | null): readonly [string, string] | null {
  const pins = junctionPins(part, junction);
  const [a, b] = pins?.map((pin) => part.pins.get(pin)) ?? [];
  return a === undefined || b === undefined || a === b ? null : [a, b];
}

/** The way a junction blocks must not be low; the way its diode conducts must not be open or low. */
function junctionChecks(part: Part, junction: string | null): WalkCheck[] {
  const nets = across(part, junction);
  if (nets === null) return [];
  const [red, black] = nets;
  return [
    { part: part.ref, mode: "diode", red: black, black: red, bad: "short" },
    { part: part.ref, mode: "diode", red, black, bad: "open" },
  ];
}

function switchChecks({ part, high, low }: SwitchSite): WalkCheck[] {
  return [
    { part, mode: "diode", red: high, black: low, bad: "short" },
    { part, mode: "diode", red: low, black: high, bad: "open" },
  ];
}

/** All checks of one round, in the customary order; no check twice. */
export function walkChecks(board: Board): readonly WalkCheck[] {
  const view = viewOf(board);
  const parts = [...board.parts.values()];
  const series = [...view.lineFuses, ...view.inrushLimiters];
  const bridges = parts.filter(({ kind }) => kind === "bridge");
  const { bus } = view.roles;
  const checks: WalkCheck[] = [
    ...series.flatMap((part): WalkCheck[] => {
      const [red, black] = [...part.pins.values()];
      return red === undefined || black === undefined || red === black
        ? []
        : [{ part: part.ref, mode: "ohms", red, black, bad: "open" }];
    }),
    ...bridges.flatMap((part) => faultSites(part).flatMap(({ junction }) => junctionChecks(part, junction))),
    ...view.otherSwitches.flatMap(switchChecks),
    ...view.inGroups("pfc").flatMap((part) => (part.kind === "diode" ? junctionChecks(part, null) : [])),
    ...view.motorSwitches.flatMap(switchChecks),
    ...(bus === null
      ? []
      : [{ part: "", mode: "ohms", red: bus.plus, black: bus.minus, bad: "short" } as const]),
    ...view.motorSwitches.flatMap(({ part, gate, low }): WalkCheck[] =>
      gate === null ? [] : [{ part, mode: "ohms", red: gate, black: low, bad: "short" }],
    ),
    ...view.supplySwitches.map(
      ({ part, high, low }): WalkCheck => ({ part, mode: "diode", red: high, black: low, bad: "short" }),
    ),
    ...view.inGroups("supply").flatMap((part) => (part.kind === "diode" ? junctionChecks(part, null) : [])),
    ...board.rails.map(
      ({ net, against }): WalkCheck => ({
        part: "",
        mode: "diode",
        red: net,
        black: against ?? board.zero,
        bad: "short",
      }),
    ),
  ];
  const seen = new Set<string>();
  return checks.filter(({ mode, red, black }) => {
    const key = `${mode} ${red} ${black}`;
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}

/** Kinds that can short, in the order in which a bench takes them off. */
const LIFTED_FIRST: readonly Part["kind"][] = [
  "igbt",
  "mosfet",
  "switcher",
  "bridge",
  "diode",
  "zener",
  "varistor",
  "capacitor",
  "module",
  "ic",
  "regulator",
  "controller",
];

/** Parts with a junction straight across the two nets, the one the check is about first. */
export function acrossNets(board: Board, { part, red, black }: WalkCheck): readonly Part[] {
  const spans = (one: Part) =>
    faultSites(one).some(({ junction }) => {
      const nets = across(one, junction);
      return nets?.includes(red) === true && nets.includes(black);
    });
  const rank = (one: Part) => (one.ref === part ? -1 : LIFTED_FIRST.indexOf(one.kind));
  return [...board.parts.values()]
    .filter((one) => LIFTED_FIRST.includes(one.kind) && spans(one))
    .sort((a, b) => rank(a) - rank(b) || (a.ref < b.ref ? -1 : 1));
}
