import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { newJob } from "../job-store.contract.ts";
import { openConnection } from "./open-connection.ts";
import { openSqliteStore } from "./open-store.ts";

const WRITER = fileURLToPath(new URL("./crash-writer.fixture.ts", import.meta.url));
/** Milliseconds from the first acknowledged event to the kill: spread, so that it falls on different moments of a write. */
const KILL_AFTER_MS = [0, 7, 23, 41, 77, 130];

/** Runs the writer, kills it without warning; resolves to the numbers it had acknowledged. */
function writeUntilKilled(folder: string, from: number, killAfterMs: number): Promise<number[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["--import", "tsx", WRITER, folder, "j1", String(from)], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    let printed = "";
    let killing = false;
    child.stdout.on("data", (chunk: Buffer) => {
      printed += chunk.toString();
      if (killing) return;
      killing = true;
      setTimeout(() => child.kill("SIGKILL"), killAfterMs);
    });
    child.once("error", reject);
    child.once("close", (code, signal) => {
      if (signal !== "SIGKILL") reject(new Error(`the writer ended by itself: ${code}`));
      // A line without its end was being printed when the kill came: it counts only as possible.
      resolve(printed.split("\n").slice(0, -1).map(Number));
    });
  });
}

describe("kill -9 in the middle of writing", () => {
  it("loses no acknowledged event and keeps no half of a post", async () => {
    const folder = mkdtempSync(join(tmpdir(), "faultwright-crash-"));
    const first = openSqliteStore(folder, () => new Date().toISOString());
    await first.createJob(newJob("j1"));
    await first.close();

    const acknowledged: number[] = [];
    let next = 0;
    for (const killAfterMs of KILL_AFTER_MS) {
      const numbers = await writeUntilKilled(folder, next, killAfterMs);
      acknowledged.push(...numbers);

      const store = openSqliteStore(folder, () => new Date().toISOString());
      const ids = (await store.readJob("j1"))?.events.map((event) => event.id) ?? [];
      await store.close();
      expect(ids.length % 2, "a post of two events is there as a whole").toBe(0);
      expect(new Set(ids).size).toBe(ids.length);
      const kept = new Set(ids);
      expect(acknowledged.filter((number) => !kept.has(`e${number}a`) || !kept.has(`e${number}b`))).toEqual(
        [],
      );
      // A kill may fall between the commit and its line, so at most one post a round is there unannounced.
      expect(ids.length / 2).toBeGreaterThanOrEqual(acknowledged.length);
      expect(ids.length / 2 - acknowledged.length).toBeLessThanOrEqual(KILL_AFTER_MS.length);
      next = ids.length / 2;
    }
    const connection = openConnection(join(folder, "jobs.sqlite"));
    expect(connection.all("PRAGMA integrity_check", [])).toEqual([{ integrity_check: "ok" }]);
    connection.close();
    expect(acknowledged.length).toBeGreaterThan(KILL_AFTER_MS.length);
    rmSync(folder, { recursive: true, force: true });
  }, 120_000);
});
