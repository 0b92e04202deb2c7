import type { Sayings } from "../../said.ts";

export const JOB: Sayings = {};
