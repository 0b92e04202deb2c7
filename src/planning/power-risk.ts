import type { PowerEvent } from "../bench/event.ts";
import { faultNameWords } from "../board/fault-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { feedHarm } from "../priors/feed-harm.ts";
import { type PowerForecast, PowerRisks } from "../safety/forecast.ts";
import { IDLE_WATTS, lampAdvice, lampFor, NO_LAMP } from "../safety/limiter.ts";
import { percent } from "./faults-in-words.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Forecast } from "./proposal.ts";
import { lossMoney } from "./repair-model.ts";

const BREAK_LEAST = 0.005;
const MOST_BREAKS = 6;

/** What power would break on the board as it is believed to be, asked feed by feed. */
export class PowerRisk {
  readonly #input: PlanningInput;
  readonly #risks: PowerRisks;

  constructor(input: PlanningInput, belief: Belief, priors: PriorTable) {
    this.#input = input;
    this.#risks = new PowerRisks(belief, priors, input.timeline.now.off);
  }

  /** Chances and money of one power-up. */
  under(power: PowerEvent): PowerForecast {
    const { board, terms, timeline } = this.#input;
    const of = (ref: string): number => lossMoney(board, timeline.now, ref, terms);
    return this.#risks.under(feedHarm(board, power), { of, most: terms.agreedPrice });
  }

  /** The forecast shown with a power-up: what breaks, why, and what the other feed would do. */
  forecast(power: PowerEvent): Forecast {
    const { board } = this.#input;
    const harm = feedHarm(board, power);
    const { anyBreaks, breaks } = this.under(power);
    return {
      anyBreaks,
      breaks: breaks
        .filter(({ probability }) => probability >= BREAK_LEAST)
        .slice(0, MOST_BREAKS)
        .map(({ part, probability }) => {
          const because = this.#risks.because(part, harm);
          return {
            part,
            probability,
            because:
              because === null
                ? "some parts die at switch-on with nothing else wrong"
                : `${faultNameWords(because.fault, board)} may be left (${percent(because.probability)}), the likeliest cause`,
          };
        }),
      advice: this.#advice(power),
    };
  }

  #advice(power: PowerEvent): string {
    const { equipment } = this.#input;
    const lamp = lampFor(equipment, IDLE_WATTS);
    if (lamp === null) return NO_LAMP;
    if (power.feed !== "lamp") return "On the mains only through the right fuse.";
    return `${this.#feedWords("Through the lamp", power)}; ${this.#feedWords("straight on the mains", { do: "power", feed: "mains" })}. ${lampAdvice(lamp, IDLE_WATTS)}`;
  }

  #feedWords(feed: string, power: PowerEvent): string {
    const { anyBreaks, lossMoney } = this.under(power);
    return `${feed} ${percent(anyBreaks)} that something breaks, ${lossMoney.toFixed(lossMoney < 10 ? 1 : 0)} ${this.#input.terms.currency} on the average`;
  }
}
