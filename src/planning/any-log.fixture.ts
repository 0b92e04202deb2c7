/**
 * Logs as a hurried bench might write them, and what may be asked for after each: worked out from the events alone, apart from the
 * gate that is tested by it.
 */
import fc from "fast-check";
import type { JobEvent } from "../bench/event.ts";
import { canAppend, undoneEvents } from "../bench/fold.ts";
import type { Board, Part } from "../board/board.ts";
import { type StoreOfCharge, storesOfCharge } from "../board/stores-of-charge.ts";
import type { Action } from "./proposal.ts";

type Attempt = JobEvent | { readonly do: "undo"; readonly back: number };

function firstOf(board: Board, wanted: (part: Part) => boolean): readonly string[] {
  const found = [...board.parts.values()].find(wanted);
  return found === undefined ? [] : [found.ref];
}

const pinsOf = ({ part, pins }: StoreOfCharge) => [`${part}.${pins[0]}`, `${part}.${pins[1]}`] as const;

/** What may come next on this board; whether it is possible is for the fold to say. */
function attempts(board: Board): fc.Arbitrary<Attempt> {
  const stores = storesOfCharge(board);
  const motors = firstOf(board, ({ kind }) => kind === "motor");
  const parts = [
    ...stores.slice(0, 3).map(({ part }) => part),
    ...motors,
    ...firstOf(board, ({ kind }) => kind === "igbt" || kind === "module"),
    ...firstOf(board, ({ kind }) => kind === "fuse"),
  ];
  const places = parts.flatMap((ref) => [`${ref}.${board.parts.get(ref)?.pins.keys().next().value ?? ""}`]);
  const [rail] = board.rails;
  const at = fc.constantFrom(...stores).map(pinsOf);
  const netOf = (place: string) => {
    const [ref = "", pin = ""] = place.split(".");
    return board.parts.get(ref)?.pins.get(pin) ?? place;
  };
  const volts = (reading: fc.Arbitrary<number | "OL">) =>
    fc.tuple(at, reading, fc.constantFrom("pins", "swapped", "nets")).map(([pins, read, how]): JobEvent => {
      const [red, black] = how === "swapped" ? [pins[1], pins[0]] : how === "nets" ? pins.map(netOf) : pins;
      return { do: "measure", mode: "dcv", red, black, reading: read };
    });
  const power: JobEvent[] = [
    { do: "power", feed: "mains", observed: "quiet" },
    { do: "power", feed: "lamp", watts: 100, observed: "lamp-dim" },
    ...(rail === undefined
      ? []
      : [
          {
            do: "power" as const,
            feed: "bench" as const,
            volts: 5,
            limitAmps: 0.1,
            at: [rail.net, board.zero] as const,
          },
        ]),
  ];
  return fc.oneof(
    { weight: 9, arbitrary: volts(fc.constantFrom(0, 0.3, -9.9, 4)) },
    { weight: 2, arbitrary: volts(fc.constantFrom<number | "OL">(10, 160, -325, "OL")) },
    { weight: 2, arbitrary: fc.constantFrom(...power) },
    { weight: 3, arbitrary: fc.constant<JobEvent>({ do: "unpower" }) },
    {
      weight: 1,
      arbitrary: fc
        .constantFrom(undefined, "proof" as const, "resistor" as const, "proposal" as const)
        .map((of): JobEvent => ({ do: "overrule", why: "I know", ...(of === undefined ? {} : { of }) })),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.constantFrom("clip" as const, "unclip" as const), at)
        .map(([what, pins]): JobEvent => ({ do: what, at: pins, ohms: 2200 })),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.constantFrom("lift" as const, "refit" as const), fc.constantFrom(...places))
        .map(([what, place]): JobEvent => ({ do: what, place })),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.constantFrom("remove" as const, "restore" as const), fc.constantFrom(...parts))
        .map(([what, part]): JobEvent => ({ do: what, part })),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(fc.constantFrom(...parts), fc.boolean())
        .map(([part, used]): JobEvent => ({ do: "replace", part, ...(used ? { used: true as const } : {}) })),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom<JobEvent>(
        { do: "measure", mode: "dcv", red: "PBUS", black: board.zero, reading: 33 },
        { do: "measure", mode: "diode", red: board.zero, black: places[0] ?? "", reading: 0.45 },
        ...motors.map((turned): JobEvent => ({ do: "note", text: "", turned })),
      ),
    },
    { weight: 1, arbitrary: fc.record({ do: fc.constant("undo" as const), back: fc.nat({ max: 12 }) }) },
  );
}

