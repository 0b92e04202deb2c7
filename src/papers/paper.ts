/** A paper as content: what stands on it, in one language, apart from how it is laid out. Plain data. */
import type { Direction, Language } from "../messages/language.ts";

export const PAPER_KINDS = ["label", "sheet", "report", "slip", "message", "quote", "bill"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** Money is kept as exact decimal beside how the reader's language writes it. */
export type Cell = string | { readonly decimal: string; readonly text: string };

export interface PaperTable {
  readonly block: "table";
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** rows at the end that are sums */
  readonly sums: number;
  /** of the width, by column; they add up to one */
  readonly shares: readonly number[];
}

/** Where pictures of the job stand, for whoever has them: the first ones, in the order in which the job keeps them. */
export interface PaperPictures {
  readonly block: "pictures";
  readonly text: string;
  /** one a picture */
  readonly captions: readonly string[];
  /** beside each other */
  readonly across: 1 | 2;
  /** what stands in the place of one that cannot be shown */
  readonly unreadable: string;
}

export type Block =
  | { readonly block: "heading"; readonly text: string }
  | { readonly block: "text"; readonly text: string }
  | { readonly block: "list"; readonly items: readonly string[]; readonly numbered: boolean }
  | { readonly block: "caution"; readonly items: readonly string[] }
  | PaperTable
  | PaperPictures
  /** a square code that a phone reads, and what to do with it */
  | { readonly block: "code"; readonly content: string; readonly text: string };

export interface Paper {
  readonly language: Language;
  readonly direction: Direction;
  readonly title: string;
  readonly facts: readonly { readonly name: string; readonly value: string; readonly line: string }[];
  readonly blocks: readonly Block[];
}

/** What stands at the head of a paper of a job and is not in the job itself. */
export interface PaperHead {
  /** the day it is made, `2026-11-27` */
  readonly day: string;
  /** the shop, the customer, the paper's number and the job's name, where they are to stand there */
  readonly from: string | null;
  readonly to: string | null;
  readonly number: string | null;
  readonly jobTitle: string | null;
  /** what opens the job: an address, or the job's number */
  readonly opens: string | null;
  /** the shop's terms of warranty, in its own words */
  readonly warranty: string | null;
  /** how many pictures the job has */
  readonly pictures: number;
  /** nobody's board: the paper says so */
  readonly practice: boolean;
}
