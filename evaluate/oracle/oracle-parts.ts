/** Part kinds with one or two pins a site as elements of a deck, with the oracle's own equations (`part-table.ts`). */
import type { PartKind } from "../../src/board/board.ts";
import { logUniform, sortedNormal, uniform } from "./draw.ts";
import { type Inside, OWN_SITE } from "./inside.ts";
import { layOutChip, layOutReference, layOutRegulator, layOutSwitcher } from "./oracle-chips.ts";
import { layOutBjt, layOutModule, layOutSwitch, layOutThyristor } from "./oracle-switches.ts";
import {
  CAPACITORS,
  type DiodeName,
  ELECTROLYTIC_FARADS,
  NTC_BETA,
  type OhmsName,
  RESISTOR,
  ZENER,
} from "./part-table.ts";

const KELVIN = 273.15;

function resistor(inside: Inside): void {
  const { value } = inside.part;
  const deviation = (value.tolerance ?? RESISTOR.tolerance) / 2;
  const reel = RESISTOR.reelShare * deviation * sortedNormal(inside.type("reel"));
  const own = deviation * Math.sqrt(1 - RESISTOR.reelShare ** 2) * sortedNormal(inside.random);
  const warm = 1 + RESISTOR.perKelvin * sortedNormal(inside.random) * (inside.room.celsius - 25);
  twoPins(inside, Math.max(1e-3, (value.ohms ?? 10_000) * (1 + reel + own) * warm));
}

function twoPins(inside: Inside, ohms: number, leaksInSeries = false): void {
  const [from, to] = [inside.net("1"), inside.net("2")];
  inside.resistor(from, to, ohms, OWN_SITE);
  inside.site(OWN_SITE, from, to, leaksInSeries);
}

function ofTable(name: OhmsName, leaksInSeries = false): (inside: Inside) => void {
  return (inside) => {
    const given = inside.part.value.ohms;
    twoPins(inside, Math.max(1e-3, inside.drawn(name, given === 0 ? undefined : given)), leaksInSeries);
  };
}

function ntc(inside: Inside): void {
  const beta = inside.part.value.beta ?? NTC_BETA;
  const warm = Math.exp(beta * (1 / (inside.room.celsius + KELVIN) - 1 / (25 + KELVIN)));
  twoPins(inside, inside.drawn("ntc", inside.part.value.ohms) * warm);
}

function varistor(inside: Inside): void {
  const [from, to] = [inside.net("1"), inside.net("2")];
  inside.resistor(from, to, inside.drawn("varistor"), OWN_SITE);
  inside.capacitor(from, to, 4e-10 * (1 + 0.2 * sortedNormal(inside.random)), OWN_SITE);
  inside.site(OWN_SITE, from, to);
}

function capacitorType(inside: Inside): "electrolytic" | "film" | "ceramic" {
  const { type, farads } = inside.part.value;
  if (type === "electrolytic" || type === "film" || type === "ceramic") return type;
  return (farads ?? 0) >= ELECTROLYTIC_FARADS ? "electrolytic" : "ceramic";
}

/** Capacitance with loss, leakage and a ladder that soaks up charge long after the plates are full. */
function capacitor(inside: Inside): void {
  const [plus, minus] = [inside.net("plus"), inside.net("minus")];
  const row = CAPACITORS[capacitorType(inside)];
  const { random } = inside;
  const type = inside.type("capacitor");
  const share = row.meanShare + row.typeShare * sortedNormal(type) + row.partShare * sortedNormal(random);
  const farads = (inside.part.value.farads ?? row.farads) * share;
  const inner = inside.inner("plate");
  const insulation = Math.min(logUniform(random, row.insulationSeconds) / farads, row.mostOhms);
  inside.resistor(plus, inner, Math.max(1e-3, logUniform(type, row.seriesSeconds) / farads), OWN_SITE);
  inside.capacitor(inner, minus, farads, OWN_SITE);
  inside.resistor(plus, minus, insulation, OWN_SITE);
  for (const [step, { share: soaks, seconds }] of row.soak.entries()) {
    const tau = logUniform(type, seconds);
    const soak = farads * logUniform(random, soaks);
    const rung = inside.inner(`soak${step}`);
    inside.resistor(plus, rung, tau / soak, OWN_SITE);
    inside.capacitor(rung, minus, soak, OWN_SITE);
    // what still flows into the rung when the technician calls the reading settled
    const stillOhms = (tau / soak) * Math.exp(inside.room.settledSeconds / tau);
    inside.settledResistor(plus, minus, Math.min(1e13, stillOhms), OWN_SITE);
  }
  inside.site(OWN_SITE, plus, minus);
}

