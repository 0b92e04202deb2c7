import { shippedBoards } from "../oracle/shipped-boards.ts";
import { evaluationBoards, type NamedBoard } from "./evaluation-boards.ts";

/** Stands for the boards made for evaluation only, in the place of a board's id. */
const EVALUATION_ONLY = "evaluation";

/** The boards that a measurement runs over: the shipped ones, those made for evaluation only, or one of either by its id. */
export function judgedBoards(asked: string | undefined): readonly NamedBoard[] {
  if (asked === undefined) return shippedBoards();
  if (asked === EVALUATION_ONLY) return evaluationBoards();
  const all = [...shippedBoards(), ...evaluationBoards()];
  const found = all.filter(({ id }) => id === asked);
  if (found.length === 0)
    throw new Error(
      `there is no board ${asked}: name one of ${all.map(({ id }) => id).join(", ")}, or ${EVALUATION_ONLY}`,
    );
  return found;
}
