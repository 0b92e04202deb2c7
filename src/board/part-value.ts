/** What is printed on a part, beside its kind, as one asks for it in a shop. */
import type { Part, PartKind } from "./board.ts";

type Figure = "ohms" | "farads" | "henries" | "watts" | "volts" | "amps" | "coilVolts";

const SIGNS: Readonly<Record<Figure, string>> = {
  ohms: "Ω",
  farads: "F",
  henries: "H",
  watts: "W",
  volts: "V",
  amps: "A",
  coilVolts: "V",
};

/** By which figures a kind is bought; the others go by their name, or by volts and amps. */
const BOUGHT_BY: Partial<Readonly<Record<PartKind, readonly Figure[]>>> = {
  fuse: ["amps"],
  resistor: ["ohms", "watts"],
  ntc: ["ohms"],
  ptc: ["ohms"],
  capacitor: ["farads", "volts"],
  inductor: ["henries"],
  choke: ["henries"],
  relay: ["coilVolts"],
  zener: ["volts", "watts"],
  led: [],
  link: [],
  controller: [],
  ic: [],
  motor: [],
};
const USUAL: readonly Figure[] = ["volts", "amps"];

const PREFIXES: readonly (readonly [number, string])[] = [
  [6, "M"],
  [3, "k"],
  [0, ""],
  [-3, "m"],
  [-6, "µ"],
  [-9, "n"],
  [-12, "p"],
];

/** Its figures with their units, such as `6.3 A` of a fuse or `470 µF`, `450 V` of a capacitor; what the board file leaves out is left out. */
export function partValue({ kind, value }: Pick<Part, "kind" | "value">): readonly string[] {
  return (BOUGHT_BY[kind] ?? USUAL).flatMap((figure) => {
    const amount = value[figure];
    return amount === undefined ? [] : [printed(amount, SIGNS[figure])];
  });
}

/** As it is printed on parts: no zeros at the end; below one without a prefix where that is how it is written. */
function printed(amount: number, sign: string): string {
  if (amount === 0) return `0 ${sign}`;
  const plain = amount < 1 && amount >= 0.1 && sign !== "F" && sign !== "H";
  const [power, prefix] = plain
    ? [0, ""]
    : (PREFIXES.find(([exponent]) => amount >= 10 ** exponent * 0.9999) ?? [-12, "p"]);
  return `${Number((amount / 10 ** power).toPrecision(4))} ${prefix}${sign}`;
}
