/** What a charge, or a voltage that stands, may do to a hand, and how long it takes to be gone. */
import { type Command, Option } from "commander";
import { bleedSeconds, storedJoules } from "../../board/stored-charge.ts";
import { plugBleederOhms } from "../../parts/values/plug-bleeder.ts";
import {
  dischargesFastEnough,
  energyRemarks,
  isFreeCharge,
  isNoLivePart,
  pulseClass,
  pulseCurrentClass,
  steadyClass,
  steadyCurrentClass,
  type TouchClass,
  touchClass,
} from "../../parts/values/touch-limits.ts";
import type { Parsed } from "../../units/outcome.ts";
import { formatQuantity } from "../../units/quantity.ts";
import { figures, type Told } from "../told.ts";

type Answer = (made: () => Parsed<Told>, options: Json) => void;

interface Json {
  readonly json?: true;
}

export function addCharge(values: Command, answer: Answer): void {
  values
    .command("charge")
    .description(
      "what a charged capacitor holds, what that may do, and how long a resistor takes to empty it",
    )
    .requiredOption("--farads <farads>", "capacitance")
    .requiredOption("--volts <volts>", "that stand on it")
    .option("--ohms <ohms>", "a resistor across it")
    .option("--json", "one JSON object for a script")
    .action((options: ChargeOptions) => answer(() => charge(options), options));
  values
    .command("touch")
    .description("what a voltage that stands, a current that flows, or one pulse may do to a hand")
    .option("--volts <volts>", "direct, or the peak of an alternating one")
    .option("--amps <amps>", "in its place: what flows, direct or effective")
    .addOption(
      new Option("--kind <kind>", "of what stands").choices(["direct", "alternating"]).default("direct"),
    )
    .option("--seconds <seconds>", "one pulse so long, in its place")
    .option("--json", "one JSON object for a script")
    .action((options: TouchOptions) => answer(() => touch(options), options));
  values
    .command("bleeder")
    .description("the highest resistor across the capacitors behind a plug")
    .requiredOption("--farads <farads>", "all of them together")
    .option("--mains <volts>", "effective", "230")
    .addOption(
      new Option("--plug <type>", "A: the common one, B: industrial").choices(["A", "B"]).default("A"),
    )
    .option("--ohms <ohms>", "the one that is there")
    .option("--json", "one JSON object for a script")
    .action((options: BleederOptions) => answer(() => bleeder(options), options));
}

interface ChargeOptions extends Json {
  readonly farads: string;
  readonly volts: string;
  readonly ohms?: string;
}

/** This program's own proof that a store of charge is empty. */
const PROOF_VOLTS = 10;
const LOW_VOLTS = 60;

function charge(options: ChargeOptions): Parsed<Told> {
  const read = figures({ farads: options.farads, volts: options.volts });
  if (!read.ok) return read;
  const { farads, volts } = read.value;
  const touch = touchClass(farads, volts);
  if (!touch.ok) return touch;
  const bleed = options.ohms === undefined ? null : figures({ ohms: options.ohms });
  if (bleed !== null && !bleed.ok) return bleed;
  const joules = storedJoules(farads, volts);
  const remarks = energyRemarks(farads, volts);
  const secondsTo = (to: number) =>
    bleed === null || volts <= to ? null : bleedSeconds(volts, to, bleed.value.ohms, farads);
  const [toLow, toProof] = [secondsTo(LOW_VOLTS), secondsTo(PROOF_VOLTS)];
  const live = !isNoLivePart(farads, volts);
  const lines = [
    `${formatQuantity(joules, "J")}, ${formatQuantity(farads * volts, "C")}: ${touch.value} (IEC 62368-1 table 5, seen at second hand)`,
    `${live ? "a live part" : "no live part"} by IEC 60335-1 cl. 8.1.4 (seen at second hand)`,
    `${isFreeCharge(farads, volts) ? "within" : "above"} the 45 uC of IEC 61010-1 cl. 6.3.1 (seen at second hand)`,
    ...remarks.map(({ words, mark, source }) => `${words} (${mark}: ${source})`),
    ...(toLow === null ? [] : [`${formatQuantity(toLow, "s")} to ${LOW_VOLTS} V through the resistor`]),
    ...(toProof === null ? [] : [`${formatQuantity(toProof, "s")} to ${PROOF_VOLTS} V`]),
    `Whatever the table says: it is empty when a meter on its own two pins reads below ${PROOF_VOLTS} V.`,
  ];
  const json = {
    joules,
    coulombs: farads * volts,
    touch: touch.value,
    live,
    remarks,
    secondsTo60: toLow,
    secondsTo10: toProof,
  };
  return { ok: true, value: { json, text: `${lines.join("\n")}\n` } };
}

