/** How wide the screen is, in the three layouts of the bench. */
import { useSyncExternalStore } from "react";

/** phone: one column with tabs below; middle: card and tabs side by side; wide: card, suspects, tabs. */
export type Layout = "phone" | "middle" | "wide";

const MIDDLE = matchMedia("(min-width: 760px)");
const WIDE = matchMedia("(min-width: 1180px)");

function subscribe(changed: () => void): () => void {
  for (const query of [MIDDLE, WIDE]) query.addEventListener("change", changed);
  return () => {
    for (const query of [MIDDLE, WIDE]) query.removeEventListener("change", changed);
  };
}

export function useLayout(): Layout {
  return useSyncExternalStore(subscribe, () => (WIDE.matches ? "wide" : MIDDLE.matches ? "middle" : "phone"));
}
