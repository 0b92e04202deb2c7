/** What a bench supply's own display shows that it gives: a reading under power that needs neither clip nor hand. */
import type { Place, PowerEvent } from "../bench/event.ts";
import { poweredNow } from "../bench/last-power.ts";
import { staysOn } from "../bench/stays-on.ts";
import type { Timeline } from "../bench/timeline.ts";
import { said } from "../messages/said.ts";
import { type Draft, outlook } from "./cards.ts";
import { ampsPartition, type Partition } from "./check-outcomes.ts";
import { expectations } from "./expectations.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { plainStep, toldBy } from "./steps.ts";

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

/** A bench supply that is on and not at its limit, whose amps have not been written down; a cell has no display. */
function unreadSupply(
  timeline: Timeline,
): { readonly power: PowerEvent; readonly at: readonly [Place, Place] } | null {
  const on = poweredNow(timeline);
  if (
    on === null ||
    on.power.feed !== "bench" ||
    typeof on.power.at !== "object" ||
    on.power.ohms !== undefined
  )
    return null;
  if ([on.power.observed ?? []].flat().some((seen) => !staysOn(seen) || seen === "limiting")) return null;
  const since = timeline.entries.slice(on.at + 1);
  const read = since.some(({ event }) => event.do === "measure" && event.mode === "amps");
  return read ? null : { power: on.power, at: on.power.at };
}

/** The card that asks for the amps on the supply's display; null where none is on, or they have been written down. */
export function supplyProposal(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft | null {
  const unread = unreadSupply(input.timeline);
  if (unread === null) return null;
  const [red, black] = unread.at;
  const action: Action = { do: "measure", mode: "amps", red, black };
  const partition = supplyPartition(input, hypotheses, unread.power);
  const step = partition && plainStep(action, toldBy(partition), model.minutes.measure);
  return {
    action,
    row: [],
    minutes: model.minutes.measure,
    money: 0,
    why: said`Write down the amps on the supply's own display once they stand still. No meter goes across the rail for it: in its amps range it is a short. Nothing on the board is touched; then switch off.`,
    expect: step === null ? [] : expectations(step, hypotheses, input.board, null),
    others: [
      {
        action: { do: "unpower" },
        minutes: model.minutes.unpower,
        money: 0,
        why: said`The current rises or something grows hot: switch off at once.`,
      },
    ],
    atStake: null,
    forecast: null,
    probesOn: null,
    outlook: outlook(model),
  };
}
