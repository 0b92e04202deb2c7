import { expect, it } from "vitest";
import { knownWords } from "./known-words.ts";
import { isSaid, plain } from "./said.ts";
import { tell } from "./tell.ts";

const spanish = {
  find: (english: string) =>
    ({ "gate of the upper switch of phase {0}": "puerta superior de la fase {0}" })[english],
  category: () => "other",
  value: (text: string) => `<${text}>`,
};

it("says again what the program wrote into a file, with what was filled in", () => {
  const words = knownWords("gate of the upper switch of phase U");
  expect(plain(words)).toBe("gate of the upper switch of phase U");
  expect(tell(words, spanish)).toBe("puerta superior de la fase <U>");
});

it("finds volts and rails in the name of a board of one's own", () => {
  const name = "own board, 230 V, one phase, no boost, power module, 15, 12, 5, 3.3 V";
  expect(tell(knownWords(name), { ...spanish, find: () => "{0} | {1}" })).toBe(
    "<230 V> | <15, 12, 5, 3.3 V>",
  );
});

it("leaves a person's own words alone, and what is said already", () => {
  for (const text of [
    "",
    "U1",
    "my board",
    "phase of the moon, full",
    "own board, one phase",
    "15 V on the drawer's plug",
  ])
    expect(isSaid(knownWords(text)), text).toBe(false);
  const words = knownWords("DC bus +");
  expect(knownWords(words)).toBe(words);
});
