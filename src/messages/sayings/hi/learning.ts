import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "सभी ख़राबियाँ मिलाकर",
  "on a board that comes in": "आई हुई एक बोर्ड पर",
};
