/** What to do so that it does not happen again, by what happened. */
import type { PaperMessages } from "../messages/paper-catalogue.ts";
import type { Cause } from "../priors/cause.ts";

type AdviceKey = Extract<keyof PaperMessages, `advice.${string}`>;

/** Common practice in the trade, every row; that water leaves a higher risk behind is what shops say of their comebacks. */
export const ADVICE_BY_CAUSE: Readonly<Record<Cause, readonly AdviceKey[]>> = {
  surge: ["advice.surge.protect", "advice.surge.others"],
  water: ["advice.water.seal", "advice.water.later"],
  overload: ["advice.overload.load", "advice.overload.air"],
  age: ["advice.age.heat", "advice.overload.air"],
  insects: ["advice.insects.mesh"],
  impact: ["advice.impact.fasten"],
  unknown: ["advice.unknown.tell"],
};
