/** A closed job becomes somebody's practice: worked blind, answered from the log and from what was found, then laid beside it. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_BOARD } from "../small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

async function ran(argv: readonly string[], typed: readonly string[] = []) {
  const io = capturedIo(typed);
  const code = await run(argv, io);
  return { code, ...io.said };
}
const at = (name: string) => join(folder.path, name);
const json = (name: string) => JSON.parse(readFileSync(at(name), "utf8"));

const RECORDED = [
  { do: "note", text: "canary7731 rang", who: "canary7731" },
  { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.4, who: "canary7731" },
  { do: "measure", mode: "ohms", red: "L", black: "LF", reading: "OL", at: "2026-03-04T10:00:00Z" },
  { do: "look", part: "F1", finding: "burnt" },
  { do: "replace", part: "F1", with: "canary7731", price: 2 },
  { do: "close", verdict: "repaired" },
];

describe("a case to practise on", () => {
  it("is shown first, holds nobody's words, answers as the recorded board did, and lays the ways side by side", async () => {
    const job = folder.file("job.json", {
      format: "faultwright-job/1",
      board: SMALL_BOARD,
      cause: "surge",
      symptom: "dead",
      log: RECORDED,
    });
    const shown = await ran(["teach", job]);
    expect(shown.code).toBe(0);
    expect(shown.out).toMatch(/^title: A case of .*\nfound: F1 open\nentries kept: 5 of 6;/);
    expect((await ran(["teach", job, at("case.json"), "--title", "A rectifier"])).code).toBe(0);
    const text = readFileSync(at("case.json"), "utf8");
    expect(text).not.toContain("canary7731");
    expect(text).not.toContain("2026");
    const again = await ran(["teach", job, at("case.json")]);
    expect([again.code, again.err]).toEqual([2, expect.stringMatching(/there is such a file already/)]);

    const asked = Array.from({ length: 40 }, () => "ask");
    await ran(["bench", at("mine.json"), "--case", at("case.json")], asked);
    const mine = json("mine.json");
    expect(mine.board.name).toBe("A rectifier");
    expect(mine.log.at(-1)).toMatchObject({ do: "close", verdict: "repaired" });
    // The recorded board had 0.4 V left on its capacitor: so has the apprentice's.
    const first = mine.log.find((event: { mode?: string }) => event.mode === "dcv");
    expect(first).toMatchObject({ red: "C1.plus", black: "C1.minus", reading: 0.4 });
    // A reading that was not recorded comes from the found fault: the fuse is open.
    expect(
      mine.log.some((event: { do: string; part?: string }) => event.do === "replace" && event.part === "F1"),
    ).toBe(true);

    const compared = await ran(["compare", at("case.json"), at("mine.json"), "--print", at("case.html")]);
    expect(compared.code).toBe(0);
    expect(compared.out).toMatch(/^A rectifier\nFound: F1 open\n/);
    expect(compared.out).toMatch(/\n {2}1 yours {5}.*\n {2}1 recorded .*\n {2}1 proposed /);
    expect(compared.out).toMatch(/replace .*F1.*2\.00 EUR/i);
    // 0.4 for each of two readings, 0.2 for the look, 10 for the exchange
    expect(compared.out).toMatch(/\nsum recorded {2}5 steps, 11 min, 2\.00 EUR\n/);
    const page = readFileSync(at("case.html"), "utf8");
    expect(page).toMatch(/@media print/);
    expect(page).toContain("<th>yours</th><th>recorded</th><th>proposed</th>");
    expect(page).not.toMatch(/<script|https?:/);
    const figures = page.match(/<figure>.*?<\/figure>/gs) ?? [];
    expect(figures).toHaveLength(3);
    for (const figure of figures) expect(figure).toMatch(/class="found"[^>]*><title>F1</);
    // the first reading of the recorded way stands at the capacitor, with the third step's look and the fourth's exchange at the fuse
    expect(figures[1]).toMatch(/>1<\/text>/);
    expect(figures[1]).toMatch(/>3 4<\/text>/);
  });

  it("is refused where the job is open or found nothing, and where the file is no case", async () => {
    const open = folder.file("open.json", {
      format: "faultwright-job/1",
      board: SMALL_BOARD,
      cause: "surge",
      symptom: "dead",
      log: RECORDED.slice(0, -1),
    });
    const refused = await ran(["teach", open, at("case.json")]);
    expect([refused.code, refused.err]).toEqual([
      2,
      expect.stringMatching(/the job is still open: close it first/),
    ]);
    expect(existsSync(at("case.json"))).toBe(false);
    const wrong = await ran(["compare", open]);
    expect([wrong.code, wrong.err]).toEqual([
      2,
      expect.stringMatching(/open\.json: format: expected "faultwright-case\/1"/),
    ]);
    const none = await ran(["bench", at("new.json"), "--case", open]);
    expect(none.code).toBe(2);
    expect(existsSync(at("new.json"))).toBe(false);
  });
});
