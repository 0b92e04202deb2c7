/** Chips of the oracle: more than one path inside between supply, ground and pins. */
import { supplyPin } from "../../src/board/kinds.ts";
import { logUniform } from "./draw.ts";
import type { Inside } from "./inside.ts";
import { CHIP_LOADS } from "./part-table.ts";

/** Chips for this many volts or less have the low knee. The board file format's rule. */
const LOW_VOLTS = 5;

function supplyVolts(inside: Inside, supply: string): number {
  const { part } = inside;
  const rail = inside.railVolts(part.pins.get(supply) ?? "");
  return part.value.volts ?? rail ?? (part.kind === "controller" ? 5 : 15);
}

/** Pins and supply meet at the die, behind the bond of the supply pin. */
export function layOutChip(inside: Inside): void {
  const { part } = inside;
  const supply = supplyPin(part.kind === "controller" ? "controller" : "ic");
  const [vcc, gnd] = [inside.net(supply), inside.net("gnd")];
  const die = inside.inner("die");
  inside.resistor(vcc, die, logUniform(inside.random, [0.02, 0.3]), "supply");
  inside.diode(gnd, die, "chipSupply", []);
  inside.load(die, gnd, supplyVolts(inside, supply) <= LOW_VOLTS ? CHIP_LOADS.low : CHIP_LOADS.high);
  inside.site("supply", vcc, gnd);
  const floating = new Map(part.value.floating ?? []);
  const grounds = new Set(floating.values());
  for (const pin of part.pins.keys()) {
    if (pin === supply || pin === "gnd") continue;
    const net = inside.net(pin);
    const own = floating.get(pin);
    if (own !== undefined) {
      inside.diode(inside.net(own), net, "chipFloatingPin", [pin]);
      inside.site(pin, net, inside.net(own));
    } else if (grounds.has(pin)) inside.site(pin, net, gnd);
    else clamped(inside, pin, net, gnd, die, vcc);
  }
}

/** An input that tolerates more than its supply has no junction up; such a chip's `type` says so (a board difference). */
function clamped(inside: Inside, pin: string, net: string, gnd: string, die: string, vcc: string): void {
  const own = pin === "supply" ? [] : [pin];
  inside.diode(gnd, net, "chipPin", own);
  if (inside.part.value.type !== "tolerant-inputs")
    inside.diode(net, die, "chipPin", [...own, `${pin}.supply`]);
  if (pin !== "supply") inside.site(pin, net, gnd);
  inside.site(`${pin}.supply`, net, vcc);
}

/** The pass part backwards, both ends from ground, and the divider that senses the output. */
export function layOutRegulator(inside: Inside): void {
  const [input, output, gnd] = [inside.net("in"), inside.net("out"), inside.net("gnd")];
  inside.diode(output, input, "regulator", ["inout"]);
  inside.diode(gnd, output, "regulatorGround", ["outgnd"]);
  inside.diode(gnd, input, "regulatorGround", []);
  inside.resistor(output, gnd, inside.drawn("regulatorDivider"), "outgnd");
  inside.load(input, gnd, CHIP_LOADS.high);
  inside.site("inout", input, output);
  inside.site("outgnd", output, gnd);
}

export function layOutSwitcher(inside: Inside): void {
  const s = inside.net("s");
  const [d, vcc, fb] = [inside.net("d"), inside.net("vcc"), inside.net("fb")];
  inside.diode(s, d, "mosfetBody", ["ds"]);
  inside.diode(s, vcc, "switcherPin", ["vcc"]);
  inside.diode(s, fb, "switcherPin", ["fb"]);
  inside.diode(fb, vcc, "switcherPin", ["fb"]);
  inside.load(vcc, s, CHIP_LOADS.module);
  inside.site("ds", d, s);
  inside.site("vcc", vcc, s);
  inside.site("fb", fb, s);
}

/** Without bias the reference leaks a little from about two and a half volts; backwards it is a junction. */
export function layOutReference(inside: Inside): void {
  const [ref, k, a] = [inside.net("ref"), inside.net("k"), inside.net("a")];
  inside.diode(a, k, "reference", ["ka"]);
  inside.diode(a, ref, "reference", []);
  const volts = inside.part.value.volts ?? 2.5;
  inside.load(k, a, { ...CHIP_LOADS.reference, knee: [0.75 * volts, volts] });
  inside.load(ref, a, CHIP_LOADS.reference);
  inside.site("ka", k, a);
}
