/** Every paper in every language, made as PDF and read back by another program. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { AssessmentSession } from "../src/job/assess.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { LANGUAGES } from "../src/messages/language.ts";
import { paperCatalogue } from "../src/messages/paper-catalogue.ts";
import { CLOSED_JOB } from "../src/papers/closed-job.fixture.ts";
import { makePaper } from "../src/papers/make-paper.ts";
import { PAPER_KINDS, type Paper, type PaperHead } from "../src/papers/paper.ts";
import { paperPdf } from "../src/print/paper-pdf.ts";
import { withoutSteering } from "../src/print/visual-runs.ts";

const HEAD: PaperHead = {
  day: "2026-11-27",
  from: "The bench, Łańcut, 3 Ω street",
  to: "Nursery, hall 3",
  number: "2026-117",
  jobTitle: "Greenhouse 17",
  opens: "http://127.0.0.1:4517/#/job/demo",
  warranty: "90 days on parts and work.",
  pictures: 3,
  practice: false,
};

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "faultwright-papers-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const parsed = parseJob(CLOSED_JOB, null);
if (!parsed.ok) throw new Error(parsed.problem);
const job = parsed.value;
const session = new AssessmentSession();

const plain = (text: string) => withoutSteering(text).normalize("NFC").replace(/\s+/g, " ").trim();
/** What is read back: the reader of PDF sets marks of its own where the direction turns, a space's place among them. */
const unmarked = (text: string) => plain(text.replace(/[\u200e\u200f\u202a-\u202e]/g, " "));

function readBack(bytes: Uint8Array, how: readonly string[] = []): string {
  const file = join(folder, "paper.pdf");
  writeFileSync(file, bytes);
  return unmarked(execFileSync("pdftotext", [...how, file, "-"], { encoding: "utf8" }));
}

/** Lines that a reader follows from end to end; the cells of tables apart, for they break in their columns. */
function linesOf({ title, facts, blocks }: Paper): readonly string[] {
  return [
    title,
    ...facts.map(({ line }) => line),
    ...blocks.flatMap((block) => {
      if (block.block === "list" || block.block === "caution") return block.items;
      return block.block === "table" || block.block === "pictures" ? [] : [block.text];
    }),
  ].map(plain);
}

function cellsOf({ blocks }: Paper): readonly string[] {
  return blocks.flatMap((block) =>
    block.block === "table"
      ? [block.head, ...block.rows].flat().map((cell) => plain(typeof cell === "string" ? cell : cell.text))
      : [],
  );
}

const wordsOf = (text: string) => text.match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];

/** Sentences that somebody's life may hang on, written out here once more. */
const SENTENCES: Readonly<Record<string, readonly string[]>> = {
  en: ["wait at least 15 minutes, then measure: bus plus to bus minus must read below 10 V"],
  es: [
    "espere al menos 15 minutos y después mida: entre bus positivo y bus negativo debe haber menos de 10 V",
  ],
  hi: ["बस प्लस और बस माइनस के बीच 10 V से कम होना चाहिए", "संधारित्रों में जानलेवा आवेश रह सकता है"],
  ar: ["قد تحتفظ مكثفات هذه اللوحة بشحنة قاتلة مدة طويلة بعد فصلها", "لا تلمس شيئا"],
};

describe.each(LANGUAGES)("in $name", ({ language, direction }) => {
  it.each(PAPER_KINDS)("the %s comes back as it was written", async (kind) => {
    const made = makePaper(kind, job, HEAD, await paperCatalogue(language), session);
    if (!made.ok) throw new Error(made.problem);
    const bytes = await paperPdf(made.value, "a4", new Date(Date.UTC(2026, 10, 27)));
    const text = readBack(bytes);
    const inOrder = wordsOf(text).join(" ");
    const found = new Set(wordsOf(text));
    for (const line of linesOf(made.value)) {
      // Lines of two directions are put in order by each reader of PDF in its own way: there, word by word.
      const mixed = direction === "rtl" && /[0-9A-Za-z٠-٩]/.test(line);
      if (mixed)
        expect(
          wordsOf(line).filter((word) => !found.has(word)),
          line,
        ).toEqual([]);
      else if (direction === "rtl") expect(inOrder).toContain(wordsOf(line).join(" "));
      else expect(text).toContain(line);
    }
    const lost = cellsOf(made.value).flatMap((cell) => wordsOf(cell).filter((word) => !found.has(word)));
    expect(lost).toEqual([]);
    if (kind === "report") for (const sentence of SENTENCES[language] ?? []) expect(text).toContain(sentence);
  });
});

/** A chunk of a PNG (ISO/IEC 15948, 5.3). */
function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const head = Buffer.alloc(4);
  head.writeUInt32BE(data.length);
  const tail = Buffer.alloc(4);
  tail.writeUInt32BE(crc32(body));
  return Buffer.concat([head, body, tail]);
}

