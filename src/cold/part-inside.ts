/** Lays out the inside of one part, kind by kind, as `model-table.ts` describes it. */
import type { PartKind } from "../board/board.ts";
import { layOutChip } from "./chip-inside.ts";
import { type Inside, pinOf } from "./inside.ts";
import {
  CAPACITOR_MODELS,
  ELECTROLYTIC_FARADS,
  INSULATION_SPREAD,
  JUNCTION_MODELS,
  RESISTANCE_MODELS,
  RESISTOR_TOLERANCE,
} from "./model-table.ts";
import { layOutModule } from "./module-inside.ts";
import {
  layOutBjt,
  layOutRegulator,
  layOutShuntref,
  layOutSwitch,
  layOutSwitcher,
  layOutThyristor,
} from "./switch-inside.ts";

function resistance(
  model: keyof typeof RESISTANCE_MODELS,
  given?: number,
  sigma?: number,
): { ohms: number; sigma: number } {
  const row = RESISTANCE_MODELS[model];
  return { ohms: given ?? row.ohms, sigma: sigma ?? row.sigma };
}

function twoPin(inside: Inside, model: keyof typeof RESISTANCE_MODELS): void {
  const { build, part } = inside;
  const from = pinOf(inside, "1");
  const to = pinOf(inside, "2");
  const tolerance = part.kind === "resistor" ? (part.value.tolerance ?? RESISTOR_TOLERANCE) / 2 : undefined;
  const { ohms, sigma } = resistance(model, part.value.ohms, tolerance);
  const resistor = build.resistor(from, to, ohms, sigma, part.value.henries ?? 0);
  build.site(part.ref, null, from, to, {
    resistors: [resistor],
    leaksInSeries: part.kind === "fuse" || part.kind === "link",
  });
}

function varistor(inside: Inside): void {
  const { build, part } = inside;
  const from = pinOf(inside, "1");
  const to = pinOf(inside, "2");
  const { ohms, sigma } = resistance("varistor");
  const volts = part.value.volts ?? 470;
  const resistors = [build.resistor(from, to, ohms, sigma)];
  const junctions = [build.knee(from, to, volts), build.knee(to, from, volts)];
  build.site(part.ref, null, from, to, { resistors, junctions });
}

function capacitor(inside: Inside): void {
  const { build, part } = inside;
  const plus = pinOf(inside, "plus");
  const minus = pinOf(inside, "minus");
  const guess = (part.value.farads ?? 0) >= ELECTROLYTIC_FARADS ? "electrolytic" : "ceramic";
  const type =
    part.value.type === "electrolytic" || part.value.type === "film" || part.value.type === "ceramic"
      ? part.value.type
      : guess;
  const model = CAPACITOR_MODELS[type];
  const farads = part.value.farads ?? model.farads;
  const sigma = (part.value.tolerance ?? model.tolerance) / 2;
  const insulation = Math.min(model.insulationSeconds / farads, model.mostOhms);
  build.site(part.ref, null, plus, minus, {
    capacitors: [build.capacitor(plus, minus, farads, sigma)],
    resistors: [build.resistor(plus, minus, insulation, INSULATION_SPREAD)],
  });
}

function windingsOf(inside: Inside): void {
  const { build, part } = inside;
  if (part.kind === "choke") {
    winding("w12", "1", "2", resistance("choke", part.value.ohms));
    winding("w34", "3", "4", resistance("choke", part.value.ohms));
    return;
  }
  for (const [name, { pins, ohms }] of Object.entries(part.value.windings ?? {})) {
    const model = /^pri/i.test(name) ? "primary" : "winding";
    winding(name, pins[0], pins[1], resistance(model, ohms));
  }
  function winding(name: string, one: string, other: string, r: { ohms: number; sigma: number }): void {
    const from = pinOf(inside, one);
    const to = pinOf(inside, other);
    build.site(part.ref, name, from, to, { resistors: [build.resistor(from, to, r.ohms, r.sigma)] });
  }
}

