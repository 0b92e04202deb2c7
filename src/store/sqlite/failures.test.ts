import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import type { KeptEvent, Refusal, Written } from "../../job/job-store.ts";
import { ACCEPT_ALL, newJob, note, steppingClock } from "../job-store.contract.ts";
import { counting, fitting, someDiodes } from "../stock-store.contract.ts";
import type { SqlConnection } from "./connection.ts";
import { failingConnection } from "./failing-connection.fixture.ts";
import { openConnection } from "./open-connection.ts";
import { migrate, SCHEMA_STEPS } from "./schema.ts";
import { SqliteJobStore } from "./sqlite-job-store.ts";

const folders: string[] = [];
function freshFile(): string {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-failures-"));
  folders.push(folder);
  return join(folder, "jobs.sqlite");
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function expectSound(connection: SqlConnection): void {
  expect(connection.all("PRAGMA integrity_check", [])).toEqual([{ integrity_check: "ok" }]);
  expect(connection.all("PRAGMA foreign_key_check", [])).toEqual([]);
}

const BATCH: readonly KeptEvent[] = [note("b1"), note("b2"), note("b3")];
/** No operation here takes more statements than this; the loops end earlier, at the first try without a failure. */
const MOST_STATEMENTS = 50;

describe.each(["before", "after"] as const)(
  "a disk that fails, the failure coming %s the statement",
  (when) => {
    it("leaves a post of three events all there or not at all, and posting again heals it", async () => {
      const connection = failingConnection(openConnection(freshFile()));
      const store = new SqliteJobStore(connection, steppingClock());
      const outcomes: string[] = [];
      for (let statement = 1; statement <= MOST_STATEMENTS; statement++) {
        const id = `j${statement}`;
        await store.createJob(newJob(id, { events: [note("first")] }));
        connection.failAt(statement, when);
        const outcome = await store.appendEvents(id, BATCH, ACCEPT_ALL).catch((error: Error) => error);
        const failed = connection.hasFailed();
        connection.failAt(null, when);
        expectSound(connection);
        const kept = (await store.readJob(id))?.events.map((event) => event.id) ?? [];
        expect([1, 4], `after failing at statement ${statement}`).toContain(kept.length);
        if (!(outcome instanceof Error)) expect(kept, "what was acknowledged is there").toHaveLength(4);
        outcomes.push(outcome instanceof Error ? `threw, ${kept.length} kept` : "acknowledged");
        await store.appendEvents(id, BATCH, ACCEPT_ALL);
        expect((await store.readJob(id))?.events).toEqual([note("first"), ...BATCH]);
        if (!failed) break;
      }
      expect(outcomes.at(-1)).toBe("acknowledged");
      // BEGIN, the job, its log, three inserts, COMMIT: each of them has failed once
      expect(outcomes.filter((text) => text.startsWith("threw"))).toHaveLength(7);
      await store.close();
    });

    it("leaves a part fitted and taken from the drawer, or neither, and posting again takes it once", async () => {
      const connection = failingConnection(openConnection(freshFile()));
      const store = new SqliteJobStore(connection, steppingClock());
      await store.countStock(counting(someDiodes(100)));
      const left = async () => (await store.readStock()).lines()[0]?.count;
      let failures = 0;
      for (let statement = 1; statement <= MOST_STATEMENTS; statement++) {
        const id = `j${statement}`;
        await store.createJob(newJob(id));
        connection.failAt(statement, when);
        await store.appendEvents(id, [fitting("e1"), fitting("e2")], ACCEPT_ALL).catch(() => null);
        const failed = connection.hasFailed();
        connection.failAt(null, when);
        expectSound(connection);
        const kept = (await store.readJob(id))?.events.length ?? 0;
        expect([0, 2], `after failing at statement ${statement}`).toContain(kept);
        expect(await left()).toBe(100 - 2 * (statement - 1) - kept);
        await store.appendEvents(id, [fitting("e1"), fitting("e2")], ACCEPT_ALL);
        expect(await left()).toBe(100 - 2 * statement);
        if (!failed) break;
        failures++;
      }
      // BEGIN, the job, its log, two entries, two moves, COMMIT: each of them has failed once
      expect(failures).toBe(8);
      await store.close();
    });

    it("leaves a count that is whole or not there", async () => {
      const connection = failingConnection(openConnection(freshFile()));
      const store = new SqliteJobStore(connection, steppingClock());
      let failures = 0;
      for (let statement = 1; statement <= MOST_STATEMENTS; statement++) {
        const lines = [someDiodes(statement), someDiodes(statement, "shelf")];
        connection.failAt(statement, when);
        await store.countStock(counting(...lines)).catch(() => null);
        const failed = connection.hasFailed();
        connection.failAt(null, when);
        expectSound(connection);
        const counts = (await store.readStock()).lines().map(({ count }) => count);
        expect(new Set(counts).size, `after failing at statement ${statement}`).toBeLessThanOrEqual(1);
        await store.countStock(counting(...lines));
        expect((await store.readStock()).lines().map(({ count }) => count)).toEqual([statement, statement]);
        if (!failed) break;
        failures++;
      }
      expect(failures).toBe(4);
      await store.close();
    });

    it("leaves no half of a job that was being created", async () => {
      const connection = failingConnection(openConnection(freshFile()));
      const store = new SqliteJobStore(connection, steppingClock());
      let failures = 0;
      for (let statement = 1; statement <= MOST_STATEMENTS; statement++) {
        const job = newJob(`j${statement}`, { events: BATCH });
        connection.failAt(statement, when);
        const outcome: Written | Refusal | Error = await store.createJob(job).catch((error: Error) => error);
        const failed = connection.hasFailed();
        connection.failAt(null, when);
        expectSound(connection);
        const kept = await store.readJob(job.id);
        if (kept !== null) expect(kept.events).toEqual(BATCH);
        if (!(outcome instanceof Error)) expect(kept).not.toBeNull();
        await store.createJob(job);
        expect((await store.readJob(job.id))?.events).toEqual(BATCH);
        if (!failed) break;
        failures++;
      }
      expect(failures).toBe(7);
      await store.close();
    });

    it("leaves a file that the next start can finish setting up", () => {
      let failures = 0;
      for (let statement = 1; statement <= MOST_STATEMENTS; statement++) {
        const connection = failingConnection(openConnection(freshFile()));
        connection.failAt(statement, when);
        let threw = false;
        try {
          migrate(connection, steppingClock());
        } catch {
          threw = true;
        }
        connection.failAt(null, when);
        migrate(connection, steppingClock());
        expectSound(connection);
        expect(connection.all("SELECT count(*) AS steps FROM schema_step", [])).toEqual([
          { steps: SCHEMA_STEPS.length },
        ]);
        connection.close();
        if (!threw) break;
        failures++;
      }
      expect(failures).toBeGreaterThan(5);
    });
  },
);

describe("a full disk", () => {
  it("refuses what does not fit, keeps what was acknowledged, and goes on when there is room again", async () => {
    const connection = openConnection(freshFile());
    const store = new SqliteJobStore(connection, steppingClock());
    await store.createJob(newJob("j1"));
    const pages = Number(connection.all("PRAGMA page_count", [])[0]?.page_count);
    connection.exec(`PRAGMA max_page_count = ${pages + 8}`);
    let acknowledged = 0;
    let refusal: unknown = null;
    while (refusal === null && acknowledged < 1000) {
      const event = note(`e${acknowledged}`, "x".repeat(2000));
      try {
        await store.appendEvents("j1", [event], ACCEPT_ALL);
        acknowledged++;
      } catch (error) {
        refusal = error;
      }
    }
    expect(String(refusal)).toMatch(/full/);
    expect(acknowledged).toBeGreaterThan(0);
    expectSound(connection);
    expect((await store.readJob("j1"))?.events).toHaveLength(acknowledged);
    connection.exec("PRAGMA max_page_count = 1000000");
    await store.appendEvents("j1", [note("room", "x".repeat(2000))], ACCEPT_ALL);
    expect((await store.readJob("j1"))?.events).toHaveLength(acknowledged + 1);
    await store.close();
  });
});
