/** A power circuit as a transient deck of a reference simulator: junctions by their equation, filaments by their heat. */
import type { PowerCircuit, ResistiveBranch } from "../src/live/power-circuit.ts";
import { runControl } from "./ngspice.ts";

const net = (number: number): string => (number < 0 ? "0" : `n${number}`);

/** Emission of power rectifiers times the thermal voltage, volts (general-purpose data sheets, from memory). */
const EMISSION_VOLTS = 1.7 * 0.02585;
const SERIES_OHMS = 0.03;

/** The lines of a resistor: plain, or one whose ohms follow the mean of its watts over `seconds`, which stands on its own net. */
function resistor(branch: ResistiveBranch, i: number, law: string | null, seconds: number): string[] {
  const ends = `${net(branch.from)} ${net(branch.to)}`;
  if (law === null) return [`r${i} ${ends} ${branch.ohms}`];
  const across = `v(${net(branch.from)},${net(branch.to)})`.replace(/v\(0,/, "v(0,");
  return [
    `b${i} ${ends} i=${across}/(${law})`,
    `bheat${i} 0 heat${i} i=${across}*${across}/(${law})`,
    `rheat${i} heat${i} 0 1`,
    `cheat${i} heat${i} 0 ${seconds}`,
  ];
}

export interface DeckRun {
  /** of one cycle, seconds, and how many are run before the one that is looked at */
  readonly cycleSeconds: number;
  readonly cycles: number;
  /** volts that the capacitors start from */
  readonly startVolts: readonly number[];
  /** the net whose mean and swing are printed */
  readonly look: number;
  /** for each resistor that heats itself: its ohms as an expression of `v(heatN)`, its watts */
  readonly laws?: ReadonlyMap<number, string>;
  readonly heatSeconds?: number;
}

export function powerDeck(circuit: PowerCircuit, run: DeckRun): string {
  const { cycleSeconds, cycles, startVolts, look, laws, heatSeconds = 0.05 } = run;
  const lines = ["power circuit"];
  for (let n = 0; n < circuit.nets; n++) lines.push(`rleak${n} n${n} 0 1e8`);
  circuit.resistors.forEach((one, i) => {
    lines.push(...resistor(one, i, laws?.get(i) ?? null, heatSeconds));
  });
  circuit.diodes.forEach((one, i) => {
    // Through the same volts at 1 A, but by its equation: soft at the foot, stiff at the top.
    const amps = Math.exp(-(one.dropVolts + one.ohms - SERIES_OHMS) / EMISSION_VOLTS);
    lines.push(
      `d${i} ${net(one.from)} ${net(one.to)} md${i}`,
      `.model md${i} d(is=${amps} n=1.7 rs=${SERIES_OHMS})`,
    );
  });
  circuit.capacitors.forEach((one, i) => {
    lines.push(`c${i} ${net(one.from)} ${net(one.to)} ${one.farads} ic=${startVolts[i] ?? 0}`);
  });
  circuit.sources.forEach((one, i) => {
    const degrees = (one.radians * 180) / Math.PI;
    const sine = `sin(${one.offsetVolts} ${one.peakVolts} ${1 / cycleSeconds} 0 0 ${degrees})`;
    lines.push(`v${i} s${i} ${net(one.to)} ${sine}`, `rs${i} s${i} ${net(one.from)} ${one.ohms}`);
  });
  if (circuit.load !== null) {
    const { from, to, watts, leastVolts } = circuit.load;
    const across = `v(${net(from)},${net(to)})`;
    lines.push(
      `bload ${net(from)} ${net(to)} i=${watts}*${across}/max(${across}*${across},${leastVolts ** 2})`,
    );
  }
  const step = cycleSeconds / 400;
  lines.push(
    ".options reltol=1e-4",
    ".control",
    `tran ${step} ${(cycles + 1) * cycleSeconds} ${cycles * cycleSeconds} ${step} uic`,
    `let lookmean = mean(v(n${look}))`,
    `let lookswing = vecmax(v(n${look})) - vecmin(v(n${look}))`,
    "print lookmean lookswing",
    ...[...(laws?.keys() ?? [])].flatMap((i) => [`let watts${i} = mean(v(heat${i}))`, `print watts${i}`]),
    ".endc",
    ".end",
    "",
  );
  return lines.join("\n");
}

export interface Looked {
  readonly mean: number;
  readonly swing: number;
  readonly watts: ReadonlyMap<number, number>;
}

/** Runs the deck; throws where the simulator printed no result. */
export async function runPower(circuit: PowerCircuit, run: DeckRun): Promise<Looked> {
  const output = await runControl(powerDeck(circuit, run));
  const number = (name: string): number => {
    const found = new RegExp(`^${name} = (\\S+)`, "m").exec(output);
    if (found === null) throw new Error(`no ${name} in what the simulator printed:\n${output.slice(-600)}`);
    return Number(found[1]);
  };
  const watts = new Map([...(run.laws?.keys() ?? [])].map((i) => [i, number(`watts${i}`)]));
  return { mean: number("lookmean"), swing: number("lookswing"), watts };
}
