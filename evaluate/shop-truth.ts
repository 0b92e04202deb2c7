/** A shop unlike the tables: its parts, causes, modes and knock-ons differ from the defaults by factors drawn once. */
import type { FaultMode } from "../src/board/fault.ts";
import { drawOne, normalDeviate, type Random, seededRandom } from "../src/practice/seeded-random.ts";
import { CAUSES, type Cause, SYMPTOMS, type Symptom } from "../src/priors/cause.ts";
import { KIND_WEIGHTS } from "../src/priors/kind-rates.ts";
import { KNOCK_ON_RULES } from "../src/priors/knock-on-rules.ts";
import { type LearntRates, NET_LEAK_SORT } from "../src/priors/learnt-rates.ts";
import { MODE_SHARES } from "../src/priors/mode-shares.ts";

/** Standard deviations of the logarithms of what the shop's figures differ by. Invented: a shop two to five times off in many of them. */
export const SHOP_SPREADS = { sorts: 0.9, causes: 0.5, parts: 0.4, modes: 0.5, knockOns: 0.5 } as const;

const SYMPTOM_WEIGHTS: Readonly<Record<Symptom, number>> = {
  dead: 0.5,
  "no-output": 0.2,
  "trips-supply": 0.12,
  "starts-then-stops": 0.13,
  other: 0.05,
};

export interface Shop {
  /** the shop's own figures for one board after one cause */
  rates(cause: Cause, boardId: string, parts: readonly string[]): LearntRates;
  drawCause(random: Random): Cause;
  drawSymptom(random: Random): Symptom;
}

/** The shop of a seed. `spread`: 0 is a shop just as the tables have it, 1 the one of `SHOP_SPREADS`. */
export function shopOf(seed: number, spread = 1): Shop {
  const factor = (salt: string, sd: number) =>
    Math.exp(spread * sd * normalDeviate(seededRandom(seed, salt)));
  const sorts = [...Object.keys(KIND_WEIGHTS), NET_LEAK_SORT];
  const causeWeights = CAUSES.map((cause) => factor(`cause ${cause}`, 0.7));
  const shares: Record<string, Partial<Record<FaultMode, number>>> = {};
  for (const [shape, { shares: table }] of Object.entries(MODE_SHARES)) {
    const raw = Object.entries(table).map(
      ([mode, share]) => [mode, share * factor(`mode ${shape} ${mode}`, SHOP_SPREADS.modes)] as const,
    );
    const total = raw.reduce((sum, [, share]) => sum + share, 0);
    shares[shape] = Object.fromEntries(raw.map(([mode, share]) => [mode, share / total]));
  }
  const knockOns = Object.fromEntries(
    KNOCK_ON_RULES.map(({ id }) => [id, factor(`rule ${id}`, SHOP_SPREADS.knockOns)]),
  );
  return {
    rates: (cause, boardId, parts) => ({
      sorts: Object.fromEntries(
        sorts.map((sort) => [
          sort,
          factor(`sort ${sort}`, SHOP_SPREADS.sorts) * factor(`${cause} ${sort}`, SHOP_SPREADS.causes),
        ]),
      ),
      parts: Object.fromEntries(
        parts.map((part) => [part, factor(`part ${boardId} ${part}`, SHOP_SPREADS.parts)]),
      ),
      shares,
      knockOns,
    }),
    drawCause: (random) => drawOne(CAUSES, causeWeights, random) ?? "unknown",
    drawSymptom: (random) =>
      drawOne(
        SYMPTOMS,
        SYMPTOMS.map((symptom) => SYMPTOM_WEIGHTS[symptom]),
        random,
      ) ?? "dead",
  };
}
