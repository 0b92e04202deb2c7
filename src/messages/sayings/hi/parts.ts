import type { Sayings } from "../../said.ts";

export const PARTS: Sayings = {};
