/**
 * Which pins of a flat schematic sheet are one net. What meets at a spot is connected: ends of wires, pins, labels, dots. A wire's
 * middle is met by a label or a dot alone. Labels of one name are one net. The rules are those by which KiCad 9.0.8 exported
 * `test/kicad/meetings.kicad_sch`; its names for nets are followed too.
 */
import { type List, listsOf } from "./s-expression.ts";
import { type PlacedPin, type PlacedSymbol, type Spot, spotOf } from "./sheet-symbols.ts";

export interface SheetPin {
  readonly symbol: PlacedSymbol;
  readonly pin: PlacedPin;
}

export interface SheetNet {
  /** as KiCad names it: `/OUT`, `GND`, `Net-(R1-Pad2)` */
  readonly name: string;
  readonly pins: readonly SheetPin[];
}

/** A name that something on the sheet gives to its net; the higher rank wins, then the alphabet. */
interface Naming extends Spot {
  readonly text: string;
  readonly rank: number;
}
/** Names that hold on every sheet come before those of this one, and those before the ones that lead to another. */
const RANKS = { global_label: 3, label: 2, hierarchical_label: 1 } as const;

/** Groups that grow together; each is called by one of its members. */
class Joined {
  readonly #parent = new Map<string, string>();

  of(key: string): string {
    let root = key;
    for (;;) {
      const up = this.#parent.get(root);
      if (up === undefined) break;
      root = up;
    }
    if (root !== key) this.#parent.set(key, root);
    return root;
  }

  join(one: string, other: string): void {
    const [a, b] = [this.of(one), this.of(other)];
    if (a !== b) this.#parent.set(a, b);
  }
}

const keyOf = ({ x, y }: Spot) => `${x},${y}`;

/** The nets of a sheet and its symbols with the pins on each, power symbols left out. */
export function sheetNets(sheet: List, symbols: readonly PlacedSymbol[]): readonly SheetNet[] {
  const placed = symbols.flatMap((symbol) => symbol.pins.map((pin) => ({ symbol, pin })));
  const namings = namingsOf(sheet, placed);
  const joined = new Joined();
  joinWires(sheet, namings, joined);
  for (const { text, ...spot } of namings) joined.join(keyOf(spot), `name ${text}`);
  const pinsOf = new Map<string, SheetPin[]>();
  for (const one of placed) {
    const root = joined.of(keyOf(one.pin));
    if (!one.symbol.ref.startsWith("#")) pinsOf.set(root, [...(pinsOf.get(root) ?? []), one]);
  }
  const named = new Map<string, Naming>();
  for (const naming of namings) {
    const root = joined.of(keyOf(naming));
    const best = named.get(root);
    if (best === undefined || comesBefore(naming, best)) named.set(root, naming);
  }
  return [...pinsOf].map(([root, pins]) => ({ name: nameOf(named.get(root), pins), pins }));
}

function comesBefore(one: Naming, other: Naming): boolean {
  return one.rank === other.rank ? one.text < other.text : one.rank > other.rank;
}

function namingsOf(sheet: List, placed: readonly SheetPin[]): readonly Naming[] {
  const labels = Object.entries(RANKS).flatMap(([word, rank]) =>
    listsOf(sheet, word).flatMap((label) =>
      listsOf(label, "at").map((at) => ({ text: String(label.items[1]), rank, ...spotOf(at) })),
    ),
  );
  const power = placed.flatMap(({ pin: { joins, x, y } }) =>
    joins === null ? [] : [{ text: joins, rank: RANKS.global_label, x, y }],
  );
  return [...labels, ...power];
}

function joinWires(sheet: List, labels: readonly Spot[], joined: Joined): void {
  const dots = listsOf(sheet, "junction").flatMap((dot) => listsOf(dot, "at").map(spotOf));
  const meeting = [...dots, ...labels];
  for (const wire of listsOf(sheet, "wire")) {
    const ends = listsOf(wire, "pts").flatMap((points) => listsOf(points, "xy").map(spotOf));
    for (const [at, end] of ends.entries()) {
      const start = ends[at - 1];
      if (start === undefined) continue;
      joined.join(keyOf(start), keyOf(end));
      for (const spot of meeting) if (liesOn(spot, start, end)) joined.join(keyOf(spot), keyOf(start));
    }
  }
}

function liesOn(spot: Spot, start: Spot, end: Spot): boolean {
  const across = (end.x - start.x) * (spot.y - start.y) - (end.y - start.y) * (spot.x - start.x);
  const within = (a: number, b: number, c: number) => Math.min(a, b) <= c && c <= Math.max(a, b);
  return across === 0 && within(start.x, end.x, spot.x) && within(start.y, end.y, spot.y);
}

/** By its label, else by one of its pins: first a pin with a name of its own, then the alphabet. */
function nameOf(naming: Naming | undefined, pins: readonly SheetPin[]): string {
  if (naming !== undefined) {
    const text = naming.text.replaceAll("/", "{slash}");
    return naming.rank === RANKS.global_label ? text : `/${text}`;
  }
  const alone = pins.length === 1;
  const names = pins.map((pin) => pinNetName(pin, alone));
  const padLast = (name: string) => `${name.includes("-Pad") ? 1 : 0}${name}`;
  names.sort((a, b) => (padLast(a) < padLast(b) ? -1 : 1));
  return names[0] ?? "";
}

function pinNetName({ symbol, pin }: SheetPin, alone: boolean): string {
  const letter = symbol.units ? String.fromCharCode(64 + symbol.unit) : "";
  const twice = symbol.pins.some((other) => other !== pin && other.name === pin.name);
  const pad = `Pad${pin.number}`;
  if (pin.name === "") return `${alone ? "unconnected" : "Net"}-(${symbol.ref}-${pad})`;
  const named = `${symbol.ref}${letter}-${pin.name}`;
  return alone ? `unconnected-(${named}-${pad})` : `Net-(${named}${twice ? `-${pad}` : ""})`;
}
