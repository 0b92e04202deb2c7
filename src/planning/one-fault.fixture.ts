import type { FaultPrior } from "../priors/fault-prior.ts";

/** A row of a prior table: one fault of one part, nominal, and no likelier than another. */
export function prior(part: string, junction: string | null, mode: "short" | "open"): FaultPrior {
  return {
    fault: { of: "part", part, junction, mode, value: null },
    reportAs: `${part}:${mode}`,
    part,
    site: part,
    rate: 0.01,
    spreadLn: 0,
  };
}
