/** Heat that a part makes, by the figures of its data sheet. */
import type { Command } from "commander";
import { bridgeWatts, chopperWatts, legWatts } from "../../parts/cooling/losses.ts";
import { sinkWanted } from "../../parts/cooling/thermal-chain.ts";
import type { Parsed } from "../../units/outcome.ts";
import { figures, type Told } from "../told.ts";

type Answer = (made: () => Parsed<Told>, json: boolean) => void;
type Options = Readonly<Record<string, string>> & { readonly json?: true };

/** Typical figures of a data sheet make typical heat. */
const TYPICAL = "typical figures make typical heat, not the worst";
const watts = (figure: number) => `${Number(figure.toPrecision(3))} W`;

export function addHeat(cool: Command, answer: Answer): void {
  const add = (name: string, description: string, made: (options: Options) => Parsed<Told>): Command =>
    cool
      .command(name)
      .description(description)
      .option("--json", "one JSON object for a script")
      .action((options: Options) => answer(() => made(options), options.json === true));
  add("bridge", "heat of a single-phase bridge", bridge)
    .requiredOption("--volts <volts>", "threshold of one junction")
    .requiredOption("--ohms <ohms>", "its slope resistance")
    .requiredOption("--amps <amps>", "direct current")
    .option("--shape <ratio>", "effective over mean current: 1.6 to 2.5 behind a capacitor", "2");
  switching(add("chopper", "heat of a boost switch or a brake", chopper)).requiredOption(
    "--duty <share>",
    "share of the time that it conducts, 0 to 1",
  );
  switching(add("leg", "heat of one switch of a three-phase leg, and of the diode across it", leg))
    .requiredOption("--diode-volts <volts>", "threshold of the diode")
    .requiredOption("--diode-ohms <ohms>", "its slope resistance")
    .requiredOption("--recovery <joules>", "of one recovery, where --energy is given")
    .option("--depth <share>", "modulation depth", "0.8")
    .option("--power-factor <share>", "of the motor's current", "0.8");
  add("sink", "the heatsink that keeps a junction below its limit", sink)
    .requiredOption("--watts <watts>", "heat of the part")
    .requiredOption("--case <kelvin per watt>", "junction to case")
    .requiredOption("--under <kelvin per watt>", "case to heatsink")
    .option("--limit <degC>", "of the junction", "110")
    .option("--air <degC>", "air at the heatsink", "40");
}

function switching(command: Command): Command {
  return command
    .requiredOption("--volts <volts>", "threshold of the switch")
    .requiredOption("--ohms <ohms>", "its slope resistance")
    .requiredOption("--amps <amps>", "current: of a leg the effective one of its phase")
    .requiredOption("--bus <volts>", "that it switches")
    .requiredOption("--hertz <hertz>", "how often")
    .requiredOption("--energy <joules>", "of one turn-on with one turn-off")
    .requiredOption("--at-amps <amps>", "the current for which the data sheet says so")
    .requiredOption("--at-volts <volts>", "and the voltage");
}

function bridge(options: Options): Parsed<Told> {
  const { volts = "", ohms = "", amps = "", shape = "" } = options;
  const read = figures({ volts, ohms, amps, shape });
  if (!read.ok) return read;
  const drop = { volts: read.value.volts, ohms: read.value.ohms };
  const made = bridgeWatts(drop, read.value.amps, read.value.shape);
  if (!made.ok) return made;
  return {
    ok: true,
    value: { json: { watts: made.value }, text: `${watts(made.value)} in the bridge (${TYPICAL})\n` },
  };
}

/** The figures that a chopper and a leg share. */
function readSwitch(options: Options): ReturnType<typeof figures<SwitchFigure>> {
  const { volts = "", ohms = "", amps = "", bus = "", hertz = "", energy = "" } = options;
  const { atAmps = "", atVolts = "" } = options;
  return figures({ volts, ohms, amps, bus, hertz, energy, atAmps, atVolts });
}
type SwitchFigure = "volts" | "ohms" | "amps" | "bus" | "hertz" | "energy" | "atAmps" | "atVolts";

function chopper(options: Options): Parsed<Told> {
  const read = readSwitch(options);
  if (!read.ok) return read;
  const duty = figures({ duty: options.duty ?? "" });
  if (!duty.ok) return duty;
  const { volts, ohms, amps, bus, hertz, energy, atAmps, atVolts } = read.value;
  const made = chopperWatts({
    drop: { volts, ohms },
    energy: { joules: energy, atAmps, atVolts },
    amps,
    volts: bus,
    duty: duty.value.duty,
    hertz,
  });
  if (!made.ok) return made;
  return {
    ok: true,
    value: { json: { watts: made.value }, text: `${watts(made.value)} in the switch (${TYPICAL})\n` },
  };
}

function leg(options: Options): Parsed<Told> {
  const read = readSwitch(options);
  if (!read.ok) return read;
  const { diodeVolts = "", diodeOhms = "", recovery = "", depth = "", powerFactor = "" } = options;
  const more = figures({ diodeVolts, diodeOhms, recovery, depth, powerFactor });
  if (!more.ok) return more;
  const { volts, ohms, amps, bus, hertz, energy, atAmps, atVolts } = read.value;
  const made = legWatts({
    switchDrop: { volts, ohms },
    diodeDrop: { volts: more.value.diodeVolts, ohms: more.value.diodeOhms },
    energy: { joules: energy, atAmps, atVolts },
    recovery: { joules: more.value.recovery, atAmps, atVolts },
    rmsAmps: amps,
    busVolts: bus,
    depth: more.value.depth,
    powerFactor: more.value.powerFactor,
    hertz,
  });
  if (!made.ok) return made;
  const { switchWatts, diodeWatts } = made.value;
  const text = `${watts(switchWatts)} in the switch, ${watts(diodeWatts)} in the diode (${TYPICAL})\n`;
  return { ok: true, value: { json: made.value, text } };
}

function sink(options: Options): Parsed<Told> {
  const { watts: heat = "", case: junctionToCase = "", under = "", limit = "", air = "" } = options;
  const read = figures({ watts: heat, case: junctionToCase, under, limit, air });
  if (!read.ok) return read;
  const part = { watts: read.value.watts, junctionToCase: read.value.case, caseToSink: read.value.under };
  const made = sinkWanted(part, read.value.limit, read.value.air);
  if (!made.ok) return made;
  const text = `a heatsink of ${Number(made.value.toPrecision(3))} K/W or better, for ${read.value.limit} degC at the junction\n`;
  return { ok: true, value: { json: { sinkToAir: made.value }, text } };
}
