import { expect, it } from "vitest";
import { CLOSE, OPEN, plain, said, saidCount } from "./said.ts";
import { textOf, written } from "./said-text.ts";

const SENTENCES = [
  "no sentence at all",
  said`Next`,
  said`Shows whether ${said`phase ${"U"} of ${"M1"}`} conducts.`,
  saidCount(3, "one reading of {1}", "{0} readings of {1}", said`the bus`),
  `${said`open`}, ${said`shorted`} and more`,
];

it.each(SENTENCES)("%s is the same once it was read and written again", (text) => {
  expect(written(textOf(text))).toBe(text);
  expect(plain(written(textOf(text)))).toBe(plain(text));
});

it("what is filled in is read by its number, in whatever order the sentence names it", () => {
  expect(textOf(saidCount(2, "one of {1}", "of {1} there are {0}", "C1"))).toEqual([
    {
      pieces: ["of ", " there are ", ""],
      given: [
        { index: 1, text: ["C1"] },
        { index: 0, text: ["2"] },
      ],
    },
  ]);
});

it("a mark that was left open ends with the text", () => {
  expect(textOf(`before ${OPEN}cut short`)).toEqual(["before ", { pieces: ["cut short"], given: [] }]);
  expect(written(textOf(`${OPEN}cut short`))).toBe(`${OPEN}cut short${CLOSE}`);
});
