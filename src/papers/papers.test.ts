import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { KNOWN_STAGES } from "../board/stages.ts";
import { AssessmentSession } from "../job/assess.ts";
import { billView } from "../job/bill-view.ts";
import type { Job } from "../job/job.ts";
import { parseJob } from "../job/parse-job.ts";
import { LANGUAGES, type Language } from "../messages/language.ts";
import { paperCatalogue } from "../messages/paper-catalogue.ts";
import { WORDS } from "../messages/words/en.ts";
import { CLOSED_JOB, CLOSED_LOG } from "./closed-job.fixture.ts";
import { makePaper } from "./make-paper.ts";
import type { Paper, PaperHead, PaperKind } from "./paper.ts";

const HEAD: PaperHead = {
  day: "2026-11-27",
  from: "The bench by the harbour",
  to: null,
  number: "2026-117",
  jobTitle: "Greenhouse 17",
  opens: "http://127.0.0.1:4517/#/job/demo",
  warranty: "90 days on parts and work.",
  pictures: 0,
  practice: false,
};

function jobOf(content: object): Job {
  const read = parseJob(content, null);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

const CLOSED = jobOf(CLOSED_JOB);
const session = new AssessmentSession();

async function paper(kind: PaperKind, language: Language = "en", job = CLOSED, head = HEAD): Promise<Paper> {
  const made = makePaper(kind, job, head, await paperCatalogue(language), session);
  if (!made.ok) throw new Error(made.problem);
  return made.value;
}

function textOf({ title, facts, blocks }: Paper): string {
  const cell = (one: string | { readonly text: string }) => (typeof one === "string" ? one : one.text);
  const lines = blocks.flatMap((block) => {
    if (block.block === "list" || block.block === "caution") return block.items;
    if (block.block === "table") return [...block.head, ...block.rows.flat().map(cell)];
    return [block.text];
  });
  return [title, ...facts.map(({ line }) => line), ...lines].join("\n");
}

describe("money on paper", () => {
  it("is the bill's to the last digit, in every language, whatever was fitted and agreed", async () => {
    const part = fc.constantFrom("F1", "BR1", "Q1", "C5");
    const price = fc.integer({ min: 0, max: 999_999 }).map((cents) => cents / 100);
    const terms = fc.record({
      currency: fc.constantFrom("EUR", "JPY", "TND"),
      ratePerHour: price,
      taxRate: fc.constantFrom(0, 0.0825, 0.2),
      partsMarkUp: fc.constantFrom(0, 0.25),
    });
    const catalogues = await Promise.all(LANGUAGES.map(({ language }) => paperCatalogue(language)));
    const latin = (text: string) =>
      text.replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660)).replace(/\D/g, "");
    fc.assert(
      fc.property(terms, fc.array(fc.tuple(part, price), { maxLength: 4 }), (given, fitted) => {
        const log = fitted.map(([ref, cost]) => ({ do: "replace", part: ref, price: cost }));
        const proof = CLOSED_LOG.slice(0, 6);
        const job = jobOf({ ...CLOSED_JOB, terms: given, log: [...proof, ...log] });
        const timeline = foldLog(job.board, job.absent, job.log);
        if (!timeline.ok) throw new Error(timeline.problem);
        const bill = billView(job, timeline.value);
        for (const catalogue of catalogues) {
          const made = makePaper("bill", job, HEAD, catalogue, session);
          const table = made.ok ? made.value.blocks.find((block) => block.block === "table") : undefined;
          const amounts = (table?.rows ?? []).map((row) => row.at(-1) ?? "");
          const tax = bill.taxPercent > 0 ? [bill.net, bill.tax] : [];
          const expected = [...bill.lines.map(({ amount }) => amount), ...tax, bill.total];
          expect(amounts.map((cell) => (typeof cell === "string" ? cell : cell.decimal))).toEqual(expected);
          expect(amounts.map((cell) => latin(typeof cell === "string" ? cell : cell.text))).toEqual(
            expected.map(latin),
          );
        }
      }),
      { seed: 5, numRuns: 25 },
    );
  });
});

