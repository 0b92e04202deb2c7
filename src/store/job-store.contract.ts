/** What `job/job-store.ts` promises, asked of every store alike. */
import { describe, expect, it } from "vitest";
import type { Clock, JobStore, KeptEvent, NewJob, Picture } from "../job/job-store.ts";

/** A job's header as short as the store needs it: the store never looks inside beyond the board's name. */
export function newJob(id: string, changes: Partial<NewJob> = {}): NewJob {
  return {
    id,
    title: "fan drive, thunderstorm",
    practice: null,
    header: { format: "faultwright-job/1", board: { name: "greenhouse fan drive" }, cause: "surge" },
    events: [],
    ...changes,
  };
}

export function note(id: string, text = id): KeptEvent {
  return { do: "note", id, text };
}

export const ACCEPT_ALL = (): null => null;

/** A clock that moves one second at each look. */
export function steppingClock(): Clock {
  let seconds = 0;
  return () => new Date(Date.UTC(2026, 0, 1) + 1000 * seconds++).toISOString();
}

const PIXELS: Picture = { id: "front", type: "image/png", data: Uint8Array.of(0x89, 0x50, 0, 255) };

export function jobStoreContract(name: string, open: (clock: Clock) => JobStore | Promise<JobStore>): void {
  describe(`${name} keeps jobs`, () => {
    const withStore = async (use: (store: JobStore) => Promise<void>) => {
      const store = await open(steppingClock());
      try {
        await use(store);
      } finally {
        await store.close();
      }
    };

    it("gives back what was created", () =>
      withStore(async (store) => {
        const job = newJob("j1", { practice: { seed: 7 }, events: [note("e1")] });
        expect(await store.createJob(job)).toEqual({ ok: true, added: 1, length: 1 });
        const kept = await store.readJob("j1");
        expect(kept).toMatchObject({ id: "j1", title: job.title, practice: { seed: 7 }, header: job.header });
        expect(kept?.events).toEqual([note("e1")]);
        expect(kept?.pictures).toEqual([]);
      }));

    it("knows no job that was never created", () =>
      withStore(async (store) => {
        expect(await store.readJob("nobody")).toBeNull();
        expect(await store.readPicture("nobody", "front")).toBeNull();
        expect(await store.appendEvents("nobody", [note("e1")], ACCEPT_ALL)).toMatchObject({
          ok: false,
          kind: "no-such-job",
        });
        expect(await store.addPicture("nobody", PIXELS)).toMatchObject({ ok: false, kind: "no-such-job" });
      }));

    it("takes the same job twice as one, and another job under its id as a conflict", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        await store.appendEvents("j1", [note("e1")], ACCEPT_ALL);
        expect(await store.createJob(newJob("j1"))).toEqual({ ok: true, added: 0, length: 1 });
        expect(await store.createJob(newJob("j1", { title: "another" }))).toMatchObject({ kind: "conflict" });
        expect(await store.createJob(newJob("j1", { events: [note("e9")] }))).toMatchObject({
          kind: "conflict",
        });
        expect((await store.readJob("j1"))?.events).toEqual([note("e1")]);
      }));

    it("adds nothing for events posted again, whatever the order of their fields", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        const first: KeptEvent = {
          do: "measure",
          id: "m1",
          mode: "diode",
          red: "P",
          black: "N",
          reading: "zero",
        };
        const again = {
          reading: "zero",
          black: "N",
          red: "P",
          mode: "diode",
          id: "m1",
          do: "measure",
        } as KeptEvent;
        expect(await store.appendEvents("j1", [first], ACCEPT_ALL)).toEqual({
          ok: true,
          added: 1,
          length: 1,
        });
        expect(await store.appendEvents("j1", [again], ACCEPT_ALL)).toEqual({
          ok: true,
          added: 0,
          length: 1,
        });
        expect(await store.appendEvents("j1", [again, note("e2"), note("e2")], ACCEPT_ALL)).toEqual({
          ok: true,
          added: 1,
          length: 2,
        });
      }));

    it("refuses a known id with other content, and then keeps nothing of that post", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1", { events: [note("e1", "one")] }));
        const refused = await store.appendEvents("j1", [note("e2"), note("e1", "other")], ACCEPT_ALL);
        expect(refused).toMatchObject({ ok: false, kind: "conflict" });
        expect((await store.readJob("j1"))?.events).toEqual([note("e1", "one")]);
      }));

    it("keeps events in the order of arrival, across posts and jobs", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        await store.createJob(newJob("j2"));
        await store.appendEvents("j1", [note("b"), note("a")], ACCEPT_ALL);
        await store.appendEvents("j2", [note("b")], ACCEPT_ALL);
        await store.appendEvents("j1", [note("0")], ACCEPT_ALL);
        expect((await store.readJob("j1"))?.events.map((event) => event.id)).toEqual(["b", "a", "0"]);
        expect((await store.readJob("j2"))?.events.map((event) => event.id)).toEqual(["b"]);
      }));

    it("shows the whole log to the judge, and keeps nothing that it refuses", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1", { events: [note("e1")] }));
        const seen: string[][] = [];
        const refused = await store.appendEvents("j1", [note("e1"), note("e2")], (_header, log) => {
          seen.push(log.map((event) => event.id));
          return "log[1]: no";
        });
        expect(refused).toEqual({ ok: false, kind: "not-accepted", problem: "log[1]: no" });
        expect(seen).toEqual([["e1", "e2"]]);
        expect((await store.readJob("j1"))?.events).toEqual([note("e1")]);
      }));

    it("does not let a caller change what is kept through the objects it holds", () =>
      withStore(async (store) => {
        const text = { do: "note", id: "e1", text: "before" } as { do: "note"; id: string; text: string };
        await store.createJob(newJob("j1"));
        await store.appendEvents("j1", [text], ACCEPT_ALL);
        text.text = "after";
        const read = await store.readJob("j1");
        expect(read?.events).toEqual([note("e1", "before")]);
        (read?.events as KeptEvent[] | undefined)?.pop();
        expect((await store.readJob("j1"))?.events).toHaveLength(1);
      }));

    it("lists a job as closed from its close on, and as open again once that is undone", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        const verdict = async () => (await store.listJobs())[0]?.verdict;
        expect(await verdict()).toBeNull();
        const close = { do: "close", verdict: "repaired", id: "c1" } as const;
        await store.appendEvents("j1", [note("e1"), close], ACCEPT_ALL);
        expect(await verdict()).toBe("repaired");
        await store.appendEvents("j1", [{ do: "undo", of: "c1", id: "u1" }], ACCEPT_ALL);
        expect(await verdict()).toBeNull();
        await store.appendEvents("j1", [{ do: "undo", of: "u1", id: "u2" }], ACCEPT_ALL);
        expect(await verdict()).toBe("repaired");
      }));

    it("lists whose a job is, what was fitted in it and what it waits for, until a hand is on it again", () =>
      withStore(async (store) => {
        const whose = { customer: "the lower greenhouse", unit: "vent fan 3" };
        await store.createJob(newJob("j1", { header: { ...newJob("j1").header, ...whose } }));
        const line = async () => (await store.listJobs())[0];
        expect(await line()).toMatchObject({ ...whose, waiting: null, fitted: [] });
        const at = "2026-03-02T17:30:00Z";
        await store.appendEvents(
          "j1",
          [
            { do: "replace", part: "F1", with: "10 A slow", id: "f" },
            { do: "replace", part: "Q1", id: "q" },
            { do: "undo", of: "q", id: "u" },
            { do: "wait", for: "part", what: "Q1", at, id: "w" },
            note("n"),
          ],
          ACCEPT_ALL,
        );
        const waiting = { for: "part", what: "Q1", since: at };
        expect(await line()).toMatchObject({ waiting, fitted: ["F1 10 A slow"] });
        await store.appendEvents("j1", [{ do: "look", part: "F1", finding: "clean", id: "l" }], ACCEPT_ALL);
        expect(await line()).toMatchObject({ waiting: null, fitted: ["F1 10 A slow"] });
      }));

    it("lists jobs with the latest change first", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        await store.createJob(newJob("j2", { title: "second" }));
        await store.appendEvents("j1", [note("e1")], ACCEPT_ALL);
        const listed = await store.listJobs();
        expect(listed.map((job) => [job.id, job.title, job.boardName, job.eventCount])).toEqual([
          ["j1", "fan drive, thunderstorm", "greenhouse fan drive", 1],
          ["j2", "second", "greenhouse fan drive", 0],
        ]);
        expect(listed[0]?.changedAt.localeCompare(listed[0].createdAt)).toBe(1);
        expect(listed[1]?.changedAt).toBe(listed[1]?.createdAt);
      }));

    it("tells what was done before on boards of a number or its family, practice and other boards left out", () =>
      withStore(async (store) => {
        const on = (name: string, family: string, changes: object = {}) => ({
          header: { board: { name, family }, cause: "surge", symptom: "dead", ...changes },
        });
        await store.createJob(newJob("first", on("PCB 12-A", "fan")));
        await store.createJob(newJob("cousin", on("PCB 12-B", "fan")));
        await store.createJob(newJob("other", on("PCB 77", "pump")));
        await store.createJob(newJob("played", { ...on("PCB 12-A", "fan"), practice: { seed: 1 } }));
        await store.createJob(
          newJob("again", on("PCB 12-A", "fan", { comebackOf: { job: "first", reason: "same-fault" } })),
        );
        const work: KeptEvent[] = [
          { do: "replace", part: "F1", id: "a" },
          { do: "replace", part: "Q1", id: "b" },
          { do: "undo", of: "b", id: "c" },
          { do: "clean", stage: "logic", id: "d" },
          { do: "close", verdict: "repaired", id: "e" },
        ];
        await store.appendEvents("first", work, ACCEPT_ALL);
        const told = await store.earlierJobs({ name: "PCB 12-A", family: "fan" });
        expect(told.map(({ id, sameBoard, cameBack }) => [id, sameBoard, cameBack])).toEqual([
          ["first", true, true],
          ["again", true, false],
          ["cousin", false, false],
        ]);
        expect(told[0]).toMatchObject({
          done: ["replace F1", "clean logic"],
          verdict: "repaired",
          cause: "surge",
        });
        expect(told[1]).toMatchObject({ done: [], verdict: null });
        expect(JSON.stringify(told)).not.toContain("thunderstorm");
        expect(await store.earlierJobs({ name: "nothing like it", family: "" })).toEqual([]);
      }));

    it("tells what a board had before under its earlier name, and not what another of its name now had", () =>
      withStore(async (store) => {
        const on = (board: object) => ({ header: { board, cause: "surge", symptom: "dead" } });
        await store.createJob(newJob("first", on({ name: "own board", family: "fan" })));
        await store.createJob(newJob("renamed", on({ name: "GF-12", identity: "own board", family: "fan" })));
        await store.createJob(newJob("other", on({ name: "GF-12", family: "pump" })));
        const asked = { name: "GF-12 rev C", identity: "own board", family: "fan" };
        const told = await store.earlierJobs(asked);
        expect(told.map(({ id, sameBoard }) => `${id} ${sameBoard}`).sort()).toEqual([
          "first true",
          "renamed true",
        ]);
      }));

    it("keeps pictures byte for byte, once each", () =>
      withStore(async (store) => {
        await store.createJob(newJob("j1"));
        expect(await store.addPicture("j1", PIXELS)).toEqual({ ok: true, added: 1, length: 1 });
        expect(await store.addPicture("j1", PIXELS)).toEqual({ ok: true, added: 0, length: 1 });
        const other = { ...PIXELS, data: Uint8Array.of(1) };
        expect(await store.addPicture("j1", other)).toMatchObject({ kind: "conflict" });
        expect(await store.readPicture("j1", "front")).toEqual(PIXELS);
        expect((await store.readJob("j1"))?.pictures).toEqual([{ id: "front", type: "image/png", bytes: 4 }]);
      }));

    it("keeps text that looks like SQL, prototypes or other scripts as text", () =>
      withStore(async (store) => {
        const odd = JSON.parse(
          `{"do":"note","id":"__proto__","text":"'); DROP TABLE event; -- \\u0000 Ω 🔧"}`,
        );
        await store.createJob(newJob("j1", { title: 'it\'s "odd"' }));
        await store.appendEvents("j1", [odd], ACCEPT_ALL);
        expect((await store.readJob("j1"))?.events).toEqual([odd]);
        expect((await store.readJob("j1"))?.title).toBe('it\'s "odd"');
      }));
  });
}
