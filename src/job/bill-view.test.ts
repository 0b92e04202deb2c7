import { expect, test } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { englishCatalogue } from "../messages/catalogue.ts";
import { PAPERS } from "../messages/papers/en.ts";
import { plain } from "../messages/said.ts";
import { speaker } from "../messages/speaker.ts";
import { WORDS } from "../messages/words/en.ts";
import { billView } from "./bill-view.ts";
import { rectifierJob } from "./rectifier-job.fixture.ts";

const PAPER = speaker<typeof PAPERS & typeof WORDS>(englishCatalogue({ ...PAPERS, ...WORDS }));
const AT = "2026-03-02T09:00:00Z";
const QUOTE = { do: "quote", offer: "repair", price: 90, answer: "accepted", at: AT };
const REPLACED = [
  { do: "replace", part: "F1", with: "5x20 10 A", price: 1, at: AT },
  { do: "replace", part: "BR1", used: true, at: AT },
];
const closed = (verdict: string) => ({ do: "close", verdict, at: AT });

test.each([
  ["an open job", REPLACED],
  ["by work", [...REPLACED, closed("repaired")]],
  ["as agreed", [QUOTE, ...REPLACED, closed("repaired")]],
  ["within a cap", [{ ...QUOTE, cap: 2000 }, ...REPLACED, closed("repaired")]],
  ["at its cap", [{ ...QUOTE, price: 1, cap: 1.5 }, ...REPLACED, closed("repaired")]],
  ["not repaired", [closed("not-economic")]],
  [
    "a new board",
    [{ do: "quote", offer: "replace", price: 300, answer: "accepted", at: AT }, closed("declined")],
  ],
])("a screen says of a bill what the paper says: %s", (_, log) => {
  const job = rectifierJob(log);
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) throw new Error(timeline.problem);
  const shown = billView(job, timeline.value);
  const paper = billView(job, timeline.value, PAPER);
  expect(plain(shown.basis)).toBe(paper.basis);
  expect(shown.lines.map(({ words }) => plain(words))).toEqual(paper.lines.map(({ words }) => words));
});
