import { type Command, Option } from "commander";
import { bleedSeconds, storedJoules } from "../../board/stored-charge.ts";
import {
  esrOhms,
  grossLeakage,
  type LossTable,
  leakageAboveHundredVolts,
  leakageAfterAMinute,
  leakageToHundredVolts,
  lifeHours,
  strictLeakage,
  surgeVolts,
  tanDeltaLimit,
} from "../../parts/values/capacitor-limits.ts";
import { plugBleederOhms } from "../../parts/values/plug-bleeder.ts";
import { ohmsOfBands, printedOhms } from "../../parts/values/resistor-marking.ts";
import {
  dischargesFastEnough,
  energyRemarks,
  isNoLivePart,
  touchClass,
} from "../../parts/values/touch-limits.ts";
import type { Parsed } from "../../units/outcome.ts";
import { nearestPreferred, type Series } from "../../units/preferred-values.ts";
import { formatQuantity } from "../../units/quantity.ts";
import { table } from "../answer-text.ts";
import type { Finish, Io } from "../io.ts";
import { figures, type Told, told } from "../told.ts";

interface Json {
  readonly json?: true;
}

export function addValues(program: Command, io: Io, finish: Finish): void {
  const values = program
    .command("values")
    .description("what a marking says, when a capacitor is worn out, and what its charge may do")
    .addHelpText(
      "after",
      `
Examples:
  $ faultwright values resistor yellow violet red gold
  $ faultwright values resistor 4K6
  $ faultwright values electrolytic --farads 470u --volts 450
  $ faultwright values charge --farads 680u --volts 325 --ohms 100k`,
    );
  const answer = (made: () => Parsed<Told>, { json }: Json) => finish(() => told(made, json === true, io));
  values
    .command("resistor")
    .description("colour bands, or a printed value, as ohms; and the nearest values that are sold")
    .argument("<marking...>", "three to five colours, or one value as 4K7")
    .option("--json", "one JSON object for a script")
    .action((marking: readonly string[], options: Json) => answer(() => resistor(marking), options));
  values
    .command("electrolytic")
    .description(
      "leakage, loss and ESR above which one is worn out, by makers' data sheets; its surge, its life",
    )
    .requiredOption("--farads <farads>", "capacitance")
    .requiredOption("--volts <volts>", "rated voltage")
    .option("--hertz <hertz>", "at which ESR is read", "120")
    .option("--hours <hours>", "rated life", "2000")
    .option("--rated <degC>", "at which it is rated", "105")
    .option("--at <degC>", "where it lives", "65")
    .option("--json", "one JSON object for a script")
    .action((options: ElectrolyticOptions) => answer(() => electrolytic(options), options));
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

const SERIES: readonly Series[] = ["E12", "E24", "E96"];

/** A burnt resistor was most likely a value that is sold. */
function resistor(marking: readonly string[]): Parsed<Told> {
  const [only = ""] = marking;
  const isPrinted = marking.length === 1 && /\d/.test(only);
  const printed = isPrinted ? figures({ marking: only }) : null;
  if (printed !== null && !printed.ok) return printed;
  const bands = printed === null ? ohmsOfBands(marking) : null;
  if (bands !== null && !bands.ok) return bands;
  const ohms = printed?.value.marking ?? bands?.value.ohms ?? 0;
  if (!(ohms > 0)) return { ok: false, problem: "marking: a resistor of 0 ohm is a wire" };
  const nearest = Object.fromEntries(SERIES.map((series) => [series, nearestPreferred(ohms, series)]));
  const code = printedOhms(ohms);
  const tolerance = bands?.value.tolerance ?? null;
  const text = [
    `${formatQuantity(ohms, "ohm")}${tolerance === null ? "" : `, ${tolerance * 100} %`}${code.ok ? `, printed ${code.value}` : ""} (IEC 60062)`,
    ...(bands !== null && tolerance === null
      ? ["the last colour is read differently in different lists"]
      : []),
    ...(bands?.value.usual === false
      ? ["two digits belong to 5 % and wider, three to 2 % and tighter: read it from the other end too"]
      : []),
    `nearest sold: ${SERIES.map((series) => `${series} ${formatQuantity(nearest[series] ?? 0, "ohm")}`).join(", ")} (IEC 60063)`,
  ];
  const json = {
    ohms,
    tolerance,
    usual: bands?.value.usual ?? null,
    printed: code.ok ? code.value : null,
    nearest,
  };
  return { ok: true, value: { json, text: `${text.join("\n")}\n` } };
}

interface ElectrolyticOptions extends Json {
  readonly farads: string;
  readonly volts: string;
  readonly hertz: string;
  readonly hours: string;
  readonly rated: string;
  readonly at: string;
}

const LEAKAGES: readonly {
  readonly after: string;
  readonly source: string;
  readonly limit: (farads: number, volts: number) => Parsed<number>;
}[] = [
  { after: "2 min", source: "Lelon RGA, Nichicon RS", limit: leakageToHundredVolts },
  { after: "5 min", source: "Vishay 038 RSU", limit: strictLeakage },
  { after: "5 min", source: "Lelon RGA", limit: leakageAboveHundredVolts },
  { after: "1 min", source: "Nichicon RS", limit: leakageAfterAMinute },
  { after: "any time, gross reject", source: "JAN-C-62 in amradio msg21215", limit: grossLeakage },
];
const LOSSES: readonly LossTable[] = ["Lelon RGA", "Nichicon RS"];

function electrolytic(options: ElectrolyticOptions): Parsed<Told> {
  const { farads: f, volts: v, hertz: h, hours, rated, at } = options;
  const read = figures({ farads: f, volts: v, hertz: h, hours, rated, at });
  if (!read.ok) return read;
  const { farads, volts, hertz } = read.value;
  const surge = surgeVolts(volts);
  if (!surge.ok) return surge;
  const life = lifeHours(read.value.hours, read.value.rated, read.value.at);
  if (!life.ok) return life;
  const leakage = LEAKAGES.flatMap(({ after, source, limit }) => {
    const amps = limit(farads, volts);
    return amps.ok ? [{ after, source, amps: amps.value }] : [];
  });
  const loss = LOSSES.flatMap((source) => {
    const limit = tanDeltaLimit(farads, volts, source);
    const esr = limit.ok ? esrOhms(limit.value, hertz, farads) : limit;
    return limit.ok && esr.ok ? [{ source, tanDelta: limit.value, esrOhms: esr.value }] : [];
  });
  const rows = [
    ...leakage.map(({ after, source, amps }) => [
      `leakage at ${volts} V after ${after}, at most`,
      formatQuantity(amps, "A"),
      source,
    ]),
    ...loss.map(({ source, tanDelta, esrOhms: ohms }) => [
      `tan delta new at 120 Hz, and ESR at ${hertz} Hz; worn out at twice that`,
      `${Number(tanDelta.toPrecision(3))}, ${formatQuantity(ohms, "ohm")}`,
      source,
    ]),
    ["capacitance, worn out outside", "80 to 120 %", "Lelon RGA, Nichicon RS"],
    ["surge, at most", `${Math.round(surge.value)} V`, "Vishay 038 RSU"],
    [`life at ${at} degC, ripple aside`, `${Math.round(life.value)} h`, "ten-degree rule"],
  ];
  const json = { leakage, loss, surgeVolts: surge.value, lifeHours: life.value };
  return { ok: true, value: { json, text: table(rows) } };
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
