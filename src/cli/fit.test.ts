import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";
import { run } from "./run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
let job: string;
beforeEach(() => {
  folder = freshFolder();
  job = folder.file("job.json", SMALL_JOB);
});
afterEach(() => folder.remove());

const DRAWER = `name,kind,volts,amps,surgeAmps,meltingAmps2Seconds,package,pinOrder,count,place,price,donor
BR8,bridge,600V,10A,200A,170,GBU,+ ~ ~ -,4,drawer 3,1.20,
BR8,,,,,,,,1,,0,heat pump 12
BR4,bridge,400V,10A,200A,170,GBU,+ ~ ~ -,9,drawer 3,0.40,
`;

describe("fit", () => {
  it("ranks what lies in the drawer by what the place asks, and says why the rest will not do", async () => {
    const drawer = folder.file("drawer.csv", DRAWER);
    const { code, out, err } = await ran("fit", job, "BR1", drawer, "--original", "BR8", "--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({ part: "BR1", role: "bridge", original: "BR8", kind: "bridge" });
    const own = answer.offers.filter(({ inHouse }: { inHouse: boolean }) => inHouse);
    expect(own.map(({ name, fits, used }: Record<string, unknown>) => [name, fits, used])).toEqual([
      ["BR8", "fits", false],
      ["BR8", "fits with conditions", true],
      ["BR4", "no", false],
    ]);
    expect(own[2].findings[0]).toMatchObject({
      rule: "reverse voltage of a diode",
      says: "bars",
      mark: "common practice",
    });
    expect(answer.rules.map(({ wants }: { wants: string }) => wants)).toContain("voltage at least 600 V");
    expect(answer.incoming[0].do).toBe("marking and legs");
  });

  it("tells a person the rules, the offers and the two minutes before", async () => {
    const { out } = await ran("fit", job, "BR1", folder.file("drawer.csv", DRAWER));
    expect(out).toMatch(/^BR1: bridge/);
    expect(out).toMatch(/What it must hold to here:[\s\S]*surge current at least the original's/);
    expect(out).toMatch(/1\. BR8: fits with conditions; 4 in drawer 3, 1\.2/);
    expect(out).toMatch(/look up for the original: surge current, I2t/);
    expect(out).toMatch(/What will not:[\s\S]*voltage 400 V, original 600 V/);
    expect(out).toMatch(/Side by side[^\n]*\n +original +BR8 +BR4 +GBPC1506/);
    expect(out).toMatch(/voltage +600 V +600 V +NO 400 V/);
    expect(out).toMatch(/two minutes:[\s\S]*each 0\.2 to 0\.8 V \(seen: Cigweld/);
  });

  it("sets a candidate beside the original, by name or as it is typed", async () => {
    const typed = await ran(
      "fit",
      job,
      "C1",
      "--candidate",
      "capacitor; type electrolytic; volts 450V; farads 680u; degC 85",
    );
    expect(typed.code).toBe(0);
    expect(typed.out).toMatch(/the candidate: no/);
    expect(typed.out).toMatch(/capacitance +330 uF +680 uF/);
    expect(typed.out).toMatch(/NO bus capacitance: .*Said: "a bigger bus capacitor is better": it is wrong/);
    expect(typed.out).toMatch(/NO 105 degC/);
    const byName = await ran("fit", job, "BR1", "--candidate", "gbpc2506", "--json");
    expect(JSON.parse(byName.out).offers).toHaveLength(1);
  });

  it("names what it was not told rightly", async () => {
    expect(await refusal("fit", job, "BR2")).toContain('the board has no part "BR2"; did you mean "BR1"?');
    expect(await refusal("fit", job, "BR1", "--original", "1N4008")).toContain(
      '--original: the catalogue has no "1N4008"; did you mean',
    );
    expect(await refusal("fit", job, "BR1", "--candidate", "1N4007")).toContain(
      "1N4007 is a diode, and BR1 a bridge",
    );
    expect(await refusal("fit", job, "C1", "--candidate", "capacitor; vlots 5V")).toContain(
      '"vlots" is no rating; did you mean "volts"?',
    );
    const bad = folder.file("bad.csv", "name,kind,volts\nA,bridge,5A\nB,bridge,6A\n");
    expect(await refusal("fit", job, "BR1", bad)).toContain(
      'bad.csv: line 2: volts: "5A": expected voltage in V; 1 more row is refused',
    );
  });
});

describe("catalogue", () => {
  const rows = (bad: (at: number) => boolean) =>
    Array.from({ length: 20_000 }, (_, at) => `part ${at},igbt,${bad(at) ? "600A" : "600V"},1\n`).join("");
  const HEAD = "name,kind,volts,count\n";

  it("check tells every bad row of 20 000 with its line and reason, and ends as bad input", async () => {
    const file = folder.file("big.csv", HEAD + rows((at) => at % 40 === 7));
    const { code, out } = await ran("catalogue", "check", file);
    expect(code).toBe(2);
    const lines = out.trimEnd().split("\n");
    expect(lines).toHaveLength(501);
    expect(lines[0]).toBe('line 9 (part 7): volts: "600A": expected voltage in V');
    expect(lines.at(-1)).toBe("20000 rows: 19500 can be read, 500 cannot");

    // a person sees it go on, and what it takes; a script reads that in the answer
    const io = { ...capturedIo(), isTerminal: true };
    expect(await run(["catalogue", "check", file], io)).toBe(2);
    expect(io.said.err).toMatch(
      /\r250 of 20000 rows read[\s\S]*\r20000 of 20000 rows read, \d+ MB of memory in use\n$/,
    );
    const into = join(folder.path, "stock.csv");
    const told = JSON.parse((await ran("catalogue", "import", file, "--into", into, "--json")).out);
    expect(told).toMatchObject({ rows: 20_000, new: 19_500, written: false });
    expect(told.refused).toHaveLength(500);
    expect(told.memoryMegabytes).toBeGreaterThan(10);
    expect(existsSync(into)).toBe(false);
  });

  it("import takes in all rows or none, and a dry run writes nothing", async () => {
    const into = join(folder.path, "stock.csv");
    const bad = folder.file("bad.csv", HEAD + rows((at) => at === 19_999));
    expect((await ran("catalogue", "import", bad, "--into", into)).code).toBe(2);
    expect(existsSync(into)).toBe(false);

    const good = folder.file("good.csv", `${HEAD}A,igbt,600V,2\n1N4007,,,50\n`);
    const dry = await ran("catalogue", "import", good, "--into", into, "--dry-run");
    expect(dry.out).toBe(
      "line 2 (A): new\nline 3 (1N4007): new\n2 rows: 2 new, 0 changed, 0 as they were, 0 refused; nothing was written\n",
    );
    expect(existsSync(into)).toBe(false);

    expect((await ran("catalogue", "import", good, "--into", into)).code).toBe(0);
    const after = readFileSync(into, "utf8");
    expect(after).toContain("A,igbt,2,600");
    const changed = folder.file("changed.csv", `${HEAD}A,igbt,600V,1\n`);
    expect((await ran("catalogue", "import", changed, "--into", into, "--json")).out).toContain(
      '"fate":"changed"',
    );
    // a bad row later leaves the stock as it was
    const before = readFileSync(into, "utf8");
    await ran("catalogue", "import", bad, "--into", into);
    expect(readFileSync(into, "utf8")).toBe(before);
  });

  it("export gives a file that check accepts", async () => {
    const { out } = await ran("catalogue", "export");
    expect(out).toMatch(/^name,kind/);
    const { code, out: checked } = await ran("catalogue", "check", folder.file("standard.csv", out));
    expect({ code, checked }).toEqual({
      code: 0,
      checked: expect.stringMatching(/^(\d+) rows: \1 can be read, 0 cannot\n$/),
    });
  });

  it("says in one line what is wrong with a file that has no rows to read", async () => {
    expect(await refusal("catalogue", "check", folder.file("empty.csv", ""))).toContain("it is empty");
    expect(await refusal("catalogue", "check", folder.file("odd.csv", "volts\n5V\n"))).toContain(
      'there is no column "name"',
    );
    expect(await refusal("catalogue", "check", join(folder.path, "none.csv"))).toContain(
      "there is no such file",
    );
  });
});
