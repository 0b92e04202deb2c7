import { type Command, Option } from "commander";
import { ORDER_OF_WORK, torqueRange } from "../../parts/cooling/mounting.ts";
import {
  beforeAndAfter,
  INTERFACES,
  type InterfaceName,
  junctionTemperatures,
} from "../../parts/cooling/thermal-chain.ts";
import { ipcSpacingMm, supplySpacingMm } from "../../parts/rebuild/ipc-spacing.ts";
import { cutLeadAtMm, LEAD_LIMITS } from "../../parts/rebuild/lead-protrusion.ts";
import {
  altitudeFactor,
  grooveMm,
  type Insulation,
  olderClearanceMm,
  spacingFor,
} from "../../parts/rebuild/spacing.ts";
import { type TrackLayer, trackWidthMm } from "../../parts/rebuild/track-current.ts";
import type { Parsed } from "../../units/outcome.ts";
import type { Finish, Io } from "../io.ts";
import { figures, type Told, told } from "../told.ts";
import { addHeat } from "./cool-heat.ts";

const UNDER = Object.keys(INTERFACES) as InterfaceName[];
const LAYERS: readonly TrackLayer[] = ["outside", "inside"];

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
  $ faultwright cool track --amps 8 --rise 20`,
    );
  const answer = (made: () => Parsed<Told>, json: boolean) => finish(() => told(made, json, io));
  cool
    .command("junction")
    .description(
      "the temperature of one junction on its heatsink, and after a change of what lies under the case",
    )
    .requiredOption("--watts <watts>", "heat of the part")
    .requiredOption("--case <kelvin per watt>", "junction to case, from its data sheet")
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
  cool
    .command("spacing")
    .description("clearance and creepage between two conductors of a rebuilt area")
    .requiredOption("--line <volts>", "line to neutral of the mains")
    .requiredOption("--volts <volts>", "working voltage between the two, effective or steady")
    .addOption(
      new Option("--category <category>", "overvoltage category")
        .choices(["I", "II", "III", "IV"])
        .default("II"),
    )
    .addOption(
      new Option("--degree <degree>", "pollution: 1 sealed, 2 dry indoors, 3 damp or dirty")
        .choices(["1", "2", "3"])
        .default("2"),
    )
    .addOption(
      new Option("--material <group>", "of the laminate; ordinary board is III")
        .choices(["I", "II", "III"])
        .default("III"),
    )
    .option("--metres <metres>", "height above the sea", "2000")
    .option("--reinforced", "between mains and what a hand may touch")
    .option("--json", "one JSON object for a script")
    .action((options: SpacingOptions) => answer(() => spacing(options), options.json === true));
  addTrack(cool, answer);
  addLead(cool, answer);
  addHeat(cool, answer);
}

type Answer = (made: () => Parsed<Told>, json: boolean) => void;

function addTrack(cool: Command, answer: Answer): void {
  cool
    .command("track")
    .description("the width of a rebuilt track")
    .requiredOption("--amps <amps>", "current")
    .option("--rise <kelvin>", "how much warmer it may get", "20")
    .option("--copper <micrometres>", "thickness", "35")
    .addOption(new Option("--layer <layer>", "of the board").choices(LAYERS).default("outside"))
    .option("--json", "one JSON object for a script")
    .action((options: TrackOptions) => answer(() => track(options), options.json === true));
}

function addLead(cool: Command, answer: Answer): void {
  cool
    .command("lead")
    .description("how far a lead may stand out below the board, towards metal that has to keep its distance")
    .requiredOption("--gap <mm>", "from the board to the metal")
    .requiredOption("--clearance <mm>", "that has to stay free")
    .addOption(
      new Option("--class <class>", "2 ordinary service, 3 must not fail").choices(["2", "3"]).default("2"),
    )
    .option("--json", "one JSON object for a script")
    .action((options: LeadOptions) => answer(() => lead(options), options.json === true));
}

interface JunctionOptions {
  readonly watts: string;
  readonly case: string;
  readonly sink: string;
  readonly air: string;
  readonly under: InterfaceName;
  readonly instead?: InterfaceName;
  readonly json?: true;
}

/** The worse end of each interface is reckoned with: nobody knows which end a bench reached. */
function junction(options: JunctionOptions): Parsed<Told> {
  const read = figures({ watts: options.watts, case: options.case, sink: options.sink, air: options.air });
  if (!read.ok) return read;
  const { watts, case: junctionToCase, sink, air } = read.value;
  const on = (name: InterfaceName) => ({ watts, junctionToCase, caseToSink: INTERFACES[name].high });
  const now = junctionTemperatures([on(options.under)], sink, air);
  if (!now.ok) return now;
  const [junctionDegC = air] = now.value.junctionDegC;
  const { high } = INTERFACES[options.under];
  const first = `junction ${junctionDegC.toFixed(0)} degC, heatsink ${now.value.sinkDegC.toFixed(0)} degC, with ${interfaceWords(options.under)}\n`;
  const json = { sinkDegC: now.value.sinkDegC, junctionDegC, caseToSink: high };
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

/** A least figure in hundredths, never less than it is; a most one never more. */
const upwards = (figure: number): string => (Math.ceil(figure * 100 - 1e-9) / 100).toFixed(2);
const downwards = (figure: number): string => (Math.floor(figure * 100 + 1e-9) / 100).toFixed(2);

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

interface SpacingOptions {
  readonly line: string;
  readonly volts: string;
  readonly category: "I" | "II" | "III" | "IV";
  readonly degree: "1" | "2" | "3";
  readonly material: "I" | "II" | "III";
  readonly metres: string;
  readonly reinforced?: true;
  readonly json?: true;
}

function spacing(options: SpacingOptions): Parsed<Told> {
  const read = figures({ line: options.line, volts: options.volts, metres: options.metres });
  if (!read.ok) return read;
  const { line, volts, metres } = read.value;
  const insulation: Insulation = options.reinforced === true ? "reinforced" : "basic";
  const degree = Number(options.degree) as 1 | 2 | 3;
  const found = spacingFor({
    lineVolts: line,
    workingVolts: volts,
    category: options.category,
    degree,
    material: options.material,
    insulation,
  });
  if (!found.ok) return found;
  const factor = altitudeFactor(metres);
  if (!factor.ok) return factor;
  const clearance = found.value.clearanceMm * factor.value;
  const creepage = Math.max(found.value.creepageMm, clearance);
  const { impulseVolts } = found.value;
  const groove = grooveMm(degree, clearance);
  const older = olderClearanceMm(line, insulation);
  const bare = ipcSpacingMm(volts * Math.SQRT2, "B2");
  const supply = supplySpacingMm(volts * Math.SQRT2);
  const beside = [
    ...(older === null ? [] : [`${older} mm of air by IEC 60950-1 (ce-mag.com 01/03, seen)`]),
    ...(bare.ok ? [`${upwards(bare.value)} mm by IPC-2221 column B2, bare`] : []),
    ...(supply.ok ? [`${upwards(supply.value)} mm by IPC-9592, power supplies`] : []),
  ];
  const text = `${Number(upwards(clearance))} mm through air, ${Number(upwards(creepage))} mm along the surface (${insulation}, impulse ${impulseVolts} V; IEC 60664-1 tables, seen at second hand)
