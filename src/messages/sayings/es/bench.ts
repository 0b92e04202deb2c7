import type { Sayings } from "../../said.ts";

export const BENCH: Sayings = {};
