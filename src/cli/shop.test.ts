import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { KeptEvent } from "../job/job-store.ts";
import { openSqliteStore } from "../store/sqlite/open-store.ts";
import { counting, someDiodes } from "../store/stock-store.contract.ts";
import { ran, refusal } from "./ran.fixture.ts";
import { type Folder, freshFolder, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
let data: string;
beforeEach(() => {
  folder = freshFolder();
  data = join(folder.path, "data");
});
afterEach(() => folder.remove());

describe("shop", () => {
  it("keeps the terms that the page begins jobs with, and the same figures come back", async () => {
    expect((await ran("shop", "--data", data)).out).toMatch(
      /no name is kept[\s\S]*ratePerHour +30 +as usual/,
    );
    const set = ["ratePerHour=45", "taxRate=0.2", "boardStays=yes", "name=Bench 4, Mill Lane"];
    expect((await ran("shop", "set", ...set, "--data", data)).out).toMatch(
      /Bench 4, Mill Lane[\s\S]*ratePerHour +45 +the shop's/,
    );
    const store = openSqliteStore(data, () => "2026-01-01T00:00:00.000Z");
    expect(await store.readShop()).toEqual({
      name: "Bench 4, Mill Lane",
      terms: { ratePerHour: 45, taxRate: 0.2, boardStays: true },
    });
    await store.keepShop({ name: "Bench 5", terms: { ratePerHour: 50, taxRate: 0.2 } });
    await store.close();
    expect(JSON.parse((await ran("shop", "show", "--json", "--data", data)).out)).toEqual({
      name: "Bench 5",
      terms: { ratePerHour: 50, taxRate: 0.2 },
    });
    await ran("shop", "set", "taxRate=", "--data", data);
    expect(JSON.parse((await ran("shop", "show", "--json", "--data", data)).out).terms).toEqual({
      ratePerHour: 50,
    });
  });

  it("tells what its own comebacks cost for each repair, and the figure stays when it is set", async () => {
    const store = openSqliteStore(data, () => "2026-01-01T00:00:00.000Z");
    const { log: _, ...header } = SMALL_JOB as typeof SMALL_JOB & { readonly log?: unknown };
    const close = { do: "close", id: "c", verdict: "repaired" } as const;
    const keep = (id: string, more: object, events: readonly KeptEvent[]) =>
      store.createJob({ id, title: id, practice: null, header: { ...header, ...more }, events });
    await keep("first", {}, [close]);
    // ten minutes at 30 an hour, and a part of 7
    const again = { do: "replace", id: "r", part: "C1", price: 7 } as const;
    await keep("again", { comebackOf: { job: "first", reason: "same-fault" } }, [again]);
    await store.close();
    // 7.5 % of 30 counts for twenty repairs, then 12 over one more
    const cost = ((20 * 0.075 * 30 + 12) / 21).toFixed(2);
    expect((await ran("shop", "--data", data)).out).toContain(
      `1 repaired, 1 came back: ${cost} EUR for each repair`,
    );
    const set = await ran("shop", "set", `warrantyCost=${cost}`, "--data", data);
    expect(set.out).toContain(`1 repaired, 1 came back: ${cost} EUR for each repair`);
  });

  it("refuses a setting that is none, or a value that is wrong, and keeps what was there", async () => {
    await ran("shop", "set", "ratePerHour=45", "--data", data);
    expect(await refusal("shop", "set", "ratePerHuor=4", "--data", data)).toMatch(/ratePerHour/);
    expect(await refusal("shop", "set", "ratePerHour", "--data", data)).toMatch(/such as ratePerHour=45/);
    expect(await refusal("shop", "set", "ratePerHour=much", "--data", data)).toMatch(
      /^terms\.ratePerHour: .*nothing was kept/,
    );
    expect(JSON.parse((await ran("shop", "show", "--json", "--data", data)).out).terms).toEqual({
      ratePerHour: 45,
    });
  });

  it("goes into a job file that has no terms, which is then summed at the shop's rate, and into no other", async () => {
    const { terms: _, ...bare } = { terms: undefined, ...SMALL_JOB };
    const file = folder.file("job.json", bare);
    expect(await refusal("shop", "into", file, "--data", data)).toMatch(/set no terms yet/);
    await ran("shop", "set", "ratePerHour=60", "--data", data);
    expect((await ran("shop", "into", file, "--data", data)).code).toBe(0);
    expect(JSON.parse(readFileSync(file, "utf8"))).toEqual({ ...bare, terms: { ratePerHour: 60 } });
    expect(await refusal("shop", "into", file, "--data", data)).toMatch(/terms: are there already/);
  });

  it("hands out the page's parts drawer as a catalogue file", async () => {
    expect(await refusal("catalogue", "export", "--drawer", "--data", data)).toMatch(/nothing is kept there/);
    const store = openSqliteStore(data, () => "2026-01-01T00:00:00.000Z");
    await store.countStock(counting(someDiodes(50)));
    await store.close();
    expect((await ran("catalogue", "export", "--drawer", "--data", data)).out).toBe(
      "name,kind,count,place,price,supplier,volts\n1N4007,diode,50,strip 2,0.05,a wholesaler,1000\n",
    );
  });
});
