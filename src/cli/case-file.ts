/** Files of cases to practise on, and the blind job that a case begins. */
import { existsSync } from "node:fs";
import { readCase, type TeachingCase } from "../teaching/teaching-case.ts";
import type { Parsed } from "../units/outcome.ts";
import { readJson } from "./read-file.ts";
import { replaceFile } from "./replace-file.ts";

export function loadCase(file: string): Parsed<TeachingCase> {
  const content = readJson(file);
  if (!content.ok) return content;
  const read = readCase(content.value);
  return read.ok ? read : { ok: false, problem: `${file}: ${read.problem}` };
}

/** Makes the job file of an apprentice where there is none: the recorded board, and nothing done yet. One line where it cannot. */
export function beginCase(file: string, { header }: TeachingCase): string | null {
  if (existsSync(file)) return null;
  try {
    replaceFile(file, `${JSON.stringify({ ...header, log: [] }, null, 2)}\n`);
    return null;
  } catch (error) {
    return `${file}: not written: ${error instanceof Error ? error.message : String(error)}`;
  }
}
