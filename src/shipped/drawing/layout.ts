/**
 * Where the parts stand: stage beside stage as the current flows, the mains on the left and the motor on the right, what makes
 * and uses the small supplies below. Lengths in millimetres.
 */
import type { Board, Part } from "../../board/board.ts";
import { connectorBody } from "./bodies.ts";
import { footprintOf } from "./footprint.ts";
import type { Footprint } from "./footprint-shape.ts";
import { terminalNets } from "./terminals.ts";

export interface Placed {
  readonly ref: string;
  /** null: terminals of the mains and of other wires, whose legs are nets */
  readonly part: Part | null;
  readonly footprint: Footprint;
  readonly x: number;
  readonly y: number;
}

/** The ground of a stage, for its outline and its word. */
export interface Ground {
  readonly stage: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly placed: readonly Placed[];
  readonly grounds: readonly Ground[];
}

const POWER_BAND = ["input", "inrush", "rectifier", "pfc", "bus", "chopper", "inverter", "output"];
/** Any other word stands at the end of the lower band. */
const LOW_BAND = ["supply", "standby", "drive", "logic", "sensor"];
const EDGE = 4;
/** height of the line that the stage's word is written on */
const TITLE = 4;
const GAP = 2.5;
/** Width over height of a board (common practice: lying in a long case). */
const ASPECT = 1.5;
const WIDEST = 600;

type Item = Pick<Placed, "ref" | "part" | "footprint">;

interface Packed {
  readonly width: number;
  readonly height: number;
  readonly placed: readonly Placed[];
}

export function layOut(board: Board): Layout {
  const stages = stagesOf(board);
  const upper = POWER_BAND.flatMap((stage) => stages.get(stage) ?? []);
  const known = new Set(POWER_BAND);
  const rest = [...stages.keys()].filter((stage) => !known.has(stage) && !LOW_BAND.includes(stage));
  const lower = [...LOW_BAND, ...rest].flatMap((stage) => stages.get(stage) ?? []);
  for (let width = 60; width < WIDEST; width += 4) {
    const bands = [shallowest(upper, width), shallowest(lower, width)];
    const height = bands.reduce((sum, band) => sum + (band[0]?.height ?? 0) + GAP, 2 * EDGE - GAP);
    if (width + 2 * EDGE >= ASPECT * height) return placeBands(bands, width, height);
  }
  throw new Error(`the parts of ${board.name} find no place on a board ${WIDEST} mm wide`);
}

/** A stage and how deep its parts come to lie in a block of each width tried, narrowest first. */
interface StageItems {
  readonly stage: string;
  readonly items: readonly Item[];
  readonly depths: readonly { readonly width: number; readonly depth: number }[];
}

function stagesOf(board: Board): ReadonlyMap<string, StageItems> {
  const stages = new Map<string, Item[]>();
  const put = (stage: string, item: Item) => stages.set(stage, [...(stages.get(stage) ?? []), item]);
  const mains = [...board.supply.at, ...(board.nets.has("PE") ? ["PE"] : [])];
  put("input", { ref: "MAINS", part: null, footprint: connectorBody(mains) });
  const wires = terminalNets(board);
  if (wires.length > 0) put("output", { ref: "WIRES", part: null, footprint: connectorBody(wires) });
  for (const part of board.parts.values())
    put(part.stage ?? "other", { ref: part.ref, part, footprint: footprintOf(part) });
  return new Map(
    [...stages].map(([stage, unsorted]) => {
      // The tallest first, so that rows are even; what is alike stays in the order of the file.
      const items = [...unsorted].sort((a, b) => b.footprint.height - a.footprint.height);
      return [stage, { stage, items, depths: depthsOf(items) }];
    }),
  );
}

function depthsOf(items: readonly Item[]): StageItems["depths"] {
  const narrowest = Math.max(8, ...items.map(({ footprint }) => footprint.width));
  const inOneRow = items.reduce((sum, { footprint }) => sum + footprint.width, 0);
  const depths: { width: number; depth: number }[] = [];
  for (let width = narrowest; width < inOneRow + 2; width += 2)
    depths.push({ width, depth: inRows(items, width).height });
  return depths;
}

interface Block extends Packed {
  readonly stage: string;
}

/** The stages side by side within the width, as shallow as they go. */
function shallowest(stages: readonly StageItems[], width: number): readonly Block[] {
  for (let height = 12; ; height += 3) {
    const widths = stages.map(({ depths }) => depths.find(({ depth }) => depth <= height - TITLE)?.width);
    const across = widths.reduce<number>((sum, one) => sum + (one ?? WIDEST) + GAP, -GAP);
    if (across <= width || height > WIDEST)
      return stages.map(({ stage, items }, index) => ({
        stage,
        ...inRows(items, widths[index] ?? width),
        height,
      }));
  }
}

function inRows(items: readonly Item[], width: number): Packed {
  let [x, y, rowHeight] = [0, 0, 0];
  const placed = items.map((item): Placed => {
    const { footprint } = item;
    if (x > 0 && x + footprint.width > width) {
      x = 0;
      y += rowHeight;
      rowHeight = 0;
    }
    const here = { ...item, x, y };
    x += footprint.width;
    rowHeight = Math.max(rowHeight, footprint.height);
    return here;
  });
  return { width, height: y + rowHeight, placed };
}

function placeBands(bands: readonly (readonly Block[])[], width: number, height: number): Layout {
  const placed: Placed[] = [];
  const grounds: Ground[] = [];
  let y = EDGE;
  for (const band of bands) {
    const used = band.reduce((sum, block) => sum + block.width, 0);
    // what is left over widens the gaps, so that both bands end at the same edge
    const gap = band.length > 1 ? (width - used) / (band.length - 1) : 0;
    let x = EDGE;
    for (const block of band) {
      grounds.push({ stage: block.stage, x, y, width: block.width, height: block.height });
      for (const one of block.placed) placed.push({ ...one, x: x + one.x, y: y + TITLE + one.y });
      x += block.width + gap;
    }
    y += (band[0]?.height ?? 0) + GAP;
  }
  return { width: width + 2 * EDGE, height, placed, grounds };
}
