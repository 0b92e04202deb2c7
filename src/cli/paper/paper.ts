/** A paper for the customer or the shop: a title, facts, tables, notes. Written once, given out as text, CSV or PDF. */
import type { BillView, MoneyView } from "../../job/money-view-shape.ts";

export interface PaperTable {
  readonly title: string;
  readonly head: readonly string[];
  /** the last cell of a row is an amount */
  readonly rows: readonly (readonly string[])[];
  /** rows at the end that are sums */
  readonly sums: number;
}

export interface Paper {
  readonly title: string;
  readonly facts: readonly string[];
  readonly tables: readonly PaperTable[];
  readonly notes: readonly string[];
}

/** What stands at the head of a paper of a job. */
export interface PaperHead {
  readonly boardName: string;
  readonly currency: string;
  /** the day it is made, as it is to be printed */
  readonly day: string;
  /** the shop, the customer and the paper's number, where they are to stand there */
  readonly from: string | null;
  readonly to: string | null;
  readonly number: string | null;
}

function facts({ boardName, day, from, to, number }: PaperHead): readonly string[] {
  const named = [
    ["From", from],
    ["To", to],
    ["Number", number],
    ["Board", boardName],
    ["Date", day],
  ] as const;
  return named.flatMap(([what, text]) => (text === null ? [] : [`${what}: ${text}`]));
}

export function billPaper(bill: BillView, head: PaperHead): Paper {
  const tax =
    bill.taxPercent > 0
      ? [
          ["Net", "", bill.net],
          [`Tax, ${bill.taxPercent} %`, "", bill.tax],
        ]
      : [];
  return {
    title: bill.soFar ? "Bill so far" : "Bill",
    facts: facts(head),
    tables: [
      {
        title: "",
        head: ["What", "How much", head.currency],
        rows: [
          ...bill.lines.map(({ words, minutes, amount, estimated }) => [
            `${words}${estimated ? " (usual price)" : ""}`,
            minutes === null ? "" : `${minutes} min`,
            amount,
          ]),
          ...tax,
          ["To pay", "", bill.total],
        ],
        sums: tax.length + 1,
      },
    ],
    notes: [bill.basis],
  };
}

const OFFERS: Readonly<Record<string, string>> = {
  repair: "Repair",
  replace: "A new board",
  decline: "No repair",
};

export function quotePaper({ quote }: MoneyView, head: PaperHead, taxPercent: number): Paper {
  return {
    title: "Quote",
    facts: facts(head),
    tables: [
      {
        title: "",
        head: ["Offer", "Not above, without asking again", head.currency],
        rows: quote.offers.map(({ offer, cap, price, why }) => [
          `${OFFERS[offer] ?? offer}: ${why}${offer === quote.advised ? " (advised)" : ""}`,
          cap ?? "",
          price ?? "",
        ]),
        sums: 0,
      },
    ],
    notes: [
      quote.reason,
      taxPercent > 0 ? `All sums before tax of ${taxPercent} %.` : "All sums before tax.",
    ],
  };
}

/** The shop's own side: spent, expected, when to stop, what remains. Not for the customer. */
export function moneyPaper(money: MoneyView, head: PaperHead): Paper {
  const { spent, toGo, givenUp } = money;
  const percent = (chance: number) => `${Math.round(100 * chance)} of 100`;
  return {
    title: "The job's money",
    facts: facts(head),
    tables: [
      {
        title: "Spent",
        head: ["What", "How much", head.currency],
        rows: [
          ["Work at the bench", `${spent.minutes} min`, spent.labour],
          ...spent.parts.map(({ words, amount, estimated }) => [
            `${words}${estimated ? " (usual price)" : ""}`,
            "",
            amount,
          ]),
          ["Together", "", spent.total],
        ],
        sums: 1,
      },
      ...(toGo === null
        ? []
        : [
            {
              title: "Still expected",
              head: ["What", "Eight in ten jobs", head.currency],
              rows: [
                [
                  `Minutes: ${Math.round(toGo.minutes.mean)}`,
                  `${Math.round(toGo.minutes.low)} to ${Math.round(toGo.minutes.high)} min`,
                  "",
                ],
                ["Parts", `${toGo.parts.low} to ${toGo.parts.high}`, toGo.parts.mean],
                [
                  "Work, parts and what power may break",
                  `${toGo.money.low} to ${toGo.money.high}`,
                  toGo.money.mean,
                ],
                ["Stop line: once more than this is expected, give up", "", toGo.stopLine],
                ...(toGo.stopLineWithRemains === null
                  ? []
                  : [["Stop line with what remains of the board counted", "", toGo.stopLineWithRemains]]),
                [`Margin of going on; repaired in ${percent(toGo.repairProbability)}`, "", toGo.margin],
              ],
              sums: 1,
            },
          ]),
      {
        title: "Given up now",
        head: ["What", "Why", head.currency],
        rows: [
          ...givenUp.rows.map(({ what, why, amount, counted }) => [
            counted ? what : `(${what})`,
            why,
            amount,
          ]),
          ["Together", "", givenUp.total],
          ["Less what was spent", "", givenUp.result],
        ],
        sums: 2,
      },
    ],
    notes: [money.advice, ...(money.askAgain === null ? [] : [money.askAgain])].filter((note) => note !== ""),
  };
}
