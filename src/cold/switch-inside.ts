/** Transistors, thyristors and the small chips that stand between rails. */

import { type Inside, pinOf } from "./inside.ts";
import { JUNCTION_MODELS, RESISTANCE_MODELS } from "./model-table.ts";

export function layOutBjt(inside: Inside): void {
  const { build, part } = inside;
  const b = pinOf(inside, "b");
  const c = pinOf(inside, "c");
  const e = pinOf(inside, "e");
  const index = build.bjt(b, c, e, part.value.polarity === "pnp" ? -1 : 1);
  build.site(part.ref, "be", b, e, { bjt: { index, junction: "be" } });
  build.site(part.ref, "bc", b, c, { bjt: { index, junction: "bc" } });
  build.site(part.ref, "ce", c, e, { bjt: { index, junction: "ce" } });
}

/** MOSFET and IGBT: off when cold, so only the diode from source to drain (emitter to collector) is there. */
export function layOutSwitch(inside: Inside): void {
  const { build, part } = inside;
  const isMosfet = part.kind === "mosfet";
  const gate = pinOf(inside, "g");
  const high = pinOf(inside, isMosfet ? "d" : "c");
  const low = pinOf(inside, isMosfet ? "s" : "e");
  const model = isMosfet ? JUNCTION_MODELS.mosfetBody : JUNCTION_MODELS.freewheel;
  const [anode, cathode] = part.value.channel === "p" ? [high, low] : [low, high];
  const junctions = isMosfet || part.value.diode !== false ? [build.junction(anode, cathode, model)] : [];
  build.site(part.ref, isMosfet ? "ds" : "ce", high, low, { junctions });
  build.site(part.ref, isMosfet ? "gs" : "ge", gate, low);
}

/** Main path blocks both ways; the gate shows a junction (thyristor) or some tens of ohms (triac). */
export function layOutThyristor(inside: Inside): void {
  const { build, part } = inside;
  const gate = pinOf(inside, "g");
  if (part.kind === "thyristor") {
    const k = pinOf(inside, "k");
    build.site(part.ref, null, pinOf(inside, "a"), k, {
      junctions: [build.junction(gate, k, JUNCTION_MODELS.thyristorGate)],
    });
    return;
  }
  const one = pinOf(inside, "1");
  const { ohms, sigma } = RESISTANCE_MODELS.triacGate;
  build.site(part.ref, null, pinOf(inside, "2"), one, {
    resistors: [build.resistor(gate, one, ohms, sigma)],
  });
}

export function layOutRegulator(inside: Inside): void {
  const { build, part } = inside;
  const input = pinOf(inside, "in");
  const output = pinOf(inside, "out");
  build.site(part.ref, "inout", input, output, {
    junctions: [build.junction(output, input, JUNCTION_MODELS.regulatorReverse)],
  });
  const divider = RESISTANCE_MODELS.regulatorDivider;
  const ground = pinOf(inside, "gnd");
  build.resistor(output, ground, divider.ohms, divider.sigma);
  build.site(part.ref, "outgnd", output, ground);
}

export function layOutSwitcher(inside: Inside): void {
  const { build, part } = inside;
  const s = pinOf(inside, "s");
  const bias = RESISTANCE_MODELS.chipBias;
  build.resistor(pinOf(inside, "vcc"), s, bias.ohms, bias.sigma);
  for (const [site, pin, model] of [
    ["ds", "d", JUNCTION_MODELS.mosfetBody],
    ["vcc", "vcc", JUNCTION_MODELS.switcherSupply],
    ["fb", "fb", JUNCTION_MODELS.switcherSupply],
  ] as const) {
    const net = pinOf(inside, pin);
    build.site(part.ref, site, net, s, { junctions: [build.junction(s, net, model)] });
  }
}

export function layOutShuntref(inside: Inside): void {
  const { build, part } = inside;
  const a = pinOf(inside, "a");
  const k = pinOf(inside, "k");
  const junctions = [
    build.junction(a, k, JUNCTION_MODELS.shuntrefReverse),
    build.knee(k, a, part.value.volts ?? 2.5),
  ];
  build.junction(a, pinOf(inside, "ref"), JUNCTION_MODELS.shuntrefReverse);
  build.resistor(k, a, RESISTANCE_MODELS.referenceBias.ohms, RESISTANCE_MODELS.referenceBias.sigma);
  build.site(part.ref, "ka", k, a, { junctions });
}
