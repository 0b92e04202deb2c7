/**
 * The rails of one transformer. They share its volts a turn: the regulated one sets them, the others follow their own load, and
 * all sag together when more is drawn than the supply can give.
 */
import type { RailRole } from "../board/roles.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { LOSS_SHARES, RAIL_SHARE, SUPPLY_MODEL } from "./live-models.ts";
import type { PartHeat, RailState } from "./rail-state.ts";
import { type RailTree, rectifierDrop } from "./rail-tree.ts";
import type { SupplyOutput, SupplyPlan } from "./supply-plan.ts";
import { isGone, type SupplyStart, supplyStart } from "./supply-state.ts";

/** Worst first. `none`: the board has no small supply that the model knows. */
export const SUPPLY_MODES = ["hiccup", "nothing", "runaway", "sags", "runs", "none"] as const;
export type SupplyMode = (typeof SUPPLY_MODES)[number];

export interface SupplyState {
  readonly plan: SupplyPlan;
  readonly mode: SupplyMode;
  readonly why: string;
  /** drawn from the input, mean watts */
  readonly watts: number;
  /** volts of the winding that feeds its own control against nominal */
  readonly windingShare: number;
  readonly rails: readonly RailState[];
  readonly heats: readonly PartHeat[];
}

interface Secondary {
  readonly output: SupplyOutput;
  readonly rail: RailRole;
  readonly dropVolts: number;
  readonly ohms: number;
  /** volts of its winding while it conducts, where all is nominal */
  readonly nominalVolts: number;
  /** its path from winding to rail is open */
  readonly open: boolean;
  readonly reservoir: "good" | "dry" | "lost";
  readonly farads: number;
}

/** Share of its farads under which a reservoir is as good as lost, and under which it is dry. */
const RESERVOIR = { lost: 0.15, dry: 0.7 } as const;
const BISECTIONS = 40;

function reservoirOf(board: FaultedBoard, rail: RailRole): Pick<Secondary, "reservoir" | "farads"> {
  let nominal = 0;
  let farads = 0;
  for (const ref of rail.bulk) {
    const own = board.board.parts.get(ref);
    if (own === undefined) continue;
    nominal += own.value.farads ?? 0;
    if (!isGone(board, ref)) farads += board.farads(own, own.value.farads ?? 0);
  }
  const share = nominal === 0 ? 1 : farads / nominal;
  return {
    reservoir: share < RESERVOIR.lost ? "lost" : share < RESERVOIR.dry ? "dry" : "good",
    farads: Math.max(farads, 0.1e-6),
  };
}

function secondaries(
  board: FaultedBoard,
  plan: SupplyPlan,
  tree: RailTree,
  good: RailTree,
): readonly Secondary[] {
  return plan.outputs.flatMap((output) => {
    const rail = tree.rails.find((one) => one.name === output.rail);
    if (rail === undefined) return [];
    const dropVolts = rectifierDrop(board.board.parts.get(output.diodes[0] ?? "")?.value.type);
    const ohms = output.ohms + SUPPLY_MODEL.secondaryOhms;
    const volts = Math.abs(rail.volts);
    const nominalVolts = volts + dropVolts + ohms * good.draw(rail, volts);
    const open =
      isGone(board, plan.transformer, output.winding) || output.diodes.every((ref) => isGone(board, ref));
    return [{ output, rail, dropVolts, ohms, nominalVolts, open, ...reservoirOf(board, rail) }];
  });
}

/** Volts of a rail (whatever its sign) behind a winding of `volts`: less its diode's drop and what its load costs in the winding. */
function railVolts(tree: RailTree, one: Secondary, volts: number): number {
  if (one.open || volts <= one.dropVolts) return 0;
  let [low, high] = [0, volts - one.dropVolts];
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2;
    if (middle + one.dropVolts + one.ohms * tree.draw(one.rail, middle) > volts) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Watts that the windings give at this share of their nominal volts. */
function wattsAt(tree: RailTree, all: readonly Secondary[], share: number): number {
  return all.reduce((sum, one) => {
    const winding = share * one.nominalVolts;
    const volts = railVolts(tree, one, winding);
    return sum + winding * tree.draw(one.rail, volts);
  }, 0);
}

function mostWatts(board: FaultedBoard, plan: SupplyPlan): number {
  const rated = board.board.parts.get(plan.switcher)?.value.watts ?? SUPPLY_MODEL.watts;
  return rated * SUPPLY_MODEL.limitTimes;
}

/** The share of nominal winding volts at which the windings give just what the supply can. */
function shareAtLimit(tree: RailTree, all: readonly Secondary[], from: number, watts: number): number {
  let [low, high] = [0, from];
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2;
    if (wattsAt(tree, all, middle) > watts) high = middle;
    else low = middle;
  }
  return low;
}

/** A rail below its 0 V has its diode turned round. */
function signed(one: Secondary, volts: number): number {
  return one.rail.volts < 0 ? -volts : volts;
}

/** What is left on a rail without its reservoir: a meter shows a mean that is low, with much on it. From memory. */
const WITHOUT_RESERVOIR = { good: [1, 0.002, 0], dry: [0.99, 0.008, 0.01], lost: [0.8, 0.25, 0.12] } as const;