function relay(inside: Inside): void {
  const { build, part } = inside;
  const from = pinOf(inside, "coil1");
  const to = pinOf(inside, "coil2");
  const { ohms, sigma } = resistance("relayCoil", part.value.coilOhms);
  build.site(part.ref, "coil", from, to, { resistors: [build.resistor(from, to, ohms, sigma)] });
  build.site(part.ref, "contact", pinOf(inside, "com"), pinOf(inside, "no"));
}

function diode(inside: Inside): void {
  const { build, part } = inside;
  const a = pinOf(inside, "a");
  const k = pinOf(inside, "k");
  const { type } = part.value;
  const known =
    type === "fast" || type === "schottky" || type === "sic" || type === "signal" ? type : "rectifier";
  build.site(part.ref, null, a, k, { junctions: [build.junction(a, k, JUNCTION_MODELS[known])] });
}

function zener(inside: Inside): void {
  const { build, part } = inside;
  const a = pinOf(inside, "a");
  const k = pinOf(inside, "k");
  const junctions = [
    build.junction(a, k, JUNCTION_MODELS.zenerForward),
    build.knee(k, a, part.value.volts ?? 15),
  ];
  build.site(part.ref, null, a, k, { junctions });
}

function led(inside: Inside): void {
  const { build, part } = inside;
  const a = pinOf(inside, "a");
  const k = pinOf(inside, "k");
  build.site(part.ref, null, a, k, {
    junctions: [build.junction(a, k, JUNCTION_MODELS.led, part.value.volts)],
  });
}

function bridge(inside: Inside): void {
  const { build, part } = inside;
  const plus = pinOf(inside, "plus");
  const minus = pinOf(inside, "minus");
  for (const ac of ["ac1", "ac2", "ac3"]) {
    const net = inside.pin(ac);
    if (net === null) continue;
    build.site(part.ref, `${ac}plus`, net, plus, {
      junctions: [build.junction(net, plus, JUNCTION_MODELS.bridge)],
    });
    build.site(part.ref, `minus${ac}`, minus, net, {
      junctions: [build.junction(minus, net, JUNCTION_MODELS.bridge)],
    });
  }
}

function opto(inside: Inside): void {
  const { build, part } = inside;
  const a = pinOf(inside, "a");
  const k = pinOf(inside, "k");
  build.site(part.ref, "led", a, k, { junctions: [build.junction(a, k, JUNCTION_MODELS.optoLed)] });
  build.site(part.ref, "out", pinOf(inside, "c"), pinOf(inside, "e"));
}

/** Three windings to a star point; `ohms` is one pair of terminals. A fault opens or changes winding u, or shorts it to v. */
function motor(inside: Inside): void {
  const { build, part } = inside;
  const { ohms, sigma } = resistance("motor", part.value.ohms);
  const star = build.net(`${part.ref}#star`);
  const [u] = ["u", "v", "w"].map((pin) => build.resistor(pinOf(inside, pin), star, ohms / 2, sigma));
  build.site(part.ref, null, pinOf(inside, "u"), pinOf(inside, "v"), { resistors: [u] });
}

const LAYOUTS: Readonly<Record<PartKind, (inside: Inside) => void>> = {
  fuse: (inside) => twoPin(inside, "fuse"),
  link: (inside) => twoPin(inside, "link"),
  resistor: (inside) => twoPin(inside, "resistor"),
  ntc: (inside) => twoPin(inside, "ntc"),
  ptc: (inside) => twoPin(inside, "ptc"),
  inductor: (inside) => twoPin(inside, "inductor"),
  varistor,
  capacitor,
  choke: windingsOf,
  transformer: windingsOf,
  relay,
  diode,
  zener,
  led,
  bridge,
  bjt: layOutBjt,
  mosfet: layOutSwitch,
  igbt: layOutSwitch,
  thyristor: layOutThyristor,
  triac: layOutThyristor,
  module: layOutModule,
  opto,
  regulator: layOutRegulator,
  switcher: layOutSwitcher,
  shuntref: layOutShuntref,
  controller: layOutChip,
  ic: layOutChip,
  motor,
};

/** Adds the branches and fault sites of one part to the circuit. */
export function layOutPart(inside: Inside): void {
  LAYOUTS[inside.part.kind](inside);
}
