/** What a replacement asks of a person at a terminal: the part in the hand read before it goes in, and how it goes onto its heatsink. */
import { incomingKey, readInHand } from "../bench/incoming.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { fitView } from "../parts/fit-view.ts";
import { table } from "./answer-text.ts";

/** The step proposed, as far as it matters here. */
interface Step {
  readonly do: string;
  readonly part?: unknown;
  readonly with?: unknown;
  readonly used?: unknown;
}

/** Nothing where the step fits no part. What was read in the hand so far stands beside what a good one shows. */
export function beforeItGoesIn(board: Board, timeline: Timeline, step: Step | null): string {
  const part = step?.do === "replace" ? board.parts.get(String(step.part)) : undefined;
  if (step === null || part === undefined) return "";
  const fitted = typeof step.with === "string" ? step.with : "";
  const { incoming, reads, baseline, mounting } = fitView(board, part, {
    original: {},
    candidate: {},
    fitted,
  });
  const pulled = step.used === true;
  const steps = incoming
    .filter(({ pulledOnly }) => pulled || !pulledOnly)
    .map((one) => [`    ${one.do}`, one.expect]);
  const had = new Map(readInHand(timeline.entries, part.ref).map((one) => [incomingKey(one), one.reading]));
  const typed = reads.map((read) => [
    `    incoming ${part.ref} ${read.key}`,
    read.good ?? "write it down",
    had.has(read.key) ? `read ${had.get(read.key)}` : "",
  ]);
  const above = pulled ? ", a pulled part above all" : "";
  return [
    `  Two minutes before it goes in${above}:\n${table(steps)}`,
    typed.length === 0 ? "" : `  Typed with the reading behind it:\n${table(typed)}  ${baseline}\n`,
    mounting === null
      ? ""
      : `  Onto its heatsink, ${mounting.torque ?? "torque by its data sheet"}:\n${mounting.order.map((one, at) => `    ${at + 1}. ${one}\n`).join("")}`,
    mounting?.distance == null ? "" : `    Distances: ${mounting.distance}.\n`,
  ].join("");
}
