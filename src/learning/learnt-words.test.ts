import { describe, expect, it } from "vitest";
import { isSaid, plain } from "../messages/said.ts";
import { AR } from "../messages/sayings/ar.ts";
import { ES } from "../messages/sayings/es.ts";
import { HI } from "../messages/sayings/hi.ts";
import { finder, tell } from "../messages/tell.ts";
import { CAUSES } from "../priors/cause.ts";
import { KIND_WEIGHTS } from "../priors/kind-rates.ts";
import { NET_LEAK_SORT } from "../priors/learnt-rates.ts";
import { MODE_SHARES } from "../priors/mode-shares.ts";
import { learn } from "./learnt.ts";
import { learntView } from "./learnt-view.ts";
import { causeWords, shapeWords, sortWords, workWords } from "./learnt-words.ts";
import { fuse, lessonWith } from "./lessons.fixture.ts";

describe("what is counted has words that can be told", () => {
  it.each([...Object.keys(KIND_WEIGHTS), NET_LEAK_SORT])("sort %s", (sort) => {
    expect(isSaid(sortWords(sort))).toBe(true);
  });

  it.each(Object.keys(MODE_SHARES))("shape %s", (shape) => {
    expect(isSaid(shapeWords(shape))).toBe(true);
  });

  it.each(CAUSES)("cause %s", (cause) => {
    expect(isSaid(causeWords(cause))).toBe(true);
  });

  it("no two sorts are called alike", () => {
    const words = Object.keys(KIND_WEIGHTS).map((sort) => plain(sortWords(sort)));
    expect(new Set(words).size).toBe(words.length);
  });

  it("what a later program counted stays as it was counted", () => {
    expect([sortWords("valve"), workWords("polish"), causeWords("fire")]).toEqual([
      "valve",
      "polish",
      "fire",
    ]);
  });
});

describe.each([
  ["es", ES, "fusible"],
  ["hi", HI, "फ्यूज"],
  ["ar", AR, "مصهر"],
] as const)("the rows of what was learnt in %s", (_, sayings, fuseWords) => {
  const told = (text: string) =>
    tell(text, { find: finder(sayings), category: () => "other", value: (value) => value });
  const learnt = learn(
    Array.from({ length: 20 }, () =>
      lessonWith({ ...fuse(1, 0.1), family: "fan", paces: [{ action: "replace", logRatios: [1, 1, 1] }] }),
    ),
  );
  const rows = learntView(learnt, String).sections.flatMap((section) =>
    section.rows.map(({ what }) => told(what)),
  );

  it("call a sort, a cause and a kind of work by the reader's words, a family by its own", () => {
    expect(rows).toContain(fuseWords);
    expect(rows).toContain(`${told(causeWords("surge"))}: ${fuseWords}`);
    expect(rows).toContain(`fan: ${fuseWords}`);
    expect(rows).toContain(told(workWords("replace")));
    expect(rows).not.toContain("replace a part");
  });
});
