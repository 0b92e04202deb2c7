import { withReferences } from "../meter/good-readings.ts";
import { OTHER_METERS } from "../meter/other-meters.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import { sharingPredictors } from "../meter/predictor.ts";
import type { Cause } from "../priors/cause.ts";

/** Ohms of insulation to expect of a board that this happened to; undefined: a dry one's. */
export function insulationOhms(cause: Cause): number | undefined {
  return cause === "water" ? OTHER_METERS.wetBoardOhms : undefined;
}

/** Makes predictors of one board that this happened to, which share their room: a wet one's readings of megohms are blurred. */
export function predictorsAfter(cause: Cause): MakePredictor {
  return withReferences(sharingPredictors(insulationOhms(cause)));
}
