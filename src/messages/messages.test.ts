import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ADVICE_AR } from "./advice/ar.ts";
import { ADVICE } from "./advice/en.ts";
import { ADVICE_ES } from "./advice/es.ts";
import { ADVICE_HI } from "./advice/hi.ts";
import { LANGUAGES } from "./language.ts";
import { paperCatalogue } from "./paper-catalogue.ts";
import { paperSpeaker } from "./paper-speaker.ts";
import { PAPERS_AR } from "./papers/ar.ts";
import { PAPERS } from "./papers/en.ts";
import { PAPERS_ES } from "./papers/es.ts";
import { PAPERS_HI } from "./papers/hi.ts";
import { WORDS_AR } from "./words/ar.ts";
import { WORDS } from "./words/en.ts";
import { WORDS_ES } from "./words/es.ts";
import { WORDS_HI } from "./words/hi.ts";

type Text = string | Readonly<Record<string, string>>;
type Pair = readonly [string, Text];

const GROUPS: readonly (readonly [string, Readonly<Record<string, Text>>, Readonly<Record<string, Pair>>])[] =
  [
    ["words es", WORDS, WORDS_ES],
    ["words hi", WORDS, WORDS_HI],
    ["words ar", WORDS, WORDS_AR],
    ["papers es", PAPERS, PAPERS_ES],
    ["papers hi", PAPERS, PAPERS_HI],
    ["papers ar", PAPERS, PAPERS_AR],
    ["advice es", ADVICE, ADVICE_ES],
    ["advice hi", ADVICE, ADVICE_HI],
    ["advice ar", ADVICE, ADVICE_AR],
  ];

const textsOf = (text: Text): readonly string[] => (typeof text === "string" ? [text] : Object.values(text));
const english = (text: Text): string => (typeof text === "string" ? text : (text.other ?? ""));
const places = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

/** Said alike in several languages: names and letters of the trade, and signs around what is filled in. */
const ALIKE =
  /^(kind\.(led|mosfet|igbt|relay|motor|ic|transformer|link|varistor|triac)|part\.named|fault\.(part|inside)|place\.named|fact\.line|run\.line|report\.sure|bill\.(part|detail)|stage\.logic)$/;

describe.each(GROUPS)("the translation %s", (_, source, translated) => {
  it("has every message, and none is of an English text that has changed since", () => {
    expect(Object.keys(translated)).toEqual(Object.keys(source));
    const stale = Object.entries(source).filter(([key, text]) => translated[key]?.[0] !== english(text));
    expect(stale.map(([key]) => key)).toEqual([]);
  });

  it("fills in the same values as the English does", () => {
    for (const [key, text] of Object.entries(source))
      for (const said of textsOf(translated[key]?.[1] ?? ""))
        expect([key, ...places(said)]).toEqual([key, ...places(english(text))]);
  });

  it("leaves nothing in English", () => {
    const left = Object.entries(source).filter(
      ([key, text]) => translated[key]?.[1] === text && !ALIKE.test(key),
    );
    expect(left.map(([key]) => key)).toEqual([]);
  });
});

describe("numbers and money", () => {
  it.each(LANGUAGES.map(({ language }) => language))(
    "in %s lose no digit of an amount, however long",
    async (language) => {
      const { amount } = paperSpeaker(await paperCatalogue(language));
      const amounts = fc.tuple(
        fc.boolean(),
        fc.bigInt({ min: 0n, max: 10n ** 18n }),
        fc.integer({ min: 0, max: 4 }),
      );
      fc.assert(
        fc.property(amounts, ([below, cents, digits]) => {
          const plain = String(cents).padStart(digits + 1, "0");
          const decimal = digits === 0 ? plain : `${plain.slice(0, -digits)}.${plain.slice(-digits)}`;
          const written = amount(`${below ? "-" : ""}${decimal}`);
          const latin = written.replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660));
          expect(latin.replace(/\D/g, "")).toBe(decimal.replace(/\D/g, ""));
          expect(/[-\u2212]/.test(written)).toBe(below);
        }),
        { seed: 11, numRuns: 200 },
      );
    },
  );

  it("stand in the reader's form, units as everywhere", async () => {
    const said = await Promise.all(
      LANGUAGES.map(async ({ language }) => {
        const speak = paperSpeaker(await paperCatalogue(language));
        return [speak.amount("1234567.50"), speak.percent(0.93), speak.day("2026-11-27")];
      }),
    );
    expect(said).toEqual([
      ["1,234,567.50", "93%", "27 November 2026"],
      ["1.234.567,50", "93\u00a0%", "27 de noviembre de 2026"],
      ["12,34,567.50", "93%", "27 नवंबर 2026"],
      ["١٬٢٣٤٬٥٦٧٫٥٠", "٩٣٪\u061c", "٢٧ نوفمبر ٢٠٢٦"],
    ]);
    const spanish = paperSpeaker(await paperCatalogue("es"));
    expect(spanish.shown("0.455 V")).toBe("0,455 V");
    expect(spanish.shown("0.47 470m OL, 1.5 A")).toBe("0,47 470m OL, 1,5 A");
    expect(spanish.shown("U1.3, LM2.5, 10.0.0.7")).toBe("U1.3, LM2.5, 10.0.0.7");
  });

  it("count in the six forms of Arabic", async () => {
    const { say } = paperSpeaker(await paperCatalogue("ar"));
    const counted = [0, 1, 2, 3, 11, 100].map((count) =>
      say("open.unexplained", { count }).replace(/[٠-٩: .]/g, ""),
    );
    expect(new Set(counted).size).toBeGreaterThanOrEqual(5);
  });
});

describe("a Latin name in an Arabic sentence", () => {
  it("is set apart once, so that it moves nothing around it", async () => {
    const { say } = paperSpeaker(await paperCatalogue("ar"));
    const part = say("part.named", { kind: say("kind.fuse"), ref: "F1" });
    expect(part).toBe("مصهر \u2068F1\u2069");
    expect(say("done.replaced", { part })).toBe("استبدل: مصهر \u2068F1\u2069");
  });
});
