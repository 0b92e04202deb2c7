/** A ceramic and a chip accused of the same short: what tells them apart beside what is measured, for the card. */
import { said } from "../messages/said.ts";
import type { SuspectedRail } from "./suspected-rail.ts";

/** Of a suspect less likely than this nothing is said. From memory. */
const NAMED_LEAST = 0.05;

/** Clues that only the bench has (common practice); the ohms, their sameness both ways and the history are weighed already. */
const CLUES = {
  place: said`For a ceramic speak an edge, a screw or a connector close by, and ohms that jump under light pressure; for a chip, other pins of it that read low too.`,
  heat: said`A ceramic is hot at one end, a chip in the middle of its package.`,
} as const;

/** The clue; none where not both are suspected. */
export function ceramicOrChip({ suspects }: SuspectedRail, clue: keyof typeof CLUES): readonly string[] {
  const named = suspects.filter(({ chance }) => chance >= NAMED_LEAST).map(({ member }) => member);
  const ceramic = named.some(({ part }) => part.kind === "capacitor" && part.value.type === "ceramic");
  const chip = named.some(({ junction }) => junction === "supply");
  return ceramic && chip ? [CLUES[clue]] : [];
}