/** Grey with an alpha channel: what the PDF library has to unpack. */
function png(width: number, height: number, rows = Buffer.alloc(height * (1 + 2 * width), 128)): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width);
  header.writeUInt32BE(height, 4);
  header.set([8, 4, 0, 0, 0], 8);
  for (let row = 0; row < height; row++) rows[row * (1 + 2 * width)] = 0;
  const packed = deflateSync(rows);
  return Buffer.concat([
    Buffer.from("89504e470d0a1a0a", "hex"),
    chunk("IHDR", header),
    chunk("IDAT", packed),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** A JPEG's head and end (ITU-T T.81, B.2.2): its size, in colour. */
function jpeg(width: number, height: number): Buffer {
  const size = [height >> 8, height & 255, width >> 8, width & 255];
  const components = [1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1];
  return Buffer.from([0xff, 0xd8, 0xff, 0xc0, 0, 17, 8, ...size, 3, ...components, 0xff, 0xd9]);
}

/** The images of a PDF as another program lists them: page, kind, pixels, points an inch. */
function imagesIn(bytes: Uint8Array): readonly (readonly string[])[] {
  const file = join(folder, "pictures.pdf");
  writeFileSync(file, bytes);
  return execFileSync("pdfimages", ["-list", file], { encoding: "utf8" })
    .split("\n")
    .slice(2)
    .filter((line) => line !== "")
    .map((line) => {
      const [page = "", , kind = "", width = "", height = "", , , , , , , , dpi = ""] = line
        .trim()
        .split(/\s+/);
      return [page, kind, `${width}x${height}`, dpi];
    });
}

describe("pictures on a PDF", () => {
  const pictures = [jpeg(2000, 1500), png(40, 30), jpeg(900, 1600)];

  it.each(["report", "slip"] as const)(
    "of the %s are those of the job, captioned, at a size to see them",
    async (kind) => {
      for (const language of ["en", "ar"] as const) {
        const made = makePaper(kind, job, HEAD, await paperCatalogue(language), session);
        if (!made.ok) throw new Error(made.problem);
        const bytes = await paperPdf(made.value, "a4", new Date(0), pictures);
        const images = imagesIn(bytes);
        expect(images.map(([, what, size]) => `${what} ${size}`)).toEqual([
          "image 2000x1500",
          "image 40x30",
          "smask 40x30",
          "image 900x1600",
        ]);
        // two beside each other take half of the width; a small one is not blown up
        const [large = 0, small = 0] = images.map(([, , , dpi]) => Number(dpi));
        const widthInches = 2000 / large;
        expect(widthInches).toBeGreaterThan(kind === "report" ? 3.2 : 5);
        expect(widthInches).toBeLessThan(kind === "report" ? 3.5 : 7);
        expect(small).toBe(100);
      }
      const made = makePaper(kind, job, HEAD, await paperCatalogue("en"), session);
      if (!made.ok) throw new Error(made.problem);
      expect(readBack(await paperPdf(made.value, "letter", new Date(0), pictures))).toContain(
        "Picture 3 of 3",
      );
    },
  );

  it("of the message is the first alone", async () => {
    const made = makePaper("message", job, HEAD, await paperCatalogue("hi"), session);
    if (!made.ok) throw new Error(made.problem);
    const images = imagesIn(await paperPdf(made.value, "a4", new Date(0), pictures));
    expect(images.map(([, , size]) => size)).toEqual(["2000x1500"]);
  });

  it("that is none, or does not unpack, is said in its place", async () => {
    const made = makePaper("report", job, HEAD, await paperCatalogue("en"), session);
    if (!made.ok) throw new Error(made.problem);
    const spoilt = png(40, 30);
    spoilt.fill(7, spoilt.indexOf("IDAT") + 4, spoilt.indexOf("IEND") - 8);
    const bytes = await paperPdf(made.value, "a4", new Date(0), [Buffer.from([0xff, 0xd8, 1, 2]), spoilt]);
    expect(imagesIn(bytes)).toEqual([]);
    expect(readBack(bytes).match(/This picture cannot be shown here/g)).toHaveLength(3);
  });
});

describe("a PDF", () => {
  it.each([
    ["a4", "595.28 841.89"],
    ["letter", "612 792"],
    ["label", "283.46 175.75"],
  ] as const)("on %s has that sheet's size", async (size, box) => {
    const made = makePaper("label", job, HEAD, await paperCatalogue("ar"), session);
    if (!made.ok) throw new Error(made.problem);
    const bytes = await paperPdf(made.value, size, new Date(0));
    expect(Buffer.from(bytes).toString("latin1")).toContain(`/MediaBox [0 0 ${box}]`);
  });
});
