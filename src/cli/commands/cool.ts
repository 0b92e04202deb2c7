import { type Command, Option } from "commander";
import { ORDER_OF_WORK, torqueRange } from "../../parts/cooling/mounting.ts";
import {
  beforeAndAfter,
  INTERFACES,
  type InterfaceName,
  junctionTemperatures,
  resistanceFromWatts,
  wattsAtCase,
} from "../../parts/cooling/thermal-chain.ts";
import { downwards, upwards } from "../../units/hundredths.ts";
import type { Parsed } from "../../units/outcome.ts";
import type { Finish, Io } from "../io.ts";
import { figures, type Told, told } from "../told.ts";
import { addHeat } from "./cool-heat.ts";
import { addLayers } from "./cool-layers.ts";
import { addRebuild } from "./cool-rebuild.ts";

const UNDER = Object.keys(INTERFACES) as InterfaceName[];

export function addCool(program: Command, io: Io, finish: Finish): void {
  const cool = program
    .command("cool")
    .description("will it stay cool: junction, screw, and the distances and tracks of a rebuilt area")
    .addHelpText(
      "after",
      `
Examples:
  $ faultwright cool junction --watts 18 --case 0.64 --sink 1.5 --under paste --instead pad
  $ faultwright cool screw TO-247
  $ faultwright cool spacing --line 230 --volts 400 --degree 3
  $ faultwright cool bridge --volts 0.8 --ohms 0.01 --amps 8
  $ faultwright cool bridge --volts 0.8 --ohms 0.01 --load 900 --boosted 380
  $ faultwright cool track --amps 8 --rise 20
  $ faultwright cool layer mica --mm 0.1 --area 300
  $ faultwright cool pulse --watts 400 --seconds 5m --step 0.26:1m 0.34:10m`,
    );
  const answer = (made: () => Parsed<Told>, json: boolean) => finish(() => told(made, json, io));
  cool
    .command("junction")
    .description(
      "the temperature of one junction on its heatsink, and after a change of what lies under the case",
    )
    .requiredOption("--watts <watts>", "heat of the part")
    .option("--case <kelvin per watt>", "junction to case, from its data sheet")
    .option("--watts-at-25 <watts>", "in its place where the data sheet gives only the watts at 25 degC")
    .option("--limit <degC>", "highest of the junction, from its data sheet", "150")
    .requiredOption("--sink <kelvin per watt>", "heatsink to air")
    .option("--air <degC>", "air at the heatsink", "40")
    .addOption(new Option("--under <what>", "between case and heatsink").choices(UNDER).default("paste"))
    .addOption(new Option("--instead <what>", "compared with").choices(UNDER))
    .option("--json", "one JSON object for a script")
    .action((options: JunctionOptions) => answer(() => junction(options), options.json === true));
  cool
    .command("screw")
    .description("how tight, and the order of the work")
    .argument("<case>", "as TO-247")
    .option("--json", "one JSON object for a script")
    .action((caseName: string, options: { json?: true }) =>
      answer(() => screw(caseName), options.json === true),
    );
  addRebuild(cool, answer);
  addHeat(cool, answer);
  addLayers(cool, answer);
}

interface JunctionOptions {
  readonly watts: string;
  readonly case?: string;
  readonly wattsAt25?: string;
  readonly limit: string;
  readonly sink: string;
  readonly air: string;
  readonly under: InterfaceName;
  readonly instead?: InterfaceName;
  readonly json?: true;
}

/** What the data sheet says of it, or what its watts at 25 degC come to. */
function junctionToCaseOf({ case: own, wattsAt25 }: JunctionOptions, limit: number): Parsed<number> {
  if ((own === undefined) === (wattsAt25 === undefined))
    return { ok: false, problem: "--case or --watts-at-25: one of them, from the data sheet" };
  const read = figures({ case: own ?? wattsAt25 ?? "" });
  if (!read.ok) return read;
  return own === undefined
    ? resistanceFromWatts(limit, read.value.case)
    : { ok: true, value: read.value.case };
}

/** The worse end of each interface is reckoned with: nobody knows which end a bench reached. */
function junction(options: JunctionOptions): Parsed<Told> {
  const { watts: heat, sink: toAir, air: room, limit: most } = options;
  const read = figures({ watts: heat, sink: toAir, air: room, limit: most });
  if (!read.ok) return read;
  const { watts, sink, air, limit } = read.value;
  const inside = junctionToCaseOf(options, limit);
  if (!inside.ok) return inside;
  const junctionToCase = inside.value;
  const on = (name: InterfaceName) => ({ watts, junctionToCase, caseToSink: INTERFACES[name].high });
  const now = junctionTemperatures([on(options.under)], sink, air);
  if (!now.ok) return now;
  const [junctionDegC = air] = now.value.junctionDegC;
  const { high } = INTERFACES[options.under];
  const caseDegC = now.value.sinkDegC + watts * high;
  const bears = wattsAtCase(limit, Math.min(caseDegC, limit), junctionToCase);
  if (!bears.ok) return bears;
  const first = `junction ${junctionDegC.toFixed(0)} degC, heatsink ${now.value.sinkDegC.toFixed(0)} degC, with ${interfaceWords(options.under)}
at this case of ${caseDegC.toFixed(0)} degC it bears ${Number(bears.value.toPrecision(3))} W up to ${limit} degC\n`;
  const json = {
    sinkDegC: now.value.sinkDegC,
    junctionDegC,
    caseToSink: high,
    junctionToCase,
    caseDegC,
    wattsAtCase: bears.value,
  };
  if (options.instead === undefined) return { ok: true, value: { json, text: first } };
  const compared = beforeAndAfter(on(options.under), on(options.instead), sink, air);
  if (!compared.ok) return compared;
  const { afterDegC, failureTimes, cool } = compared.value;
  const second = `with ${interfaceWords(options.instead)}: junction ${afterDegC.toFixed(0)} degC, failures ${failureTimes.toFixed(1)} times as often (seen for 135 to 160 degC); ${cool ? "within" : "above"} the guide of 110 degC (onsemi AN1040/D)\n`;
  return { ok: true, value: { json: { ...json, instead: compared.value }, text: first + second } };
}

function interfaceWords(name: InterfaceName): string {
  const { words, low, high, mark, source } = INTERFACES[name];
  return `${words} (${low} to ${high} K/W, the worse taken; ${mark}: ${source})`;
}

function screw(caseName: string): Parsed<Told> {
  const range = torqueRange(caseName);
  if (!range.ok) return range;
  const { least, most, rows } = range.value;
  const sources = rows.map((row) => `    ${row.mark}: ${row.source}\n`).join("");
  const order = ORDER_OF_WORK.map((step, at) => `    ${at + 1}. ${step}\n`).join("");
  const text = `${caseName}: ${upwards(least)} to ${downwards(most)} N m, M3; its own data sheet comes first\n${sources}  In this order:\n${order}`;
  return {
    ok: true,
    value: { json: { leastNewtonMetres: least, mostNewtonMetres: most, order: ORDER_OF_WORK }, text },
  };
}
