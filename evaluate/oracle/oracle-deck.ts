/** An oracle board in one state of the bench as the lines of a deck. */
import type { BenchState } from "../../src/bench/bench-state.ts";
import type { Place } from "../../src/bench/event.ts";
import { pinOfPlace } from "../../src/bench/place.ts";
import type { Board } from "../../src/board/board.ts";
import type { Fault, PartFault } from "../../src/board/fault.ts";
import { withFaults } from "./faults-in-elements.ts";
import { type Element, Inside, type Room } from "./inside.ts";
import { layOutOraclePart } from "./oracle-parts.ts";

/** Dirt or moisture between two nets. */
export interface SurfaceLeak {
  readonly nets: readonly [string, string];
  readonly ohms: number;
}

/** What stands on the bench. */
export interface OnTheBench {
  /** the board as it is, and the file that the technician reads pin names from */
  readonly board: Board;
  readonly file: Board;
  readonly room: Room;
  readonly bench: BenchState;
  readonly faults: readonly Fault[];
  /** how often each part was replaced */
  readonly generations: ReadonlyMap<string, number>;
  readonly leaks: readonly SurfaceLeak[];
}

export interface CircuitLines {
  readonly lines: readonly string[];
  /** the deck's name of the net a place is on; throws where neither board nor file has the place */
  readonly at: (place: Place) => string;
}

/** Every net leaks this much over the laminate, so that none floats. */
const LAMINATE_OHMS = 2e11;

function netName({ board, file, bench }: OnTheBench, ref: string, pin: string): string | null {
  const part = board.parts.get(ref);
  const net = part?.pins.get(pin);
  // of a part that the file has and the board has not, the pads are there
  if (part === undefined) return file.parts.get(ref)?.pins.get(pin) ?? null;
  if (net === undefined) return null;
  const place = `${ref}.${pin}`;
  return bench.off.has(ref) || bench.lifted.has(place) ? place : net;
}

/** Elements of every part on the bench, parts in the hand included. */
function elementsOf(on: OnTheBench): readonly Element[] {
  const railVolts = (net: string): number | null =>
    on.board.rails.find((rail) => rail.net === net)?.volts ?? null;
  return [...on.board.parts.values()].flatMap((part) => {
    const inside = new Inside(
      part,
      on.room,
      on.generations.get(part.ref) ?? 0,
      (pin) => netName(on, part.ref, pin),
      railVolts,
    );
    layOutOraclePart(inside);
    const own = on.faults.filter(
      (fault): fault is PartFault => fault.of === "part" && fault.part === part.ref,
    );
    return withFaults(inside, own);
  });
}

/**
 * @param watched - the circuit is watched while it charges: what stands for a settled ladder is left out
 */
export function circuitLines(on: OnTheBench, watched: boolean): CircuitLines {
  const numbers = new Map<string, string>([[on.board.zero, "0"]]);
  const spice = (net: string): string => {
    const known = numbers.get(net);
    if (known !== undefined) return known;
    const name = `n${numbers.size}`;
    numbers.set(net, name);
    return name;
  };
  const models = new Map<string, string>();
  const lines = elementsOf(on).flatMap((one, index) =>
    watched && one.settledOnly ? [] : [lineOf(one, index, spice, models)],
  );
  const at = (place: Place): string => {
    const pin = pinOfPlace(place);
    const net = pin === null ? place : netName(on, pin.ref, pin.pin);
    if (net === null || (pin === null && !on.board.nets.has(net) && !on.file.nets.has(net)))
      throw new Error(`neither the board nor its file has a place ${place}`);
    return spice(net);
  };
  const bridged: [string, string, number][] = [
    ...on.leaks.map(({ nets, ohms }): [string, string, number] => [spice(nets[0]), spice(nets[1]), ohms]),
    ...on.faults.flatMap((fault): [string, string, number][] =>
      fault.of === "nets" ? [[spice(fault.nets[0]), spice(fault.nets[1]), fault.value ?? 1000]] : [],
    ),
    ...on.bench.clips.map((clip): [string, string, number] => [
      at(clip.at[0]),
      at(clip.at[1]),
      Math.max(clip.ohms, 1e-3),
    ]),
  ];
  for (const [index, [from, to, ohms]] of bridged.entries())
    lines.push(`rleak${index} ${from} ${to} ${ohms.toExponential(6)}`);
  for (const net of on.board.nets.keys()) spice(net);
  for (const [model, name] of models) lines.push(`.model ${name} ${model}`);
  return {
    lines: [...lines, ...laminate(numbers)],
    at,
  };
}

function laminate(numbers: ReadonlyMap<string, string>): string[] {
  return [...numbers.values()]
    .filter((name) => name !== "0")
    .map((name) => `rlam_${name} ${name} 0 ${LAMINATE_OHMS}`);
}

function lineOf(
  one: Element,
  index: number,
  spice: (net: string) => string,
  models: Map<string, string>,
): string {
  const nets = one.nets.map(spice).join(" ");
  const value = one.value.toExponential(6);
  if (one.what === "resistor") return `r${index} ${nets} ${value}`;
  if (one.what === "capacitor") return `c${index} ${nets} ${value} ic=0`;
  const model = models.get(one.model) ?? `m${models.size}`;
  models.set(one.model, model);
  return `${one.what === "diode" ? "d" : "q"}${index} ${nets} ${model}`;
}
