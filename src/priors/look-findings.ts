import type { Finding } from "../bench/event.ts";
import { FINDINGS } from "../bench/words.ts";
import type { Part } from "../board/board.ts";
import type { Fault, FaultMode } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";
import type { Cause } from "./cause.ts";
import { junctionsOf } from "./junctions.ts";
import type { Shape } from "./mode-shares.ts";

type Shares = Readonly<Partial<Record<Finding, number>>>;

/** What the eye finds on a part with such a fault; what the row does not name is `clean` for the most part. */
export interface FindingRow extends Sourced {
  readonly shapes: readonly Shape[];
  readonly modes: readonly FaultMode[];
  readonly shares: Shares;
}

const row = (
  id: string,
  shapes: readonly Shape[],
  modes: readonly FaultMode[],
  shares: Shares,
  words: string,
): FindingRow => ({
  id: `L-${id}`,
  mark: "common practice",
  words,
  shapes,
  modes,
  shares,
});

const SILICON: readonly Shape[] = ["switch", "rectifier-diode", "diode", "thyristor", "bjt-junction"];
const CHIP: readonly Shape[] = [
  "chip-supply",
  "chip-pin",
  "chip-pin-to-supply",
  "bootstrap",
  "regulator-pass",
  "regulator-output",
  "reference",
];

/** Which sights go with which faults is common practice; the shares are judged. The first row that fits counts. */
export const FINDING_ROWS: readonly FindingRow[] = [
  row(
    "switch-short",
    ["switch"],
    ["short", "open"],
    { burnt: 0.25, cracked: 0.2 },
    "a crater or split case at the shorted switch",
  ),
  row(
    "silicon-short",
    SILICON,
    ["short", "open"],
    { burnt: 0.15, cracked: 0.08 },
    "rectifiers mostly look whole",
  ),
  row(
    "varistor",
    ["varistor"],
    ["short", "open"],
    { burnt: 0.35, cracked: 0.4 },
    "split, soot on the line side",
  ),
  row("varistor-leaky", ["varistor"], ["leaky"], { burnt: 0.2, cracked: 0.1 }, "browned"),
  row("fuse", ["fuse"], ["open"], { burnt: 0.6 }, "black or metallised glass; clear where it only aged"),
  row(
    "resistor-open",
    ["resistor"],
    ["open", "drift"],
    { burnt: 0.3, cracked: 0.1, corroded: 0.03 },
    "browned or cracked",
  ),
  row(
    "electrolytic",
    ["electrolytic"],
    ["drift", "leaky", "open"],
    { bulged: 0.4, corroded: 0.05 },
    "bulged or leaked",
  ),
  row("electrolytic-short", ["electrolytic"], ["short"], { bulged: 0.5, burnt: 0.1 }, "vented"),
  row(
    "ceramic",
    ["ceramic"],
    ["short", "leaky", "open", "drift"],
    { cracked: 0.12, burnt: 0.06 },
    "cracks seldom show",
  ),
  row("film", ["film"], ["short", "open"], { burnt: 0.1, cracked: 0.15, bulged: 0.1 }, "swollen or split"),
  row(
    "thermistor",
    ["ntc-ptc"],
    ["open", "short", "drift"],
    { burnt: 0.2, cracked: 0.3 },
    "limiter browned or cracked",
  ),
  row("zener", ["zener"], ["short", "open"], { burnt: 0.15, cracked: 0.05 }, "small clamps burn sometimes"),
  row("chip", CHIP, ["short", "open", "leaky"], { burnt: 0.1, cracked: 0.06 }, "most dead chips look well"),
  row(
    "relay",
    ["coil", "contact"],
    ["open", "short", "leaky"],
    { burnt: 0.12, corroded: 0.1 },
    "browned or corroded",
  ),
  row(
    "joint",
    ["link", "inductor", "winding"],
    ["open", "leaky"],
    { cracked: 0.3, burnt: 0.08, corroded: 0.08 },
    "ring crack at a heavy part",
  ),
];

/** What the eye finds on a part that is whole, by cause. The shares are judged `from memory`. */
export const HEALTHY_FINDINGS: Readonly<Record<Cause, Shares>> = {
  water: { corroded: 0.15, wet: 0.08, burnt: 0.01, other: 0.01 },
  surge: { burnt: 0.015, cracked: 0.005, other: 0.01 },
  overload: { burnt: 0.015, cracked: 0.005, other: 0.01 },
  age: { bulged: 0.02, corroded: 0.02, burnt: 0.01, cracked: 0.01, other: 0.01 },
  insects: { other: 0.06, corroded: 0.03, burnt: 0.015 },
  impact: { cracked: 0.03, "lifted-pad": 0.02, other: 0.01 },
  unknown: { burnt: 0.012, corroded: 0.02, bulged: 0.01, cracked: 0.008, other: 0.01 },
};

/** No finding is ever impossible: chance of a sight that no row names. `from memory`. */
const STRAY = 0.002;

function sharesOf(part: Part, fault: Fault): Shares {
  if (fault.of === "nets") return { corroded: 0.4, wet: 0.2, other: 0.1 };
  const shape = junctionsOf(part).find((one) => one.junction === fault.junction)?.shape;
  if (shape === undefined) return {};
  return (
    FINDING_ROWS.find((one) => one.shapes.includes(shape) && one.modes.includes(fault.mode))?.shares ?? {}
  );
}

/**
 * Chance of each finding when looking at `part` with these faults of it (or of the nets at its pins) present; sums to one.
 * Several faults each add their sights; `clean` is what is left when none of them shows.
 */
export function findingChances(
  part: Part,
  faults: readonly Fault[],
  cause: Cause,
): ReadonlyMap<Finding, number> {
  const hidden = new Map<Finding, number>(FINDINGS.map((finding) => [finding, 1]));
  for (const shares of [HEALTHY_FINDINGS[cause], ...faults.map((fault) => sharesOf(part, fault))])
    for (const finding of FINDINGS)
      hidden.set(finding, (hidden.get(finding) ?? 1) * (1 - Math.max(shares[finding] ?? 0, STRAY)));
  const shows = FINDINGS.filter((finding) => finding !== "clean").map((finding): [Finding, number] => [
    finding,
    1 - (hidden.get(finding) ?? 1),
  ]);
  const clean = shows.reduce((rest, [, chance]) => rest * (1 - chance), 1);
  const total = shows.reduce((sum, [, chance]) => sum + chance, 0);
  return new Map([
    ["clean", clean],
    ...shows.map(([finding, chance]): [Finding, number] => [finding, ((1 - clean) * chance) / total]),
  ]);
}

/** P(finding | these faults of the part present). */
export function findingLikelihood(
  finding: Finding,
  part: Part,
  faults: readonly Fault[],
  cause: Cause,
): number {
  return findingChances(part, faults, cause).get(finding) ?? STRAY;
}
