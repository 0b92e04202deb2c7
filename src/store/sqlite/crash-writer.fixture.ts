/**
 * For the crash test: writes events one after the other and prints each number once it is acknowledged, until it is killed.
 * Arguments: the data folder, the job, the number to start from.
 */
import { writeSync } from "node:fs";
import type { KeptEvent } from "../../job/job-store.ts";
import { openSqliteStore } from "./open-store.ts";

const [folder = "", job = "", from = "0"] = process.argv.slice(2);
const store = openSqliteStore(folder, () => new Date().toISOString());
for (let number = Number(from); ; number++) {
  // Two events a post: after the kill both are there or neither.
  const events: KeptEvent[] = [
    { do: "note", id: `e${number}a`, text: "a" },
    { do: "note", id: `e${number}b`, text: "b" },
  ];
  const written = await store.appendEvents(job, events, () => null);
  if (!written.ok) throw new Error(written.problem);
  // Straight to the pipe: what stands in a buffer of this process dies with it, and would go uncounted.
  writeSync(1, `${number}\n`);
}
