/** What the page calls by words of its own what a board file calls by the words of its format: held to the tables of the format. */
import { afterAll, beforeAll, expect, it, vi } from "vitest";
import { KIND_NAMES, KINDS } from "../src/board/kinds.ts";
import { KNOWN_STAGES, stageWords as stageSaid } from "../src/board/stages.ts";
import { isSaid } from "../src/messages/said.ts";
import { choiceWords, fieldWords } from "../src/web/boards/field-words.ts";
import { kindWords, stageWords } from "../src/web/kind-words.ts";
import { chooseLanguage, say } from "../src/web/say.ts";

beforeAll(async () => {
  vi.stubGlobal("document", { documentElement: {} });
  // a script of its own: what is still Latin was not told
  await chooseLanguage("ar");
});
afterAll(async () => {
  await chooseLanguage("en");
  vi.unstubAllGlobals();
});

const ARABIC = /\p{Script=Arabic}/u;
const RULES = [...KINDS.values()].flatMap(({ value }) => [...value]);
/** Values that no one field holds: they are not typed in the editor of a part. */
const TYPED = RULES.filter(([, { reads }]) => reads === "number" || reads === "word" || reads === "flag");
const CHOICES = TYPED.flatMap(([, rule]) => (rule.reads === "word" ? rule.words : []));

it.each(KNOWN_STAGES)("the stage %s is called on the page as the engine calls it", (stage) => {
  expect(isSaid(stageSaid(stage))).toBe(true);
  expect(stageWords(stage)).toBe(say(stageSaid(stage)));
  expect(stageWords(stage)).toMatch(ARABIC);
});

it("a part without a stage has a word, a stage of the board's own stands as it is", () => {
  expect(stageWords("other")).toMatch(ARABIC);
  expect(stageWords("cellar")).toBe("cellar");
});

it.each(KIND_NAMES)("the kind %s is told", (kind) => {
  expect(kindWords(kind)).toMatch(ARABIC);
});

it.each([...new Set(TYPED.map(([field]) => field))])("the field %s of a part is told", (field) => {
  expect(fieldWords(field)).toMatch(ARABIC);
});

it.each([...new Set(CHOICES)].filter((word) => word.length > 3 || word === "sic"))(
  "the choice %s of a field is told",
  (word) => {
    expect(choiceWords(word)).toMatch(ARABIC);
  },
);
