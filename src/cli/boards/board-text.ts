import type { Board } from "../../board/board.ts";
import { rolesInWords } from "../../board/roles-in-words.ts";
import { table } from "../answer-text.ts";

/** What was read of a board, in words. */
export function boardText(board: Board): string {
  const stages = new Map<string, string[]>();
  for (const part of board.parts.values()) {
    const stage = part.stage ?? "(no stage given)";
    stages.set(stage, [...(stages.get(stage) ?? []), part.ref]);
  }
  const rails = board.rails.map((rail) => [
    `  ${rail.name}`,
    `${rail.volts} V on ${rail.net}${rail.from === null ? "" : ` from ${rail.from}`}`,
  ]);
  const supply = `${board.supply.volts} V ${board.supply.kind} at ${board.supply.at.join(", ")}`;
  return `${board.name} (${board.family}): ${board.parts.size} parts, ${board.nets.size} nets
Supply: ${supply}; rails are measured against ${board.zero}
${rails.length === 0 ? "No rails are named.\n" : `Rails:\n${table(rails)}`}Parts by stage:
${table([...stages].map(([stage, refs]) => [`  ${stage}`, refs.join(" ")]))}Derived from the circuit:
${rolesInWords(board)
  .map((line) => `  ${line}\n`)
  .join("")}`;
}