A groove counts from ${upwards(groove)} mm of width on. Beside it, of the peak of an effective voltage: ${beside.join("; ")}.
Mill a charred area out until it is white. Local codes and the appliance's own standard come first.\n`;
  const json = {
    impulseVolts,
    clearanceMm: clearance,
    creepageMm: creepage,
    insulation,
    grooveMm: groove,
    olderClearanceMm: older,
    ipc2221Mm: bare.ok ? bare.value : null,
    ipc9592Mm: supply.ok ? supply.value : null,
  };
  return { ok: true, value: { json, text } };
}

interface LeadOptions {
  readonly gap: string;
  readonly clearance: string;
  readonly class: "2" | "3";
  readonly json?: true;
}

function lead(options: LeadOptions): Parsed<Told> {
  const read = figures({ gap: options.gap, clearance: options.clearance });
  if (!read.ok) return read;
  const boardClass = options.class === "2" ? 2 : 3;
  const cut = cutLeadAtMm(boardClass, read.value.gap, read.value.clearance);
  if (!cut.ok) return cut;
  const [source] = LEAD_LIMITS.filter((limit) => limit.boardClass === boardClass);
  const text = `cut leads at ${downwards(cut.value)} mm (class ${boardClass}: ${source?.mostMm} mm at most; ${source?.mark}: ${source?.source}); the end must be seen in the solder\n`;
  return { ok: true, value: { json: { mostMm: cut.value }, text } };
}

interface TrackOptions {
  readonly amps: string;
  readonly rise: string;
  readonly copper: string;
  readonly layer: TrackLayer;
  readonly json?: true;
}

const MICROMETRES_PER_MM = 1000;

function track(options: TrackOptions): Parsed<Told> {
  const read = figures({ amps: options.amps, rise: options.rise, copper: options.copper });
  if (!read.ok) return read;
  const { amps, rise, copper } = read.value;
  const width = trackWidthMm(amps, rise, options.layer, copper / MICROMETRES_PER_MM);
  if (!width.ok) return width;
  const text = `${upwards(width.value)} mm wide for ${amps} A and ${rise} K, ${options.layer}, ${copper} um of copper (IPC-2221 curve)\n`;
  return { ok: true, value: { json: { widthMm: width.value }, text } };
}
