/** What happened to a board, in words. */
import { said } from "../messages/said.ts";
import type { Cause } from "../priors/cause.ts";

export const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  water: said`Water`,
  surge: said`Surge`,
  overload: said`Overload`,
  age: said`Age`,
  insects: said`Insects`,
  impact: said`Impact`,
  unknown: said`Not known`,
};