/** Every store read empty: without it few random logs would ever open the gate. */
function proof(board: Board): readonly JobEvent[] {
  return storesOfCharge(board).map((store) => {
    const [red, black] = pinsOf(store);
    return { do: "measure", mode: "dcv", red, black, reading: 0.2 };
  });
}

/** A possible log: of many attempts, those the bench accepts. Half of them begin with the whole proof and go wrong a few steps later. */
export function anyLog(board: Board, most: number): fc.Arbitrary<readonly JobEvent[]> {
  const proven = proof(board);
  const piece = fc.oneof(
    { weight: 8, arbitrary: attempts(board).map((one): readonly Attempt[] => [one]) },
    { weight: 1, arbitrary: fc.constant<readonly Attempt[]>(proven) },
  );
  const long = fc.array(piece, { minLength: 1, maxLength: most });
  const late = fc.tuple(fc.array(piece, { maxLength: 4 }), fc.array(piece, { maxLength: 5 }), fc.boolean());
  const pieces = fc.oneof(
    long,
    late.map(([before, after, off]): readonly (readonly Attempt[])[] => [
      ...before,
      [{ do: "unpower" }],
      proven,
      ...after,
      ...(off ? [[{ do: "unpower" as const }]] : []),
    ]),
  );
  return pieces.map((some) => {
    const log: JobEvent[] = [];
    for (const attempt of some.flat()) {
      const id = `e${log.length}`;
      const event: JobEvent =
        "back" in attempt
          ? { do: "undo", of: `e${Math.max(0, log.length - 1 - attempt.back)}`, id }
          : { ...attempt, id };
      if (canAppend(board, [], log, event) === null) log.push(event);
    }
    return log;
  });
}

/** What a careful reader of a log knows at its end. */
export interface AtTheEnd {
  readonly powered: boolean;
  /** stores not proven empty since their proof was last lost, by part */
  readonly unproven: ReadonlySet<string>;
  /** the technician said that he goes on without, and nothing has been charged or read charged since */
  readonly proofOverruled: boolean;
  readonly resistors: number;
  readonly resistorOverruled: boolean;
  readonly lastRead: ReadonlyMap<string, number>;
}

const ON_A_DEAD_BOARD: readonly string[] = [
  "lift",
  "refit",
  "remove",
  "restore",
  "replace",
  "resolder",
  "clean",
];
const COLD: readonly string[] = ["diode", "continuity", "ohms", "farads"];

/** The step puts a hand inside, or the meter's own volts on the board. */
export function wantsDeadBoard(step: Action | JobEvent): boolean {
  return step.do === "measure" ? COLD.includes(step.mode) : ON_A_DEAD_BOARD.includes(step.do);
}

