/**
 * The circuit that was solved, as a deck that ngspice runs as it is: every leak in it, temperatures and `gmin` set, the range
 * the one that `predict` chose. Running it prints `reading = <number>` before the OL rule.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import { JUNCTION_LEAK_SIEMENS, ROOM_CELSIUS, thermalVolts } from "../circuit/junction.ts";
import { NET_LEAK_SIEMENS, type Netlist, type Values } from "../circuit/netlist.ts";
import { coldCircuit } from "../cold/cold-circuit.ts";
import { BJT_MODEL } from "../cold/model-table.ts";
import { climbAt } from "./climbing.ts";
import type { ColdCheck, NotSolved } from "./prediction.ts";
import { type Probed, Probing, whyUnsolved } from "./probing.ts";
import { FARADS_HERTZ } from "./ranges.ts";
import type { MeterSettings } from "./settings.ts";

const ROOM = `temp=${ROOM_CELSIUS} tnom=${ROOM_CELSIUS} gmin=${JUNCTION_LEAK_SIEMENS}`;
/** Tight enough that ngspice's own settled answer is good to some microvolts, loose enough that its floating nets settle. */
const SETTLED_OPTIONS = `.options ${ROOM} reltol=1e-5 vntol=1e-7 abstol=1e-12 pivrel=1e-3 pivtol=1e-30 itl1=2000`;
/** Time steps by the error they make: a hundred times tighter than the 1 % to which climbing readings are compared. */
const CLIMBING_OPTIONS = `.options ${ROOM} reltol=1e-4 vntol=1e-6 abstol=1e-12 chgtol=1e-10 method=gear maxord=2 itl4=200`;

/**
 * The operating point. Where nets hang on nothing but leaks, ngspice sometimes never meets its own tight tolerance, however good
 * its answer: then once more with a loose one. `$&meter` is the meter's volts, and stays unset where there was no answer.
 */
const SETTLE = [
  "op",
  "set settled = no",
  "set settled = $&meter",
  'strcmp unlike "$settled" "no"',
  "if $unlike = 0",
  "option reltol=1e-4 vntol=1e-6",
  "op",
  "end",
];

/** Net i is `n<i>`; the reference is 0, as SPICE has it. */
function spiceNet(net: number): string {
  return net < 0 ? "0" : `n${net + 1}`;
}

/** A number that reads back as the same double. */
function exact(value: number): string {
  return value.toExponential(16);
}

function resistorLines(netlist: Netlist, values: Values, alternating: boolean): string[] {
  const { from, to } = netlist.resistors;
  const lines: string[] = [];
  for (let i = 0; i < from.length; i++) {
    if (values.siemens[i] === 0) continue;
    const ohms = exact(1 / values.siemens[i]);
    const henries = netlist.henries[i];
    if (!alternating || henries === 0) lines.push(`r${i} ${spiceNet(from[i])} ${spiceNet(to[i])} ${ohms}`);
    else {
      lines.push(
        `r${i} ${spiceNet(from[i])} m${i} ${ohms}`,
        `l${i} m${i} ${spiceNet(to[i])} ${exact(henries)}`,
      );
    }
  }
  values.extra.forEach((one, i) => {
    lines.push(`rx${i} ${spiceNet(one.from)} ${spiceNet(one.to)} ${exact(1 / one.siemens)}`);
  });
  for (let net = 0; net < netlist.nets; net++)
    lines.push(`rleak${net} ${spiceNet(net)} 0 ${exact(1 / NET_LEAK_SIEMENS)}`);
  return lines;
}

/** Junctions and transistors, each model once. */
function semiconductorLines(netlist: Netlist, values: Values): string[] {
  const models = new Map<string, string>();
  const lines: string[] = [];
  const { from, to, emissionVolts } = netlist.junctions;
  for (let i = 0; i < from.length; i++) {
    if (values.saturation[i] === 0) continue;
    const text = `d(is=${exact(values.saturation[i])} n=${exact(emissionVolts[i] / thermalVolts(ROOM_CELSIUS))})`;
    const name = models.get(text) ?? `dm${models.size}`;
    models.set(text, name);
    lines.push(`d${i} ${spiceNet(from[i])} ${spiceNet(to[i])} ${name}`);
  }
  const { base, collector, emitter, sign } = netlist.bjts;
  for (let i = 0; i < base.length; i++) {
    if (values.bjtSaturation[i] === 0) continue;
    const { forwardGain, reverseGain, emission } = BJT_MODEL;
    const type = sign[i] > 0 ? "npn" : "pnp";
    const text = `${type}(is=${exact(values.bjtSaturation[i])} bf=${forwardGain} br=${reverseGain} nf=${emission} nr=${emission})`;
    const name = models.get(text) ?? `qm${models.size}`;
    models.set(text, name);
    lines.push(`q${i} ${spiceNet(collector[i])} ${spiceNet(base[i])} ${spiceNet(emitter[i])} ${name}`);
  }
  return [...lines, ...[...models].map(([text, name]) => `.model ${name} ${text}`)];
}

