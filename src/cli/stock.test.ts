import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";
import { type Folder, freshFolder, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

const DRAWER = "name,kind,volts,amps,count,place,price\nB12,bridge,800V,12A,4,drawer 2,1.1\n";
const EMPTY = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0 };
/** The bridge reads shorted in all four of its junctions. */
const SHORTED = [
  ["L", "N"],
  ["LF", "PBUS"],
  ["NBUS", "LF"],
  ["N", "PBUS"],
  ["NBUS", "N"],
].map(([red, black]) => ({ do: "measure", mode: "diode", red, black, reading: 0.001 }));

/** Behind it all is well. */
const GOOD_BUS = { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS", reading: 210e3 };

describe("next --stock", () => {
  it("counts with what lies in the drawer, says so, and writes nothing of it into the job", async () => {
    const log = [EMPTY, ...SHORTED];
    const file = folder.file("job.json", { ...SMALL_JOB, terms: { waitCost: 8 }, log });
    const before = readFileSync(file, "utf8");
    const ask = async (...more: string[]) => JSON.parse((await ran("next", file, "--json", ...more)).out);
    const [without, withDrawer] = [await ask(), await ask("--stock", folder.file("drawer.csv", DRAWER))];
    const bridge = (answer: {
      action: object;
      others: readonly { action: object; money: number }[];
      money: number;
    }) =>
      [answer, ...answer.others].find(({ action }) =>
        JSON.stringify(action).includes('"replace","part":"BR1"'),
      );
    expect(bridge(without)?.money).toBe(3.9);
    expect(bridge(withDrawer)?.money).toBe(1.1);
    expect(readFileSync(file, "utf8")).toBe(before);
  });

  it("asks for the two minutes before a pulled part goes in, each reading as it is typed, and how it goes onto its heatsink", async () => {
    const pulled = folder.file(
      "pulled.csv",
      DRAWER.replace("price\n", "price,used\n").replace("1.1\n", "1.1,yes\n"),
    );
    const log = [EMPTY, ...SHORTED, { do: "remove", part: "BR1" }, GOOD_BUS];
    const read = { do: "incoming", part: "BR1", mode: "diode", red: "minus", black: "ac1", reading: 0.46 };
    const ask = async (events: readonly object[]) => {
      const file = folder.file("pulled.json", { ...SMALL_JOB, terms: { waitCost: 8 }, log: events });
      return (await ran("next", file, "--stock", pulled)).out;
    };
    const told = await ask(log);
    expect(told).toContain("For BR1 B12 lies at hand, pulled: read it in the hand before it goes in.");
    expect(told).toMatch(/Two minutes before it goes in, a pulled part above all:\n {4}marking and legs/);
    expect(told).toMatch(/incoming BR1 diode minus ac1 +0\.20 V to 0\.80 V\n/);
    expect(told).toMatch(/cold re-check after soldering .* compared with them/);
    expect(told).toMatch(/Onto its heatsink[\s\S]*solder now[\s\S]*Distances: lead ends at most 2\.5 mm/);
    expect(await ask([...log, read])).toMatch(/incoming BR1 diode minus ac1 +0\.20 V to 0\.80 V +read 0\.46/);
  });

  it("refuses a drawer with a row that cannot be read, and names it", async () => {
    const file = folder.file("job.json", SMALL_JOB);
    const drawer = folder.file("drawer.csv", DRAWER.replace("800V", "800A"));
    expect(await refusal("next", file, "--stock", drawer)).toContain(
      'drawer.csv: line 2: volts: "800A": expected voltage in V',
    );
    expect(await refusal("next", file, "--stock", join(file, "nowhere.csv"))).toContain("nowhere.csv");
  });
});
