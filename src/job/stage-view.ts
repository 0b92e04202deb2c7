/** The board's stages from mains to motor, and what the readings have said of each. */

import type { Board, Part } from "../board/board.ts";
import { isEarth } from "../board/earth-net.ts";
import type { Suspect } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import type { Believed } from "./assess.ts";
import type { StageState, StageView } from "./stage-view-shape.ts";

interface StageWords {
  readonly stage: string;
  readonly words: string;
  readonly path: StageView["path"];
  /** what feeds it as a rule, the likeliest first (common practice) */
  readonly from: readonly string[];
}

/** In the order in which the mains goes through them. */
const STAGES: readonly StageWords[] = [
  { stage: "input", words: said`Mains input`, path: "power", from: [] },
  { stage: "rectifier", words: said`Rectifier`, path: "power", from: ["inrush", "input"] },
  { stage: "inrush", words: said`Inrush limiting`, path: "power", from: ["input", "rectifier"] },
  { stage: "pfc", words: said`Boost`, path: "power", from: ["rectifier"] },
  { stage: "bus", words: said`DC bus`, path: "power", from: ["pfc", "inrush", "rectifier"] },
  { stage: "chopper", words: said`Brake chopper`, path: "power", from: ["bus"] },
  { stage: "inverter", words: said`Inverter`, path: "power", from: ["bus", "rectifier"] },
  { stage: "output", words: said`Output and motor`, path: "power", from: ["inverter", "input"] },
  { stage: "supply", words: said`Small supply`, path: "small", from: ["bus", "pfc", "rectifier", "inrush"] },
  { stage: "standby", words: said`Standby supply`, path: "small", from: ["supply", "bus", "rectifier"] },
  { stage: "drive", words: said`Gate drive`, path: "small", from: ["supply", "standby"] },
  { stage: "logic", words: said`Controller`, path: "small", from: ["supply", "standby", "drive"] },
  { stage: "sensor", words: said`Sensors`, path: "small", from: ["logic", "supply"] },
];

/** From here on what a reading could have shown counts as suspected, parts and stages alike; below it as cleared (from memory). */
const SUSPECT_FROM = 0.05;

/** What of a believed job the map is made of. */
interface Known {
  readonly job: Pick<Believed["job"], "board">;
  readonly belief: Pick<Believed["belief"], "suspects">;
  readonly timeline: { readonly now: Pick<Believed["timeline"]["now"], "off"> };
}

/** Every stage that the board has, the power path first; costs a look at the reasons of every part. */
export function stageViews({ job: { board }, belief, timeline }: Known): readonly StageView[] {
  const parts = partsByStage(board);
  const words = wordsOfStages(board, parts);
  return words.map(({ stage, words: named, path, from }, index) => {
    const before = new Set(words.slice(0, index).map((other) => other.stage));
    const here = new Set(
      (parts.get(stage) ?? []).map(({ ref }) => ref).filter((ref) => !timeline.now.off.has(ref)),
    );
    const source = from.find(
      (other) => before.has(other) && joined(board, parts.get(other), parts.get(stage)),
    );
    return {
      stage,
      words: named,
      path,
      from: source ?? null,
      parts: here.size,
      ...standing(belief.suspects.filter(({ part }) => here.has(part))),
    };
  });
}

function partsByStage(board: Board): ReadonlyMap<string, readonly Part[]> {
  const stages = new Map<string, Part[]>();
  for (const part of board.parts.values()) {
    const stage = part.stage ?? "other";
    stages.set(stage, [...(stages.get(stage) ?? []), part]);
  }
  return stages;
}

/** The stages of the table that the board has, and then the board's own words for others. */
function wordsOfStages(board: Board, parts: ReadonlyMap<string, unknown>): readonly StageWords[] {
  const known = STAGES.filter(({ stage }) => parts.has(stage));
  const others = [...parts.keys()].filter((stage) => !STAGES.some((one) => one.stage === stage));
  return [
    ...inOrder(known, board),
    ...others.map((stage) => ({ stage, words: stage, path: "small" as const, from: [] })),
  ];
}

/** Charging through a resistor behind the rectifier: the inrush parts stand there, not before it. */
function inOrder(stages: readonly StageWords[], board: Board): readonly StageWords[] {
  const bridge = [...board.parts.values()].find(({ kind }) => kind === "bridge");
  const plus = bridge?.pins.get("plus");
  const behind = [...board.parts.values()].some(
    ({ stage, pins }) => stage === "inrush" && plus !== undefined && [...pins.values()].includes(plus),
  );
  if (behind) return stages;
  const inrush = stages.find(({ stage }) => stage === "inrush");
  return stages
    .filter((one) => one !== inrush)
    .flatMap((one) => (one.stage === "rectifier" && inrush !== undefined ? [inrush, one] : [one]));
}

/** Do two stages share a net that is neither the board's zero nor earth? */
function joined(board: Board, a: readonly Part[] = [], b: readonly Part[] = []): boolean {
  const common = (net: string) => net === board.zero || isEarth(board, net);
  const nets = new Set(a.flatMap(({ pins }) => [...pins.values()]));
  return b.some(({ pins }) => [...pins.values()].some((net) => nets.has(net) && !common(net)));
}

type Standing = Pick<StageView, "state" | "probability" | "suspects" | "masked" | "maskedBy" | "untested">;

function standing(suspects: readonly Suspect[]): Standing {
  const known = suspects.map((suspect) => ({ suspect, because: suspect.because() }));
  const hidden = known.filter(({ because }) => because.maskedBy.length > 0 && because.speaksFor.length === 0);
  const untested = known.filter((one) => one.because.untested && !hidden.includes(one));
  const heard = known.filter((one) => !hidden.includes(one) && !untested.includes(one));
  const suspected = chance(heard) >= SUSPECT_FROM ? suspectedOf(heard) : [];
  const state: StageState =
    suspected.length > 0
      ? "suspect"
      : chance(hidden) >= Math.max(SUSPECT_FROM, chance(untested))
        ? "masked"
        : untested.length === known.length || chance(untested) >= SUSPECT_FROM
          ? "untested"
          : "cleared";
  return {
    state,
    probability: chance(known),
    suspects: suspected.map(({ suspect: { part, probability } }) => ({ part, probability })),
    masked: hidden.map(({ suspect }) => suspect.part),
    maskedBy: [...new Set(hidden.flatMap(({ because }) => because.maskedBy))],
    untested: untested.map(({ suspect }) => suspect.part),
  };
}

interface Judged {
  readonly suspect: Suspect;
}

/** Those that count by themselves; where only all together do, the first of them. */
function suspectedOf<T extends Judged>(heard: readonly T[]): readonly T[] {
  const each = heard.filter(({ suspect }) => suspect.probability >= SUSPECT_FROM);
  return each.length > 0 ? each : heard.slice(0, 1);
}

/** That at least one of the parts is faulty, taken as independent. */
function chance(parts: readonly Judged[]): number {
  return 1 - parts.reduce((whole, { suspect }) => whole * (1 - suspect.probability), 1);
}
