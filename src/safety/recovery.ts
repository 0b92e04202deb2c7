/** What a discharged capacitor comes back to by itself (dielectric absorption). */
import type { StoreKind } from "../board/stores-of-charge.ts";
import { EMPTY_BELOW_VOLTS } from "./discharge.ts";

/**
 * Share of the volts it held that a capacitor comes back to at most once its leads are open: films 1-2 %, electrolytics up to 15 %
 * (encyclopaedic, not measured here; 10-50 V on a large one is from memory and agrees). It peaks only after days (a maker's own pages).
 */
const RECOVERS = { film: 0.02, electrolytic: 0.15 } as const;

/** Volts that a store may come back to after it held `volts`; 0 where that is not worth a word. */
export function recoveredVolts(volts: number, kind: StoreKind): number {
  const film = kind === "film capacitor" || kind === "X capacitor";
  const back = Math.abs(volts) * (film ? RECOVERS.film : RECOVERS.electrolytic);
  return back < EMPTY_BELOW_VOLTS ? 0 : back;
}
