/** The three-phase power module: six switches with their diodes, the gate drivers and what they show at the pins. */
import { MODULE_INPUTS } from "../board/kinds.ts";
import { type Inside, pinOf } from "./inside.ts";
import { JUNCTION_MODELS, RESISTANCE_MODELS } from "./model-table.ts";

const PHASES = ["u", "v", "w"] as const;

/**
 * `com` joins the lower emitters only where the board says so. The substrate of the high-side driver stands on `com`, so a phase
 * still reads one (larger) drop from ground where the path through the lower emitter is broken.
 */
export function layOutModule(inside: Inside): void {
  const { build, part } = inside;
  const p = pinOf(inside, "p");
  const com = inside.pin("com");
  for (const phase of PHASES) {
    const net = pinOf(inside, phase);
    const n = inside.pin(`n${phase}`) ?? pinOf(inside, "n");
    build.site(part.ref, `${phase}p`, p, net, {
      junctions: [build.junction(net, p, JUNCTION_MODELS.freewheel)],
    });
    build.site(part.ref, `${phase}n`, net, n, {
      junctions: [build.junction(n, net, JUNCTION_MODELS.freewheel)],
    });
    build.junction(com ?? n, net, JUNCTION_MODELS.moduleSubstrate);
    bootstrap(inside, phase, net);
  }
  const vcc = inside.pin("vcc");
  const bias = RESISTANCE_MODELS.chipBias;
  if (vcc !== null && com !== null) build.resistor(vcc, com, bias.ohms, bias.sigma);
  if (vcc !== null && com !== null)
    build.site(part.ref, "drive", vcc, com, {
      junctions: [build.junction(com, vcc, JUNCTION_MODELS.moduleDrive)],
    });
  for (const input of MODULE_INPUTS) {
    const net = inside.pin(input);
    if (net === null) continue;
    const ground = com ?? inside.pin("n") ?? pinOf(inside, "nu");
    const { ohms, sigma } = RESISTANCE_MODELS.moduleInput;
    build.site(part.ref, input, net, ground, { resistors: [build.resistor(net, ground, ohms, sigma)] });
  }
}

/** Phase to bootstrap pin, and the charging diode with its resistor from the drive supply. */
function bootstrap(inside: Inside, phase: string, net: number): void {
  const { build, part } = inside;
  const vb = inside.pin(`vb${phase}`);
  if (vb === null) return;
  build.site(part.ref, `vb${phase}`, vb, net, {
    junctions: [build.junction(net, vb, JUNCTION_MODELS.moduleBootstrapBack)],
  });
  const vcc = inside.pin("vcc");
  if (vcc === null) return;
  const middle = build.net(`${part.ref}#boot${phase}`);
  const { ohms, sigma } = RESISTANCE_MODELS.moduleBootstrap;
  build.resistor(vcc, middle, ohms, sigma);
  build.junction(middle, vb, JUNCTION_MODELS.moduleBootstrap);
}
