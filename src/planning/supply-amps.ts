/** What a bench supply's own display shows that it gives: a reading under power that needs neither clip nor hand. */
import type { Place, PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import { MINUTES } from "../money/minutes.ts";
import { type Draft, outlook } from "./cards.ts";
import { ampsPartition, type Partition } from "./check-outcomes.ts";
import { expectations } from "./expectations.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { staysOn } from "./live-clips.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { partitionShares } from "./steps.ts";

/**
 * What the display would show under each hypothesis; null without a live model. Of a core with an unlikely fault beside it the core
 * alone is asked: a circuit is settled for each question.
 */
function supplyPartition(input: PlanningInput, hypotheses: Hypotheses, power: PowerEvent): Partition | null {
  const live = input.liveFor?.({ ...input.timeline.now, powered: true }, power);
  if (live === undefined) return null;
  return ampsPartition(
    hypotheses.list.map((hypothesis) => {
      const asked =
        hypothesis.weight < PLANNING_RATES.besideAsked ? { ...hypothesis, beside: -1 } : hypothesis;
      const drawn = live.state(faultsOf(asked, hypotheses).map((f) => hypotheses.priors[f].fault)).feedAmps;
      return drawn === null ? null : { value: drawn.amps, spread: drawn.spread };
    }),
  );
}

/** The two places of a bench supply that is on and not at its limit, where its amps have not been written down. */
function unreadSupply({ entries, now }: Timeline): readonly [Place, Place] | null {
  const at = entries.findLastIndex(({ event }) => event.do === "power");
  const power = entries[at]?.event;
  if (!now.powered || power?.do !== "power" || power.feed !== "bench" || typeof power.at !== "object")
    return null;
  if ([power.observed ?? []].flat().some((seen) => !staysOn(seen) || seen === "limiting")) return null;
  const read = entries.slice(at + 1).some(({ event }) => event.do === "measure" && event.mode === "amps");
  return read ? null : power.at;
}

/** The card that asks for the amps on the supply's display; null where none is on, or they have been written down. */
export function supplyProposal(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft | null {
  const at = unreadSupply(input.timeline);
  if (at === null) return null;
  const [red, black] = at;
  const action: Action = { do: "measure", mode: "amps", red, black };
  const power = input.timeline.entries.findLast(({ event }) => event.do === "power")?.event;
  const partition = power?.do === "power" ? supplyPartition(input, hypotheses, power) : null;
  const step = partition && {
    action,
    row: [],
    minutes: MINUTES.measure,
    allMinutes: MINUTES.measure,
    outcomes: partition.outcomes,
    shares: partitionShares(partition),
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
  return {
    action,
    row: [],
    minutes: MINUTES.measure,
    money: 0,
    why: "Write down the amps on the supply's own display once they stand still. Nothing on the board is touched; then switch off.",
    expect: step === null ? [] : expectations(step, hypotheses, input.board, null),
    others: [
      {
        action: { do: "unpower" },
        minutes: MINUTES.unpower,
        money: 0,
        why: "The current rises or something grows hot: switch off at once.",
      },
    ],
    atStake: null,
    forecast: null,
    probesOn: null,
    outlook: outlook(model),
  };
}
