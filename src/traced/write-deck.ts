/**
 * A board as a SPICE deck of its parts, one element each, for whoever traces and edits circuits there. What SPICE has no word for
 * stands in notes (`*@ `), so that the deck read back is the board again.
 */
import { NOTE } from "./deck-lines.ts";

type Content = Readonly<Record<string, unknown>>;
type Pins = Readonly<Record<string, string>>;

/** Kinds with a letter and a number behind it. */
const PASSIVE: Readonly<Record<string, { letter: string; pins: readonly string[]; field: string }>> = {
  resistor: { letter: "R", pins: ["1", "2"], field: "ohms" },
  capacitor: { letter: "C", pins: ["plus", "minus"], field: "farads" },
  inductor: { letter: "L", pins: ["1", "2"], field: "henries" },
};

interface Modelled {
  readonly letter: string;
  readonly pins: readonly string[];
  /** the model's name, and its `.model` line behind it */
  readonly model: (value: Content) => readonly [string, string];
}

/** Kinds with a letter and a model. The bulk of a MOSFET is its source. */
const MODELLED: Readonly<Record<string, Modelled>> = {
  diode: { letter: "D", pins: ["a", "k"], model: () => ["diode", "d"] },
  zener: {
    letter: "D",
    pins: ["a", "k"],
    model: ({ volts = 15 }) => [`zener_${String(volts).replace(".", "v")}`, `d(bv=${volts})`],
  },
  bjt: {
    letter: "Q",
    pins: ["c", "b", "e"],
    model: ({ polarity = "npn" }) => [`${polarity}_bjt`, `${polarity}`],
  },
  mosfet: {
    letter: "M",
    pins: ["d", "g", "s", "s"],
    model: ({ channel = "n" }) => [`${channel}_mosfet`, `${channel}mos`],
  },
};

/** The deck of a board file's content. Every other kind is an X of a subcircuit called after its kind, with its pins. */
export function writeDeck(board: Content): string {
  const { format: _, name, parts, ...head } = board;
  const declared = new Map<string, string>();
  const elements = Object.entries(parts as Readonly<Record<string, Content>>).flatMap(([ref, part]) =>
    elementOf(ref, part, declared),
  );
  return [
    `* ${String(name).replace(/\s+/g, " ")}`,
    `${NOTE}board ${JSON.stringify({ name, ...head })}`,
    ...declared.values(),
    ...elements,
    ".end",
    "",
  ].join("\n");
}

/** The element's line with its note before it; what it needs declared goes to `declared`. */
function elementOf(ref: string, part: Content, declared: Map<string, string>): readonly string[] {
  const { kind, pins, ...note } = part as Content & { readonly kind: string; readonly pins: Pins };
  const value = (part.value ?? {}) as Content;
  const passive = PASSIVE[kind];
  const number = passive === undefined ? undefined : value[passive.field];
  if (passive !== undefined && typeof number === "number")
    return lines(ref, passive.letter, passive.pins, pins, `${number}`, note);
  const modelled = MODELLED[kind];
  if (modelled !== undefined) {
    const [model, line] = modelled.model(value);
    declared.set(`.model ${model}`, `.model ${model} ${line}`);
    return lines(ref, modelled.letter, modelled.pins, pins, model, note);
  }
  const own = Object.keys(pins);
  return lines(ref, "X", own, pins, subcircuit(kind, own, declared), note);
}

/** Parts of one kind may have other pins: each set is a subcircuit of its own, `ic`, `ic__2`, `ic__3`. */
function subcircuit(kind: string, pins: readonly string[], declared: Map<string, string>): string {
  for (let n = 1; ; n++) {
    const name = n === 1 ? kind : `${kind}__${n}`;
    const line = `.subckt ${name} ${pins.join(" ")}\n.ends`;
    const known = declared.get(`.subckt ${name}`);
    if (known !== undefined && known !== line) continue;
    declared.set(`.subckt ${name}`, line);
    return name;
  }
}

function lines(
  ref: string,
  letter: string,
  order: readonly string[],
  pins: Pins,
  behind: string,
  note: Content,
): readonly string[] {
  const element =
    letter !== "X" && ref.toUpperCase().startsWith(letter)
      ? ref
      : `${letter}${letter === "X" ? "" : "_"}${ref}`;
  const own = Object.keys(pins);
  const asOrdered = own.every((pin, i) => order[i] === pin);
  const said = asOrdered ? note : { pins: own, ...note };
  const name = element === ref ? ref : `${element}=${ref}`;
  return [
    `${NOTE}${name} ${JSON.stringify(said)}`,
    `${element} ${order.map((pin) => pins[pin]).join(" ")} ${behind}`,
  ];
}
