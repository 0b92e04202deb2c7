import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { NEW_SHOP } from "../../job/shop.ts";
import { albumStoreContract } from "../album-store.contract.ts";
import { boardStoreContract } from "../board-store.contract.ts";
import { ACCEPT_ALL, jobStoreContract, newJob, note, steppingClock } from "../job-store.contract.ts";
import { counting, fitting, someDiodes, stockStoreContract } from "../stock-store.contract.ts";
import { openConnection } from "./open-connection.ts";
import { openSqliteStore } from "./open-store.ts";
import { migrate, SCHEMA_STEPS } from "./schema.ts";
import { SqliteJobStore } from "./sqlite-job-store.ts";

const folders: string[] = [];
function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-store-"));
  folders.push(folder);
  return folder;
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

albumStoreContract("the SQLite store", (clock) => openSqliteStore(freshFolder(), clock));
boardStoreContract("the SQLite store", (clock) => openSqliteStore(freshFolder(), clock));
jobStoreContract("the SQLite store", (clock) => openSqliteStore(freshFolder(), clock));
stockStoreContract("the SQLite store", (clock) => openSqliteStore(freshFolder(), clock));

describe("the SQLite file", () => {
  it("still holds everything after closing and opening again", async () => {
    const folder = freshFolder();
    const first = openSqliteStore(folder, steppingClock());
    await first.createJob(newJob("j1"));
    await first.appendEvents("j1", [note("e1")], ACCEPT_ALL);
    await first.close();
    const second = openSqliteStore(folder, steppingClock());
    expect((await second.readJob("j1"))?.events).toEqual([note("e1")]);
    await second.close();
  });

  it("still holds the stock after closing and opening again, and both of two servers see each other's moves", async () => {
    const folder = freshFolder();
    const first = openSqliteStore(folder, steppingClock());
    await first.countStock(counting(someDiodes(50)));
    await first.createJob(newJob("j1"));
    const second = openSqliteStore(folder, steppingClock());
    await second.appendEvents("j1", [fitting("e1")], ACCEPT_ALL);
    await first.appendEvents("j1", [fitting("e2")], ACCEPT_ALL);
    for (const store of [first, second]) {
      expect((await store.readStock()).lines().map(({ count }) => count)).toEqual([48]);
      await store.close();
    }
    const third = openSqliteStore(folder, steppingClock());
    expect((await third.readStock()).lines()).toEqual([{ ...someDiodes(48), short: 0 }]);
    await third.close();
  });

  it("still holds the shop's terms after closing and opening again, those kept last, and every one before them in the file", async () => {
    const folder = freshFolder();
    const first = openSqliteStore(folder, steppingClock());
    expect(await first.readShop()).toEqual(NEW_SHOP);
    await first.keepShop({ name: "one", terms: { ratePerHour: 40 } });
    await first.keepShop({ name: "two", terms: { ratePerHour: 45 } });
    await first.close();
    const second = openSqliteStore(folder, steppingClock());
    expect(await second.readShop()).toEqual({ name: "two", terms: { ratePerHour: 45 } });
    await second.close();
    const connection = openConnection(join(folder, "jobs.sqlite"));
    expect(connection.all("SELECT count(*) AS kept FROM shop", [])).toEqual([{ kept: 2 }]);
    expect(() => connection.run("DELETE FROM shop", [])).toThrow(/not deleted/);
    connection.close();
  });

  it("is shared by two servers at once without losing an event", async () => {
    const folder = freshFolder();
    const one = openSqliteStore(folder, steppingClock());
    const two = openSqliteStore(folder, steppingClock());
    await one.createJob(newJob("j1"));
    for (let at = 0; at < 20; at++) {
      await (at % 2 === 0 ? one : two).appendEvents("j1", [note(`e${at}`)], ACCEPT_ALL);
    }
    expect((await two.readJob("j1"))?.events).toHaveLength(20);
    await one.close();
    await two.close();
  });

  it("is readable by its owner only", async () => {
    const folder = join(freshFolder(), "deep", "data");
    const store = openSqliteStore(folder, steppingClock());
    await store.createJob(newJob("j1"));
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect(statSync(join(folder, "jobs.sqlite")).mode & 0o777).toBe(0o600);
    await store.close();
  });

  it("waits for the disk at every commit and watches its references", () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    const pragma = (name: string) => Object.values(connection.all(`PRAGMA ${name}`, [])[0] ?? {})[0];
    expect(pragma("journal_mode")).toBe("wal");
    expect(pragma("synchronous")).toBe(2);
    expect(pragma("foreign_keys")).toBe(1);
    expect(pragma("recursive_triggers")).toBe(1);
    expect(Number(pragma("busy_timeout"))).toBeGreaterThanOrEqual(1000);
    connection.close();
  });

  it("refuses to change or delete what was written, by whatever statement", async () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    const store = new SqliteJobStore(connection, steppingClock());
    await store.createJob(newJob("j1", { events: [note("e1")] }));
    await store.countStock(counting(someDiodes(50)));
    for (const statement of [
      "UPDATE stock_event SET body = '{}'",
      "DELETE FROM stock_event",
      "UPDATE event SET body = '{}'",
      "DELETE FROM event",
      "INSERT OR REPLACE INTO event (job, id, body, received_at) VALUES ('j1', 'e1', '{}', '')",
      "UPDATE job SET header = '{}'",
      "DELETE FROM job",
      "INSERT INTO event (job, id, body, received_at) VALUES ('nobody', 'e1', '{}', '')",
      "INSERT INTO event (job, id, body, received_at) VALUES ('j1', 'e1', '{}', '')",
      "INSERT INTO event (job, id, body, received_at) VALUES ('j1', 'e2', '{half', '')",
    ]) {
      expect(() => connection.exec(statement), statement).toThrow();
    }
    expect((await store.readJob("j1"))?.events).toEqual([note("e1")]);
    await store.close();
  });
});

