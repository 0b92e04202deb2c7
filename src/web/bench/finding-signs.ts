/** One word for what a rule says of a figure. */
import { said } from "../../messages/said.ts";
import type { Finding } from "../../wire/fit-view.ts";

export const FINDING_SIGNS: Readonly<Record<Finding["says"], string>> = {
  bars: said`No`,
  asks: said`Only if`,
  open: said`Look up`,
  notes: said`Know`,
  meets: said`Kept`,
};
