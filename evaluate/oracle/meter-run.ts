/** Many checks of one circuit in one deck: the probes are moved and the ranges switched while ngspice keeps the circuit. */
import type { ColdMode, Place } from "../../src/bench/event.ts";
import { runControl } from "../ngspice.ts";
import { type CircuitLines, circuitLines, type OnTheBench } from "./oracle-deck.ts";
import type { OracleMeter, Seen } from "./oracle-meter.ts";

export interface OracleCheck {
  readonly mode: ColdMode;
  readonly red: Place;
  readonly black: Place;
  /** seconds after touching, capacitors empty before; absent: settled */
  readonly seconds?: number;
}

const AWAY_OHMS = 1e14;
const NO_SOURCE_OHMS = 1e15;
/** Volts over which the current source gives way at its compliance. */
const SOFT_VOLTS = 0.08;

/** One operating point asked of a deck: which sources are on. */
interface Shot {
  readonly check: OracleCheck;
  readonly volts: number;
  readonly ohms: number;
  readonly amps: number;
}

function shotsOf(check: OracleCheck, meter: OracleMeter): readonly Shot[] {
  if (check.mode === "diode")
    return [{ check, volts: meter.complianceVolts, ohms: NO_SOURCE_OHMS, amps: meter.diodeAmps }];
  const ranges = check.mode === "ohms" ? meter.ohms : meter.ohms.slice(0, check.mode === "farads" ? 2 : 1);
  return ranges.map(({ volts, ohms, amps }) => ({
    check,
    volts,
    ohms: ohms ?? NO_SOURCE_OHMS,
    amps: amps ?? 0,
  }));
}

function placesOf(checks: readonly OracleCheck[]): readonly Place[] {
  return [...new Set(checks.flatMap(({ red, black }) => [red, black]))];
}

function deckOf(
  on: OnTheBench,
  meter: OracleMeter,
  checks: readonly OracleCheck[],
  watched: boolean,
): string {
  const circuit = circuitLines(on, watched);
  const places = placesOf(checks);
  const probe = (place: Place): number => places.indexOf(place);
  const commands = checks.flatMap((check, index) => commandsOf(check, index, meter, probe));
  return [
    "an oracle board",
    `.options temp=${on.room.celsius.toFixed(2)} tnom=25 gmin=1e-13 reltol=1e-4 vntol=1e-7 abstol=1e-12 itl1=800 itl4=200`,
    ...circuit.lines,
    ...probeLines(circuit, places, meter),
    ".control",
    "set numdgt=9",
    ...commands,
    ".endc",
    ".end",
    "",
  ].join("\n");
}

function probeLines(circuit: CircuitLines, places: readonly Place[], meter: OracleMeter): string[] {
  const left = `(v(cc)-v(mp,mm))/${SOFT_VOLTS}`;
  return [
    ...places.flatMap((place, index) => [
      `rred${index} mp ${circuit.at(place)} ${AWAY_OHMS}`,
      `rblk${index} mm ${circuit.at(place)} ${AWAY_OHMS}`,
    ]),
    "rinput mp mm 1e13",
    "rground mm 0 1e14",
    "vamps ca 0 dc 0",
    "vcomp cc 0 dc 1",
    // full current up to the compliance, there the smaller of it and what is left: a slope, so that Newton's way leads back
    `bmeter mm mp i=1e-6*v(ca)*0.5*(${left}+1-sqrt((${left}-1)^2+0.01))`,
    "vopen mo mm dc 0",
    `rsource mo mp ${NO_SOURCE_OHMS}`,
    "iprobe mm mp dc 0 ac 1",
    `* leads of ${meter.leadOhms.toFixed(3)} ohm together`,
  ];
}

