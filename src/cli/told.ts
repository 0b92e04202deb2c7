/** Commands that reckon: figures in, one answer out, as a script reads it and as a person does. */
import type { Parsed } from "../units/outcome.ts";
import { parseQuantity } from "../units/quantity.ts";
import { answerText } from "./answer-text.ts";
import { DONE, type Io, refuse } from "./io.ts";

/** An answer as a script reads it, and as a person does. */
export interface Told {
  readonly json: object;
  readonly text: string;
}

export function told(made: () => Parsed<Told>, json: boolean, io: Io): number {
  const answer = made();
  if (!answer.ok) return refuse(io, answer.problem);
  io.out(json ? answerText(answer.value.json) : answer.value.text);
  return DONE;
}

/** Reads options that are figures; the first that is none is the problem. */
export function figures<K extends string>(
  texts: Readonly<Record<K, string>>,
): Parsed<Readonly<Record<K, number>>> {
  const found: Partial<Record<K, number>> = {};
  for (const [key, text] of Object.entries(texts) as [K, string][]) {
    const read = parseQuantity(text);
    if (!read.ok || typeof read.value !== "number")
      return { ok: false, problem: `--${key}: "${text}" is no figure` };
    found[key] = read.value;
  }
  return { ok: true, value: found as Record<K, number> };
}
