/** How far a lead may stand out of the solder side: towards a heatsink or a metal floor, each millimetre is clearance lost. */
import type { Mark } from "../../units/mark.ts";
import type { Parsed } from "../../units/outcome.ts";

export interface LeadLimit {
  /** 2 ordinary service, 3 must not fail */
  readonly boardClass: 2 | 3;
  readonly mostMm: number;
  readonly mark: Mark;
  readonly source: string;
}

/** The least is the same in all: the end has to be seen in the solder. */
export const LEAD_LIMITS: readonly LeadLimit[] = [
  { boardClass: 2, mostMm: 2.5, mark: "seen", source: "older IPC-A-610 table 5-2, as asked in IPC TechNet" },
  { boardClass: 3, mostMm: 1.5, mark: "seen", source: "older IPC-A-610 table 5-2, as asked in IPC TechNet" },
  { boardClass: 2, mostMm: 2.5, mark: "from memory", source: "IPC-A-610 table 7-3, supported holes" },
  { boardClass: 3, mostMm: 1.5, mark: "from memory", source: "IPC-A-610 table 7-3, supported holes" },
];

/** Where to cut, below a metal face at `gapMm` that has to stay `clearanceMm` away. */
export function cutLeadAtMm(boardClass: 2 | 3, gapMm: number, clearanceMm: number): Parsed<number> {
  const most = LEAD_LIMITS.find((limit) => limit.boardClass === boardClass)?.mostMm ?? 0;
  const left = gapMm - clearanceMm;
  if (left <= 0)
    return {
      ok: false,
      problem: `gap: ${gapMm} mm leaves nothing of a clearance of ${clearanceMm} mm; put an insulating sheet between`,
    };
  return { ok: true, value: Math.min(most, left) };
}
