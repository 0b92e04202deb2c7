/**
 * One line of text as the runs that are drawn from left to right: bidirectional order (Unicode UAX 9), one script a run. A font shapes
 * what is in a run; in which order runs stand is nobody's business but the line's.
 */
import bidiFactory from "bidi-js";
import type { Direction } from "../messages/language.ts";

export type Script = "latin" | "devanagari" | "arabic";

export interface VisualRun {
  readonly script: Script;
  /** what a font lays out in one go: in logical order where the script joins its letters, else as it stands on the line */
  readonly text: string;
}

const bidi = bidiFactory();

/** Marks that steer the order and are not drawn. */
const STEERING = /[\u061c\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
const STEERINGS = new RegExp(STEERING, "g");

/** A text without the marks that only steer its order. */
export function withoutSteering(text: string): string {
  return text.replace(STEERINGS, "");
}

export function scriptOf(char: string): Script {
  if (/[\u0900-\u097f\ua8e0-\ua8ff\u200c\u200d]/.test(char)) return "devanagari";
  return /[\u0600-\u06ff\u0750-\u077f\ufb50-\ufdff\ufe70-\ufefc]/.test(char) ? "arabic" : "latin";
}

/** The order of a paragraph, worked out once for all its lines. */
export function orderOf(paragraph: string, direction: Direction): ReturnType<typeof bidi.getEmbeddingLevels> {
  return bidi.getEmbeddingLevels(paragraph, direction);
}

/** @param end - behind the line's last character */
export function visualRuns(
  paragraph: string,
  order: ReturnType<typeof orderOf>,
  start: number,
  end: number,
): readonly VisualRun[] {
  const chars = visualOrder(paragraph, order, start, end);
  const runs: { script: Script; rtl: boolean; chars: string[] }[] = [];
  for (const at of chars) {
    const char = paragraph.charAt(at);
    if (STEERING.test(char)) continue;
    const rtl = ((order.levels[at] ?? 0) & 1) === 1;
    const script = scriptOf(char);
    const last = runs.at(-1);
    // digits of the Arabic block stand from left to right and do not join: each by itself, or a font turns them round
    const alone = script === "arabic" && !rtl;
    if (last !== undefined && !alone && last.script === script && last.rtl === rtl) last.chars.push(char);
    else runs.push({ script, rtl, chars: [char] });
  }
  return runs.map(({ script, rtl, chars: drawn }) => {
    if (!rtl) return { script, text: drawn.join("") };
    return script === "latin"
      ? { script, text: drawn.map(mirrored).join("") }
      : { script, text: drawn.reverse().join("") };
  });
}

function visualOrder(
  paragraph: string,
  order: ReturnType<typeof orderOf>,
  start: number,
  end: number,
): readonly number[] {
  const indexes = Array.from({ length: end - start }, (_, at) => start + at);
  for (const [from, to] of bidi.getReorderSegments(paragraph, order, start, end - 1)) {
    const turned = indexes.slice(from - start, to - start + 1).reverse();
    indexes.splice(from - start, turned.length, ...turned);
  }
  return indexes;
}

function mirrored(char: string): string {
  return bidi.getMirroredCharacter(char) ?? char;
}