describe("pictures in the SQLite file", () => {
  const pixels = { type: "image/png", data: Uint8Array.of(0x89, 0x50, 7) } as const;

  it("have their bytes on the disk once, whether a job or a board shows them", async () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    const store = new SqliteJobStore(connection, steppingClock());
    await store.createJob(newJob("j1"));
    await store.addPicture("j1", { id: "front", ...pixels });
    await store.albums.keepPicture({ id: "p1", ...pixels });
    expect(connection.all("SELECT count(*) AS kept FROM picture_content", [])).toEqual([{ kept: 1 }]);
    expect(() => connection.exec("DELETE FROM picture_content")).toThrow(/not deleted/);
    await store.close();
  });

  it("of a file from before are still the job's, and stand before those that came since", async () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    migrate(connection, steppingClock(), SCHEMA_STEPS.slice(0, 3));
    connection.run("INSERT INTO job VALUES ('j1', 't', NULL, 'b', '{}', '2026')", []);
    connection.run("INSERT INTO picture (job, id, type, data, received_at) VALUES ('j1', 'old', ?, ?, '')", [
      pixels.type,
      pixels.data,
    ]);
    const store = new SqliteJobStore(connection, steppingClock());
    await store.addPicture("j1", { id: "new", ...pixels });
    expect((await store.readJob("j1"))?.pictures.map(({ id }) => id)).toEqual(["old", "new"]);
    expect(await store.readPicture("j1", "old")).toEqual({ id: "old", ...pixels });
    expect(await store.addPicture("j1", { id: "old", ...pixels })).toMatchObject({ added: 0, length: 2 });
    await store.close();
  });
});

describe("the schema", () => {
  it("takes up where an older file stopped, keeping what it held", async () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    const store = new SqliteJobStore(connection, steppingClock());
    await store.createJob(newJob("j1"));
    migrate(connection, steppingClock(), [...SCHEMA_STEPS, "CREATE TABLE later (x TEXT) STRICT"]);
    expect(connection.all("SELECT step FROM schema_step", [])).toHaveLength(SCHEMA_STEPS.length + 1);
    expect(connection.all("SELECT * FROM later", [])).toEqual([]);
    expect(await store.readJob("j1")).not.toBeNull();
    await store.close();
  });

  it("leaves a file alone that a newer program wrote, and says so", () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    migrate(connection, steppingClock(), [...SCHEMA_STEPS, "CREATE TABLE later (x TEXT) STRICT"]);
    expect(() => migrate(connection, steppingClock())).toThrow(/newer Faultwright/);
    connection.close();
  });

  it("keeps nothing of a step that failed half way", () => {
    const connection = openConnection(join(freshFolder(), "jobs.sqlite"));
    const broken = [...SCHEMA_STEPS, "CREATE TABLE half (x TEXT) STRICT; CREATE TABLE half (x TEXT) STRICT"];
    expect(() => migrate(connection, steppingClock(), broken)).toThrow();
    expect(connection.all("SELECT name FROM sqlite_master WHERE name = 'half'", [])).toEqual([]);
    migrate(connection, steppingClock());
    connection.close();
  });
});
