/** What a layer under a case resists, and how far a short pulse warms a junction. */
import { type Command, Option } from "commander";
import {
  layerResistance,
  RESISTIVITY,
  slabResistance,
  type ThermalStep,
  transientResistance,
} from "../../parts/cooling/thermal-chain.ts";
import type { Parsed } from "../../units/outcome.ts";
import { figures, type Told } from "../told.ts";

type Answer = (made: () => Parsed<Told>, json: boolean) => void;
type Material = keyof typeof RESISTIVITY;

const MATERIALS = Object.keys(RESISTIVITY) as Material[];

export function addLayers(cool: Command, answer: Answer): void {
  cool
    .command("layer")
    .description("what a flat layer between case and heatsink resists")
    .argument("[material]", `one of ${MATERIALS.join(" ")}; left out where --conductivity is known`)
    .requiredOption("--mm <mm>", "thickness")
    .requiredOption("--area <mm2>", "of the case, in square millimetres")
    .option("--conductivity <W/mK>", "of a pad, from its data sheet")
    .option("--json", "one JSON object for a script")
    .action((material: string | undefined, options: LayerOptions) =>
      answer(() => layer(material, options), options.json === true),
    );
  cool
    .command("pulse")
    .description("how far a pulse of heat warms a junction above its case, by the data sheet's network")
    .requiredOption("--watts <watts>", "while it lasts")
    .requiredOption("--seconds <seconds>", "how long")
    .addOption(
      new Option(
        "--step <kelvin per watt:seconds...>",
        "steps of the network, as 0.26:1m",
      ).makeOptionMandatory(),
    )
    .option("--json", "one JSON object for a script")
    .action((options: PulseOptions) => answer(() => pulse(options), options.json === true));
}

interface LayerOptions {
  readonly mm: string;
  readonly area: string;
  readonly conductivity?: string;
  readonly json?: true;
}

function layer(material: string | undefined, options: LayerOptions): Parsed<Told> {
  const { mm, area, conductivity } = options;
  if ((material === undefined) === (conductivity === undefined))
    return { ok: false, problem: "material or --conductivity: one of them" };
  const known = MATERIALS.find((one) => one === material);
  if (material !== undefined && known === undefined)
    return { ok: false, problem: `${material}: is not in the table; known: ${MATERIALS.join(" ")}` };
  const read = figures({ mm, area, conductivity: conductivity ?? "1" });
  if (!read.ok) return read;
  const resists =
    known === undefined
      ? slabResistance(read.value.conductivity, read.value.mm, read.value.area)
      : layerResistance(known, read.value.mm, read.value.area);
  if (!resists.ok) return resists;
  const by =
    known === undefined
      ? `${conductivity} W/mK`
      : `${known}, Power Electronics Handbook p. 70 table 2.1, seen`;
  const text = `${Number(resists.value.toPrecision(3))} K/W through ${mm} mm over ${area} mm2 (${by}); what the faces themselves resist comes on top\n`;
  return { ok: true, value: { json: { kelvinPerWatt: resists.value }, text } };
}

interface PulseOptions {
  readonly watts: string;
  readonly seconds: string;
  readonly step: readonly string[];
  readonly json?: true;
}

function readStep(text: string): Parsed<ThermalStep> {
  const [kelvinPerWatt = "", seconds = ""] = text.split(":");
  const read = figures({ step: kelvinPerWatt, seconds });
  if (!read.ok)
    return { ok: false, problem: `--step: "${text}": expected kelvin a watt and seconds, as 0.26:1m` };
  return { ok: true, value: { kelvinPerWatt: read.value.step, seconds: read.value.seconds } };
}

function pulse({ watts, seconds, step }: PulseOptions): Parsed<Told> {
  const read = figures({ watts, seconds });
  if (!read.ok) return read;
  const steps: ThermalStep[] = [];
  for (const text of step) {
    const one = readStep(text);
    if (!one.ok) return one;
    steps.push(one.value);
  }
  const resists = transientResistance(steps, read.value.seconds);
  if (!resists.ok) return resists;
  const kelvin = resists.value * read.value.watts;
  const text = `${Number(kelvin.toPrecision(3))} K above the case after ${seconds} s at ${watts} W (${Number(resists.value.toPrecision(3))} K/W then)\n`;
  return { ok: true, value: { json: { kelvinPerWatt: resists.value, kelvin }, text } };
}
