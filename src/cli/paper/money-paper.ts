/** The shop's own side of a job's money: spent, expected, when to stop, what remains. Not for the customer, and in the shop's language. */
import type { MoneyView, ToGoView } from "../../job/money-view-shape.ts";
import type { PaperSpeaker } from "../../messages/paper-speaker.ts";
import { heading } from "../../papers/head-facts.ts";
import { money } from "../../papers/money-papers.ts";
import type { Block, Cell, Paper } from "../../papers/paper.ts";

const SHARES = [0.5, 0.3, 0.2];

export function moneyPaper(view: MoneyView, facts: Paper["facts"], speak: PaperSpeaker): Paper {
  const { spent, toGo, givenUp, currency } = view;
  const amount = (decimal: string) => money(decimal, speak);
  const section = (
    title: string,
    head: readonly [string, string],
    rows: readonly (readonly Cell[])[],
    sums: number,
  ) =>
    [
      heading(title),
      { block: "table", head: [...head, currency], rows, sums, shares: SHARES },
    ] as const satisfies readonly Block[];
  const notes = [view.advice, view.askAgain ?? ""].filter((note) => note !== "");
  return {
    language: speak.language,
    direction: speak.direction,
    title: "The job's money",
    facts,
    blocks: [
      ...section(
        "Spent",
        ["What", "How much"],
        [
          ["Work at the bench", `${spent.minutes} min`, amount(spent.labour)],
          ...spent.parts.map((part) => [
            `${part.words}${part.estimated ? " (usual price)" : ""}`,
            "",
            amount(part.amount),
          ]),
          ["Together", "", amount(spent.total)],
        ],
        1,
      ),
      ...(toGo === null
        ? []
        : section("Still expected", ["What", "Eight in ten jobs"], toGoRows(toGo, amount), 1)),
      ...section(
        "Given up now",
        ["What", "Why"],
        [
          ...givenUp.rows.map(({ what, why, amount: fetched, counted }) => [
            counted ? what : `(${what})`,
            why,
            amount(fetched),
          ]),
          ["Together", "", amount(givenUp.total)],
          ["Less what was spent", "", amount(givenUp.result)],
        ],
        2,
      ),
      ...notes.map((text): Block => ({ block: "text", text })),
    ],
  };
}

function toGoRows(toGo: ToGoView, amount: (decimal: string) => Cell): readonly (readonly Cell[])[] {
  const { minutes, parts, money: expected } = toGo;
  return [
    [
      `Minutes: ${Math.round(minutes.mean)}`,
      `${Math.round(minutes.low)} to ${Math.round(minutes.high)} min`,
      "",
    ],
    ["Parts", `${parts.low} to ${parts.high}`, amount(parts.mean)],
    ["Work, parts and what power may break", `${expected.low} to ${expected.high}`, amount(expected.mean)],
    ["Stop line: once more than this is expected, give up", "", amount(toGo.stopLine)],
    ...(toGo.stopLineWithRemains === null
      ? []
      : [["Stop line, if the board stays here", "", amount(toGo.stopLineWithRemains)]]),
    [
      `Margin of going on; repaired in ${Math.round(100 * toGo.repairProbability)} of 100`,
      "",
      amount(toGo.margin),
    ],
  ];
}
