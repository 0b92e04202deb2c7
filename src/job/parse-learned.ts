import type { Board } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import { readReferences } from "../board/parse-references.ts";
import type { JobFigures } from "../learning/job-figures.ts";
import { FACTOR_ENDS } from "../learning/pseudo-counts.ts";
import { said } from "../messages/said.ts";
import type { Fields, Problems } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";

const FIELDS = ["jobs", "sorts", "parts", "shares", "knockOns", "paces", "prices", "references"] as const;
const MODES: readonly FaultMode[] = ["short", "leaky", "open", "drift"];
/** Shares are kept to four digits: their sum may miss one by this. */
const SUM_WITHIN = 0.01;

/**
 * The `learned` of a job file. Sorts, shapes, rules and actions that this program does not know are kept and bear on nothing, since a later
 * program may know others; a part must be on the board.
 */
export function readLearned(problems: Problems, job: Fields, board: Board): JobFigures | null {
  if (!job.has("learned")) return null;
  const learned = job.object("learned");
  learned.only(FIELDS, said`what was learnt`);
  learned.require("jobs");
  const factors = (key: (typeof FIELDS)[number], most: number, least: number): Record<string, number> => {
    if (!learned.has(key)) return {};
    const fields = learned.object(key);
    const read: Record<string, number> = {};
    for (const name of fields.keys) read[name] = fields.number(name, { least, most }) ?? 1;
    return read;
  };
  const { least, most } = FACTOR_ENDS;
  const chain = 4; // levels whose factors multiply
  const sorts = factors("sorts", most ** chain, least ** chain);
  const parts = factors("parts", most, least);
  const prices = factors("prices", Number.MAX_VALUE, 0);
  const refs = [...board.parts.keys()];
  for (const [key, named] of [
    ["parts", parts],
    ["prices", prices],
  ] as const)
    for (const ref of Object.keys(named))
      if (!board.parts.has(ref) && !ref.includes("~"))
        learned.object(key).complain(ref, `${said`there is no part ${quoted(ref)}`}${suggestion(ref, refs)}`);
  return {
    jobs: learned.number("jobs", { least: 0 }) ?? 0,
    sorts,
    parts,
    shares: readShares(learned),
    knockOns: factors("knockOns", most, least),
    paces: factors("paces", most, least),
    prices,
    references: readReferences(learned, board.nets, [...board.parts.values()], problems) ?? [],
  };
}

function readShares(learned: Fields): JobFigures["shares"] {
  if (!learned.has("shares")) return {};
  const shapes = learned.object("shares");
  const shares: Record<string, Partial<Record<FaultMode, number>>> = {};
  for (const shape of shapes.keys) {
    const modes = shapes.object(shape);
    modes.only(MODES, said`the modes of a shape`);
    const read: Partial<Record<FaultMode, number>> = {};
    let sum = 0;
    for (const mode of MODES) {
      const share = modes.number(mode, { least: 0, most: 1 });
      if (share === undefined) continue;
      read[mode] = share;
      sum += share;
    }
    if (Math.abs(sum - 1) > SUM_WITHIN) shapes.complain(shape, said`the shares sum to ${sum}, not to 1`);
    shares[shape] = read;
  }
  return shares;
}
