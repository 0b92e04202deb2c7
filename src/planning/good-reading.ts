import { coldCheckOf } from "../diagnosis/cold-evidence.ts";
import type { MeterReading, Predictor } from "../meter/prediction.ts";
import type { Action } from "./proposal.ts";

/** What a good board would show at a cold check; null where the step is none, or the circuit does not settle. */
export function goodReading(predictor: Predictor, action: Action): MeterReading | null {
  const check = action.do === "measure" ? coldCheckOf(action) : null;
  if (check === null) return null;
  const good = predictor.predict(check, []);
  return good.solved ? good : null;
}
