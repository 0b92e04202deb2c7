import { said } from "../messages/said.ts";

const STAGES: ReadonlyMap<string, string> = new Map([
  ["input", said`input`],
  ["inrush", said`inrush`],
  ["rectifier", said`rectifier`],
  ["pfc", said`pfc`],
  ["bus", said`bus`],
  ["inverter", said`inverter`],
  ["drive", said`drive`],
  ["chopper", said`chopper`],
  ["supply", said`supply`],
  ["standby", said`standby`],
  ["logic", said`logic`],
  ["output", said`output`],
  ["sensor", said`sensor`],
]);

/** The stage words that the board file format knows; a board may use others. */
export const KNOWN_STAGES: readonly string[] = [...STAGES.keys()];

/** A stage as it is said; a word that the format does not know stands as the board has it. */
export function stageWords(stage: string): string {
  return STAGES.get(stage) ?? stage;
}
