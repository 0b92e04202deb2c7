/** A rectifier with its capacitor and load, as a circuit of the live board and as a transient deck of a reference simulator. */

import { coldOhms, filament, hotOhms, type Lamp } from "../src/live/filament.ts";
import type { PowerCircuit } from "../src/live/power-circuit.ts";

export interface RectifierCase {
  readonly volts: number;
  readonly hz: number;
  /** in the line, ohms */
  readonly lineOhms: number;
  readonly farads: number;
  readonly load: { readonly ohms: number } | { readonly watts: number };
  /** a junction that is open */
  readonly open: "ac1plus" | "minusac2" | null;
  readonly lamp: Lamp | null;
}

/** A power rectifier: 0.75 V and 35 mohm about its working current (general-purpose bridge data sheets, from memory). */
const JUNCTION = { dropVolts: 0.75, ohms: 0.035 };
/** The same junction as an equation: about the same volts at 1 A. */
const SPICE_DIODE = ".model dbr d(is=2e-8 n=1.7 rs=0.03 cjo=0)";
/** Below this a load of constant watts is a resistor, volts. */
const LEAST_VOLTS = 60;

/** Nets: 0 line, 1 behind the line ohms, 2 neutral, 3 bus plus; bus minus is the reference. */
export function rectifierCircuit(one: RectifierCase): PowerCircuit {
  const junction = (name: string, from: number, to: number) =>
    one.open === name ? [] : [{ from, to, ...JUNCTION, part: "BR1" }];
  return {
    nets: 4,
    resistors: [
      one.lamp === null
        ? { from: 0, to: 1, ohms: one.lineOhms, part: "R1" }
        : { from: 0, to: 1, ohms: coldOhms(one.lamp), part: null, heats: filament(one.lamp) },
      ...("ohms" in one.load ? [{ from: 3, to: -1, ohms: one.load.ohms, part: "RL" }] : []),
    ],
    diodes: [
      ...junction("ac1plus", 1, 3),
      ...junction("ac2plus", 2, 3),
      ...junction("minusac1", -1, 1),
      ...junction("minusac2", -1, 2),
    ],
    capacitors: [{ from: 3, to: -1, farads: one.farads, part: "C1" }],
    sources: [
      {
        from: 0,
        to: 2,
        offsetVolts: 0,
        peakVolts: one.volts * Math.SQRT2,
        radians: 0,
        ohms: 0.05,
        limitAmps: null,
      },
    ],
    load: "watts" in one.load ? { from: 3, to: -1, watts: one.load.watts, leastVolts: LEAST_VOLTS } : null,
  };
}

/** `lampSeconds`: time constant of the filament in the deck. */
export function rectifierDeck(one: RectifierCase, seconds: number, lampSeconds = 0.1): string {
  const period = 1 / one.hz;
  const peak = one.volts * Math.SQRT2;
  const lines = [
    "rectifier",
    `vs l0 n sin(0 ${peak} ${one.hz})`,
    "rs l0 l 0.05",
    ...lineOf(one, lampSeconds),
  ];
  for (const [name, from, to] of [
    ["ac1plus", "b", "p"],
    ["ac2plus", "n", "p"],
    ["minusac1", "0", "b"],
    ["minusac2", "0", "n"],
  ])
    if (name !== one.open) lines.push(`d${name} ${from} ${to} dbr`);
  lines.push(
    SPICE_DIODE,
    "rleak1 b 0 1e8",
    "rleak2 n 0 1e8",
    `c1 p 0 ${one.farads} ic=${0.97 * peak}`,
    "ohms" in one.load
      ? `rl p 0 ${one.load.ohms}`
      : `bl p 0 i=${one.load.watts}*v(p)/max(v(p)*v(p),${LEAST_VOLTS ** 2})`,
    ".options reltol=1e-4",
    ".control",
    `tran ${period / 400} ${seconds} ${seconds - period} ${period / 400} uic`,
    "let busmean = mean(v(p))",
    "let busripple = vecmax(v(p)) - vecmin(v(p))",
    "print busmean busripple",
    ...(one.lamp === null ? [] : ["let lampwatts = mean(v(t))", "print lampwatts"]),
    ".endc",
    ".end",
    "",
  );
  return lines.join("\n");
}

/** The line's ohms; or a filament whose ohms follow its watts, smoothed over its own time: `v(t)` is that mean of the watts. */
function lineOf(one: RectifierCase, lampSeconds: number): string[] {
  if (one.lamp === null) return [`rline l b ${one.lineOhms}`];
  const hot = hotOhms(one.lamp);
  const ohms = `max(${coldOhms(one.lamp)},${hot}*pow(max(v(t),1e-6)/${one.lamp.watts},${0.45 / 1.55}))`;
  return [
    `blamp l b i=v(l,b)/(${ohms})`,
    `bheat 0 t i=v(l,b)*v(l,b)/(${ohms})`,
    "rheat t 0 1",
    `cheat t 0 ${lampSeconds}`,
  ];
}
