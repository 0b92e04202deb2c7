/** Controllers and other chips: a junction from ground to every pin and from every pin to the supply, and a load across it. */
import { supplyPin } from "../board/kinds.ts";
import { type Inside, pinOf } from "./inside.ts";
import { JUNCTION_MODELS, LOW_SUPPLY_VOLTS, RESISTANCE_MODELS } from "./model-table.ts";

function supplyVolts(inside: Inside, supply: string): number {
  const { part } = inside;
  if (part.value.volts !== undefined) return part.value.volts;
  const rail = inside.railVolts(part.pins.get(supply) ?? "");
  return rail ?? (part.kind === "controller" ? 5 : 15);
}

/** Pins and supply meet at the die, behind the bond of the supply pin, so that an open supply still joins the pins. */
export function layOutChip(inside: Inside): void {
  const { build, part } = inside;
  const supply = supplyPin(part.kind === "controller" ? "controller" : "ic");
  const vcc = pinOf(inside, supply);
  const gnd = pinOf(inside, "gnd");
  const low = supplyVolts(inside, supply) <= LOW_SUPPLY_VOLTS;
  const die = build.net(`${part.ref}#die`);
  const middle = build.net(`${part.ref}#load`);
  const bond = build.resistor(vcc, die, RESISTANCE_MODELS.chipBond.ohms, RESISTANCE_MODELS.chipBond.sigma);
  build.junction(gnd, die, low ? JUNCTION_MODELS.chipSupplyLow : JUNCTION_MODELS.chipSupplyHigh);
  build.junction(die, middle, low ? JUNCTION_MODELS.chipLoadLow : JUNCTION_MODELS.chipLoadHigh);
  const load = low ? RESISTANCE_MODELS.chipLoadLow : RESISTANCE_MODELS.chipLoadHigh;
  build.resistor(middle, gnd, load.ohms, load.sigma);
  build.resistor(die, gnd, RESISTANCE_MODELS.chipBias.ohms, RESISTANCE_MODELS.chipBias.sigma);
  build.site(part.ref, "supply", vcc, gnd, { resistors: [bond] });
  const floating = new Map(part.value.floating ?? []);
  const grounds = new Set(floating.values());
  for (const pin of part.pins.keys()) {
    if (pin === supply || pin === "gnd") continue;
    const net = pinOf(inside, pin);
    const own = floating.get(pin);
    if (own !== undefined) {
      const ground = pinOf(inside, own);
      build.site(part.ref, pin, net, ground, {
        junctions: [build.junction(ground, net, JUNCTION_MODELS.chipFloatingPin)],
      });
    } else if (grounds.has(pin)) build.site(part.ref, pin, net, gnd);
    else clampedPin(inside, pin, net, die);
  }
}

function clampedPin(inside: Inside, pin: string, net: number, die: number): void {
  const { build, part } = inside;
  const gnd = pinOf(inside, "gnd");
  const up = build.junction(net, die, JUNCTION_MODELS.chipPin);
  const down = build.junction(gnd, net, JUNCTION_MODELS.chipPin);
  // An open pin loses both junctions. A pin that bears the name of the supply's site cannot fail under its own name.
  if (pin !== "supply") build.site(part.ref, pin, net, gnd, { junctions: [up, down] });
  build.site(
    part.ref,
    `${pin}.supply`,
    net,
    pinOf(inside, supplyPin(part.kind === "controller" ? "controller" : "ic")),
    { junctions: [up] },
  );
}
