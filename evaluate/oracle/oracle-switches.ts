/** Transistors, thyristors and power modules of the oracle: what of them conducts when the board is cold. */
import { MODULE_INPUTS } from "../../src/board/kinds.ts";
import { logUniform, uniform } from "./draw.ts";
import { type Inside, OWN_SITE } from "./inside.ts";
import { CHIP_LOADS, type DiodeName, TRANSISTOR } from "./part-table.ts";

/** The three junction faults of a transistor are told apart by which of its elements they take. */
export function layOutBjt(inside: Inside): void {
  const [b, c, e] = [inside.net("b"), inside.net("c"), inside.net("e")];
  const pnp = inside.part.value.polarity === "pnp";
  const type = inside.type("transistor");
  const T = TRANSISTOR;
  const constants = [
    `is=${logUniform(type, T.saturationAmps).toExponential(4)} bf=${uniform(type, T.forwardGain).toFixed(1)}`,
    `br=${uniform(type, T.reverseGain).toFixed(2)} vaf=${uniform(type, T.earlyVolts).toFixed(1)}`,
    `ikf=${logUniform(type, T.kneeAmps).toExponential(3)} rb=${logUniform(type, T.baseOhms).toFixed(2)}`,
    `rc=${logUniform(type, T.collectorOhms).toFixed(3)} re=${logUniform(type, T.emitterOhms).toFixed(3)}`,
    `ise=${logUniform(type, T.leakAmps).toExponential(3)} ne=${uniform(type, T.leakEmission).toFixed(3)}`,
    "cje=2e-11 cjc=8e-12 xti=3 eg=1.11",
  ];
  inside.transistor(c, b, e, `${pnp ? "pnp" : "npn"}(${constants.join(" ")})`, "be", "bc", "ce");
  inside.resistor(c, e, inside.drawn("dark"), "ce");
  inside.site("be", b, e);
  inside.site("bc", b, c);
  inside.site("ce", c, e);
}

export function layOutSwitch(inside: Inside): void {
  const { part } = inside;
  const isMosfet = part.kind === "mosfet";
  const gate = inside.net("g");
  const [high, low] = [inside.net(isMosfet ? "d" : "c"), inside.net(isMosfet ? "s" : "e")];
  const main = isMosfet ? "ds" : "ce";
  const [anode, cathode] = part.value.channel === "p" ? [high, low] : [low, high];
  if (isMosfet || part.value.diode !== false)
    inside.diode(anode, cathode, isMosfet ? "mosfetBody" : "freewheel", [main]);
  inside.resistor(gate, low, inside.drawn("gate"));
  inside.capacitor(gate, low, 1.2e-9);
  inside.site(main, high, low);
  inside.site(isMosfet ? "gs" : "ge", gate, low);
}

export function layOutThyristor(inside: Inside): void {
  const gate = inside.net("g");
  if (inside.part.kind === "triac") {
    inside.resistor(gate, inside.net("1"), inside.drawn("triacGate"), OWN_SITE);
    inside.resistor(inside.net("2"), inside.net("1"), inside.drawn("dark"));
    inside.site(OWN_SITE, inside.net("2"), inside.net("1"));
    return;
  }
  const [a, k] = [inside.net("a"), inside.net("k")];
  inside.diode(gate, k, "gateCathode", [OWN_SITE]);
  inside.resistor(a, k, inside.drawn("dark"));
  inside.site(OWN_SITE, a, k);
}

const PHASES = ["u", "v", "w"] as const;

/** Inputs have a clamp to ground beside their pull-down, and the supply of the drivers a load of its own. */
export function layOutModule(inside: Inside): void {
  const p = inside.net("p");
  const com = inside.pin("com");
  const vcc = inside.pin("vcc");
  for (const phase of PHASES) {
    const net = inside.net(phase);
    const n = inside.pin(`n${phase}`) ?? inside.net("n");
    junction(inside, `${phase}p`, net, p, "freewheel");
    junction(inside, `${phase}n`, n, net, "freewheel");
    inside.diode(com ?? n, net, "moduleSubstrate", []);
    bootstrap(inside, phase, net, vcc);
  }
  if (vcc !== null && com !== null) {
    inside.diode(com, vcc, "moduleSupply", ["drive"]);
    inside.load(vcc, com, CHIP_LOADS.module);
    inside.site("drive", vcc, com);
  }
  for (const input of MODULE_INPUTS) {
    const net = inside.pin(input);
    if (net === null) continue;
    const ground = com ?? inside.pin("n") ?? inside.net("nu");
    inside.resistor(net, ground, inside.drawn("moduleInput"), input);
    inside.diode(ground, net, "moduleInput", [input]);
    inside.site(input, net, ground);
  }
}

/** A junction of a module: conducts from `anode` to `cathode`, fails between the two. */
function junction(inside: Inside, site: string, anode: string, cathode: string, name: DiodeName): void {
  inside.diode(anode, cathode, name, [site]);
  inside.site(site, cathode, anode);
}

function bootstrap(inside: Inside, phase: string, net: string, vcc: string | null): void {
  const vb = inside.pin(`vb${phase}`);
  if (vb === null) return;
  inside.diode(net, vb, "moduleBootstrapBack", [`vb${phase}`]);
  inside.site(`vb${phase}`, vb, net);
  if (vcc === null) return;
  const middle = inside.inner(`boot${phase}`);
  inside.resistor(vcc, middle, inside.drawn("moduleBootstrap"));
  inside.diode(middle, vb, "moduleBootstrap", []);
}