describe("the report to the customer", () => {
  it("tells what was found and how sure, what was done, what is not proven, cautions, advice and the shop's warranty", async () => {
    const text = textOf(await paper("report"));
    for (const line of [
      "The board is repaired.",
      /bridge rectifier BR1: short circuit; certainty \d\d%/,
      /fuse F1: open circuit; certainty \d\d%/,
      "Replaced: bridge rectifier BR1, with GBJ2510",
      "Replaced with a used part: IGBT Q4",
      "Cleaned: inverter",
      "motor M1 did not come with the board and was not tested.",
      "The board was not run under load here.",
      "On the mains: every output works",
      /wait at least 15 minutes.*below 10 V before anything is touched/,
      "Have a surge protector fitted",
      "90 days on parts and work.",
    ])
      expect(text).toMatch(line);
    // volts that prove the board dead are the bench's business
    expect(text).not.toContain("C5.plus");
  });

  it("says of a board given up what is still wrong, and promises nothing", async () => {
    const log = [...CLOSED_LOG.slice(0, 14), { do: "close", verdict: "not-economic" }];
    const text = textOf(await paper("report", "en", jobOf({ ...CLOSED_JOB, log })));
    expect(text).toContain("A repair is not worth its cost.");
    expect(text).toMatch(/bridge rectifier BR1: short circuit; not ruled out/);
    expect(text).toContain("Nothing was changed on the board.");
    expect(text).not.toContain("was not run");
  });

  it("of a practice board says that it is practice", async () => {
    expect(textOf(await paper("label", "en", CLOSED, { ...HEAD, practice: true }))).toMatch(
      /^.*\n[\s\S]*Practice: this board does not exist/,
    );
  });
});

describe("the bench sheet", () => {
  it("sets each reading before and after against a good board, and stars what a good one would hardly show", async () => {
    const { blocks } = await paper("sheet");
    const table = blocks.find((block) => block.block === "table");
    const row = (red: string) => table?.rows.find((cells) => cells[1] === red);
    expect(row("L_B")).toEqual(["diode mode", "L_B", "PBUS, bus plus", "0.467 V", "0.000 V *", "0.460 V"]);
    expect(row("L_IN, mains")).toEqual(["continuity", "L_IN, mains", "L_F", "beep", "silent *", "beep"]);
    expect(row("N_C")?.slice(3)).toEqual(["0.467 V", "0.467 V", ""]);
  });
});

describe("the slip for the fitter", () => {
  it("says where plugs go, forbids plugging under power, and gives torque and what to send back", async () => {
    const made = await paper("slip");
    const text = textOf(made);
    for (const line of [
      "Never plug in or pull out the fan, the motor or any other plug while the unit has power.",
      "Bus plus and bus minus are never exchanged",
      "Motor plug: red U, white V, black W; 4.7 kΩ across J1",
      "The motor's readings, unplugged and proven dead",
    ])
      expect(text).toContain(line);
    const [plugs, torque] = made.blocks.filter((block) => block.block === "table");
    expect(plugs?.rows).toContainEqual(["motor M1", "v", "V, phase V"]);
    // the range that no maker's figure forbids: Sanken, ST and Infineon, as the table of torques has them
    expect(torque?.rows[0]).toEqual(["TO-220", "0.55 to 0.69"]);
  });
});

describe("the short message", () => {
  it("asks while the job is open, with price, cap and a new board's price", async () => {
    const open = jobOf({ ...CLOSED_JOB, log: CLOSED_LOG.slice(0, 14) });
    const text = textOf(await paper("message", "en", open));
    expect(text).toMatch(/Found: .*BR1/);
    expect(text).toMatch(/Repair: [\d.,]+ EUR, not above [\d.,]+ EUR without asking you again\./);
    expect(text).toContain("Please answer: repair, new board, or neither?");
    expect(text).not.toMatch(/margin|stop line/i);
  });

  it("of a closed job says what is to be paid", async () => {
    // 1140.50 agreed and a fifth of it
    expect(textOf(await paper("message"))).toContain("To pay: 1,368.60 EUR, tax included.");
  });
});