/** Replays a log by hand: every rule written out once more, in the plainest way. */
export function readToTheEnd(board: Board, log: readonly JobEvent[]): AtTheEnd {
  const stores = storesOfCharge(board);
  const undone = undoneEvents(log);
  const events = log.filter((event, at) => event.do !== "undo" && undone[at] === false);
  const unproven = new Set(stores.map(({ part }) => part));
  const off = new Set<string>();
  const lifted = new Set<string>();
  const lastRead = new Map<string, number>();
  let powered = false;
  let overruled = false;
  let resistors = 0;
  let resistorOverruled = false;
  const loseAll = () => {
    for (const { part } of stores) if (!off.has(part)) unproven.add(part);
  };
  const putOn = (part: string, mayShare: boolean) => {
    const isStore = stores.some((store) => store.part === part);
    if (isStore && mayShare) loseAll();
    if (isStore) unproven.add(part);
  };
  events.forEach((event, at) => {
    const before = events[at - 1];
    if (before?.do === "overrule" && before.of === undefined && wantsDeadBoard(event) && unproven.size > 0)
      overruled = true;
    if (event.do === "overrule" && event.of === "proof") overruled = true;
    if (event.do === "overrule" && event.of === "resistor") resistorOverruled = true;
    if (event.do === "power") {
      loseAll();
      powered = true;
      overruled = false;
      resistorOverruled = false;
    }
    if (event.do === "unpower") powered = false;
    if (event.do === "clip") {
      resistors++;
      resistorOverruled = false;
    }
    if (event.do === "unclip") resistors--;
    if (event.do === "note" && event.turned !== undefined && !off.has(event.turned)) {
      loseAll();
      overruled = false;
    }
    if (event.do === "refit")
      putOn(event.place.split(".")[0] ?? "", unproven.has(event.place.split(".")[0] ?? ""));
    if (event.do === "restore") putOn(event.part, unproven.has(event.part));
    if (event.do === "replace") putOn(event.part, event.used === true);
    if (event.do === "lift") lifted.add(event.place);
    if (event.do === "refit") lifted.delete(event.place);
    if (event.do === "remove") off.add(event.part);
    if (event.do === "restore" || event.do === "replace") off.delete(event.part);
    if (event.do === "remove" || event.do === "restore" || event.do === "replace")
      for (const place of [...lifted]) if (place.startsWith(`${event.part}.`)) lifted.delete(place);
    if (event.do !== "measure" || event.mode !== "dcv" || powered) return;
    const size = typeof event.reading === "number" ? Math.abs(event.reading) : 1e4;
    const touched = stores.filter(({ part, pins }) => {
      const names = pins.map((pin) => {
        const net = board.parts.get(part)?.pins.get(pin) ?? "";
        return off.has(part) || lifted.has(`${part}.${pin}`) ? [`${part}.${pin}`] : [`${part}.${pin}`, net];
      });
      const [plus = [], minus = []] = names;
      const { red = "", black = "" } = event;
      return (plus.includes(red) && minus.includes(black)) || (plus.includes(black) && minus.includes(red));
    });
    for (const { part } of touched) {
      lastRead.set(part, size);
      if (size < 10) unproven.delete(part);
      else {
        unproven.add(part);
        overruled = false; // the reason given did not know of it
      }
    }
    if (touched.length === 0 && size >= 10) {
      loseAll();
      overruled = false;
    }
  });
  const last = events.at(-1);
  if (last?.do === "overrule" && last.of === undefined) resistorOverruled = true;
  return { powered, unproven, proofOverruled: overruled, resistors, resistorOverruled, lastRead };
}

/** Why this step may not be asked for now; null where it may. */
export function whyNot(board: Board, end: AtTheEnd, step: Action): string | null {
  const ownPins = (places: readonly (string | undefined)[]) =>
    storesOfCharge(board).find((store) =>
      [pinsOf(store), [...pinsOf(store)].reverse()].some((pins) => pins.join(" ") === places.join(" ")),
    );
  const closed = !end.proofOverruled && end.unproven.size > 0;
  const words = JSON.stringify(step);
  if (end.powered) {
    const handsOff = step.do === "unpower" || (step.do === "measure" && !wantsDeadBoard(step));
    return handsOff ? null : `a hand at a live board: ${words}`;
  }
  if (wantsDeadBoard(step)) return closed ? `a hand inside a board not proven dead: ${words}` : null;
  if (step.do === "measure" && closed)
    return ownPins([step.red, step.black]) === undefined
      ? `volts, but not at a store's own pins: ${words}`
      : null;
  if (step.do === "clip") {
    const store = ownPins(step.at);
    return store !== undefined && (end.lastRead.get(store.part) ?? 0) >= 10
      ? null
      : `a clip that discharges nothing: ${words}`;
  }
  if (step.do === "power") {
    if (closed) return `power, with the board not proven dead before: ${words}`;
    if (end.resistors > 0 && !end.resistorOverruled) return `power with a resistor clipped on: ${words}`;
  }
  return null;
}
