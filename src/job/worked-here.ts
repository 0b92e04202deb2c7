/** The board as this bench knows it: what parts cost here, and how long its hands take. */
import type { BenchState } from "../bench/bench-state.ts";
import type { BenchMinutes, Board, Part, PartMinutes } from "../board/board.ts";
import type { JobFigures } from "../learning/job-figures.ts";
import { actionMinutes, MINUTES } from "../money/minutes.ts";
import { FrozenMap } from "../units/frozen.ts";
import { pooledWith } from "./pooled-board.ts";

/** Actions whose minutes belong to a part. */
const PART_ACTIONS = ["lift", "refit", "remove", "restore", "replace"] as const;
/** Those that take a bench the same on any part. */
const BENCH_ACTIONS = ["measure", "look", "clip", "power", "unpower"] as const;

const UNTOUCHED: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };

/** Boards by what was learnt of them: caches behind a board are told apart by the object. */
const known = new WeakMap<Board, Map<string, Board>>();

/** The board with the prices, the minutes and the readings of good ones of these figures; the same figures give the same object, none the board itself. */
export function asWorkedHere(board: Board, figures: JobFigures | null): Board {
  if (figures === null) return board;
  const learnt = (action: string) => (figures.paces[action] ?? 1) !== 1;
  const paced = PART_ACTIONS.filter(learnt);
  const { paces, prices, references } = figures;
  const asItIs = Object.keys(prices).length + references.length === 0;
  if (asItIs && ![...PART_ACTIONS, ...BENCH_ACTIONS].some(learnt)) return board;
  const key = JSON.stringify([paces, prices, references]);
  const ofBoard = known.get(board) ?? new Map<string, Board>();
  known.set(board, ofBoard);
  const made = ofBoard.get(key);
  if (made !== undefined) return made;
  const parts = [...board.parts].map(([ref, part]): [string, Part] => [
    ref,
    {
      ...part,
      price: prices[ref] ?? part.price,
      minutes: minutesHere(board, part, figures, paced),
    },
  ]);
  const here: Board = {
    ...board,
    parts: new FrozenMap(parts),
    ...(references.length > 0 ? { references: pooledWith(board, references, []) } : {}),
    ...(BENCH_ACTIONS.some(learnt) ? { benchMinutes: benchMinutesHere(figures) } : {}),
  };
  ofBoard.set(key, here);
  return here;
}

function benchMinutesHere({ paces }: JobFigures): BenchMinutes {
  const here = (action: (typeof BENCH_ACTIONS)[number]) => MINUTES[action] * (paces[action] ?? 1);
  return {
    measure: here("measure"),
    look: here("look"),
    clip: here("clip"),
    power: here("power"),
    unpower: here("unpower"),
  };
}

function minutesHere(
  board: Board,
  part: Part,
  { paces }: JobFigures,
  paced: readonly (typeof PART_ACTIONS)[number][],
): PartMinutes {
  const minutes: Record<string, number> = { ...part.minutes };
  const [pin] = part.pins.keys();
  for (const action of paced) {
    if (pin === undefined) continue;
    const asked =
      action === "lift" || action === "refit"
        ? { do: action, place: `${part.ref}.${pin}` }
        : { do: action, part: part.ref };
    minutes[action] = actionMinutes(board, UNTOUCHED, asked) * (paces[action] ?? 1);
  }
  return minutes;
}
