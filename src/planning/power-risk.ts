import type { PowerEvent } from "../bench/event.ts";
import { faultNameWords } from "../board/fault-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { feedHarm, knockOnHarm } from "../priors/feed-harm.ts";
import { mainsCuts } from "../priors/mains-cuts.ts";
import { type PowerForecast, PowerRisks } from "../safety/forecast.ts";
import { percent } from "./faults-in-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Forecast } from "./proposal.ts";
import { breakMoneyByFault, lossMoney } from "./repair-model.ts";

const NONE: ReadonlySet<number> = new Set();
const BREAK_LEAST = 0.005;
const MOST_BREAKS = 6;

/** What power would break on the board as it is believed to be, asked feed by feed. */
export class PowerRisk {
  readonly #input: PlanningInput;
  readonly #priors: PriorTable;
  readonly #risks: PowerRisks;

  constructor(input: PlanningInput, belief: Belief, priors: PriorTable) {
    this.#input = input;
    this.#priors = priors;
    this.#risks = new PowerRisks(
      belief,
      priors,
      input.timeline.now.off,
      new Set(input.timeline.replacedIn.keys()),
      mainsCuts(input.board, priors),
    );
  }

  /** Chances and money of one power-up. */
  under(power: PowerEvent): PowerForecast {
    const { board, terms, timeline } = this.#input;
    const of = (ref: string): number => lossMoney(board, timeline.now, ref, terms);
    return this.#risks.under(feedHarm(board, power), { of, most: terms.agreedPrice });
  }

  /** Money that each hypothesis loses at this power-up. */
  losses(power: PowerEvent, hypotheses: Hypotheses): Float64Array {
    const { board, terms, timeline } = this.#input;
    const { faults } = this.#priors;
    const harm = feedHarm(board, power);
    const cuts = harm.reaches === null ? mainsCuts(board, this.#priors) : NONE;
    const byFault = breakMoneyByFault(board, timeline.now, terms, this.#priors, (knock) =>
      knockOnHarm(harm, knock, faults),
    );
    return Float64Array.from(hypotheses.list, (hypothesis) => {
      const present = faultsOf(hypothesis, hypotheses);
      if (present.some((f) => cuts.has(f))) return 0;
      const all = present.reduce((sum, f) => sum + byFault[f], 0);
      return Math.min(terms.agreedPrice, all);
    });
  }

  /** The likeliest of what breaks at this power-up, each with its cause in words. */
  breaks(power: PowerEvent, { breaks }: PowerForecast): Forecast["breaks"] {
    const { board } = this.#input;
    const harm = feedHarm(board, power);
    return breaks
      .filter(({ probability }) => probability >= BREAK_LEAST)
      .slice(0, MOST_BREAKS)
      .map(({ part, probability }) => {
        const because = this.#risks.because(part, harm);
        return {
          part,
          probability,
          because:
            because === null
              ? said`some parts die at switch-on with nothing else wrong`
              : said`${faultNameWords(because.fault, board)} may be left (${percent(because.probability)}), the likeliest cause`,
        };
      });
  }
}
