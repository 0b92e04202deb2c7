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

  it("refuses a drawer with a row that cannot be read, and names it", async () => {
    const file = folder.file("job.json", SMALL_JOB);
    const drawer = folder.file("drawer.csv", DRAWER.replace("800V", "800A"));
    expect(await refusal("next", file, "--stock", drawer)).toContain(
      'drawer.csv: line 2: volts: "800A": expected voltage in V',
    );
    expect(await refusal("next", file, "--stock", join(file, "nowhere.csv"))).toContain("nowhere.csv");
  });
});