function capacitorLines(netlist: Netlist, values: Values): string[] {
  const { from, to } = netlist.capacitors;
  const lines: string[] = [];
  for (let i = 0; i < from.length; i++)
    if (values.farads[i] > 0)
      lines.push(`c${i} ${spiceNet(from[i])} ${spiceNet(to[i])} ${exact(values.farads[i])} ic=0`);
  return lines;
}

/** The meter with its analysis, and the sum that turns volts at the probes into the reading. */
function meterLines(check: ColdCheck, probed: Probed): { meter: string[]; control: string[] } {
  const red = spiceNet(probed.problem.source.plus);
  const black = spiceNet(probed.problem.source.minus);
  const vector = (net: string) => (net === "0" ? "0" : `v(${net})`);
  const across = `${vector(red)}-${vector(black)}`;
  if (check.mode === "farads") {
    const omega = 2 * Math.PI * FARADS_HERTZ;
    return {
      meter: [`iprobe ${black} ${red} dc 0 ac 1`],
      control: [
        `ac lin 1 ${FARADS_HERTZ} ${FARADS_HERTZ}`,
        `let reading = imag(1/(${across}))/${exact(omega)}`,
      ],
    };
  }
  const { openVolts, ohms } = probed.range;
  const source =
    check.seconds === undefined
      ? []
      : [`tran ${exact(check.seconds / 2000)} ${exact(check.seconds)} 0 ${exact(check.seconds / 500)} uic`];
  const settled = check.seconds === undefined ? SETTLE : source;
  const end = check.seconds === undefined ? [] : [`let last = length(time)-1`];
  const pick = check.seconds === undefined ? `let seen = ${across}` : `let seen = (${across})[last]`;
  const reading =
    check.mode === "diode"
      ? "let reading = seen"
      : `let reading = seen*${exact(ohms)}/(${exact(openVolts)}-seen)`;
  return {
    meter: [`vmeter meter ${black} dc ${exact(openVolts)}`, `rmeter meter ${red} ${exact(ohms)}`],
    control: [...settled, ...end, pick, reading],
  };
}

/** The deck of one check, or why there is none. Throws where the board has no such place or fault. */
export function spiceDeck(
  board: Board,
  bench: BenchState,
  meter: MeterSettings,
  check: ColdCheck,
  faults: readonly Fault[],
): string | NotSolved {
  const circuit = coldCircuit(board, bench);
  const probing = new Probing(circuit, meter);
  const values = circuit.withFaults(faults);
  const alternating = check.mode === "farads";
  const climbing = !alternating && check.seconds !== undefined;
  const climbed = climbing ? climbAt(probing, check, values, [check.seconds ?? 0]) : null;
  if (climbed !== null && "solved" in climbed) return { solved: false, why: whyUnsolved(climbed) };
  const probed = climbed?.[0] ?? probing.settle(alternating ? { ...check, mode: "ohms" } : check, values);
  if (!probed.solved) return { solved: false, why: whyUnsolved(probed) };
  const { netlist } = circuit;
  const { meter: meterParts, control } = meterLines(check, probed);
  const names = faults.map(faultName).join(", ");
  return [
    `${board.name}: ${check.mode} ${check.red} to ${check.black}${names === "" ? "" : `, faults ${names}`}`,
    `* reference 0 is ${board.zero}`,
    ...netlist.names.map((name, net) => `* ${spiceNet(net)} is ${name}`),
    climbing ? CLIMBING_OPTIONS : SETTLED_OPTIONS,
    ...resistorLines(netlist, values, alternating),
    ...semiconductorLines(netlist, values),
    ...(alternating || climbing ? capacitorLines(netlist, values) : []),
    ...meterParts,
    ".control",
    "set numdgt=15",
    ...control,
    "print reading",
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
}
