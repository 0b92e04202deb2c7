import type { Outcome } from "./players/course.ts";
import { PLAYERS, type PlayerName, type Trial } from "./trial.ts";

/** An outcome of a job that paid, with some of it changed. */
function outcome(change: Partial<Outcome>): Outcome {
  const whole: Outcome = {
    verdict: "repaired",
    minutes: 60,
    partsMoney: 10,
    income: 140,
    profit: 0,
    state: "works",
    falselyRepaired: false,
    lifts: 0,
    powerUps: 1,
    secondTries: 0,
    goodReplaced: [],
    slips: 0,
    unanswered: [],
    left: [],
    ...change,
  };
  return { ...whole, profit: whole.income - whole.partsMoney - whole.minutes / 2 };
}

/** A trial in which every player repairs the board alike, with some of it changed. */
export function trialOf(
  seed: number,
  players: Partial<Record<PlayerName, Partial<Outcome>>>,
  change: Partial<Trial> = {},
): Trial {
  const each = <T>(value: (player: PlayerName) => T) =>
    Object.fromEntries(PLAYERS.map((player) => [player, value(player)])) as Record<PlayerName, T>;
  return {
    readings: "oracle",
    board: "greenhouse-fan-drive",
    cause: "age",
    symptom: "dead",
    seed,
    differences: [],
    arrived: ["K1.coil:open"],
    mattering: ["K1"],
    outcomes: each((player) => outcome(players[player] ?? {})),
    proposals: [100],
    seconds: each(() => 1),
    log: [],
    steps: [],
    ...change,
  };
}