function running(
  tree: RailTree,
  all: readonly Secondary[],
  regulated: string | null,
  share: number,
  runaway: boolean,
): readonly RailState[] {
  return all.flatMap((one) => {
    const [times, ripple, doubt] = WITHOUT_RESERVOIR[one.reservoir];
    const volts = railVolts(tree, one, share * one.nominalVolts) * times;
    const own = one.rail.name === regulated ? RAIL_SHARE.regulated : RAIL_SHARE.crossed;
    return tree.settle(
      one.rail,
      signed(one, volts),
      volts * ripple,
      (runaway ? RAIL_SHARE.runaway : own) + doubt,
    );
  });
}

/** Rails while the supply tries and stops: up for a moment, then falling with their own load until the next try. */
function hiccuping(tree: RailTree, all: readonly Secondary[], share: number): readonly RailState[] {
  const { hiccupDuty, hiccupSeconds } = SUPPLY_MODEL;
  return all.flatMap((one) => {
    const top = railVolts(tree, one, share * one.nominalVolts);
    const siemens = tree.draw(one.rail, Math.max(top, 0.1)) / Math.max(top, 0.1);
    const fall = one.farads / Math.max(siemens, 1e-6);
    const off = hiccupSeconds * (1 - hiccupDuty);
    const held = (fall / hiccupSeconds) * -Math.expm1(-off / fall);
    const volts = top * Math.min(1, hiccupDuty + held);
    const ripple = Math.sqrt(Math.max(0, volts * (top - volts)));
    const doubt = RAIL_SHARE.hiccup * Math.abs(volts / one.rail.volts);
    return tree.settle(one.rail, signed(one, volts), ripple, doubt, false);
  });
}

function supplyHeats(plan: SupplyPlan, input: number, output: number): readonly PartHeat[] {
  const lost = Math.max(0, input - output);
  const { switcher, transformer, outputs } = plan;
  return [
    { part: switcher, watts: LOSS_SHARES.switcher * lost },
    { part: transformer, watts: LOSS_SHARES.transformer * lost },
    ...outputs.flatMap(({ diodes }) =>
      diodes.map((part) => ({
        part,
        watts: (LOSS_SHARES.rectifiers * lost) / outputs.length / diodes.length,
      })),
    ),
  ];
}

/** What a try at each period costs from the input, mean watts. */
function hiccupWatts(board: FaultedBoard, plan: SupplyPlan): number {
  return (mostWatts(board, plan) / SUPPLY_MODEL.efficiency) * SUPPLY_MODEL.hiccupDuty;
}

/** The supply with its rails. `good` is the tree of the board without its faults: what the transformer was wound for. */
export function supplyState(
  board: FaultedBoard,
  plan: SupplyPlan,
  tree: RailTree,
  good: RailTree,
  inputVolts: number,
): SupplyState {
  const all = secondaries(board, plan, tree, good);
  const outputsGone = new Set(all.flatMap((one) => (one.open ? [one.rail.name] : [])));
  const start = supplyStart(board, plan, inputVolts, outputsGone);
  const { why } = start;
  if (start.does === "nothing")
    return {
      plan,
      mode: "nothing",
      why,
      watts: 0,
      windingShare: 0,
      heats: [],
      rails: running(tree, all, null, 0, false),
    };
  const hiccup = (share: number, because: string): SupplyState => {
    const watts = hiccupWatts(board, plan);
    const rails = hiccuping(tree, all, share);
    return {
      plan,
      mode: "hiccup",
      why: because,
      watts,
      windingShare: share,
      rails,
      heats: supplyHeats(plan, watts, LOSS_SHARES.tryingOutput * watts),
    };
  };
  if (start.does === "hiccup") return hiccup(0.5, why);
  return loaded(board, plan, tree, all, start, hiccup);
}

function loaded(
  board: FaultedBoard,
  plan: SupplyPlan,
  tree: RailTree,
  all: readonly Secondary[],
  start: Extract<SupplyStart, { does: "run" }>,
  hiccup: (share: number, why: string) => SupplyState,
): SupplyState {
  const regulated = all.find((one) => one.rail.name === plan.loop?.rail) ?? all[0];
  const held =
    start.volts === null || regulated === undefined
      ? SUPPLY_MODEL.runawayTimes
      : (start.volts + regulated.dropVolts + regulated.ohms * tree.draw(regulated.rail, start.volts)) /
        regulated.nominalVolts;
  // Whatever the loop asks for, the control stops at its own over-voltage.
  const wanted = Math.min(held, SUPPLY_MODEL.runawayTimes);
  const most = mostWatts(board, plan);
  const over = wattsAt(tree, all, wanted) > most;
  const share = over ? shareAtLimit(tree, all, wanted, most) : wanted;
  if (over && share < SUPPLY_MODEL.collapseShare) return hiccup(share, "more is drawn than it can give");
  if (share < SUPPLY_MODEL.collapseShare)
    return hiccup(share, "it regulates too low to feed its own control");
  const runaway = wanted === SUPPLY_MODEL.runawayTimes && !over;
  const output = wattsAt(tree, all, share);
  const watts = output / SUPPLY_MODEL.efficiency + SUPPLY_MODEL.ownWatts;
  return {
    plan,
    mode: runaway ? "runaway" : over ? "sags" : "runs",
    why: over ? "more is drawn than it can give" : start.why,
    watts,
    windingShare: share,
    rails: running(tree, all, plan.loop?.rail ?? null, share, runaway),
    heats: supplyHeats(plan, watts, output),
  };
}