interface TouchOptions extends Json {
  readonly volts?: string;
  readonly amps?: string;
  readonly kind: "direct" | "alternating";
  readonly seconds?: string;
}

function touch({ volts, amps, kind, seconds }: TouchOptions): Parsed<Told> {
  if ((volts === undefined) === (amps === undefined))
    return { ok: false, problem: "--volts or --amps: one of them" };
  const read = figures({ volts: volts ?? "0", amps: amps ?? "0", seconds: seconds ?? "0" });
  if (!read.ok) return read;
  const found =
    volts === undefined ? currentTouch(read.value, kind, seconds) : voltsTouch(read.value, kind, seconds);
  if (!found.ok) return found;
  const table = seconds === undefined ? "table 4" : volts === undefined ? "table 7" : "table 6";
  const text = `${found.value} (IEC 62368-1 ${table}, seen at second hand): ${TOUCH_WORDS[found.value]}
Whatever the table says: switched off, unplugged and proven empty before a hand goes in.\n`;
  return { ok: true, value: { json: { touch: found.value }, text } };
}

type TouchFigures = Readonly<Record<"volts" | "amps" | "seconds", number>>;

function voltsTouch(read: TouchFigures, kind: TouchOptions["kind"], pulse?: string): Parsed<TouchClass> {
  return pulse === undefined
    ? { ok: true, value: steadyClass(kind === "direct" ? "direct" : "alternatingPeak", read.volts) }
    : pulseClass(read.seconds, read.volts);
}

function currentTouch(read: TouchFigures, kind: TouchOptions["kind"], pulse?: string): Parsed<TouchClass> {
  return pulse === undefined
    ? { ok: true, value: steadyCurrentClass(kind, read.amps) }
    : pulseCurrentClass(read.seconds, read.amps);
}

const TOUCH_WORDS: Readonly<Record<TouchClass, string>> = {
  ES1: "felt at most",
  ES2: "it hurts",
  ES3: "it harms",
};

interface BleederOptions extends Json {
  readonly farads: string;
  readonly mains: string;
  readonly plug: "A" | "B";
  readonly ohms?: string;
}

function bleeder(options: BleederOptions): Parsed<Told> {
  const read = figures({ farads: options.farads, mains: options.mains });
  if (!read.ok) return read;
  const most = plugBleederOhms(read.value.farads, read.value.mains);
  if (!most.ok) return most;
  const there = options.ohms === undefined ? null : figures({ ohms: options.ohms });
  if (there !== null && !there.ok) return there;
  const enough =
    there === null ? null : dischargesFastEnough(read.value.farads, there.value.ohms, options.plug);
  const lines = [
    most.value === null
      ? "none is asked for up to 0.1 uF"
      : `${formatQuantity(most.value, "ohm")} at most: 34 V a second after the plug is pulled`,
    ...(enough === null
      ? []
      : [`its time constant is ${enough ? "short enough" : "too long"} by IEC 60950-1`]),
  ];
  const text = `${lines.join("\n")} (IEC 60335-1 cl. 22.5, seen at second hand)\n`;
  return { ok: true, value: { json: { mostOhms: most.value, fastEnough: enough }, text } };
}
