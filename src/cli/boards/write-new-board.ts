import { writeFileSync } from "node:fs";
import { DONE, type Io, refuse } from "../io.ts";

/** Writes a board to a new file and says how large it is, or to standard output where none is named. A file that is there stays. */
export function writeNewBoard(
  file: string | undefined,
  board: Readonly<Record<string, unknown>>,
  io: Io,
): number {
  const text = `${JSON.stringify(board, null, 2)}\n`;
  if (file === undefined) {
    io.out(text);
    return DONE;
  }
  try {
    writeFileSync(file, text, { flag: "wx", flush: true });
  } catch (error) {
    const there = (error as NodeJS.ErrnoException).code === "EEXIST";
    const why = there ? "there is such a file already; name another" : String((error as Error).message);
    return refuse(io, `${file}: not written: ${why}`);
  }
  const parts = Object.values(board.parts as Record<string, { readonly assumed?: true }>);
  const assumed = parts.filter((part) => part.assumed === true).length;
  io.out(`${file}: ${parts.length} parts, ${assumed} of them not seen yet.\n`);
  return DONE;
}