function windings(inside: Inside): void {
  const winding = (name: string, from: string, to: string, ohms: number): void => {
    inside.resistor(from, to, ohms, name);
    inside.site(name, from, to);
  };
  const { value, kind } = inside.part;
  if (kind === "choke") {
    winding("w12", inside.net("1"), inside.net("2"), inside.drawn("choke", value.ohms));
    winding("w34", inside.net("3"), inside.net("4"), inside.drawn("choke", value.ohms));
    return;
  }
  for (const [name, { pins, ohms }] of Object.entries(value.windings ?? {}))
    winding(
      name,
      inside.net(pins[0]),
      inside.net(pins[1]),
      inside.drawn(/^pri/i.test(name) ? "primary" : "winding", ohms),
    );
}

function relay(inside: Inside): void {
  const [from, to] = [inside.net("coil1"), inside.net("coil2")];
  inside.resistor(from, to, inside.drawn("relayCoil", inside.part.value.coilOhms), "coil");
  inside.site("coil", from, to);
  const [com, no] = [inside.net("com"), inside.net("no")];
  inside.resistor(com, no, inside.drawn("contact"));
  inside.site("contact", com, no);
}

const DIODE_TYPES: Readonly<Record<string, DiodeName>> = {
  rectifier: "rectifier",
  fast: "fast",
  schottky: "schottky",
  sic: "sic",
  signal: "signal",
};

function diode(inside: Inside): void {
  const [a, k] = [inside.net("a"), inside.net("k")];
  inside.diode(a, k, DIODE_TYPES[inside.part.value.type ?? "rectifier"] ?? "rectifier", [OWN_SITE]);
  inside.site(OWN_SITE, a, k);
}

function zener(inside: Inside): void {
  const [a, k] = [inside.net("a"), inside.net("k")];
  const nominal = inside.part.value.volts ?? 15;
  const type = inside.type("zener");
  const volts = nominal * (1 + (ZENER.tolerance / 2) * sortedNormal(type));
  const emission = uniform(type, nominal < ZENER.softBelowVolts ? ZENER.softEmission : ZENER.hardEmission);
  const breakdown = ` bv=${volts.toFixed(3)} ibv=${ZENER.testAmps} nbv=${emission.toFixed(3)}`;
  inside.diode(a, k, "zenerForward", [OWN_SITE], undefined, breakdown);
  inside.site(OWN_SITE, a, k);
}

function led(inside: Inside): void {
  const [a, k] = [inside.net("a"), inside.net("k")];
  inside.diode(a, k, "led", [OWN_SITE], inside.part.value.volts);
  inside.site(OWN_SITE, a, k);
}

function bridge(inside: Inside): void {
  const [plus, minus] = [inside.net("plus"), inside.net("minus")];
  for (const ac of ["ac1", "ac2", "ac3"]) {
    const net = inside.pin(ac);
    if (net === null) continue;
    inside.diode(net, plus, "bridge", [`${ac}plus`]);
    inside.site(`${ac}plus`, net, plus);
    inside.diode(minus, net, "bridge", [`minus${ac}`]);
    inside.site(`minus${ac}`, minus, net);
  }
}

function opto(inside: Inside): void {
  const [a, k] = [inside.net("a"), inside.net("k")];
  inside.diode(a, k, "optoLed", ["led"]);
  inside.site("led", a, k);
  const [c, e] = [inside.net("c"), inside.net("e")];
  inside.resistor(c, e, inside.drawn("dark"));
  inside.site("out", c, e);
}

function motor(inside: Inside): void {
  const star = inside.inner("star");
  const pair = inside.part.value.ohms;
  for (const pin of ["u", "v", "w"])
    inside.resistor(
      inside.net(pin),
      star,
      inside.drawn("motor", pair) / 2,
      ...(pin === "u" ? [OWN_SITE] : []),
    );
  inside.site(OWN_SITE, inside.net("u"), inside.net("v"));
}

const LAYOUTS: Readonly<Record<PartKind, (inside: Inside) => void>> = {
  fuse: ofTable("fuse", true),
  link: ofTable("link", true),
  resistor,
  ntc,
  ptc: ofTable("ptc"),
  varistor,
  capacitor,
  inductor: ofTable("inductor"),
  choke: windings,
  transformer: windings,
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
  shuntref: layOutReference,
  controller: layOutChip,
  ic: layOutChip,
  motor,
};

/** Fills `inside` with the elements of its part. */
export function layOutOraclePart(inside: Inside): void {
  LAYOUTS[inside.part.kind](inside);
}
