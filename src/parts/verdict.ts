/** Will this one do? Every rule that the role has is asked, and what each said is kept. */
import { said } from "../messages/said.ts";
import type { Mark } from "../units/mark.ts";
import type { Candidate, Says, Speech } from "./rule.ts";
import { rulesFor } from "./rule-table.ts";
import type { Wanted } from "./wanted.ts";

export type Fits = "fits" | "fits with conditions" | "no";

export const FITS_WORDS: Readonly<Record<Fits, string>> = {
  fits: said`fits`,
  "fits with conditions": said`fits with conditions`,
  no: said`no`,
};

/** What one rule said. */
export interface Finding extends Speech {
  /** the rule's id */
  readonly rule: string;
  /** the rule's name, for a person */
  readonly name: string;
  readonly why: string;
  readonly mark: Mark;
  readonly source: string | null;
  /** the dangerous custom it stands against; only where the rule objects */
  readonly custom: string | null;
}

export interface Verdict {
  readonly fits: Fits;
  /** what bars first, then conditions, what is to be looked up, notes, and what was kept */
  readonly findings: readonly Finding[];
}

const ORDER: Readonly<Record<Says, number>> = { bars: 0, asks: 1, open: 2, notes: 3, meets: 4 };

/** Does the rule object, or want something done first? */
export function objects(finding: Speech): boolean {
  return ORDER[finding.says] <= ORDER.open;
}

/** Of the very type that was there nothing has to be compared or looked up; what the board file contradicts still bars. */
function ofSameType(speech: Speech): Speech {
  const compared = speech.about !== undefined && (speech.says === "asks" || speech.says === "open");
  return compared ? { says: "meets", words: said`the same type` } : speech;
}

/** The verdict on one candidate for one place, by the rule table alone: nothing is tried, nothing is assumed. */
export function judge(wanted: Wanted, candidate: Candidate): Verdict {
  const findings = rulesFor(wanted.role).flatMap((rule): readonly Finding[] => {
    const heard = rule.judge.hear(wanted, candidate);
    if (heard === null) return [];
    const speech = wanted.name === candidate.type.name ? ofSameType(heard) : heard;
    const { id, name, why, mark, source } = rule;
    return [
      {
        ...speech,
        rule: id,
        name,
        why,
        mark,
        source,
        custom: speech.says === "bars" || speech.says === "asks" ? rule.custom : null,
      },
    ];
  });
  const sorted = [...findings].sort((a, b) => ORDER[a.says] - ORDER[b.says]);
  const worst = sorted[0];
  const fits =
    worst?.says === "bars" ? "no" : worst !== undefined && objects(worst) ? "fits with conditions" : "fits";
  return { fits, findings: sorted };
}
