/** Boards that are not as their file says: parts missing, added, or of another value, as production runs differ. */
import { barePart } from "../../src/board/bare-part.ts";
import type { Board, Part, PartValue } from "../../src/board/board.ts";
import { findBus } from "../../src/board/bus.ts";
import type { Random } from "../../src/practice/seeded-random.ts";
import { drawOne } from "../../src/practice/seeded-random.ts";
import { pick, uniform } from "./draw.ts";
import { DIFFERENCES } from "./fault-table.ts";

export interface DifferentBoard {
  readonly board: Board;
  /** each difference in a few words */
  readonly words: readonly string[];
}

/** Kinds that a cheaper run of the same board leaves out, where nets stay joined without them. */
const MAY_MISS: ReadonlySet<Part["kind"]> = new Set(["capacitor", "varistor", "zener", "led", "diode"]);
const BULK_FARADS = 200e-6;
const FACTORS = [0.47, 0.56, 0.68, 1.5, 1.8, 2.2] as const;

function mayMiss(board: Board, part: Part): boolean {
  if (!MAY_MISS.has(part.kind) || (part.value.farads ?? 0) > BULK_FARADS) return false;
  if (part.kind !== "diode") return true;
  // a diode goes only where another part joins the same nets
  const nets = [...part.pins.values()];
  return [...board.parts.values()].some(
    (other) => other.ref !== part.ref && nets.every((net) => [...other.pins.values()].includes(net)),
  );
}

/** Another value that a designer might have chosen; null where the kind has none. */
function otherValue(part: Part, random: Random): PartValue | null {
  const { value } = part;
  const factor = pick(random, FACTORS) ?? 2.2;
  if (part.kind === "resistor" && (value.ohms ?? 0) > 1)
    return { ...value, ohms: (value.ohms ?? 0) * factor };
  if (part.kind === "capacitor" && value.farads !== undefined)
    return { ...value, farads: value.farads * factor };
  if (part.kind === "diode") return { ...value, type: value.type === "fast" ? "schottky" : "fast" };
  if (part.kind === "zener" && value.volts !== undefined) return { ...value, volts: value.volts * 1.2 };
  if (part.kind === "relay" || part.kind === "ptc" || part.kind === "ntc")
    return part.kind === "relay"
      ? { ...value, coilOhms: (value.coilOhms ?? 400) * factor }
      : { ...value, ohms: (value.ohms ?? 10) * factor };
  return part.kind === "ic" ? { ...value, type: "tolerant-inputs" } : null;
}

type Draft = Map<string, Part>;

function newPart(
  ref: string,
  kind: Part["kind"],
  pins: Readonly<Record<string, string>>,
  value: PartValue,
): Part {
  return barePart(ref, kind, new Map(Object.entries(pins)), value);
}

/** A part that the file does not know, or null where this kind of addition finds no place. */
function addition(board: Board, parts: Draft, at: number, random: Random): string | null {
  const bus = findBus(board);
  const ref = `ADDED${at}`;
  const rail = pick(random, board.rails);
  const put = (part: Part, words: string): string => {
    parts.set(ref, part);
    return words;
  };
  switch (Math.floor(random() * 5)) {
    case 0: {
      if (bus === null) return null;
      const ohms = pick(random, [100e3, 150e3, 220e3]) ?? 150e3;
      return put(
        newPart(ref, "resistor", { 1: bus.plus, 2: bus.minus }, { ohms }),
        `bleeder of ${ohms / 1000} k across the bus`,
      );
    }
    case 1: {
      const boost = [...parts.values()].find((part) => part.kind === "diode" && part.stage === "pfc");
      const bridge = [...parts.values()].find((part) => part.kind === "bridge");
      const [a, k] = [bridge?.pins.get("plus"), boost?.pins.get("k")];
      if (a === undefined || k === undefined || a === k) return null;
      return put(
        newPart(ref, "diode", { a, k }, { type: "rectifier" }),
        "bypass diode beside the boost stage",
      );
    }
    case 2:
      return secondFuse(parts, ref, random);
    case 3:
      if (rail === undefined) return null;
      return put(
        newPart(ref, "zener", { a: rail.against ?? board.zero, k: rail.net }, { volts: rail.volts * 1.25 }),
        `clamp across ${rail.name}`,
      );
    default:
      if (rail === undefined) return null;
      return put(
        newPart(
          ref,
          "resistor",
          { 1: rail.net, 2: rail.against ?? board.zero },
          { ohms: pick(random, [2200, 4700, 10_000]) ?? 4700 },
        ),
        `dummy load across ${rail.name}`,
      );
  }
}

/** A second fuse in the way of a resistor or diode: its pin goes to a net of its own behind the fuse. */
function secondFuse(parts: Draft, ref: string, random: Random): string | null {
  const feeds = [...parts.values()].filter(
    (part) => part.kind === "ptc" || part.kind === "inductor" || part.kind === "transformer",
  );
  const behind = pick(random, feeds);
  const first = behind === undefined ? undefined : [...behind.pins][0];
  if (behind === undefined || first === undefined) return null;
  const [pin, net] = first;
  parts.set(behind.ref, { ...behind, pins: new Map(behind.pins).set(pin, `${ref}#behind`) });
  parts.set(ref, newPart(ref, "fuse", { 1: net, 2: `${ref}#behind` }, {}));
  return `second fuse before ${behind.ref}`;
}

/** The board as it really is: 5-10 % of the parts of the file differ. */
export function differentBoard(file: Board, random: Random): DifferentBoard {
  const count = Math.max(1, Math.round(uniform(random, DIFFERENCES.parts) * file.parts.size));
  const parts: Draft = new Map(file.parts);
  const words: string[] = [];
  const touched = new Set<string>();
  for (let tries = 0; words.length < count && tries < 50 * count; tries++) {
    const sort = drawOne(
      ["missing", "added", "other"] as const,
      [DIFFERENCES.missing, DIFFERENCES.added, DIFFERENCES.other],
      random,
    );
    const part = pick(random, [...file.parts.values()]);
    if (sort === "added") {
      const added = addition(file, parts, words.length, random);
      if (added !== null && !words.includes(added)) words.push(added);
      continue;
    }
    if (part === undefined || touched.has(part.ref) || parts.get(part.ref) !== part) continue;
    if (sort === "missing" && mayMiss(file, part)) {
      parts.delete(part.ref);
      words.push(`${part.ref} missing`);
    } else if (sort === "other") {
      const value = otherValue(part, random);
      if (value === null) continue;
      parts.set(part.ref, { ...part, value });
      words.push(`${part.ref} of another value`);
    } else continue;
    touched.add(part.ref);
  }
  const nets = new Map(file.nets);
  for (const part of parts.values())
    for (const net of part.pins.values()) if (!nets.has(net)) nets.set(net, null);
  return { board: { ...file, parts, nets }, words };
}
