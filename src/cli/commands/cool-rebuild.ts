/** The distances, tracks and leads of a rebuilt area. */
import { type Command, Option } from "commander";
import { ipcSpacingMm, supplySpacingMm } from "../../parts/rebuild/ipc-spacing.ts";
import { cutLeadAtMm, LEAD_LIMITS } from "../../parts/rebuild/lead-protrusion.ts";
import {
  altitudeFactor,
  grooveMm,
  type Insulation,
  materialGroup,
  olderClearanceMm,
  printedCreepageMm,
  spacingFor,
} from "../../parts/rebuild/spacing.ts";
import { type TrackLayer, trackAmps, trackWidthMm } from "../../parts/rebuild/track-current.ts";
import { downwards, upwards } from "../../units/hundredths.ts";
import type { Parsed } from "../../units/outcome.ts";
import { figures, type Told } from "../told.ts";

const LAYERS: readonly TrackLayer[] = ["outside", "inside"];

type Answer = (made: () => Parsed<Told>, json: boolean) => void;

export function addRebuild(cool: Command, answer: Answer): void {
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
    .option("--tracking <index>", "comparative tracking index of the laminate, in the place of --material")
    .option("--metres <metres>", "height above the sea", "2000")
    .option("--reinforced", "between mains and what a hand may touch")
    .option("--json", "one JSON object for a script")
    .action((options: SpacingOptions) => answer(() => spacing(options), options.json === true));
  addTrack(cool, answer);
  addLead(cool, answer);
}

function addTrack(cool: Command, answer: Answer): void {
  cool
    .command("track")
    .description("the width of a rebuilt track, or what one of a width carries")
    .option("--amps <amps>", "current that it is to carry")
    .option("--width <mm>", "of one that is there")
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

interface SpacingOptions {
  readonly line: string;
  readonly volts: string;
  readonly category: "I" | "II" | "III" | "IV";
  readonly degree: "1" | "2" | "3";
  readonly material: "I" | "II" | "III";
  readonly tracking?: string;
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
  const material = materialOf(options);
  if (!material.ok) return material;
  const found = spacingFor({
    lineVolts: line,
    workingVolts: volts,
    category: options.category,
    degree,
    material: material.value,
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
  const printed = degree === 3 ? null : printedCreepageMm(volts, degree);
  const beside = [
    ...(older === null ? [] : [`${older} mm of air by IEC 60950-1 (ce-mag.com 01/03, seen)`]),
    ...(bare.ok ? [`${upwards(bare.value)} mm by IPC-2221 column B2, bare`] : []),
    ...(supply.ok ? [`${upwards(supply.value)} mm by IPC-9592, power supplies`] : []),
    ...(printed?.ok === true
      ? [
          `${upwards(printed.value)} mm along printed wiring under sound resist, which a charred area no longer is`,
        ]
      : []),
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
    printedCreepageMm: printed?.ok === true ? printed.value : null,
    material: material.value,
  };
  return { ok: true, value: { json, text } };
}

function materialOf({ tracking, material }: SpacingOptions): Parsed<SpacingOptions["material"]> {
  if (tracking === undefined) return { ok: true, value: material };
  const read = figures({ tracking });
  return read.ok ? materialGroup(read.value.tracking) : read;
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
  readonly amps?: string;
  readonly width?: string;
  readonly rise: string;
  readonly copper: string;
  readonly layer: TrackLayer;
  readonly json?: true;
}

const MICROMETRES_PER_MM = 1000;

function track({ amps, width, rise, copper, layer }: TrackOptions): Parsed<Told> {
  if ((amps === undefined) === (width === undefined))
    return { ok: false, problem: "--amps or --width: one of them" };
  const read = figures({ amps: amps ?? "0", width: width ?? "0", rise, copper });
  if (!read.ok) return read;
  const thickMm = read.value.copper / MICROMETRES_PER_MM;
  const beside = `${rise} K, ${layer}, ${copper} um of copper (IPC-2221 curve)\n`;
  if (amps === undefined) {
    const carried = trackAmps(read.value.width, thickMm, read.value.rise, layer);
    if (!carried.ok) return carried;
    const text = `${downwards(carried.value)} A for ${width} mm and ${beside}`;
    return { ok: true, value: { json: { amps: carried.value }, text } };
  }
  const wanted = trackWidthMm(read.value.amps, read.value.rise, layer, thickMm);
  if (!wanted.ok) return wanted;
  const text = `${upwards(wanted.value)} mm wide for ${amps} A and ${beside}`;
  return { ok: true, value: { json: { widthMm: wanted.value }, text } };
}
