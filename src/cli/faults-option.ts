import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseFaultList } from "../board/parse-fault.ts";
import { parseJsonText } from "../units/json-text.ts";
import type { Parsed } from "../units/outcome.ts";

/** `--faults`: names with commas between, or a JSON array of names. */
export function parseFaultsOption(text: string, board: Board): Parsed<readonly Fault[]> {
  if (!text.trim().startsWith("[")) return named(parseFaultList(text, board));
  const list = parseJsonText(text, "--faults");
  return list.ok ? named(parseFaultList(list.value, board)) : list;
}

function named(faults: Parsed<readonly Fault[]>): Parsed<readonly Fault[]> {
  return faults.ok ? faults : { ok: false, problem: `--faults: ${faults.problem}` };
}
