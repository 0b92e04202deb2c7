import { storesOfCharge } from "../board/stores-of-charge.ts";
import { said } from "../messages/said.ts";
import { dischargeState, type StoreState, type Unproven } from "../safety/discharge.ts";
import { resistorOverruled } from "../safety/resistor-on.ts";
import { dischargeStep, EMPTY_OR_NOT, voltsAt } from "./discharge-step.ts";
import { andList } from "./faults-in-words.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action, Expectation } from "./proposal.ts";

/** A step that safety or order demands, with its reason; no sum decides it. */
export interface DueStep {
  readonly action: Action;
  readonly row: readonly Action[];
  readonly why: string;
  readonly expect: readonly Expectation[];
  /** the part that is off the board and measured by itself; left out: on the board */
  readonly inHand?: string;
  /** what one tap and a reason pass over to go on without it; left out: no gate of its own */
  readonly gate?: "motor";
}

/**
 * What has to happen before any cold check: power off, every store of charge proven below 10 V at its own pins, a discharge
 * resistor clipped where one is not, and taken off again once the stores are empty. Null when the cold checks are open.
 */
export function makeSafe(input: PlanningInput): DueStep | null {
  const { board, timeline } = input;
  const { now } = timeline;
  if (now.powered)
    return {
      action: { do: "unpower" },
      row: [],
      why: said`Nothing is touched on a live board. Write down what was seen, then switch off and pull the plug.`,
      expect: [],
    };
  const { inTheWay, overruled } = dischargeState(board, timeline, storesOfCharge(board));
  const charged = inTheWay.filter(({ state }) => state === "charged");
  if (charged.length > 0) return dischargeStep(input, charged);
  if (inTheWay.length > 0) return proveStep(inTheWay);
  const clip = now.clips[0];
  if (clip === undefined || resistorOverruled(timeline)) return null;
  const empty = overruled === null ? said`Every store of charge is empty.` : said`The proof was overruled.`;
  return {
    action: { do: "unclip", at: clip.at, ohms: clip.ohms },
    row: [],
    why: [
      empty,
      said`The resistor comes off: it would show in every cold reading across it, and it must be off before power.`,
    ].join(" "),
    expect: [],
  };
}

const LOST_BY: Readonly<Record<Exclude<Unproven, "fitted" | "shared">, string>> = {
  arrived: said`Nothing says yet that this board is dead: volts across every store of charge, at its own pins, before anything else is touched.`,
  power: said`Since power was last on these have not been proven empty: below 10 V at each one's own pins opens the cold checks.`,
  turned: said`What turned has charged the bus through the diodes of its switches: below 10 V at each one's own pins opens the cold checks again.`,
  volts: said`The board is off and showed volts: something charges it. Is the plug out, does a motor or fan turn? Then below 10 V at each store's own pins.`,
};

function proveStep(unproven: readonly StoreState[]): DueStep {
  const [head, ...rest] = unproven;
  const because = head.because;
  const parts = andList(unproven.map(({ store }) => store.part));
  const why =
    because === "fitted" || because === "shared"
      ? said`A capacitor that is put on a board brings its own charge, and shares it: ${parts} below 10 V at its own pins opens the cold checks again.`
      : LOST_BY[because];
  return {
    action: voltsAt(head.store),
    row: rest.map(({ store }) => voltsAt(store)),
    why,
    expect: EMPTY_OR_NOT,
    ...(head.off ? { inHand: head.store.part } : {}),
  };
}
