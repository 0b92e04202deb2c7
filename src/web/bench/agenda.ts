/**
 * What stands on the card: the engine's proposal; or what the person chose instead; or, while a row is being taken with the
 * probes at hand, the row's next check, which follows by itself.
 */
import { useEffect, useState } from "react";
import type { ActionView, BenchView, CardView } from "../../wire/bench-view.ts";
import { sameAction } from "../job-event.ts";
import { bareCard } from "../words.ts";

export interface Agenda {
  readonly card: CardView | null;
  /** what the person chose instead of the proposal */
  readonly chosen: ActionView | null;
  /** this check's number in the row, from 1, and how many there are; null outside a row */
  readonly inRow: { readonly number: number; readonly of: number } | null;
  choose(action: ActionView): void;
  /** the card was done: go on with the row */
  next(): void;
  /** back to the engine's proposal */
  clear(): void;
}

interface Row {
  readonly left: readonly ActionView[];
  readonly of: number;
  readonly from: CardView;
}

export function useAgenda(view: BenchView, behind: boolean): Agenda {
  const [row, setRow] = useState<Row | null>(null);
  const [chosen, setChosen] = useState<ActionView | null>(null);
  const first = row?.left[0] ?? null;
  const proposal = view.card;
  // Once the engine itself proposes what the row asks for, its own card says more.
  const caughtUp = !behind && proposal !== null && first !== null && sameAction(proposal.action, first);
  useEffect(() => {
    if (caughtUp) setRow(null);
  }, [caughtUp]);
  const inRow =
    row !== null && chosen === null && !caughtUp
      ? { number: row.of - row.left.length + 1, of: row.of }
      : null;
  return {
    card: cardOf(chosen, inRow === null ? null : first, row, proposal),
    chosen,
    inRow,
    choose: (action) => {
      setRow(null);
      setChosen(proposal !== null && sameAction(proposal.action, action) ? null : action);
    },
    next: () => {
      if (chosen !== null) return setChosen(null);
      if (inRow !== null && row !== null)
        return setRow(row.left.length > 1 ? { ...row, left: row.left.slice(1) } : null);
      if (proposal === null || proposal.row.length === 0) return setRow(null);
      setRow({ left: proposal.row, of: proposal.row.length + 1, from: proposal });
    },
    clear: () => {
      setRow(null);
      setChosen(null);
    },
  };
}

function cardOf(
  chosen: ActionView | null,
  rowCheck: ActionView | null,
  row: Row | null,
  proposal: CardView | null,
): CardView | null {
  if (chosen !== null) return bareCard(chosen);
  if (rowCheck === null || row === null) return proposal;
  return { ...bareCard(rowCheck), probesOn: row.from.probesOn, cautions: row.from.cautions };
}