describe("the label", () => {
  it("bears a code with the job's address, and says that the board counts as charged", async () => {
    const made = await paper("label");
    expect(made.blocks).toContainEqual({ block: "code", content: HEAD.opens, text: "Scan to open the job" });
    expect(textOf(made)).toContain("Counts as charged until it has been measured.");
  });
});

describe("pictures of the job", () => {
  const captionsOn = async (kind: PaperKind, pictures: number) =>
    (await paper(kind, "en", CLOSED, { ...HEAD, pictures })).blocks.flatMap((block) =>
      block.block === "pictures" ? [block.captions] : [],
    );

  it("stand on report and slip with their numbers, the first one on the message, and nowhere where there are none", async () => {
    for (const kind of ["report", "slip"] as const)
      expect(await captionsOn(kind, 2)).toEqual([["Picture 1 of 2", "Picture 2 of 2"]]);
    expect(await captionsOn("message", 2)).toEqual([["Picture 1 of 2"]]);
    for (const kind of ["label", "sheet", "bill"] as const) expect(await captionsOn(kind, 2)).toEqual([]);
    expect(await captionsOn("report", 0)).toEqual([]);
  });

  it("are twelve at most, numbered so that one sees that there are more", async () => {
    const [captions] = await captionsOn("report", 30);
    expect([captions?.length, captions?.at(-1)]).toEqual([12, "Picture 12 of 30"]);
  });

  it("follow the plugs on the slip: they show where each one sat", async () => {
    const { blocks } = await paper("slip", "en", CLOSED, { ...HEAD, pictures: 1 });
    expect(blocks[blocks.findIndex(({ block }) => block === "table") + 1]?.block).toBe("pictures");
  });
});

describe("a part on the bill", () => {
  it("is named by what it is, its figures and what was fitted", async () => {
    const { blocks } = await paper("bill");
    const table = blocks.find((block) => block.block === "table");
    const words = table?.rows.map(([what]) => what) ?? [];
    expect(words).toContain("fuse F1, 10 A");
    expect(words.find((line) => String(line).includes("BR1"))).toBe("bridge rectifier BR1, GBJ2510");
    expect(words.find((line) => String(line).includes("Q4"))).toMatch(/^IGBT Q4, .*, pulled$/);
  });

  it("is written in the reader's form", async () => {
    const log = [...CLOSED_LOG.slice(0, 6), { do: "replace", part: "C3", price: 1 }];
    const { blocks } = await paper("bill", "es", jobOf({ ...CLOSED_JOB, log }));
    const table = blocks.find((block) => block.block === "table");
    expect(table?.rows.map(([what]) => what)).toContainEqual(
      expect.stringMatching(/^condensador C3, 3,3 nF, \d+ V$/),
    );
  });
});

describe("every paper", () => {
  it.each(["label", "sheet", "report", "slip", "message", "quote", "bill"] as const)(
    "%s holds no English in another language",
    async (kind) => {
      const free = new Set([
        "The bench by the harbour",
        "Greenhouse 17",
        "greenhouse fan drive",
        "90 days on parts and work",
      ]);
      for (const language of ["es", "hi", "ar"] as const) {
        const text = textOf(await paper(kind, language));
        const english = text.match(/\b(the|and|not|with|board|bus|what|before|repair|phase|mains)\b/gi) ?? [];
        const own = [...free].join(" ");
        const spanish = language === "es" ? /^(bus)$/i : /^$/;
        const noted = "red U, white V, black W across";
        expect(
          english.filter((word) => !own.includes(word) && !noted.includes(word) && !spanish.test(word)),
        ).toEqual([]);
      }
    },
  );

  it("has a word for each stage that board files know", () => {
    expect(KNOWN_STAGES.filter((stage) => !Object.hasOwn(WORDS, `stage.${stage}`))).toEqual([]);
  });
});
