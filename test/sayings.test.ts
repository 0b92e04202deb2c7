import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { allSentences, amissIn, sentencesIn } from "../scripts/sayings.mjs";
import { AR } from "../src/messages/sayings/ar.ts";
import { ES } from "../src/messages/sayings/es.ts";
import { HI } from "../src/messages/sayings/hi.ts";
import { filesUnder, ROOT } from "./source-files.ts";

const SENTENCES = allSentences();

describe.each([
  ["es", ES],
  ["hi", HI],
  ["ar", AR],
] as const)("the sayings in %s", (language, sayings) => {
  it("are those of the sources: none missing, none stale, the same values filled in", () => {
    expect(SENTENCES.length).toBeGreaterThan(0);
    expect(amissIn(SENTENCES, sayings, language)).toEqual([]);
  });
});

describe("each sentence", () => {
  it.each(["es", "hi", "ar"])("stands in one area of %s alone, so that it is said one way", (language) => {
    const folder = `src/messages/sayings/${language}`;
    const keys = filesUnder(ROOT, folder, /\.ts$/).flatMap((path) =>
      [
        ...readFileSync(join(ROOT, path), "utf8").matchAll(
          /^ {2}("(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|[\w$]+):/gm,
        ),
      ].map(([, key]) => key),
    );
    expect(keys.length).toBeGreaterThan(1000);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });
});

describe("the sentences of a source", () => {
  it("are its tagged templates and what counts", () => {
    const source =
      // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the text of a source
      'said`Shows ${a} of ${b}.`; say`Next`; saidCount(n, "one part", "{0} parts"); `Not ${this}`;';
    expect(sentencesIn("a.ts", source).map(({ english, one }) => [english, one])).toEqual([
      ["Shows {0} of {1}.", null],
      ["Next", null],
      ["{0} parts", "one part"],
    ]);
  });

  it("that have no saying, one of other values or one that nobody says are named", () => {
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the text of a source
    const sentences = sentencesIn("a.ts", "said`Shows ${a}.`; said`Next`;");
    expect(amissIn(sentences, { "Shows {0}.": "Muestra.", Gone: "Ido" }, "es")).toEqual([
      'not the same values: "Shows {0}.", "Muestra."',
      'missing: "Next" of a.ts',
      'nobody says: "Gone"',
    ]);
  });

  it("that count have every form of the language, and no other; a form that holds for one count alone may say it by a word", () => {
    const sentences = sentencesIn("a.ts", 'saidCount(n, "one part of {1}", "{0} parts of {1}", ref);');
    const amiss = (forms: Readonly<Record<string, string>>, language: string) =>
      amissIn(sentences, { "{0} parts of {1}": { en: "one part of {1}", ...forms } }, language);
    expect(amiss({ one: "una de {1}", other: "{0} de {1}" }, "es")).toEqual([]);
    expect(amiss({ one: "{0} de {1}", many: "{0} de {1}", other: "{0} de {1}" }, "ar")).toEqual([
      'no form for "few": "{0} parts of {1}"',
      'no form for "two": "{0} parts of {1}"',
    ]);
    expect(amiss({ one: "{1} का एक", few: "{0}", other: "{1} के {0}" }, "hi")).toEqual([
      'no such form as "few": "{0} parts of {1}"',
      'not the same values for "few": "{0} parts of {1}", "{0}"',
    ]);
    expect(amiss({ one: "una", other: "varias de {1}" }, "es")).toEqual([
      'not the same values for "one": "{0} parts of {1}", "una"',
      'not the same values for "other": "{0} parts of {1}", "varias de {1}"',
    ]);
  });
});
