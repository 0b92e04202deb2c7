/** The ladder as the card shows it: each rung done, next, open or shut, and what would open it. */

import { OBSERVED_WORDS } from "../bench/words.ts";
import { said } from "../messages/said.ts";
import { motorCheck, motorsOf } from "../safety/motor-check.ts";
import { commaList } from "./faults-in-words.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import {
  benchRungs,
  lampRung,
  mainsRung,
  pulsed,
  type Rung,
  type Tried,
  triedRungs,
} from "./power-ladder.ts";
import { RUNGS, type RungId } from "./power-rungs.ts";
import type { RungState } from "./proposal.ts";

const ANY_RAIL = said`bench supply into a rail`;

type State = Omit<RungState, "name">;

const open = (note: string | null): State => ({ state: "open", note });
const shut = (note: string): State => ({ state: "shut", note });

/**
 * Rails together as one rung, the motor's rung only where there is one.
 * @param now - the rung proposed
 */
export function ladderStates(input: PlanningInput, now: Rung): readonly RungState[] {
  const { board, timeline } = input;
  const tried = triedRungs(board, timeline);
  const motors = motorsOf(board, absentParts(input));
  const ids: readonly RungId[] =
    motors.length > 0 ? ["A", "C", "D", "E", "F", "H"] : ["A", "C", "D", "E", "F"];
  const given = { input, now, tried };
  return ids.flatMap((id) => {
    const state = stateOf(id, given);
    return state === null ? [] : [{ name: id === "A" ? ANY_RAIL : RUNGS[id].name, ...state }];
  });
}

interface Given {
  readonly input: PlanningInput;
  readonly now: Rung;
  readonly tried: readonly Tried[];
}

/** What is said of one rung; null where it does not come up. */
function stateOf(id: RungId, given: Given): State | null {
  const { now } = given;
  const same = (other: RungId) => other === id || (id === "A" && other === "B");
  const own = given.tried.filter((one) => same(one.id));
  if (same(now.id)) return { state: "now", note: null };
  const last = own.at(-1);
  if (last?.came === "passed") return { state: "done", note: null };
  if (last?.came === "stopped" && id === "E" && pulsed(last))
    return shut(said`it pulsed, which may be the lamp itself, and no larger one is at hand`);
  if (last?.came === "stopped")
    return shut(
      last.seen.length === 0
        ? said`it showed nothing that was written down: work on the board first`
        : said`it showed ${commaList(last.seen.map((seen) => OBSERVED_WORDS[seen]))}: work on the board first`,
    );
  switch (id) {
    case "E":
      return lampState(given);
    case "F":
    case "H":
      return mainsState(id, given);
    default:
      return benchState(id, given);
  }
}

function benchState(id: RungId, { input, tried }: Given): State {
  if (id === "D" && !input.equipment.includes("high-voltage-supply"))
    return shut(said`wants an isolated supply of 100 to 150 V DC with a current limit`);
  if (id !== "D" && !input.equipment.includes("bench-supply"))
    return shut(said`wants a bench supply with a current limit`);
  const has = benchRungs(input).some((one) => one.id === id || (id === "A" && one.id === "B"));
  if (!has) return shut(said`nothing on this board that it could feed`);
  const borne = tried.some(({ event, came }) => event.feed !== "bench" && came === "passed");
  return open(borne ? said`not needed: the board has borne more` : said`spares less than its minutes cost`);
}

function lampState({ input, now }: Given): State {
  if (lampRung(input) === null) return shut(said`wants a series lamp: 100 W, filament or halogen`);
  return open(now.action.feed === "mains" ? said`spares less than its minutes cost` : null);
}

function mainsState(id: "F" | "H", { input }: Given): State | null {
  const { board, timeline } = input;
  // where a motor is plugged in, the mains come with it
  const plugged = mainsRung(input).id === "H";
  if (plugged || id === "F") return plugged === (id === "H") ? shut(lampFirst(input)) : null;
  const [reason] = motorsOf(board, absentParts(input)).flatMap((motor) => {
    const { against } = motorCheck(board, timeline, motor);
    return against === null ? [] : [against];
  });
  return shut(
    reason === undefined
      ? said`after the mains without its motor; then its plug goes back on`
      : said`${reason}: until it reads well, or is overruled`,
  );
}

function lampFirst(input: PlanningInput): string {
  return lampRung(input) === null
    ? said`after the rung below`
    : said`after the lamp has gone dark or dim, and the bus has been read at its volts`;
}