/** The commands for one check; each shot prints `@<check> <shot>` and then its volts, farads twice (ohms first). */
function commandsOf(
  check: OracleCheck,
  index: number,
  meter: OracleMeter,
  probe: (place: Place) => number,
): string[] {
  const [red, black] = [probe(check.red), probe(check.black)];
  const leads = (ohms: number): string[] => [`alter rred${red} = ${ohms}`, `alter rblk${black} = ${ohms}`];
  const analysis =
    check.seconds === undefined
      ? ["op", "let seen = v(mp)-v(mm)"]
      : [
          `tran ${check.seconds / 400} ${check.seconds} 0 ${check.seconds / 200} uic`,
          "let seen = (v(mp)-v(mm))[length(time)-1]",
        ];
  const lines = (shot: Shot, at: number): string[] => [
    `alter rsource = ${shot.ohms}`,
    `alter vopen dc = ${shot.ohms === NO_SOURCE_OHMS ? 0 : shot.volts}`,
    `alter vcomp dc = ${shot.volts}`,
    `alter vamps dc = ${shot.amps * 1e6}`,
    ...analysis,
    `echo @ ${index} ${at}`,
    "print seen",
  ];
  const shots =
    check.mode === "ohms"
      ? upTheRanges(meter, shotsOf(check, meter).map(lines))
      : shotsOf(check, meter).flatMap((one, at) => [...lines(one, at), "destroy all"]);
  const farads =
    check.mode === "farads"
      ? [
          "alter vamps dc = 0",
          "alter vopen dc = 0",
          `alter rsource = ${NO_SOURCE_OHMS}`,
          `ac lin 1 ${meter.faradsHertz} ${meter.faradsHertz}`,
          `let seen = imag(1/(v(mp)-v(mm)))/${2 * Math.PI * meter.faradsHertz}`,
          `echo @ ${index} farads`,
          "print seen",
          "destroy all",
        ]
      : [];
  return [...leads(meter.leadOhms / 2), ...shots, ...farads, ...leads(AWAY_OHMS)];
}

/** Volts at the probes at which a range is full. */
function fullVolts({ limit, volts, ohms, amps }: OracleMeter["ohms"][number]): number {
  return amps === null ? (volts * limit) / (limit + (ohms ?? 0)) : amps * limit;
}

/** The next range is only tried where the one before is over: each shot inside the condition of the one before. */
function upTheRanges(meter: OracleMeter, shots: readonly (readonly string[])[]): string[] {
  const lines: string[] = [];
  for (const [at, shot] of shots.entries()) {
    lines.push(...shot);
    const range = meter.ohms[at];
    if (range !== undefined && at + 1 < shots.length)
      lines.push(`if seen > ${(0.999 * fullVolts(range)).toExponential(6)}`, "destroy all");
  }
  return [...lines, ...shots.slice(1).map(() => "end"), "destroy all"];
}

/** Ohms of one shot from its volts, as the meter's own sum has them. */
function ohmsOf(volts: number, { ohms, amps, volts: open }: OracleMeter["ohms"][number]): number {
  if (amps !== null) return volts / amps;
  const left = open - volts;
  return left <= 0 ? Number.POSITIVE_INFINITY : (volts * (ohms ?? 0)) / left;
}

function seenOf(
  check: OracleCheck,
  meter: OracleMeter,
  at: (shot: number | string) => number | undefined,
): Seen | null {
  if (check.mode === "diode") {
    const volts = at(0);
    return volts === undefined ? null : { value: volts, range: 0 };
  }
  if (check.mode === "farads") {
    const [near, far] = [at(0), at(1)];
    const farads = at("farads");
    const [first, second] = meter.ohms;
    if (near === undefined || far === undefined || farads === undefined) return null;
    if (first === undefined || second === undefined) return null;
    const ohms = ohmsOf(near, first) < first.limit ? ohmsOf(near, first) : ohmsOf(far, second);
    return { value: farads, range: ohms < meter.faradsLeastOhms ? -1 : 0 };
  }
  const ranges = check.mode === "ohms" ? meter.ohms : meter.ohms.slice(0, 1);
  for (const [range, row] of ranges.entries()) {
    const volts = at(range);
    if (volts === undefined) return null;
    const ohms = Math.max(0, ohmsOf(volts, row));
    if (ohms <= row.limit || check.mode === "continuity") return { value: ohms, range };
  }
  return { value: Number.POSITIVE_INFINITY, range: -1 };
}

/** Volts behind each `@ check shot` of the output. */
function parsed(output: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const [, check, shot, value] of output.matchAll(/^@ (\d+) (\w+)\s*\n\s*seen\s*=\s*(\S+)/gm)) {
    const number = Number(value);
    if (Number.isFinite(number)) found.set(`${check} ${shot}`, number);
  }
  return found;
}

/**
 * What the meter sees at each check, before its display; null where ngspice found no answer.
 * @throws where ngspice cannot be run
 */
export async function runChecks(
  on: OnTheBench,
  meter: OracleMeter,
  checks: readonly OracleCheck[],
): Promise<readonly (Seen | null)[]> {
  const results: (Seen | null)[] = checks.map(() => null);
  for (const watched of [false, true]) {
    const own = checks.flatMap((check, index) =>
      (check.seconds !== undefined) === watched ? [{ check, index }] : [],
    );
    if (own.length === 0) continue;
    const deck = deckOf(
      on,
      meter,
      own.map(({ check }) => check),
      watched,
    );
    const found = parsed(await runControl(deck));
    for (const [place, { check, index }] of own.entries())
      results[index] = seenOf(check, meter, (shot) => found.get(`${place} ${shot}`));
  }
  return results;
}
