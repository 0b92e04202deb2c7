import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";
import { type Folder, freshFolder, SMALL_BOARD, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

const LOG = [
  { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0 },
  { do: "quote", offer: "repair", price: 10, cap: 60, answer: "accepted" },
  { do: "replace", part: "C1", price: 12.3, with: "330 µF 400 V, 105 °C, 0.47 Ω" },
  { do: "close", verdict: "repaired" },
];
const TERMS = { ratePerHour: 31, taxRate: 0.2, partsMarkUp: 0.25 };

function jobFile(more: object = {}): string {
  return folder.file("job.json", {
    ...SMALL_JOB,
    board: { ...SMALL_BOARD, name: "Łódź rectifier, 2 × 4.7 kΩ" },
    terms: TERMS,
    log: LOG,
    ...more,
  });
}

/** The text of a PDF, as another program reads it. */
function pdfText(file: string): string {
  try {
    return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT")
      throw new Error("no pdftotext on PATH: install the package `poppler-utils`");
    throw error;
  }
}

describe("bill", () => {
  it("is the log at the shop's rate and mark-up, with the tax", async () => {
    const bill = JSON.parse((await ran("bill", jobFile(), "--json")).out);
    // 10.4 min at 31 an hour 5.37, 12.30 and a quarter 15.38 (half to even), a fifth of 20.75
    expect(bill).toMatchObject({
      currency: "EUR",
      soFar: false,
      net: "20.75",
      taxPercent: 20,
      tax: "4.15",
      total: "24.90",
    });
    expect(bill.lines.map(({ amount }: { amount: string }) => amount)).toEqual(["5.37", "15.38"]);
  });

  it("is told in lines, and as CSV for a spreadsheet", async () => {
    const { out } = await ran("bill", jobFile());
    expect(out).toMatch(/^Bill\n/);
    expect(out).toMatch(/Work at the bench +10\.4 min +5\.37\n/);
    expect(out).toMatch(/To pay +24\.90\n/);
    const csv = (await ran("bill", jobFile(), "--csv")).out;
    expect(csv.split("\n")[0]).toBe("What,How much,EUR");
    expect(csv).toContain('"capacitor C1, 330 µF 400 V, 105 °C, 0.47 Ω",,15.38');
    expect(csv).toMatch(/To pay,,24\.90\n$/);
  });

  it("is a PDF in which another program reads every line, with ohms, degrees and letters of other languages as they are", async () => {
    const pdf = join(folder.path, "bill.pdf");
    const head = ["--from", "The bench, Łańcut, 3 Ω street", "--to", "the customer", "--number", "2026-117"];
    expect(await ran("bill", jobFile(), "--pdf", pdf, ...head)).toMatchObject({ code: 0, out: "" });
    const text = pdfText(pdf);
    for (const line of [
      /Bill/,
      /From: The bench, Łańcut, 3 Ω street/,
      /To: the customer/,
      /Number: 2026-117/,
      /Łódź rectifier, 2 × 4\.7 kΩ/,
      /10\.4 min\s+5\.37/,
      /105 °C, 0\.47 Ω/,
      /15\.38/,
    ])
      expect(text).toMatch(line);
    expect(text).toMatch(/Tax, 20 %\s+4\.15/);
    expect(text).toMatch(/To pay\s+24\.90/);
    const fonts = execFileSync("pdffonts", [pdf], { encoding: "utf8" });
    // name, type, encoding, embedded
    expect(fonts).toMatch(/DejaVuSans\s.*\byes yes yes/);
    expect(fonts).not.toMatch(/Helvetica/);
  });

  it("runs over to a second page where many parts were fitted, and loses none of them", async () => {
    const parts = Array.from({ length: 70 }, (_, n) => ({
      do: "replace",
      part: n % 2 === 0 ? "C1" : "BR1",
      price: n + 1,
      with: `part number ${n + 1} of the drawer on the left, third row`,
    }));
    const pdf = join(folder.path, "long.pdf");
    await ran("bill", jobFile({ log: parts }), "--pdf", pdf);
    const text = pdfText(pdf);
    expect(text.split("\f").length).toBeGreaterThan(2);
    // a line that is too long runs on below
    const words = text.replace(/\s+/g, " ");
    for (let n = 1; n <= 70; n++) expect(words).toContain(`part number ${n} of`);
  });

  it("is so far while the job is open, and in whole coins of the currency", async () => {
    const { out } = await ran(
      "bill",
      jobFile({ log: LOG.slice(0, 1), terms: { currency: "JPY", ratePerHour: 4200 } }),
    );
    expect(out).toMatch(/^Bill so far\n/);
    expect(out).toMatch(/To pay +28\n/);
  });

  it("is refused in one line where it cannot be given as asked", async () => {
    expect(await refusal("bill", jobFile(), "--json", "--csv")).toContain("choose one");
    expect(
      await refusal("bill", jobFile(), "--pdf", join(folder.path, "no", "such", "folder.pdf")),
    ).toContain("cannot be written");
  });
});

describe("papers in another language", () => {
  it("bear the sums of the bill in the reader's form, on the sheet that was asked for", async () => {
    const spanish = (await ran("bill", jobFile(), "--language", "es")).out;
    expect(spanish).toMatch(/^Factura\n/);
    expect(spanish).toMatch(/A pagar +24,90\n/);
    // a spreadsheet reads plain decimals
    expect((await ran("bill", jobFile(), "--language", "es", "--csv")).out).toMatch(/A pagar,,24\.90\n$/);
    const pdf = join(folder.path, "factura.pdf");
    await ran("bill", jobFile(), "--language", "es", "--paper", "letter", "--pdf", pdf);
    expect(pdfText(pdf)).toMatch(/Impuesto, 20 %\s+4,15/);
    expect(readFileSync(pdf, "latin1")).toContain("/MediaBox [0 0 612 792]");
  });

  it("of every kind are given at the terminal", async () => {
    const first = async (...words: readonly string[]) => (await ran(...words)).out.split("\n")[0];
    expect(await first("label", jobFile(), "--number", "2026-117")).toBe("2026-117");
    expect(await first("sheet", jobFile(), "--language", "hi")).toBe("बेंच शीट");
    expect(await first("slip", jobFile(), "--language", "ar")).toBe("ورقة للمركب");
    expect((await ran("report", jobFile(), "--warranty", "90 days")).out).toMatch(/Warranty\n90 days/);
    expect((await ran("message", jobFile())).out).toContain("To pay: 24.90 EUR, tax included.");
  });

  it("are refused by name where the language or the sheet is not known", async () => {
    expect(await refusal("bill", jobFile(), "--language", "fr")).toContain("none of en, es, hi, ar");
    expect(await refusal("slip", jobFile(), "--paper", "a5")).toContain("none of a4, letter, label");
  });
});

describe("quote", () => {
  it("says what to offer, what is still expected, when to stop, and what remains on giving up", async () => {
    const { out } = await ran("quote", jobFile({ log: LOG.slice(0, 1) }));
    for (const line of [
      /^Quote\n/,
      /Repair of this board.* \(advised\)/,
      /Still expected/,
      /Stop line: .* \d+\.\d\d\n/,
      /diagnosis fee/,
    ])
      expect(out).toMatch(line);
    const money = JSON.parse((await ran("quote", jobFile({ log: LOG.slice(0, 1) }), "--json")).out);
    expect(money.quote.advised).toBe("repair");
    expect(Number(money.toGo.money.mean)).toBeGreaterThan(0);
    expect(Number(money.toGo.money.mean)).toBeLessThan(Number(money.toGo.stopLine));
  });

  it("gives the customer a PDF that says nothing of the shop's own sums", async () => {
    const pdf = join(folder.path, "quote.pdf");
    await ran("quote", jobFile({ log: LOG.slice(0, 1) }), "--pdf", pdf);
    const text = pdfText(pdf);
    expect(text).toMatch(/Quote/);
    expect(text).toMatch(/before tax of 20 %/);
    expect(text).not.toMatch(/[Ss]top line|[Mm]argin|Spent/);
  });
});

describe("a board that came back", () => {
  it("books its cost on the old job, whose verdict did not hold", async () => {
    const old = jobFile();
    const back = folder.file("back.json", {
      ...SMALL_JOB,
      terms: TERMS,
      comebackOf: { job: "job.json", reason: "missed-fault" },
      log: [{ do: "replace", part: "F1", price: 0.4 }],
    });
    const sum = JSON.parse((await ran("sum", old, "--comebacks", back, "--json")).out);
    // 10 min at 31 an hour, 5.17, and the fuse
    expect(sum.comebacks).toEqual({
      closedAs: "repaired",
      held: false,
      because: ["missed-fault"],
      cost: "5.57",
    });
    expect(JSON.parse((await ran("bill", back, "--json")).out).total).toBe("0.00");
    expect((await ran("sum", old, "--comebacks", back)).out).toContain("did not hold: missed-fault");
  });

  it("is refused as one where it names no job, and another reason than is known", async () => {
    const plain = folder.file("plain.json", SMALL_JOB);
    expect(await refusal("sum", jobFile(), "--comebacks", plain)).toContain("comebackOf: is missing");
    const odd = folder.file("odd.json", {
      ...SMALL_JOB,
      comebackOf: { job: "job.json", reason: "bad luck" },
    });
    expect(await refusal("bill", odd)).toContain("comebackOf.reason");
  });
});
