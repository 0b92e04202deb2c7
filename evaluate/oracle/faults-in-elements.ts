/** What faults do to the elements of a part. Nominal values are the board file format's. */
import type { PartFault } from "../../src/board/fault.ts";
import { type Element, type Inside, OWN_SITE } from "./inside.ts";

const NOMINAL = { short: 0.2, leaky: 1000, leakyInSeries: 30, driftOhms: 2, driftFarads: 0.5 } as const;
const LEAST_OHMS = 1e-3;

/** The elements of a part with these faults of it; throws where the part has no such site. */
export function withFaults(inside: Inside, faults: readonly PartFault[]): readonly Element[] {
  let elements: readonly Element[] = inside.elements;
  for (const fault of faults) elements = withFault(inside, elements, fault);
  return elements;
}

function withFault(inside: Inside, elements: readonly Element[], fault: PartFault): readonly Element[] {
  const name = fault.junction ?? OWN_SITE;
  const site = inside.sites.get(name);
  if (site === undefined)
    throw new Error(`${fault.part} has no place for a fault named ${name || "of its own"}`);
  const across = (ohms: number): readonly Element[] => [
    ...elements,
    { what: "resistor", nets: [site.from, site.to], value: Math.max(ohms, LEAST_OHMS), model: "", sites: [] },
  ];
  const scaled = (what: Element["what"], to: (value: number) => number): readonly Element[] =>
    elements.map((one) =>
      one.what === what && one.sites.includes(name) ? { ...one, value: to(one.value) } : one,
    );
  switch (fault.mode) {
    case "short":
      return across(fault.value ?? NOMINAL.short);
    case "leaky":
      return site.leaksInSeries
        ? scaled("resistor", (ohms) => ohms + (fault.value ?? NOMINAL.leakyInSeries))
        : across(fault.value ?? NOMINAL.leaky);
    case "open":
      return opened(elements, name);
    case "drift":
      return drifted(inside, elements, name, fault.value, scaled);
  }
}

/** A transistor that loses one junction keeps the other as a plain diode where it has one. */
function opened(elements: readonly Element[], name: string): readonly Element[] {
  return elements.flatMap((one): Element[] => {
    if (!one.sites.includes(name)) return [one];
    if (one.what !== "transistor") return [];
    const [collector, base, emitter] = one.nets;
    if (collector === undefined || base === undefined || emitter === undefined) return [];
    const pnp = one.model.startsWith("pnp");
    const model = "d(is=2e-14 n=1.02 rs=2)";
    const left = (other: string): Element => ({
      what: "diode",
      nets: pnp ? [other, base] : [base, other],
      value: 0,
      model,
      sites: [],
    });
    return [...(name === "be" ? [] : [left(emitter)]), ...(name === "bc" ? [] : [left(collector)])];
  });
}

function drifted(
  inside: Inside,
  elements: readonly Element[],
  name: string,
  value: number | null,
  scaled: (what: Element["what"], to: (value: number) => number) => readonly Element[],
): readonly Element[] {
  if (inside.part.kind !== "capacitor")
    return scaled("resistor", (ohms) => Math.max(value ?? ohms * NOMINAL.driftOhms, LEAST_OHMS));
  const own = elements.find((one) => one.what === "capacitor" && one.sites.includes(name));
  if (own === undefined) return elements;
  const share = value === null ? NOMINAL.driftFarads : value / own.value;
  return scaled("capacitor", (farads) => farads * share);
}
