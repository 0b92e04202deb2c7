import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { MOST_CHARACTERS, parseJsonText } from "../units/json-text.ts";
import type { Parsed } from "../units/outcome.ts";

/** A character is at most four bytes of UTF-8, so a file above this cannot hold a text that would be read. */
const MOST_BYTES = 4 * MOST_CHARACTERS;
const CHUNK_BYTES = 1 << 20;

/** A file's text. Also pipes and the like, up to the same limit; a problem is one line that begins with the file's name. */
export function readText(file: string): Parsed<string> {
  let handle: number;
  try {
    handle = openSync(file, "r");
  } catch (error) {
    return { ok: false, problem: `${file}: ${reasonOf(error)}` };
  }
  try {
    const size = fstatSync(handle).size;
    const bytes = size > MOST_BYTES ? null : readUpTo(handle, MOST_BYTES);
    if (bytes === null) return { ok: false, problem: `${file}: ${tooLarge(size)}` };
    return { ok: true, value: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch (error) {
    return { ok: false, problem: `${file}: ${reasonOf(error)}` };
  } finally {
    closeSync(handle);
  }
}

export function readJson(file: string): Parsed<unknown> {
  const text = readText(file);
  return text.ok ? parseJsonText(text.value, file) : text;
}

function readUpTo(handle: number, most: number): Buffer | null {
  const chunks: Buffer[] = [];
  let total = 0;
  for (;;) {
    const chunk = Buffer.alloc(CHUNK_BYTES);
    const read = readSync(handle, chunk, 0, CHUNK_BYTES, null);
    if (read === 0) return Buffer.concat(chunks, total);
    total += read;
    if (total > most) return null;
    chunks.push(chunk.subarray(0, read));
  }
}

function tooLarge(size: number): string {
  const found = size > MOST_BYTES ? `${(size / 1e6).toFixed(1)} MB is` : "it is";
  return `${found} too large; a board or job file stays under ${MOST_CHARACTERS / 1e6} MB`;
}

function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === "ENOENT") return "there is no such file";
  if (code === "EACCES" || code === "EPERM") return "you may not read this file";
  if (code === "EISDIR") return "this is a folder, not a file";
  if (code === "ERR_ENCODING_INVALID_ENCODED_DATA") return "this is not text (UTF-8)";
  return error instanceof Error ? error.message : String(error);
}
