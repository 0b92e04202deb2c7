import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "جميع الأعطال معًا",
  "on a board that comes in": "في لوحة وصلت إلى الورشة",
};
