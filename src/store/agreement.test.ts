import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { newJob, note, steppingClock } from "./job-store.contract.ts";
import { MemoryJobStore } from "./memory/memory-job-store.ts";
import { openSqliteStore } from "./sqlite/open-store.ts";
import { counting, fitting, someDiodes } from "./stock-store.contract.ts";

const job = fc.constantFrom("j1", "j2", "j3");
const event = fc
  .tuple(fc.constantFrom("a", "b", "c", "d", "toString"), fc.constantFrom("one", "two"))
  .map(([id, text]) => note(id, text));
const call = fc.oneof(
  fc.record({
    call: fc.constant("create" as const),
    job,
    title: fc.constantFrom("t", "u"),
    events: fc.array(event),
  }),
  fc.record({ call: fc.constant("append" as const), job, events: fc.array(event), accepted: fc.boolean() }),
  fc.record({ call: fc.constant("picture" as const), job, id: fc.constantFrom("p", "q"), byte: fc.nat(1) }),
  fc.record({ call: fc.constant("list" as const) }),
  fc.record({ call: fc.constant("count" as const), count: fc.nat(2) }),
  fc.record({ call: fc.constant("shop" as const), name: fc.constantFrom("one", "two") }),
  fc.record({ call: fc.constant("fit" as const), job, id: fc.constantFrom("f1", "f2") }),
  fc.record({ call: fc.constant("undo" as const), job, of: fc.constantFrom("f1", "f2") }),
);

describe("both stores", () => {
  it("answer alike, whatever is asked of them in whatever order", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(call, { maxLength: 25 }), async (calls) => {
        const folder = mkdtempSync(join(tmpdir(), "faultwright-agree-"));
        const stores = [
          new MemoryJobStore(steppingClock()),
          openSqliteStore(folder, steppingClock()),
        ] as const;
        try {
          for (const one of calls) {
            const [memory, sqlite] = await Promise.all(
              stores.map((store) => {
                if (one.call === "list") return store.listJobs();
                if (one.call === "create") {
                  return store.createJob(newJob(one.job, { title: one.title, events: one.events }));
                }
                if (one.call === "append") {
                  return store.appendEvents(one.job, one.events, () => (one.accepted ? null : "no"));
                }
                if (one.call === "count") return store.countStock(counting(someDiodes(one.count)));
                if (one.call === "shop") {
                  return store
                    .keepShop({ name: one.name, terms: { ratePerHour: 4 } })
                    .then(() => store.readShop());
                }
                if (one.call === "fit") return store.appendEvents(one.job, [fitting(one.id)], () => null);
                if (one.call === "undo") {
                  const undo = { do: "undo", id: `undo-${one.of}`, of: one.of } as const;
                  return store.appendEvents(one.job, [undo], () => null);
                }
                return store.addPicture(one.job, {
                  id: one.id,
                  type: "image/png",
                  data: Uint8Array.of(one.byte),
                });
              }),
            );
            expect(withoutTimes(sqlite)).toEqual(withoutTimes(memory));
          }
          for (const id of ["j1", "j2", "j3"]) {
            const [memory, sqlite] = await Promise.all(stores.map((store) => store.readJob(id)));
            expect(withoutTimes(sqlite)).toEqual(withoutTimes(memory));
          }
          const [inMemory, inFile] = await Promise.all(stores.map((store) => store.readShop()));
          expect(inFile).toEqual(inMemory);
          const [memory, sqlite] = await Promise.all(stores.map((store) => store.readStock()));
          expect(sqlite?.lines()).toEqual(memory?.lines());
        } finally {
          for (const store of stores) await store.close();
          rmSync(folder, { recursive: true, force: true });
        }
      }),
      { seed: 4517, numRuns: 40 },
    );
  }, 60_000);
});

/** SQLite's setting up looks at the clock once, so the two clocks differ by a step; the order of changes must not. */
function withoutTimes(answer: unknown): unknown {
  return JSON.parse(
    JSON.stringify(answer, (key, value: unknown) =>
      key === "createdAt" || key === "changedAt" ? null : value,
    ),
  );
}
